package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func with(f fake) func(*model.Herd) figures {
	return func(h *model.Herd) figures {
		f.h = h
		return f
	}
}

func TestStandingMessageComesOnEachChoreDayEvenIfAllIsWell(t *testing.T) {
	l := newHerd(t, "America/Chicago")
	got := l.walk("2026-05-04 08:00", "2026-05-24 12:00", with(fake{feedDays: 60, waterDays: 60, weightKg: 30, capacityKg: 250, useKgD: 5}))
	require.Equal(t, []string{
		"Sat 2026-05-09 07:00 standing routine ",
		"Wed 2026-05-13 19:00 off-day routine check_silence",
		"Sat 2026-05-16 07:00 standing routine ",
		"Sat 2026-05-23 07:00 standing routine ",
	}, texts(got))
	require.Empty(t, got[0].About())
	require.Equal(t, []string{CodeWellFeed, CodeWellWater, CodeWellWeight, CodeWellTarget}, codes(got[0].Well))
	require.Empty(t, got[0].Buttons)
}

func TestFeedAndWaterAreToldWhenTheyCannotWait(t *testing.T) {
	tests := []struct {
		name        string
		feed, water float64
		log         func(l *log)
		want        []string
	}{
		{"feed lasts to the visit after next", 13, 60, nil, []string{
			"Sat 2026-05-09 07:00 standing routine ",
			"Wed 2026-05-13 19:00 off-day routine check_silence",
			"Sat 2026-05-16 07:00 standing routine refill_visit",
			"Sat 2026-05-16 19:00 off-day welfare refill_midweek",
		}},
		{"feed ends between visits and is filled", 8, 60, func(l *log) {
			l.add("2026-05-09 09:00", model.Refill{FeedKg: model.Float(100)})
		}, []string{
			"Sat 2026-05-09 07:00 standing routine refill_visit",
			"Sat 2026-05-16 07:00 standing routine refill_visit",
			"Sat 2026-05-16 19:00 off-day welfare refill_midweek",
		}},
		{"water ends midweek", 60, 2.5, func(l *log) {
			l.add("2026-05-06 09:30", model.Water{Full: true})
			l.add("2026-05-08 20:00", model.Water{Full: true})
			l.add("2026-05-10 09:00", model.Water{Full: true})
			l.add("2026-05-12 09:00", model.Water{Full: true})
			l.add("2026-05-14 09:00", model.Water{Full: true})
			l.add("2026-05-16 06:00", model.Water{Full: true})
		}, []string{
			"Wed 2026-05-06 07:00 off-day welfare water_midweek",
			"Fri 2026-05-08 07:00 off-day welfare water_midweek",
			"Sat 2026-05-09 07:00 standing routine water_brim",
			"Tue 2026-05-12 07:00 off-day welfare water_midweek",
			"Thu 2026-05-14 07:00 off-day welfare water_midweek",
			"Fri 2026-05-15 19:00 off-day welfare water_midweek", // the round of the 9th came a day late
			"Sat 2026-05-16 07:00 standing routine water_brim",
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			l := newHerd(t, "America/Chicago")
			if tt.log != nil {
				tt.log(l)
			}
			got := l.walk("2026-05-04 08:00", "2026-05-16 20:00", with(fake{feedDays: tt.feed, waterDays: tt.water, weightKg: 30, capacityKg: 250, useKgD: 5}))
			require.Equal(t, tt.want, texts(got))
		})
	}
}

func TestACalculatedEmergencyIsToldAFewTimesFromItsFirstMoment(t *testing.T) {
	f := calm()
	f.waterDays = 4 // cautious 8 May 8:00, likely 9 May 8:00
	l := newHerd(t, "America/Chicago").add("2026-05-14 10:00", model.Note{What: "hello"})
	var outs []sent
	for _, s := range l.walk("2026-05-04 08:00", "2026-05-15 20:00", with(f)) {
		if s.Grade == Danger {
			outs = append(outs, s)
		}
	}
	require.Equal(t, []string{
		"Sat 2026-05-09 19:00 off-day danger water_out", // the standing message of the day has just told
		"Sun 2026-05-10 19:00 off-day danger water_out,check_not_filled",
		"Mon 2026-05-11 19:00 off-day danger water_out",
	}, texts(outs))
	for i, s := range outs {
		require.Equal(t, l.time("2026-05-09 08:00"), s.Lines[0].At)
		require.Equal(t, []model.Quantity{{Value: float64(i), Unit: model.Count}}, s.Lines[0].Q)
	}
}
