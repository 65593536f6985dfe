package model

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// penDiary collects the records of an invented herd for a test.
type penDiary struct {
	t       testing.TB
	loc     *time.Location
	records []Record
}

func newPenDiary(t testing.TB, zone string) *penDiary {
	loc, err := time.LoadLocation(zone)
	require.NoError(t, err)
	d := &penDiary{t: t, loc: loc}
	return d.add("2026-05-01 08:00", Setting{Key: SetZone, Text: zone})
}

func (d *penDiary) moment(s string) time.Time {
	at, err := time.ParseInLocation("2006-01-02 15:04", s, d.loc)
	require.NoError(d.t, err)
	return at
}

// add records a fact at a wall time that was stated.
func (d *penDiary) add(when string, facts ...Fact) *penDiary {
	for _, f := range facts {
		require.NoError(d.t, f.Check())
		at := d.moment(when)
		d.records = append(d.records, Record{
			ID: fmt.Sprintf("r%d", len(d.records)), On: DayOf(at), At: at, Said: true, By: "Ann", Fact: f,
		})
	}
	return d
}

// unsaid makes the hour of the latest record one that nobody stated.
func (d *penDiary) unsaid() *penDiary {
	d.records[len(d.records)-1].Said = false
	return d
}

func (d *penDiary) herd() *Herd { return Fold(d.records) }

// fork copies the diary, so that two herds may differ from here on.
func (d *penDiary) fork() *penDiary {
	return &penDiary{t: d.t, loc: d.loc, records: append([]Record(nil), d.records...)}
}

func penDay(t testing.TB, s string) Day {
	d, err := ParseDay(s)
	require.NoError(t, err)
	return d
}

func barrelSetting(name string, litres float64, nipples int) Setting {
	return Setting{Key: SetBarrel, Thing: &Thing{Name: name, CapacityL: Float(litres), Nipples: Int(nipples)}}
}

// fourPigs is a herd of four of 22 kg, come on 2 May 2026, with two barrels.
func fourPigs(t testing.TB) *penDiary {
	return newPenDiary(t, "America/Chicago").add("2026-05-02 09:00",
		Arrive{Count: 4, Animals: []string{"Juniper", "Moss", "Fern", "Burdock"}, WeightKg: Float(22)},
		barrelSetting("north", 208, 2), barrelSetting("south", 208, 2))
}

func reasonCodes(reasons []Reason) []string {
	var out []string
	for _, r := range reasons {
		out = append(out, r.Code)
	}
	return out
}

func reasonWith(t testing.TB, reasons []Reason, code string) Reason {
	for _, r := range reasons {
		if r.Code == code {
			return r
		}
	}
	require.Failf(t, "reason missing", "%s among %v", code, reasonCodes(reasons))
	return Reason{}
}

func requireMissing(t testing.TB, err error, what string, names ...string) {
	var missing *Missing
	require.ErrorAs(t, err, &missing)
	require.Equal(t, what, missing.What)
	require.ElementsMatch(t, names, missing.Names)
}
