package schedule

// wormVisit says that a worming, or a dung test before it, falls due before the
// next visit; or, once for a booking, that it could not be clear in time.
func wormVisit(v *view) []need {
	d, err := v.f.WormingDue(v.day)
	if err != nil {
		return nil
	}
	l := Line{
		About: aboutWorm, Topic: aboutWorm, Grade: Routine, Code: CodeWormDue,
		Names: v.names(d.Pigs), On: d.On, Latest: (d.On + 1).At(0, v.loc), Reasons: d.Reasons,
	}
	if d.Blocked {
		l.Code = CodeWormBlocked
		if b, ok := v.h.NextBooking(v.day); ok {
			l.On = b.Day
		}
		l.Topic = token("worm:blocked", l.On)
		return []need{{Line: l, since: v.seasonStart()}}
	}
	return []need{{Line: l, quiet: 28 * day}}
}
