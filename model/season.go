package model

import "sort"

// Season is a run of days with pigs: from the first that came to the last of those
// that were there with others of it. The money for them is paid before they come,
// the butcher's after they are gone.
type Season struct {
	From, To Day // To is [Ongoing] while one of them is there
	// PaidFrom and PaidTo are the days whose money is the season's.
	PaidFrom, PaidTo Day
	Pigs             []*Animal
}

// Ongoing stands for the end of a season that goes on.
const Ongoing = Day(1 << 30)

// paidAfterDays is how long money belongs to a season whose pigs are gone. Judgement.
const paidAfterDays = 60

// Over reports whether all of the season's pigs were gone by the end of the day.
func (s Season) Over(on Day) bool { return s.To <= on }

// Seasons lists the herd's seasons in their order.
func (h *Herd) Seasons() []Season {
	animals := append([]*Animal(nil), h.Animals...)
	sort.SliceStable(animals, func(i, j int) bool { return animals[i].Group.Arrived < animals[j].Group.Arrived })
	var out []Season
	for _, a := range animals {
		end := Ongoing
		if a.Gone != nil {
			end = a.Gone.On
		}
		if n := len(out); n > 0 && a.Group.Arrived <= out[n-1].To {
			out[n-1].To = max(out[n-1].To, end)
			continue
		}
		out = append(out, Season{From: a.Group.Arrived, To: end})
	}
	for i := range out {
		s := &out[i]
		for _, a := range h.Animals {
			if a.Group.Arrived >= s.From && a.Group.Arrived <= s.To {
				s.Pigs = append(s.Pigs, a)
			}
		}
		// Between two seasons money belongs to the earlier one for two months, and to
		// the later one from then on, or from its first pig on.
		s.PaidFrom, s.PaidTo = -Ongoing, Ongoing
		if i > 0 {
			s.PaidFrom = min(out[i-1].To+paidAfterDays+1, s.From)
		}
		if i+1 < len(out) {
			s.PaidTo = min(s.To+paidAfterDays, out[i+1].From-1)
		}
	}
	return out
}

// season finds the season of the day: the one whose pigs are there, else the
// latest before it, else the whole life of the herd.
func (h *Herd) season(on Day) Season {
	best := Season{From: -Ongoing, To: Ongoing, PaidFrom: -Ongoing, PaidTo: Ongoing, Pigs: h.Animals}
	for i, s := range h.Seasons() {
		if s.From <= on || i == 0 {
			best = s
		}
	}
	return best
}

// SeasonsOf finds the seasons that began in the year; where none did, those that
// ended in it.
func (h *Herd) SeasonsOf(year int) []Season {
	var began, ended []Season
	for _, s := range h.Seasons() {
		if y, _, _ := s.From.Date(); y == year {
			began = append(began, s)
		}
		if s.To == Ongoing {
			continue
		}
		if y, _, _ := s.To.Date(); y == year {
			ended = append(ended, s)
		}
	}
	if len(began) > 0 {
		return began
	}
	return ended
}
