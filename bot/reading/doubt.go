package reading

import "strings"

// A wrong record costs more than a question, and a question more than silence.
// What follows takes back what a span yielded where the words around it speak
// against it.

// vet looks once more at what a span yielded, r.out[from:].
func (r *reader) vet(s span, from int) {
	defer r.doubtCovered(s, from)
	if from >= len(r.out) || r.force[s.i] != 0 && s.frame != fSpend {
		return
	}
	if (s.frame == fFeed || s.frame == fStock) && r.ordinalBag(s) {
		r.confirm(s, from)
		return
	}
	if (s.frame == fFeed || s.frame == fWater) && r.outOfThing(s, from) {
		r.confirm(s, from)
		return
	}
	for _, v := range vetoes[s.frame] {
		if v.holds(r, s, from) {
			v.then(r, s, from)
			return
		}
	}
}

// saysUnits says that a word of the span can mean nothing but a system of units.
func (r *reader) saysUnits(s span) bool {
	for k := s.i; k < s.j; k++ {
		if w := r.items[k].s; strings.Contains(w, "metric") || strings.Contains(w, "unit") || w == "imperial" {
			return true
		}
	}
	return false
}

// takeBack drops what a span yielded; its words are but talk.
func (r *reader) takeBack(s span, from int) {
	r.out = r.out[:from]
	r.useAll(s)
}

// confirm asks whether what a span yielded is meant.
func (r *reader) confirm(s span, from int) {
	for _, e := range r.out[from:] {
		if _, ok := e.Act.(Fact); !ok {
			return // it asks already
		}
	}
	es := append([]Entry(nil), r.out[from:]...)
	r.out = r.out[:from]
	r.clarify(doubtful(es), s)
}

// doubtful is the question whether a reading is right, what it would record as
// the first choice.
func doubtful(es []Entry) Clarify {
	return Clarify{
		About: es[0].Act.Intent(), Code: "doubtful", Draft: es,
		Choices: []Choice{{Entries: es}, {Code: "nothing"}},
	}
}
