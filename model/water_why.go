package model

import "time"

// waterReasons says why the water lasts as long as it does, the weightiest
// first.
func (h *Herd) waterReasons(at time.Time, s *waterState, w WaterLeft, alarm *Dated[Alarm]) []Reason {
	var out []Reason
	if alarm != nil {
		out = append(out, Reason{Code: WaterAlarm, On: alarm.On})
	}
	today := DayOf(at)
	const recent = 14 // days for which a surprise stays worth telling
	for _, e := range s.events {
		if today-e.On <= recent {
			out = append(out, e)
		}
	}
	var unseen []string
	for i, b := range h.Barrels {
		if !s.known[i] {
			unseen = append(unseen, b.Name)
			continue
		}
		out = append(out, Reason{
			Code: WaterLevel, Names: []string{b.Name}, On: DayOf(s.since[i]),
			Q: []Quantity{{w.Barrels[i].Litres.Mid, Litres}},
		})
	}
	out = append(out, Reason{Code: WaterUse, On: today, Q: []Quantity{
		{w.UseLD.Mid, LitresPerDay}, {float64(len(h.Alive(today))), Count},
	}})
	factor := s.drawFactor()
	if s.marks > 0 {
		out = append(out, Reason{Code: WaterLearned, Q: []Quantity{{factor * 100, Percent}, {float64(s.marks), Count}}})
	} else {
		out = append(out, Reason{Code: WaterPublished, Q: []Quantity{{coolRatioLKg, Ratio}, {NippleWaste * 100, Percent}}})
	}
	out = append(out, h.heatAhead(today, w))
	if len(unseen) > 0 {
		out = append(out, Reason{Code: WaterBarrelUnseen, Names: unseen})
	}
	if n := s.barrels(); n > 1 {
		for i, b := range h.Barrels {
			// Half as much again as an even part is told as a liking.
			if share := s.mean[i] / factor; share > 1.5/float64(n) {
				out = append(out, Reason{Code: WaterFavoured, Names: []string{b.Name}, Q: []Quantity{{share * 100, Percent}}})
			}
		}
	}
	return out
}

// heatAhead is the hottest told day while the water lasts, or the season's high.
func (h *Herd) heatAhead(today Day, w WaterLeft) Reason {
	best := Reason{Code: WaterHeatGuessed, On: today, Q: []Quantity{{h.Air(today).HighC, Celsius}}}
	for d := today; d <= today+Day(w.Days)+1; d++ {
		if air := h.Air(d); air.HighTold && (best.Code != WaterHeat || air.HighC > best.Q[0].Value) {
			best = Reason{Code: WaterHeat, On: d, Q: []Quantity{{air.HighC, Celsius}}}
		}
	}
	return best
}
