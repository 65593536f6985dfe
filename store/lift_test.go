package store

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestOldLayoutsAreLifted(t *testing.T) {
	// An invented past of a note: pounds, then kilograms, then another name.
	by := map[layout]lift{
		{"note", 1}: func(f map[string]any) error { f["kg"] = f["lb"].(float64) * 0.45359237; delete(f, "lb"); return nil },
		{"note", 2}: func(f map[string]any) error { f["feed_kg"] = f["kg"]; delete(f, "kg"); return nil },
		{"bad", 1}:  func(map[string]any) error { return errClosed },
	}
	rows := []struct {
		kind       model.Kind
		from, to   int
		body, want string
		says       string
	}{
		{"note", 1, 3, `{"lb":100,"what":"x"}`, `{"feed_kg":45.359237,"what":"x"}`, ""},
		{"note", 2, 3, `{"kg":7}`, `{"feed_kg":7}`, ""},
		{"note", 3, 3, `{"feed_kg":7}`, `{"feed_kg":7}`, ""},
		{"note", 4, 3, `{}`, "", "newer version"},
		{"note", 3, 4, `{}`, "", "no way to version 4"},
		{"bad", 1, 2, `{}`, "", "version 1 to 2"},
		{"note", 1, 2, `[`, "", "version 1"},
	}
	for _, r := range rows {
		got, err := liftBody(by, r.kind, r.from, r.to, []byte(r.body))
		if r.says != "" {
			require.ErrorContains(t, err, r.says)
			continue
		}
		require.NoError(t, err)
		require.JSONEq(t, r.want, string(got))
	}
}

// Every layout that was ever current can be read: the way from version 1 to the
// current one is whole.
func TestEveryLayoutHasItsWay(t *testing.T) {
	for kind, current := range versions {
		for v := 1; v < current; v++ {
			require.Contains(t, lifts, layout{kind, v})
		}
	}
}

func TestDecodeByVersion(t *testing.T) {
	f, err := decode("fence", 1, []byte(`{"kv":4.5}`))
	require.NoError(t, err)
	require.Equal(t, model.Fence{Kv: 4.5}, f)
	_, err = decode("fence", 2, []byte(`{"kv":4.5}`))
	require.ErrorContains(t, err, "newer version")
	_, err = decode("song", 1, []byte(`{}`))
	require.ErrorContains(t, err, "song")

	lifts[layout{"fence", 0}] = func(f map[string]any) error { f["kv"] = f["volts"].(float64) / 1000; return nil }
	defer delete(lifts, layout{"fence", 0})
	f, err = decode("fence", 0, []byte(`{"volts":4500}`))
	require.NoError(t, err)
	require.Equal(t, model.Fence{Kv: 4.5}, f)
}

func TestRecordOfANewerVersionIsTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	script(t, path, "INSERT INTO record (herd, seq, id, kind, version, on_day, zone, at, at_east, said_at, body)"+
		" VALUES (1, 201, 'r201', 'song', 1, '2026-05-16', 'UTC', 0, 0, 0, '{}')")
	s := openStore(t, path, Options{})
	err := s.Read(t.Context(), func(tx *Tx) error {
		_, err := tx.Journal(1)
		return err
	})
	requireProblem(t, err, Newer, path)
}
