package model_test

import (
	"testing"
	"time"
	_ "time/tzdata"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/model"
)

// The dates of the clock changes are those of the IANA time zone database.
func TestAtAcrossClockChanges(t *testing.T) {
	tests := []struct{ name, zone, day, clock, want string }{
		{"spring gap, west", "America/New_York", "2026-03-08", "02:30", "2026-03-08T03:30:00-04:00"},
		{"spring gap, east", "Europe/Berlin", "2026-03-29", "02:30", "2026-03-29T03:30:00+02:00"},
		{"after the gap", "America/New_York", "2026-03-08", "07:00", "2026-03-08T07:00:00-04:00"},
		{"before the gap", "America/New_York", "2026-03-08", "01:59", "2026-03-08T01:59:00-05:00"},
		{"autumn, first pass, west", "America/New_York", "2026-11-01", "01:30", "2026-11-01T01:30:00-04:00"},
		{"autumn, first pass, east", "Europe/Berlin", "2026-10-25", "02:30", "2026-10-25T02:30:00+02:00"},
		{"half an hour repeated", "Australia/Lord_Howe", "2026-04-05", "01:40", "2026-04-05T01:40:00+11:00"},
		{"half an hour missing", "Australia/Lord_Howe", "2026-10-04", "02:15", "2026-10-04T02:45:00+11:00"},
		{"no midnight, Cairo", "Africa/Cairo", "2026-04-24", "00:00", "2026-04-24T01:00:00+03:00"},
		{"no midnight, the hour", "Africa/Cairo", "2026-04-24", "06:00", "2026-04-24T06:00:00+03:00"},
		{"no midnight, Sao Paulo", "America/Sao_Paulo", "2018-11-04", "00:00", "2018-11-04T01:00:00-02:00"},
		{"the hour before midnight twice", "America/Sao_Paulo", "2018-02-17", "23:30", "2018-02-17T23:30:00-02:00"},
		{"a plain day", "Asia/Kathmandu", "2026-07-11", "06:00", "2026-07-11T06:00:00+05:45"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			loc, err := time.LoadLocation(tt.zone)
			require.NoError(t, err)
			d, err := model.ParseDay(tt.day)
			require.NoError(t, err)
			minute, err := model.ParseClock(tt.clock)
			require.NoError(t, err)
			require.Equal(t, tt.want, d.At(minute, loc).Format(time.RFC3339))
		})
	}
}

func TestAtStaysOnItsDayAndNeverGoesBack(t *testing.T) {
	var locs []*time.Location
	for _, z := range []string{"America/New_York", "Europe/Berlin", "Africa/Cairo", "Australia/Lord_Howe", "America/Sao_Paulo", "Pacific/Chatham", "UTC"} {
		loc, err := time.LoadLocation(z)
		require.NoError(t, err)
		locs = append(locs, loc)
	}
	rapid.Check(t, func(t *rapid.T) {
		loc := rapid.SampledFrom(locs).Draw(t, "zone")
		d := model.DateDay(2017, 1, 1) + model.Day(rapid.IntRange(0, 5000).Draw(t, "day"))
		minute := rapid.IntRange(0, 22*60+29).Draw(t, "minute")
		at := d.At(minute, loc)
		require.Equal(t, d, model.DayOf(at))
		require.GreaterOrEqual(t, model.MinuteOf(at), minute)
		require.False(t, d.At(minute+1, loc).Before(at) && model.MinuteOf(at) == minute && model.MinuteOf(d.At(minute+1, loc)) == minute+1)
	})
}
