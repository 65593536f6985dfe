package telegram

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/store"
)

const barn = -500 // a group

// newBarn is a farm whose people are in a group with a stranger.
func newBarn(t *testing.T) *rig {
	t.Helper()
	r := newFarm(t, quick)
	r.eventually(func() bool { return r.bot.userName() != "" })
	return r
}

func TestInAGroupOnlyWhatIsToTheBotIsRead(t *testing.T) {
	r := newBarn(t)
	at := "@" + botapitest.BotName
	first := r.answerTo(barn, r.api.SayIn(barn, ann, "/cost"))
	for _, tt := range []struct {
		text string
		ours bool
	}{
		{"spent 30 straw", false},
		{"spent 31 straw " + at + "x", false},
		{"/undo@other_bot", false},
		{at + " spent 32 straw", true},
		{"spent 33 straw, " + at, true},
		{"hey " + at + ": spent 34 straw", true},
		{"/cost@" + botapitest.BotName, true},
	} {
		id := r.api.SayIn(barn, ann, tt.text)
		if tt.ours {
			r.answerTo(barn, id)
		}
	}
	id := r.api.Reply(barn, ann, "spent 35 straw", first.ID)
	answer := r.answerTo(barn, id)
	r.api.Edit(barn, ann, id, "spent 36 straw") // an edit brings no reply mark along
	r.eventually(func() bool { return r.message(barn, answer.ID).Edits == 1 })
	require.Contains(t, r.message(barn, answer.ID).Text, "36")
	r.settled()
	require.Len(t, r.api.Messages(barn), 6)
	require.Empty(t, r.kinds()["spent 30 straw"])
	require.Equal(t, []string{"spend"}, r.kinds()["spent 35 straw"])
	r.close()
	file, err := os.ReadFile(r.path)
	require.NoError(t, err)
	require.NotContains(t, string(file), "spent 30 straw", "nothing is kept of what was not for the bot")
	require.Contains(t, string(file), "spent 35 straw")
	r.open()
	r.start(quick)
}

func TestBeingInAGroupGivesNoRights(t *testing.T) {
	r := newBarn(t)
	r.invite(cal, "invite a helper")
	r.api.SayIn(-700, cal, "/cost") // a helper brings the herd into no group
	nudge := r.answerTo(barn, r.api.SayIn(barn, ann, "/start"))
	require.NotEmpty(t, nudge.Buttons)
	r.api.SayIn(barn, dee, "/cost")
	r.api.SayIn(barn, dee, "@"+botapitest.BotName+" spent 99 straw")
	r.api.Reply(barn, dee, "spent 98 straw", nudge.ID)
	query := r.api.Press(dee, nudge.ID, nudge.Buttons[0].Label)
	r.answerTo(barn, r.api.SayIn(barn, ann, "/cost"))
	require.Len(t, r.api.Messages(barn), 2, "strangers get no word in a group")
	require.Empty(t, r.api.Messages(dee.ID))
	require.Empty(t, r.api.Messages(-700))
	require.Equal(t, wording.PressUnknown(), r.pressAnswer(query), "the spinner ends all the same")
	require.Empty(t, r.kinds()["spent 98 straw"])
	require.Empty(t, r.kinds()["spent 99 straw"])
}

// A code that lets somebody in is given in private only.
func TestNoCodesInAGroup(t *testing.T) {
	r := newBarn(t)
	for _, text := range []string{"/invite", "/invite helper", "/newherd"} {
		require.Equal(t, wording.PrivateOnly(), r.answerTo(barn, r.api.SayIn(barn, ann, text)).Text, text)
	}
}

// A group that becomes a supergroup keeps its herd under its new id, whether the
// bot is told or finds out when it sends.
func TestGroupBecomesASupergroup(t *testing.T) {
	for _, told := range []bool{true, false} {
		r := newBarn(t)
		r.answerTo(barn, r.api.SayIn(barn, ann, "/cost"))
		const there = -100500
		if told {
			r.api.Send(barn, ann, map[string]any{"migrate_to_chat_id": there})
		} else {
			r.api.Fail("sendMessage", botapitest.Fault{
				Status: 400, Description: "Bad Request: group chat was upgraded to a supergroup chat", MigrateTo: there, Chat: barn,
			})
			id := r.api.SayIn(barn, ann, "/cost")
			r.answerTo(there, id)
		}
		r.answerTo(there, r.api.SayIn(there, ann, "/cost"))
		r.read(func(tx *store.Tx) error {
			_, ok, err := tx.FindChat(transport, "-500")
			require.False(t, ok)
			return err
		})
	}
}
