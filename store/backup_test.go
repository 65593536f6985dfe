package store

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func recordsIn(t *testing.T, path string) int {
	t.Helper()
	s, err := OpenReader(t.Context(), path)
	require.NoError(t, err)
	defer func() { require.NoError(t, s.Close()) }()
	var n int
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		n = len(all)
	})
	return n
}

// requireNoParts checks that no unfinished copy was left behind.
func requireNoParts(t *testing.T, dir string) {
	t.Helper()
	left, err := filepath.Glob(filepath.Join(dir, "*.part*"))
	require.NoError(t, err)
	require.Empty(t, left)
}

func TestBackupAndRestore(t *testing.T) {
	dir := t.TempDir()
	path, copied := filepath.Join(dir, "herd.db"), filepath.Join(dir, "copy, of today.db")
	closedFarm(t, path)
	s, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	add := func() {
		write(t, s, func(tx *Tx) {
			e := farm{1, 1, 1}.envelope(model.Note{What: "x"})
			require.NoError(t, tx.Append(&e))
		})
	}
	add()
	require.NoError(t, s.Backup(t.Context(), copied))
	requireProblem(t, s.Backup(t.Context(), copied), Exists, copied)
	missing := filepath.Join(dir, "nowhere", "copy.db")
	requireProblem(t, s.Backup(t.Context(), missing), Missing, filepath.Dir(missing))
	add() // after the copy
	info, err := os.Stat(copied)
	require.NoError(t, err)
	require.Equal(t, os.FileMode(0o600), info.Mode().Perm())
	require.NoFileExists(t, copied+"-wal", "the copy is one file")
	require.Equal(t, 201, recordsIn(t, copied))

	requireProblem(t, Restore(t.Context(), copied, path, true), Locked, path)
	require.NoError(t, s.Close())
	requireProblem(t, Restore(t.Context(), copied, path, false), Exists, path)
	require.Equal(t, 202, recordsIn(t, path))
	require.NoError(t, Restore(t.Context(), copied, path, true))
	require.Equal(t, 201, recordsIn(t, path))
	fresh := filepath.Join(dir, "fresh.db")
	require.NoError(t, Restore(t.Context(), copied, fresh, false))
	require.Equal(t, 201, recordsIn(t, fresh))
	require.FileExists(t, copied, "the backup stays")
	requireNoParts(t, dir)

	s = openStore(t, path, Options{})
	add()
	require.Equal(t, 202, recordsIn(t, path))
}

func TestRestoreRefusesWhatIsNoBackup(t *testing.T) {
	rows := []struct {
		name string
		code ProblemCode
		make func(t *testing.T, path string)
	}{
		{"nothing", Missing, func(*testing.T, string) {}},
		{"a folder", NotDatabase, func(t *testing.T, path string) { require.NoError(t, os.Mkdir(path, 0o700)) }},
		{"an empty file", NotDatabase, func(t *testing.T, path string) { require.NoError(t, create(path)) }},
		{"a text", NotDatabase, func(t *testing.T, path string) {
			require.NoError(t, os.WriteFile(path, make([]byte, 5000), 0o600))
		}},
		{"another program's", Foreign, func(t *testing.T, path string) { script(t, path, "CREATE TABLE song (title TEXT)") }},
		{"a newer one", Newer, func(t *testing.T, path string) {
			closedFarm(t, path)
			script(t, path, "PRAGMA user_version = 999")
		}},
		{"a damaged one", Damaged, func(t *testing.T, path string) {
			closedFarm(t, path)
			spoil(t, path)
		}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			dir := t.TempDir()
			from, path := filepath.Join(dir, "backup.db"), filepath.Join(dir, "herd.db")
			r.make(t, from)
			closedFarm(t, path)
			before, err := os.ReadFile(path)
			require.NoError(t, err)
			requireProblem(t, Restore(t.Context(), from, path, true), r.code, from)
			after, err := os.ReadFile(path)
			require.NoError(t, err)
			require.Equal(t, before, after, "the database is as it was")
			requireNoParts(t, dir)
		})
	}
}

// A log left by a killed process must not be played into the restored file.
func TestRestoreOverADamagedFileWithALog(t *testing.T) {
	dir := t.TempDir()
	path, copied := filepath.Join(dir, "herd.db"), filepath.Join(dir, "copy.db")
	closedFarm(t, path)
	r, err := OpenReader(t.Context(), path)
	require.NoError(t, err)
	require.NoError(t, r.Backup(t.Context(), copied))
	require.NoError(t, r.Close())
	cmd := child(t, "hold", path)
	require.Equal(t, "held\n", firstLine(t, cmd))
	require.NoError(t, cmd.Process.Kill())
	require.Error(t, cmd.Wait())
	require.True(t, inUse(path))
	spoil(t, path)
	require.NoError(t, os.WriteFile(path, []byte("not even a database any more"), 0o600))

	require.NoError(t, Restore(t.Context(), copied, path, true))
	require.NoFileExists(t, path+"-wal")
	require.Equal(t, 200, recordsIn(t, path))
	require.NoError(t, inspect(t.Context(), path, copying, "PRAGMA integrity_check"))
}

func TestBackupOfADamagedFileFails(t *testing.T) {
	dir := t.TempDir()
	path, copied := filepath.Join(dir, "herd.db"), filepath.Join(dir, "copy.db")
	closedFarm(t, path)
	s, err := OpenReader(t.Context(), path)
	require.NoError(t, err)
	spoil(t, path)
	requireProblem(t, s.Backup(t.Context(), copied), Damaged, path)
	require.NoFileExists(t, copied)
	requireNoParts(t, dir)
	require.NoError(t, s.Close())
}
