package model

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Out of range is an error, and what is no number is out of every range.
func TestFiguresRefuseWhatTheyAreNotMadeFor(t *testing.T) {
	for _, x := range append([]float64{-1000, 1e6}, notNumbers...) {
		refused(t, map[string]func() error{
			"table days":    func() error { _, err := TableDays(x, 50); return err },
			"table days to": func() error { _, err := TableDays(50, x); return err },
			"table gain":    func() error { _, err := TableGain(x); return err },
			"weather":       func() error { _, err := WeatherFeedFactor(x, 60, false); return err },
			"weather kg":    func() error { _, err := WeatherFeedFactor(20, x, false); return err },
			"class":         func() error { _, err := ClassOfTHI(x); return err },
			"thi":           func() error { _, err := THI(x, 50); return err },
			"thi rh":        func() error { _, err := THI(30, x); return err },
			"quantile":      func() error { _, err := Estimate{1, 1}.Quantile(x); return err },
			"girth":         func() error { _, err := WeightFromGirth(x); return err },
			"tape":          func() error { _, err := WeightFromTape(x, 100); return err },
			"tape length":   func() error { _, err := WeightFromTape(90, x); return err },
			"intake":        func() error { _, err := MEIntakeMJD(x, Gilt); return err },
			"feed":          func() error { _, err := FeedUseKgD(x, "", 0); return err },
			"feed energy":   func() error { _, err := FeedUseKgD(60, "", x); return err },
			"water":         func() error { _, err := WaterPerFeed(x); return err },
			"radiation":     func() error { _, err := ExtraterrestrialRadiation(x, 180); return err },
			"evaporation":   func() error { _, err := ReferenceEvapotranspiration(10, x, 40); return err },
			"nitrogen cp":   func() error { _, err := NitrogenBalance(100, x, 50); return err },
			"plan kg":       func() error { _, err := PlanNeeds(NeedsQuery{Count: 4, WeightKg: x, TargetKg: 100}); return err },
			"plan target":   func() error { _, err := PlanNeeds(NeedsQuery{Count: 4, WeightKg: 20, TargetKg: x}); return err },
			"lysine":        func() error { _, err := NeededSIDLysinePct(x); return err },
		})
	}
	for _, x := range append([]float64{-1, 1e10}, notNumbers...) {
		refused(t, map[string]func() error{
			"drawn":         func() error { _, err := DrawnWater(x); return err },
			"pen":           func() error { _, err := PenPigDays(x); return err },
			"wallow":        func() error { _, err := WallowLossMMD(x, 5, 10, 6); return err },
			"wallow area":   func() error { _, err := WallowLossMMD(5, 5, 10, x); return err },
			"nitrogen feed": func() error { _, err := NitrogenBalance(x, 16, 50); return err },
			"nitrogen gain": func() error { _, err := NitrogenBalance(100, 16, x); return err },
			"nitrogen area": func() error { _, err := Nitrogen{}.KgHa(1, x); return err },
		})
	}
	for _, days := range []int{-1, 366} {
		refused(t, map[string]func() error{
			"clear":     func() error { _, err := ClearMoment(time.Unix(0, 0), true, days); return err },
			"last dose": func() error { _, err := LastSafeDose(time.Unix(0, 0), days); return err },
		})
	}
	h := tellHerd(t).tell("2026-06-06 08:00", fourEaters())
	refused(t, map[string]func() error{
		"need": func() error {
			_, err := h.herd().FeedNeed(h.moment("2026-06-06 09:00"), DateDay(2030, 1, 1))
			return err
		},
		"target": func() error { _, err := h.herd().Target(math.NaN(), DateDay(2026, 6, 6)); return err },
	})
	for _, girth := range append([]float64{0, -3}, notNumbers...) {
		w, within := ReadTape(girth, 0)
		require.False(t, within)
		require.Equal(t, Estimate{}, w)
	}
	require.Equal(t, Interval{-6, -4, -2}, Interval{1, 2, 3}.Scale(-2))
}
