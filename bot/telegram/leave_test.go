package telegram

import (
	"bytes"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/bot/wording"
	"troughbell/store"
)

// inFiles is which of the words stand in the database's files.
func (r *rig) inFiles(words ...string) (found []string) {
	r.t.Helper()
	for _, side := range []string{"", "-wal", "-shm"} {
		b, err := os.ReadFile(r.path + side)
		if !os.IsNotExist(err) {
			require.NoError(r.t, err)
		}
		for _, w := range words {
			if bytes.Contains(bytes.ToLower(b), []byte(strings.ToLower(w))) {
				found = append(found, w+" in "+side)
			}
		}
	}
	return found
}

func (r *rig) herds() (names []string) {
	r.read(func(tx *store.Tx) error {
		all, err := tx.Herds()
		for _, h := range all {
			names = append(names, h.Name)
		}
		return err
	})
	return names
}

// household sets up a herd of Ann's with Ben as family and Cal as a helper, in
// which each has said something.
func (r *rig) household() {
	r.invite(ben, "invite my wife")
	r.invite(cal, "invite helper")
	r.ask(ann, "The herd is called Quillwort Acre. 3 pigs came today: Tansy, Sorrel and Yarrow, 90 lb each. one feeder holds 200 lb. "+
		"two water barrels, 55 gal each. target 270 lb, chores saturday 7 am, eastern time")
	r.ask(ben, "fed 80 lb, note: larkspur by the gate")
	r.ask(cal, "barrel full")
	r.api.Send(ben.ID, ben, map[string]any{"photo": []map[string]any{{"file_id": "x"}}, "caption": "Sorrel looks meadowsweet"})
	r.settled()
}

var householdWords = []string{"quillwort", "tansy", "sorrel", "yarrow", "larkspur", "meadowsweet", "\"101\"", "ben"}

func TestHerdIsDeletedByItsName(t *testing.T) {
	r := newFarm(t, quick)
	r.household()
	second := newHousehold(r, dee, "Bogbean End")
	require.NotEmpty(t, r.inFiles(householdWords...))

	for _, p := range []botapitest.Person{ben, cal} {
		require.Contains(t, r.ask(p, "delete this herd").Text, "Only the owner")
	}
	asked := r.ask(ann, "delete this herd").Text
	for _, part := range []string{"Quillwort Acre", "records since", "3 people (Ann, Ben and Cal)", "export", "within 10 minutes"} {
		require.Contains(t, asked, part)
	}
	require.Contains(t, r.ask(ann, "what's due?").Text, "Nothing deleted")
	require.NotContains(t, r.ask(ann, "Quillwort Acre").Text, "Deleted", "it was let be")

	r.ask(ann, "please erase everything")
	before := map[int64]int{}
	for _, p := range []botapitest.Person{ann, ben, cal, dee} {
		before[p.ID] = len(r.api.Messages(p.ID))
	}
	r.api.Say(ann, "quillwort acre!")
	require.Contains(t, r.lastTo(ann.ID, before[ann.ID]+1).Text, "Deleted: Quillwort Acre")
	require.Contains(t, r.lastTo(ann.ID, before[ann.ID]+1).Text, "/newherd")
	for _, p := range []botapitest.Person{ben, cal} {
		require.Contains(t, r.lastTo(p.ID, before[p.ID]+1).Text, "The owner has deleted Quillwort Acre")
	}
	require.Empty(t, r.inFiles(householdWords...))
	require.Equal(t, []string{"Bogbean End"}, r.herds())
	require.NotContains(t, r.log.String(), "Quillwort")

	// Nothing goes to the herd's chats after a restart; its people are strangers,
	// and of the other herd nothing has changed.
	r.close()
	r.open()
	r.start(quick)
	require.Contains(t, r.ask(dee, "how much feed is left?").Text, "lb")
	r.settled()
	require.Len(t, r.api.Messages(ben.ID), before[ben.ID]+1)
	r.api.Say(ben, "fed 50 lb")
	require.Equal(t, wording.Stranger(), r.lastTo(ben.ID, before[ben.ID]+2).Text)
	r.read(func(tx *store.Tx) error {
		all, err := tx.Journal(second)
		require.NotEmpty(t, all)
		return err
	})

	// Who runs the server still does, and can begin anew.
	n := before[ann.ID] + 1
	r.api.Say(ann, "fed 50 lb")
	require.Contains(t, r.lastTo(ann.ID, n+1).Text, "/newherd")
	r.api.Say(ann, "/newherd")
	code := codePattern.FindString(r.lastTo(ann.ID, n+2).Text)
	require.NotEmpty(t, code)
	require.Contains(t, r.ask(ann, code).Text, "Text what you do")
	r.read(func(tx *store.Tx) error {
		c, ok, err := tx.FindChat(transport, fmt.Sprint(ann.ID))
		require.True(t, ok)
		require.Greater(t, c.Herd, second, "no number comes twice")
		m, ok, err2 := tx.Member(c.Herd, c.Person)
		require.NoError(t, err2)
		require.True(t, ok)
		require.Equal(t, store.Owner, m.Role)
		require.True(t, m.Operator)
		require.Equal(t, "Ann", m.Name)
		return err
	})
}

// newHousehold lets a person in with a herd of their own.
func newHousehold(r *rig, p botapitest.Person, name string) (herd store.HerdID) {
	r.t.Helper()
	r.ask(p, codePattern.FindString(r.ask(ann, "/newherd").Text))
	r.ask(p, "The herd is called "+name+". 3 pigs came today, 90 lb each. one feeder holds 200 lb, fed 200 lb. chores saturday 7 am, eastern time")
	r.read(func(tx *store.Tx) error {
		c, _, err := tx.FindChat(transport, fmt.Sprint(p.ID))
		herd = c.Herd
		return err
	})
	return herd
}

// Only the name typed by the owner, in private, in time, and no button, deletes.
func TestWhatDoesNotDelete(t *testing.T) {
	r := newFarm(t, quick)
	r.household()
	const group = -100
	r.api.SayIn(group, ann, "/delete_herd@"+botapitest.BotName)
	first := r.lastTo(group, 1)
	require.Equal(t, wording.PrivateOnly(), first.Text)

	r.ask(ann, "delete this herd")
	require.NotContains(t, r.ask(ben, "Quillwort Acre").Text, "Deleted")
	edited := r.api.Say(ann, "never mind")
	r.answerTo(ann.ID, edited)
	r.ask(ann, "delete this herd")
	r.api.Edit(ann.ID, ann, edited, "Quillwort Acre")
	r.settled()
	require.Equal(t, []string{"Quillwort Acre"}, r.herds())

	// It stands for a while only.
	r.ask(ann, "delete this herd")
	r.write(func(tx *store.Tx) error {
		c, _, err := tx.FindChat(transport, fmt.Sprint(ann.ID))
		if err != nil {
			return err
		}
		old := r.now().Add(-11 * time.Minute).UTC().Format(time.RFC3339)
		return tx.SetValue(store.PersonValue("leaving", c.Herd, c.Person), `{"what":"delete","at":"`+old+`"}`)
	})
	require.Contains(t, r.ask(ann, "Quillwort Acre").Text, "too late")
	require.Equal(t, []string{"Quillwort Acre"}, r.herds())
}

func TestWhoIsForgottenOrRemoved(t *testing.T) {
	r := newFarm(t, quick)
	r.household()
	require.Contains(t, r.ask(ann, "forget me").Text, "make Ben owner")

	// A helper is taken out by the owner, at once.
	require.Contains(t, r.ask(ben, "remove Cal").Text, "Only the owner")
	n := len(r.api.Messages(cal.ID))
	require.Contains(t, r.ask(ann, "remove cal").Text, "Cal is out")
	require.Contains(t, r.lastTo(cal.ID, n+1).Text, "taken you out")
	require.Empty(t, r.inFiles(fmt.Sprintf(`%d:`, cal.ID)))
	r.api.Say(cal, "barrel full")
	require.Equal(t, wording.Stranger(), r.lastTo(cal.ID, n+2).Text)

	// Family asks to be forgotten: what they logged stays, by nobody.
	asked := r.ask(ben, "forget me").Text
	require.Contains(t, asked, "out of Quillwort Acre")
	require.Contains(t, asked, "your name, Ben,")
	n, owners := len(r.api.Messages(ben.ID)), len(r.api.Messages(ann.ID))
	r.api.Say(ben, "Ben")
	require.Contains(t, r.lastTo(ben.ID, n+1).Text, "You are forgotten")
	require.Contains(t, r.lastTo(ann.ID, owners+1).Text, "asked to be forgotten")
	r.settled()
	require.Empty(t, r.inFiles("ben", fmt.Sprint(ben.ID)))
	require.NotEmpty(t, r.inFiles("larkspur"))
	r.read(func(tx *store.Tx) error {
		all, err := tx.Journal(1)
		for _, e := range all {
			require.NotEqual(t, "Ben", e.ByName)
			if e.ByName == "Cal" && e.Fact.Kind() != "question" { // those are the owner's now
				require.Zero(t, e.By)
				require.Zero(t, e.Source.Chat)
			}
		}
		return err
	})
	require.Contains(t, r.ask(ann, "how much feed is left?").Text, "lb")
	require.Contains(t, r.ask(ann, "forget me").Text, "nobody else is in it")

	// The herd is handed on, and the old owner goes with the right to the server.
	r.invite(ben, "invite my wife")
	require.Contains(t, r.ask(ann, "make Ben owner").Text, "text Ben within")
	n = len(r.api.Messages(ben.ID))
	require.Contains(t, r.ask(ann, "ben").Text, "Ben owns the herd now")
	require.Contains(t, r.lastTo(ben.ID, n+1).Text, "You own Quillwort Acre now")
	require.Contains(t, r.ask(ann, "forget me").Text, "run this server")
	n = len(r.api.Messages(ann.ID))
	r.api.Say(ann, "Ann")
	require.Contains(t, r.lastTo(ann.ID, n+1).Text, "You are forgotten")
	r.settled()
	require.NotEmpty(t, r.pairCode(), "the server is to be paired anew")
	r.read(func(tx *store.Tx) error {
		team, err := tx.Members(1)
		require.Len(t, team, 1)
		require.Equal(t, "Ben", team[0].Name)
		return err
	})
	// A new pairing code opens a herd of its own, not the one of Ben's.
	r.ask(dee, r.pairCode())
	require.Len(t, r.herds(), 2)
}

// Who has a further herd goes on with that one.
func TestForgottenHerdBesideAnother(t *testing.T) {
	r := newFarm(t, quick)
	r.household()
	newHousehold(r, dee, "Bogbean End")
	r.ask(ben, codePattern.FindString(r.ask(dee, "invite helper").Text))
	require.Contains(t, r.ask(ben, "/herd Quillwort Acre").Text, "Quillwort")
	require.Contains(t, r.ask(ben, "forget me").Text, "Quillwort Acre and Bogbean End")
	r.ask(ann, "delete this herd")
	n := len(r.api.Messages(ben.ID))
	r.api.Say(ann, "Quillwort Acre")
	require.Contains(t, r.lastTo(ben.ID, n+1).Text, "This chat speaks of Bogbean End now.")
	require.Contains(t, r.ask(ben, "fed 20 lb").Text, "Fed 20 lb")
	require.Empty(t, r.inFiles("quillwort", "larkspur", "meadowsweet"))
}
