package model

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// inventedSeason is a herd whose true draw is known: two barrels looked at and
// filled for some weeks, on days warmer or colder than the season's normal.
type inventedSeason struct {
	*penDiary
	draws  countedDraws
	factor float64 // of the whole draw
	share  float64 // of the first barrel
	levels [2]float64
	air    map[Day]float64 // departure from the normal
	cap    float64
}

func newInventedSeason(t testing.TB, draws countedDraws, pigs int) *inventedSeason {
	s := &inventedSeason{
		penDiary: newPenDiary(t, "America/Chicago").add("2026-05-02 09:00",
			Arrive{Count: pigs, WeightKg: Float(25)},
			barrelSetting("north", 208, 2), barrelSetting("south", 208, 2), Water{Full: true}),
		draws: draws, air: map[Day]float64{}, cap: 208,
	}
	s.factor = math.Exp(0.22 * draws.normal())
	s.share = min(max(0.5+0.14*draws.normal(), 0.1), 0.9)
	s.levels = [2]float64{s.cap, s.cap}
	departure := 0.0
	for day := penDay(t, "2026-05-02"); day < penDay(t, "2026-09-01"); day++ {
		departure = 0.7*departure + 2.5*draws.normal()
		s.air[day] = departure
	}
	return s
}

// live draws for a span of whole days as the pigs truly do, walking on from a
// dry barrel, and gives the time until both were dry, or the span.
func (s *inventedSeason) live(h *Herd, from time.Time, days int) float64 {
	draw := newHerdDraw(h)
	const steps = 12
	for i := range days * steps {
		day := DayOf(from) + Day(i/steps)
		plain, err := draw.on(day)
		require.NoError(s.t, err)
		mild := h.Air(day).DaytimeC()
		warm := h.normalMeanC(day) + dailyRangeC/math.Pi + s.air[day]
		rate := plain.litres * waterPerFeed(warm) / expectedWaterPerFeed(mild, guessedAirSDC) * s.factor
		step := rate * max(0.2, 1+waterDaySD*s.draws.normal()*math.Sqrt(steps)) / steps
		dead := deadShare * s.cap
		parts := [2]float64{s.share, 1 - s.share}
		for b := range parts {
			if s.levels[b] <= dead {
				parts[1-b], parts[b] = 1, 0
			}
		}
		if s.levels[0] <= dead && s.levels[1] <= dead {
			return float64(i) / steps
		}
		for b := range parts {
			s.levels[b] = max(dead, s.levels[b]-step*parts[b])
		}
	}
	return float64(days)
}

func (s *inventedSeason) seen(level float64) *float64 {
	f := level / s.cap
	if f <= deadShare {
		return Float(0)
	}
	return Float(min(max(math.Round(8*(f+0.04*s.draws.normal()))/8, 0.05), 1))
}

func TestWaterEdgesHoldOverInventedSeasons(t *testing.T) {
	draws := newCountedDraws(11)
	const seasons = 300
	var early, low, edge, within int
	var off, plainOff float64
	for range seasons {
		s := newInventedSeason(t, draws, 3+int(draws.r.Int32N(8)))
		at := s.moment("2026-05-02 09:00")
		for range 6 {
			gap := 3 + int(draws.r.Int32N(3))
			s.live(s.herd(), at, gap)
			at = at.AddDate(0, 0, gap)
			when := at.Format("2006-01-02 15:04")
			s.add(when, Water{Barrel: "north", Fraction: s.seen(s.levels[0]), Seen: true},
				Water{Barrel: "south", Fraction: s.seen(s.levels[1]), Seen: true})
			s.add(at.Add(10*time.Minute).Format("2006-01-02 15:04"), Water{Full: true})
			s.levels = [2]float64{s.cap, s.cap}
		}
		at = at.Add(10 * time.Minute)
		h := s.herd()
		w, err := h.WaterLeft(at)
		require.NoError(t, err)
		d := newHerdDraw(h)
		plain, err := d.on(DayOf(at))
		require.NoError(t, err)
		truth := s.live(h, at, 60)
		off += math.Abs(w.Days-truth) / truth
		plainOff += math.Abs(2*s.cap/plain.litres-truth) / truth
		if truth < w.Days {
			early++
		}
		if truth < w.LowDays {
			low++
		}
		if truth < w.EdgeDays {
			edge++
		}
		if math.Abs(truth-w.Days) < 1 {
			within++
		}
	}
	t.Logf("%d seasons: likely too late %d, 10 %% edge broken %d, 2 %% edge broken %d, within a day %d, error %.1f %%, of the published draw %.1f %%",
		seasons, early, low, edge, within, 100*off/seasons, 100*plainOff/seasons)
	require.InDelta(t, 0.5, float64(early)/seasons, 0.15)
	require.InDelta(t, 0.10, float64(low)/seasons, 0.06)
	require.LessOrEqual(t, float64(edge)/seasons, 0.05)
	require.Less(t, off, plainOff*0.75, "the herd's own draw must be worth learning")
}
