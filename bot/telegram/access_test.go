package telegram

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/store"
)

func TestStrangerIsToldOnceAndNothingIsKept(t *testing.T) {
	r := newFarm(t, quick)
	first := r.api.Say(dee, "who are you")
	r.lastTo(dee.ID, 1)
	r.api.Say(dee, "let me in, zebrafinch")
	r.api.Membership(dee.ID, dee, "kicked")
	query := r.api.Forge(dee.ID, dee, first, "b:1:0")
	r.eventually(func() bool { return len(r.api.Calls("answerCallbackQuery")) == 1 })
	require.Equal(t, query, r.api.Calls("answerCallbackQuery")[0].Params.Get("callback_query_id"))
	r.ask(ann, "help") // handled after all of those
	said := r.api.Messages(dee.ID)
	require.Len(t, said, 1)
	require.Equal(t, wording.Stranger(), said[0].Text)
	r.read(func(tx *store.Tx) error {
		_, ok, err := tx.FindChat(transport, "999")
		require.False(t, ok)
		return err
	})
	r.close()
	file, err := os.ReadFile(r.path)
	require.NoError(t, err)
	require.NotContains(t, string(file), "zebrafinch")
	r.open()
	r.start(quick)
}

func TestCodes(t *testing.T) {
	r := newRig(t, quick)
	code := r.pairCode()
	r.api.Say(dee, "/start ABCDE-FGHJK")
	require.Equal(t, wording.CodeWrong(), r.lastTo(dee.ID, 1).Text)
	r.ask(ann, strings.ToLower(code)) // just the code, as thumbs type it
	require.Contains(t, r.lastTo(ann.ID, 1).Text, "Text what you do")
	r.api.Say(dee, "/start "+code)
	require.Equal(t, wording.CodeWrong(), r.lastTo(dee.ID, 2).Text, "a code is good once")
	for range 2 * maxTries {
		r.api.Say(dee, "/start "+code)
	}
	r.lastTo(dee.ID, maxTries)
	r.ask(ann, "help") // handled after all of those
	require.Len(t, r.api.Messages(dee.ID), maxTries)
	r.read(func(tx *store.Tx) error {
		has, err := tx.HasOperator()
		require.True(t, has)
		return err
	})

	// A member who starts again goes on; a wrong code is said to be one.
	before := r.kinds()
	for range 2 {
		again := r.ask(ann, "/start")
		require.Contains(t, again.Text, "How many pigs", "the question that is open stays open")
	}
	require.Equal(t, before, r.kinds(), "starting again changes nothing")
	n := len(r.api.Messages(ann.ID))
	r.api.Say(ann, "/start ABCDE-FGHJK")
	require.Equal(t, wording.CodeWrong(), r.lastTo(ann.ID, n+1).Text)
}

func TestNobodyLosesARightByACode(t *testing.T) {
	r := newFarm(t, quick)
	code := codePattern.FindString(r.ask(ann, "invite a helper").Text)
	require.NotEmpty(t, code)
	r.ask(ann, code)
	r.read(func(tx *store.Tx) error {
		herds, err := tx.Herds()
		require.NoError(t, err)
		ms, err := tx.Members(herds[0].ID)
		require.Len(t, ms, 1)
		require.Equal(t, store.Owner, ms[0].Role)
		return err
	})
}

func TestFurtherHerds(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "the herd is Long Acre")
	r.invite(cal, "invite a helper")
	require.Equal(t, wording.OperatorOnly(), r.ask(cal, "/newherd").Text)
	code := codePattern.FindString(r.ask(ann, "/newherd").Text)
	require.NotEmpty(t, code)
	r.ask(cal, code)
	r.ask(cal, "the herd is Stony Bank")
	require.Equal(t, wording.PrivateOnly(), r.answerTo(barn, r.api.SayIn(barn, cal, "/herd Stony Bank")).Text)
	require.Contains(t, r.ask(cal, "/herd").Text, "/herd Long Acre, /herd Stony Bank")
	require.Equal(t, wording.HerdChosen("Long Acre"), r.ask(cal, "/herd long acre").Text)
	require.Contains(t, r.ask(cal, "spent 20 straw").Text, "owner", "a helper there")
	r.ask(cal, "/herd Stony Bank")
	require.NotContains(t, r.ask(cal, "spent 20 straw").Text, "owner", "the owner here")
}

// An alarm is answered whoever raises it and whatever the bot waits for.
func TestAlarms(t *testing.T) {
	r := newFarm(t, quick) // nothing is set up: its first question is open
	r.invite(ben, "invite my wife")
	r.invite(cal, "invite a helper")
	for _, setUp := range []bool{false, true} {
		if setUp {
			r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. one feeder holds 200 lb. "+
				"two water barrels, 55 gal each. target 270 lb, chores saturday 7 am, eastern time")
		}
		for _, alarm := range []struct{ text, says string }{
			{"PIGS OUT", "feed"}, {"pig down", "vet"}, {"no water", "water"},
		} {
			for _, person := range []botapitest.Person{ann, ben, cal} {
				got := r.ask(person, alarm.text).Text
				require.Contains(t, strings.ToLower(got), alarm.says, "%s by %s, set up: %v", alarm.text, person.Name, setUp)
			}
		}
	}
	require.Len(t, r.kinds()["PIGS OUT"], 6)
}
