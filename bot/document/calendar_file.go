package document

import (
	"bytes"
	"fmt"
	"time"

	ics "github.com/arran4/golang-ical"

	"troughbell/model"
)

// file writes what is given. A date that fell away stands in it as cancelled, so
// that a calendar that took in an earlier file lets go of it.
func (g Given) file(name, id string, now time.Time) ([]byte, error) {
	out := ics.NewCalendar()
	out.SetProductId("-//troughbell//coming dates//EN")
	out.SetCalscale("GREGORIAN")
	out.SetMethod(ics.MethodPublish)
	out.SetXWRCalName(name)
	zone := now.Location()
	if zone != time.UTC {
		out.AddVTimezone(zoneOf(zone, now))
	}
	for _, e := range g.Events {
		if e.Last >= model.DayOf(now) {
			e.write(out, id, now)
		}
	}
	var b bytes.Buffer
	if err := out.SerializeTo(&b, ics.WithNewLine("\r\n")); err != nil {
		return nil, fmt.Errorf("calendar: %w", err)
	}
	return b.Bytes(), nil
}

func (e GivenEvent) write(out *ics.Calendar, id string, now time.Time) {
	v := out.AddEvent(e.UID + "-" + id + "@troughbell")
	v.SetDtStampTime(now)
	v.SetSequence(int(e.Sequence))
	v.SetSummary(e.Title)
	v.SetStatus(ics.ObjectStatusConfirmed)
	if e.Gone {
		v.SetStatus(ics.ObjectStatusCancelled)
	}
	if !e.Timed {
		date := ics.WithValue(string(ics.ValueDataTypeDate))
		v.SetProperty(ics.ComponentPropertyDtStart, e.From, date)
		v.SetProperty(ics.ComponentPropertyDtEnd, e.To, date)
		v.SetTimeTransparency(ics.TransparencyTransparent)
		return
	}
	zone := now.Location()
	set := func(p ics.ComponentProperty, wall string) {
		if zone == time.UTC {
			v.SetProperty(p, wall+"Z")
			return
		}
		v.SetProperty(p, wall, ics.WithTZID(zone.String()))
	}
	set(ics.ComponentPropertyDtStart, e.From)
	set(ics.ComponentPropertyDtEnd, e.To)
}
