package schedule

import (
	"testing"
	"time"

	"github.com/robfig/cron/v3"
	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// The standing message comes once on each chore day, at the herd's wall clock,
// whatever the clock does. The changes are those of the IANA time zone database.
func TestStandingMessageAcrossClockChanges(t *testing.T) {
	tests := []struct {
		name, zone, from, hour string
		chore                  []string
		want                   []string
	}{
		{"spring, New York", "America/New_York", "2026-03-06", "07:00", []string{"sun"}, []string{"2026-03-08T07:00:00-04:00", "2026-03-15T07:00:00-04:00"}},
		{"in the gap", "America/New_York", "2026-03-06", "02:30", []string{"sun"}, []string{"2026-03-08T03:30:00-04:00", "2026-03-15T02:30:00-04:00"}},
		{"autumn, New York", "America/New_York", "2026-10-30", "07:00", []string{"sun"}, []string{"2026-11-01T07:00:00-05:00", "2026-11-08T07:00:00-05:00"}},
		{"in the repeated hour: once", "America/New_York", "2026-10-30", "01:30", []string{"sun"}, []string{"2026-11-01T01:30:00-04:00", "2026-11-08T01:30:00-05:00"}},
		{"midnight does not exist, Cairo", "Africa/Cairo", "2026-04-22", "06:00", []string{"fri"}, []string{"2026-04-24T06:00:00+03:00", "2026-05-01T06:00:00+03:00"}},
		{"at the midnight that does not exist", "Africa/Cairo", "2026-04-22", "00:00", []string{"fri"}, []string{"2026-04-24T01:00:00+03:00", "2026-05-01T00:00:00+03:00"}},
		{"midnight does not exist, Sao Paulo", "America/Sao_Paulo", "2018-11-02", "07:00", []string{"sun"}, []string{"2018-11-04T07:00:00-02:00", "2018-11-11T07:00:00-02:00"}},
		{"half an hour, Lord Howe", "Australia/Lord_Howe", "2026-10-02", "06:00", []string{"sun"}, []string{"2026-10-04T06:00:00+11:00", "2026-10-11T06:00:00+11:00"}},
		{"the repeated half hour", "Australia/Lord_Howe", "2026-04-03", "01:45", []string{"sun"}, []string{"2026-04-05T01:45:00+11:00", "2026-04-12T01:45:00+10:30"}},
		{"Kathmandu", "Asia/Kathmandu", "2026-07-09", "06:00", []string{"sat"}, []string{"2026-07-11T06:00:00+05:45", "2026-07-18T06:00:00+05:45"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newLog(t, tt.zone).add(tt.from+" 08:00",
				model.Setting{Key: model.SetChore, List: tt.chore},
				model.Setting{Key: model.SetHour, List: []string{tt.hour}},
				model.Arrive{Count: 3, WeightKg: model.Float(25)})
			from := l.time(tt.from + " 08:00")
			var got []string
			for _, s := range l.walkSpan(from, from.AddDate(0, 0, 10), with(calm())) {
				if s.Standing {
					got = append(got, s.at.Format(time.RFC3339))
				}
			}
			require.Equal(t, tt.want, got)
		})
	}
}

// The library's calculator drops whole days where midnight is missing, so the
// days are reckoned here; where no clock changes both agree.
func TestChoreMomentsAgreeWithCronWhereNoClockChanges(t *testing.T) {
	loc, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	spec, err := cron.ParseStandard("0 7 * * wed,sat")
	require.NoError(t, err)
	h := model.Fold([]model.Record{
		{ID: "a", Fact: model.Setting{Key: model.SetChore, List: []string{"wed", "sat"}}},
		{ID: "b", Fact: model.Setting{Key: model.SetHour, List: []string{"07:00"}}},
	})
	at := time.Date(2026, 1, 1, 12, 0, 0, 0, loc)
	for range 104 {
		want, got := spec.Next(at), h.NextChore(at)
		require.True(t, want.Equal(got), "%s and %s", want, got)
		at = got
	}
	missing, err := time.LoadLocation("Africa/Cairo")
	require.NoError(t, err)
	friday, err := cron.ParseStandard("0 6 24 4 *")
	require.NoError(t, err)
	before := time.Date(2026, 4, 20, 12, 0, 0, 0, missing)
	require.Equal(t, 2027, friday.Next(before).Year(), "the calculator can be used now")
}
