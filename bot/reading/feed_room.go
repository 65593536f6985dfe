package reading

import "troughbell/model"

// pourSlack is how much over a feeder's capacity a pour may be said: a heaped
// lid, a generous guess.
const pourSlack = 1.12

// mostOver is how many times what fits an amount may be before nobody can have
// meant it.
const mostOver = 4

// A pour of more than bigPour of a feeder is held against what should still be in
// it; levelDoubt of the feeder is left to the figure's own error and to pigs that
// ate more than it knows.
const (
	bigPour    = 0.65
	levelDoubt = 0.25
)

// roomLeft is what may fit into a feeder now, in kilograms: its size less the
// cautious figure of what it holds, where there is one.
func (r *reader) roomLeft(f *model.Feeder) float64 {
	room := r.judge.room(f)
	if room > 0 {
		room -= min(r.judge.held(f, r.c.Now), 0.95*room)
	}
	return room
}

// onTopOf says that a pour of today is more than what the feeder can have room
// for, by what it should still hold. A level told with it is believed.
func (r *reader) onTopOf(pour model.Refill, s span) bool {
	f := r.c.Herd.Feeder(pour.Feeder)
	if f == nil || pour.Fraction != nil || pour.FromEmpty {
		return false
	}
	room := r.judge.room(f)
	if room <= 0 || *pour.FeedKg <= room*bigPour {
		return false
	}
	on, _, _ := r.when(s, lookBack)
	return on == r.today && *pour.FeedKg > r.roomLeft(f)+room*levelDoubt
}

func (r *reader) tooMuch(name string, kg float64) bool {
	f := r.c.Herd.Feeder(name)
	if f == nil {
		return false
	}
	room := r.judge.room(f)
	return room > 0 && kg > room*pourSlack
}
