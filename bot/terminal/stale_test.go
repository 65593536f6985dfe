package terminal

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// Nudges wait for a terminal that is closed; when it opens, those are shown that
// are worth saying still.
func TestStaleNudgesAreDropped(t *testing.T) {
	st, err := store.Open(t.Context(), filepath.Join(t.TempDir(), "herd.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	defer func() { require.NoError(t, st.Close()) }()
	now := time.Date(2026, 5, 16, 7, 0, 0, 0, time.UTC)
	var out bytes.Buffer
	chat := &Chat{Store: st, Desk: bot.NewDesk(), Now: func() time.Time { return now }}
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) (err error) {
		chat.Herd, err = tx.CreateHerd("Long Acre", "UTC", now)
		return err
	}))
	require.NoError(t, chat.Open(t.Context()))
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) error {
		for _, o := range []store.Outgoing{
			{Key: "1", Text: "fill the feeder last week", Kind: "nudge", Told: "a", GoodUntil: now.AddDate(0, 0, -7)},
			{Key: "2", Text: "fill the feeder today", Kind: "nudge", Told: "b", GoodUntil: now.Add(time.Hour)},
			{Key: "3", Text: "a danger long settled", Kind: "nudge", Told: "c"},
			{Key: "4", Text: "an answer", Kind: "reply"},
		} {
			o.Herd, o.Chat = chat.Herd, chat.chat
			if _, err := tx.Queue(&o); err != nil {
				return err
			}
		}
		return nil
	}))
	require.NoError(t, chat.Run(t.Context(), strings.NewReader("help\n"), &out))
	said := out.String()
	require.NotContains(t, said, "last week")
	require.NotContains(t, said, "long settled")
	require.Contains(t, said, "* fill the feeder today\nan answer\n")
}
