package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// A backup put back is the herd as it was.
func TestBackupAndRestore(t *testing.T) {
	db, dir := kept(t, orchardJuly), t.TempDir()
	copied, elsewhere := filepath.Join(dir, "copy.db"), filepath.Join(dir, "new.db")
	status, _, stderr := call(t, "", "backup", "--db", db, "--out", copied)
	require.Equal(t, exitDone, status, stderr)
	status, _, stderr = call(t, "", "restore", copied, "--db", elsewhere)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, records(t, db), records(t, elsewhere))

	status, _, stderr = replayed0(t, "2026-07-05 09:00 | fence 5\n", db)
	require.Equal(t, exitDone, status, stderr)
	changed := records(t, db)
	status, _, stderr = call(t, "", "restore", copied, "--db", db)
	require.Equal(t, exitFailed, status, "not over one that is there")
	oneLine(t, stderr)
	require.Contains(t, stderr, "--force")
	require.Equal(t, changed, records(t, db))
	status, _, stderr = call(t, "", "restore", "--force", "--db", db, copied)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, records(t, elsewhere), records(t, db))

	// What goes on from it goes on as from the original.
	status, _, stderr = replayed0(t, "2026-07-05 09:00 | fence 5\n", elsewhere)
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, changed, records(t, elsewhere))
}

func replayed0(t *testing.T, log, db string) (int, string, string) {
	t.Helper()
	return call(t, log, "replay", "--db", db)
}

// Without --db it is the file in the data folder, which need not be there yet.
func TestRestoreToTheDataFolder(t *testing.T) {
	dir, db := t.TempDir(), kept(t, orchard)
	t.Setenv("XDG_DATA_HOME", filepath.Join(dir, "data"))
	t.Setenv("TROUGHBELL_DB", "")
	status, _, stderr := call(t, "", "backup", "--db", db, "--out", filepath.Join(dir, "copy.db"))
	require.Equal(t, exitDone, status, stderr)
	status, _, stderr = call(t, "", "restore", filepath.Join(dir, "copy.db"))
	require.Equal(t, exitDone, status, stderr)
	require.Equal(t, records(t, db), records(t, filepath.Join(dir, "data", "troughbell", "herd.db")))
}

// What is no sound backup is refused, and the database stays.
func TestRestoreOfNothingSound(t *testing.T) {
	db, dir := kept(t, orchardJuly), t.TempDir()
	want := records(t, db)
	whole, err := os.ReadFile(db)
	require.NoError(t, err)
	damaged := append([]byte(nil), whole...)
	for i := 8192; i < len(damaged)-4096; i++ {
		damaged[i] ^= 0x5a
	}
	for name, content := range map[string]string{
		"damaged.db": string(damaged), "short.db": string(whole[:len(whole)/2]), "empty.db": "", "text.db": "not a database at all",
	} {
		path := filepath.Join(dir, name)
		write(t, path, content)
		status, _, stderr := call(t, "", "restore", path, "--db", db, "--force")
		require.Equal(t, exitFailed, status, name)
		oneLine(t, stderr)
	}
	status, _, stderr := call(t, "", "restore", filepath.Join(dir, "none.db"), "--db", db, "--force")
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	require.Equal(t, want, records(t, db))
}

// A copy goes over nothing, and a database that is not there has none.
func TestBackupOverNothing(t *testing.T) {
	db, dir := kept(t, orchard), t.TempDir()
	out := filepath.Join(dir, "copy.db")
	write(t, out, "mine")
	for _, args := range [][]string{
		{"--db", db, "--out", out},
		{"--db", db, "--out", filepath.Join(dir, "none", "copy.db")},
		{"--db", filepath.Join(dir, "none.db"), "--out", filepath.Join(dir, "other.db")},
	} {
		status, _, stderr := call(t, "", append([]string{"backup"}, args...)...)
		require.Equal(t, exitFailed, status, args)
		oneLine(t, stderr)
	}
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, left, 1)
}
