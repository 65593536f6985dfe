//go:build unix

package store

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// What is deleted or moved away under the program comes back by the next use,
// with all that was written before and all that is written after.
func TestFilesThatAreGone(t *testing.T) {
	for name, gone := range map[string][]string{
		"the file": {""}, "the log": {"-wal"}, "all of them": {"", "-wal", "-shm", "-lock"},
	} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "herd.db")
			told := 0
			s, err := Open(t.Context(), path, Options{PutBack: func() { told++ }})
			require.NoError(t, err)
			var f farm
			write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
			note := func(what string) {
				e := f.envelope(model.Note{What: what})
				write(t, s, func(tx *Tx) { require.NoError(t, tx.Append(&e)) })
			}
			notes := func(s *Store) (n int) {
				read(t, s, func(tx *Tx) {
					all, err := tx.Journal(f.herd)
					require.NoError(t, err)
					n = len(all)
				})
				return n
			}
			note("before")
			require.Equal(t, 1, notes(s))
			for _, side := range gone {
				require.NoError(t, os.Remove(path+side))
			}
			note("after")
			require.Equal(t, 1, told)
			require.Equal(t, 2, notes(s))

			for _, side := range gone {
				require.NoError(t, os.Remove(path+side))
			}
			require.Equal(t, 2, notes(s), "a look brings it back as well")
			require.Equal(t, 2, told)
			note("again")
			_, err = Open(t.Context(), path, Options{})
			requireProblem(t, err, Locked, path)
			require.NoError(t, s.Close())

			require.Equal(t, 3, notes(openStore(t, path, Options{})))
			left, err := filepath.Glob(path + ".kept-*")
			require.NoError(t, err)
			require.Empty(t, left)
		})
	}
}

// The folder is gone for a while: nothing is acknowledged, and nothing lost.
func TestFolderThatIsGone(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "data")
	require.NoError(t, os.Mkdir(dir, 0o700))
	path := filepath.Join(dir, "herd.db")
	s := openStore(t, path, Options{})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "1")) })
	require.NoError(t, os.RemoveAll(dir))
	err := s.Write(t.Context(), func(tx *Tx) error { return tx.SetValue("tick", "2") })
	var p *Problem
	require.ErrorAs(t, err, &p)
	require.NoError(t, os.Mkdir(dir, 0o700))
	read(t, s, func(tx *Tx) {
		v, err := tx.Value("tick")
		require.NoError(t, err)
		require.Equal(t, "1", v)
	})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "3")) })
}

// Another file in its place is somebody's wish: it stays as it is, and what was
// open is kept beside it.
func TestFileThatIsReplaced(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("tick", "ours")) })
	other := filepath.Join(t.TempDir(), "other.db")
	closedFarm(t, other)
	require.NoError(t, os.Rename(other, path))
	for range 2 {
		requireProblem(t, s.Write(t.Context(), func(*Tx) error { return nil }), Replaced, path)
		requireProblem(t, s.Read(t.Context(), func(*Tx) error { return nil }), Replaced, path)
	}
	require.NoError(t, s.Close())
	kept, err := filepath.Glob(path + ".kept-*")
	require.NoError(t, err)
	require.Len(t, kept, 1)
	read(t, openStore(t, kept[0], Options{}), func(tx *Tx) {
		v, err := tx.Value("tick")
		require.NoError(t, err)
		require.Equal(t, "ours", v)
	})
	read(t, openStore(t, path, Options{}), func(tx *Tx) {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		require.Len(t, all, 200)
	})
}
