package answer

import (
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

const (
	// feedOutDays is how near the butcher must be for the end of the feed to be
	// worth a sentence, smallDays the day on which feeders get too small.
	feedOutDays = 7
	smallDays   = 28
)

// feedAhead adds how feed is run down to the booked day, or else from when full
// feeders no longer last between two visits, and says what is near.
func (a asked) feedAhead(data map[string]any) (string, []model.Reason) {
	if out, err := a.h.FeedOut(a.now); err == nil {
		data["feed_off_at"] = a.moment(out.At)
		data["feed_off_from"], data["feed_off_to"] = a.moment(out.From), a.moment(out.To)
		data["feed_left_at_off_kg"], data["feed_to_off_kg"] = kg(out.LeftKg.Mid), kg(out.PourKg.Mid)
		if day := model.DayOf(out.Slaughter); day-a.today <= feedOutDays && out.All {
			return a.say("feed_off", wording.Args{
				Days: []model.Day{day}, Moments: []time.Time{out.At.In(a.now.Location())}, Q: []model.Quantity{wording.Kg(out.LeftKg.Mid)},
			}), out.Reasons
		}
	}
	span, err := a.h.FeederSpan(a.now)
	if err != nil || span.Never {
		return "", nil
	}
	data["feeders_hold_kg"] = kg(span.HoldsKg.Mid)
	data["feeders_too_small_from"] = map[string]any{
		"date": span.From.Mid.String(), "low": span.From.Low.String(), "high": span.From.High.String(),
	}
	if span.From.Mid-a.today > smallDays {
		return "", nil
	}
	return a.say("feeder_small", wording.Args{Days: []model.Day{span.From.Mid}}), span.Reasons
}

// feedOff says when the feed is to be taken away before the next booked day.
func feedOff(a asked) Answer {
	out, err := a.h.FeedOut(a.now)
	if err != nil {
		return a.missing(err)
	}
	data := map[string]any{
		"feed_off_at": a.moment(out.At), "feed_off_from": a.moment(out.From), "feed_off_to": a.moment(out.To),
		"feed_left_at_off_kg": kg(out.LeftKg.Mid), "feed_to_off_kg": kg(out.PourKg.Mid),
	}
	return Answer{Data: data, Reasons: out.Reasons, Text: a.say("feed_off", wording.Args{
		Days: []model.Day{model.DayOf(out.Slaughter)}, Moments: []time.Time{out.At.In(a.now.Location())}, Q: []model.Quantity{wording.Kg(out.LeftKg.Mid)},
	})}
}
