package reading

import "troughbell/model"

// One amount told for several feeders: for each of them, for all together, or not
// to be told which.

// shared is what an amount told for several feeders is.
type shared uint8

const (
	sharedUnclear shared = iota
	sharedEach           // "both hoppers got 100"
	sharedTotal          // "split 150 between them"
)

// sharedIn says which of these the span whole tells, whose amount is item said.
func (r *reader) sharedIn(whole span, said int) shared {
	for k := r.sentenceStart(whole.i); k < r.sentenceEnd(whole.j-1); k++ {
		it := &r.items[k]
		switch it.s {
		case "between", "total", "in total", "altogether", "all told", "in all", "together", "split", "divided", "shared", "combined":
			return sharedTotal
		}
		if it.is(sEach) || it.s == "apiece" {
			return sharedEach
		}
	}
	for k := whole.i; k < said; k++ { // the feeders are what the sentence speaks of
		if r.items[k].is(sBoth) {
			return sharedEach
		}
	}
	return sharedUnclear
}

// askShared asks whether an amount went into each of the feeders or into all.
func (r *reader) askShared(s span, names []string, c contents) {
	cl := Clarify{About: "refill", Code: "each_or_all", Names: names, Q: []model.Quantity{{Value: *c.amount, Unit: model.Kilograms}}}
	for _, way := range []struct {
		code  string
		split float64
	}{{"each", 1}, {"in_all", float64(len(names))}} {
		ch := Choice{Code: way.code}
		for _, n := range names {
			act, ok := r.feedFact(n, c, way.split)
			if !ok {
				r.idleSpan(s)
				return
			}
			if act.Intent() == "feed_level" {
				cl.About = "feed_level"
			}
			ch.Entries = append(ch.Entries, r.draft(act, s))
		}
		cl.Choices = append(cl.Choices, ch)
	}
	cl.Choices = append(cl.Choices, Choice{Code: "nothing"})
	r.useAll(s)
	r.clarify(cl, s)
}
