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
	low := strings.ToLower(strings.TrimSpace(r.text))
	lead, tags := "", false
	for _, w := range nameLeads {
		if strings.HasPrefix(low, w+" ") && len(w) > len(lead) {
			lead = w
		}
	}
	for _, w := range tagLeads {
		if strings.HasPrefix(low, w+" ") && len(w) > len(lead) {
			lead, tags = w, true
		}
	}
	if lead == "" {
		if !r.tagOfPig() {
			return Reading{}, false
		}
		return r.just(Fact{model.Note{What: strings.TrimSpace(r.text)}}), true
	}
	names := listedNames(strings.TrimSpace(r.text)[len(lead):], tags)
	if len(names) < 2 {
		return Reading{}, false
	}
	if rec, e, ok := r.namesArrival(names); ok {
		return r.replaced(rec, e), true
	}
	if !tags {
		return Reading{}, false
	}
	return r.just(Fact{model.Note{What: strings.TrimSpace(r.text)}}), true
}

// What a list of names, and one of tags, begins with.
var (
	nameLeads = split("names are, the names are, their names are, they are called, they're called, theyre called, call them, we named them, i named them, we call them, named them, pigs are called, the pigs are called")
	tagLeads  = split("tags are, the tags are, their tags are, tags, ear tags, ear tags are, eartags are, tag numbers are, their tag numbers are, the pigs have tags, they have tags, they are tagged, they're tagged")
)

// listedNames are the names of a list, or its numbers, of which "501 to 504" are four;
// none where anything else stands in it.
func listedNames(list string, tags bool) []string {
	var out []string
	ahead := false // a "to" stands before
	for _, w := range strings.FieldsFunc(list, func(c rune) bool { return strings.ContainsRune(" ,;:&+.\n", c) }) {
		w = strings.TrimPrefix(w, "#")
		from, to, rng := strings.Cut(w, "-")
		switch n, err := strconv.Atoi(w); {
		case w == "and" || w == "n":
		case tags && (w == "to" || w == "through" || w == "thru" || w == "-"):
			ahead = true
		case tags && rng:
			a, err1 := strconv.Atoi(from)
			b, err2 := strconv.Atoi(to)
			if err1 != nil || err2 != nil {
				return nil
			}
			if out = appendTags(out, a, b); out == nil {
				return nil
			}
		case tags && err == nil && ahead:
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
		case tags && err == nil:
			out = append(out, w)
		case tags, err == nil, !isNameWord(w):
			return nil
		default:
			out = append(out, capitalize(w))
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

// isNameWord says that a word of a list can be a pig's name.
func isNameWord(w string) bool {
	low := strings.ToLower(w)
	return len(w) > 1 && !stopWords[low] && strings.IndexFunc(low, func(c rune) bool { return c >= '0' && c <= '9' }) < 0
}

// namesArrival is the latest arrival of this person, of as many pigs and without
// names, with the names given.
func (r *reader) namesArrival(names []string) (*Recorded, Entry, bool) {
	for rec, a := range r.arrivalsBefore() {
		if len(a.Animals) > 0 || a.Count != len(names) {
			continue
		}
		a.Animals = names
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
