package schedule

import (
	"context"
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// sevenPigs is a season of an invented herd of seven: ten weeks of rounds.
func sevenPigs(tb testing.TB) *log {
	l := newLog(tb, "America/Chicago").add("2026-05-02 09:00",
		model.Setting{Key: model.SetZone, Text: "America/Chicago"},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "north", CapacityKg: model.Float(160)}},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "south", CapacityKg: model.Float(160)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel 1", CapacityL: model.Float(208), Nipples: model.Int(2)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel 2", CapacityL: model.Float(208), Nipples: model.Int(2)}},
		model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "oak", AreaM2: model.Float(900), InUse: new(true)}},
		model.Setting{Key: model.SetWallow, Thing: &model.Thing{AreaM2: model.Float(6), DepthM: model.Float(0.2)}},
		model.Recipe{Ingredients: map[string]float64{"corn": 33.5, "soybean meal 48": 10.4, "mineral premix": 1.4}},
		model.Arrive{Count: 7, Animals: []string{"Dot", "Tank", "Mabel", "Fig", "Plum", "Moss", "Bean"}, WeightKg: model.Float(22)},
	)
	at := l.time("2026-05-02 10:00")
	for week := range 10 {
		d := at.AddDate(0, 0, 7*week).Format("2006-01-02")
		pour := 35 + 8*float64(week)
		l.add(d+" 09:10", model.Refill{Feeder: "north", FeedKg: model.Float(pour)}, model.Refill{Feeder: "south", FeedKg: model.Float(pour), Full: week > 4})
		l.add(d+" 09:20", model.Water{Full: true})
		l.add(at.AddDate(0, 0, 7*week+3).Format("2006-01-02")+" 18:00", model.Water{Full: true}, model.WallowFill{})
		if week%3 == 2 {
			l.add(d+" 10:00", model.Weigh{Animals: []string{"Dot"}, GirthCm: 60 + 4*float64(week)})
		}
	}
	return l
}

func TestRealSeasonRuns(t *testing.T) {
	l := sevenPigs(t)
	got := l.walk("2026-05-02 09:00", "2026-07-18 12:00", func(h *model.Herd) figures { return h })
	standing := 0
	for _, s := range got {
		if testing.Verbose() {
			fmt.Println(s, s.Key)
		}
		if s.Standing {
			standing++
		}
	}
	require.Equal(t, 11, standing)
}

func BenchmarkDecide(b *testing.B) {
	l := sevenPigs(b)
	for _, at := range []string{"2026-07-08 00:00", "2026-07-08 12:00", "2026-07-11 07:00"} {
		now := l.time(at)
		h := l.herd(now)
		Decide(h, now)
		b.Run(at, func(b *testing.B) {
			for b.Loop() {
				Decide(h, now)
			}
		})
	}
}

func BenchmarkSleepingHerds(b *testing.B) {
	desk := newFakeDesk()
	start := time.Date(2026, 7, 8, 12, 0, 0, 0, time.UTC)
	for id := range int64(10_000) {
		desk.again[id] = start.Add(time.Hour)
	}
	for b.Loop() {
		require.NoError(b, Sweep(context.Background(), desk, start))
	}
}
