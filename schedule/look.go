package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// lookTopic is the topic under which it is kept that a nudge asked how full
// feeders or barrels are.
func lookTopic(about string) string { return "look:" + about }

// lookRest is for how long an answer to how full feeders are holds, waterLookRest
// for how long one about barrels does: a fill says nothing of how much went in,
// so that looks alone tell what the pigs draw.
const (
	lookRest      = 13 * day
	waterLookRest = 6 * day
)

// asksLook reports whether to ask how full things are, where an answer would
// help: not for long once nobody answers, then now and then, and not again soon
// after an answer.
func (v *view) asksLook(about string, answered time.Time, rest time.Duration) bool {
	if !answered.IsZero() && v.start.Sub(answered) < rest {
		return false
	}
	asked, last := v.toldTopic(lookTopic(about), later(answered, v.seasonStart()))
	return asked < ignoredAsk || v.start.Sub(last) >= monthly-day
}

// vagueDrawPart is the half width of the 80 % interval of the daily draw, as a
// share of it, from which a look at the barrels is worth asking for: judgement. A
// herd whose draw was never seen has some 0.37, one that was looked at a few times
// half of it.
const vagueDrawPart = 0.25

// looksAtWater reports whether to ask how full the barrels are before the fill.
func (v *view) looksAtWater(w model.WaterLeft) bool {
	var answered time.Time
	for _, f := range v.h.Waters {
		if f.F.Seen {
			answered = f.At
		}
	}
	return w.UseLD.High-w.UseLD.Mid > vagueDrawPart*w.UseLD.Mid && v.asksLook(aboutWater, answered, waterLookRest)
}

// vagueLevelPart is the width of the 80 % interval of a feeder's level, as a share
// of what it holds, from which a look is worth asking for: judgement. A look by eye
// leaves some 0.3 open, but it also tells at once when the pigs eat more than is
// thought.
const vagueLevelPart = 0.2

// looksAtFeed reports whether to ask how full the feeders are before the pour:
// where the level of one of them is known worse than a look would tell.
func (v *view) looksAtFeed(names []string) bool {
	left, err := v.f.FeedLeft(v.visitAt())
	if err != nil {
		return false
	}
	var answered time.Time
	latest(v.h.FeedLevels, func(at time.Time) { answered = at })
	return slices.ContainsFunc(left.Feeders, func(f model.FeederLeft) bool {
		return slices.Contains(names, f.Name) && f.LevelKg.High-f.LevelKg.Low > vagueLevelPart*f.Capacity.Mid
	}) && v.asksLook(aboutRefill, answered, lookRest)
}
