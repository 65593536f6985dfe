package store

import (
	"database/sql"
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestViewsAreReadBySQL(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	var f farm
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		for _, fact := range []model.Fact{
			model.Weigh{Animals: []string{"Dot", "Pru"}, GirthCm: 96.5},
			model.Weigh{Animals: []string{"Dot"}, WeightKg: 81.65, By: model.ByEye},
			model.Void{Record: "r2", Why: "edit"},
			model.Refill{FeedKg: model.Float(40), Full: true},
			model.Worm{Treatment: model.Treatment{Animals: []string{"all"}, Product: "ivermectin", WithdrawalDays: model.Int(18)}},
			model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: model.Float(200)}},
			model.Recipe{Ingredients: map[string]float64{"corn": 30}},
			model.Booked{Day: model.DayOf(noon) + 100},
		} {
			e := f.envelope(fact)
			require.NoError(t, tx.Append(&e))
		}
		e := f.envelope(model.Fence{Kv: 4.5})
		e.Zone = "Asia/Kathmandu" // 5 h 45 min east
		require.NoError(t, tx.Append(&e))
		e = f.envelope(model.Fence{Kv: 3})
		e.Zone = "America/St_Johns" // 2 h 30 min west in summer
		require.NoError(t, tx.Append(&e))
	})
	db, err := sql.Open("sqlite", dsn(path, reading))
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	rows := []struct {
		query string
		want  []any
	}{
		{
			"SELECT animals, girth_cm, weight_kg, \"by\", on_day, at, said_by, text, voided FROM weighing WHERE id = 'r1'",
			[]any{"Dot, Pru", 96.5, nil, nil, "2026-05-16", "2026-05-16T07:00:00-05:00", "Ann", "as it was said", nil},
		},
		{"SELECT weight_kg, \"by\", voided FROM weighing WHERE id = 'r2'", []any{81.65, "eye", "edit"}},
		{"SELECT feed_kg, \"full\", from_empty, feeder FROM refill", []any{int64(40), int64(1), int64(0), nil}},
		{"SELECT animals, product, withdrawal_days FROM worming", []any{"all", "ivermectin", int64(18)}},
		{"SELECT key, name, capacity_kg, nipples, text, settings_text FROM settings", []any{"feeder", "hopper", int64(200), nil, "as it was said", nil}},
		{"SELECT ingredients FROM recipe", []any{`{"corn":30}`}},
		{"SELECT day, minute FROM booked", []any{"2026-08-24", nil}},
		{"SELECT at, on_day FROM fence WHERE kv = 4.5", []any{"2026-05-16T17:45:00+05:45", "2026-05-16"}},
		{"SELECT at FROM fence WHERE kv = 3", []any{"2026-05-16T09:30:00-02:30"}},
		{"SELECT count(*) FROM told", []any{int64(0)}},
	}
	for _, r := range rows {
		got, dest := make([]any, len(r.want)), make([]any, len(r.want))
		for i := range got {
			dest[i] = &got[i]
		}
		require.NoError(t, db.QueryRow(r.query).Scan(dest...), r.query)
		require.Equal(t, r.want, got, r.query)
	}
}

func TestViewsAreMadeAnewOnlyWhenFactsChanged(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	version := func() (v int) {
		onFile(t, path, func(c *connection) {
			require.NoError(t, c.conn.QueryRowContext(t.Context(), "PRAGMA schema_version").Scan(&v))
		})
		return v
	}
	reopen := func() {
		s, err := Open(t.Context(), path, Options{})
		require.NoError(t, err)
		require.NoError(t, s.Close())
	}
	before := version()
	reopen()
	require.Equal(t, before, version(), "nothing changed, nothing made")
	script(t, path, "DROP VIEW weighing; CREATE VIEW weighing AS SELECT 1; CREATE VIEW of_old AS SELECT 2")
	reopen()
	s := openStore(t, path, Options{})
	read(t, s, func(tx *Tx) {
		have, err := list(tx, "SELECT name, sql FROM sqlite_schema WHERE type = 'view'", nil, func(row scanner) (v [2]string, err error) {
			err = row.Scan(&v[0], &v[1])
			return v, err
		})
		require.NoError(t, err)
		got := map[string]string{}
		for _, v := range have {
			got[v[0]] = v[1]
		}
		require.Equal(t, views(), got)
	})
}

func TestViewRowsForExport(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		other, err := tx.CreateHerd("Hill End", "UTC", noon)
		require.NoError(t, err)
		for i, kg := range []float64{100, 81.65, 1e6} {
			e := f.envelope(model.Weigh{Animals: []string{"Dot"}, WeightKg: kg})
			e.At = noon.Add(-time.Duration(i) * time.Hour)
			require.NoError(t, tx.Append(&e))
		}
		v := f.envelope(model.Void{Record: "r1", Why: "undo"})
		require.NoError(t, tx.Append(&v))
		e := f.envelope(model.Weigh{Animals: []string{"Bo"}, WeightKg: 50})
		e.Herd = other
		require.NoError(t, tx.Append(&e))

		var got [][]string
		require.NoError(t, tx.ViewRows("weigh", f.herd, func(cols, vals []string) error {
			require.Equal(t, []string{"id", "on_day", "at", "said_by", "text", "animals", "weight_kg", "by", "girth_cm", "length_cm"}, cols)
			got = append(got, append([]string(nil), vals...))
			return nil
		}))
		require.Equal(t, [][]string{
			{"r3", "2026-05-16", "2026-05-16T05:00:00-05:00", "Ann", "as it was said", "Dot", "1000000", "", "", ""},
			{"r2", "2026-05-16", "2026-05-16T06:00:00-05:00", "Ann", "as it was said", "Dot", "81.65", "", "", ""},
		}, got, "in the order of their moments, without what was taken back and other herds")
		require.ErrorContains(t, tx.ViewRows("song", f.herd, nil), "no such kind")
	})
}

// What voids a record is looked up: a view never reads a herd once for each of its
// records.
func TestViewsLookUpWhatVoids(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		for name := range views() {
			plan, err := list(tx, fmt.Sprintf("EXPLAIN QUERY PLAN SELECT * FROM %q WHERE herd = 1 AND voided IS NULL", name), nil,
				func(s scanner) (detail string, err error) {
					var id, parent, unused int
					return detail, s.Scan(&id, &parent, &unused, &detail)
				})
			require.NoError(t, err)
			looks := 0
			for _, step := range plan {
				if strings.Contains(step, " v ") || strings.Contains(step, " x ") {
					looks++
					require.Regexp(t, `\(herd=\? AND (seq|voids)=\?\)`, step, name)
				}
			}
			require.NotZero(t, looks, "%v", plan)
		}
	})
}
