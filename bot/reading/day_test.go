package reading

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// TestDays reads days on Saturday, 18 July 2026, looking back and forward.
func TestDays(t *testing.T) {
	today := model.DateDay(2026, time.July, 18)
	for _, r := range []struct {
		text          string
		metric        bool
		back, forward string
	}{
		{"today", false, "2026-07-18", "2026-07-18"},
		{"yesterday", false, "2026-07-17", "2026-07-17"},
		{"last night", false, "2026-07-17", "2026-07-17"},
		{"saturday", false, "2026-07-18", "2026-07-25"},
		{"last saturday", false, "2026-07-11", "2026-07-11"},
		{"last sunday", false, "2026-07-12", "2026-07-12"},
		{"friday", false, "2026-07-17", "2026-07-24"},
		{"the 5th", false, "2026-07-05", "2026-08-05"},
		{"the 25th", false, "2026-06-25", "2026-07-25"},
		{"the 31st", false, "2026-05-31", "2026-07-31"},
		{"8/5", false, "2026-08-05", "2026-08-05"},
		{"8/5", true, "2026-05-08", "2027-05-08"},
		{"5.8.", true, "2026-08-05", "2026-08-05"},
		{"05/08", true, "2026-08-05", "2026-08-05"},
		{"5.8.2026", true, "2026-08-05", "2026-08-05"},
		{"2026-08-05", false, "2026-08-05", "2026-08-05"},
		{"aug 5", false, "2026-08-05", "2026-08-05"},
		{"5 august", false, "2026-08-05", "2026-08-05"},
		{"the fifth of august", false, "2026-08-05", "2026-08-05"},
		{"december 28", false, "2025-12-28", "2026-12-28"},
		{"3 days ago", false, "2026-07-15", "2026-07-15"},
		{"a week ago", false, "2026-07-11", "2026-07-11"},
		{"two weeks ago", false, "2026-07-04", "2026-07-04"},
		{"in 3 days", false, "2026-07-21", "2026-07-21"},
		{"tomorrow", false, "2026-07-19", "2026-07-19"},
		{"saturday july 4", false, "2026-07-04", "2027-07-04"},
	} {
		d := dayReader{lex: words(), toks: scan(nil, r.text, r.metric), metric: r.metric}
		e, n := d.at(0)
		require.Equal(t, len(d.toks), n, r.text)
		back, ok := e.on(today, lookBack, r.metric)
		require.True(t, ok, r.text)
		require.Equal(t, r.back, back.String(), "%s, looking back", r.text)
		forward, ok := e.on(today, lookForward, r.metric)
		require.True(t, ok, r.text)
		require.Equal(t, r.forward, forward.String(), "%s, looking forward", r.text)
	}
}

// TestNoDays: words and numbers that look like days are none.
func TestNoDays(t *testing.T) {
	for _, s := range []string{"2nd barrel", "94/71", "13/32", "38", "may i", "march them", "the sun is out", "30 feb", "2026-13-40", "0/5"} {
		d := dayReader{lex: words(), toks: scan(nil, s, false)}
		for i := range d.toks {
			_, n := d.at(i)
			require.Zero(t, n, "%q at %d", s, i)
		}
	}
}

// TestClocks reads times of day.
func TestClocks(t *testing.T) {
	for text, want := range map[string]int{
		"7:40": 460, "7:40 am": 460, "7:40 pm": 1180, "6pm": 1080, "6 pm": 1080, "6 p.m.": 1080, "12 am": 0, "12 pm": 720, "noon": 720,
		"18:30": 1110, "730 am": 450, "six pm": 1080, "half past six pm": 1110, "quarter to 7 am": 405, "8 o'clock": 480, "0:15": 15,
	} {
		toks := scan(nil, text, false)
		got, _, n := clockAt(words(), toks, 0)
		require.Equal(t, len(toks), n, text)
		require.Equal(t, want, got, text)
	}
	for _, s := range []string{"38", "25:00 x", "12:75", "am", "13 pm"} {
		_, _, n := clockAt(words(), scan(nil, s, false), 0)
		require.Zero(t, n, s)
	}
}

// TestZoneForClock guesses the zone of a wall clock, that of most smallholders
// first. 12:40 UTC on 18 July 2026 is 7:40 in Chicago and 14:40 in Berlin; on 18
// January it is 6:40 and 13:40.
func TestZoneForClock(t *testing.T) {
	summer := time.Date(2026, time.July, 18, 12, 40, 0, 0, time.UTC)
	winter := time.Date(2026, time.January, 18, 12, 40, 0, 0, time.UTC)
	require.Equal(t, "America/Chicago", zoneForClock(summer, 7*60+40, model.US)[0])
	require.Equal(t, "America/Chicago", zoneForClock(winter, 6*60+40, model.US)[0])
	require.Equal(t, "America/New_York", zoneForClock(summer, 8*60+42, model.US)[0], "a typed time is minutes off")
	require.Equal(t, "Europe/Berlin", zoneForClock(summer, 14*60+40, model.Metric)[0])
	require.Equal(t, "Europe/Berlin", zoneForClock(winter, 13*60+40, model.Metric)[0])
	require.Equal(t, "Pacific/Auckland", zoneForClock(winter, 1*60+40, model.Metric)[0])
	for _, z := range clockZones { // the rules agree with the zone database
		loc, err := time.LoadLocation(z.zone)
		require.NoError(t, err)
		for d := range 366 {
			at := winter.AddDate(0, 0, d)
			_, offset := at.In(loc).Zone()
			require.Equal(t, offset/60, zoneOffset(z.standard, z.summer, at), "%s %s", z.zone, at)
		}
	}
}

// TestZones: every place of the tables leads to a zone that exists.
func TestZones(t *testing.T) {
	for place, zone := range words().zones {
		_, err := time.LoadLocation(zone)
		require.NoError(t, err, place)
	}
}
