package bot_test

import (
	"context"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/store"
)

// book is a herd in a real database with a person to text to it.
type book struct {
	store  *store.Store
	desk   *bot.Desk
	herd   store.HerdID
	chat   store.ChatID
	person store.Member
	zone   *time.Location
	now    time.Time
	n      int
}

func openBook(tb testing.TB, o store.Options) *book {
	tb.Helper()
	ctx := context.Background()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(tb, err)
	st, err := store.Open(ctx, filepath.Join(tb.TempDir(), "herd.db"), o)
	require.NoError(tb, err)
	tb.Cleanup(func() { require.NoError(tb, st.Close()) })
	b := &book{store: st, desk: bot.NewDesk(), zone: zone, now: time.Date(2026, 5, 16, 8, 10, 0, 0, zone)}
	require.NoError(tb, st.Write(ctx, func(tx *store.Tx) error {
		if b.herd, err = tx.CreateHerd("", zone.String(), b.now); err != nil {
			return err
		}
		id, err := tx.CreatePerson("Ann")
		if err != nil {
			return err
		}
		if err := tx.Join(b.herd, id, store.Owner); err != nil {
			return err
		}
		c, err := tx.ChatOf("terminal", "1", false)
		if err != nil {
			return err
		}
		c.Herd, c.Person = b.herd, id
		b.chat = c.ID
		if err := tx.SaveChat(c); err != nil {
			return err
		}
		b.person, _, err = tx.Member(b.herd, id)
		return err
	}))
	return b
}

// text says one text, with its record and its answer in one transaction.
func (b *book) text(tb testing.TB, text string) bot.Outcome {
	tb.Helper()
	b.n++
	return b.message(tb, bot.Message{ID: fmt.Sprint(b.n), Text: text})
}

// message says one message a minute after the last; what it leaves out is that
// of the book.
func (b *book) message(tb testing.TB, m bot.Message) bot.Outcome {
	tb.Helper()
	b.now = b.now.Add(time.Minute)
	m.Herd, m.Chat, m.At = b.herd, b.chat, b.now
	if m.From.Person == 0 {
		m.From = b.person
	}
	var out bot.Outcome
	err := b.store.Write(context.Background(), func(tx *store.Tx) error {
		var err error
		if out, err = b.desk.Handle(tx, m); err != nil {
			return err
		}
		return b.desk.Queue(tx, m, out)
	})
	require.NoError(tb, err)
	return out
}

const setUp = "4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. One feeder, red hopper, holds 200 lb. " +
	"Two water barrels, shed and oak, 55 gal each. Target 270 lb, chores saturday 7 am, central time, US units."

// member makes a further person of the herd.
func (b *book) member(tb testing.TB, name string, role store.Role) store.Member {
	tb.Helper()
	var m store.Member
	require.NoError(tb, b.store.Write(context.Background(), func(tx *store.Tx) error {
		id, err := tx.CreatePerson(name)
		if err != nil {
			return err
		}
		if err := tx.Join(b.herd, id, role); err != nil {
			return err
		}
		m, _, err = tx.Member(b.herd, id)
		return err
	}))
	return m
}

// state is the herd as it stands.
func (b *book) state(tb testing.TB) *model.Herd {
	tb.Helper()
	var h *model.Herd
	require.NoError(tb, b.store.Read(context.Background(), func(tx *store.Tx) error {
		s, err := b.desk.State(tx, b.herd)
		if err == nil {
			h = s.Herd
		}
		return err
	}))
	return h
}

// said is the words of an outcome.
func said(o bot.Outcome) string {
	var out string
	for i, r := range o.Replies {
		if i > 0 {
			out += "\n"
		}
		out += r.Text
	}
	return out
}
