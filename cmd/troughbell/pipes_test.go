package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// piped is a running program held by its two pipes.
type piped struct {
	cmd    *exec.Cmd
	in     io.WriteCloser
	lines  chan string
	stderr bytes.Buffer
}

// startPiped starts the program with both pipes open.
func startPiped(t *testing.T, args ...string) *piped {
	t.Helper()
	p := &piped{lines: make(chan string, 64)}
	p.cmd = exec.Command(os.Args[0], args...)
	p.cmd.Env = append(os.Environ(), runAsProgram+"=1", "TZ=America/Chicago")
	p.cmd.Stderr = &p.stderr
	var err error
	p.in, err = p.cmd.StdinPipe()
	require.NoError(t, err)
	out, err := p.cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, p.cmd.Start())
	go func() {
		defer close(p.lines)
		s := bufio.NewScanner(out)
		s.Buffer(nil, 1<<20)
		for s.Scan() {
			p.lines <- s.Text()
		}
	}()
	t.Cleanup(func() { _ = p.cmd.Process.Kill(); _ = p.cmd.Wait() })
	return p
}

func (p *piped) send(t *testing.T, line string) {
	t.Helper()
	_, err := io.WriteString(p.in, line+"\n")
	require.NoError(t, err)
}

// next is the next line of the answer, which must come while nothing more is
// sent.
func (p *piped) next(t *testing.T) string {
	t.Helper()
	select {
	case l, ok := <-p.lines:
		require.True(t, ok, "the program has ended")
		return l
	case <-time.After(time.Minute):
		t.Fatal("no answer while the next line is waited with")
		return ""
	}
}

// end waits for the end and gives the exit status.
func (p *piped) end(t *testing.T) int {
	t.Helper()
	for range p.lines { // to the end
	}
	_ = p.cmd.Wait() // the status says all
	return p.cmd.ProcessState.ExitCode()
}

// TestConversationOverReplay holds a conversation: the answer up to ready is
// there before the next line is sent, and the next line depends on it.
func TestConversationOverReplay(t *testing.T) {
	p := startPiped(t, "replay", "--json")
	answer := func(line string) (all []said) {
		p.send(t, line)
		for {
			var e said
			require.NoError(t, json.Unmarshal([]byte(p.next(t)), &e))
			if all = append(all, e); e.Kind == "ready" {
				return all
			}
		}
	}
	require.Equal(t, []string{"text", "reply", "ready"}, kinds(answer("2026-05-16 08:10 | our herd is Pipe, US units, 4 pigs came today, 48 lb each")))
	require.Equal(t, []string{"error", "ready"}, kinds(answer("nonsense")))
	p.send(t, "# a comment, which nobody answers")
	p.send(t, "")
	require.Equal(t, []string{"ready"}, kinds(answer("2026-05-16 08:11 |")))
	asked := answer("2026-05-16 08:12 | how much do they weigh?")
	require.Equal(t, "2026-05-16T08:12:00-05:00", asked[0].At)
	require.NoError(t, p.in.Close())
	require.Equal(t, exitFailed, p.end(t), "one line was nonsense")
}

// TestConversationOverParse has each line answered by one, blank ones included,
// before the next is sent.
func TestConversationOverParse(t *testing.T) {
	p := startPiped(t, "parse", "--json", "--db", kept(t, orchard), "--now", "2026-04-18T09:00")
	for _, text := range []string{"fence 5.2", "", "how long till butcher?", "   "} {
		p.send(t, text)
		var e said
		require.NoError(t, json.Unmarshal([]byte(p.next(t)), &e))
		require.Len(t, e.Entries, 1)
	}
	require.NoError(t, p.in.Close())
	require.Zero(t, p.end(t))
}

// TestSignals stops each program that waits for input: chat ends cleanly, what
// was under way has failed.
func TestSignals(t *testing.T) {
	db := kept(t, orchard)
	tests := []struct {
		name string
		args []string
		send string // makes it answer once before the signal
		want int
	}{
		{"chat", []string{"chat", "--db", db}, "fence 5.2", exitDone},
		{"replay", []string{"replay", "--json"}, "2026-05-16 08:10 |", exitFailed},
		{"parse", []string{"parse", "--json", "--db", db}, "fence 5.2", exitFailed},
	}
	for _, tt := range tests {
		for _, sig := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM} {
			t.Run(tt.name+" "+sig.String(), func(t *testing.T) {
				p := startPiped(t, tt.args...)
				p.send(t, tt.send)
				p.next(t)
				require.NoError(t, p.cmd.Process.Signal(sig))
				require.Equal(t, tt.want, p.end(t), p.stderr.String())
				if tt.want != exitDone {
					oneLine(t, p.stderr.String())
				}
			})
		}
	}
}

// TestDemoStopped leaves nothing behind where its chat is stopped by a signal.
func TestDemoStopped(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	p := startPiped(t, "demo")
	p.send(t, "fence 3.37")
	for !strings.Contains(p.next(t), "Fence 3.37 kV") { // the season, then the chat
	}
	require.NoError(t, p.cmd.Process.Signal(syscall.SIGINT))
	require.Zero(t, p.end(t), p.stderr.String())
	left, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Empty(t, left)
}

// TestReaderGoesAway ends quietly where nobody reads any more, and leaves
// nothing behind.
func TestReaderGoesAway(t *testing.T) {
	dir := t.TempDir()
	cmd := exec.Command(os.Args[0], "demo", "--no-chat")
	cmd.Env = append(os.Environ(), runAsProgram+"=1", "TMPDIR="+dir)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	r, w, err := os.Pipe()
	require.NoError(t, err)
	cmd.Stdout = w
	require.NoError(t, r.Close())
	require.NoError(t, cmd.Start())
	require.NoError(t, w.Close())
	require.Error(t, cmd.Wait())
	require.Equal(t, exitFailed, cmd.ProcessState.ExitCode(), stderr.String())
	require.Empty(t, stderr.String())
	left, err := filepath.Glob(filepath.Join(dir, "troughbell-*"))
	require.NoError(t, err)
	require.Empty(t, left)
}

// TestReadBesideAWriter reads, exports and copies while a chat holds the file.
func TestReadBesideAWriter(t *testing.T) {
	db := kept(t, orchard)
	p := startPiped(t, "chat", "--db", db)
	p.send(t, "fence 5.7")
	require.Contains(t, p.next(t), "5.7")
	dir := t.TempDir()
	for _, args := range [][]string{
		{"export", "--out", filepath.Join(dir, "herd.zip")},
		{"backup", "--out", filepath.Join(dir, "copy.db")},
	} {
		status, _, stderr := call(t, "", append(args, "--db", db)...)
		require.Equal(t, exitDone, status, stderr)
	}
	got := parsed(t, db, "2026-12-01T09:00", "undo")
	require.Contains(t, got[0].Reply, "5.7", "it sees what the chat has kept")
	require.Equal(t, 1, fences(t, filepath.Join(dir, "copy.db"))["fence 5.7"], "and so does the copy")

	for _, args := range [][]string{{"chat"}, {"replay"}, {"restore", filepath.Join(dir, "copy.db"), "--force"}} {
		status, _, stderr := call(t, "fence 5\n", append(args, "--db", db)...)
		require.Equal(t, exitFailed, status, args)
		oneLine(t, stderr)
		require.Contains(t, stderr, "stop that one first")
	}
	p.send(t, "fence 5.8") // the chat goes on
	require.Contains(t, p.next(t), "5.8")
	require.NoError(t, p.in.Close())
	require.Zero(t, p.end(t), p.stderr.String())
}

// TestUntilDone reads all of an input in pieces of any size, and gives up with
// its context.
func TestUntilDone(t *testing.T) {
	b, err := io.ReadAll(newUntilDone(t.Context(), bytes.NewReader([]byte(orchard))))
	require.NoError(t, err)
	require.Equal(t, orchard, string(b))
	ctx, stop := context.WithCancel(t.Context())
	r, w := io.Pipe()
	defer w.Close()
	stop()
	_, err = newUntilDone(ctx, r).Read(make([]byte, 1))
	require.ErrorIs(t, err, errInterrupted)
}
