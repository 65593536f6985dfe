package telegram

import (
	"database/sql"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/store"
)

func TestWhatIsNoText(t *testing.T) {
	r := newFarm(t, quick)
	for _, tt := range []struct {
		fields map[string]any
		says   string
	}{
		{map[string]any{"voice": map[string]any{"file_id": "x", "duration": 3}}, "not listen"},
		{map[string]any{"photo": []any{map[string]any{"file_id": "x"}}}, "not pictures"},
		{map[string]any{"video": map[string]any{"file_id": "x"}}, "not videos"},
		{map[string]any{"document": map[string]any{"file_id": "x"}}, "not files"},
		{map[string]any{"sticker": map[string]any{"file_id": "x"}}, "only read text"},
		{map[string]any{"contact": map[string]any{"phone_number": "1", "first_name": "x"}}, "only read text"},
	} {
		got := r.answerTo(ann.ID, r.api.Send(ann.ID, ann, tt.fields))
		require.Contains(t, got.Text, tt.says)
		require.NotContains(t, got.Text, "\n", "one sentence")
	}
}

func TestCaptionsAreRead(t *testing.T) {
	r := newFarm(t, quick)
	got := r.answerTo(ann.ID, r.api.Send(ann.ID, ann, map[string]any{"photo": []any{map[string]any{"file_id": "x"}}, "caption": "spent 20 straw"}))
	require.Contains(t, got.Text, "Spent $20 on straw")
}

// A shared position is made coarse before anything of it is kept.
func TestASharedPositionIsKeptCoarsely(t *testing.T) {
	r := newFarm(t, quick)
	got := r.answerTo(ann.ID, r.api.Send(ann.ID, ann, map[string]any{
		"location": map[string]any{"latitude": 44.314159, "longitude": -89.951413, "horizontal_accuracy": 12.5},
		"venue":    map[string]any{"title": "Home", "address": "12 Lane", "location": map[string]any{"latitude": 44.314159, "longitude": -89.951413}},
	}))
	require.Contains(t, got.Text, "Location 44.3, -90.0")
	for _, file := range []string{r.path, r.path + "-wal"} {
		kept, err := os.ReadFile(file)
		require.NoError(t, err)
		for _, fine := range []string{"44.31", "89.95", "horizontal", "12 Lane"} {
			require.NotContains(t, string(kept), fine)
		}
	}
}

func TestAnswersAreSilentAndQuoteTheText(t *testing.T) {
	r := newFarm(t, quick)
	got := r.ask(ann, "spent 20 straw")
	require.True(t, got.Silent)
	require.Contains(t, got.Text, "20")
}

func TestUpdatesThatComeTwice(t *testing.T) {
	r := newFarm(t, quick)
	id := r.api.Say(ann, "spent 20 straw")
	r.api.Repeat()
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	r.api.Repeat()
	r.ask(ann, "help")
	require.Len(t, r.answersTo(ann.ID, id), 1)
	require.Equal(t, []string{"spend"}, r.kinds()["spent 20 straw"])
	require.Equal(t, []string{"spend", "void"}, sorted(r.kinds()["spent 21 straw"]))
}

func sorted(s []string) []string { slices.Sort(s); return s }

// A version of a message that comes in after a later one counts for nothing.
func TestVersionsThatComeInTheWrongOrder(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Hold()
	id := r.api.Say(ann, "spent 20 straw")
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	now := r.now()
	r.api.SetClock(func() time.Time { return now.Add(2 * time.Second) })
	r.api.Edit(ann.ID, ann, id, "spent 22 straw")
	r.api.Release(2, 0, 1)
	r.ask(ann, "help")
	require.Equal(t, []string{"spend"}, r.kinds()["spent 22 straw"])
	require.Empty(t, r.kinds()["spent 20 straw"])
	require.Empty(t, r.kinds()["spent 21 straw"])
	answers := r.answersTo(ann.ID, id)
	require.Len(t, answers, 1)
	require.Contains(t, answers[0].Text, "22")
}

// The ids of updates start lower after a week of silence: none is dropped.
func TestUpdateIDsRestartLower(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "spent 20 straw")
	r.settled() // ids restart where nothing waits to be confirmed
	r.api.RestartIDs(3)
	r.ask(ann, "spent 21 straw")
	r.ask(ann, "spent 22 straw")
	r.read(func(tx *store.Tx) error {
		offset, err := tx.Value(valueOffset)
		require.Equal(t, "5", offset)
		return err
	})
}

func TestEditChangesTheAnswer(t *testing.T) {
	r := newFarm(t, quick)
	id := r.api.Say(ann, "spent 20 straw")
	first := r.answerTo(ann.ID, id)
	count := len(r.api.Messages(ann.ID))
	for i, text := range []string{"spent 21 straw", "spent 22 straw", "how much did I spend?", "never mind"} {
		r.api.Edit(ann.ID, ann, id, text) // within a second: edit dates have no finer
		r.eventually(func() bool { return r.message(ann.ID, first.ID).Edits == i+1 })
	}
	r.settled()
	require.Len(t, r.api.Messages(ann.ID), count, "no second message")
	require.NotContains(t, r.message(ann.ID, first.ID).Text, "22", "what is taken back is not claimed")
	kinds := r.kinds()
	require.Equal(t, []string{"spend", "void"}, sorted(kinds["spent 22 straw"]))
	require.Equal(t, []string{"void"}, kinds["how much did I spend?"])

	// The same text again, as when Telegram adds a preview, is no news.
	r.api.Edit(ann.ID, ann, id, "never mind")
	r.ask(ann, "help")
	require.Equal(t, 4, r.message(ann.ID, first.ID).Edits)
}

func (r *rig) message(chat, id int64) botapitest.Message {
	for _, m := range r.api.Messages(chat) {
		if m.ID == id {
			return m
		}
	}
	return botapitest.Message{}
}

// A question asked by mistake is edited into a record: its answer is replaced
// although nothing was kept of it.
func TestEditOfWhatLeftNoRecord(t *testing.T) {
	r := newFarm(t, quick)
	id := r.api.Say(ann, "what does it cost?")
	first := r.answerTo(ann.ID, id)
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	r.eventually(func() bool { return r.message(ann.ID, first.ID).Edits == 1 })
	require.Contains(t, r.message(ann.ID, first.ID).Text, "21")
}

// An edit that overtakes the answer: the person reads the new answer only.
func TestEditBeforeTheAnswerWasSent(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1})
	id := r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return len(r.api.Calls("sendMessage")) == 2 && r.underWay() == 0 })
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	r.eventually(func() bool { return len(r.kinds()["spent 21 straw"]) > 0 })
	got := r.answerTo(ann.ID, id)
	require.Contains(t, got.Text, "21")
	r.settled()
	require.Len(t, r.answersTo(ann.ID, id), 1)
	require.Empty(t, r.api.Calls("editMessageText"))
}

// An edit while the answer is being sent: it is changed once its id is known.
func TestEditWhileTheAnswerIsSent(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Delay: 300 * time.Millisecond})
	id := r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return len(r.api.Calls("sendMessage")) == 2 })
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	r.api.Edit(ann.ID, ann, id, "spent 22 straw")
	r.eventually(func() bool { return len(r.kinds()["spent 22 straw"]) > 0 })
	first := r.answerTo(ann.ID, id)
	r.settled()
	require.Len(t, r.answersTo(ann.ID, id), 1)
	require.Contains(t, r.message(ann.ID, first.ID).Text, "22")
}

// Where the earlier answer cannot be changed any more it is said anew.
func TestEditOfAnAnswerThatIsGone(t *testing.T) {
	r := newFarm(t, quick)
	id := r.api.Say(ann, "spent 20 straw")
	r.answerTo(ann.ID, id)
	r.api.Fail("editMessageText", botapitest.Fault{Status: 400, Description: "Bad Request: message can't be edited"})
	r.api.Edit(ann.ID, ann, id, "spent 21 straw")
	r.eventually(func() bool { return len(r.answersTo(ann.ID, id)) == 2 })
	require.Contains(t, r.answersTo(ann.ID, id)[1].Text, "21")
}

func TestLongAnswersAreSplit(t *testing.T) {
	r := newFarm(t, quick)
	line := strings.Repeat("\U0001F437", 30) + "\n" // a pig's face is two units
	text := strings.Repeat(line, 150)
	r.write(func(tx *store.Tx) error {
		chat, _, err := tx.FindChat(transport, fmt.Sprint(ann.ID))
		if err != nil {
			return err
		}
		return r.bot.Desk.Queue(tx, messageIn(chat, "77"), outcomeOf(text))
	})
	r.eventually(func() bool { return len(r.answersTo(ann.ID, 77)) == 3 })
	var whole []string
	for _, m := range r.answersTo(ann.ID, 77) {
		require.LessOrEqual(t, len(m.Text)/2, 4000) // four bytes of UTF-8 are two units
		whole = append(whole, m.Text)
	}
	require.Equal(t, strings.TrimSpace(text), strings.TrimSpace(strings.Join(whole, "\n")))
}

func TestUpdateThatCannotBeReadStopsNothing(t *testing.T) {
	r := newFarm(t, quick)
	r.write(func(tx *store.Tx) error {
		for i, raw := range []string{`{"message": 7}`, `{}`, `{"message":{"message_id":1,"chat":{"id":101,"type":"private"},"text":"/"}}`} {
			if _, err := tx.Receive(store.Incoming{Key: fmt.Sprint(i), Chat: "101", Raw: []byte(raw)}); err != nil {
				return err
			}
		}
		return nil
	})
	require.Contains(t, r.ask(ann, "spent 20 straw").Text, "20")
}

// A message that the program fails on is set aside and its sender told; the
// next ones are answered.
func TestFaultOfOneMessage(t *testing.T) {
	r := newFarm(t, quick)
	db, err := sql.Open("sqlite", "file:"+r.path+"?_busy_timeout=5000")
	require.NoError(t, err)
	defer func() { require.NoError(t, db.Close()) }()
	var zone string
	require.NoError(t, db.QueryRow("SELECT zone FROM herd").Scan(&zone))
	_, err = db.Exec("UPDATE herd SET zone = 'Mars/Base', seq = seq + 1")
	require.NoError(t, err)
	require.Equal(t, wording.Fault(), r.ask(ann, "spent 20 straw").Text)
	_, err = db.Exec("UPDATE herd SET zone = ?, seq = seq - 1", zone)
	require.NoError(t, err)
	require.Contains(t, r.ask(ann, "spent 21 straw").Text, "21")
	require.Contains(t, r.log.String(), "set aside")
	require.Empty(t, r.kinds()["spent 20 straw"])
}

func TestPanicIsAFaultOfTheMessage(t *testing.T) {
	h := handling{u: update{sender: "1", chat: "1", text: "spent 20 straw"}} // with no store behind it
	require.ErrorContains(t, h.guarded(), "panic")
}
