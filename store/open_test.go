package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// requireProblem checks that err is the problem of the code, told in one
// sentence that names the path and nothing of the machinery.
func requireProblem(t *testing.T, err error, code ProblemCode, path string) {
	t.Helper()
	var p *Problem
	require.ErrorAs(t, err, &p)
	require.Equal(t, code, p.Code, "%v, because of %v", p, p.Err)
	require.Contains(t, p.Error(), path)
	require.NotContains(t, err.Error(), "\n")
	require.NotRegexp(t, `SQL|PRAGMA|goroutine|\([0-9]+\)$`, p.Error())
}

func TestOpenSaysWhatIsWrong(t *testing.T) {
	rows := []struct {
		name string
		code ProblemCode
		make func(t *testing.T, path string) string // gives the path to open
	}{
		{"no folder", Missing, func(t *testing.T, path string) string {
			return filepath.Join(filepath.Dir(path), "nowhere", "herd.db")
		}},
		{"a folder", NotDatabase, func(t *testing.T, path string) string {
			require.NoError(t, os.Mkdir(path, 0o700))
			return path
		}},
		{"a text file", NotDatabase, func(t *testing.T, path string) string {
			require.NoError(t, os.WriteFile(path, []byte("Dot weighed 180 lb today, and the barrel is full again, so nothing else is due.\n"), 0o600))
			return path
		}},
		{"another program's database", Foreign, func(t *testing.T, path string) string {
			script(t, path, "CREATE TABLE song (title TEXT)")
			return path
		}},
		{"a newer schema", Newer, func(t *testing.T, path string) string {
			closedFarm(t, path)
			script(t, path, fmt.Sprintf("PRAGMA user_version = %d", len(migrations)+1))
			return path
		}},
		{"a damaged page", Damaged, func(t *testing.T, path string) string {
			closedFarm(t, path)
			spoil(t, path)
			return path
		}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			path := r.make(t, filepath.Join(t.TempDir(), "herd.db"))
			before, errBefore := os.ReadFile(path)
			_, err := Open(t.Context(), path, Options{})
			want := path
			if r.code == Missing {
				want = filepath.Dir(path)
			}
			requireProblem(t, err, r.code, want)
			after, errAfter := os.ReadFile(path)
			require.Equal(t, errBefore == nil, errAfter == nil)
			require.Equal(t, before, after, "what is not ours or not whole stays untouched")
		})
	}
}

func TestOpenReaderSaysWhatIsWrong(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	_, err := OpenReader(t.Context(), path)
	requireProblem(t, err, Missing, path)
	require.NoFileExists(t, path, "a reader makes nothing")
	require.NoFileExists(t, path+"-lock")

	require.NoError(t, create(path))
	_, err = OpenReader(t.Context(), path)
	requireProblem(t, err, Missing, path)

	require.NoError(t, os.WriteFile(path, []byte("not a database at all, but long enough to look like something; and some more words until a hundred bytes are full"), 0o600))
	_, err = OpenReader(t.Context(), path)
	requireProblem(t, err, NotDatabase, path)

	require.NoError(t, os.Remove(path))
	closedFarm(t, path)
	script(t, path, "PRAGMA user_version = 999")
	_, err = OpenReader(t.Context(), path)
	requireProblem(t, err, Newer, path)
}

func TestOneWriterAtATime(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	first, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	_, err = Open(t.Context(), path, Options{})
	requireProblem(t, err, Locked, path)
	require.Contains(t, err.Error(), fmt.Sprintf("process %d", os.Getpid()))
	require.NoError(t, first.Close())
	require.NoError(t, first.Close(), "closing again does nothing")

	second := openStore(t, path, Options{})
	write(t, second, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "1")) })
	err = first.Write(t.Context(), func(*Tx) error { return nil })
	require.ErrorIs(t, err, errClosed)
	err = first.Read(t.Context(), func(*Tx) error { return nil })
	require.ErrorIs(t, err, errClosed)
}

func TestOtherProgramHoldingTheFileIsWaitedForAndThenTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	other, err := sql.Open("sqlite", dsn(path, []string{"mode=rw"}))
	require.NoError(t, err)
	defer func() { require.NoError(t, other.Close()) }()
	other.SetMaxOpenConns(1)
	_, err = other.Exec("BEGIN IMMEDIATE")
	require.NoError(t, err)
	shorten(t, s)
	err = s.Write(t.Context(), func(*Tx) error { return errors.New("must not come to this") })
	requireProblem(t, err, Busy, path)
	_, err = other.Exec("ROLLBACK")
	require.NoError(t, err)
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "1")) })
}

// shorten makes the writing connection wait no time for a lock.
func shorten(t *testing.T, s *Store) {
	t.Helper()
	c := <-s.writer
	_, err := c.conn.ExecContext(t.Context(), "PRAGMA busy_timeout = 0")
	s.writer <- c
	require.NoError(t, err)
}

func TestSettingsOfConnections(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a folder, 50% full?", "herd #1.db")
	require.NoError(t, os.Mkdir(filepath.Dir(path), 0o700))
	s := openStore(t, path, Options{})
	settings := func(tx *Tx) map[string]string {
		out := map[string]string{}
		for _, name := range []string{"journal_mode", "synchronous", "foreign_keys", "busy_timeout", "query_only"} {
			var v string
			require.NoError(t, tx.c.conn.QueryRowContext(t.Context(), "PRAGMA "+name).Scan(&v))
			out[name] = v
		}
		return out
	}
	write(t, s, func(tx *Tx) {
		require.Equal(t, map[string]string{
			"journal_mode": "wal", "synchronous": "2", "foreign_keys": "1", "busy_timeout": "5000", "query_only": "0",
		}, settings(tx))
		_, err := tx.exec(`SELECT "no such column"`)
		require.ErrorContains(t, err, "no such column", "a double-quoted slip is an error, not a string")
	})
	read(t, s, func(tx *Tx) { require.Equal(t, "1", settings(tx)["query_only"]) })
	info, err := os.Stat(path)
	require.NoError(t, err)
	require.Equal(t, os.FileMode(0o600), info.Mode().Perm(), "a herd is its keeper's own")
}

func TestEndedContext(t *testing.T) {
	s := newStore(t)
	for range 200 {
		ctx, cancel := context.WithCancel(t.Context())
		go cancel()
		if err := s.Write(ctx, func(tx *Tx) error { return tx.SetValue("tick", "1") }); err != nil {
			require.ErrorIs(t, err, context.Canceled)
		}
		if err := s.Read(ctx, func(tx *Tx) error { _, err := tx.Value("tick"); return err }); err != nil {
			require.ErrorIs(t, err, context.Canceled)
		}
	}
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "2")) })
}

// closedFarm puts a file at path that holds a herd with 200 records and is not
// open. It is made once and then copied, since many tests want one.
func closedFarm(t testing.TB, path string) farm {
	t.Helper()
	b, err := farmFile()
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, b, 0o600))
	return farm{1, 1, 1}
}

var farmFile = sync.OnceValues(func() (_ []byte, err error) {
	dir, err := os.MkdirTemp("", "farm")
	if err != nil {
		return nil, err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(dir)) }()
	path := filepath.Join(dir, "herd.db")
	s, err := Open(context.Background(), path, Options{})
	if err != nil {
		return nil, err
	}
	err = s.Write(context.Background(), func(tx *Tx) error {
		f, err := makeFarm(tx)
		if err != nil {
			return err
		}
		for _, e := range f.season(200) {
			if err := tx.Append(&e); err != nil {
				return err
			}
		}
		return nil
	})
	if err := errors.Join(err, s.Close()); err != nil {
		return nil, err
	}
	return os.ReadFile(path)
})

// script runs SQL on a file that is not open.
func script(t testing.TB, path, statements string) {
	t.Helper()
	db, err := sql.Open("sqlite", dsn(path, nil))
	require.NoError(t, err)
	_, err = db.Exec(statements)
	require.NoError(t, err)
	require.NoError(t, db.Close())
}

// spoil overwrites the inside of a page of a file that is not open.
func spoil(t testing.TB, path string) {
	t.Helper()
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	require.NoError(t, err)
	info, err := f.Stat()
	require.NoError(t, err)
	const page = 4096
	for at := int64(5 * page); at < info.Size(); at += 3 * page {
		_, err = f.WriteAt([]byte("a mouse was here a mouse was here"), at)
		require.NoError(t, err)
	}
	require.NoError(t, f.Close())
}
