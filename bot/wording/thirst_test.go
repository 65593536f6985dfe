package wording_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Water comes back the more carefully the longer they went without. Lines: 12 and 24
// hours, see model.WaterReturnAfter.
func TestTheWayBackToWater(t *testing.T) {
	dry := model.Water{Fraction: model.Float(0), Seen: true}
	lasted := func(hours float64) model.Alarm {
		return model.Alarm{What: model.AlarmNoWater, Hours: &hours}
	}
	at := func(e reading.Entry, before time.Duration) reading.Entry {
		then := now.Add(-before)
		e.On, e.Minute = model.DayOf(then), model.Int(model.MinuteOf(then))
		return e
	}
	for _, c := range []struct {
		name  string
		entry reading.Entry
		want  string
	}{
		{"an alarm, since when not said", entry(model.Alarm{What: model.AlarmNoWater}), "alarm_no_water"},
		{"for 3 hours", entry(lasted(3)), "alarm_no_water"},
		{"for 13 hours", entry(lasted(13)), "water_back_slowly"},
		{"for 30 hours", entry(lasted(30)), "water_back_vet"},
		{"barrels dry now", at(entry(dry), 0), "water_dry"},
		{"seen dry this morning", at(entry(dry), 5*time.Hour), "water_dry"},
		{"seen dry half a day ago", at(entry(dry), 14*time.Hour), "water_back_slowly"},
		{"seen dry two days ago", at(entry(dry), 48*time.Hour), "water_back_vet"},
		{"dry the day before, no hour", reading.Entry{Act: reading.Fact{Fact: dry}, On: model.DayOf(now) - 2}, "water_back_vet"},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := us(t)
			x := v.Effects(v.Herd, []reading.Entry{c.entry})
			require.Len(t, x, 1)
			require.Equal(t, c.want, x[0].Code)
			if c.want != "alarm_no_water" && c.want != "water_dry" {
				require.Contains(t, v.Recorded([]reading.Entry{c.entry}, x), "BEFORE")
			}
		})
	}
}
