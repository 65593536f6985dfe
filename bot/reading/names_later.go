package reading

import (
	"slices"
	"strconv"
	"strings"

	"troughbell/model"
)

// What the pigs are called is told by some only after they came: "names are Hank,
// Ivy, Dell and Roan", "tags are 501 to 504". It completes an arrival of as many pigs
// without names. A tag told for a pig that has a name is kept as a note: the pig goes
// on by its name, and the number is no weight.

// namesLater reads such a text.
func (r *reader) namesLater() (Reading, bool) {
	if r.alive == 0 || r.longestTag > 0 || len(r.items) > mostPigs || r.items[len(r.items)-1].quest {
		return Reading{}, false
	}
	text := strings.TrimSpace(r.text)
	if lead := longestLead(strings.ToLower(text), tagLeads); lead != "" {
		tags := listedTags(text[len(lead):])
		if len(tags) < 2 {
			return Reading{}, false
		}
		if rec, e, ok := r.namesArrival(naming{names: tags}); ok {
			return r.replaced(rec, e), true
		}
		return r.just(Fact{model.Note{What: text}}), true
	}
	if r.tagOfPig() {
		return r.just(Fact{model.Note{What: text}}), true
	}
	if !r.anyUnnamed() {
		return Reading{}, false
	}
	n, ok := r.namingIn(text)
	if !ok {
		return Reading{}, false
	}
	rec, e, ok := r.namesArrival(n)
	if !ok {
		return Reading{}, false
	}
	got := r.replaced(rec, e)
	got.Left = n.left
	return got, true
}

// anyUnnamed says that a living pig has no name.
func (r *reader) anyUnnamed() bool {
	for p := range r.alive {
		if r.pigs[p].Name == "" {
			return true
		}
	}
	return false
}

// tagLeads are what a list of tags begins with.
var tagLeads = split("tags are, the tags are, their tags are, tags, ear tags, ear tags are, eartags are, tag numbers are, their tag numbers are, the pigs have tags, they have tags, they are tagged, they're tagged")

// longestLead is the longest of some phrases that a text begins with.
func longestLead(low string, leads []string) string {
	lead := ""
	for _, w := range leads {
		if strings.HasPrefix(low, w+" ") && len(w) > len(lead) {
			lead = w
		}
	}
	return lead
}

// listedTags are the numbers of a list, of which "501 to 504" are four; none where
// anything else stands in it.
func listedTags(list string) []string {
	var out []string
	ahead := false // a "to" stands before
	for _, w := range strings.FieldsFunc(list, func(c rune) bool { return strings.ContainsRune(" ,;:&+.\n", c) }) {
		w = strings.TrimPrefix(w, "#")
		from, to, rng := strings.Cut(w, "-")
		n, err := strconv.Atoi(w)
		switch {
		case w == "and" || w == "n":
		case w == "to" || w == "through" || w == "thru" || w == "-":
			ahead = true
		case rng:
			a, err1 := strconv.Atoi(from)
			b, err2 := strconv.Atoi(to)
			if err1 != nil || err2 != nil {
				return nil
			}
			if out = appendTags(out, a, b); out == nil {
				return nil
			}
		case err != nil:
			return nil
		case ahead:
			if len(out) == 0 {
				return nil
			}
			a, err := strconv.Atoi(out[len(out)-1])
			if err != nil {
				return nil
			}
			if out = appendTags(out, a+1, n); out == nil {
				return nil
			}
			ahead = false
		default:
			out = append(out, w)
		}
	}
	for k, n := range out {
		if slices.Contains(out[:k], n) {
			return nil
		}
	}
	return out
}

// appendTags adds the numbers from a to b; nil where they are no row of tags.
func appendTags(out []string, a, b int) []string {
	if b < a || b-a > mostPigs {
		return nil
	}
	for n := a; n <= b; n++ {
		out = append(out, strconv.Itoa(n))
	}
	return out
}

// namesArrival is the latest arrival of this person, of as many pigs and without
// names, with the names given.
func (r *reader) namesArrival(n naming) (*Recorded, Entry, bool) {
	for rec, a := range r.arrivalsBefore() {
		if len(a.Animals) > 0 || a.Count != len(n.names) {
			if some, ok := namedOfSex(a, n); ok {
				e := rec.Entry
				e.Act = Fact{some}
				return rec, e, some.Check() == nil
			}
			continue
		}
		a.Animals = n.names
		if len(n.sexes) > 0 {
			a.Sexes = n.sexes
		}
		e := rec.Entry
		e.Act = Fact{a}
		return rec, e, a.Check() == nil
	}
	return nil, Entry{}, false
}

// tagOfPig says that the text tells which tag a pig of the herd wears: "dot is tag 14",
// "501 is dot".
func (r *reader) tagOfPig() bool {
	pigs, nums, tag, is := 0, 0, false, false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && !it.near && !it.tag:
			pigs++
		case it.kind == itNum && !it.soft && it.v == float64(int(it.v)):
			nums++
		case it.s == "tag" || it.s == "ear tag" || it.s == "eartag" || it.s == "tag number" || it.s == "tagged":
			tag = true
		case it.s == "is" || it.s == "has" || it.s == "wears" || it.s == "got":
			is = is || it.s == "is" && pigs == 0
		case it.s == "ear" || it.s == "number" || it.s == "no" || it.s == "the" || it.s == "pig":
		default:
			return false
		}
	}
	return pigs == 1 && nums == 1 && (tag || is && (r.items[0].kind == itNum || r.items[0].s == "pig"))
}
