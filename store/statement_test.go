package store

import (
	"database/sql"
	"testing"

	"github.com/stretchr/testify/require"
)

// A column is kept where it fits, and refused where a part of it would be lost.
func TestColumnsFitWhereTheyAreKept(t *testing.T) {
	s := newStore(t)
	var (
		text  string
		role  Role
		id    HerdID
		n     int
		small int8
		yes   bool
		bytes []byte
		maybe sql.NullInt64
	)
	read(t, s, func(tx *Tx) {
		ok, err := tx.one("SELECT ?, ?, ?, ?, ?, ?, ?, NULL", []any{"a", Owner, HerdID(7), 8, int8(9), true, []byte("b")},
			&text, &role, &id, &n, &small, &yes, &bytes, &maybe)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, []any{"a", Owner, HerdID(7), 8, int8(9), true, []byte("b")}, []any{text, role, id, n, small, yes, bytes})
		require.False(t, maybe.Valid)
		ok, err = tx.one("SELECT x'', NULL, 5", nil, &bytes, &maybe, &maybe)
		require.NoError(t, err)
		require.True(t, ok)
		require.Empty(t, bytes)
		require.Equal(t, int64(5), maybe.Int64)
		ok, err = tx.one("SELECT 1 WHERE false", nil, &n)
		require.NoError(t, err)
		require.False(t, ok)
		for query, to := range map[string]any{
			"SELECT NULL": &text, "SELECT 'a'": &n, "SELECT 1": &text, "SELECT 2": &yes, "SELECT 300": &small,
			"SELECT -1": &yes, "SELECT 1.5": &n, "SELECT 'b'": &bytes, "SELECT 3": n, "SELECT 1, 2": &n,
		} {
			_, err := tx.one(query, nil, to)
			require.Error(t, err, query)
		}
		_, err = tx.one("SELECT ?", []any{struct{}{}}, &n)
		require.ErrorContains(t, err, "argument 1")
	})
}

// A statement of several rows is run to its end, and can be run again at once.
func TestStatementsRunToTheirEnd(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		for range 2 {
			_, err := tx.exec("DELETE FROM value WHERE name GLOB 'row *'")
			require.NoError(t, err)
			name := ""
			ok, err := tx.one("INSERT INTO value (name, value) VALUES ('row 1', ''), ('row 2', ''), ('row 3', '') RETURNING name", nil, &name)
			require.NoError(t, err)
			require.True(t, ok)
			require.Equal(t, "row 1", name)
			names, err := list(tx, "SELECT name FROM value WHERE name GLOB ?", []any{"row *"}, func(row scanner) (n string, err error) {
				return n, row.Scan(&n)
			})
			require.NoError(t, err)
			require.Equal(t, []string{"row 1", "row 2", "row 3"}, names)
		}
	})
}
