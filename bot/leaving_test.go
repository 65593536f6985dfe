package bot_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// Before a herd is deleted it is said what waits to be sent and which copies of it
// lie where the program runs; and again what is left of it afterwards.
func TestCopiesAreNamed(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	st, err := store.Open(t.Context(), path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	copies, err := store.CopiesOf(path, "")
	require.NoError(t, err)
	desk := bot.NewDesk()
	desk.Copies = copies.All
	now := time.Date(2026, 11, 28, 18, 0, 0, 0, time.UTC)
	m := bot.Message{At: now, From: store.Member{Role: store.Owner}}
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) (err error) {
		if m.Herd, err = tx.CreateHerd("Long Acre", "UTC", now); err != nil {
			return err
		}
		if m.From.Person, err = tx.CreatePerson("Ann"); err != nil {
			return err
		}
		if err := tx.Join(m.Herd, m.From.Person, store.Owner); err != nil {
			return err
		}
		c, err := tx.ChatOf("telegram", "4711", false)
		if err != nil {
			return err
		}
		m.Chat, c.Herd, c.Person = c.ID, m.Herd, m.From.Person
		return tx.SaveChat(c)
	}))
	say := func(text string) (out bot.Outcome) {
		m.ID, m.Text = text, text
		require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) (err error) {
			if out, err = desk.Handle(tx, m); err != nil || out.Gone != "" {
				return err
			}
			return desk.Queue(tx, m, out)
		}))
		return out
	}
	require.Contains(t, say("delete this herd").Replies[0].Text, "I know of no copy")
	say("note: it rained")
	say("export")
	for day := range 3 {
		_, err := copies.Make(t.Context(), st, now.AddDate(0, 0, day-2))
		require.NoError(t, err)
	}
	require.NoError(t, os.WriteFile(path+".schema-2", nil, 0o600))
	named := "Copies of it stay where I run: herd.db.schema-2 and 3 daily copies in the folder backups, the latest of Sat Nov 28, gone within 8 weeks."
	asked := say("delete this herd").Replies[0].Text
	for _, part := range []string{named, "3 files not sent yet", "1 person (Ann)", "1 record since Sat Nov 28"} {
		require.Contains(t, asked, part)
	}
	out := say("Long Acre")
	require.Equal(t, bot.HerdGone, out.Gone)
	require.Len(t, out.Farewells, 1)
	require.Contains(t, out.Farewells[0].Text, named)
	require.Equal(t, fmt.Sprint(m.Chat), fmt.Sprint(out.Farewells[0].Chat.ID))
}
