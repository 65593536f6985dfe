package schedule

import (
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

// What "what's due?" lists is what is then told where nobody writes a word, and the
// next round tells of nothing that it did not list.
func TestWhatIsListedIsThenTold(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		l, of, from, to := drawn(rt, t)
		now := from.Add(time.Duration(rapid.IntRange(0, int(to.Sub(from)/time.Minute)).Draw(rt, "asked at")) * time.Minute)
		told := map[string]bool{}
		for _, s := range l.walkSpan(from, now, of) {
			for _, x := range s.Lines {
				told[x.About] = told[x.About] || model.DayOf(s.at) >= model.DayOf(now)-1 // the lines of the day's round stay listed until its evening
			}
		}
		l.records = slices.DeleteFunc(l.records, func(r model.Record) bool { return r.At.After(now) })
		h := l.herd(now)
		listed := upcoming(h, of(h), now, 14)
		v := newView(h, of(h), h.Tolds, now)
		visit := standingToken(v.listed(now).day)
		over := v.told(visit) // what was written since is listed for it, and comes too late to be told in it
		for _, s := range l.walkSpan(now.Add(time.Minute), now.Add(16*24*time.Hour), of) {
			for _, x := range s.Lines {
				told[x.About] = true
				if key, _, _ := strings.Cut(s.Key, tokenGap); key == visit && !slices.Contains(notListed, x.About) {
					require.True(t, slices.ContainsFunc(listed, func(y Line) bool { return y.About == x.About }), "%s: %s was told and not listed", s.at, x.Code)
				}
			}
		}
		for _, x := range listed {
			if over && x.Grade == Routine || x.Code == CodeHeatWatch { // warm weather is listed when it is known, and told in a round only
				continue
			}
			require.True(t, told[x.About], "%s was listed at %s and not told", x.Code, now)
		}
	})
}

// notListed are questions of the program's own, which are no work that falls due.
var notListed = []string{aboutCheck, aboutCatchUp}
