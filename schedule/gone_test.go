package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// A booked day that nobody speaks of is asked about once; then nothing is nudged as
// if the pigs lived, until a word shows that they do.
func TestABookedDayNobodySpeaksOfIsAskedAboutOnce(t *testing.T) {
	f := calm()
	f.waterDays, f.feedDays = 3, 4
	told := func(l *log, from, to string) []string {
		var out []string
		for _, s := range l.walk(from, to, with(f)) {
			for _, x := range s.Lines {
				out = append(out, s.at.Format("Mon 01-02 15:04 ")+x.Code)
			}
		}
		return out
	}
	booked := model.Booked{Day: d("2026-05-12")}
	l := newHerd(t, "America/Chicago").add("2026-05-04 09:00", booked)
	l.walk("2026-05-04 08:00", "2026-05-11 23:00", with(f))
	require.Equal(t, []string{"Tue 05-12 19:00 check_gone"}, told(l, "2026-05-12 00:00", "2026-07-01 00:00"))

	l.add("2026-07-01 09:00", model.Water{Full: true}) // they are there after all
	require.NotEmpty(t, told(l, "2026-07-01 09:00", "2026-07-06 00:00"))

	part := newHerd(t, "America/Chicago").add("2026-05-04 09:00", model.Booked{Day: d("2026-05-12"), Count: 1, Animals: []string{"Dot"}})
	part.walk("2026-05-04 08:00", "2026-05-11 23:00", with(f))
	got := told(part, "2026-05-12 00:00", "2026-05-20 00:00")
	require.Contains(t, got, "Tue 05-12 19:00 check_gone_some")
	require.Greater(t, len(got), 3) // the others want to be fed

	went := newHerd(t, "America/Chicago").add("2026-05-04 09:00", booked).add("2026-05-12 07:00", model.Gone{How: model.Butchered, Animals: []string{model.All}})
	went.walk("2026-05-04 08:00", "2026-05-11 23:00", with(f))
	require.Equal(t, []string{"Tue 05-12 19:00 season_over"}, told(went, "2026-05-12 00:00", "2026-07-01 00:00"))
}

// Water and feed are to last until the last pigs go, not to the round behind.
func TestNothingIsFilledForPigsThatAreGoneByThen(t *testing.T) {
	f := calm()
	f.waterDays = 10
	codes := func(day string) []string {
		l := newHerd(t, "America/Chicago").add("2026-05-04 09:00", model.Booked{Day: d(day), Minute: model.Int(7 * 60)})
		var out []string
		for _, s := range l.walk("2026-05-09 06:00", "2026-05-10 12:00", with(f)) {
			for _, x := range s.Lines {
				if x.About == aboutWater {
					out = append(out, x.Code)
				}
			}
		}
		return out
	}
	require.Empty(t, codes("2026-05-13"))
	require.NotEmpty(t, codes("2026-05-20"))
}
