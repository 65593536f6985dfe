package wording

import (
	"strings"
	"time"

	"troughbell/model"
)

func (v Voice) refillEffects(f model.Refill) []Effect { return v.feedEffects(f.Feeder) }

// feedEffects says past which chore day the feed is safe, by the cautious edge
// of the feeder spoken of, else of the first to run dry.
func (v Voice) feedEffects(feeder string) []Effect {
	left, err := v.Herd.FeedLeft(v.Now)
	if err != nil {
		if lacks(err, "capacity") {
			return []Effect{{Code: "feed_capacity", Names: []string{v.ownFeeder()}}}
		}
		return nil
	}
	edge := left.EdgeDays
	var names []string
	for _, x := range left.Feeders {
		if feeder != "" && strings.EqualFold(x.Name, feeder) {
			edge = x.EdgeDays
			if len(left.Feeders) > 1 {
				names = []string{x.Name}
			}
		}
	}
	return []Effect{v.lasts("feed", names, v.Now.Add(daysLong(edge)))}
}

// feedGoneEffects is for who stands before an empty feeder: what to pour, and until
// when it lasts then.
func (v Voice) feedGoneEffects(feeder string) []Effect {
	next := v.Herd.NextChore(v.Now)
	out := Effect{Code: "feed_empty", On: model.DayOf(next)}
	plan, err := v.Herd.RefillPlan(v.Now, next)
	if err != nil {
		return []Effect{{Code: "feed_empty"}}
	}
	kg, lasts := 0.0, true
	for _, f := range plan.Feeders {
		if feeder == "" || strings.EqualFold(f.Name, feeder) {
			kg, lasts = kg+f.PourKg, lasts && f.Lasts
		}
	}
	if kg <= 0 || !lasts {
		return []Effect{{Code: "feed_empty"}}
	}
	out.Q = []model.Quantity{Kg(kg)}
	return []Effect{out}
}

func daysLong(days float64) time.Duration { return time.Duration(days * 24 * float64(time.Hour)) }

func (v Voice) recipeEffects() []Effect {
	r, err := v.Herd.RationCheck(v.today())
	if err != nil {
		return nil
	}
	code := "ration_short"
	if r.OK {
		code = "ration_ok"
	}
	return []Effect{{Code: code, Q: []model.Quantity{
		Kg(r.ForWeightKg),
		{Value: r.SIDLysinePct, Unit: model.Percent},
		{Value: r.NeededSIDLysinePct, Unit: model.Percent},
	}}}
}
