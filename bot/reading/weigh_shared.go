package reading

import (
	"slices"

	"troughbell/model"
)

// sharedWeights asks where a span yielded, r.out[from:], several weights of the same pigs:
// nobody knows whose which is of "the babies are 96, 101 and 104".
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
	r.confirm(s, from)
}
