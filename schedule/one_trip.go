package schedule

import "time"

// tripAhead is how far apart feed and water may fall due between visits to be
// told together.
const tripAhead = 36 * time.Hour

// oneTrip has feed and water that fall due one soon after the other told at the
// earlier moment, so that one walk to the pigs does for both. What would not last
// to the next visit when it is filled so early keeps its own moment.
func (v *view) oneTrip(needs []need) {
	var feed, water *need
	for i := range needs {
		switch n := &needs[i]; n.Code {
		case CodeRefillMidweek, CodeRefillMidweekBrim:
			feed = n
		case CodeWaterMidweek:
			water = n
		}
	}
	if feed == nil || water == nil || !v.untouched(feed) || !v.untouched(water) {
		return
	}
	first, second := feed, water
	if water.Earliest.Before(feed.Earliest) {
		first, second = water, feed
	}
	if second.Earliest.Sub(first.Earliest) > tripAhead || !v.lastsFrom(second, first.Earliest) {
		return
	}
	second.Earliest = first.Earliest
}

// untouched reports whether a need was neither told nor answered yet.
func (v *view) untouched(n *need) bool {
	_, _, snoozed := v.snoozed(n)
	return !snoozed && !v.told(n.token) && !v.stopped(n) && !v.done(n, n.Earliest)
}

// lastsFrom reports whether what a need asks to fill lasts to the next visit when
// it is filled at the moment.
func (v *view) lastsFrom(n *need, at time.Time) bool {
	if n.Code == CodeWaterMidweek {
		full, err := v.f.WaterFilled(later(at, v.at))
		return err == nil && !full.EdgeAt.Before(v.next)
	}
	p, err := v.f.RefillPlan(later(at, v.at), v.next)
	if err != nil {
		return false
	}
	for _, f := range p.Feeders {
		if !f.Lasts {
			return false
		}
	}
	return true
}
