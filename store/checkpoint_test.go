package store

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// fillLog writes so many pages to the log, some at a time, over the same rows.
func fillLog(t *testing.T, s *Store, pages int) {
	t.Helper()
	const atOnce = 500
	for n := 0; n < pages; n += atOnce {
		require.NoError(t, s.Write(t.Context(), func(tx *Tx) error { return tx.SetValue("fill", long(n, atOnce)) }))
	}
}

// long is a text that takes so many pages.
func long(n, pages int) string { return strings.Repeat(fmt.Sprintf("%06d ", n), pages*4096/7) }

func sizeOf(t *testing.T, path string) int64 {
	t.Helper()
	info, err := os.Stat(path)
	require.NoError(t, err)
	return info.Size()
}

// A commit folds nothing into the file, however much is in the log, up to the bound.
func TestCommitFoldsNothing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	s.stopFolding()
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "quillwort")) })
	before := sizeOf(t, path)
	fillLog(t, s, restartAt)
	require.Equal(t, before, sizeOf(t, path))
	require.Equal(t, []string{"herd.db-wal"}, found(t, path, "quillwort"))
}

// The log is folded beside the writer, and begun anew where it is long.
func TestLongLogIsBegunAnew(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	s.stopFolding()
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "quillwort")) })
	fillLog(t, s, foldAt)
	require.NoError(t, s.checkpoint(t.Context()))
	require.Contains(t, found(t, path, "quillwort"), "herd.db")
	fillLog(t, s, foldAt)
	require.GreaterOrEqual(t, s.folding.came.Load()+s.folding.holds.Load(), int64(2*foldAt), "it is not begun anew while it is short")
	fillLog(t, s, restartAt)
	require.NoError(t, s.checkpoint(t.Context()))
	fillLog(t, s, 1)
	_, err := s.folding.fold()
	require.NoError(t, err)
	require.Less(t, s.folding.holds.Load(), int64(foldAt))
}

// While somebody reads, the log is folded and not begun anew; what the reader sees
// stays as it is.
func TestLogWaitsForReaders(t *testing.T) {
	s := openStore(t, filepath.Join(t.TempDir(), "herd.db"), Options{})
	s.stopFolding()
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "quillwort")) })
	read(t, s, func(tx *Tx) {
		v, err := tx.Value("mark")
		require.NoError(t, err)
		write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "yarrow")) })
		fillLog(t, s, restartAt)
		ctx, stop := context.WithCancel(t.Context())
		stop()
		require.ErrorIs(t, s.checkpoint(ctx), context.Canceled, "it looks for a moment without readers until it is stopped")
		again, err := tx.Value("mark")
		require.NoError(t, err)
		require.Equal(t, []string{"quillwort", "quillwort"}, []string{v, again})
	})
	all, err := s.foldAll(t.Context())
	require.NoError(t, err)
	require.True(t, all)
}

// Where nothing folds beside it, the writer itself keeps the log within its bound.
func TestLogIsBounded(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	s.stopFolding()
	fillLog(t, s, mostInLog+4*foldAt)
	require.Less(t, sizeOf(t, path+"-wal"), int64(mostInLog+2*foldAt)*4120)
	fillLog(t, s, foldAt)
	require.Less(t, s.folding.came.Load()+s.folding.holds.Load(), int64(mostInLog))
}

// An error of the folding is that of the next write, until it works again.
func TestFoldingThatFailsIsTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	closeFile, err := s.folding.close()
	require.NoError(t, err)
	require.NoError(t, closeFile())
	s.folding.db, err = pool(path, copying, 1) // which cannot write
	require.NoError(t, err)
	s.folding.c, err = connect(t.Context(), s.folding.db)
	require.NoError(t, err)

	kept := 0
	for err == nil {
		if err = s.Write(t.Context(), func(tx *Tx) error { return tx.SetValue("fill", long(kept, foldAt)) }); err == nil {
			kept++
		}
	}
	requireProblem(t, err, Unusable, path)
	require.Less(t, kept, mostInLog/foldAt+2)
	require.Error(t, s.Write(t.Context(), func(*Tx) error { panic("nothing is to be written") }))
	read(t, s, func(tx *Tx) {
		v, err := tx.Value("fill")
		require.NoError(t, err)
		require.Equal(t, long(kept-1, foldAt), v)
	})

	_, err = s.folding.close()
	require.NoError(t, err)
	require.NoError(t, s.folding.open(t.Context(), path))
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "quillwort")) })
	require.Contains(t, found(t, path, strings.Repeat(fmt.Sprintf("%06d ", kept-1), 10)), "herd.db")
}

// A herd is erased from all files while others write and the log is folded.
func TestErasedHerdIsInNoFileWhileOthersWrite(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	var others sync.WaitGroup
	stop := make(chan struct{})
	failed := make(chan error, 2)
	for writer := range 2 {
		others.Go(func() {
			for n := 0; ; n++ {
				select {
				case <-stop:
					return
				default:
				}
				err := s.Write(context.Background(), func(tx *Tx) error {
					return tx.SetValue(fmt.Sprint("fill ", writer, n%3), long(n, 200))
				})
				if err != nil {
					failed <- err
					return
				}
			}
		})
	}
	for round := range 3 {
		var h household
		mark := fmt.Sprint("quillwort", round)
		write(t, s, func(tx *Tx) {
			var err error
			h, err = settle(tx, mark, 60)
			require.NoError(t, err)
		})
		fillLog(t, s, 2*foldAt) // it is in the file too by then
		write(t, s, func(tx *Tx) { require.NoError(t, tx.EraseHerd(h.herd)) })
		require.Empty(t, found(t, path, mark))
	}
	close(stop)
	others.Wait()
	close(failed)
	require.NoError(t, <-failed)
	read(t, s, func(tx *Tx) {
		v, err := tx.Value(valueScrub)
		require.NoError(t, err)
		require.Empty(t, v)
	})
}

// The store is closed while its log is folded; nothing is lost by it.
func TestCloseWhileFolding(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	fillLog(t, s, restartAt+foldAt)
	write(t, s, func(tx *Tx) { require.NoError(t, tx.SetValue("mark", "quillwort")) })
	require.NoError(t, s.Close())
	require.NoFileExists(t, path+"-wal")
	read(t, openStore(t, path, Options{}), func(tx *Tx) {
		v, err := tx.Value("mark")
		require.NoError(t, err)
		require.Equal(t, "quillwort", v)
	})
}
