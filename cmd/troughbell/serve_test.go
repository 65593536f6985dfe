package main

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

const testToken = "123456:a-token-that-must-not-leak"

// program is a running "troughbell serve".
type program struct {
	cmd   *exec.Cmd
	lines chan string
	mu    sync.Mutex
	out   bytes.Buffer // all that it wrote, to both outputs
}

// start starts the program against the server on the database.
func start(t *testing.T, api *botapitest.Server, db string) *program {
	t.Helper()
	p := &program{lines: make(chan string, 16)}
	p.cmd = exec.Command(os.Args[0], "serve", "--db", db, "--telegram-api", api.URL(), "--zone", "America/New_York")
	p.cmd.Env = append(os.Environ(), runAsProgram+"=1", "TROUGHBELL_TELEGRAM_TOKEN="+api.Token)
	stdout, err := p.cmd.StdoutPipe()
	require.NoError(t, err)
	p.cmd.Stderr = writerFunc(func(b []byte) { p.keep(b) })
	require.NoError(t, p.cmd.Start())
	go func() {
		defer close(p.lines)
		s := bufio.NewScanner(stdout)
		for s.Scan() {
			p.keep([]byte(s.Text() + "\n"))
			p.lines <- s.Text()
		}
	}()
	t.Cleanup(func() { _ = p.cmd.Process.Kill(); _ = p.cmd.Wait() })
	return p
}

type writerFunc func([]byte)

func (f writerFunc) Write(b []byte) (int, error) { f(b); return len(b), nil }

func (p *program) keep(b []byte) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.out.Write(b)
}

func (p *program) said() string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.out.String()
}

// line gives the next line of standard output.
func (p *program) line(t *testing.T) string {
	t.Helper()
	select {
	case l, ok := <-p.lines:
		require.True(t, ok, "the program ended: %s", p.said())
		return l
	case <-time.After(30 * time.Second):
		t.Fatalf("no line from the program: %s", p.said())
		return ""
	}
}

// kill ends the program the hard way.
func (p *program) kill(t *testing.T) {
	t.Helper()
	require.NoError(t, p.cmd.Process.Signal(syscall.SIGKILL))
	_ = p.cmd.Wait()
}

// stop ends the program the soft way and gives its exit status.
func (p *program) stop(t *testing.T) int {
	t.Helper()
	require.NoError(t, p.cmd.Process.Signal(syscall.SIGTERM))
	_ = p.cmd.Wait()
	return p.cmd.ProcessState.ExitCode()
}

// pair brings the program's one-time code as a person would.
func pair(t *testing.T, api *botapitest.Server, p *program, person int64) {
	t.Helper()
	code, ok := strings.CutPrefix(p.line(t), "pair ")
	require.True(t, ok, p.said())
	api.Say(person, "Ann", "/start "+code)
	require.Equal(t, "ready", p.line(t))
	eventually(t, func() bool { return len(api.Messages(person)) > 0 }, p)
}

func eventually(t *testing.T, ok func() bool, p *program) {
	t.Helper()
	require.Eventually(t, ok, 40*time.Second, 20*time.Millisecond, "%s", lazy(p.said))
}

// lazy is a text made only when it is needed.
type lazy func() string

func (l lazy) String() string { return l() }

// texts lists what a person's messages were recorded as, message by message.
func texts(t *testing.T, db string) map[string]int {
	t.Helper()
	ctx := context.Background()
	st, err := store.OpenReader(ctx, db)
	require.NoError(t, err)
	defer st.Close()
	out := map[string]int{}
	require.NoError(t, st.Read(ctx, func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil {
			return err
		}
		for _, h := range herds {
			journal, err := tx.Journal(h.ID)
			if err != nil {
				return err
			}
			for _, e := range journal {
				if e.Fact.Kind() == "fence" || e.Fact.Kind() == "spend" {
					out[e.Text]++
				}
			}
		}
		return nil
	}))
	return out
}

const setUp = "4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. one feeder, red hopper, holds 200 lb. " +
	"two water barrels, shed and oak, 55 gal each. target 270 lb, chores saturday 7 am, eastern time, US units"

// TestKilledInTheMiddle drops the program while texts come in, starts it again
// and finds every text recorded once and answered.
func TestKilledInTheMiddle(t *testing.T) {
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	const ann = 101
	p := start(t, api, db)
	pair(t, api, p, ann)
	api.Say(ann, "Ann", setUp)

	const n = 24
	var said []string
	for i := range n {
		text := fmt.Sprintf("spent %d straw", i+10)
		said = append(said, text)
		api.Say(ann, "Ann", text)
		if i%8 == 4 {
			eventually(t, func() bool { return len(api.Messages(ann)) >= i/2 }, p)
			p.kill(t)
			p = start(t, api, db)
			require.Equal(t, "ready", p.line(t))
		}
	}
	answered := func() bool {
		replies := map[string]bool{}
		for _, m := range api.Messages(ann) {
			replies[m.ReplyTo] = true
		}
		return len(replies) >= n+1 && api.Pending() == 0
	}
	eventually(t, answered, p)
	require.Zero(t, p.stop(t), p.said())

	recorded := texts(t, db)
	for _, text := range said {
		require.Equal(t, 1, recorded[text], "%q is recorded once", text)
	}
	require.NotContains(t, p.said(), "a-token-that-must-not-leak")
}

// TestStopsCleanly stops the program by each of its signals while it polls.
func TestStopsCleanly(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM} {
		api := botapitest.New(testToken)
		p := start(t, api, filepath.Join(t.TempDir(), "herd.db"))
		require.Contains(t, p.line(t), "pair ")
		require.Equal(t, "ready", p.line(t))
		require.NoError(t, p.cmd.Process.Signal(sig))
		require.NoError(t, p.cmd.Wait(), p.said())
		api.Close()
	}
}

// TestWrongToken ends with one sentence that says what to do.
func TestWrongToken(t *testing.T) {
	api := botapitest.New(testToken)
	defer api.Close()
	p := &program{}
	cmd := exec.Command(os.Args[0], "serve", "--db", filepath.Join(t.TempDir(), "herd.db"), "--telegram-api", api.URL())
	cmd.Env = append(os.Environ(), runAsProgram+"=1", "TROUGHBELL_TELEGRAM_TOKEN=999:another-one-that-must-not-leak")
	cmd.Stderr = writerFunc(func(b []byte) { p.keep(b) })
	err := cmd.Run()
	var exit *exec.ExitError
	require.ErrorAs(t, err, &exit)
	require.Equal(t, exitFailed, exit.ExitCode())
	require.Contains(t, p.said(), "check TROUGHBELL_TELEGRAM_TOKEN")
	require.NotContains(t, p.said(), "another-one-that-must-not-leak")
}

// TestNoNetworkAtStart waits for the network instead of giving up.
func TestNoNetworkAtStart(t *testing.T) {
	api := botapitest.New(testToken)
	defer api.Close()
	api.Fail("getUpdates", botapitest.Fault{HangUp: true}, botapitest.Fault{Status: 502, Page: "<html>bad gateway</html>"})
	p := start(t, api, filepath.Join(t.TempDir(), "herd.db"))
	require.Contains(t, p.line(t), "pair ")
	require.Equal(t, "ready", p.line(t))
	require.Zero(t, p.stop(t), p.said())
}

// TestFaultsOfSending has each kind of failure met: nothing is lost, and only a
// lost answer repeats a message.
func TestFaultsOfSending(t *testing.T) {
	api := botapitest.New(testToken)
	defer api.Close()
	const ann = 101
	p := start(t, api, filepath.Join(t.TempDir(), "herd.db"))
	pair(t, api, p, ann)
	eventually(t, func() bool { return api.Pending() == 0 }, p)
	faults := []struct {
		name  string
		fault botapitest.Fault
		times int // how often the answer arrives
	}{
		{"flood", botapitest.Fault{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1}, 1},
		{"gateway", botapitest.Fault{Status: 500, Description: "Internal Server Error"}, 1},
		{"hang-up", botapitest.Fault{HangUp: true}, 1},
		{"lost answer", botapitest.Fault{Lost: true}, 2},
	}
	for i, f := range faults {
		api.Fail("sendMessage", f.fault)
		id := api.Say(ann, "Ann", fmt.Sprintf("spent %d straw", 20+i))
		count := func() (n int) {
			for _, m := range api.Messages(ann) {
				if m.ReplyTo == fmt.Sprint(id) {
					n++
				}
			}
			return n
		}
		eventually(t, func() bool { return count() == f.times }, p)
	}
	require.Zero(t, p.stop(t), p.said())
}

// TestBlocked has a person block the bot and come back.
func TestBlocked(t *testing.T) {
	api := botapitest.New(testToken)
	defer api.Close()
	const ann = 101
	p := start(t, api, filepath.Join(t.TempDir(), "herd.db"))
	pair(t, api, p, ann)
	api.Fail("sendMessage", botapitest.Fault{Status: 403, Description: "Forbidden: bot was blocked by the user"})
	api.Say(ann, "Ann", "spent 20 straw")
	before := len(api.Messages(ann))
	eventually(t, func() bool { return len(api.Calls("sendMessage")) > before && api.Pending() == 0 }, p)
	api.Say(ann, "Ann", "spent 21 straw")
	eventually(t, func() bool { return len(api.Messages(ann)) > before }, p)
	require.Zero(t, p.stop(t), p.said())
}
