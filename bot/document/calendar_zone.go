package document

import (
	"fmt"
	"time"

	ics "github.com/arran4/golang-ical"
)

const localLayout = "20060102T150405"

// zoneAhead is how far ahead the changes of the clock are written out.
const zoneAhead = 2 * 366 * 24 * time.Hour

// zoneOf describes a time zone from before now to some years on: each time the
// clock is changed is a part of its own, since a rule for all years is not to be
// had from the zone's data.
func zoneOf(zone *time.Location, now time.Time) *ics.VTimezone {
	tz := ics.NewTimezone(zone.String())
	for at := now.In(zone); ; {
		start, end := at.ZoneBounds()
		name, east := at.Zone()
		before := east
		onset := time.Date(1970, 1, 1, 0, 0, 0, 0, time.UTC)
		if !start.IsZero() {
			_, before = start.Add(-time.Second).Zone()
			onset = start.UTC().Add(time.Duration(before) * time.Second) // the wall clock before the change
		}
		part := &ics.GeneralComponent{Token: "STANDARD"}
		if at.IsDST() {
			part.Token = "DAYLIGHT"
		}
		part.SetProperty(ics.ComponentPropertyDtStart, onset.Format(localLayout))
		part.SetProperty("TZOFFSETFROM", offset(before))
		part.SetProperty("TZOFFSETTO", offset(east))
		part.SetProperty("TZNAME", name)
		tz.Components = append(tz.Components, part)
		if end.IsZero() || end.Sub(now) > zoneAhead {
			return tz
		}
		at = end
	}
}

// offset writes seconds east of UTC as RFC 5545 does.
func offset(east int) string {
	sign := '+'
	if east < 0 {
		sign, east = '-', -east
	}
	s := fmt.Sprintf("%c%02d%02d", sign, east/3600, east%3600/60)
	if rest := east % 60; rest != 0 {
		s += fmt.Sprintf("%02d", rest)
	}
	return s
}
