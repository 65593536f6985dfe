package schedule

import "troughbell/model"

// well gives the figures of a standing message that says that all is well.
func (v *view) well() []Line {
	var out []Line
	if f, err := v.f.FeedLeft(v.visitAt()); err == nil {
		out = append(out, Line{
			About: aboutRefill, Topic: aboutRefill, Grade: Routine, Code: CodeWellFeed,
			On: model.DayOf(v.visitAt().Add(days(f.EdgeDays)).In(v.loc)), At: f.Empty,
			Q: []model.Quantity{{Value: f.EdgeDays, Unit: model.Days}}, Reasons: f.Reasons,
		})
	}
	if w, err := v.f.WaterLeft(v.visitAt()); err == nil {
		out = append(out, Line{
			About: aboutWater, Topic: aboutWater, Grade: Routine, Code: CodeWellWater,
			On: model.DayOf(w.EdgeAt.In(v.loc)), At: w.LikelyAt,
			Q: []model.Quantity{{Value: w.EdgeDays, Unit: model.Days}}, Reasons: w.Reasons,
		})
	}
	if m, err := v.f.MeanWeight(v.pigs, v.day); err == nil {
		out = append(out, Line{
			About: aboutWeigh, Topic: aboutWeigh, Grade: Routine, Code: CodeWellWeight, On: v.day, Reasons: m.Reasons,
			Q: []model.Quantity{
				{Value: m.WeightKg.Mid, Unit: model.Kilograms},
				{Value: m.WeightKg.Low, Unit: model.Kilograms},
				{Value: m.WeightKg.High, Unit: model.Kilograms},
				{Value: float64(len(v.pigs)), Unit: model.Count},
			},
		})
	}
	if t, err := v.f.Target(v.h.TargetKg, v.day); err == nil {
		out = append(out, Line{
			About: aboutBook, Topic: aboutBook, Grade: Routine, Code: CodeWellTarget, Window: t.Herd.Days, Reasons: t.Reasons,
			Q: []model.Quantity{{Value: t.TargetKg, Unit: model.Kilograms}},
		})
	}
	return out
}
