package terminal_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// A herd deleted in the terminal is gone, the chat ends with the last word, and
// texts behind it are not passed over in silence. Chats on Telegram, which cannot
// be told from here, are counted.
func TestHerdDeletedInTheTerminal(t *testing.T) {
	st, id := herd(t)
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) error {
		c, err := tx.ChatOf("telegram", "4711", false)
		if err != nil {
			return err
		}
		if c.Person, err = tx.CreatePerson("Bea"); err != nil {
			return err
		}
		if err := tx.Join(id, c.Person, store.Family); err != nil {
			return err
		}
		c.Herd = id
		return tx.SaveChat(c)
	}))
	chat := open(t, st, id, &clock{at: friday})
	var out screen
	err := chat.Run(t.Context(), strings.NewReader(setUp+"the herd is called Long Acre\ndelete this herd\nlong acre\nfed 50 lb\n"), &out)
	require.ErrorContains(t, err, "not kept (1)")
	said := out.String()
	require.Contains(t, said, "2 people (Bea and who sits at the terminal)")
	require.Contains(t, said, "Deleted: Long Acre")
	require.Contains(t, said, "Not told from here: 1 chat on Telegram.")
	require.NotContains(t, said, "Fed 50")
	require.NoError(t, chat.Look(t.Context()), "nothing falls due any more")
	require.NoError(t, st.Read(t.Context(), func(tx *store.Tx) error {
		herds, err := tx.Herds()
		require.Empty(t, herds)
		return err
	}))
}
