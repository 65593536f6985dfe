package telegram

import (
	"encoding/json"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// What each household's next plain text leads to is worked out ahead, and nothing of
// who is not let in, of commands, nor of what follows in the same chat. Whether it was
// or not, each text is recorded once, in the order of its chat.
func TestLookAhead(t *testing.T) {
	edge, _, code := idle(t)
	require.NoError(t, edge.keep(t.Context(), []json.RawMessage{rawText(1, 101, "Ann", code)}))
	for i := range 3 { // of the same household: 102, 103, 104
		require.NoError(t, edge.Store.Write(t.Context(), func(tx *store.Tx) error {
			p, err := tx.CreatePerson(fmt.Sprint("Ben ", i))
			require.NoError(t, err)
			require.NoError(t, tx.Join(1, p, store.Family))
			c, err := tx.ChatOf(transport, fmt.Sprint(102+i), false)
			require.NoError(t, err)
			c.Herd, c.Person = 1, p
			return tx.SaveChat(c)
		}))
	}
	raws := []json.RawMessage{
		rawText(2, 101, "Ann", "spent 20 straw"),
		rawText(3, 102, "Ben", "spent 21 straw"),
		rawText(4, 102, "Ben", "spent 22 straw"),
		rawText(5, 103, "Ben", "/herd"),
		rawText(6, 999, "Eve", "spent 23 straw"),
		rawText(7, 104, "Ben", "spent 24 straw"),
		json.RawMessage(`{"update_id":8}`),
		json.RawMessage(`{"update_id":9,"edited_message":[]}`),
		rawText(10, 101, "Ann", "spent 25 straw"),
	}
	a := edge.lookAhead(t.Context(), raws)
	edge.wg.Wait()
	var foreseen []int
	for i := range raws {
		if a.of(i).f != nil {
			foreseen = append(foreseen, i)
		}
	}
	require.Equal(t, []int{1, 5, 8}, foreseen)
	for i := 0; i < len(raws); {
		n, err := edge.keepSome(t.Context(), raws[i:], roundSpan, a)
		require.NoError(t, err)
		a.handled(n)
		i += n
	}
	require.Equal(t, []string{"spent 20 straw", "spent 21 straw", "spent 22 straw", "spent 24 straw", "spent 25 straw"}, spends(t, edge))
}
