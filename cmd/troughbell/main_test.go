package main

import (
	"bytes"
	"context"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// runAsProgram, set in the environment, makes the test binary the program: tests
// that kill a process start it this way.
const runAsProgram = "TROUGHBELL_TEST_RUN"

func TestMain(m *testing.M) {
	if os.Getenv(runAsProgram) != "" {
		main()
		return
	}
	os.Exit(m.Run())
}

// call runs one call of the program in this process.
func call(t *testing.T, stdin string, args ...string) (status int, stdout, stderr string) {
	t.Helper()
	var out, errs bytes.Buffer
	status = run(context.Background(), args, strings.NewReader(stdin), &out, &errs)
	return status, out.String(), errs.String()
}

func TestExitStatus(t *testing.T) {
	dir := t.TempDir()
	tests := []struct {
		name   string
		args   []string
		status int
		says   string // on standard error, in one line
	}{
		{"help", []string{"--help"}, exitDone, ""},
		{"help of a command", []string{"replay", "--help"}, exitDone, ""},
		{"no such command", []string{"fly"}, exitWrong, "fly"},
		{"no such flag", []string{"chat", "--fly"}, exitWrong, "fly"},
		{"export without a file", []string{"export"}, exitWrong, "--out"},
		{"parse of no file", []string{"parse", "--db", dir + "/none.db"}, exitFailed, "none.db"},
		{"replay of no file", []string{"replay", dir + "/none.log"}, exitFailed, "none.log"},
		{"no such zone", []string{"replay", "--zone", "Mars/Base"}, exitWrong, "Mars/Base"},
		{"no such moment", []string{"parse", "--db", dir + "/none.db", "--now", "noon"}, exitFailed, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			status, stdout, stderr := call(t, "", tt.args...)
			require.Equal(t, tt.status, status, stderr)
			if tt.status == exitDone {
				require.Empty(t, stderr)
				require.Contains(t, stdout, "xample", "help has an example")
				return
			}
			require.Contains(t, stderr, tt.says)
			require.Equal(t, 1, strings.Count(stderr, "\n"), "one line: %s", stderr)
			require.NotContains(t, stderr, "goroutine")
		})
	}
}
