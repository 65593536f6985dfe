package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

func TestPlaces(t *testing.T) {
	c := reading.Context{Now: time.Date(2026, 7, 11, 18, 0, 0, 0, time.UTC), Herd: model.Fold(nil)}
	for _, row := range []struct {
		text, want string
		is         bool
	}{
		{"location 44.3149, -89.9512", "44.3,-90.0", true},
		{"Location: 44.31 -89.92", "44.3,-89.9", true},
		{"we are at 44.3 N 89.9 W", "44.3,-89.9", true},
		{"we're at 34.1°S, 150.8°E.", "-34.1,150.8", true},
		{"forecast for 52.5n 13.4e", "52.5,13.4", true},
		{"weather for 44 N 89 W", "44.0,-89.0", true},
		{"location off", "", true},
		{"No forecast", "", true},
		{"forget where we are", "", true},
		{"location 44 89", "", false},
		{"location 144.3, -89.9", "", false},
		{"location 44.3", "", false},
		{"location 44.3, -89.9, 12.5", "", false},
		{"location 44.3 W 89.9 N", "", false},
		{"location -44.3 S 89.9 W", "", false},
		{"location barn", "", false},
		{"we are at the fair", "", false},
		{"location NaN Inf.", "", false},
		{"44.3, -89.9", "", false},
	} {
		got := reading.Read(c, row.text)
		f, ok := got.Entries[0].Act.(reading.Fact)
		set, isSetting := model.Setting{}, false
		if ok {
			set, isSetting = f.Fact.(model.Setting)
		}
		require.Equal(t, row.is, isSetting && set.Key == model.SetPlace, row.text)
		if row.is {
			require.Equal(t, row.want, set.Text, row.text)
			require.NoError(t, set.Check())
			require.Len(t, got.Entries, 1)
		}
	}
}
