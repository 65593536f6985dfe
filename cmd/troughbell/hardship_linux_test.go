package main

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// nobody is a user without rights: no permission binds root.
const nobody = 65534

// runAsNobody, set in the environment, makes the program give up the rights of
// root before anything else.
const runAsNobody = "TROUGHBELL_TEST_NOBODY"

func init() {
	if os.Getenv(runAsNobody) == "" || os.Getuid() != 0 {
		return
	}
	if err := errors.Join(syscall.Setgid(nobody), syscall.Setuid(nobody)); err != nil {
		panic(err)
	}
}

// TestNoRoom has the texts that found no room told one by one, and the chat fail
// at its end.
func TestNoRoom(t *testing.T) {
	db := kept(t, orchard)
	info, err := os.Stat(db)
	require.NoError(t, err)
	// The limit on a file's size, in blocks of 512 bytes, stands for a full disk.
	cmd := exec.Command("sh", "-c", `ulimit -f $1; exec "$2" chat --db "$3"`, "sh",
		strconv.FormatInt(info.Size()/512+40, 10), os.Args[0], db)
	cmd.Env = append(os.Environ(), runAsProgram+"=1")
	cmd.Stdin = strings.NewReader(strings.Repeat("fence 5.2\n", 150))
	var out, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &stderr
	require.Error(t, cmd.Run())
	require.Equal(t, exitFailed, cmd.ProcessState.ExitCode())
	require.Contains(t, out.String(), "Not recorded: ")
	oneLine(t, stderr.String())
	require.Contains(t, stderr.String(), "could not be kept")
	require.Equal(t, strings.Count(out.String(), "Fence 5.2 kV."), fences(t, db)["fence 5.2"], "what was acknowledged is kept")
}

// TestNoRights opens a file that can only be read.
func TestNoRights(t *testing.T) {
	dir, err := os.MkdirTemp("", "herd") // that everybody can enter
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, os.RemoveAll(dir)) })
	db := filepath.Join(dir, "herd.db")
	whole, err := os.ReadFile(kept(t, orchard))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(db, whole, 0o444))
	require.NoError(t, os.Chmod(db, 0o444))
	require.NoError(t, os.Chmod(dir, 0o555))
	as := func(args ...string) (int, string) {
		cmd := exec.Command(os.Args[0], args...)
		cmd.Env = append(os.Environ(), runAsProgram+"=1", runAsNobody+"=1")
		cmd.Stdin = strings.NewReader("fence 5.2\n")
		var stderr bytes.Buffer
		cmd.Stderr = &stderr
		_ = cmd.Run() // the status says all
		return cmd.ProcessState.ExitCode(), stderr.String()
	}
	for _, args := range [][]string{{"chat"}, {"replay"}} {
		status, stderr := as(append(args, "--db", db)...)
		require.Equal(t, exitFailed, status, stderr)
		oneLine(t, stderr)
		require.Contains(t, stderr, "check the permissions")
	}
	status, stderr := as("parse", "--json", "--db", db)
	require.Equal(t, exitDone, status, "reading needs no right to write: %s", stderr)
}
