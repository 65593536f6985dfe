package model

import (
	"maps"
	"slices"
)

// With is the herd with one more record, as folding all of its records anew would
// give it; h stays as it is. False where only that gives it: the record is not the
// latest of them, or does more than to stand behind the others of its kind.
func (h *Herd) With(r Record) (*Herd, bool) {
	if !standsBehind(r.Fact) || !h.Last.IsZero() && before(&keyed{Record: r}, &keyed{Record: h.latest}) {
		return nil, false
	}
	c := h.clipped()
	c.fold(r)
	return c, true
}

// standsBehind reports whether folding the fact only appends it to lists and sets
// values of the herd's own, so that nothing that two herds share is changed.
func standsBehind(f Fact) bool {
	switch f.(type) {
	case Weigh, Refill, FeedLevel, Stock, Mixed, Recipe, Water, WallowFill, Sick, Alarm, Fence, Spend, Expected, AwayFrom,
		Note, Remind, Done, Snooze, Told, Question, Settled, Import:
		return true
	}
	return false
}

// clipped is the herd with nothing computed yet and with lists that can be
// appended to, whatever is appended to h's: what is in them is shared.
func (h *Herd) clipped() *Herd {
	c := *h
	c.figures = &figures{}
	c.settled = maps.Clone(h.settled)
	c.Weighings, c.Refills, c.FeedLevels = slices.Clip(h.Weighings), slices.Clip(h.Refills), slices.Clip(h.FeedLevels)
	c.Stocks, c.Mixes, c.Recipes = slices.Clip(h.Stocks), slices.Clip(h.Mixes), slices.Clip(h.Recipes)
	c.Waters, c.WallowFills = slices.Clip(h.Waters), slices.Clip(h.WallowFills)
	c.Sicks, c.Alarms, c.Fences = slices.Clip(h.Sicks), slices.Clip(h.Alarms), slices.Clip(h.Fences)
	c.Spends, c.Expecteds, c.Aways = slices.Clip(h.Spends), slices.Clip(h.Expecteds), slices.Clip(h.Aways)
	c.Notes, c.Reminds, c.Dones, c.Snoozes = slices.Clip(h.Notes), slices.Clip(h.Reminds), slices.Clip(h.Dones), slices.Clip(h.Snoozes)
	c.Tolds, c.Questions, c.Imports = slices.Clip(h.Tolds), slices.Clip(h.Questions), slices.Clip(h.Imports)
	return &c
}
