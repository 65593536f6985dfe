package main

import (
	"context"
	"database/sql"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
)

// loadVariable, set to a span such as 60s, has TestLoad measure at full size;
// loadRate and loadHerds change what that is.
const (
	loadVariable = "TROUGHBELL_LOAD"
	loadRate     = "TROUGHBELL_LOAD_RATE"
	loadHerds    = "TROUGHBELL_LOAD_HERDS"
)

// load is what TestLoad puts on the program.
type load struct {
	herds int // in the file
	chats int // that text, one after the other
	texts int
	rate  int // texts a second; 0: all at once
}

// loadTexts is what the chats text in turn; %d makes each text of a chat one of
// its own.
var loadTexts = []string{
	"fence 5.%d", "spent %d straw", "Dot 38 girth and fence 6.%d", "barrel full, fence 7.%d", "filled the hopper 90 lb, spent %d corn",
	"note: gate %d sags", "spent %d nails", "Rufus 101 lb, fence 6.%d", "fence 4.%d", "spent %d salt, how long will the feed last?",
}

// TestLoad runs the program on a file of herds and has many chats text to it:
// each text must be recorded once, in the order of its chat, and answered once,
// and the stop in the middle of it all must lose nothing.
//
// At full size it prints what that took. A text arrives when the Bot API server
// would give it to a poll; it is committed when another reader of the file sees
// its answer in the outbox, which is queued in the transaction of its records.
func TestLoad(t *testing.T) {
	l := load{herds: 60, chats: 40, texts: 200}
	full := os.Getenv(loadVariable)
	if full != "" {
		span, err := time.ParseDuration(full)
		require.NoError(t, err)
		l = load{herds: number(t, loadHerds, 100_000), chats: 5000, rate: number(t, loadRate, 1000)}
		l.texts = int(span.Seconds() * float64(l.rate))
	} else {
		t.Parallel()
	}
	db := filepath.Join(t.TempDir(), "herds.db")
	began := time.Now()
	fillHerds(t, db, l.herds, l.chats)
	f, err := os.OpenFile(db, os.O_RDWR, 0)
	require.NoError(t, err)
	require.NoError(t, f.Sync()) // else the program's first checkpoint waits for all of it
	info, err := f.Stat()
	require.NoError(t, err)
	require.NoError(t, f.Close())
	t.Logf("file: %d herds, %d MB, made in %.1f s", l.herds, info.Size()/1e6, time.Since(began).Seconds())

	api := botapitest.New(testToken)
	defer api.Close()
	var p *program
	if full == "" {
		p = start(t, api, db)
	} else {
		file := built(t)
		t.Logf("disk: %s", fsyncRate(t, filepath.Dir(db)))
		idle := watchStalls()
		time.Sleep(5 * time.Second)
		t.Logf("machine before: %s", idle.over())
		debug.SetGCPercent(400) // who texts is to take little from the program
		began = time.Now()
		p = startFile(t, file, []string{"TROUGHBELL_TELEGRAM_TOKEN=" + api.Token}, "serve", "--db", db, "--telegram-api", api.URL(), "--backups", "off")
	}
	require.Equal(t, "ready", p.line(t))
	up := usage(t, p)
	t.Logf("ready after %d ms, %d ms of processor, %s", time.Since(began).Milliseconds(), up.cpu.Milliseconds(), up)

	w := watch(t, db)
	before, ours := usage(t, p), processor(t)
	var machine *stalls
	if full != "" {
		machine = watchStalls()
	}
	began = time.Now()
	for i := range l.texts {
		if l.rate > 0 {
			time.Sleep(time.Until(began.Add(time.Duration(i) * time.Second / time.Duration(l.rate))))
		}
		herd, turn := i%l.chats+1, i/l.chats
		w.said(api.Say(keeper(herd), loadText(turn)), time.Now())
	}
	spoke := time.Since(began)
	if full != "" {
		w.waitFor(l.texts)
		slow := machine.over()
		after := usage(t, p)
		cpu := after.cpu - before.cpu
		t.Logf("load: %d texts from %d chats in %.1f s, committed after %.1f s: %.0f a second",
			l.texts, l.chats, spoke.Seconds(), time.Since(began).Seconds(), float64(l.texts)/time.Since(began).Seconds())
		t.Logf("arrival to commit: %s", w.spans())
		t.Logf("machine: %s", slow)
		t.Logf("arrival to commit, outside its stalls: %s", w.spansOutside(slow))
		each := func(d time.Duration) float64 { return d.Seconds() * 1000 / float64(l.texts) }
		t.Logf("the program: %.2f ms of processor a text, %s; who texts, the loopback server and the watcher: %.2f ms",
			each(cpu), after, each(processor(t)-ours))
		t.Logf("disk: %s", fsyncRate(t, filepath.Dir(db)))
		t.Logf("sent meanwhile: %d", len(api.Calls("sendMessage")))
		began = time.Now()
	}
	p.stop(t, syscall.SIGTERM)
	t.Logf("stopped after %d ms, %d texts not asked for yet", time.Since(began).Milliseconds(), api.Pending())
	if api.Pending() > 0 { // said after the last poll
		p = start(t, api, db)
		require.Equal(t, "ready", p.line(t))
		w.waitFor(l.texts)
		p.stop(t, syscall.SIGTERM)
	}
	w.close(t)
	requireOnceInOrder(t, db, l)
}

// loadText is what a chat texts at its turn.
func loadText(turn int) string { return fmt.Sprintf(loadTexts[turn%len(loadTexts)], 10+turn) }

// requireOnceInOrder checks that each chat's texts were recorded and answered
// once each, in the order in which they were said.
func requireOnceInOrder(t *testing.T, path string, l load) {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path+"?mode=ro")
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	list := func(query string) []string {
		rows, err := db.Query(query)
		require.NoError(t, err)
		defer func() { require.NoError(t, rows.Close()) }()
		var out []string
		for rows.Next() {
			var s string
			require.NoError(t, rows.Scan(&s))
			out = append(out, s)
		}
		require.NoError(t, rows.Err())
		return out
	}
	var want []string
	for herd := range min(l.chats, l.texts) {
		for turn := 0; turn*l.chats+herd < l.texts; turn++ {
			want = append(want, fmt.Sprint(herd+1, " ", loadText(turn)))
		}
	}
	// One line a message: texts of several records have several.
	require.Equal(t, want, list("SELECT herd || ' ' || text FROM record WHERE text <> '' GROUP BY herd, message ORDER BY herd, min(seq)"))
	require.Empty(t, list("SELECT herd || ' ' || text FROM record WHERE text <> '' GROUP BY herd, message, kind HAVING count(*) > 1"),
		"no message is recorded twice")
	require.Equal(t, []string{strconv.Itoa(l.texts)}, list("SELECT count(DISTINCT key) FROM outgoing WHERE kind = 'reply'"))
	require.Equal(t, []string{strconv.Itoa(l.texts)}, list("SELECT count(DISTINCT reply_to) FROM outgoing WHERE kind = 'reply'"))
	require.Empty(t, list("SELECT key FROM incoming WHERE handled = 0 OR problem <> ''"))
}

// watcher finds out when texts are committed.
type watcher struct {
	mu      sync.Mutex
	arrived map[string]time.Time // by the message's id
	all     []spell              // from arrival to commit
	stop    context.CancelFunc
	done    chan error
}

// watch looks into the file every two milliseconds.
func watch(t *testing.T, path string) *watcher {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path+"?mode=ro&_query_only=1&_busy_timeout=5000")
	require.NoError(t, err)
	db.SetMaxOpenConns(1)
	ctx, stop := context.WithCancel(context.Background())
	w := &watcher{arrived: map[string]time.Time{}, stop: stop, done: make(chan error, 1)}
	look, err := db.Prepare("SELECT id, reply_to FROM outgoing WHERE id > ? AND kind = 'reply' ORDER BY id")
	require.NoError(t, err)
	go func() {
		defer db.Close()
		last := int64(0)
		for ctx.Err() == nil {
			ids, err := seen(look, &last)
			if err != nil {
				w.done <- err
				return
			}
			w.saw(ids, time.Now())
			time.Sleep(2 * time.Millisecond)
		}
		w.done <- nil
	}()
	return w
}

func seen(look *sql.Stmt, last *int64) (messages []string, err error) {
	rows, err := look.Query(*last)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	for rows.Next() {
		var message string
		if err := rows.Scan(last, &message); err != nil {
			return nil, err
		}
		messages = append(messages, message)
	}
	return messages, rows.Err()
}

func (w *watcher) said(message int64, at time.Time) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.arrived[fmt.Sprint(message)] = at
}

func (w *watcher) saw(messages []string, at time.Time) {
	w.mu.Lock()
	defer w.mu.Unlock()
	for _, m := range messages {
		w.all = append(w.all, spell{w.arrived[m], at})
	}
}

// waitFor waits until so many texts are committed.
func (w *watcher) waitFor(texts int) {
	for {
		w.mu.Lock()
		n := len(w.all)
		w.mu.Unlock()
		if n >= texts || len(w.done) > 0 {
			return
		}
		time.Sleep(2 * time.Millisecond)
	}
}

// spans tells how long it took from arrival to commit.
func (w *watcher) spans() string {
	w.mu.Lock()
	defer w.mu.Unlock()
	return told(w.all)
}

// spansOutside tells it of the texts that met no stall of the machine and nothing that
// waited because of one: a stall lasts here until a text takes less than twice what
// half of all take.
func (w *watcher) spansOutside(stalled spells) string {
	w.mu.Lock()
	defer w.mu.Unlock()
	texts := slices.SortedFunc(slices.Values(w.all), func(a, b spell) int { return a.from.Compare(b.from) })
	usual := 2 * inOrder(texts)[len(texts)/2]
	var caughtUp []spell
	for _, s := range stalled.all {
		i, _ := slices.BinarySearchFunc(texts, s.to, func(text spell, to time.Time) int { return text.from.Compare(to) })
		for ; i < len(texts) && texts[i].took() >= usual; i++ {
			s.to = texts[i].to
		}
		caughtUp = append(caughtUp, s)
	}
	return told(slices.DeleteFunc(texts, func(text spell) bool { return spells{all: caughtUp}.met(text) }))
}

// inOrder gives how long the texts took, the quickest first.
func inOrder(texts []spell) []time.Duration {
	out := make([]time.Duration, len(texts))
	for i, text := range texts {
		out[i] = text.took()
	}
	slices.Sort(out)
	return out
}

func told(texts []spell) string {
	if len(texts) == 0 {
		return "no text"
	}
	took := inOrder(texts)
	at := func(share float64) float64 {
		return float64(took[int(share*float64(len(took)-1))].Microseconds()) / 1000
	}
	return fmt.Sprintf("%d texts, p50 %.1f ms, p90 %.1f ms, p99 %.1f ms, most %.1f ms", len(took), at(0.5), at(0.9), at(0.99), at(1))
}

func (w *watcher) close(t *testing.T) {
	t.Helper()
	w.stop()
	require.NoError(t, <-w.done)
}

func number(t *testing.T, variable string, otherwise int) int {
	t.Helper()
	v := os.Getenv(variable)
	if v == "" {
		return otherwise
	}
	n, err := strconv.Atoi(v)
	require.NoError(t, err)
	return n
}

// built is the program built as it is given out.
func built(t *testing.T) string {
	t.Helper()
	to := filepath.Join(t.TempDir(), "troughbell")
	out, err := exec.Command("go", "build", "-o", to, ".").CombinedOutput()
	require.NoError(t, err, string(out))
	return to
}

// used is what a process has taken from the machine.
type used struct {
	cpu          time.Duration
	memory, peak int // MB resident
}

func (u used) String() string { return fmt.Sprintf("%d MB resident, %d at most", u.memory, u.peak) }

// usage reads what the program has used so far from the system's own account.
func usage(t *testing.T, p *program) (u used) {
	t.Helper()
	dir := fmt.Sprintf("/proc/%d/", p.cmd.Process.Pid)
	stat, err := os.ReadFile(dir + "stat")
	require.NoError(t, err)
	_, rest, _ := strings.Cut(string(stat), ") ")
	const tick = 10 * time.Millisecond // Linux's for all programs
	for _, f := range strings.Fields(rest)[11:13] {
		n, err := strconv.Atoi(f)
		require.NoError(t, err)
		u.cpu += time.Duration(n) * tick
	}
	status, err := os.ReadFile(dir + "status")
	require.NoError(t, err)
	for line := range strings.Lines(string(status)) {
		for name, to := range map[string]*int{"VmRSS:": &u.memory, "VmHWM:": &u.peak} {
			if v, ok := strings.CutPrefix(line, name); ok {
				kb, err := strconv.Atoi(strings.Fields(v)[0])
				require.NoError(t, err)
				*to = kb / 1000
			}
		}
	}
	return u
}

// processor is what the test's own process has taken of the processors so far.
func processor(t *testing.T) time.Duration {
	t.Helper()
	var u syscall.Rusage
	require.NoError(t, syscall.Getrusage(syscall.RUSAGE_SELF, &u))
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// fsyncRate appends to a file of the folder for a second, a page at a time and
// each brought to the disk.
func fsyncRate(t *testing.T, dir string) string {
	t.Helper()
	f, err := os.CreateTemp(dir, "fsync")
	require.NoError(t, err)
	defer func() { require.NoError(t, os.Remove(f.Name())) }()
	defer func() { require.NoError(t, f.Close()) }()
	page := make([]byte, 4096)
	n, began := 0, time.Now()
	for ; time.Since(began) < time.Second; n++ {
		_, err := f.Write(page)
		require.NoError(t, err)
		require.NoError(t, f.Sync())
	}
	return fmt.Sprintf("%d fsync a second, one page each", n)
}
