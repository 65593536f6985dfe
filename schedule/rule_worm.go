package schedule

import "troughbell/model"

// wormLast is how near the butcher a worming is no longer proposed where its
// withdrawal days are not known: few labels let it be clear in time, and a nag
// that cannot be acted on is none.
const wormLast = model.Day(21)

// wormVisit says that a worming, or a dung test before it, falls due before the
// next visit; or, once for a booking, that it could not be clear in time.
func wormVisit(v *view) []need {
	d, err := v.f.WormingDue(v.day)
	if err != nil {
		return nil
	}
	if b, ok := v.h.NextBooking(v.day); ok && b.Day-v.day <= wormLast && daysUnknown(d) {
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

// daysUnknown reports whether no withdrawal days were ever told to go by.
func daysUnknown(d model.Due) bool {
	for _, r := range d.Reasons {
		if r.Code == model.WormingReadLabel {
			return true
		}
	}
	return false
}
