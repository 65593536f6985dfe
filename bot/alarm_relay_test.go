package bot_test

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// Who texts an emergency reads the card; the other chats of the herd hear of it in the
// same moment, not at the next nudge.
func TestAnAlarmReachesTheOthersAtOnce(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	var other store.ChatID
	require.NoError(t, b.store.Write(context.Background(), func(tx *store.Tx) error {
		c, err := tx.ChatOf("telegram", "4712", false)
		if err != nil {
			return err
		}
		c.Herd, other = b.herd, c.ID
		return tx.SaveChat(c)
	}))
	heard := func() (o store.Outgoing, ok bool) {
		require.NoError(t, b.store.Read(context.Background(), func(tx *store.Tx) (err error) {
			o, ok, err = tx.NextTo(other)
			return err
		}))
		return o, ok
	}
	b.text(t, "filled 150, full")
	_, told := heard()
	require.False(t, told)
	b.text(t, "PIGS OUT")
	got, told := heard()
	require.True(t, told)
	require.False(t, got.Quiet)
	require.True(t, strings.HasPrefix(got.Text, "\u26a0 Pigs out, reported today 8:13 am"), got.Text)
	require.True(t, strings.HasSuffix(got.Text, "Told by Ann."), got.Text)
	require.NoError(t, b.store.Write(context.Background(), func(tx *store.Tx) error {
		got.State = store.Dropped
		return tx.SaveOutgoing(got)
	}))
	b.text(t, "pigs are back in")
	_, told = heard()
	require.False(t, told)
}
