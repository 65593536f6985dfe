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

const (
	bridgedDays = 2.0     // days' feed more than expected that a seen level must hold,
	bridgedPart = 0.15    // and part of the feeder, for levels are seen by eye
	bridgedFor  = 2 * day // after so long the sight is old
)

// levelBetween says, while the person is still near, that a feeder was seen
// clearly fuller than the pigs' appetite explains: the feed may be bridged, or
// the feeder shut too far (common practice, no source).
func levelBetween(v *view) []need {
	out := v.levelMidweek()
	seen := map[string]bool{}
	for i := len(v.h.FeedLevels) - 1; i >= 0; i-- {
		s := v.h.FeedLevels[i]
		feeder := v.h.Feeder(s.F.Feeder)
		if v.start.Sub(s.At) > bridgedFor || feeder == nil || seen[feeder.Name] {
			continue
		}
		seen[feeder.Name] = true // only the latest sight of each
		if v.pouredSince(feeder, s.At) {
			continue
		}
		before, err := v.f.FeedLeft(s.At.Add(-time.Minute))
		if err != nil {
			continue // nothing was known to expect
		}
		for _, f := range before.Feeders {
			if f.Name != feeder.Name {
				continue
			}
			kg, ok := seenKg(s.F, f)
			if !ok || kg <= f.LevelKg.High || kg-f.LevelKg.Mid < max(bridgedDays*f.UseKgD.Mid, bridgedPart*f.Capacity.Mid) {
				continue
			}
			out = append(out, need{token: token("level:bridged", f.Name, s.At), quiet: day, Line: Line{
				About: aboutLevel, Topic: "level:" + f.Name, Grade: Welfare, Code: CodeLevelBridged,
				Names: []string{f.Name}, On: s.On, Earliest: s.At.Add(lateReply), Latest: s.At.Add(day),
				Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}, {Value: f.LevelKg.Mid, Unit: model.Kilograms}},
			}})
		}
	}
	return out
}

func seenKg(s model.FeedLevel, f model.FeederLeft) (float64, bool) {
	switch {
	case s.FeedKg != nil:
		return *s.FeedKg, true
	case s.Fraction != nil:
		return *s.Fraction * f.Capacity.Mid, true
	}
	return 0, false
}

// pouredSince reports whether feed was logged into the feeder after a moment.
func (v *view) pouredSince(f *model.Feeder, at time.Time) bool {
	for i := len(v.h.Refills) - 1; i >= 0 && v.h.Refills[i].At.After(at); i-- {
		if name := v.h.Refills[i].F.Feeder; name == "" || v.h.Feeder(name) == f {
			return true
		}
	}
	return false
}
