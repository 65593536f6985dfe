package telegram

import (
	"database/sql"
	"encoding/json"
	"fmt"
	"log/slog"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// idle is a bot that does not run, with the file it keeps and a code that pairs.
func idle(t *testing.T) (edge *Bot, path, code string) {
	path = filepath.Join(t.TempDir(), "herd.db")
	st, err := store.Open(t.Context(), path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	edge = New(Config{Store: st, Desk: bot.NewDesk(), Log: slog.New(slog.DiscardHandler)})
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) (err error) {
		code, err = edge.PairCode(tx)
		return err
	}))
	return edge, path, code
}

// spends lists the texts that recorded what was spent, in the order of the journal.
func spends(t *testing.T, edge *Bot) (said []string) {
	require.NoError(t, edge.Store.Read(t.Context(), func(tx *store.Tx) error {
		all, err := tx.Journal(1)
		require.NoError(t, err)
		for _, e := range all {
			if e.Fact.Kind() == "spend" {
				said = append(said, e.Text)
			}
		}
		return nil
	}))
	return said
}

// Messages share a transaction, but not a fault: what one of them did is undone,
// and the others are recorded and answered, in their order.
func TestFaultInARound(t *testing.T) {
	edge, path, code := idle(t)
	db, err := sql.Open("sqlite", "file:"+path+"?_busy_timeout=5000")
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	_, err = db.Exec("CREATE TRIGGER stumble BEFORE INSERT ON outgoing WHEN new.key LIKE 'reply:%' AND new.reply_to IN ('2', '6')" +
		" BEGIN SELECT raise(ABORT, 'no'); END")
	require.NoError(t, err)
	receive(t, edge, []string{code, "spent 21 straw", "spent 22 straw", "spent 23 straw", "spent 24 straw"})
	for more := true; more; { // the machine may be too busy for all to share one
		more, err = edge.answerSome(roundMessages)
		require.NoError(t, err)
	}
	var raws []json.RawMessage
	for i := range 3 {
		raws = append(raws, rawText(5+i, 101, "Ann", fmt.Sprintf("spent %d straw", 25+i)))
	}
	require.NoError(t, edge.keep(t.Context(), raws))
	require.Equal(t, []string{"spent 21 straw", "spent 23 straw", "spent 24 straw", "spent 25 straw", "spent 27 straw"}, spends(t, edge))
	require.NoError(t, edge.Store.Read(t.Context(), func(tx *store.Tx) error {
		for message, want := range map[string]string{
			"1": "21", "2": wording.Fault(), "3": "23", "4": "24", "5": "25", "6": wording.Fault(), "7": "27",
		} {
			answers, err := tx.AnswersTo(1, message)
			require.NoError(t, err)
			require.Len(t, answers, 1)
			require.Contains(t, answers[0].Text, want)
		}
		return nil
	}))
	var kept string
	require.NoError(t, db.QueryRow("SELECT raw FROM incoming WHERE problem <> '' ORDER BY id DESC LIMIT 1").Scan(&kept))
	require.JSONEq(t, string(raws[1]), kept, "what cannot be handled is kept whole")
}

// What one message of a poll fails by is taken back with all that came with it, and
// the others are handled once more: a stranger among them is told once, and as if
// they had been looked at once.
func TestStrangerBesideAFault(t *testing.T) {
	edge, path, code := idle(t)
	db, err := sql.Open("sqlite", "file:"+path+"?_busy_timeout=5000")
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	_, err = db.Exec("CREATE TRIGGER stumble BEFORE INSERT ON outgoing WHEN new.reply_to = '5' AND new.key LIKE 'reply:%'" +
		" BEGIN SELECT raise(ABORT, 'no'); END")
	require.NoError(t, err)
	now := time.Now()
	edge.Now = func() time.Time { return now } // all share a transaction
	require.NoError(t, edge.keep(t.Context(), []json.RawMessage{rawText(1, 101, "Ann", code)}))
	before := len(edge.asides)
	require.NoError(t, edge.keep(t.Context(), []json.RawMessage{
		rawText(2, 101, "Ann", "spent 22 straw"), rawText(3, 900, "Bob", "hello"), rawText(4, 901, "Eve", "/start wrong"),
		rawText(5, 101, "Ann", "spent 25 straw"), rawText(6, 101, "Ann", "spent 26 straw"),
	}))
	require.Equal(t, []string{"spent 22 straw", "spent 26 straw"}, spends(t, edge))
	require.Len(t, edge.asides, before+2)
	require.Equal(t, 1, edge.strangers.tries["901"])
	for _, sender := range []string{"900", "901"} {
		require.InDelta(t, strangerBurst-1, edge.strangers.each[sender].TokensAt(now), 1e-9)
	}
}

// What waits in the inbox goes before what a poll brings.
func TestWhatWaitsGoesFirst(t *testing.T) {
	edge, _, code := idle(t)
	receive(t, edge, []string{code, "spent 20 straw", "spent 21 straw"})
	want := []string{"spent 20 straw", "spent 21 straw"}
	var raws []json.RawMessage
	for i := range 40 {
		want = append(want, fmt.Sprintf("spent %d straw", 22+i))
		raws = append(raws, rawText(100+i, 101, "Ann", want[len(want)-1]))
	}
	require.NoError(t, edge.keep(t.Context(), raws))
	require.Equal(t, want, spends(t, edge))
}

// What a poll brought is asked for again until all of it is committed: ids that begin
// anew in the middle of it lie below those before them.
func TestOffsetOfAHalfKeptPoll(t *testing.T) {
	edge, _, code := idle(t)
	require.NoError(t, edge.keep(t.Context(), []json.RawMessage{rawText(1, 101, "Ann", code)}))
	offset := func() (v string) {
		require.NoError(t, edge.Store.Read(t.Context(), func(tx *store.Tx) (err error) {
			v, err = tx.Value(valueOffset)
			return err
		}))
		return v
	}
	require.Equal(t, "2", offset())
	now := time.Now()
	edge.Now = func() time.Time { // each text takes all the time there is
		now = now.Add(roundSpan)
		return now
	}
	raws := []json.RawMessage{rawText(900, 101, "Ann", "spent 20 straw"), rawText(5, 101, "Ann", "spent 21 straw")}
	n, err := edge.keepSome(t.Context(), raws, roundSpan, &ahead{sights: make([]sight, len(raws))})
	require.NoError(t, err)
	require.Equal(t, 1, n)
	require.Equal(t, "2", offset())
	require.NoError(t, edge.keep(t.Context(), raws)) // after an end in between
	require.Equal(t, "6", offset())
	require.Equal(t, []string{"spent 20 straw", "spent 21 straw"}, spends(t, edge))
}

// What a poll brought is handled in rounds of five milliseconds, or of twenty where it
// brought as much as it can.
func TestRoundsOfAFullPollAreLong(t *testing.T) {
	for _, tt := range []struct {
		brought int
		span    time.Duration
	}{{pollMost - 1, roundSpan}, {pollMost, longSpan}} {
		edge, _, code := idle(t)
		require.NoError(t, edge.keep(t.Context(), []json.RawMessage{rawText(1, 101, "Ann", code)}))
		now := time.Now()
		asked := 0
		edge.Now = func() time.Time { // it is asked for at least once a text
			asked++
			now = now.Add(time.Millisecond / 2)
			return now
		}
		raws := make([]json.RawMessage, tt.brought)
		for i := range raws {
			raws[i] = rawText(100+i, 101, "Ann", fmt.Sprintf("spent %d straw", i+20))
		}
		var rounds int
		edge.Store.OnQueued(func(waiting []store.Waiting) { rounds++ })
		require.NoError(t, edge.keep(t.Context(), raws))
		want := float64(asked) * 0.5 / float64(tt.span.Milliseconds())
		require.InDelta(t, want, rounds, want/3+1)
		require.Len(t, spends(t, edge), tt.brought)
	}
}
