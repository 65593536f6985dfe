package answer

import (
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// feedLeft says how much feed is left and how long it lasts, the cautious edge
// first.
func feedLeft(a asked) Answer {
	f, err := a.h.FeedLeft(a.now)
	if err != nil {
		return a.missing(err)
	}
	feeders := map[string]any{}
	var parts []string
	for _, x := range f.Feeders {
		feeders[x.Name] = map[string]any{
			"feed_kg": kg(x.LevelKg.Mid), "use_kg_d": kg(x.UseKgD.Mid), "days": kg(x.Days),
			"low_days": kg(x.LowDays), "empty": a.moment(x.Empty),
		}
		code := "feeder_part"
		if x.EdgeDays*24 < 1 {
			code = "feeder_part_out"
		}
		parts = append(parts, a.v.Phrase(code, wording.Args{
			Names: []string{x.Name}, Q: []model.Quantity{wording.Kg(x.LevelKg.Mid)},
			Moments: []time.Time{a.after(x.EdgeDays)},
		}))
	}
	data := map[string]any{
		"feed_kg": kg(f.FeedKg.Mid), "low_kg": kg(f.FeedKg.Low), "high_kg": kg(f.FeedKg.High),
		"use_kg_d": kg(f.UseKgD.Mid), "days": kg(f.Days), "low_days": kg(f.LowDays),
		"empty": a.moment(f.Empty), "feeders": feeders,
	}
	if x, ok := firstDry(f); ok { // its own edge, which another feeder's may undercut
		data["low_days"] = kg(x.LowDays)
	}
	edge := a.after(f.EdgeDays)
	text := a.lastsLine("feed", edge, f.Empty, data) + "\n" + a.say("feed_amount", wording.Args{
		Q: append(span(f.FeedKg), wording.KgD(f.UseKgD.Mid)),
	})
	if len(parts) > 1 {
		text = a.lastsLine("feed", edge, f.Empty, data) + "\n" + strings.Join(parts, "; ") + "."
	}
	more, why := a.feedAhead(data)
	if more != "" {
		text += " " + more
	}
	return Answer{Data: data, Text: text, Reasons: append(append(feedSum(f), f.Reasons...), why...)}
}

// feedSum is the sum for the first feeder to run dry.
func feedSum(f model.FeedLeft) []model.Reason {
	x, ok := firstDry(f)
	if !ok {
		return nil
	}
	r := model.Reason{Code: "feed_sum", Q: []model.Quantity{
		wording.Kg(x.LevelKg.Mid), wording.KgD(x.UseKgD.Mid), wording.Days(x.Days), wording.Days(x.LowDays),
	}}
	if len(f.Feeders) > 1 {
		r.Names = []string{x.Name}
	}
	return []model.Reason{r}
}

// firstDry is the first feeder to run dry.
func firstDry(f model.FeedLeft) (model.FeederLeft, bool) {
	for _, x := range f.Feeders {
		if x.Empty.Equal(f.Empty) {
			return x, true
		}
	}
	return model.FeederLeft{}, false
}

// after is the moment so many days from now.
func (a asked) after(days float64) time.Time {
	return a.now.Add(time.Duration(days * 24 * float64(time.Hour)))
}

// lastsLine is the verdict: does it last until the day asked about, else the
// next visit; visits that are to be skipped are passed over.
func (a asked) lastsLine(what string, edge, likely time.Time, data map[string]any) string {
	until := a.until()
	code := what + "_lasts"
	switch {
	case !likely.After(a.now):
		code = what + "_gone"
	case edge.Sub(a.now) < time.Hour:
		code = what + "_out"
	case edge.Before(until):
		code = what + "_short"
	}
	data["lasts_until"] = model.DayOf(until).String()
	data["lasts"] = !edge.Before(until)
	return a.say(code, wording.Args{
		Days: []model.Day{model.DayOf(until)}, Moments: []time.Time{edge.In(a.now.Location()), likely.In(a.now.Location())},
	})
}

// until is the moment until which something should last: the end of the day
// asked about, else the next visit on a later day, after the days skipped.
func (a asked) until() time.Time {
	if a.On != nil && *a.On >= a.today {
		return a.On.At(24*60-1, a.now.Location())
	}
	t := a.now
	for model.DayOf(t) <= a.today {
		t = a.h.NextChore(t)
	}
	if a.Assume != nil && a.Assume.SkipDays > 0 {
		back := model.DayOf(t) + model.Day(a.Assume.SkipDays)
		t = back.At(a.h.Chore.Minute, a.now.Location())
	}
	return t
}
