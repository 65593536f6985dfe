package season

import (
	"fmt"
	"time"

	"troughbell/model"
)

// farm is pigs, feeders and barrels as time goes by.
type farm struct {
	herd    *herd
	loc     *time.Location
	now     time.Time
	feeders []*vessel
	barrels []*vessel
	losses  []loss // spills and leaks to come, in order
	feed    dryness
	water   dryness
	settled bool      // the pigs are there, fed and watered
	gone    bool      // the pigs have left
	feedOff time.Time // from then on they get no feed before slaughter
}

// dryness is for how long the pigs found nothing.
type dryness struct {
	hours   float64 // nothing anywhere
	apart   float64 // of hours that a spill or leak nobody could know has made, not in hours
	oneDry  float64 // one of several empty, the others not
	run     float64
	longest float64
	begun   time.Time
	spans   []string // when they found nothing
	name    string
}

// loss is a spill or a leak: feed pushed out, a nipple stuck open.
type loss struct {
	at   time.Time
	of   *vessel
	part float64 // of what is in it
}

// hourly is the shape of a day: pigs eat and drink by day, drinking most between
// 15 and 21 hours and less between 5 and 11 (J. Swine Health Prod. 2005, read as
// an abstract); between the peaks and at night an assumption.
func hourly(hour int) float64 {
	switch {
	case hour < 5 || hour >= 21:
		return 0.35
	case hour >= 15:
		return 1.6
	}
	return 1.0
}

var hourlySum = func() float64 {
	sum := 0.0
	for h := range 24 {
		sum += hourly(h)
	}
	return sum
}()

// day is the index of the moment's day.
func (f *farm) day(t time.Time) int { return int(model.DayOf(t.In(f.loc)) - f.herd.from) }

// liveTo lets time pass.
func (f *farm) liveTo(t time.Time) {
	for f.now.Before(t) {
		next := f.now.Truncate(time.Hour).Add(time.Hour)
		if next.After(t) {
			next = t
		}
		span := next.Sub(f.now).Hours()
		for len(f.losses) > 0 && !f.losses[0].at.After(f.now) {
			l := f.losses[0]
			f.losses = f.losses[1:]
			l.of.level *= 1 - l.part
			l.of.unseen = true
		}
		d := f.day(f.now)
		share := hourly(f.now.In(f.loc).Hour()) / hourlySum * span
		if !f.settled || f.gone {
			f.now = next
			continue
		}
		if f.feedOff.IsZero() || f.now.Before(f.feedOff) {
			f.feed.pass(f.now.In(f.loc), f.feeders, f.herd.feedOn(d)*share, span)
		}
		f.water.pass(f.now.In(f.loc), f.barrels, f.herd.waterOn(d)*share, span)
		f.now = next
	}
}

// pass has the pigs take what they want in a span, and counts how long they
// wanted in vain.
func (d *dryness) pass(now time.Time, vs []*vessel, amount, hours float64) {
	lacking := take(vs, amount)
	dry := 0.0
	if amount > 0 {
		dry = hours * lacking / amount
	}
	if anyUnseen(vs) {
		d.apart += dry
	} else {
		d.hours += dry
	}
	switch {
	case dry > 0 && d.run == 0:
		d.begun, d.run = now, dry
	case dry > 0:
		d.run += dry
	case d.run > 0:
		d.end()
	}
	if len(vs) > 1 && lacking == 0 && anyEmpty(vs) {
		d.oneDry += hours
	}
}

// end writes down a span of dryness.
func (d *dryness) end() {
	d.spans = append(d.spans, fmt.Sprintf("%s from %s for %.1f h", d.name, d.begun.Format("Mon 2006-01-02 15:04"), d.run))
	d.longest = max(d.longest, d.run)
	d.run = 0
}
