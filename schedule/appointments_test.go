package schedule

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Two appointments with different pigs named: a pig is judged by its own, and the
// card names who goes and who is clear.
func TestEachPigIsJudgedByItsOwnAppointment(t *testing.T) {
	booked := func(day model.Day, names ...string) model.Booked {
		return model.Booked{Day: day, Count: len(names), Animals: names, Minute: model.Int(7 * 60)}
	}
	first, second := d("2026-05-15"), d("2026-05-29")
	f := calm()
	f.clear = func(h *model.Herd) []model.PigClear {
		loc := time.UTC
		return []model.PigClear{
			{Animal: h.Animals[0], Treated: true, Known: true, ClearAt: d("2026-05-20").At(0, loc)}, // after the first, before the second
			{Animal: h.Animals[1], Treated: true},
			{Animal: h.Animals[2]},
		}
	}
	lines := func(l *log, until string) map[string]Line {
		out := map[string]Line{}
		for _, s := range l.walk("2026-05-04 08:00", until, with(f)) {
			for _, x := range s.Lines {
				out[x.Code+" "+x.On.String()] = x
			}
		}
		return out
	}
	got := lines(newHerd(t, "America/Chicago").add("2026-05-04 09:00", booked(first, "Tank", "Mabel"), booked(second, "Dot")), "2026-05-15 06:00")
	require.NotContains(t, got, CodeWithdrawalConflict+" 2026-05-15")
	require.NotContains(t, got, CodeWithdrawalConflict+" 2026-05-29")
	require.Equal(t, []string{"Tank"}, got[CodeWithdrawalUnknown+" 2026-05-15"].Names)
	require.Equal(t, Danger, got[CodeWithdrawalUnknown+" 2026-05-15"].Grade)
	require.Equal(t, []string{"Tank", "Mabel"}, got[CodeBookEve+" 2026-05-15"].Names)
	require.Equal(t, []string{"Mabel"}, got[CodeBookClear+" 2026-05-15"].Names)
	require.Equal(t, "Thu 13:00", got[CodeBookFeed+" 2026-05-15"].At.Format("Mon 15:04"))

	got = lines(newHerd(t, "America/Chicago").add("2026-05-04 09:00", booked(first, "Dot", "Mabel"), booked(second, "Tank")), "2026-05-15 06:00")
	require.Equal(t, []string{"Dot"}, got[CodeWithdrawalConflict+" 2026-05-15"].Names)
	require.Equal(t, []string{"Tank"}, got[CodeWithdrawalUnknown+" 2026-05-29"].Names)
}
