package main

import (
	"debug/elf"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
)

// imageUser is the user of the container image.
const imageUser = 65532

// The bot serves, and says that it is well, as the container image has it: on a
// root that holds nothing but the program and that it cannot write, as nobody in
// particular, with the volume alone to write to.
func TestOnABareRoot(t *testing.T) {
	t.Parallel()
	if os.Getuid() != 0 {
		t.Skip("only root can change the root")
	}
	self, err := elf.Open(os.Args[0])
	require.NoError(t, err)
	defer self.Close()
	if self.Section(".interp") != nil {
		t.Skip("the test binary is not static")
	}
	root, err := os.MkdirTemp("", "root") // that everybody can enter
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, os.RemoveAll(root)) })
	require.NoError(t, os.Chmod(root, 0o555))
	copyProgram(t, filepath.Join(root, "troughbell"))
	require.NoError(t, os.Mkdir(filepath.Join(root, "data"), 0o755))
	require.NoError(t, os.Chown(filepath.Join(root, "data"), imageUser, imageUser))

	api := botapitest.New(testToken)
	defer api.Close()
	inside := func(args ...string) *exec.Cmd {
		return &exec.Cmd{
			Path: "/troughbell", Args: append([]string{"troughbell"}, args...), Dir: "/",
			Env: []string{
				runAsProgram + "=1", "TROUGHBELL_DB=/data/herd.db", "SQLITE_TMPDIR=/data",
				"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token, "TROUGHBELL_TELEGRAM_API=" + api.URL(),
			},
			SysProcAttr: &syscall.SysProcAttr{Chroot: root, Credential: &syscall.Credential{Uid: imageUser, Gid: imageUser}},
		}
	}
	p := startCommand(t, inside("serve"))
	pair(t, api, p)
	health := func() error { return inside("health").Run() }
	eventually(t, func() bool { return health() == nil }, p)
	eventually(t, func() bool {
		copies, err := filepath.Glob(filepath.Join(root, "data", "backups", "herd-*.db"))
		return err == nil && len(copies) == 1
	}, p)
	p.stop(t, syscall.SIGTERM)
	require.Error(t, health())
}

// copyProgram copies the test binary, which is the program.
func copyProgram(t *testing.T, to string) {
	t.Helper()
	from, err := os.Open(os.Args[0])
	require.NoError(t, err)
	defer from.Close()
	f, err := os.OpenFile(to, os.O_CREATE|os.O_WRONLY, 0o755)
	require.NoError(t, err)
	_, err = io.Copy(f, from)
	require.NoError(t, err)
	require.NoError(t, f.Close())
}
