package telegram

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/telegram/botapitest"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Nothing is lost by a failure, and only a lost answer repeats a message.
func TestFaultsOfSending(t *testing.T) {
	r := newFarm(t, quick)
	for i, tt := range []struct {
		name  string
		fault botapitest.Fault
		times int // how often the answer arrives

		doubtful bool
	}{
		{"flood", botapitest.Fault{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1}, 1, false},
		{"server's fault", botapitest.Fault{Status: 500, Description: "Internal Server Error"}, 1, false},
		{"gateway's page", botapitest.Fault{Status: 502, Page: "<html>bad gateway</html>"}, 1, true},
		{"hang-up", botapitest.Fault{HangUp: true}, 1, true},
		{"lost answer", botapitest.Fault{Lost: true}, 2, true},
	} {
		r.api.Fail("sendMessage", tt.fault)
		id := r.api.Say(ann, fmt.Sprintf("spent %d straw", 20+i))
		r.eventually(func() bool { return len(r.answersTo(ann.ID, id)) == tt.times })
		r.settled()
		all := r.answersTo(ann.ID, id)
		require.Len(t, all, tt.times, tt.name)
		row := r.row(ann, all[len(all)-1].ID)
		r.read(func(tx *store.Tx) error {
			o, ok, err := tx.OutgoingByID(row)
			require.True(t, ok)
			require.Equal(t, tt.doubtful, o.Repeated, "%s: counted as possibly said twice", tt.name)
			return err
		})
	}
	r.api.Fail("sendMessage", botapitest.Fault{Status: 400, Description: "Bad Request: text must be encoded in UTF-8"})
	id := r.api.Say(ann, "spent 40 straw")
	r.eventually(func() bool { return strings.Contains(r.log.String(), "refused and dropped") })
	require.Empty(t, r.answersTo(ann.ID, id), "what is our own fault is not tried for ever")
	r.ask(ann, "spent 41 straw")
}

func TestBlockedAndBack(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Status: 403, Description: "Forbidden: bot was blocked by the user"})
	r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return r.dead(ann) != "" })
	r.nudge("while blocked", schedule.Danger)
	r.settled()
	require.Len(t, r.api.Messages(ann.ID), 1, "nothing is sent to who blocked the bot")
	r.ask(ann, "spent 21 straw") // who writes can be reached
	require.Empty(t, r.dead(ann))

	r.api.Membership(ann.ID, ann, "kicked")
	r.eventually(func() bool { return r.dead(ann) != "" })
	r.api.Membership(ann.ID, ann, "member")
	r.eventually(func() bool { return r.dead(ann) == "" })
	r.nudge("back", schedule.Danger)
	r.find(ann, "Fill the feeder")
}

func (r *rig) dead(p botapitest.Person) (why string) {
	r.read(func(tx *store.Tx) error {
		c, _, err := tx.FindChat(transport, id(p.ID))
		why = c.Dead
		return err
	})
	return why
}

// A chat that is flooded, or whose calls hang, delays no other.
func TestOneChatDelaysNoOther(t *testing.T) {
	slow := quick
	slow.ChatPerSecond = 1.0 / 3600
	r := newFarm(t, slow)
	r.write(func(tx *store.Tx) error { // somebody else's herd
		herd, err := tx.CreateHerd("Stony Bank", "UTC", time.Now())
		if err != nil {
			return err
		}
		person, err := tx.CreatePerson("Cal")
		if err != nil {
			return err
		}
		if err := tx.Join(herd, person, store.Owner); err != nil {
			return err
		}
		c, err := tx.ChatOf(transport, id(cal.ID), false)
		if err != nil {
			return err
		}
		c.Herd, c.Person = herd, person
		if err := tx.SaveChat(c); err != nil {
			return err
		}
		r.api.Fail("sendMessage", botapitest.Fault{Delay: botapitest.Hangs, Chat: cal.ID})
		for i := range 100 {
			if err := r.bot.Desk.Queue(tx, messageIn(c, fmt.Sprint("x", i)), outcomeOf("an answer")); err != nil {
				return err
			}
		}
		return nil
	})
	r.eventually(func() bool { return len(r.api.Calls("sendMessage")) > 1 })
	r.nudge("danger", schedule.Danger)
	r.find(ann, "Fill the feeder")
	require.Empty(t, r.api.Messages(cal.ID), "that call hangs still")
}

func TestPaceOfAChat(t *testing.T) {
	p := newPace(Config{}.withDefaults().Limits)
	now := time.Date(2026, 5, 16, 7, 0, 0, 0, time.UTC)
	sent := func(chat store.ChatID, group bool, span time.Duration) int {
		n := 0
		for at := now; at.Before(now.Add(span)); at = at.Add(100 * time.Millisecond) {
			if open, _ := p.open(at); open > 0 && p.take(at, chat, group) == 0 {
				n++
			}
		}
		return n
	}
	require.InDelta(t, chatBurst+60, sent(1, false, time.Minute), 1)
	now = now.Add(time.Hour)
	require.InDelta(t, groupBurst+20, sent(2, true, time.Minute), 1)

	now = now.Add(time.Hour)
	n, waits := 0, 0
	for chat := store.ChatID(10); chat < 1010; chat++ { // a morning's round
		open, wait := p.open(now)
		for open == 0 {
			waits++
			now = now.Add(wait + time.Millisecond)
			open, wait = p.open(now)
		}
		require.Zero(t, p.take(now, chat, false))
		n++
	}
	require.Equal(t, 1000, n)
	require.InDelta(t, (1000-25)/25.0, float64(waits)/25, 2, "25 a second after the first")
}

// A nudge that was held up and settled meanwhile does not go out; one that is
// due still does.
func TestNudgeThatWaitedIsLookedAtAgain(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Status: 500, Description: "Internal Server Error"})
	r.nudge("settled long ago", schedule.Routine)
	r.settled()
	require.Len(t, r.api.Messages(ann.ID), 1)
	require.Len(t, r.api.Calls("sendMessage"), 2)
}

// A nudge that reached nobody in time was not told: its herd is looked at again.
func TestNudgeThatReachedNobody(t *testing.T) {
	r := newFarm(t, quick)
	now := r.bot.Now()
	queue := func(key string) {
		r.write(func(tx *store.Tx) error {
			chat, _, err := tx.FindChat(transport, id(ann.ID))
			if err != nil {
				return err
			}
			e := store.Envelope{Herd: chat.Herd, On: model.DayOf(now), At: now, Fact: model.Told{Key: key}, Text: key}
			if err := tx.Append(&e); err != nil {
				return err
			}
			if err := tx.SetLookAgain(chat.Herd, now.Add(time.Hour)); err != nil {
				return err
			}
			return r.bot.Desk.QueuePushes(tx, chat.Herd, []bot.Push{{
				Nudge: schedule.Nudge{Key: key, GoodUntil: now.Add(-time.Minute)}, At: now, Text: "Too late.",
			}})
		})
		r.settled()
	}
	look := func() (at time.Time) {
		r.read(func(tx *store.Tx) error {
			row, err := tx.Herd(1)
			at = row.LookAgain
			return err
		})
		return at
	}
	queue("late")
	require.Equal(t, []string{"void"}, r.kinds()[""])
	require.False(t, look().After(r.bot.Now()))
	queue("late") // and late again: that is not to go on for ever
	require.Equal(t, []string{"void"}, r.kinds()[""])
	require.True(t, look().After(r.bot.Now()))
	require.Len(t, r.api.Messages(ann.ID), 1)
}

// A call that hangs does not hold up the end, and its message goes out after the
// next start.
func TestStopWithACallUnderWay(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Delay: botapitest.Hangs})
	id := r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return len(r.api.Calls("sendMessage")) == 2 })
	began := time.Now()
	r.close()
	require.Less(t, time.Since(began), 2*time.Second)
	r.open()
	r.start(quick)
	require.Contains(t, r.answerTo(ann.ID, id).Text, "20")
	require.Equal(t, []string{"spend"}, r.kinds()["spent 20 straw"])
}

// While the database is held by another program the message waits, the log says
// so once, and all goes on by itself.
func TestDatabaseThatCannotBeWritten(t *testing.T) {
	t.Parallel() // the store waits some seconds for a lock
	r := newFarm(t, quick)
	other, err := sql.Open("sqlite", r.path)
	require.NoError(t, err)
	defer func() { require.NoError(t, other.Close()) }()
	hold, err := other.Conn(context.Background())
	require.NoError(t, err)
	require.Eventually(t, func() bool { // the bot may be writing just now
		_, err = hold.ExecContext(context.Background(), "BEGIN IMMEDIATE")
		return err == nil
	}, 20*time.Second, 5*time.Millisecond, "the database is never free")
	id := r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return strings.Contains(r.log.String(), theDatabase+" fails") })
	require.Equal(t, 1, r.api.Pending(), "what cannot be kept is not confirmed")
	_, err = hold.ExecContext(context.Background(), "ROLLBACK")
	require.NoError(t, err)
	require.NoError(t, hold.Close())
	require.Contains(t, r.answerTo(ann.ID, id).Text, "20")
	r.eventually(func() bool { return strings.Contains(r.log.String(), theDatabase+" works again") })
	require.Equal(t, 1, strings.Count(r.log.String(), theDatabase+" fails"))
	require.Empty(t, r.fatal)
}
