package telegram

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/schedule"
	"troughbell/store"
)

func messageIn(c store.Chat, id string) bot.Message {
	return bot.Message{Herd: c.Herd, Chat: c.ID, ID: id}
}

func outcomeOf(text string) bot.Outcome {
	return bot.Outcome{Replies: []bot.Reply{{Text: text}}}
}

// nudge queues a nudge to all chats of the first herd.
func (r *rig) nudge(key string, grade schedule.Grade) {
	r.t.Helper()
	r.write(func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil {
			return err
		}
		return r.bot.Desk.QueuePushes(tx, herds[0].ID, []bot.Push{{
			Nudge: schedule.Nudge{Key: key, Grade: grade}, At: r.bot.Now(),
			Text: "Fill the feeder today.", Buttons: [][]string{{"Done", "Tomorrow"}, {"Stop this"}},
		}})
	})
}

func (r *rig) pressAnswer(query string) string {
	r.t.Helper()
	var text string
	r.eventually(func() bool {
		for _, c := range r.api.Calls("answerCallbackQuery") {
			if c.Params.Get("callback_query_id") == query {
				text = c.Params.Get("text")
				return true
			}
		}
		return false
	})
	return text
}

func TestNudgeIsSettledInAllChats(t *testing.T) {
	r := newFarm(t, quick)
	r.invite(ben, "invite my wife")
	r.nudge("standing 2026-05-16", schedule.Routine)
	atAnn, atBen := r.find(ann, "Fill the feeder"), r.find(ben, "Fill the feeder")
	require.False(t, atAnn.Silent, "a nudge has a sound")
	require.Len(t, atAnn.Buttons, 3)

	require.Empty(t, r.pressAnswer(r.api.Press(ben, atBen.ID, "Done")))
	for _, m := range []struct {
		p  botapitest.Person
		id int64
	}{{ann, atAnn.ID}, {ben, atBen.ID}} {
		r.eventually(func() bool { return r.message(m.p.ID, m.id).Edits == 1 })
		now := r.message(m.p.ID, m.id)
		require.Empty(t, now.Buttons)
		require.Contains(t, now.Text, "Fill the feeder today.\nDone: ")
		require.True(t, strings.HasSuffix(now.Text, "Ben"), now.Text)
	}

	// Ann's phone still showed the buttons.
	query := r.api.Forge(ann.ID, ann, atAnn.ID, pressData(r.row(ann, atAnn.ID), 0))
	require.Equal(t, wording.PressSettled(), r.pressAnswer(query))
	r.settled()
	done := 0
	for text, kinds := range r.kinds() {
		for _, k := range kinds {
			if k == "done" {
				require.Equal(t, "Done", text)
				done++
			}
		}
	}
	require.Equal(t, 1, done)
}

// find waits for a message in a private chat.
func (r *rig) find(p botapitest.Person, part string) (found botapitest.Message) {
	r.t.Helper()
	r.eventually(func() bool {
		for _, m := range r.api.Messages(p.ID) {
			if strings.Contains(m.Text, part) {
				found = m
				return true
			}
		}
		return false
	})
	return found
}

// row is the outbox's number of a message that was sent.
func (r *rig) row(p botapitest.Person, message int64) (row int64) {
	r.t.Helper()
	r.eventually(func() bool {
		r.read(func(tx *store.Tx) error {
			chat, _, err := tx.FindChat(transport, id(p.ID))
			if err != nil {
				return err
			}
			o, _, err := tx.OutgoingBySent(chat.ID, id(message))
			row = o.ID
			return err
		})
		return row != 0
	})
	return row
}

func TestForgedPresses(t *testing.T) {
	r := newFarm(t, quick)
	r.invite(ben, "invite my wife")
	r.nudge("standing 2026-05-16", schedule.Routine)
	atAnn, atBen := r.find(ann, "Fill the feeder"), r.find(ben, "Fill the feeder")
	ours := r.row(ann, atAnn.ID)
	for name, data := range map[string]string{
		"a button never offered": pressData(ours, 3),
		"below no button":        pressData(ours, -1),
		"another chat's row":     pressData(r.row(ben, atBen.ID), 0),
		"no such row":            pressData(ours+1000, 0),
		"nothing":                "",
		"a text":                 "butcher them all",
		"too many parts":         pressData(ours, 0) + ":0",
		"a number too big":       "b:99999999999999999999:0",
	} {
		query := r.api.Forge(ann.ID, ann, atAnn.ID, data)
		require.Equal(t, wording.PressUnknown(), r.pressAnswer(query), name)
	}
	r.settled()
	require.Empty(t, r.api.Calls("editMessageText"))
	require.Empty(t, r.kinds()["Done"])
}

// The same while the call is still under way: its end, without an answer, does
// not have the message sent again.
func TestPressDuringTheCall(t *testing.T) {
	r := newRig(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Silent: true})
	r.api.Say(ann, r.pairCode())
	m := r.find(ann, "How many pigs")
	require.Empty(t, r.pressAnswer(r.api.Press(ann, m.ID, m.Buttons[0].Label)))
	r.eventually(func() bool { return r.message(ann.ID, m.ID).Edits == 1 })
	r.find(ann, "What weight")
	r.close() // cuts the call off
	count := len(r.api.Messages(ann.ID))
	r.open()
	r.start(quick)
	r.ask(ann, "help")
	require.Len(t, r.api.Messages(ann.ID), count+1)
}

// The answer to sending was lost, but somebody presses the button: so it arrived
// and is not sent again.
func TestPressProvesThatAMessageArrived(t *testing.T) {
	slow := quick
	slow.FirstPause, slow.LongestPause = 3600e9, 3600e9
	r := newFarm(t, slow)
	r.api.Fail("sendMessage", botapitest.Fault{Lost: true})
	r.nudge("standing 2026-05-16", schedule.Routine)
	m := r.find(ann, "Fill the feeder")
	r.eventually(func() bool { return strings.Contains(r.log.String(), "a message was not sent") })
	require.Empty(t, r.pressAnswer(r.api.Press(ann, m.ID, "Done")))
	r.eventually(func() bool { return r.message(ann.ID, m.ID).Edits == 1 })
	r.settled()
}

// A question went out twice because the first answer was lost: whichever copy
// is pressed, both lose their buttons.
func TestPressBelowACopy(t *testing.T) {
	r := newRig(t, quick)
	r.api.Fail("sendMessage", botapitest.Fault{Lost: true})
	r.api.Say(ann, r.pairCode())
	copies := func() (out []botapitest.Message) {
		for _, m := range r.api.Messages(ann.ID) {
			if strings.Contains(m.Text, "How many pigs") {
				out = append(out, m)
			}
		}
		return out
	}
	r.eventually(func() bool { return len(copies()) == 2 })
	r.settled()
	first := copies()[0]
	r.api.Press(ann, first.ID, first.Buttons[0].Label)
	r.eventually(func() bool { return len(copies()[0].Buttons)+len(copies()[1].Buttons) == 0 })
	r.settled()
	require.Equal(t, copies()[0].Text, copies()[1].Text)
}
