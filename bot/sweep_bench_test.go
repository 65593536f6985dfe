package bot_test

import (
	"context"
	"fmt"
	"path/filepath"
	"runtime"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// sweepHerds is how many herds one server keeps, and sweepDue how many of them
// fall due in one minute.
const sweepHerds, sweepDue = 100_000, 1_000

// BenchmarkSweep is a minute of a server with many herds, on a real file: one in
// which a hundredth of them gets its standing message, and one in which none is
// due. Each due herd has the records of set-up and five weeks. MB-process is what
// the program has taken from the system, MB-held what it still needs afterwards.
func BenchmarkSweep(b *testing.B) {
	ctx := context.Background()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(b, err)
	saturday := time.Date(2026, time.June, 13, 7, 0, 0, 0, zone)
	st, err := store.Open(ctx, filepath.Join(b.TempDir(), "herds.db"), store.Options{})
	require.NoError(b, err)
	b.Cleanup(func() { require.NoError(b, st.Close()) })
	due := fillHerds(b, st, saturday, zone)
	for _, m := range []struct {
		name string
		due  int
	}{{"due", sweepDue}, {"idle", 0}} {
		b.Run(m.name, func(b *testing.B) {
			queued := 0
			st.OnQueued(func(w []store.Waiting) { queued += len(w) })
			clock := &bot.Clock{Store: st, Desk: bot.NewDesk()}
			for b.Loop() {
				b.StopTimer()
				queued = 0
				saturday = saturday.AddDate(0, 0, 7)
				setDue(b, st, due, m.due, saturday)
				b.StartTimer()
				require.NoError(b, schedule.Sweep(ctx, clock, saturday))
				require.Equal(b, m.due, queued)
			}
			var mem runtime.MemStats
			runtime.ReadMemStats(&mem)
			b.ReportMetric(float64(mem.Sys)/1e6, "MB-process")
			runtime.GC()
			runtime.ReadMemStats(&mem)
			b.ReportMetric(float64(mem.HeapAlloc)/1e6, "MB-held")
			runtime.KeepAlive(clock)
		})
	}
}

// fillHerds makes the herds, and gives those that will be due.
func fillHerds(b *testing.B, st *store.Store, at time.Time, zone *time.Location) []store.HerdID {
	var due []store.HerdID
	const batch = 5000
	for from := 0; from < sweepHerds; from += batch {
		require.NoError(b, st.Write(b.Context(), func(tx *store.Tx) error {
			for n := from; n < from+batch; n++ {
				id, err := tx.CreateHerd(fmt.Sprint("herd ", n), zone.String(), at)
				if err != nil {
					return err
				}
				chat, err := tx.ChatOf("telegram", fmt.Sprint(n), false)
				if err != nil {
					return err
				}
				chat.Herd = id
				if err := tx.SaveChat(chat); err != nil {
					return err
				}
				if err := tx.SetLookAgain(id, at.AddDate(10, 0, 0)); err != nil {
					return err
				}
				if n%(sweepHerds/sweepDue) != 0 {
					continue
				}
				due = append(due, id)
				if err := keepSeason(tx, id, at, zone); err != nil {
					return err
				}
			}
			return nil
		}))
	}
	return due
}

// setDue has so many of the herds look again at the moment.
func setDue(b *testing.B, st *store.Store, herds []store.HerdID, n int, at time.Time) {
	require.NoError(b, st.Write(b.Context(), func(tx *store.Tx) error {
		for i, id := range herds {
			again := at.AddDate(10, 0, 0)
			if i < n {
				again = at
			}
			if err := tx.SetLookAgain(id, again); err != nil {
				return err
			}
		}
		return nil
	}))
}

// keepSeason records the set-up of an invented herd and five weeks of rounds.
func keepSeason(tx *store.Tx, id store.HerdID, until time.Time, zone *time.Location) error {
	came := until.AddDate(0, 0, -35).Add(3 * time.Hour)
	facts := []struct {
		at time.Time
		f  model.Fact
	}{
		{came, model.Setting{Key: model.SetZone, Text: zone.String()}},
		{came, model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: model.Float(130)}}},
		{came, model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "north", CapacityL: model.Float(208), Nipples: model.Int(2)}}},
		{came, model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "south", CapacityL: model.Float(208), Nipples: model.Int(2)}}},
		{came, model.Arrive{Count: 4, Animals: []string{"Dot", "Tank", "Mabel", "Fig"}, WeightKg: model.Float(22)}},
	}
	for week := range 5 {
		at := came.AddDate(0, 0, 7*week)
		facts = append(facts, []struct {
			at time.Time
			f  model.Fact
		}{
			{at, model.Refill{FeedKg: model.Float(40 + 6*float64(week)), Full: week > 1}},
			{at.Add(time.Minute), model.Water{Full: true}},
			{at.Add(2 * time.Minute), model.Fence{Kv: 5.8}},
		}...)
	}
	facts = append(facts, struct {
		at time.Time
		f  model.Fact
	}{came.AddDate(0, 0, 21), model.Weigh{Animals: []string{"Dot"}, GirthCm: 76}})
	for _, x := range facts {
		e := store.Envelope{
			Herd: id, On: model.DayOf(x.at), At: x.at, SaidAt: x.at, Zone: zone.String(), Judged: "certain", Fact: x.f,
		}
		if err := tx.Append(&e); err != nil {
			return err
		}
	}
	return nil
}
