package schedule

import (
	"math"
	"slices"

	"troughbell/model"
)

const (
	missedPart = 0.15    // of what was expected, from which a miss is owned
	missedFor  = 8 * day // the next standing message says it, or none
	learnedPct = 1.0     // percent of appetite from which it is worth a word
)

// missed owns that the feed gone in the latest closed span was not what was
// foretold, and says what was learned; false where it was, where it was told
// already, or where something was asked about it.
func (v *view) missed() (need, bool) {
	fills := v.f.FeedFills()
	for i := len(fills) - 1; i >= 0 && v.start.Sub(fills[i].At) < missedFor; i-- {
		f := fills[i]
		want := f.WantKg()
		if !f.Closed || want <= 0 || math.Abs(f.UsedKg/want-1) <= missedPart {
			continue
		}
		n := need{token: token("missed", f.Record), Line: Line{
			About: aboutCheck, Topic: "check:missed", Grade: Routine, Code: CodeMissedFeed,
			Names: []string{f.Feeder}, On: model.DayOf(f.At.In(v.loc)),
			Q: []model.Quantity{{Value: f.UsedKg, Unit: model.Kilograms}, {Value: want, Unit: model.Kilograms}},
		}}
		asked := v.told(token("check:odd", f.Record)) ||
			slices.ContainsFunc(v.h.Questions, func(q model.Dated[model.Question]) bool { return q.F.Of == f.Record })
		if asked || v.told(n.token) || v.stopped(&n) {
			return need{}, false
		}
		if pct := 100 * (f.After/f.Before - 1); math.Abs(pct) >= learnedPct {
			n.Q = append(n.Q, model.Quantity{Value: pct, Unit: model.Percent})
		}
		n.Reasons = []model.Reason{{Code: ReasonMissed, Names: n.Names, On: model.DayOf(f.Since.In(v.loc)), Q: []model.Quantity{
			n.Q[0], n.Q[1], {Value: 100 * f.After, Unit: model.Percent},
		}}}
		return n, true
	}
	return need{}, false
}
