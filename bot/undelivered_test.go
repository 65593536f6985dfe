package bot_test

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// queue puts what a look gave into the outbox and gives what waits in it.
func (b *book) queue(tb testing.TB, pushes []bot.Push) (waiting []store.Outgoing) {
	tb.Helper()
	require.NoError(tb, b.store.Write(context.Background(), func(tx *store.Tx) error {
		if err := b.desk.QueuePushes(tx, b.herd, pushes); err != nil {
			return err
		}
		var err error
		waiting, err = tx.Untold(b.herd)
		return err
	}))
	return waiting
}

// lookAt looks at the herd at the book's moment, where that is asked for by then.
func (b *book) lookAt(tb testing.TB) (out []bot.Push) {
	tb.Helper()
	require.NoError(tb, b.store.Write(context.Background(), func(tx *store.Tx) error {
		row, err := tx.Herd(b.herd)
		if err != nil || row.LookAgain.After(b.now) {
			return err
		}
		out, err = b.desk.Look(tx, b.herd, b.now, time.Time{})
		return err
	}))
	return out
}

// A nudge that waits while the units are switched is worded anew, once.
func TestNudgesThatWaitTurnUnits(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	b.text(t, "filled 200 lb from empty, full")
	b.now = b.now.AddDate(0, 0, 7)
	waiting := b.queue(t, b.look(t, 7))
	require.Len(t, waiting, 1)
	require.Regexp(t, `pour \d+ lb.*\w{3} May 30\.`, waiting[0].Text)

	b.text(t, "target 280") // another setting leaves it
	require.Equal(t, waiting, b.queue(t, nil))
	b.text(t, "metric units")
	require.Empty(t, b.queue(t, nil))
	anew := b.queue(t, b.lookAt(t))
	require.Len(t, anew, 1)
	require.Equal(t, waiting[0].Told, anew[0].Told)
	require.Regexp(t, `pour \d+ kg.*\w{3} \d+ May\.`, anew[0].Text)
	require.Empty(t, b.lookAt(t))

	b.text(t, "undo") // taken back, the units turn likewise
	require.Empty(t, b.lookAt(t), "worded anew once, not for ever")
}

// A nudge that one chat has got already stays as it was told.
func TestNudgesThatWereToldStay(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	b.text(t, "filled 200 lb from empty, full")
	b.now = b.now.AddDate(0, 0, 7)
	require.NoError(t, b.store.Write(context.Background(), func(tx *store.Tx) error {
		c, err := tx.ChatOf("terminal", "2", false)
		c.Herd, c.Person = b.herd, b.person.Person
		if err != nil {
			return err
		}
		return tx.SaveChat(c)
	}))
	waiting := b.queue(t, b.look(t, 7))
	require.Len(t, waiting, 2)
	require.NoError(t, b.store.Write(context.Background(), func(tx *store.Tx) error {
		waiting[0].State, waiting[0].Sent = store.Sent, "17"
		return tx.SaveOutgoing(waiting[0])
	}))
	b.text(t, "metric units")
	require.Equal(t, waiting[1:], b.queue(t, b.lookAt(t)))
}

// A question that a nudge puts is taken back with it and put again, in the units of
// then.
func TestQuestionsThatWaitTurnUnits(t *testing.T) {
	b, p := askedOfFeed(t)
	require.Len(t, b.queue(t, []bot.Push{p}), 1)
	b.text(t, "metric units")
	anew := b.lookAt(t)
	require.Len(t, anew, 1)
	require.Equal(t, p.Nudge.Key, anew[0].Nudge.Key)
	require.Regexp(t, `\d kg gone`, anew[0].Text)
	require.Len(t, b.state(t).Open(), 1)
}
