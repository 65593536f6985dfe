package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// refused calls sums with what they must refuse.
func refused(t *testing.T, calls map[string]func() error) {
	t.Helper()
	for what, call := range calls {
		var out *OutOfRange
		require.ErrorAs(t, call(), &out, what)
		require.NotEmpty(t, out.Quantity, what)
	}
}

var notNumbers = []float64{math.NaN(), math.Inf(1), math.Inf(-1)}

func TestSetUpFiguresRefuseNonsense(t *testing.T) {
	for _, x := range append([]float64{-1, 1e12}, notNumbers...) {
		refused(t, map[string]func() error{
			"flow":          func() error { _, err := ClassOfFlow(x); return err },
			"nipple height": func() error { _, err := NippleHeightCm(x, true); return err },
			"space":         func() error { _, err := SpaceAt(x); return err },
			"feeder width":  func() error { _, err := FeederWidthCm(x); return err },
			"strands":       func() error { _, err := FenceStrandsCm(x); return err },
			"wire":          func() error { _, err := FenceWireM(x, 2); return err },
			"night":         func() error { _, err := NightLowBorneC(x, true); return err },
			"bedding":       func() error { _, err := BeddingKg(4, x); return err },
			"return":        func() error { _, err := WaterReturnAfter(x, false); return err },
			"stocking":      func() error { _, err := StockingRate(4, 60, x, 30); return err },
			"stocking days": func() error { _, err := StockingRate(4, 60, 100, x); return err },
			"stocking kg":   func() error { _, err := StockingRate(4, x, 100, 1); return err },
		})
	}
	for _, x := range append([]float64{-61, 61}, notNumbers...) {
		refused(t, map[string]func() error{"frost": func() error { _, err := ClassOfFrost(x); return err }})
	}
	for _, n := range []int{0, -3, 201} {
		refused(t, map[string]func() error{
			"nipples": func() error { _, err := NipplesFor(n); return err },
			"holes":   func() error { _, err := FeederHolesFor(n); return err },
			"bedding": func() error { _, err := BeddingKg(n, 7); return err },
			"stock":   func() error { _, err := StockingRate(n, 60, 100, 1); return err },
		})
	}
	refused(t, map[string]func() error{"wire": func() error { _, err := FenceWireM(100, 0); return err }})
}

func TestWhatPigsWantNeverShrinksAsTheyGrow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kg := rapid.Float64Range(20, 149).Draw(t, "kg")
		more := rapid.Float64Range(kg, 150).Draw(t, "more")
		rise := func(name string, f func(float64) (float64, error)) {
			a, err := f(kg)
			require.NoError(t, err)
			b, err := f(more)
			require.NoError(t, err)
			require.LessOrEqual(t, a, b+1e-12, name)
		}
		rise("straight nipple", func(kg float64) (float64, error) { return NippleHeightCm(kg, false) })
		rise("nipple down", func(kg float64) (float64, error) { return NippleHeightCm(kg, true) })
		rise("feeder", FeederWidthCm)
		for _, of := range []func(Space) float64{
			func(s Space) float64 { return s.LegalM2 }, func(s Space) float64 { return s.OrganicIndoorM2 },
			func(s Space) float64 { return s.OrganicRunM2 }, func(s Space) float64 { return s.LyingM2 },
			func(s Space) float64 { return s.ShelterM2 }, func(s Space) float64 { return s.ShadeM2 },
		} {
			rise("space", func(kg float64) (float64, error) { s, err := SpaceAt(kg); return of(s), err })
		}
		rise("cold", func(kg float64) (float64, error) { c, err := NightLowBorneC(kg, false); return -c, err })
	})
}

func TestFlowAndFrostAndReturnClasses(t *testing.T) {
	for x, want := range map[float64]FlowClass{0: FlowLow, 0.49: FlowLow, 0.5: FlowRight, 0.7: FlowRight, 1.0: FlowRight, 1.01: FlowHigh} {
		got, err := ClassOfFlow(x)
		require.NoError(t, err)
		require.Equal(t, want, got, x)
	}
	for x, want := range map[float64]FrostClass{5: FrostNone, 0.1: FrostNone, 0: FrostRime, -3.9: FrostRime, -4: FrostHard, -20: FrostHard} {
		got, err := ClassOfFrost(x)
		require.NoError(t, err)
		require.Equal(t, want, got, x)
	}
	for _, c := range []struct {
		hours float64
		signs bool
		want  WaterReturn
	}{{0, false, ReturnFreely}, {11.9, false, ReturnFreely}, {12, false, ReturnSlowly}, {24, false, ReturnSlowly}, {24.1, false, ReturnByVet}, {2, true, ReturnByVet}} {
		got, err := WaterReturnAfter(c.hours, c.signs)
		require.NoError(t, err)
		require.Equal(t, c.want, got, "%v", c)
	}
}

func TestStrawGoesWithPigsAndDays(t *testing.T) {
	a, err := BeddingKg(4, 7)
	require.NoError(t, err)
	require.InDelta(t, 22.5, a.Mid, 0.01)
	require.True(t, a.Low < a.Mid && a.Mid < a.High)
	bare, err := NightLowBorneC(45, false)
	require.NoError(t, err)
	bedded, err := NightLowBorneC(45, true)
	require.NoError(t, err)
	require.InDelta(t, BeddingWorthC, bare-bedded, 1e-12)
}

func TestAdequacyLooksAhead(t *testing.T) {
	_, err := newPenDiary(t, "America/Chicago").herd().Adequacy(penDay(t, "2026-05-12"))
	requireMissing(t, err, "pigs")
	h := fourPigs(t).herd()
	today := penDay(t, "2026-05-03")
	a, err := h.Adequacy(today)
	require.NoError(t, err)
	require.Equal(t, 2, a.Nipples)
	require.Equal(t, 4, a.NipplesHave)
	require.Equal(t, 1, a.FeederHoles)
	require.InDelta(t, 42.5, a.NippleHeightCm, 1.5, "four of 22 kg")
	require.Len(t, a.StrandsCm, 3)
	var nipples int
	for i, o := range a.Ahead {
		require.Greater(t, o.Days.Mid, today)
		require.True(t, o.Days.Low <= o.Days.Mid && o.Days.Mid <= o.Days.High)
		if i > 0 {
			require.LessOrEqual(t, a.Ahead[i-1].Days.Mid, o.Days.Mid)
		}
		if o.Code == ReasonOutgrownNipple {
			nipples++
		}
		require.Contains(t, LandReasonCodes(), o.Code)
	}
	require.Equal(t, 4, nipples, "25, 50, 75 and 100 kg")
	require.Equal(t, ReasonOutgrownNipple, a.Ahead[0].Code)
	require.Contains(t, func() (codes []string) {
		for _, o := range a.Ahead {
			codes = append(codes, o.Code)
		}
		return
	}(), ReasonOutgrownShelter)
	// A barrel of unknown nipples leaves the count unknown.
	b := fourPigs(t).add("2026-05-02 10:00", Setting{Key: SetBarrel, Thing: &Thing{Name: "west", CapacityL: Float(100)}}).herd()
	a, err = b.Adequacy(today)
	require.NoError(t, err)
	require.Equal(t, -1, a.NipplesHave)
}
