package store

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func noonOf(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 12, 0, 0, 0, time.UTC) }

// filesIn lists the files of a folder.
func filesIn(t *testing.T, folder string) (out []string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

// addNote adds a record to the first herd.
func addNote(t *testing.T, s *Store, what string) {
	t.Helper()
	write(t, s, func(tx *Tx) {
		e := farm{1, 1, 1}.envelope(model.Note{What: what})
		require.NoError(t, tx.Append(&e))
	})
}

// A copy a day is made while the database is open and grows, the day's later one
// in the place of the earlier, and other files of the folder are none of its
// business.
func TestCopiesOfDays(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "herd.db")
	closedFarm(t, path) // with 200 records
	s := openStore(t, path, Options{})
	c, err := CopiesOf(path, "")
	require.NoError(t, err)
	none, err := c.List()
	require.NoError(t, err)
	require.Empty(t, none, "there is no folder yet")
	require.NoError(t, os.MkdirAll(c.Folder(), 0o700))
	others := []string{"herd-2026-10-01.db.part-77", "herd-2026-13-01.db", "herd.db", "herd2-2026-10-01.db", "notes.txt", "sow-2026-10-01.db"}
	for _, name := range others {
		require.NoError(t, os.WriteFile(filepath.Join(c.Folder(), name), []byte("x"), 0o600))
	}
	for d := range 20 {
		made, err := c.Make(t.Context(), s, noonOf(2026, 10, 1+d))
		require.NoError(t, err)
		require.NoError(t, c.Prune(made.On))
		require.Equal(t, 200+d, recordsIn(t, made.Path))
		addNote(t, s, "it rained")
	}
	made, err := c.Make(t.Context(), s, noonOf(2026, 10, 20))
	require.NoError(t, err)
	require.Equal(t, filepath.Join(dir, "backups", "herd-2026-10-20.db"), made.Path)
	require.Equal(t, 220, recordsIn(t, made.Path), "the later one of the day")
	info, err := os.Stat(made.Path)
	require.NoError(t, err)
	require.Equal(t, os.FileMode(0o600), info.Mode().Perm())

	all, err := c.List()
	require.NoError(t, err)
	var days []string
	for _, k := range all {
		days = append(days, k.On.String())
		want := 199 + k.On.At(0, time.UTC).Day() // a record was added behind each day's first copy
		if k.On == made.On {
			want++
		}
		require.Equal(t, want, recordsIn(t, k.Path))
	}
	require.Equal(t, []string{
		"2026-10-04", "2026-10-11", // Sundays
		"2026-10-14", "2026-10-15", "2026-10-16", "2026-10-17", "2026-10-18", "2026-10-19", "2026-10-20",
	}, days)
	left := filesIn(t, c.Folder())
	for _, name := range others[1:] {
		require.Contains(t, left, name)
	}
	require.NotContains(t, left, others[0], "what a copy that was cut off left is cleared away")
	require.Len(t, left, len(days)+len(others)-1)
}

// A copy that cannot be made, or is not sound, takes the place of nothing and
// lets none go.
func TestAFailedCopyReplacesNothing(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "herd.db")
	closedFarm(t, path)
	c, err := CopiesOf(path, filepath.Join(dir, "kept", "here"))
	require.NoError(t, err)
	s := openStore(t, path, Options{})
	for d := range 12 {
		_, err := c.Make(t.Context(), s, noonOf(2026, 10, 1+d))
		require.NoError(t, err)
	}
	before := filesIn(t, c.Folder())
	sound := filepath.Join(c.Folder(), "herd-2026-10-12.db")
	require.NoError(t, s.Close())

	damage(t, path)
	// Not Open, which would notice.
	broken := &Store{path: path}
	for _, d := range []int{12, 13} {
		_, err = c.Make(t.Context(), broken, noonOf(2026, 10, d))
		requireProblem(t, err, Damaged, path)
	}
	require.Equal(t, before, filesIn(t, c.Folder()))
	require.Equal(t, 200, recordsIn(t, sound))
}

// damage spoils pages in the middle of the file.
func damage(t *testing.T, path string) {
	t.Helper()
	b, err := os.ReadFile(path)
	require.NoError(t, err)
	for i := 8192; i < len(b)-4096; i++ {
		b[i] ^= 0x5a
	}
	require.NoError(t, os.WriteFile(path, b, 0o600))
}

// All names the copies made before the schema was changed as well.
func TestAllCopies(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "herd.db")
	script(t, path, firstSchema)
	s := openStore(t, path, Options{}) // brought up from schema 1
	c, err := CopiesOf(path, "")
	require.NoError(t, err)
	_, err = c.Make(t.Context(), s, noonOf(2026, 10, 1))
	require.NoError(t, err)
	all, err := c.All()
	require.NoError(t, err)
	var got []string
	for _, k := range all {
		got = append(got, fmt.Sprint(k.Path[len(dir):], " of schema ", k.Schema))
	}
	require.Equal(t, []string{"/backups/herd-2026-10-01.db of schema 0", "/herd.db.schema-1 of schema 1"}, got)
	daily, err := c.List()
	require.NoError(t, err)
	require.Len(t, daily, 1)
	require.Contains(t, all, daily[0])
}

// A database without an ending has copies without one, which are not those of a
// database that has.
func TestNamesOfCopies(t *testing.T) {
	dir := t.TempDir()
	for name, want := range map[string]string{
		"herd.db": "herd-2026-10-01.db", "herd": "herd-2026-10-01", "my.herd.sqlite": "my.herd-2026-10-01.sqlite",
	} {
		c, err := CopiesOf(filepath.Join(dir, name), "")
		require.NoError(t, err)
		require.Equal(t, filepath.Join(dir, "backups", want), c.fileOf(model.DateDay(2026, 10, 1)))
	}
}
