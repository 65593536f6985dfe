package telegram

import (
	"context"
	"database/sql"
	"encoding/json"
	"fmt"
	"log/slog"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
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

// BenchmarkPoll sets what a text costs where many come at once: polls of a hundred,
// from a thousand households in turn, each with a summer behind it.
func BenchmarkPoll(b *testing.B) {
	const households, texts = 1000, 100
	st, err := store.Open(b.Context(), filepath.Join(b.TempDir(), "herds.db"), store.Options{})
	require.NoError(b, err)
	b.Cleanup(func() { require.NoError(b, st.Close()) })
	now := time.Now()
	for n := range households {
		require.NoError(b, st.Write(b.Context(), func(tx *store.Tx) error { return settle(tx, 1001+n, now) }))
	}
	edge := New(Config{Store: st, Desk: bot.NewDesk(), Log: slog.New(slog.DiscardHandler)})
	said := []string{"fence 5.%d", "spent %d straw", "Dot 38 girth and fence 6.%d", "barrel full, fence 7.%d", "note: gate %d sags"}
	update := 0
	poll := func() []json.RawMessage {
		raws := make([]json.RawMessage, texts)
		for i := range raws {
			update++
			raws[i] = fmt.Appendf(nil, `{"update_id":%[1]d,"message":{"message_id":%[1]d,"date":%[2]d,"text":%[3]q,`+
				`"chat":{"id":%[4]d,"type":"private","first_name":"Ann"},"from":{"id":%[4]d,"first_name":"Ann"}}}`,
				update, now.Add(time.Duration(update/households)*time.Minute).Unix(), fmt.Sprintf(said[update/households%len(said)], 10+update/households), 1001+update%households)
		}
		return raws
	}
	for range households / texts { // each has spoken once
		require.NoError(b, edge.keep(b.Context(), poll()))
	}
	b.ReportAllocs()
	for b.Loop() {
		require.NoError(b, edge.keep(b.Context(), poll()))
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*texts), "ns/text")
}

// settle takes in a household with some records.
func settle(tx *store.Tx, external int, now time.Time) error {
	const zone = "America/New_York"
	herd, err := tx.CreateHerd("herd", zone, now)
	if err != nil {
		return err
	}
	person, err := tx.CreatePerson("Ann")
	if err != nil {
		return err
	}
	if err := tx.Join(herd, person, store.Owner); err != nil {
		return err
	}
	chat, err := tx.ChatOf(transport, fmt.Sprint(external), false)
	if err != nil {
		return err
	}
	chat.Herd, chat.Person = herd, person
	if err := tx.SaveChat(chat); err != nil {
		return err
	}
	facts := []model.Fact{
		model.Setting{Key: model.SetUnits, Text: model.US},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: model.Float(130)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "barrel", CapacityL: model.Float(208)}},
		model.Arrive{Count: 2, Animals: []string{"Dot", "Rufus"}, WeightKg: model.Float(22)},
	}
	for week := range 6 {
		facts = append(facts, model.Refill{FeedKg: model.Float(40 + 6*float64(week)), Full: true}, model.Water{Full: true},
			model.Fence{Kv: 5.8}, model.Weigh{Animals: []string{"Dot"}, GirthCm: 70 + 4*float64(week)})
	}
	for i, f := range facts {
		at := now.AddDate(0, 0, -50).Add(time.Duration(i/4) * 7 * 24 * time.Hour)
		if err := tx.Append(&store.Envelope{Herd: herd, On: model.DayOf(at), At: at, By: person, ByName: "Ann", Judged: "certain", Fact: f}); err != nil {
			return err
		}
	}
	return nil
}
