package schedule

import "troughbell/model"

// ownBetween is the reminders that the person asked for, each once, at its
// moment or at the hour of the morning. One whose moment lies in the quiet
// hours comes just before them, unless it was asked for only then.
func ownBetween(v *view) []need {
	var out []need
	for _, r := range v.h.Reminds {
		at := v.morning(r.F.Day)
		if r.F.Minute != nil {
			at = r.F.Day.At(*r.F.Minute, v.loc)
		}
		if at.Before(r.At) {
			continue // its moment had passed when it was asked for
		}
		tell := at
		if q := v.h.Quiet; q.Holds(model.MinuteOf(at)) {
			d := r.F.Day
			if q.From > q.To && model.MinuteOf(at) < q.To {
				d--
			}
			if before := d.At(q.From-1, v.loc); before.After(r.At) {
				tell = before
			}
		}
		out = append(out, need{token: token(aboutOwn, r.ID), asked: true, exact: true, Line: Line{
			About: aboutOwn, Topic: "own:" + r.ID, Grade: Routine, Code: CodeOwnReminder,
			Names: []string{r.F.What}, On: r.F.Day, At: at, Earliest: tell, Latest: tell.Add(2 * day),
		}})
	}
	return out
}
