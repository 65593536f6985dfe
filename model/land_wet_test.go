package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestRainShortensTheStay(t *testing.T) {
	stay := func(soil Soil, area *float64, rain ...Weather) (int, []Reason) {
		d := newPenDiary(t, "America/Chicago").add("2026-06-01 09:00", Arrive{Count: 4, WeightKg: Float(60)},
			Setting{Key: SetPen, Thing: &Thing{Name: "orchard", AreaM2: area, InUse: new(bool), Soil: soil}})
		d.add("2026-06-01 10:00", Move{Pen: "orchard"})
		for i, w := range rain {
			d.add([]string{"2026-06-02 18:00", "2026-06-05 18:00", "2026-06-08 18:00"}[i], w)
		}
		due, err := d.herd().MoveDue(penDay(t, "2026-06-10"))
		require.NoError(t, err)
		return int(due.On - penDay(t, "2026-06-01")), due.Reasons
	}
	soaked := Weather{RainMm: Float(30)}
	for _, c := range []struct {
		name    string
		soil    Soil
		rain    []Weather
		wetDays float64 // 0: none
	}{
		{"no rain told", "", nil, 0},
		{"a shower", "", []Weather{{RainMm: Float(8)}}, 0},
		{"a soaking, soil not said", "", []Weather{soaked}, 2},
		{"on sand", Sand, []Weather{soaked}, 1},
		{"on clay", Clay, []Weather{soaked}, 5},
		{"again and again on clay", Clay, []Weather{soaked, soaked, soaked}, 17},
		{"rain of no known amount", Loam, []Weather{{Rained: true}}, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			dry, _ := stay("", Float(400))
			got, why := stay(c.soil, Float(400), c.rain...)
			unknown, _ := stay(c.soil, nil, c.rain...)
			if c.wetDays == 0 {
				require.Equal(t, dry, got)
				require.Equal(t, moveDefaultDays, unknown)
				return
			}
			require.Equal(t, c.wetDays, reasonWith(t, why, MoveWet).Q[0].Value)
			require.InDelta(t, float64(dry)-c.wetDays/2, float64(got), 3)
			require.LessOrEqual(t, unknown, moveDefaultDays)
			if c.wetDays > 1 {
				require.Less(t, unknown, moveDefaultDays)
			}
		})
	}
	require.Error(t, Setting{Key: SetPen, Thing: &Thing{Name: "orchard", Soil: "gold"}}.Check())
}

func TestMoreRainNeverMeansALaterMove(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		less := rapid.Float64Range(0, 200).Draw(r, "less")
		more := rapid.Float64Range(less, 200).Draw(r, "more")
		soil := rapid.SampledFrom([]Soil{"", Sand, Loam, Clay}).Draw(r, "soil")
		on := func(mm float64) Day {
			d := fourPigs(t).add("2026-05-10 09:00", penSetting("orchard", 700, true)).
				add("2026-05-10 10:00", Setting{Key: SetPen, Thing: &Thing{Name: "orchard", Soil: soil}}).
				add("2026-05-11 18:00", Weather{RainMm: Float(mm)})
			due, err := d.herd().MoveDue(penDay(t, "2026-05-12"))
			require.NoError(r, err)
			return due.On
		}
		require.LessOrEqual(r, on(more), on(less))
	})
}
