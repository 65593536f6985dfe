package replay_test

import (
	"bytes"
	"context"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/document"
	"troughbell/store"
)

// rowsOfAFile is the lines of a large file: 20 pigs weighed on each of 999 days.
const rowsOfAFile = 19_980

// BenchmarkImport takes in a list of weights, and the ZIP that the herd then exports
// into another herd: what it says of them first, and the taking in.
func BenchmarkImport(b *testing.B) {
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(b, err)
	now := time.Date(2026, 11, 28, 20, 0, 0, 0, zone)
	var list, names bytes.Buffer
	list.WriteString("date,pig,kg\n")
	for pig := range 20 {
		fmt.Fprintf(&names, "%s%s", map[bool]string{true: ", "}[pig > 0], pigName(pig))
	}
	for row := range rowsOfAFile {
		day := now.AddDate(0, 0, row/20-1000)
		fmt.Fprintf(&list, "%s,%s,%.1f\n", day.Format("2006-01-02"), pigName(row%20), 20+0.2*float64(row/20))
	}
	log := fmt.Sprintf("2024-02-01 08:00 | metric units. 20 pigs came today: %s, 20 kg each\n", names.String())

	var zipped bytes.Buffer
	b.Run("list", func(b *testing.B) {
		for b.Loop() {
			b.StopTimer()
			st, in := importBench(b, log, "weights.csv", list.Bytes(), now)
			b.StartTimer()
			importOnce(b, st, in, rowsOfAFile)
			b.StopTimer()
			zipped.Reset()
			require.NoError(b, st.Read(context.Background(), func(tx *store.Tx) error {
				_, err := document.Tables(tx, in.Herd, false, &zipped)
				return err
			}))
			require.NoError(b, st.Close())
			b.StartTimer()
		}
		b.ReportMetric(float64(list.Len()), "bytes")
	})
	b.Run("zip", func(b *testing.B) {
		for b.Loop() {
			b.StopTimer()
			st, in := importBench(b, "", "herd.zip", zipped.Bytes(), now)
			b.StartTimer()
			importOnce(b, st, in, rowsOfAFile)
			b.StopTimer()
			require.NoError(b, st.Close())
			b.StartTimer()
		}
		b.ReportMetric(float64(zipped.Len()), "bytes")
	})
}

func pigName(i int) string { return string(rune('A'+i)) + "ly" }

// importBench is a database with a herd that a log was told to, and a file for it.
func importBench(b *testing.B, log, name string, file []byte, now time.Time) (*store.Store, bot.Importing) {
	b.Helper()
	s := newShedIn(b, filepath.Join(b.TempDir(), "herd.db"), now.Location())
	if log != "" {
		s.play(log)
	}
	return s.store, s.importing(name, file, now)
}

func importOnce(b *testing.B, st *store.Store, in bot.Importing, atLeast int) {
	b.Helper()
	require.NoError(b, st.Write(context.Background(), func(tx *store.Tx) error {
		text, fresh, left, err := bot.NewDesk().Preview(tx, in)
		require.GreaterOrEqual(b, fresh, atLeast, text)
		require.Zero(b, left, text)
		return err
	}))
	require.NoError(b, st.Write(context.Background(), func(tx *store.Tx) error {
		_, err := bot.NewDesk().Import(tx, in)
		return err
	}))
}
