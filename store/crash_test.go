package store

import (
	"bufio"
	"fmt"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// A process that is killed amid its writes has kept all that it answered, whole
// transactions only, and leaves no lock behind.
func TestKilledAmidWrites(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	write(t, s, func(tx *Tx) { newFarm(t, tx) })
	require.NoError(t, s.Close())

	for round, acknowledged := range []int{1, 17, 60} {
		cmd := child(t, "append until killed", path)
		out, err := cmd.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, cmd.Start())
		lines := bufio.NewScanner(out)
		var last int64
		for range acknowledged {
			require.True(t, lines.Scan())
			last, err = strconv.ParseInt(lines.Text(), 10, 64)
			require.NoError(t, err, lines.Text())
		}
		require.NoError(t, cmd.Process.Kill())
		for lines.Scan() { // what it still said before it died counts too
			if n, err := strconv.ParseInt(lines.Text(), 10, 64); err == nil {
				last = n
			}
		}
		require.Error(t, cmd.Wait())

		s, err := Open(t.Context(), path, Options{})
		require.NoError(t, err, "round %d", round)
		read(t, s, func(tx *Tx) {
			all, err := tx.Journal(1)
			require.NoError(t, err)
			require.GreaterOrEqual(t, int64(len(all)), last)
			for i, e := range all {
				require.Equal(t, int64(i+1), e.Seq)
				_, ok, err := tx.OutgoingByKey(fmt.Sprintf("reply r%d", e.Seq))
				require.NoError(t, err)
				require.True(t, ok, "a record and its reply come together")
			}
		})
		require.NoError(t, s.Close())
		require.NoError(t, inspect(t.Context(), path, copying, "PRAGMA integrity_check"))
	}
}

func TestLockOfAnotherProcess(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	cmd := child(t, "hold", path)
	require.Equal(t, "held\n", firstLine(t, cmd))
	_, err := Open(t.Context(), path, Options{})
	requireProblem(t, err, Locked, path)
	require.Contains(t, err.Error(), fmt.Sprintf("process %d", cmd.Process.Pid))
	requireProblem(t, Restore(t.Context(), path, path, true), Locked, path)

	// A reader is welcome, and sees what is in the log only.
	r, err := OpenReader(t.Context(), path)
	require.NoError(t, err)
	read(t, r, func(tx *Tx) {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		require.Len(t, all, 201)
	})
	err = r.Write(t.Context(), func(*Tx) error { return nil })
	requireProblem(t, err, ReadOnly, path)
	copied := filepath.Join(t.TempDir(), "copy.db")
	require.NoError(t, r.Backup(t.Context(), copied))
	require.NoError(t, r.Close())

	require.NoError(t, cmd.Process.Kill())
	require.Error(t, cmd.Wait())
	for _, p := range []string{path, copied} {
		s := openStore(t, p, Options{})
		read(t, s, func(tx *Tx) {
			all, err := tx.Journal(1)
			require.NoError(t, err)
			require.Len(t, all, 201)
		})
	}
}
