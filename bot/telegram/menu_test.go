package telegram

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
)

// menus gives what commands each scope was offered last, by type and chat.
func (r *rig) menus() map[string][]string {
	r.t.Helper()
	out := map[string][]string{}
	for _, c := range r.api.Calls("setMyCommands") {
		var at scope
		require.NoError(r.t, json.Unmarshal([]byte(c.Params.Get("scope")), &at))
		var commands []struct{ Command, Description string }
		require.NoError(r.t, json.Unmarshal([]byte(c.Params.Get("commands")), &commands))
		var names []string
		for _, x := range commands {
			require.NotEmpty(r.t, x.Description)
			names = append(names, x.Command)
		}
		out[at.Type+at.Chat] = names
	}
	return out
}

// Each kind of chat is offered the commands that make sense in it, and the
// operator those of the server, from the moment of pairing on.
func TestMenus(t *testing.T) {
	r := newRig(t, quick)
	r.eventually(func() bool { return len(r.api.Calls("setMyDescription")) > 0 })
	require.Len(t, r.menus(), 2)
	r.api.Say(ann, r.pairCode())
	r.eventually(func() bool { return len(r.menus()["chat101"]) > 0 })
	for _, c := range wording.Commands {
		for menu, at := range map[wording.Menu]string{
			wording.PrivateMenu: "all_private_chats", wording.GroupMenu: "all_group_chats", wording.OperatorMenu: "chat101",
		} {
			require.Equal(t, slices.Contains(c.Menus, menu), slices.Contains(r.menus()[at], c.Name), "%s in %s", c.Name, at)
		}
	}
	r.close()
	r.open()
	r.api.Fail("setMyCommands", botapitest.Fault{}, botapitest.Fault{},
		botapitest.Fault{Status: 400, Description: "Bad Request: chat not found"})
	n := len(r.api.Calls("getMyDescription"))
	r.start(quick) // a chat that is no more holds up nothing
	r.eventually(func() bool { return len(r.api.Calls("getMyDescription")) > n })
	require.Len(t, r.api.Calls("setMyDescription"), 1, "what stands there stays")
}

// Every command of a member's menu is answered with what it says, never with
// that it is not known.
func TestEveryCommandIsAnswered(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 45 lb each. one feeder holds 200 lb. "+
		"one water barrel, 55 gal. target 270 lb, chores saturday 7 am, eastern time. spent $40 on straw")
	lost := r.ask(ann, "qwertz").Text
	for _, c := range wording.Commands {
		got := r.ask(ann, "/"+c.Name)
		require.NotEqual(t, lost, got.Text, c.Name)
		require.NotContains(t, got.Text, "Nothing to record", c.Name)
		if c.Name == "picture" || c.Name == "calendar" {
			require.Equal(t, "photo", got.File.Kind)
		}
	}
}

func TestCommandsReachTheBotByName(t *testing.T) {
	r := newFarm(t, quick)
	r.eventually(func() bool { return r.bot.userName() != "" })
	plain := r.ask(ann, "what do they cost?").Text
	for _, text := range []string{"/cost", "/COST@" + strings.ToUpper(botapitest.BotName), "/cost\n"} {
		require.Equal(t, plain, r.ask(ann, text).Text, text)
	}
}
