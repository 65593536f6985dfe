package store

import (
	"context"
	"database/sql"
	_ "embed"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// firstSchema is the very first schema with a little data in it, as a file of
// the first version holds it. DO NOT EDIT: files like that are out there.
//
//go:embed testdata/first_schema.sql
var firstSchema string

func TestFirstSchemaIsBroughtUpToDate(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	script(t, path, firstSchema)
	s := openStore(t, path, Options{})
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		require.Len(t, all, 2)
		require.Equal(t, model.Weigh{Animals: []string{"Dot"}, GirthCm: 96.5}, all[0].Fact)
		require.Equal(t, "2026-05-16T07:00:00-05:00", all[0].At.Format("2006-01-02T15:04:05Z07:00"))
		require.Equal(t, model.Void{Record: "r1", Why: "undo"}, all[1].Fact)
		m, ok, err := tx.Member(1, 1)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, Member{Herd: 1, Person: 1, Name: "Ann", Role: Owner, Operator: true}, m)
	})
	fresh := openStore(t, filepath.Join(t.TempDir(), "fresh.db"), Options{})
	require.Equal(t, schemaText(t, fresh), schemaText(t, s))
}

func schemaText(t *testing.T, s *Store) (out []string) {
	t.Helper()
	read(t, s, func(tx *Tx) {
		var err error
		out, err = list(tx, "SELECT coalesce(sql, name) FROM sqlite_schema ORDER BY type, name", nil,
			func(row scanner) (sql string, err error) {
				err = row.Scan(&sql)
				return sql, err
			})
		require.NoError(t, err)
	})
	return out
}

// onFile runs f on a connection of its own.
func onFile(t *testing.T, path string, f func(*connection)) {
	t.Helper()
	require.NoError(t, look(t.Context(), path, writing, func(c *connection) error { f(c); return nil }))
}

func TestMigrationsAreAllOrNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	f := closedFarm(t, path)
	now := migrations
	second := "CREATE TABLE shed (id INTEGER PRIMARY KEY) STRICT"
	onFile(t, path, func(c *connection) {
		err := migrate(t.Context(), c, path, append(slices.Clone(now), second, "CREATE TABLE herd (again INTEGER)"))
		require.ErrorContains(t, err, fmt.Sprintf("schema %d", len(now)+2))
		version, err := userVersion(t.Context(), c)
		require.NoError(t, err)
		require.Equal(t, len(now), version)
		_, err = c.conn.ExecContext(t.Context(), "SELECT * FROM shed")
		require.ErrorContains(t, err, "no such table")
	})
	onFile(t, path, func(c *connection) {
		require.NoError(t, migrate(t.Context(), c, path, append(slices.Clone(now), second)))
		version, err := userVersion(t.Context(), c)
		require.NoError(t, err)
		require.Equal(t, len(now)+1, version)
	})
	// The copy taken before is a whole database of the old schema.
	s := openStore(t, fmt.Sprintf("%s.schema-%d", path, len(now)), Options{})
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Len(t, all, 200)
	})
	require.NoFileExists(t, fmt.Sprintf("%s.schema-%d.part", path, len(now)))
}

func TestNoCopyWhereNothingChanges(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "herd.db")
	closedFarm(t, path)
	s, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	require.NoError(t, s.Close())
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	require.Equal(t, []string{"herd.db", "herd.db-lock"}, names)
}

func TestReaderOfAnOlderSchema(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	before := migrations
	migrations = append(slices.Clone(before), "CREATE TABLE shed (id INTEGER PRIMARY KEY) STRICT")
	defer func() { migrations = before }()
	_, err := OpenReader(context.Background(), path)
	requireProblem(t, err, Older, path)
}

func TestRecordsCannotBeChangedBySQL(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	db, err := sql.Open("sqlite", dsn(path, nil))
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	for _, q := range []string{
		"UPDATE record SET body = '{}' WHERE seq = 1", "DELETE FROM record WHERE seq = 1",
		"INSERT OR REPLACE INTO record SELECT * FROM record WHERE seq = 1",
	} {
		_, err := db.Exec(q)
		require.Error(t, err, q)
	}
}
