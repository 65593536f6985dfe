package model

// sickEndsAfter is how many days a sick spell lasts that nobody ended, and
// sickEats is how far a sick pig's feed may lie from a sound one's: judgement.
const (
	sickEndsAfter = 14
	sickEats      = 0.5
)

// sickOn lists the pigs of the herd that were unwell on the day.
func (h *Herd) sickOn(d Day) []*Animal {
	var out []*Animal
	for _, a := range h.Alive(d) {
		var since Day
		sick := false
		for _, s := range h.Sicks {
			if s.On > d {
				break
			}
			if len(resolve(s.F.Animals, []*Animal{a})) == 0 {
				continue
			}
			if sick = !s.F.Well; sick {
				since = s.On
			}
		}
		if sick && d-since <= sickEndsAfter {
			out = append(out, a)
		}
	}
	return out
}

// thirstyOn reports whether pigs were said to be without water on the day or on
// one of the two days before: thirst takes the appetite.
func (h *Herd) thirstyOn(d Day) bool {
	for _, a := range h.Alarms {
		if a.F.What == AlarmNoWater && !a.F.Over && a.On <= d+1 && d-a.On <= 2 {
			return true
		}
	}
	return false
}

// sickFeedSpread is the relative variance that a day's use gains, reckoned over
// a week as the noise of sound pigs is, where pigs are sick or without water.
// Such days teach little of the herd's appetite.
func (h *Herd) sickFeedSpread(d Day, pigs int) float64 {
	if len(h.Sicks) == 0 && len(h.Alarms) == 0 {
		return 0
	}
	share := sickEats * float64(len(h.sickOn(d))) / float64(pigs)
	if h.thirstyOn(d) {
		share = sickEats
	}
	return 7 * share * share
}
