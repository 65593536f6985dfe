package reading

import "troughbell/model"

// tagPair is a pig's tag and the number behind it, which is another pig's tag as
// well: "201 205".
type tagPair struct{ name, value string }

// tagCollisions notes the pairs of a weighing of which each number could be the
// pig. Where another pair of the text shows which comes first, nothing is in
// doubt.
func (r *reader) tagCollisions() {
	r.pairs = r.pairs[:0]
	for i := 0; i+1 < len(r.toks); i++ {
		a, b := &r.toks[i], &r.toks[i+1]
		if a.tag != tagPig || b.kind != tokNum || b.tag != noTag || b.amount {
			continue
		}
		if !r.isTag(b.s) || r.countBehind(i+1) {
			r.pairs = r.pairs[:0]
			return
		}
		r.pairs = append(r.pairs, tagPair{a.s, b.s})
	}
}

// tagOrWeight asks which number of a pair is the pig and which the weight, where
// both ways make sense for the pigs of today.
func (r *reader) tagOrWeight() {
	if len(r.pairs) == 0 {
		return
	}
	var as, swapped []Entry
	var at []int
	for _, p := range r.pairs {
		for k := range r.out {
			f, ok := r.out[k].Act.(Fact)
			if !ok {
				continue
			}
			w, ok := f.Fact.(model.Weigh)
			if !ok || len(w.Animals) != 1 || w.Animals[0] != p.name || w.LengthCm > 0 {
				continue
			}
			other, ok := r.weighedAs(p, r.out[k].On)
			if !ok {
				continue
			}
			e := r.out[k]
			e.Act = Fact{other}
			as, swapped, at = append(as, r.out[k]), append(swapped, e), append(at, k)
		}
	}
	if len(at) == 0 {
		return
	}
	r.out[at[0]].Act = Clarify{About: "weigh", Code: "tag_or_weight", Choices: []Choice{{Entries: as}, {Entries: swapped}}}
	for n := len(at) - 1; n > 0; n-- {
		r.out = append(r.out[:at[n]], r.out[at[n]+1:]...)
	}
}

// weighedAs is the weighing that a pair means when the second number is the pig;
// false where that pig can hardly weigh so.
func (r *reader) weighedAs(p tagPair, on model.Day) (model.Weigh, bool) {
	for k := range r.alive {
		if r.pigs[k].Name != p.value {
			continue
		}
		v, _ := digits(p.name, 0)
		options := r.options(&measure{v: v})
		best, z := r.likeliest(options, selection{pigs: []int16{int16(k)}}, on)
		if z.known && z.best > oddsWeird || outOfBounds(options[best]) {
			return model.Weigh{}, false
		}
		w := options[best]
		w.Animals = []string{p.value}
		return w, true
	}
	return model.Weigh{}, false
}
