package telegram

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/store"
)

// answerAnew has a version of a message of Ann's answered.
func (r *rig) answerAnew(message string, version int64, text string) {
	r.t.Helper()
	r.write(func(tx *store.Tx) error {
		c, _, err := tx.FindChat(transport, id(ann.ID))
		if err != nil {
			return err
		}
		m := messageIn(c, message)
		m.Edit, m.Version = version > 0, version
		return r.bot.Desk.Queue(tx, m, outcomeOf(text))
	})
	r.settled()
}

// texts lists what stands in the chat as the answers to a message.
func (r *rig) texts(message int64) (out []string) {
	for _, m := range r.answersTo(ann.ID, message) {
		out = append(out, m.Text)
	}
	return out
}

// An answer that took several messages and now takes fewer leaves none over; one
// that takes more again gets new ones. What cannot be taken away says so.
func TestEditThatShortensTheAnswer(t *testing.T) {
	r := newFarm(t, quick)
	page := strings.Repeat("x", 3990)
	long := func(a, b, c string) string { return a + page + "\n" + b + page + "\n" + c + page }
	r.answerAnew("77", 0, long("a", "b", "c"))
	require.Len(t, r.texts(77), 3)
	r.answerAnew("77", 1, "Short.")
	require.Equal(t, []string{"Short."}, r.texts(77))
	r.answerAnew("77", 2, "Shorter.")
	require.Equal(t, []string{"Shorter."}, r.texts(77))
	require.Len(t, r.api.Calls("deleteMessage"), 2, "each is taken away once")
	r.answerAnew("77", 3, long("d", "e", "f"))
	require.Equal(t, []string{"d" + page, "e" + page, "f" + page}, r.texts(77))

	r.api.Fail("deleteMessage",
		botapitest.Fault{Status: 400, Description: "Bad Request: message can't be deleted for everyone"},
		botapitest.Fault{Status: 400, Description: "Bad Request: message to delete not found"})
	r.answerAnew("77", 4, "Short.")
	require.Equal(t, []string{"Short.", wording.Above(), "f" + page}, r.texts(77))
	r.answerAnew("77", 5, "g"+page+"\nh"+page)
	require.Equal(t, []string{"g" + page, "h" + page}, r.texts(77)[:2], "what stands there is put to use")
	require.NotContains(t, r.log.String(), "level=ERROR")
}

// The same text once more, as when Telegram adds a preview, does not take the
// answer away that is on its way.
func TestSameTextBeforeTheAnswerWasSent(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1})
	id := r.api.Say(ann, "spent 20 straw")
	r.eventually(func() bool { return len(r.api.Calls("sendMessage")) == 2 && r.underWay() == 0 })
	r.api.Edit(ann.ID, ann, id, "spent 20 straw")
	require.Contains(t, r.answerTo(ann.ID, id).Text, "20")
	r.settled()
	require.Len(t, r.answersTo(ann.ID, id), 1)
}

// An edit takes back what was recorded by answering the question that the text
// raised, too: it is one fact.
func TestEditOfATextWhoseQuestionWasAnswered(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 45 lb each. target 270 lb, chores saturday 7 am, eastern time")
	id := r.api.Say(ann, "gus 47.5 girth")
	question := r.answerTo(ann.ID, id)
	require.NotEmpty(t, question.Buttons, question.Text)
	label := question.Buttons[len(question.Buttons)-1].Label
	r.api.Press(ann, question.ID, label)
	r.eventually(func() bool { return len(r.kinds()[label]) > 0 })
	require.Contains(t, r.kinds()[label], "weigh")
	r.api.Edit(ann.ID, ann, id, "gus 22 girth")
	r.eventually(func() bool { return len(r.kinds()["gus 22 girth"]) > 0 })
	r.settled()
	require.Equal(t, []string{"void", "weigh"}, sorted(r.kinds()["gus 22 girth"]))
	got := r.message(ann.ID, question.ID)
	require.Contains(t, got.Text, "Gus girth 22 in")
	require.Empty(t, got.Buttons)
}
