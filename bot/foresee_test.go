package bot_test

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// What was foreseen of a message is what it leads to, as long as nothing changed in
// between that it rests on; else it counts for nothing.
func TestForeseen(t *testing.T) {
	for name, between := range map[string]func(b *book, m *bot.Message){
		"":                  func(*book, *bot.Message) {},
		"a record":          func(b *book, _ *bot.Message) { b.text(t, "spent 30 straw") },
		"a question":        func(b *book, _ *bot.Message) { b.text(t, "how heavy are they?") },
		"another text":      func(_ *book, m *bot.Message) { m.Text = "spent 40 straw" },
		"another's":         func(b *book, m *bot.Message) { m.From = b.member(t, "Ben", store.Family) },
		"another's, rights": func(b *book, m *bot.Message) { m.From.Role = store.Helper },
		"another moment":    func(_ *book, m *bot.Message) { m.At = m.At.Add(-24 * time.Hour) },
		"the herd's row": func(b *book, _ *bot.Message) {
			require.NoError(t, b.store.Write(context.Background(), func(tx *store.Tx) error { return tx.SetLookAgain(b.herd, b.now) }))
		},
	} {
		t.Run(name, func(t *testing.T) {
			b := openBook(t, store.Options{Ephemeral: true})
			b.text(t, setUp)
			b.text(t, "Olive 100 lb, spent 20 straw")
			m := bot.Message{
				Herd: b.herd, Chat: b.chat, From: b.person, ID: "foreseen", At: b.now.Add(time.Hour), Text: "spent 25 corn, what did straw cost?",
			}
			require.NoError(t, b.store.Read(context.Background(), func(tx *store.Tx) (err error) {
				m.Foreseen, err = b.desk.Foresee(tx, m)
				return err
			}))
			foreseen := m.Foreseen.Outcome()
			between(b, &m)
			m.Version = 7 // of the inbox, which nobody foresees
			alone := m
			alone.Foreseen = nil
			got := handled(t, b, m)
			require.Equal(t, handled(t, b, alone), got)
			require.NotEmpty(t, got.Replies)
			require.Equal(t, name == "", &foreseen.Replies[0] == &got.Replies[0],
				"it counts only where nothing changed")
		})
	}
}

// handled is what a message leads to, in a transaction that comes to nothing.
func handled(t *testing.T, b *book, m bot.Message) (out bot.Outcome) {
	t.Helper()
	require.ErrorIs(t, b.store.Write(context.Background(), func(tx *store.Tx) (err error) {
		if out, err = b.desk.Handle(tx, m); err != nil {
			return err
		}
		return context.Canceled
	}), context.Canceled)
	b.desk.Forget(b.herd)
	return out
}
