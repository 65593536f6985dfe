package schedule

// moveVisit says that the pigs should leave their pen before the next visit.
func moveVisit(v *view) []need {
	d, err := v.f.MoveDue(v.day)
	if err != nil || d.Blocked {
		return nil
	}
	l := Line{
		About: aboutMove, Topic: aboutMove, Grade: Routine, Code: CodeMoveDue,
		On: d.On, Latest: (d.On + 1).At(0, v.loc), Reasons: d.Reasons,
	}
	if d.Pen != nil && d.Pen.Name != "" {
		l.Names = []string{d.Pen.Name}
	}
	return []need{{Line: l, quiet: 10 * day}}
}
