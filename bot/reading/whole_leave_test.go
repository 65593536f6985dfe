package reading

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Texts that end something are known by many wordings, and no other text for one.
func TestWishesThatEndSomething(t *testing.T) {
	now := time.Date(2026, 7, 4, 18, 0, 0, 0, time.UTC)
	note := func(f model.Fact) model.Record { return model.Record{ID: "r1", On: model.DayOf(now), At: now, Fact: f} }
	h := model.Fold([]model.Record{
		note(model.Arrive{Count: 2, Animals: []string{"Olive", "Cal"}}),
		note(model.Setting{Key: model.SetHerd, Text: "Long Acre"}),
	})
	c := Context{Now: now, Herd: h, People: []string{"Ann", "Bea", "Cal", "Mary Jo"}}
	wishes := map[string][]string{
		"delete herd": {
			"delete this herd", "Delete my herd.", "erase everything", "remove Long Acre and all its data", "delete the whole herd please",
			"please delete the herd", "wipe everything you have", "how do I delete this herd?", "can you erase our herd for good", "forget this herd",
			"get rid of the herd", "I want to delete all the data", "destroy all records", "delete long acre", "remove the herd Long Acre forever",
			"delete everything about us", "i'd like to delete this herd completely", "remove this herd with all its records", "delete \"Long Acre\"",
			"erase the entire herd and everything", "delete everything", "purge all of our data",
		},
		"forget me": {
			"forget me", "please forget me", "delete me", "erase me from this herd", "forget about me", "delete my data", "delete my account",
			"remove me", "remove me from the herd", "take me off the list", "take me out of this herd", "leave this herd", "forget everything about me",
			"delete all my data", "I want you to forget me", "unsubscribe", "delete everything you know about me", "wipe my name", "how can i delete my data?",
		},
		"people": {
			"people", "who is in this herd?", "who has access", "list people", "members", "household", "Who can write here?",
		},
		"remove person": {
			"remove Ann", "remove bea", "remove Mary Jo from the herd", "kick Bea out", "take bea off", "block Ann", "remove helper bea",
			"please remove Bea", "uninvite Mary Jo", "kick out bea",
		},
		"hand over": {
			"make Bea owner", "make bea the owner", "make Zed the new owner", "hand the herd over to Bea", "give my herd to Mary Jo",
			"hand over to bea", "transfer this herd to Bea please", "let Bea be the owner", "make Bea the owner of this herd",
		},
	}
	for want, texts := range wishes {
		for _, text := range texts {
			got := Read(c, text)
			require.Len(t, got.Entries, 1, text)
			d, ok := got.Entries[0].Act.(Do)
			require.True(t, ok, "%s: %#v", text, got.Entries[0].Act)
			require.Equal(t, want, d.What, text)
		}
	}
	for _, text := range []string{
		"delete that", "delete the last one", "erase that", "remove the last weight", "forget it", "forget that", "undo", "remove Olive",
		"remove Cal", "take Cal out", "Cal is out", "delete it", "wipe that", "herd is called Long Acre", "moved the herd to oak",
		"weighed the whole herd", "olive owner feed 50", "Bea fed 50 lb", "take bea a bag of corn", "remove mud from the wallow",
		"we took out everything from the shed", "remove 50 lb of corn", "cleared everything out of the barn", "the herd is out",
		"hand fed 20 lb", "delete the worming", "forget the corn", "made 3 batches", "remind me to remove the ring", "leave the gate open",
	} {
		for _, e := range Read(c, text).Entries {
			if d, ok := e.Act.(Do); ok {
				require.NotContains(t, []string{"delete herd", "forget me", "people", "remove person", "hand over"}, d.What, text)
			}
		}
	}
	for _, text := range []string{"what do you keep?", "privacy", "how long do you keep my data?", "Where is my data", "is this private?"} {
		require.Equal(t, Do{What: "privacy"}, Read(c, text).Entries[0].Act, text)
	}
}
