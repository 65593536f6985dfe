package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// goneWait is for how many days after a booked day it is worth asking whether the
// pigs went.
const goneWait = 7

// goneBetween asks once, on the evening of a booked day, whether the pigs went.
func goneBetween(v *view) []need {
	var out []need
	for _, b := range v.h.Bookings {
		d := b.F.Day
		if d > v.day || v.wentOn(b.F) {
			continue
		}
		code := CodeCheckGone
		if !v.takesAll(b.F) {
			code = CodeCheckGoneSome
		}
		out = append(out, need{token: goneToken(d), quiet: 2 * day, buttons: []Button{}, Line: Line{
			About: aboutCheck, Topic: goneToken(d), Grade: Routine, Code: code, On: d, Of: b.ID,
			Choices:  []string{ChoiceWentAll, ChoiceWentSome, ChoiceWentNot},
			Earliest: v.evening(d), Latest: v.evening(d).Add(goneWait * day),
		}})
	}
	return out
}

func goneToken(booked model.Day) string { return token("check:gone", booked) }

// wentOn reports whether pigs were said to have gone on a booked day or since, or
// on the day before it, when they are loaded.
func (v *view) wentOn(b model.Booked) bool {
	return slices.ContainsFunc(v.h.Gones, func(g model.Dated[model.Gone]) bool { return g.On >= b.Day-1 })
}

// takesAll reports whether no pig stays behind once those of an appointment have gone.
func (v *view) takesAll(b model.Booked) bool {
	return len(v.pigs) > 0 && len(v.h.BookedPigs(b, b.Day)) >= len(v.pigs)
}

// unheard reports whether all pigs were to go to the butcher, it was asked whether
// they went, and nothing was said since that shows that they are there. Who has no
// pigs any more is not told for weeks to feed them; who has, feeds them by habit, and
// the first word brings the nudges back.
func (v *view) unheard() bool {
	if _, coming := v.h.NextBooking(v.day); coming {
		return false
	}
	for _, b := range v.h.Bookings {
		told, asked := v.toldAt(goneToken(b.F.Day))
		over := (b.F.Day + 1).At(0, v.loc)
		if asked && !v.wentOn(b.F) && v.takesAll(b.F) && !lastFact(v.h).After(later(told, over)) {
			return true
		}
	}
	return false
}

// wanted is until when feed and water must last that are to last until a moment: not
// past the one at which the last pigs go to the butcher. Where no hour is booked that
// is noon.
func (v *view) wanted(until time.Time) time.Time {
	last, ok := v.h.LastPigsLeave(v.day)
	if !ok {
		return until
	}
	at := last.At(noon, v.loc)
	for _, b := range v.h.Bookings {
		if b.F.Day == last && b.F.Minute != nil {
			at = last.At(*b.F.Minute, v.loc)
		}
	}
	if at.Before(until) {
		return at
	}
	return until
}

// leaving reports whether all pigs go to the butcher on the day.
func (v *view) leaving() bool {
	b, ok := v.h.NextBooking(v.day)
	return ok && b.Day == v.day && v.takesAll(b)
}

// staysBehind are the topics that are of no use on the day on which all pigs go: a
// danger is told all the same.
var staysBehind = map[string]bool{
	aboutRefill: true, aboutWater: true, aboutWallow: true, aboutLevel: true, aboutStock: true, aboutWorm: true, aboutMove: true,
	aboutWeigh: true, aboutRation: true, aboutCapacity: true,
}

// idleOn reports whether a need is of no use since all pigs go on the day.
func (v *view) idleOn(n *need) bool {
	return n.Grade != Danger && staysBehind[n.About] && v.leaving()
}
