package schedule

import "troughbell/model"

// Between two seasons there are at most two messages: in winter that pigs are to
// be ordered, and shortly before they come that the place is to be ready.

const (
	// orderAheadDays is how long before the day of last year's pigs the next ones are
	// brought up: weaners of spring and the butchers of autumn are spoken for by
	// winter. Common practice, no source.
	orderAheadDays = 110
	// readyAheadDays leaves a weekend, or a chore day, to get ready in.
	readyAheadDays = 10
	// quietAfterDays is how long nothing is said after the last pig went.
	quietAfterDays = 21
	// mostNotes is how many notes for next year fit a message.
	mostNotes = 3
)

// orderBetween says, once after a season, that the next pigs are to be ordered.
func orderBetween(v *view) []need {
	if len(v.pigs) > 0 || len(v.h.Animals) == 0 {
		return nil
	}
	if _, ok := v.h.Coming(v.day); ok {
		return nil // they are
	}
	var gone model.Day
	for _, a := range v.h.Animals {
		if a.Gone == nil {
			return nil // comes later
		}
		gone = max(gone, a.Gone.On)
	}
	began, came := v.lastSeason(gone)
	on := max(began+365-orderAheadDays, gone+quietAfterDays)
	at := v.h.NextChore(on.At(0, v.loc).Add(-1))
	return []need{{token: token(aboutSeason, "order", on), Line: Line{
		About: aboutSeason, Topic: token(aboutSeason, "order"), Grade: Routine, Code: CodeOrder, On: began,
		Q: []model.Quantity{{Value: float64(came), Unit: model.Count}}, Names: v.notesSince(gone),
		Earliest: at, Latest: at.Add(7 * day),
	}}}
}

// lastSeason is the day on which the first pigs came of the season that ended on a
// day, and how many came in it.
func (v *view) lastSeason(gone model.Day) (began model.Day, came int) {
	began = gone
	for _, a := range v.h.Animals {
		if a.Gone.On > gone-365 && a.Group.Arrived > gone-365 {
			began = min(began, a.Group.Arrived)
			came++
		}
	}
	return began, came
}

// notesSince is what was noted from the day on which the last pig went.
func (v *view) notesSince(d model.Day) []string {
	var out []string
	for _, n := range v.h.Notes {
		if n.On >= d {
			out = append(out, n.F.What)
		}
	}
	return out[max(0, len(out)-mostNotes):]
}

// readyBetween says, once, that pigs come soon.
func readyBetween(v *view) []need {
	c, ok := v.h.Coming(v.day)
	if !ok {
		return nil
	}
	at := v.morning(c.Day - readyAheadDays)
	if told := v.h.Expecteds[len(v.h.Expecteds)-1].At; told.After(at) {
		return nil // it was said then what is to be done
	}
	return []need{{token: token(aboutSeason, "ready", c.Day), Line: Line{
		About: aboutSeason, Topic: token(aboutSeason, "ready"), Grade: Routine, Code: CodeReady, On: c.Day,
		Q:        []model.Quantity{{Value: float64(c.Day - v.day), Unit: model.Days}, {Value: float64(c.Count), Unit: model.Count}},
		Earliest: at, Latest: c.Day.At(0, v.loc),
	}}}
}
