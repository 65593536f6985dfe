package telegram

import (
	"context"
	"fmt"
	"log/slog"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/schedule"
	"troughbell/store"
)

// sender is a bot that does not run: its sending is driven by hand, in virtual
// time, and each call takes none.
type sender struct {
	t    *testing.T
	now  time.Time
	bot  *Bot
	sent []delivery
}

type delivery struct {
	at    time.Time
	chat  store.ChatID
	group bool
	text  string
}

func newSender(t *testing.T) *sender {
	t.Helper()
	s := &sender{t: t, now: time.Date(2026, 5, 16, 7, 0, 0, 0, time.UTC)}
	st, err := store.Open(t.Context(), filepath.Join(t.TempDir(), "herd.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	s.bot = New(Config{Store: st, Desk: bot.NewDesk(), Log: slog.New(slog.DiscardHandler), Now: func() time.Time { return s.now }})
	return s
}

func (s *sender) write(f func(*store.Tx) error) {
	s.t.Helper()
	require.NoError(s.t, s.bot.Store.Write(context.Background(), f))
}

// queue has so many answers wait for the chat of a herd.
func (s *sender) queue(chat string, group bool, n int) (id store.ChatID) {
	s.t.Helper()
	s.write(func(tx *store.Tx) error {
		c, err := tx.ChatOf(transport, chat, group)
		if err != nil {
			return err
		}
		if id = c.ID; c.Herd == 0 {
			if c.Herd, err = tx.CreateHerd(chat, "UTC", s.now); err != nil {
				return err
			}
			if err := tx.SaveChat(c); err != nil {
				return err
			}
		}
		for i := range n {
			key := fmt.Sprint(chat, "/", s.now.UnixNano(), "/", i)
			if err := s.bot.Desk.Queue(tx, messageIn(c, key), outcomeOf(key)); err != nil {
				return err
			}
		}
		return nil
	})
	return id
}

// run lets time go by in steps of 10 ms.
func (s *sender) run(span time.Duration) {
	s.t.Helper()
	for end := s.now.Add(span); s.now.Before(end); s.now = s.now.Add(10 * time.Millisecond) {
		jobs, _, err := s.bot.claim(context.Background(), s.bot.Limits.AtOnce)
		require.NoError(s.t, err)
		for _, j := range jobs {
			s.sent = append(s.sent, delivery{s.now, j.chat.ID, j.chat.Group, j.row.Text})
			require.NoError(s.t, s.bot.noteOutcome(j.row, fmt.Sprint(len(s.sent)), nil))
		}
	}
}

// requireLimits checks Telegram's: overall, in a chat, and in a group, each with
// the burst that passes after a silence.
func (s *sender) requireLimits() {
	s.t.Helper()
	within := func(span time.Duration, which func(delivery) bool) (most int) {
		var last []time.Time
		for _, d := range s.sent {
			if !which(d) {
				continue
			}
			last = append(last, d.at)
			for d.at.Sub(last[0]) >= span {
				last = last[1:]
			}
			most = max(most, len(last))
		}
		return most
	}
	settled := s.sent[0].at.Add(2 * time.Second)
	require.LessOrEqual(s.t, within(time.Second, func(d delivery) bool { return d.at.After(settled) }), 30)
	chats := map[store.ChatID]bool{}
	for _, d := range s.sent {
		if chats[d.chat] {
			continue
		}
		chats[d.chat] = true
		mine := func(e delivery) bool { return e.chat == d.chat }
		if d.group {
			require.LessOrEqual(s.t, within(time.Minute, mine), groupBurst+20)
			continue
		}
		require.LessOrEqual(s.t, within(10*time.Second, mine), chatBurst+10)
	}
}

// One herd's flood delays no other's danger, nor its own, and the answer to
// another by a round at the most.
func TestFloodDelaysNoOther(t *testing.T) {
	s := newSender(t)
	flooded := s.queue("flooded", false, 500)
	group := s.queue("-1", true, 100)
	for i := range 100 { // more than goes out, for a while
		s.queue(fmt.Sprint(100+i), false, 20)
	}
	s.run(5 * time.Second)

	asked := s.now
	other := s.queue("other", false, 1)
	s.run(6 * time.Second)
	at := func(chat store.ChatID, after time.Time) (time.Duration, string) {
		for _, d := range s.sent {
			if d.chat == chat && !d.at.Before(after) {
				return d.at.Sub(after), d.text
			}
		}
		t.Fatal("nothing was sent to the chat")
		return 0, ""
	}
	late, _ := at(other, asked)
	require.Less(t, late, 5*time.Second, "a round of some hundred chats")

	for _, chat := range []store.ChatID{other, flooded} {
		s.run(2 * time.Second)
		told := s.now
		s.write(func(tx *store.Tx) error {
			push := bot.Push{
				Nudge: schedule.Nudge{Key: fmt.Sprint("water ", chat), Grade: schedule.Danger},
				At:    s.now, Text: "The barrel is dry.",
			}
			c, err := tx.Chat(chat)
			if err != nil {
				return err
			}
			return s.bot.Desk.QueuePushes(tx, c.Herd, []bot.Push{push})
		})
		s.run(2 * time.Second)
		late, text := at(chat, told)
		require.Less(t, late, time.Second)
		require.Equal(t, "The barrel is dry.", text, "it goes before what waits in its own chat")
	}
	s.run(60 * time.Second)
	s.requireLimits()
	n := 0
	for _, d := range s.sent {
		if d.chat == group {
			n++
		}
	}
	require.Greater(t, n, 15, "a group's line moves too")
	require.InDelta(t, 25*s.now.Sub(s.sent[0].at).Seconds(), len(s.sent), 60, "and no place is wasted")
}

// Within a chat and a grade, messages go out in the order in which they were
// queued, whatever fails, and each once.
func TestOrderWithinAChat(t *testing.T) {
	s := newSender(t)
	chat := s.queue("one", false, 3)
	jobs, _, err := s.bot.claim(context.Background(), 8)
	require.NoError(t, err)
	require.Len(t, jobs, 1, "one call at a time in a chat")
	none, _, err := s.bot.claim(context.Background(), 8)
	require.NoError(t, err)
	require.Empty(t, none)
	s.queue("one", false, 0)
	require.NoError(t, s.bot.noteOutcome(jobs[0].row, "", &callError{method: "sendMessage", what: flood, wait: 3 * time.Second}))
	_, next, err := s.bot.claim(context.Background(), 8)
	require.NoError(t, err)
	require.Equal(t, s.now.Add(3*time.Second), next)
	s.run(2 * time.Second)
	require.Empty(t, s.sent)
	s.run(10 * time.Second)
	require.Len(t, s.sent, 3)
	for i, d := range s.sent {
		require.Equal(t, chat, d.chat)
		require.Contains(t, d.text, fmt.Sprint("/", i))
	}
	_, next, err = s.bot.claim(context.Background(), 8)
	require.NoError(t, err)
	require.Zero(t, next, "nothing waits")
	require.Empty(t, s.bot.lines.of)
}

// Many thousands of chats that wait cost a claim no more than a few do.
func BenchmarkClaim(b *testing.B) {
	for _, waiting := range []int{100, 50_000} {
		b.Run(fmt.Sprint(waiting), func(b *testing.B) {
			l := newLines()
			now := time.Date(2026, 5, 16, 7, 0, 0, 0, time.UTC)
			for i := range waiting {
				l.join([]store.Waiting{{Chat: store.ChatID(i + 1)}}, now)
			}
			for b.Loop() {
				w, _, ok := l.next(now)
				require.True(b, ok)
				l.leave(w, true, now, now)
			}
		})
	}
}
