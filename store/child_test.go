package store

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Some tests need a process of their own: to be killed, to have fewer rights or
// a small disk. They run this test binary again with a role.
const roleVariable, pathVariable = "STORE_TEST_ROLE", "STORE_TEST_PATH"

var roles = map[string]func(path string) error{
	"append until killed":  appendUntilKilled,
	"read":                 readOnce,
	"hold":                 holdUntilKilled,
	"erase, not committed": eraseAndHold,
	"erase":                eraseAndStay,
}

func TestMain(m *testing.M) {
	if role := os.Getenv(roleVariable); role != "" {
		f, ok := roles[role]
		if !ok {
			fmt.Println("no such role:", role)
			os.Exit(2)
		}
		if err := f(os.Getenv(pathVariable)); err != nil {
			fmt.Println("failed:", err)
			os.Exit(1)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// child prepares a process in a role on the file at path.
func child(t *testing.T, role, path string) *exec.Cmd {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	cmd := exec.CommandContext(t.Context(), self)
	cmd.Env = append(os.Environ(), roleVariable+"="+role, pathVariable+"="+path)
	return cmd
}

func appendUntilKilled(path string) error {
	s, err := Open(context.Background(), path, Options{})
	if err != nil {
		return err
	}
	f := farm{1, 1, 1}
	for {
		e := f.envelope(model.Note{What: "it rained"})
		err := s.Write(context.Background(), func(tx *Tx) error {
			if err := tx.Append(&e); err != nil {
				return err
			}
			_, err := tx.Queue(&Outgoing{Key: "reply " + e.ID, Herd: f.herd, Chat: f.chat, Kind: "reply", Text: "Noted."})
			return err
		})
		if err != nil {
			return err
		}
		fmt.Println(e.Seq)
	}
}

func readOnce(path string) error {
	s, err := OpenReader(context.Background(), path)
	if err != nil {
		return err
	}
	err = s.Read(context.Background(), func(tx *Tx) error {
		all, err := tx.Journal(1)
		if err == nil {
			fmt.Println(len(all), "records")
		}
		return err
	})
	if err != nil {
		return err
	}
	return s.Close()
}

// holdUntilKilled keeps the file open, with something in its log.
func holdUntilKilled(path string) error {
	s, err := Open(context.Background(), path, Options{})
	if err != nil {
		return err
	}
	err = s.Write(context.Background(), func(tx *Tx) error {
		e := farm{1, 1, 1}.envelope(model.Note{What: "only in the log"})
		return tx.Append(&e)
	})
	if err != nil {
		return err
	}
	fmt.Println("held")
	select {}
}

// firstLine starts the process and waits for it to say something.
func firstLine(t *testing.T, cmd *exec.Cmd) string {
	t.Helper()
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	return line
}

// eraseAndHold erases a herd in a transaction that never ends.
func eraseAndHold(path string) error {
	s, err := Open(context.Background(), path, Options{})
	if err != nil {
		return err
	}
	return s.Write(context.Background(), func(tx *Tx) error {
		if err := tx.EraseHerd(1); err != nil {
			return err
		}
		fmt.Println("erased")
		select {}
	})
}

// eraseAndStay erases a herd and goes on.
func eraseAndStay(path string) error {
	s, err := Open(context.Background(), path, Options{})
	if err != nil {
		return err
	}
	if err := s.Write(context.Background(), func(tx *Tx) error { return tx.EraseHerd(1) }); err != nil {
		return err
	}
	fmt.Println("erased")
	select {}
}
