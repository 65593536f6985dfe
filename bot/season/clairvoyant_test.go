package season

import "time"

// clairvoyant is the keeper who knows what the pigs will take, bound to the same
// chore days: at a chore day he fills only what would not last to the next, and
// where even full does not last he comes again on the last evening before it is
// gone. fills is on how many days he fills.
type clairvoyant struct {
	visits []time.Time // chore moments, in order
	end    time.Time
	loc    *time.Location
	use    func(t time.Time) float64 // of the hour that begins at t
}

const eveningHour = 19

// days counts the days on which he fills. holds is what there is room for; pour
// gives how much is filled in at a visit, given what is needed until the next
// one and the room; nil fills to the brim.
func (c clairvoyant) days(level, holds float64, pour func(need, room float64) float64) int {
	fills := 0
	if pour == nil {
		pour = func(_, room float64) float64 { return room }
	}
	for i, at := range c.visits {
		next := c.end
		if i+1 < len(c.visits) {
			next = c.visits[i+1]
		}
		need := c.sum(at, next)
		if level < need {
			level += min(pour(need-level, holds-level), holds-level)
			fills++
		}
		for now := at; now.Before(next); {
			until := c.lasts(now, next, level)
			if !until.Before(next) {
				level -= c.sum(now, next)
				break
			}
			eve := c.lastEvening(until)
			if !eve.After(now) {
				eve = now.Add(time.Hour)
			}
			level = max(0, level-c.sum(now, eve))
			level += min(pour(max(0, c.sum(eve, next)-level), holds-level), holds-level)
			fills++
			now = eve
		}
	}
	return fills
}

func (c clairvoyant) sum(from, to time.Time) float64 {
	out := 0.0
	for t := from; t.Before(to); t = t.Add(time.Hour) {
		out += c.use(t)
	}
	return out
}

// lasts is the hour in which the level is gone, to if it lasts as long.
func (c clairvoyant) lasts(from, to time.Time, level float64) time.Time {
	for t := from; t.Before(to); t = t.Add(time.Hour) {
		if level -= c.use(t); level < 0 {
			return t
		}
	}
	return to
}

// lastEvening is the evening before the moment.
func (c clairvoyant) lastEvening(t time.Time) time.Time {
	t = t.In(c.loc)
	e := time.Date(t.Year(), t.Month(), t.Day(), eveningHour, 0, 0, 0, c.loc)
	if e.After(t) {
		e = e.AddDate(0, 0, -1)
	}
	return e
}
