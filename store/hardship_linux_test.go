package store

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func init() {
	roles["as nobody: read"] = asNobody(readOnce)
	roles["as nobody: write"] = asNobody(func(path string) error {
		s, err := Open(context.Background(), path, Options{})
		if err != nil {
			return err
		}
		return s.Close()
	})
	roles["on a small disk"] = fillSmallDisk
	roles["with a small file limit"] = fillUpToLimit
}

const nobody = 65534

// asNobody gives up the rights of root first, to which no permission applies.
func asNobody(f func(string) error) func(string) error {
	return func(path string) error {
		if os.Getuid() == 0 {
			if err := syscall.Setgid(nobody); err != nil {
				return err
			}
			if err := syscall.Setuid(nobody); err != nil {
				return err
			}
		}
		return f(path)
	}
}

// openFolder is a folder that everybody can enter, unlike t.TempDir's parent on
// some machines.
func openFolder(t *testing.T) string {
	t.Helper()
	dir, err := os.MkdirTemp("", "herd")
	require.NoError(t, err)
	t.Cleanup(func() {
		require.NoError(t, os.Chmod(dir, 0o700))
		require.NoError(t, os.RemoveAll(dir))
	})
	require.NoError(t, os.Chmod(dir, 0o777))
	return dir
}

func TestPermissions(t *testing.T) {
	const (
		readable, writable = os.FileMode(0o444), os.FileMode(0o666)
		closed, open       = os.FileMode(0o555), os.FileMode(0o777)
	)
	rows := []struct {
		name         string
		role         string
		file, folder os.FileMode
		says         string
	}{
		{"reading where nothing can be written", "as nobody: read", readable, closed, "200 records"},
		{"reading a file that can only be read", "as nobody: read", readable, open, "200 records"},
		{"reading a file that cannot be", "as nobody: read", 0, open, "herd.db cannot be read or written; check the disk, and the permissions"},
		{"writing a file that can only be read", "as nobody: write", readable, open, "herd.db cannot be written; check the permissions"},
		{"writing where nothing can be made", "as nobody: write", writable, closed, "herd.db cannot be written; check the permissions"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			dir := openFolder(t)
			path := filepath.Join(dir, "herd.db")
			closedFarm(t, path)
			require.NoError(t, os.Chmod(path, r.file))
			require.NoError(t, os.Chmod(dir, r.folder))
			out, err := child(t, r.role, path).Output()
			require.Contains(t, string(out), r.says)
			require.Equal(t, strings.HasPrefix(string(out), "failed"), err != nil, "%v", err)
			require.Equal(t, 1, strings.Count(string(out), "\n"), "one line: %s", out)
		})
	}
}

// fill writes until the disk is full, and checks that what was answered stays.
func fill(path string) error {
	ctx := context.Background()
	s, err := Open(ctx, path, Options{})
	if err != nil {
		return err
	}
	var f farm
	if err := s.Write(ctx, func(tx *Tx) (err error) {
		f.herd, err = tx.CreateHerd("herd", "UTC", noon)
		return err
	}); err != nil {
		return err
	}
	var kept int64
	for {
		e := f.envelope(model.Note{What: strings.Repeat("it rained ", 100)})
		if err = s.Write(ctx, func(tx *Tx) error { return tx.Append(&e) }); err != nil {
			break
		}
		kept = e.Seq
	}
	fmt.Println(err)
	if err := s.Read(ctx, func(tx *Tx) error {
		all, err := tx.Journal(f.herd)
		fmt.Println(kept > 0 && int64(len(all)) == kept)
		return err
	}); err != nil {
		return err
	}
	// Room for one more small thing is not to be counted on; a clean end is.
	if err := s.Close(); err != nil {
		fmt.Println(err)
	}
	return nil
}

func fillSmallDisk(dir string) error {
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=600k"); err != nil {
		fmt.Println("no mount:", err)
		return nil
	}
	return fill(filepath.Join(dir, "herd.db"))
}

func fillUpToLimit(dir string) error {
	limit := syscall.Rlimit{Cur: 400 << 10, Max: 400 << 10}
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &limit); err != nil {
		return err
	}
	return fill(filepath.Join(dir, "herd.db"))
}

func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	cmd := child(t, "on a small disk", dir)
	cmd.SysProcAttr = &syscall.SysProcAttr{
		Cloneflags:  syscall.CLONE_NEWUSER | syscall.CLONE_NEWNS,
		UidMappings: []syscall.SysProcIDMap{{ContainerID: 0, HostID: os.Getuid(), Size: 1}},
		GidMappings: []syscall.SysProcIDMap{{ContainerID: 0, HostID: os.Getgid(), Size: 1}},
	}
	out, err := cmd.Output()
	if err != nil && len(out) == 0 || strings.HasPrefix(string(out), "no mount") {
		t.Skipf("this machine lets a test mount no disk of its own: %v %s", err, out)
	}
	lines := strings.Split(string(out), "\n")
	require.Equal(t, "There is no room left on the disk for "+filepath.Join(dir, "herd.db")+"; make room and try again.", lines[0])
	require.Equal(t, "true", lines[1], "what was answered is still there: %s", out)
}

func TestFileThatMayNotGrow(t *testing.T) {
	dir := t.TempDir()
	out, err := child(t, "with a small file limit", dir).Output()
	require.NoError(t, err, "%s", out)
	lines := strings.Split(string(out), "\n")
	require.Contains(t, lines[0], filepath.Join(dir, "herd.db")+" cannot be read or written; check the disk")
	require.Equal(t, "true", lines[1], "what was answered is still there: %s", out)
}
