package reading

import "math"

// halfThePigs makes a count of pigs of a share of them: "half the pigs are sneezing" tells
// of no feeder that is half full.
func (r *reader) halfThePigs() {
	for k := 0; k+1 < len(r.items); k++ {
		it, next := &r.items[k], &r.items[k+1]
		if it.kind != itFrac || next.gap != gapNone || !next.is(sPigs) || next.pig >= 0 || r.alive < 2 {
			continue
		}
		it.kind, it.v = itNum, math.Max(1, math.Round(it.v*float64(r.alive)))
	}
}
