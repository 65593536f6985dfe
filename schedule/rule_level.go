package schedule

import (
	"time"

	"troughbell/model"
)

// standsDays is how long feed may stand without a pour before it is knocked
// and levelled (common practice, no source).
const standsDays = 10

// levelVisit says that feed has stood in a feeder for long.
func levelVisit(v *view) []need {
	p, err := v.f.RefillPlan(v.visitAt(), v.next)
	if err != nil || p.Needed { // a pour levels it
		return nil
	}
	last := map[string]time.Time{}
	for _, r := range v.h.Refills {
		if r.F.Feeder == "" {
			for _, f := range v.h.Feeders {
				last[f.Name] = r.At
			}
		} else if f := v.h.Feeder(r.F.Feeder); f != nil {
			last[f.Name] = r.At
		}
	}
	l := Line{About: aboutLevel, Topic: aboutLevel, Grade: Routine, Code: CodeLevelStanding}
	most := 0
	for _, f := range v.h.Feeders {
		at, ok := last[f.Name]
		if days := int(v.day - model.DayOf(at.In(v.loc))); ok && days >= standsDays {
			l.Names = append(l.Names, f.Name)
			most = max(most, days)
		}
	}
	if len(l.Names) == 0 {
		return nil
	}
	l.Q = []model.Quantity{{Value: float64(most), Unit: model.Days}}
	return []need{{Line: l, quiet: 6 * day}}
}
