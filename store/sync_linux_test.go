//go:build amd64 || arm64

package store

import (
	"context"
	"fmt"
	"path/filepath"
	"runtime"
	"testing"
	"unsafe"

	"github.com/stretchr/testify/require"
	"golang.org/x/sys/unix"
)

func init() { roles["with a disk that syncs nothing"] = writeUnsynced }

// TestKeptMeansSynced takes from a process the calls that bring a file to the
// disk: then nothing is acknowledged any more. So whatever is acknowledged was
// on the disk before, and outlives a power cut.
func TestKeptMeansSynced(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	closedFarm(t, path)
	out, err := child(t, "with a disk that syncs nothing", path).Output()
	require.NoError(t, err, "%s", out)
	require.Equal(t, "kept\n"+path+" cannot be read or written; check the disk, and the permissions of the file and its folder.\n", string(out))
	// It was written and not synced, which is not to count: it may be there or not.
	read(t, openStore(t, path, Options{}), func(tx *Tx) {
		v, err := tx.Value("tick")
		require.NoError(t, err)
		require.Contains(t, []string{"synced", "not synced"}, v)
	})
}

func writeUnsynced(path string) error {
	ctx := context.Background()
	s, err := Open(ctx, path, Options{})
	if err != nil {
		return err
	}
	if err := s.Write(ctx, func(tx *Tx) error { return tx.SetValue("tick", "synced") }); err != nil {
		return err
	}
	fmt.Println("kept")
	if err := refuseSyncs(); err != nil {
		return err
	}
	err = s.Write(ctx, func(tx *Tx) error { return tx.SetValue("tick", "not synced") })
	fmt.Println(err)
	return nil
}

// refuseSyncs makes every call of fsync and its kin fail, in all threads of the
// process, as on a disk that fails.
func refuseSyncs() error {
	const (
		load   = unix.BPF_LD | unix.BPF_W | unix.BPF_ABS // the number of the call, at 0
		equals = unix.BPF_JMP | unix.BPF_JEQ | unix.BPF_K
		answer = unix.BPF_RET | unix.BPF_K
	)
	filter := []unix.SockFilter{
		{Code: load, K: 0},
		{Code: equals, K: unix.SYS_FSYNC, Jt: 3},
		{Code: equals, K: unix.SYS_FDATASYNC, Jt: 2},
		{Code: equals, K: unix.SYS_SYNC_FILE_RANGE, Jt: 1},
		{Code: answer, K: unix.SECCOMP_RET_ALLOW},
		{Code: answer, K: unix.SECCOMP_RET_ERRNO | uint32(unix.EIO)},
	}
	runtime.LockOSThread() // both calls are about one thread; the second then takes in all
	defer runtime.UnlockOSThread()
	if err := unix.Prctl(unix.PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0); err != nil {
		return err
	}
	program := unix.SockFprog{Len: uint16(len(filter)), Filter: &filter[0]}
	_, _, errno := unix.Syscall(unix.SYS_SECCOMP, unix.SECCOMP_SET_MODE_FILTER, unix.SECCOMP_FILTER_FLAG_TSYNC, uintptr(unsafe.Pointer(&program)))
	if errno != 0 {
		return errno
	}
	return nil
}
