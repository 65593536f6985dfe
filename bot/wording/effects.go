package wording

import (
	"errors"
	"slices"
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Effects gives what recording the entries changed, computed from the herd as
// it is after recording. A figure that lacks something has no effect to tell.
func (v Voice) Effects(h *model.Herd, es []reading.Entry) []Effect {
	v.Herd = h
	var out []Effect
	for i, e := range es {
		f, ok := e.Act.(reading.Fact)
		if !ok {
			continue
		}
		for _, x := range v.effectsOf(e, f.Fact) {
			x.Entry = i
			out = append(out, x)
		}
	}
	return onceEach(out)
}

func (v Voice) effectsOf(e reading.Entry, f model.Fact) []Effect {
	switch f := f.(type) {
	case model.Refill:
		return v.refillEffects(f)
	case model.FeedLevel:
		if f.Fraction != nil && *f.Fraction == 0 && e.On == v.today() {
			return v.feedGoneEffects(f.Feeder)
		}
		return v.feedEffects(f.Feeder)
	case model.Water:
		return v.waterEffects(e, f)
	case model.WallowFill:
		return v.wallowEffects()
	case model.Weigh:
		return v.weighEffects(e, f)
	case model.Worm:
		return v.treatmentEffects(e, f.Treatment)
	case model.Treat:
		return v.treatmentEffects(e, f.Treatment)
	case model.Sick:
		return v.sickEffects(f)
	case model.Alarm:
		return v.alarmEffects(f)
	case model.Fence:
		return v.fenceEffects(f)
	case model.Weather:
		if f.HighC == nil && f.LowC == nil && f.RhPct == nil { // rain
			return v.rainEffects()
		}
		return v.weatherEffects(e.On)
	case model.Move:
		return v.moveEffects()
	case model.Arrive:
		return v.arriveEffects(e, f)
	case model.Gone:
		return v.goneEffects(e, f)
	case model.Stock:
		return stockEffects(f)
	case model.Setting:
		return v.settingEffects(f)
	case model.Booked:
		return v.bookedEffects(f)
	case model.Recipe:
		return v.recipeEffects()
	case model.AwayFrom:
		return v.awayEffects(f)
	}
	return nil
}

// states are the beginnings of effects that speak of the herd as it is after the
// whole text, not of their own entry.
var states = []string{"feed_", "water_", "wallow_", "ration_", "move_next", "left", "none_left", "next_round", "target_"}

// onceEach drops an effect on the herd's state that a later entry of the same
// text says again.
func onceEach(effects []Effect) []Effect {
	var out []Effect
	for i, x := range effects {
		again := false
		for _, y := range effects[i+1:] {
			again = again || x.Code == y.Code && x.On == y.On && x.At.Equal(y.At) && slices.Equal(x.Names, y.Names) && slices.Equal(x.Q, y.Q)
		}
		isState := slices.ContainsFunc(states, func(s string) bool { return strings.HasPrefix(x.Code, s) })
		if !again || !isState {
			out = append(out, x)
		}
	}
	return out
}

// lacks reports whether a figure lacks just this.
func lacks(err error, what string) bool {
	var m *model.Missing
	return errors.As(err, &m) && m.What == what
}

// lastChoreBefore is the last chore day, after today, whose round comes before
// the moment; false where the very next one comes after it.
func (v Voice) lastChoreBefore(t time.Time) (model.Day, bool) {
	next := v.choreAfterToday()
	if t.Before(next) {
		return model.DayOf(next), false
	}
	for {
		after := v.Herd.NextChore(next)
		if t.Before(after) || after.Sub(next) > 60*24*time.Hour {
			return model.DayOf(next), true
		}
		next = after
	}
}

// choreAfterToday is the next chore moment on a later day than today.
func (v Voice) choreAfterToday() time.Time {
	t := v.Now
	for {
		t = v.Herd.NextChore(t)
		if model.DayOf(t) > v.today() {
			return t
		}
	}
}

// noon is the hour until which pigs that go to the butcher are fed and watered where
// no other is known, in minutes after midnight.
const noon = 12 * 60

// lasts is the effect that says past or until when something is safe.
func (v Voice) lasts(prefix string, names []string, edge time.Time) Effect {
	edge = edge.In(v.Now.Location())
	chore, past := v.lastChoreBefore(edge)
	code := prefix + "_short"
	last, leave := v.Herd.LastPigsLeave(v.today())
	if leave = leave && !edge.Before(last.At(noon, v.Now.Location())); leave && (!past || chore >= last) {
		chore = last // nobody is there to eat or drink any longer
	}
	switch {
	case past, leave:
		code = prefix + "_past"
	case edge.Sub(v.Now) < time.Hour:
		code = prefix + "_out"
	}
	return Effect{Code: code, Names: names, On: chore, At: edge}
}
