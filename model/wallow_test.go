package model

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func wallowSetting(areaM2, depthM float64) Setting {
	return Setting{Key: SetWallow, Thing: &Thing{AreaM2: Float(areaM2), DepthM: Float(depthM)}}
}

func TestWallowUnknown(t *testing.T) {
	d := fourPigs(t)
	_, err := d.herd().WallowLeft(d.moment("2026-06-10 12:00"))
	requireMissing(t, err, "wallow")
	empty := newPenDiary(t, "America/Chicago").add("2026-06-10 09:00", WallowFill{})
	_, err = empty.herd().WallowLeft(empty.moment("2026-06-10 12:00"))
	requireMissing(t, err, "pigs")
}

func TestWallowFirstGuess(t *testing.T) {
	d := fourPigs(t).add("2026-07-10 08:00", wallowSetting(6, 0.3)).add("2026-07-10 09:00", WallowFill{})
	for day := 10; day < 40; day++ {
		d.records = append(d.records, Record{
			ID: "w" + twoDigits(day), On: penDay(t, "2026-07-01") + Day(day-1),
			At: d.moment("2026-07-10 07:00"), Fact: Weather{HighC: Float(30), LowC: Float(15)},
		})
	}
	w, err := d.herd().WallowLeft(d.moment("2026-07-10 09:00"))
	require.NoError(t, err)
	// Evaporation of 6, seepage of 5 and four pigs' 3 litres each on 6 m2 take 13
	// mm a day: 0.3 m lasts 23 days.
	require.InDelta(t, 13*6, w.LossLD.Mid, 3)
	require.InDelta(t, 23, float64(w.Dry.Mid-penDay(t, "2026-07-10")), 1.5)
	require.Less(t, w.Dry.Low, w.Dry.Mid)
	require.Less(t, w.Dry.Mid, w.Dry.High)
	require.InDelta(t, 0, w.FillL, 1e-6)
	reasonWith(t, w.Reasons, WallowFirstGuess)
	require.NotContains(t, reasonCodes(w.Reasons), WallowSizeAssumed)
	later, err := d.herd().WallowLeft(d.moment("2026-07-15 09:00"))
	require.NoError(t, err)
	require.InDelta(t, 5*13*6, later.FillL, 20)
}

func TestWallowOfUnknownSizeIsSaidToBe(t *testing.T) {
	d := fourPigs(t).add("2026-07-10 09:00", WallowFill{})
	w, err := d.herd().WallowLeft(d.moment("2026-07-10 12:00"))
	require.NoError(t, err)
	size := reasonWith(t, w.Reasons, WallowSizeAssumed)
	require.Equal(t, []Quantity{{4, SquareMetres}, {0.2, Metres}}, size.Q)
}

func TestWallowSetUpButNeverFilledCountsAsFull(t *testing.T) {
	d := fourPigs(t).add("2026-07-10 09:00", wallowSetting(4, 0.2))
	w, err := d.herd().WallowLeft(d.moment("2026-07-12 12:00"))
	require.NoError(t, err)
	require.Zero(t, w.FillL)
	reasonWith(t, w.Reasons, WallowAssumedFull)
}

func TestWallowLossIsLearnedFromFills(t *testing.T) {
	base := fourPigs(t).add("2026-06-20 09:00", wallowSetting(4, 0.25), WallowFill{})
	first, err := base.herd().WallowLeft(base.moment("2026-06-20 09:00"))
	require.NoError(t, err)
	d := base.fork()
	for _, day := range []string{"06-24", "06-28", "07-02", "07-06", "07-10"} {
		d.add("2026-"+day+" 09:00", WallowFill{Litres: Float(800)}) // 200 litres a day
	}
	w, err := d.herd().WallowLeft(d.moment("2026-07-10 09:00"))
	require.NoError(t, err)
	require.InDelta(t, 200, w.LossLD.Mid, 30)
	require.Less(t, w.LossLD.High-w.LossLD.Low, w.LossLD.Mid, "surer than before")
	require.Greater(t, w.LossLD.Mid, first.LossLD.High)
	require.InDelta(t, 5, float64(w.Dry.Mid-penDay(t, "2026-07-10")), 1)
	require.Equal(t, 5.0, reasonWith(t, w.Reasons, WallowLearned).Q[0].Value)
}

func TestWallowSeenDry(t *testing.T) {
	d := fourPigs(t).add("2026-07-01 09:00", wallowSetting(4, 0.25), WallowFill{}).
		add("2026-07-05 09:00", WallowFill{Dry: true})
	at := d.moment("2026-07-06 09:00")
	w, err := d.herd().WallowLeft(at)
	require.NoError(t, err)
	require.Equal(t, DayInterval{DayOf(at), DayOf(at), DayOf(at)}, w.Dry)
	require.InDelta(t, 1000, w.FillL, 1e-6)
	reasonWith(t, w.Reasons, WallowFoundDry)

	d.add("2026-07-06 10:00", WallowFill{})
	refilled, err := d.herd().WallowLeft(d.moment("2026-07-06 10:00"))
	require.NoError(t, err)
	require.Less(t, int(refilled.Dry.Mid-penDay(t, "2026-07-06")), 10, "four days to dry are remembered")
}

func TestAHoseIsTakenAsAGuess(t *testing.T) {
	d := fourPigs(t).add("2026-07-01 09:00", wallowSetting(4, 0.25), WallowFill{}).
		add("2026-07-04 09:00", WallowFill{Minutes: Float(20)})
	w, err := d.herd().WallowLeft(d.moment("2026-07-04 09:00"))
	require.NoError(t, err)
	reasonWith(t, w.Reasons, WallowHose)
}

func TestWallowDaysNestWhateverWasFilled(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		d := fourPigs(t).add("2026-06-01 09:00", wallowSetting(rapid.Float64Range(0.5, 60).Draw(r, "area"), rapid.Float64Range(0.05, 0.6).Draw(r, "depth")))
		at := d.moment("2026-06-01 10:00")
		for range rapid.IntRange(0, 8).Draw(r, "fills") {
			at = at.AddDate(0, 0, rapid.IntRange(0, 12).Draw(r, "days"))
			f := WallowFill{}
			switch rapid.IntRange(0, 3).Draw(r, "kind") {
			case 0:
				f.Litres = Float(rapid.Float64Range(1, 5000).Draw(r, "litres"))
			case 1:
				f.Minutes = Float(rapid.Float64Range(1, 200).Draw(r, "minutes"))
			case 2:
				f.Dry = true
			}
			d.add(at.Format("2006-01-02 15:04"), f)
		}
		w, err := d.herd().WallowLeft(at)
		require.NoError(r, err)
		require.LessOrEqual(r, DayOf(at), w.Dry.Low)
		require.LessOrEqual(r, w.Dry.Low, w.Dry.Mid)
		require.LessOrEqual(r, w.Dry.Mid, w.Dry.High)
		require.Less(r, w.LossLD.Low, w.LossLD.Mid)
		require.Less(r, w.LossLD.Mid, w.LossLD.High)
		require.GreaterOrEqual(r, w.FillL, -1e-6)
	})
}

func TestWallowLossRefusesNonsense(t *testing.T) {
	for _, c := range [][4]float64{{-1, 5, 18, 6}, {6, -1, 18, 6}, {6, 5, -1, 6}, {6, 5, 18, 0}} {
		_, err := WallowLossMMD(c[0], c[1], c[2], c[3])
		var out *OutOfRange
		require.ErrorAs(t, err, &out)
	}
}

func TestRainFillsTheWallow(t *testing.T) {
	dry := fourPigs(t).add("2026-07-10 08:00", wallowSetting(6, 0.3)).add("2026-07-10 09:00", WallowFill{})
	wet := dry.fork().add("2026-07-12 20:00", Weather{RainMm: Float(20)})
	at := dry.moment("2026-07-14 09:00")
	without, err := dry.herd().WallowLeft(at)
	require.NoError(t, err)
	with, err := wet.herd().WallowLeft(at)
	require.NoError(t, err)
	require.InDelta(t, 20*6, without.FillL-with.FillL, 25, "a day cooler or warmer aside: 20 mm on 6 m2")
	require.Greater(t, with.Dry.Mid, without.Dry.Mid)
	// A cloudburst fills it to the brim, no further.
	flood, err := dry.fork().add("2026-07-13 20:00", Weather{RainMm: Float(900)}).herd().WallowLeft(at)
	require.NoError(t, err)
	require.InDelta(t, 0, flood.FillL, 60)
	require.GreaterOrEqual(t, flood.FillL, 0.0)
	// What the sky poured in was lost as well: it teaches no smaller loss.
	fill := func(d *penDiary, litres float64) float64 {
		w, err := d.fork().add("2026-07-17 09:00", WallowFill{Litres: Float(litres)}).herd().WallowLeft(d.moment("2026-07-17 10:00"))
		require.NoError(t, err)
		return w.LossLD.Mid
	}
	require.InEpsilon(t, fill(dry, 500), fill(wet, 380), 0.05)
	require.Error(t, Weather{RainMm: Float(-1)}.Check())
	require.NoError(t, Weather{RainMm: Float(0)}.Check())
}
