package schedule

import "troughbell/model"

// coolDayC is the high below which pigs have no use for a wallow (common
// practice, no source).
const coolDayC = 15.0

// wallowVisit says that the wallow may be dry before the next visit.
func wallowVisit(v *view) []need {
	if v.cool() {
		return nil
	}
	w, err := v.f.WallowLeft(v.visitAt())
	if err != nil {
		return nil
	}
	l := Line{
		About: aboutWallow, Topic: aboutWallow, Grade: Routine, Code: CodeWallowVisit,
		On: w.Dry.Low, Latest: (w.Dry.Low + 1).At(0, v.loc), Reasons: w.Reasons,
	}
	l.Q = fillLitres(w)
	return []need{{Line: l, quiet: sameVisit}}
}

// wallowBetween says, on the morning of a day told to be hot, that the wallow is
// likely dry.
func wallowBetween(v *view) []need {
	if !v.hot(v.day) {
		return nil
	}
	w, err := v.f.WallowLeft(v.at)
	if err != nil || w.Dry.Mid > v.day {
		return nil
	}
	w0, _, _ := v.h.WeatherOf(v.day)
	l := Line{
		About: aboutWallow, Topic: "wallow:heat", Grade: Welfare, Code: CodeWallowHeat,
		On: v.day, Earliest: v.morning(v.day), Latest: v.evening(v.day), Reasons: w.Reasons,
		Q: append([]model.Quantity{{Value: *w0.HighC, Unit: model.Celsius}}, fillLitres(w)...),
	}
	return []need{{Line: l, token: token("wallow:heat", v.day), quiet: sameVisit}}
}

func fillLitres(w model.WallowLeft) []model.Quantity {
	if w.FillL <= 0 {
		return nil
	}
	return []model.Quantity{{Value: w.FillL, Unit: model.Litres}}
}

// cool reports whether the latest told days of the past week were all cool.
func (v *view) cool() bool {
	told := false
	for d := v.day - 6; d <= v.day+1; d++ {
		if w, _, _ := v.h.WeatherOf(d); w.HighC != nil {
			if *w.HighC >= coolDayC {
				return false
			}
			told = true
		}
	}
	return told
}
