package telegram

import (
	"context"
	"database/sql"
	"fmt"
	"log/slog"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// BenchmarkUpdate sets what one update costs, from the inbox to its record and
// its queued reply on the disk, beside the barest transaction that SQLite can do
// on that disk with the same settings (WAL, synchronous=FULL).
func BenchmarkUpdate(b *testing.B) {
	b.Run("bare_transaction", func(b *testing.B) {
		db, err := sql.Open("sqlite", "file:"+filepath.Join(b.TempDir(), "bare.db")+"?_txlock=immediate&_journal_mode=WAL&_synchronous=FULL")
		require.NoError(b, err)
		defer func() { require.NoError(b, db.Close()) }()
		db.SetMaxOpenConns(1)
		_, err = db.Exec("CREATE TABLE line (id INTEGER PRIMARY KEY, text TEXT) STRICT")
		require.NoError(b, err)
		insert, err := db.Prepare("INSERT INTO line (text) VALUES (?)")
		require.NoError(b, err)
		for b.Loop() {
			tx, err := db.Begin()
			require.NoError(b, err)
			_, err = tx.Stmt(insert).Exec("Dot 38 girth")
			require.NoError(b, err)
			require.NoError(b, tx.Commit())
		}
	})
	b.Run("update_to_reply", func(b *testing.B) {
		var edge *Bot
		for n := 0; b.Loop(); n++ {
			if n%seasonTexts == 0 { // so that the herd stays of a season's size
				b.StopTimer()
				edge = benchEdge(b)
				b.StartTimer()
			}
			more, err := edge.answerSome(1)
			require.NoError(b, err)
			require.True(b, more)
		}
	})
}

// seasonTexts is how many texts the measured herd has behind it, and how many
// more wait in the inbox.
const seasonTexts = 200

// benchEdge is a bot that does not run, with a herd in the middle of its season.
func benchEdge(b testing.TB) *Bot {
	st, err := store.Open(b.Context(), filepath.Join(b.TempDir(), "herd.db"), store.Options{})
	require.NoError(b, err)
	b.Cleanup(func() { require.NoError(b, st.Close()) })
	edge := New(Config{Store: st, Desk: bot.NewDesk(), Log: slog.New(slog.DiscardHandler)})
	var code string
	require.NoError(b, st.Write(b.Context(), func(tx *store.Tx) (err error) {
		code, err = edge.PairCode(tx)
		return err
	}))
	texts := []string{code, "4 pigs came today: Dot, Rufus, Nettle and Gus, 90 lb each. one feeder holds 200 lb. " +
		"two water barrels, 55 gal each. target 270 lb, chores saturday 7 am, US units"}
	for range 2 * seasonTexts {
		texts = append(texts, "spent 12 straw")
	}
	receive(b, edge, texts)
	for range len(texts) - seasonTexts {
		more, err := edge.answerSome(1)
		require.NoError(b, err)
		require.True(b, more)
	}
	return edge
}

// receive puts texts of one person into the inbox.
func receive(b testing.TB, edge *Bot, texts []string) {
	require.NoError(b, edge.Store.Write(context.Background(), func(tx *store.Tx) error {
		for i, text := range texts {
			raw := fmt.Sprintf(`{"message":{"message_id":%d,"date":%d,"text":%q,"chat":{"id":101,"type":"private"},"from":{"id":101,"first_name":"Ann"}}}`,
				i, time.Now().Unix(), text)
			if _, err := tx.Receive(store.Incoming{Key: fmt.Sprint(i), Chat: "101", Raw: []byte(raw), At: time.Now()}); err != nil {
				return err
			}
		}
		return nil
	}))
}
