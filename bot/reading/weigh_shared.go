package reading

import (
	"slices"

	"troughbell/model"
)

// Several weights told of the same pigs together: "the babies are 96, 101 and 104, that's
// Fern, Juno and Brick in that order". As many as they are in that order are one each;
// else nobody knows whose which is.

// sharedWeights gives each of the pigs its own where a span yielded, r.out[from:], several
// weights of the same pigs, or asks.
func (r *reader) sharedWeights(s span, from int) {
	if s.frame != fWeigh || len(r.out)-from < 2 {
		return
	}
	var pigs []string
	for _, e := range r.out[from:] {
		f, ok := e.Act.(Fact)
		w, is := f.Fact.(model.Weigh)
		if !ok || !is || len(w.Animals) < 2 || pigs != nil && !slices.Equal(pigs, w.Animals) || w.WeightKg == 0 {
			return
		}
		pigs = w.Animals
	}
	if len(r.out)-from != len(pigs) || !saysAny(r.said(span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}), inThatOrder) {
		r.confirm(s, from)
		return
	}
	for n := range pigs {
		f := r.out[from+n].Act.(Fact)
		w := f.Fact.(model.Weigh)
		w.Animals = pigs[n : n+1 : n+1]
		r.out[from+n].Act = Fact{w}
	}
}

var inThatOrder = phrasesOf("in that order, in this order, in order, respectively, going down the line, left to right")
