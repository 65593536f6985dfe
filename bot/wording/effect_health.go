package wording

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

// notClearUnknown asks for the withdrawal days.
const notClearUnknown = "not_clear_unknown"

// treatmentEffects says when the pigs are clear, and what that means for a
// booking. Without the days of the label they are not clear at all.
func (v Voice) treatmentEffects(e reading.Entry, t model.Treatment) []Effect {
	who := t.Animals
	if len(who) == 0 {
		who = []string{model.All}
	}
	if t.WithdrawalDays == nil {
		return []Effect{{Code: notClearUnknown, Names: who}}
	}
	pigs := v.pigsNamed(who)
	var clearAt time.Time
	for _, c := range v.Herd.Withdrawal(v.Now) {
		if !holds(pigs, c.Animal) || !c.Treated {
			continue
		}
		if !c.Known {
			return []Effect{{Code: "not_clear_other", Names: who}}
		}
		if c.ClearAt.After(clearAt) {
			clearAt = c.ClearAt
		}
	}
	if clearAt.IsZero() {
		return nil
	}
	out := []Effect{{Code: "clear", Names: who, At: clearAt.In(v.Now.Location())}}
	if b, ok := v.Herd.NextBooking(v.today()); ok && v.loadMoment(b).Before(clearAt) {
		out = append(out, Effect{Code: "booking_not_clear", Names: who, On: b.Day})
	}
	return out
}

// loadMoment is when the pigs of a booking must be clear at the latest: the
// hour booked, else the day's beginning.
func (v Voice) loadMoment(b model.Booked) time.Time {
	minute := 0
	if b.Minute != nil {
		minute = *b.Minute
	}
	return b.Day.At(minute, v.Now.Location())
}

// pigsNamed finds the living pigs that names speak of.
func (v Voice) pigsNamed(names []string) []*model.Animal {
	alive := v.Herd.Alive(v.today())
	if len(names) == 0 || len(names) == 1 && names[0] == model.All {
		return alive
	}
	var out []*model.Animal
	for _, n := range names {
		if a := v.Herd.Animal(n); a != nil && holds(alive, a) {
			out = append(out, a)
		}
	}
	return out
}

func holds(pigs []*model.Animal, a *model.Animal) bool {
	for _, p := range pigs {
		if p == a {
			return true
		}
	}
	return false
}

func (v Voice) sickEffects(s model.Sick) []Effect {
	if s.Well {
		return nil
	}
	return []Effect{{Code: "sick_look", Names: s.Animals}}
}

// alarmEffects is the card for an emergency: what to do first, whom to call.
func (v Voice) alarmEffects(a model.Alarm) []Effect {
	if a.Over {
		if a.What == model.AlarmOut {
			return []Effect{{Code: "alarm_over_out", Q: []model.Quantity{N(v.alive())}}}
		}
		if a.What == model.AlarmNoWater {
			return []Effect{{Code: "alarm_over_no_water"}}
		}
		return nil
	}
	if a.What == model.AlarmNoWater && a.Hours != nil {
		if x, long := thirst(*a.Hours); long {
			return []Effect{x}
		}
	}
	x := Effect{Code: "alarm_" + a.What}
	if n := v.alive(); n > 0 {
		x.Q = []model.Quantity{N(n)}
	}
	return []Effect{x}
}

func (v Voice) alive() int {
	if v.Herd == nil {
		return 0
	}
	return len(v.Herd.Alive(v.today()))
}

// weakFence is the voltage below which pigs learn that a wire can be passed;
// common practice, no source.
const weakFence = 4.0

func (v Voice) fenceEffects(f model.Fence) []Effect {
	if f.Kv < weakFence {
		return []Effect{{Code: "fence_weak", Q: []model.Quantity{{Value: weakFence, Unit: model.Kilovolts}}}}
	}
	return nil
}
