package telegram

import (
	"bytes"
	"context"
	"fmt"
	"log/slog"
	"path/filepath"
	"regexp"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

const secret = "123456:a-token-that-must-not-leak"

var (
	ann = botapitest.Person{ID: 101, Name: "Ann"}
	ben = botapitest.Person{ID: 102, Name: "Ben"}
	cal = botapitest.Person{ID: 103, Name: "Cal"}
	dee = botapitest.Person{ID: 999, Name: "Dee"} // a stranger everywhere
)

// quick is limits for tests: nothing waits long.
var quick = Limits{
	PerSecond: 10_000, ChatPerSecond: 10_000, GroupPerMinute: 600_000,
	FirstPause: 2 * time.Millisecond, LongestPause: 50 * time.Millisecond, Grace: 200 * time.Millisecond,
}

// rig is a bot that runs against a Bot API server.
type rig struct {
	t     testing.TB
	api   *botapitest.Server
	path  string
	store *store.Store
	bot   *Bot
	fatal <-chan error
	log   *journal
	noon  time.Duration // from now to noon of the day: what is said by night is read as of the evening
	ahead atomic.Int64  // by how many nanoseconds the clock of the bot is ahead of the server's
}

// now is the Bot API server's clock.
func (r *rig) now() time.Time { return time.Now().Add(r.noon) }

// newRig starts a bot with nobody in its database.
func newRig(t *testing.T, l Limits) *rig {
	t.Helper()
	r := &rig{t: t, api: botapitest.New(secret), path: filepath.Join(t.TempDir(), "herd.db"), log: &journal{}}
	t.Cleanup(r.api.Close)
	today := time.Now().UTC()
	r.noon = time.Date(today.Year(), today.Month(), today.Day(), 17, 0, 0, 0, time.UTC).Sub(today) // in New York
	r.api.SetClock(r.now)
	r.open()
	t.Cleanup(func() {
		r.close()
		require.NotContains(t, r.log.String(), "must-not-leak")
	})
	r.start(l)
	return r
}

// newFarm is a rig with Ann as its operator and owner of a herd.
func newFarm(t *testing.T, l Limits) *rig {
	t.Helper()
	r := newRig(t, l)
	r.api.Say(ann, "/start "+r.pairCode())
	r.lastTo(ann.ID, 1)
	return r
}

func (r *rig) open() {
	var err error
	r.store, err = store.Open(r.t.Context(), r.path, store.Options{Ephemeral: true})
	require.NoError(r.t, err)
}

func (r *rig) start(l Limits) {
	zone, err := time.LoadLocation("America/New_York")
	require.NoError(r.t, err)
	r.bot = New(Config{
		Store: r.store, Desk: bot.NewDesk(), Token: secret, API: r.api.URL(), Zone: zone, Limits: l,
		Now: func() time.Time { return r.now().Add(time.Duration(r.ahead.Load())) },
		Log: slog.New(slog.NewTextHandler(r.log, &slog.HandlerOptions{Level: slog.LevelDebug})),
	})
	// A test's own context ends before its clean-up.
	_, r.fatal = r.bot.Start(context.Background())
}

// close stops the bot as the program does.
func (r *rig) close() {
	ctx, cancel := context.WithTimeout(context.Background(), 2*time.Second)
	defer cancel()
	require.NoError(r.t, r.bot.Stop(ctx))
	require.NoError(r.t, r.store.Close())
}

func (r *rig) pairCode() string {
	var code string
	r.write(func(tx *store.Tx) (err error) {
		code, err = r.bot.PairCode(tx)
		return err
	})
	require.NotEmpty(r.t, code)
	return code
}

var codePattern = regexp.MustCompile(`[0-9A-Z]{5}-[0-9A-Z]{5}`)

// invite has Ann invite a person, who comes.
func (r *rig) invite(p botapitest.Person, words string) {
	r.t.Helper()
	answer := r.ask(ann, words)
	code := codePattern.FindString(answer.Text)
	require.NotEmpty(r.t, code, answer.Text)
	r.ask(p, code)
}

// ask says something in private and gives the answer to it.
func (r *rig) ask(p botapitest.Person, text string) botapitest.Message {
	r.t.Helper()
	return r.answerTo(p.ID, r.api.Say(p, text))
}

// answerTo waits for the answer to a message.
func (r *rig) answerTo(chat, message int64) (m botapitest.Message) {
	r.t.Helper()
	r.eventually(func() bool {
		all := r.answersTo(chat, message)
		if len(all) > 0 {
			m = all[0]
		}
		return len(all) > 0
	})
	return m
}

func (r *rig) answersTo(chat, message int64) (out []botapitest.Message) {
	for _, m := range r.api.Messages(chat) {
		if m.ReplyTo == fmt.Sprint(message) {
			out = append(out, m)
		}
	}
	return out
}

// lastTo waits until so many messages are in a chat and gives the last.
func (r *rig) lastTo(chat int64, n int) botapitest.Message {
	r.t.Helper()
	r.eventually(func() bool { return len(r.api.Messages(chat)) >= n })
	all := r.api.Messages(chat)
	return all[len(all)-1]
}

// settled waits until all that came in is handled and all that is to go out is
// out.
func (r *rig) settled() {
	r.t.Helper()
	r.eventually(func() bool {
		idle := r.api.Pending() == 0
		r.read(func(tx *store.Tx) error {
			_, waits, err := tx.NextIncoming()
			if err != nil {
				return err
			}
			due, err := tx.Waiting(transport)
			if err != nil {
				return err
			}
			under, err := tx.Sending(transport) // in the same moment: what is due may be under way in the next
			idle = idle && !waits && len(due) == 0 && len(under) == 0
			return err
		})
		return idle
	})
}

// underWay is how many messages are being sent, as far as the outbox knows.
func (r *rig) underWay() (n int) {
	r.t.Helper()
	r.read(func(tx *store.Tx) error {
		rows, err := tx.Sending(transport)
		n = len(rows)
		return err
	})
	return n
}

func (r *rig) eventually(ok func() bool) {
	r.t.Helper()
	require.Eventually(r.t, ok, 20*time.Second, 2*time.Millisecond, "%s", r.log)
}

func (r *rig) write(f func(*store.Tx) error) {
	r.t.Helper()
	require.NoError(r.t, r.store.Write(context.Background(), f))
}

func (r *rig) read(f func(*store.Tx) error) {
	r.t.Helper()
	require.NoError(r.t, r.store.Read(context.Background(), f))
}

// kinds lists what stands in the journal of the first herd, by the text that
// made it.
func (r *rig) kinds() map[string][]string {
	out := map[string][]string{}
	r.read(func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil || len(herds) == 0 {
			return err
		}
		all, err := tx.Journal(herds[0].ID)
		for _, e := range all {
			out[e.Text] = append(out[e.Text], string(e.Fact.Kind()))
		}
		return err
	})
	return out
}

// journal is all that was logged.
type journal struct {
	mu  sync.Mutex
	buf bytes.Buffer
}

func (j *journal) Write(b []byte) (int, error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.buf.Write(b)
}

func (j *journal) String() string {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.buf.String()
}
