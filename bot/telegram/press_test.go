package telegram

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/model"
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
	require.Regexp(t, `^That is settled already\. Done: .+, Ben$`, r.pressAnswer(query))
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

// typesAQuestion sets a herd up and has Ann text a girth that does not fit.
func (r *rig) typesAQuestion() (text int64, asked botapitest.Message) {
	r.t.Helper()
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 45 lb each. one feeder holds 200 lb. "+
		"one water barrel, 55 gal. target 270 lb, chores saturday 7 am, eastern time")
	text = r.api.Say(ann, "gus 47.5 girth")
	asked = r.answerTo(ann.ID, text)
	require.NotEmpty(r.t, asked.Buttons, asked.Text)
	return text, asked
}

// A button of a question that was answered in words, or whose text was edited,
// records nothing more and says why.
func TestPressComesTooLate(t *testing.T) {
	r := newFarm(t, quick)
	text, asked := r.typesAQuestion()
	data := pressData(r.row(ann, asked.ID), 0)
	r.ask(ann, "22 in")
	r.eventually(func() bool { return len(r.message(ann.ID, asked.ID).Buttons) == 0 })
	require.Equal(t, asked.Text, r.message(ann.ID, asked.ID).Text, "the answer stands below already")
	require.Equal(t, wording.PressSettled(""), r.pressAnswer(r.api.Forge(ann.ID, ann, asked.ID, data)))

	r.api.Edit(ann.ID, ann, text, "gus 48.5 girth")
	r.eventually(func() bool { return len(r.message(ann.ID, asked.ID).Buttons) > 0 })
	data = pressData(r.row(ann, asked.ID), 0)
	r.api.Edit(ann.ID, ann, text, "gus 49.5 girth")
	r.eventually(func() bool { return strings.Contains(r.message(ann.ID, asked.ID).Text, "49.5") })
	before := r.kinds()
	require.Equal(t, wording.PressSettled(""), r.pressAnswer(r.api.Forge(ann.ID, ann, asked.ID, data)))
	require.Equal(t, before, r.kinds())
}

// Hours later a button still counts while nothing has settled what it speaks of.
func TestPressHoursLater(t *testing.T) {
	r := newFarm(t, quick)
	_, asked := r.typesAQuestion()
	r.ahead.Store(int64(30 * time.Hour))
	label := asked.Buttons[len(asked.Buttons)-1].Label
	require.Empty(t, r.pressAnswer(r.api.Press(ann, asked.ID, label)))
	r.eventually(func() bool { return len(r.kinds()[label]) > 0 })
	require.Contains(t, r.kinds()[label], "weigh")
}

// A question that was put once more below a later message is answered by the
// buttons there.
func TestPressOfAQuestionPutAgain(t *testing.T) {
	r := newRig(t, quick)
	r.api.Say(ann, r.pairCode())
	r.lastTo(ann.ID, 1)
	r.ask(ann, "4 pigs 45 lb")
	again := r.ask(ann, "/start")
	require.Contains(t, again.Text, "What weight")
	require.NotEmpty(t, r.api.Press(ann, again.ID, again.Buttons[1].Label))
	r.eventually(func() bool { return len(r.kinds()[again.Buttons[1].Label]) > 0 })
	require.ElementsMatch(t, []string{"settings", "settled", "question"}, r.kinds()[again.Buttons[1].Label])
}

// A nudge that somebody settles in words says so in all chats.
func TestNudgeSettledInWords(t *testing.T) {
	r := newFarm(t, quick)
	r.invite(ben, "invite my wife")
	r.told("standing 2026-05-16", r.bot.Now().Add(-time.Minute), "refill")
	atAnn, atBen := r.find(ann, "Fill the feeder"), r.find(ben, "Fill the feeder")
	r.settled() // it is noted that both are there
	r.ask(ben, "done")
	for _, m := range []botapitest.Message{atAnn, atBen} {
		r.eventually(func() bool { return r.message(m.Chat, m.ID).Edits == 1 })
		now := r.message(m.Chat, m.ID)
		require.Empty(t, now.Buttons)
		require.Contains(t, now.Text, "Fill the feeder today.\nDone: ")
		require.True(t, strings.HasSuffix(now.Text, "Ben"), now.Text)
	}
	query := r.api.Forge(ann.ID, ann, atAnn.ID, pressData(r.row(ann, atAnn.ID), 1))
	require.Contains(t, r.pressAnswer(query), "settled already. Done: ")
}

// A nudge of last week whose matter was told anew is not what a button speaks of.
func TestPressOfANudgeToldAnew(t *testing.T) {
	r := newFarm(t, quick)
	now := r.bot.Now()
	r.told("standing 2026-05-09", now.AddDate(0, 0, -7), "refill")
	old := r.find(ann, "Fill the feeder")
	r.told("standing 2026-05-16", now, "refill", "water")
	r.lastTo(ann.ID, len(r.api.Messages(ann.ID)))
	before := r.kinds()
	require.Equal(t, wording.PressOvertaken(), r.pressAnswer(r.api.Press(ann, old.ID, "Done")))
	r.eventually(func() bool { return len(r.message(ann.ID, old.ID).Buttons) == 0 })
	require.Equal(t, before, r.kinds())
}

// told keeps that a nudge was told at a moment, and delivers it.
func (r *rig) told(key string, at time.Time, topics ...string) {
	r.t.Helper()
	r.write(func(tx *store.Tx) error {
		f := model.Told{Key: key, About: topics, Topics: topics, Standing: true, Grade: "routine"}
		return tx.Append(&store.Envelope{
			Herd: 1, On: model.DayOf(at), At: at, SaidAt: at, Zone: "America/New_York", Judged: "certain", Fact: f,
		})
	})
	r.nudge(key, schedule.Routine)
}

// A question that no button answers asks for a typed reply: in a group it would
// not reach the bot otherwise.
func TestQuestionThatWantsTyping(t *testing.T) {
	r := newBarn(t)
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 45 lb each. one feeder holds 200 lb. "+
		"one water barrel, 55 gal. target 270 lb, chores saturday 7 am, eastern time")
	asked := r.answerTo(barn, r.api.SayIn(barn, ann, "@"+botapitest.BotName+" wormed olive today ivermectin"))
	require.True(t, asked.ForceReply, asked.Text)
	require.Empty(t, asked.Buttons)
	got := r.answerTo(barn, r.api.Reply(barn, ann, "18", asked.ID))
	require.Contains(t, got.Text, "18 days")
	require.False(t, got.ForceReply)
	asked = r.answerTo(barn, r.api.Reply(barn, ann, "remind me", asked.ID))
	require.True(t, asked.ForceReply, asked.Text)
}

// A nudge is still on its way to one chat when it is settled in another: it loses
// its buttons there as soon as it has arrived, and is no message of its own where
// it never does.
func TestNudgeIsSettledWhileItGoesOut(t *testing.T) {
	for _, arrives := range []bool{true, false} {
		r := newFarm(t, quick)
		r.invite(ben, "invite my wife")
		r.settled()
		before := len(r.api.Messages(ann.ID))
		fault := botapitest.Fault{Delay: time.Second, Chat: ann.ID}
		if !arrives {
			fault.Status, fault.Description = 500, "Internal Server Error"
		}
		r.api.Fail("sendMessage", fault)
		r.nudge("standing 2026-05-16", schedule.Routine)
		atBen := r.find(ben, "Fill the feeder")
		require.Empty(t, r.pressAnswer(r.api.Press(ben, atBen.ID, "Done")))
		require.Len(t, r.api.Messages(ann.ID), before, "it goes out to Ann still")
		r.settled()
		if !arrives {
			require.Len(t, r.api.Messages(ann.ID), before, "it is settled by then")
			continue
		}
		require.Len(t, r.api.Messages(ann.ID), before+1)
		atAnn := r.find(ann, "Fill the feeder")
		require.Empty(t, atAnn.Buttons)
		require.Contains(t, atAnn.Text, "Done: ")
	}
}
