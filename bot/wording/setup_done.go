package wording

import (
	"slices"
	"strings"

	"troughbell/model"
)

// SetupDone sums up a set-up: when the pigs will be ready, the feed to buy in
// all, the days to ask the butcher for, and what is assumed because it was not
// said.
func (v Voice) SetupDone(h *model.Herd) string {
	v.Herd = h
	if v.alive() == 0 {
		return v.say(partSetup, "done_unknown", Args{}) + " " + v.say(partSetup, "pigs_none", Args{}) + v.assumedLine()
	}
	t, err := h.Target(h.TargetKg, v.today())
	if err != nil {
		return v.say(partSetup, "done_unknown", Args{}) + " " + v.Missing(err, "target") + v.assumedLine()
	}
	days := t.Herd.Days
	code, unbooked := "done", "unbooked"
	if t.Herd.Already {
		code, unbooked = "done_reached", "unbooked_now"
	}
	first := []string{v.say(partSetup, code, Args{
		Q: []model.Quantity{Kg(t.TargetKg)}, Days: []model.Day{days.Mid, days.Low, days.High},
	})}
	if need, err := h.FeedNeed(v.Now, days.Mid); err == nil {
		first = append(first, v.say(partSetup, "feed", Args{Q: []model.Quantity{Kg(need.FeedKg.Mid)}}))
	}
	second := v.say(partSetup, unbooked, Args{})
	if b, ok := h.NextBooking(v.today()); ok {
		second = v.say(partSetup, "booked", Args{Days: []model.Day{b.Day}})
	}
	return strings.Join(first, " ") + "\n" + second + v.assumedLine()
}

// Beside leaves out of the effects what SetupDone says as well: the day of all pigs.
func (v Voice) Beside(effects []Effect) []Effect {
	t, err := v.Herd.Target(v.Herd.TargetKg, v.today())
	if err != nil {
		return effects
	}
	return slices.DeleteFunc(slices.Clone(effects), func(e Effect) bool {
		return e.Code == targetDay || (e.Code == finish || e.Code == reached) && len(t.Groups) == 1
	})
}

// assumedLine lists what stands at its default.
func (v Voice) assumedLine() string {
	h := v.Herd
	var assumed []string
	if h.Units == "" {
		assumed = append(assumed, "US units")
	}
	if !h.TargetStated {
		assumed = append(assumed, "target "+v.Quantity(Kg(h.TargetKg), ""))
	}
	if len(h.Feeders) == 0 {
		assumed = append(assumed, "feeder size learned from fills")
	}
	if len(h.Barrels) == 0 {
		assumed = append(assumed, "no water barrels")
	}
	if !h.Chore.Stated {
		assumed = append(assumed, "chores "+v.choreDays()+" "+v.Clock(h.Chore.Minute))
	}
	if h.Zone == "" {
		assumed = append(assumed, "time zone "+v.Now.Location().String())
	}
	if len(assumed) == 0 {
		return ""
	}
	return "\n" + v.say(partSetup, "assumed", Args{}) + " " + strings.Join(assumed, ", ") + ". Text to change any."
}

func (v Voice) choreDays() string {
	words := make([]string, len(v.Herd.Chore.Days))
	for i, w := range v.Herd.Chore.Days {
		words[i] = w.String()[:3]
	}
	return Join(words, "and")
}
