package schedule

import "troughbell/model"

// seasonBetween says, once, that the last pig has gone and the nudges stop.
func seasonBetween(v *view) []need {
	if len(v.pigs) > 0 || len(v.h.Animals) == 0 {
		return nil
	}
	last := v.h.Animals[0]
	for _, a := range v.h.Animals {
		if a.Gone == nil {
			return nil // comes later
		}
		if a.Gone.At.After(last.Gone.At) {
			last = a
		}
	}
	pigs, used := 0, 0
	for _, a := range v.h.Animals {
		if a.Gone.On < last.Group.Arrived {
			continue // of an earlier season
		}
		pigs++
		if a.Gone.F.How != model.Died {
			used++
		}
	}
	at := v.evening(last.Gone.On)
	return []need{{token: token(aboutSeason, last.Gone.On), asked: true, buttons: []Button{}, Line: Line{
		About: aboutSeason, Topic: aboutSeason, Grade: Routine, Code: CodeSeasonOver, On: last.Gone.On,
		Earliest: at, Latest: at.Add(2 * day),
		Q: []model.Quantity{{Value: float64(pigs), Unit: model.Count}, {Value: float64(used), Unit: model.Count}},
	}}}
}
