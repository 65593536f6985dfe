package bot_test

import (
	"context"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
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
	b.now = b.now.Add(time.Minute)
	var out bot.Outcome
	err := b.store.Write(context.Background(), func(tx *store.Tx) error {
		m := bot.Message{Herd: b.herd, Chat: b.chat, From: b.person, ID: fmt.Sprint(b.n), Text: text, At: b.now}
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

// BenchmarkText is one text from reading to the committed record and the queued
// reply, on a real file with synchronous=FULL, for a herd with as many records
// before it. Beside it, the bare cost of such a transaction.
func BenchmarkText(b *testing.B) {
	for _, records := range []int{20, 200} {
		b.Run(fmt.Sprintf("after%d", records), func(b *testing.B) {
			k := openBook(b, store.Options{})
			k.text(b, setUp)
			for i := range records {
				k.text(b, fmt.Sprintf("fence %d.%d", 5+i%3, i%10))
			}
			for b.Loop() {
				k.text(b, "spent 20 straw")
			}
		})
	}
	b.Run("bare", func(b *testing.B) {
		k := openBook(b, store.Options{})
		i := 0
		for b.Loop() {
			i++
			require.NoError(b, k.store.Write(context.Background(), func(tx *store.Tx) error {
				return tx.SetValue("bare", fmt.Sprint(i))
			}))
		}
	})
}
