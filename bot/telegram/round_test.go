package telegram

import (
	"database/sql"
	"log/slog"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// Messages share a transaction, but not a fault: what one of them did is undone,
// and the others are recorded and answered, in their order.
func TestFaultInARound(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	st, err := store.Open(t.Context(), path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	edge := New(Config{Store: st, Desk: bot.NewDesk(), Log: slog.New(slog.DiscardHandler)})
	var code string
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) (err error) {
		code, err = edge.PairCode(tx)
		return err
	}))
	db, err := sql.Open("sqlite", "file:"+path+"?_busy_timeout=5000")
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	_, err = db.Exec("CREATE TRIGGER stumble BEFORE INSERT ON outgoing WHEN new.key LIKE 'reply:%' AND new.reply_to = '2'" +
		" BEGIN SELECT raise(ABORT, 'no'); END")
	require.NoError(t, err)
	receive(t, edge, []string{code, "spent 21 straw", "spent 22 straw", "spent 23 straw", "spent 24 straw"})
	more, err := edge.answerSome(roundMessages)
	require.NoError(t, err)
	for more { // the machine may be too busy for all to share one
		more, err = edge.answerSome(roundMessages)
		require.NoError(t, err)
	}
	require.NoError(t, st.Read(t.Context(), func(tx *store.Tx) error {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		var said []string
		for _, e := range all {
			if e.Fact.Kind() == "spend" {
				said = append(said, e.Text)
			}
		}
		require.Equal(t, []string{"spent 21 straw", "spent 23 straw", "spent 24 straw"}, said)
		for message, want := range map[string]string{"1": "21", "2": wording.Fault(), "3": "23", "4": "24"} {
			answers, err := tx.AnswersTo(1, message)
			require.NoError(t, err)
			require.Len(t, answers, 1)
			require.Contains(t, answers[0].Text, want)
		}
		return nil
	}))
}
