package reading

import (
	"slices"
	"strings"
	"unicode"

	"troughbell/model"
)

// Two pigs of one name cannot be told apart, nor two whose names look the same:
// what is told of one would be recorded of the other.

// livingLike is the living pig that a new name would be taken for.
func (r *reader) livingLike(name string) (string, bool) {
	for _, a := range r.pigs[:r.alive] {
		if a.Name != "" && (strings.EqualFold(a.Name, name) || alike(a.Name, name)) {
			return a.Name, true
		}
	}
	return "", false
}

// takenIn is which of an arrival's names is taken, by a living pig or by one of
// the others, and the name that takes it; -1: none.
func (r *reader) takenIn(names []string) (at int, by string) {
	for i, n := range names {
		if by, ok := r.livingLike(n); ok {
			return i, by
		}
		for _, other := range names[:i] {
			if alike(other, n) {
				return i, other
			}
		}
	}
	return -1, ""
}

// nameTaken asks for another name where one of an arrival is taken. Nothing of
// the arrival is recorded until then.
func (r *reader) nameTaken(a model.Arrive, own []model.Weigh, like Entry, s span) bool {
	at, by := r.takenIn(a.Animals)
	if at < 0 {
		return false
	}
	if len(own) < 2 {
		own = nil // it is that of the whole
	}
	like.From, like.To = r.bytes(s)
	all := arrivalEntries(like, a, own)
	c := Clarify{About: "arrive", Code: "name_taken", Names: []string{by}, Want: "name", Draft: all}
	without := all
	for at := at; at >= 0; at, _ = r.takenIn(arrived(without)) {
		without = renamed(without, arrived(without)[at], "")
	}
	c.Choices = []Choice{{Code: "no_name", Entries: without}, {Code: "nothing"}}
	like.Act = c
	r.out = append(r.out, like)
	return true
}

func arrivalEntries(like Entry, a model.Arrive, own []model.Weigh) []Entry {
	like.Act = Fact{a}
	out := []Entry{like}
	for _, w := range own {
		if w.Check() == nil {
			out = append(out, Entry{Act: Fact{w}, On: like.On, Dated: like.Dated, From: like.From, To: like.To})
		}
	}
	return out
}

// renamed gives a pig of an arrival another name, or none; then what it weighs is
// left out, since nothing says whose weight it is.
func renamed(of []Entry, name, to string) []Entry {
	var out []Entry
	for _, e := range of {
		switch f := e.Act.(Fact).Fact.(type) {
		case model.Arrive:
			at := slices.Index(f.Animals, name)
			f.Animals = slices.Clone(f.Animals)
			switch {
			case to != "":
				f.Animals[at] = to
			default: // those without a name come last
				f.Animals = slices.Delete(f.Animals, at, at+1)
				if f.Sexes = slices.Clone(f.Sexes); at < len(f.Sexes) {
					sex := f.Sexes[at]
					f.Sexes = append(slices.Delete(f.Sexes, at, at+1), sex)
				}
			}
			e.Act = Fact{f}
		case model.Weigh:
			if slices.Contains(f.Animals, name) {
				if to == "" {
					continue
				}
				f.Animals = []string{to}
				e.Act = Fact{f}
			}
		}
		out = append(out, e)
	}
	return out
}

// arrived is the names in the arrival that entries begin with.
func arrived(es []Entry) []string {
	a, _ := es[0].Act.(Fact).Fact.(model.Arrive)
	return a.Animals
}

// nameAnswer takes a word that is none of the trade's for the name that was asked
// for.
func (r *reader) nameAnswer(c Clarify) ([]Entry, bool) {
	a, ok := c.Draft[0].Act.(Fact)
	if !ok || len(r.items) != 1 || r.lex.of[r.items[0].s] != nil {
		return nil, false
	}
	name := capitalize(strings.Trim(strings.TrimSpace(r.text), ".,"))
	f, ok := a.Fact.(model.Arrive)
	if !ok || len(name) < 2 || len(name) > longestName || strings.ContainsFunc(name, func(c rune) bool {
		return !unicode.IsLetter(c) && !unicode.Is(unicode.Mn, c) && c != '\'' && c != '’' && c != '-'
	}) {
		return nil, false
	}
	at, _ := r.takenIn(f.Animals)
	if at < 0 {
		return nil, false
	}
	es := renamed(c.Draft, f.Animals[at], name)
	at, _ = r.takenIn(arrived(es))
	return es, at < 0
}

// longestName is the longest name that is taken for an answer, in bytes.
const longestName = 40
