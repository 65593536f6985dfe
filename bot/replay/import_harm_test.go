package replay_test

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"encoding/json"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// spoil changes what stands in a record's JSON somewhere: a number to another, a word
// to another, a part left out, or taken from elsewhere.
func spoil(r *rand.Rand, v any) any {
	switch v := v.(type) {
	case map[string]any:
		for k := range v {
			switch r.IntN(12) {
			case 0:
				delete(v, k)
			case 1, 2, 3:
				v[k] = spoil(r, v[k])
			}
		}
		return v
	case []any:
		switch r.IntN(4) {
		case 0:
			return []any{}
		case 1:
			return append(v, v...)
		}
		for i := range v {
			v[i] = spoil(r, v[i])
		}
		return v
	case float64:
		return []any{0.0, -1.0, v * 1000, v / 1000, 99_999.0, -v, 1e-9}[r.IntN(7)]
	case string:
		return []any{"", "all", "Olive", "r1", "r99", "2000-01-01", "2030-12-31", "setup", "feeder", "  ", v + v}[r.IntN(11)]
	case bool:
		return !v
	}
	return v
}

// spoiled is an export with some of its records spoiled; the other columns, which
// would give it away, are left out.
func spoiled(t *testing.T, r *rand.Rand, b []byte) []byte {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(b), int64(len(b)))
	require.NoError(t, err)
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	for _, f := range z.File {
		rows := table(t, b, f.Name)
		entry, err := w.Create(f.Name)
		require.NoError(t, err)
		c := csv.NewWriter(entry)
		require.NoError(t, c.Write([]string{"id", "record"}))
		for _, row := range rows[1:] {
			record := row[len(row)-1]
			if r.IntN(4) == 0 {
				var e map[string]any
				require.NoError(t, json.Unmarshal([]byte(record), &e))
				e["body"] = spoil(r, e["body"])
				raw, err := json.Marshal(e)
				require.NoError(t, err)
				record = string(raw)
			}
			require.NoError(t, c.Write([]string{row[0], record}))
		}
		c.Flush()
		require.NoError(t, c.Error())
	}
	require.NoError(t, w.Close())
	return out.Bytes()
}

// A file made to harm leaves a herd that can still be spoken to, and taken back:
// whatever its records say, every figure is asked for and every nudge of two weeks is
// decided.
func TestSpoiledExportsDoNoHarm(t *testing.T) {
	t.Parallel()
	from := newShed(t)
	_, now := from.play(logs(t)["season.log"])
	b := from.export(false)
	n := 6
	if testing.Short() {
		n = 2
	}
	for seed := range n {
		to := newShed(t)
		bad := spoiled(t, rand.New(rand.NewPCG(uint64(seed), 7)), b)
		text, fresh, left := to.preview("herd.zip", bad, now)
		require.NotZero(t, fresh, text)
		require.NotZero(t, left, text)
		to.take("herd.zip", bad, now)
		page, _ := to.play(asking(now))
		require.Contains(t, page, "what's due?")
		at := now.Add(20 * 24 * time.Hour).Format("2006-01-02 15:04")
		said, _ := to.play(at + " | undo import\n" + at + " | undo it\n")
		require.Contains(t, said, "Undone: import of", "seed %d", seed)
		to.write(func(tx *store.Tx) error {
			s, err := bot.NewDesk().State(tx, to.herd)
			require.Empty(t, s.Herd.Animals)
			return err
		})
	}
}
