package model

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Invented seasons of which nothing is amiss, levels told by eye every few days
// and all filled: how often in eighteen weeks would the keeper be asked, and is a
// barrel that leaks as much again as the pigs draw seen at once?
func TestQuestionsOnSoundBarrelsAreRare(t *testing.T) {
	draws := newCountedDraws(23)
	const seasons, rounds = 100, 8
	var asked, less, days, leaks, seen, clogs, seenClog int
	for range seasons {
		s := newInventedSeason(t, draws, 3+int(draws.r.Int32N(8)))
		at := s.moment("2026-05-02 09:00")
		for round := range rounds {
			gap := 3 + int(draws.r.Int32N(3))
			before := s.levels
			s.live(s.herd(), at, gap)
			at = at.AddDate(0, 0, gap)
			days += gap
			when := at.Format("2006-01-02 15:04")
			if round == rounds-1 { // what if one barrel leaked, or its nipple was clogged?
				odd := func(north, south float64) bool {
					c := *s.penDiary
					c.records = append([]Record(nil), s.records...)
					c.add(when, Water{Barrel: "north", Fraction: s.seen(north), Seen: true}, Water{Barrel: "south", Fraction: s.seen(south), Seen: true})
					for _, o := range c.herd().OddWater() {
						if o.At.Equal(at) {
							return true
						}
					}
					return false
				}
				drawn := before[0] - s.levels[0] + before[1] - s.levels[1]
				leaks++
				seen += count(odd(max(s.levels[0]-drawn, 0), s.levels[1]))
				if drawn < 0.8*s.cap && s.share > 0.35 { // south alone can give it
					clogs++
					seenClog += count(odd(before[0], before[1]-drawn))
				}
			}
			s.add(when, Water{Barrel: "north", Fraction: s.seen(s.levels[0]), Seen: true},
				Water{Barrel: "south", Fraction: s.seen(s.levels[1]), Seen: true})
			s.add(at.Add(10*time.Minute).Format("2006-01-02 15:04"), Water{Full: true})
			s.levels = [2]float64{s.cap, s.cap}
		}
		for _, o := range s.herd().OddWater() {
			asked++
			less += count(o.Kind == OddLess)
		}
	}
	season := float64(18*7) / float64(days)
	t.Logf("%d days: asked %.2f times in 18 weeks (%d of %d of less); leaks seen %d of %d, clogged nipples %d of %d",
		days, season*float64(asked), less, asked, seen, leaks, seenClog, clogs)
	require.LessOrEqual(t, season*float64(asked), 0.25)
	require.GreaterOrEqual(t, float64(seen)/float64(leaks), 0.5)
}

// barrelDiary is four pigs of 60 kg and two full barrels on a cool day.
func barrelDiary(t *testing.T) *penDiary {
	d := newPenDiary(t, "America/Chicago").add("2026-05-02 09:00",
		Arrive{Count: 4, WeightKg: Float(60)}, barrelSetting("north", 208, 2), barrelSetting("south", 208, 2), Water{Full: true})
	for day := penDay(t, "2026-05-02"); day < penDay(t, "2026-05-20"); day++ {
		d.add(day.String()+" 07:00", Weather{HighC: Float(18), LowC: Float(8)})
	}
	return d
}

func TestOddWater(t *testing.T) {
	dry := Water{Barrel: "north", Fraction: Float(0), Seen: true}
	tests := []struct {
		name string
		at   string
		say  []Fact
		want OddKind
	}{
		{"dry in two days", "2026-05-04 09:00", []Fact{dry}, OddMore},
		{"both dry in a day", "2026-05-03 09:00", []Fact{Water{Fraction: Float(0), Seen: true}}, OddMore},
		{"dry in its time", "2026-05-11 09:00", []Fact{dry}, ""},
		{"half in its time", "2026-05-05 09:00", []Fact{Water{Barrel: "north", Fraction: Float(0.6), Seen: true}}, ""},
		{"not drawn from", "2026-05-09 09:00", []Fact{Water{Barrel: "north", Fraction: Float(1), Seen: true}}, OddLess},
		{"an hour later", "2026-05-02 10:00", []Fact{Water{Barrel: "north", Fraction: Float(1), Seen: true}}, ""},
		{"a fill that told it", "2026-05-04 09:00", []Fact{Water{Barrel: "north", Litres: Float(190), Full: true}}, OddMore},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := barrelDiary(t).add(tt.at, tt.say...)
			got := d.herd().OddWater()
			if tt.want == "" {
				require.Empty(t, got)
				return
			}
			require.Len(t, got, 1)
			require.Equal(t, tt.want, got[0].Kind)
			require.Equal(t, d.records[len(d.records)-1].ID, got[0].Record)
			require.Equal(t, d.moment("2026-05-02 09:00"), got[0].From)
			require.Equal(t, WaterOdd, got[0].Reasons[0].Code)
			require.Greater(t, len(got[0].Reasons), 1)
		})
	}
}

// What was answered decides what a strange level teaches of the draw.
func TestVerdictsOnWater(t *testing.T) {
	use := func(how string) float64 {
		d := barrelDiary(t).add("2026-05-04 09:00", Water{Fraction: Float(0), Seen: true})
		of := d.records[len(d.records)-1].ID
		if how != "" {
			d.add("2026-05-04 19:00", Question{About: "check", Code: "odd_water_more", Of: of})
			d.add("2026-05-04 19:01", Settled{Question: d.records[len(d.records)-1].ID, How: how})
		}
		d.add("2026-05-04 19:30", Water{Full: true})
		w, err := d.herd().WaterLeft(d.moment("2026-05-05 09:00"))
		require.NoError(t, err)
		require.Equal(t, how == "", len(d.herd().OddWater()) == 1)
		return w.UseLD.Mid
	}
	plain, err := barrelDiary(t).herd().WaterLeft(barrelDiary(t).moment("2026-05-05 09:00"))
	require.NoError(t, err)
	require.InEpsilon(t, plain.UseLD.Mid, use(LeftOut), 0.02)
	require.Greater(t, use(""), 1.05*use(LeftOut))
	require.Greater(t, use(AsUsual), 1.05*use(""))
}
