package schedule

// weighVisit says that a weighing before the next visit would change a decision.
func weighVisit(v *view) []need {
	d, err := v.f.WeighDue(v.day)
	if err != nil || d.Blocked {
		return nil
	}
	return []need{{quiet: 14 * day, Line: Line{
		About: aboutWeigh, Topic: aboutWeigh, Grade: Routine, Code: CodeWeighDue,
		Names: v.names(d.Pigs), On: d.On, Latest: (d.On + 1).At(0, v.loc), Reasons: d.Reasons,
	}}}
}
