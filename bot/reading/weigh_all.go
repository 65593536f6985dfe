package reading

import (
	"slices"

	"troughbell/model"
)

// oneWeightForAll asks where a text tells several weights of the whole herd: more
// of them than there are pigs, or each told of all. Nothing of them is recorded
// until it is answered.
func (r *reader) oneWeightForAll() {
	if r.alive < 2 {
		return
	}
	var at []int
	differ := false
	for k := range r.out {
		w, ok := r.weighedAll(k)
		if !ok {
			continue
		}
		if len(at) > 0 {
			first, _ := r.weighedAll(at[0])
			if r.out[at[0]].On != r.out[k].On || (first.GirthCm > 0) != (w.GirthCm > 0) {
				continue // another day, or the tape beside the scale
			}
			differ = differ || first.WeightKg != w.WeightKg || first.GirthCm != w.GirthCm
		}
		at = append(at, k)
	}
	if !differ || len(at) <= r.alive && r.saysAll() < 2 {
		return
	}
	c := Clarify{About: "weigh", Code: "one_weight", Names: []string{model.All}, Want: "weigh"}
	for _, k := range at {
		c.Draft = append(c.Draft, r.out[k])
		if len(c.Choices) < 3 {
			c.Choices = append(c.Choices, Choice{Entries: []Entry{r.out[k]}})
		}
	}
	c.Draft = c.Draft[:1]
	c.Choices = append(c.Choices, Choice{Code: "nothing"})
	r.out[at[0]].Act = c
	for n := len(at) - 1; n > 0; n-- {
		r.out = append(r.out[:at[n]], r.out[at[n]+1:]...)
	}
}

// weighedAll is the weighing of the whole herd that entry k records.
func (r *reader) weighedAll(k int) (model.Weigh, bool) {
	f, ok := r.out[k].Act.(Fact)
	if !ok {
		return model.Weigh{}, false
	}
	w, ok := f.Fact.(model.Weigh)
	return w, ok && len(w.Animals) == 1 && w.Animals[0] == model.All
}

// saysAll counts the words of the text that speak of all pigs or of a mean.
func (r *reader) saysAll() int {
	n := 0
	for k := range r.items {
		if it := &r.items[k]; it.is(sAll) || it.is(sEach) && !it.is(sHolds) {
			n++
		}
	}
	return n
}

// membersApart takes a pig off the weight of its group where the same text weighs it by
// itself: "boys 39 except Munti 33".
func membersApart(es []Entry) []Entry {
	weighed := func(e Entry) (model.Weigh, bool) {
		f, ok := e.Act.(Fact)
		if !ok || e.Replace != "" {
			return model.Weigh{}, false
		}
		w, ok := f.Fact.(model.Weigh)
		return w, ok
	}
	for k := range es {
		group, ok := weighed(es[k])
		if !ok || len(group.Animals) < 2 {
			continue
		}
		for n := range es {
			one, ok := weighed(es[n])
			if n == k || !ok || len(one.Animals) != 1 || es[n].On != es[k].On || !slices.Contains(group.Animals, one.Animals[0]) || (group.WeightKg == 0) != (one.WeightKg == 0) {
				continue
			}
			group.Animals = slices.DeleteFunc(slices.Clone(group.Animals), func(a string) bool { return a == one.Animals[0] })
			es[k].Act = Fact{group}
		}
	}
	return es
}
