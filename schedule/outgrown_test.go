package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestOutgrownIsToldOnceBeforeItsDay(t *testing.T) {
	ahead := func(code, on string, value float64) model.Outgrown {
		day := d(on)
		return model.Outgrown{Code: code, FromKg: 50, Value: value, Days: model.DayInterval{Low: day - 3, Mid: day, High: day + 3}}
	}
	f := calm()
	f.ahead = []model.Outgrown{
		ahead(model.ReasonOutgrownNipple, "2026-05-20", 55), ahead(model.ReasonOutgrownShade, "2026-05-27", 0.56), ahead(model.ReasonOutgrownNipple, "2026-05-12", 45),
		ahead(model.ReasonOutgrownShelter, "2026-08-01", 1.1), ahead(model.ReasonOutgrownStrand, "2026-05-13", 15),
	}
	walk := func(say func(l *log)) []string {
		l := newHerd(t, "America/Chicago")
		if say != nil {
			say(l)
		}
		return texts(l.walk("2026-05-05 08:00", "2026-05-31 08:00", with(f)))
	}
	require.Equal(t, []string{
		"Sat 2026-05-09 07:00 standing routine ", "Wed 2026-05-13 19:00 off-day routine check_silence", "Sat 2026-05-16 07:00 standing routine outgrown_nipple",
		"Sat 2026-05-23 07:00 standing routine outgrown_shade", "Sat 2026-05-30 07:00 standing routine ",
	}, walk(nil))
	require.Equal(t, "Sat 2026-05-16 07:00 standing routine ", walk(func(l *log) {
		l.add("2026-05-05 12:00", model.Snooze{Topics: []string{"capacity:height"}, Stop: true})
	})[2])
	for _, s := range newHerd(t, "America/Chicago").walk("2026-05-23 06:00", "2026-05-23 08:00", with(f)) {
		require.Contains(t, codes(s.Lines), CodeOutgrownShade)
		for _, line := range s.Lines {
			if line.Code == CodeOutgrownShade {
				require.InDelta(t, 3*0.56, line.Q[0].Value, 1e-9, "for three pigs")
			}
		}
	}
}
