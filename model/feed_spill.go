package model

import "math"

// spilled takes feed off that no pig ate: it teaches nothing of their appetite.
// Where the amount was not said, anything from nothing to all of it may be gone,
// and the span up to the next level seen teaches nothing.
func (f *feedFit) spilled(g gaussian, of []int, l FeedLevel) {
	for k, share := range f.levelShares(g, of) {
		level := placeLevel(of[k])
		g.rectify(level)
		held := max(g.mean[level], 0)
		if l.SpilledKg == nil {
			g.forget(level, held/2, max(held/math.Sqrt(12), emptySD*g.mean[placeCapacity(of[k])]))
			continue
		}
		kg := min(*l.SpilledKg*share, held)
		g.mean[level] -= kg
		g.widen(level, kgSeenSD*kg*kgSeenSD*kg)
	}
}
