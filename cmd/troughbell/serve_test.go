package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
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
	wait  func() // until it has ended
	lines chan string
	mu    sync.Mutex
	out   bytes.Buffer // all that it wrote, to both outputs
}

// start starts the program against the server on the database.
func start(t *testing.T, api *botapitest.Server, db string) *program {
	t.Helper()
	return startWith(t, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token},
		"serve", "--db", db, "--telegram-api", api.URL(), "--zone", "America/New_York", "--log-level", "debug")
}

func startWith(t *testing.T, env []string, args ...string) *program {
	t.Helper()
	return startFile(t, os.Args[0], append([]string{runAsProgram + "=1"}, env...), args...)
}

// startFile starts the program that lies in a file.
func startFile(t *testing.T, file string, env []string, args ...string) *program {
	t.Helper()
	cmd := exec.Command(file, args...)
	cmd.Env = append(os.Environ(), env...)
	return startCommand(t, cmd)
}

// startCommand starts the program by a command that was prepared for it.
func startCommand(t *testing.T, cmd *exec.Cmd) *program {
	t.Helper()
	p := &program{cmd: cmd, lines: make(chan string, 16)}
	stdout, err := p.cmd.StdoutPipe()
	require.NoError(t, err)
	p.cmd.Stderr = writerFunc(func(b []byte) { p.keep(b) })
	require.NoError(t, p.cmd.Start())
	read := make(chan struct{})
	go func() {
		defer close(read)
		defer close(p.lines)
		s := bufio.NewScanner(stdout)
		for s.Scan() {
			p.keep([]byte(s.Text() + "\n"))
			p.lines <- s.Text()
		}
	}()
	p.wait = sync.OnceFunc(func() {
		<-read           // Wait would close the pipe under the reader
		_ = p.cmd.Wait() // the status is looked at by itself
	})
	t.Cleanup(func() {
		_ = p.cmd.Process.Kill() // it has ended, mostly
		p.wait()
		require.NotContains(t, p.said(), "must-not-leak")
	})
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
	p.wait()
}

// stop ends the program the soft way, which must be well and soon.
func (p *program) stop(t *testing.T, sig syscall.Signal) {
	t.Helper()
	began := time.Now()
	require.NoError(t, p.cmd.Process.Signal(sig))
	require.Equal(t, exitDone, p.end(t), p.said())
	require.Less(t, time.Since(began), 5*time.Second) // it bounds itself to 2 s; the machine may be busy
}

// end waits until the program has ended by itself and gives its exit status.
func (p *program) end(t *testing.T) int {
	t.Helper()
	ended := make(chan struct{})
	go func() { p.wait(); close(ended) }()
	select {
	case <-ended:
	case <-time.After(30 * time.Second):
		t.Fatalf("it does not end: %s", p.said())
	}
	return p.cmd.ProcessState.ExitCode()
}

// complaint is the one line that the program said beside its log and its code.
func (p *program) complaint(t *testing.T) string {
	t.Helper()
	var lines []string
	for l := range strings.Lines(p.said()) {
		if !strings.Contains(l, "level=") && !strings.HasPrefix(l, "pair ") {
			lines = append(lines, l)
		}
	}
	require.Len(t, lines, 1, p.said())
	return lines[0]
}

var ann = botapitest.Person{ID: 101, Name: "Ann"}

// pair brings the program's one-time code as Ann would.
func pair(t *testing.T, api *botapitest.Server, p *program) {
	t.Helper()
	code, ok := strings.CutPrefix(p.line(t), "pair ")
	require.True(t, ok, p.said())
	api.Say(ann, "/start "+code)
	require.Equal(t, "ready", p.line(t))
	eventually(t, func() bool { return len(api.Messages(ann.ID)) > 0 }, p)
}

func eventually(t *testing.T, ok func() bool, p *program) {
	t.Helper()
	require.Eventually(t, ok, 40*time.Second, 20*time.Millisecond, "%s", lazy(p.said))
}

// lazy is a text made only when it is needed.
type lazy func() string

func (l lazy) String() string { return l() }

// journal is the records of all herds in a database.
func journal(t *testing.T, db string) (all []store.Envelope) {
	t.Helper()
	ctx := context.Background()
	st, err := store.OpenReader(ctx, db)
	require.NoError(t, err)
	defer st.Close()
	require.NoError(t, st.Read(ctx, func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil {
			return err
		}
		for _, h := range herds {
			records, err := tx.Journal(h.ID)
			if err != nil {
				return err
			}
			all = append(all, records...)
		}
		return nil
	}))
	return all
}

// texts lists what a person's messages were recorded as, message by message.
func texts(t *testing.T, db string) map[string]int {
	t.Helper()
	out := map[string]int{}
	for _, e := range journal(t, db) {
		if e.Fact.Kind() == "fence" || e.Fact.Kind() == "spend" {
			out[e.Text]++
		}
	}
	return out
}

const setUp = "4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. one feeder, red hopper, holds 200 lb. " +
	"two water barrels, shed and oak, 55 gal each. target 270 lb, chores saturday 7 am, eastern time, US units"

// TestKilledInTheMiddle drops the program while texts come in, starts it again
// and finds every text recorded once and answered.
func TestKilledInTheMiddle(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	p := start(t, api, db)
	pair(t, api, p)
	api.Say(ann, setUp)

	const n = 12
	var said []string
	var ids []int64
	kills := 0
	for i := range n {
		text := fmt.Sprintf("spent %d straw", i+10)
		said = append(said, text)
		ids = append(ids, api.Say(ann, text))
		if i%4 == 3 { // anywhere between the poll and the last answer
			eventually(t, func() bool { return len(api.Messages(ann.ID)) >= 2+i/2 }, p)
			p.kill(t)
			kills++
			p = start(t, api, db)
			require.Equal(t, "ready", p.line(t))
		}
	}
	eventually(t, func() bool {
		for _, id := range ids {
			if len(answers(api, id)) == 0 {
				return false
			}
		}
		return api.Pending() == 0
	}, p)
	p.stop(t, syscall.SIGTERM)

	recorded := texts(t, db)
	repeated := 0
	for i, text := range said {
		require.Equal(t, 1, recorded[text], "%q is recorded once", text)
		repeated += len(answers(api, ids[i])) - 1
	}
	// One call is under way in a chat, so a kill leaves one outcome unknown at the
	// most; one answer may be cut off by several kills in a row.
	require.LessOrEqual(t, repeated, kills, "only a call cut off by a kill is repeated")
}

func answers(api *botapitest.Server, message int64) (out []botapitest.Message) {
	for _, m := range api.Messages(ann.ID) {
		if m.ReplyTo == fmt.Sprint(message) {
			out = append(out, m)
		}
	}
	return out
}

// TestStopsCleanly stops the program by each of its signals: while it polls, and
// while a call hangs whose message is not lost by it.
func TestStopsCleanly(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	p := start(t, api, db)
	pair(t, api, p)
	p.stop(t, syscall.SIGINT)

	p = start(t, api, db)
	require.Equal(t, "ready", p.line(t), "it has an owner and prints no code")
	api.Fail("sendMessage", botapitest.Fault{Delay: botapitest.Hangs})
	id := api.Say(ann, "spent 20 straw")
	eventually(t, func() bool { return len(api.Calls("sendMessage")) == 2 }, p)
	p.stop(t, syscall.SIGTERM)

	p = start(t, api, db)
	eventually(t, func() bool { return len(answers(api, id)) == 1 }, p)
	p.stop(t, syscall.SIGTERM)
	require.Equal(t, 1, texts(t, db)["spent 20 straw"])
}

// TestNoNetworkAtStart waits for the network instead of giving up.
func TestNoNetworkAtStart(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	api.Fail("getUpdates", botapitest.Fault{HangUp: true}, botapitest.Fault{Status: 502, Page: "<html>bad gateway</html>"})
	p := start(t, api, filepath.Join(t.TempDir(), "herd.db"))
	pair(t, api, p)
	p.stop(t, syscall.SIGINT)
}

// TestTwoCopies has two programs poll with one token: neither ends over it, and
// each says why it stumbles.
func TestTwoCopies(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	db := filepath.Join(t.TempDir(), "herd.db")
	one := start(t, api, db)
	pair(t, api, one)
	two := start(t, api, filepath.Join(t.TempDir(), "other.db"))
	require.Contains(t, two.line(t), "pair ")
	eventually(t, func() bool { return strings.Contains(one.said(), "another copy of the bot is running") }, one)
	two.stop(t, syscall.SIGTERM)
	id := api.Say(ann, "spent 20 straw")
	eventually(t, func() bool { return len(answers(api, id)) == 1 }, one)

	// A second one on the same database ends at once and says what to do.
	three := start(t, api, db)
	require.Equal(t, exitFailed, three.end(t))
	require.Contains(t, three.complaint(t), db)
	one.stop(t, syscall.SIGTERM)
}

// TestCannotStart ends with one sentence that says what to do.
func TestCannotStart(t *testing.T) {
	t.Parallel()
	api := botapitest.New(testToken)
	defer api.Close()
	empty := filepath.Join(t.TempDir(), "token")
	require.NoError(t, os.WriteFile(empty, []byte("\n"), 0o600))
	for _, tt := range []struct {
		name   string
		env    []string
		url    string
		status int
		says   string
	}{
		{"a wrong token", []string{"TROUGHBELL_TELEGRAM_TOKEN=999:wrong-but-a-token-that-must-not-leak"}, api.URL(), exitFailed, "check TROUGHBELL_TELEGRAM_TOKEN"},
		{"no token", nil, api.URL(), exitWrong, "set TROUGHBELL_TELEGRAM_TOKEN"},
		{"an empty token file", []string{"TROUGHBELL_TELEGRAM_TOKEN_FILE=" + empty}, api.URL(), exitWrong, empty},
		{"no such token file", []string{"TROUGHBELL_TELEGRAM_TOKEN_FILE=" + empty + "s"}, api.URL(), exitFailed, empty + "s"},
		{"a token that is none", []string{"TROUGHBELL_TELEGRAM_TOKEN=a-token-that-must-not-leak\n% /"}, api.URL(), exitWrong, "TROUGHBELL_TELEGRAM_TOKEN"},
		{"no address", []string{"TROUGHBELL_TELEGRAM_TOKEN=" + testToken}, "localhost:8081", exitWrong, "--telegram-api"},
		{"haste at a server elsewhere", []string{"TROUGHBELL_TELEGRAM_TOKEN=" + testToken, "TROUGHBELL_TELEGRAM_HASTE=2"}, "https://bots.example.org", exitWrong, "--telegram-haste"},
		{"haste that is none", []string{"TROUGHBELL_TELEGRAM_TOKEN=" + testToken, "TROUGHBELL_TELEGRAM_HASTE=0"}, api.URL(), exitWrong, "from 1 to 1000"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p := startWith(t, tt.env, "serve", "--db", filepath.Join(t.TempDir(), "herd.db"), "--telegram-api", tt.url, "--log-level", "debug")
			require.Equal(t, tt.status, p.end(t), p.said())
			require.Contains(t, p.complaint(t), tt.says)
		})
	}
}

func TestTroubleOfTheRoundIsLoggedOnceAnHour(t *testing.T) {
	var out bytes.Buffer
	now := time.Date(2026, 5, 16, 7, 0, 0, 0, time.UTC)
	report := hourly(newLog(&out, "info"), func() time.Time { return now })
	for minute := range 100 {
		now = now.Add(time.Minute)
		report(errors.New("no room"))
		if minute == 30 {
			report(errors.New("another thing"))
		}
	}
	require.Equal(t, 3, strings.Count(out.String(), "no room"), out.String())
	require.Equal(t, 1, strings.Count(out.String(), "another thing"))
}
