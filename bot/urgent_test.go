package bot_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/wording"
	"troughbell/store"
)

// urgentCards are the cards, for telling which one an answer begins with.
var urgentCards = []string{"vet_now", "fever", "notifiable", "shock", "poison", "heat_stroke", "kitchen_waste"}

func cardOf(o bot.Outcome) string {
	for _, code := range urgentCards {
		if strings.HasPrefix(said(o), wording.Voice{}.Urgent(code)) {
			return code
		}
	}
	return ""
}

func TestEmergenciesBringTheirCard(t *testing.T) {
	for text, card := range map[string]string{
		"pig cant breathe":                            "vet_now",
		"Pig can't breathe!!":                         "vet_now",
		"Rufus can’t breathe":                         "vet_now",
		"wife says one cant breathe":                  "vet_now",
		"pig is having a fit":                         "vet_now",
		"Olive is fitting":                            "vet_now",
		"Gus has fits":                                "vet_now",
		"rat poison eaten":                            "poison",
		"Nettle ate mouse bait":                       "poison",
		"did she eat rat poison?":                     "poison",
		"blisters on the feet":                        "notifiable",
		"snout is covered in blisters":                "notifiable",
		"african swine fever?":                        "notifiable",
		"three pigs have a high fever":                "notifiable",
		"four pigs dead this morning":                 "notifiable",
		"diamond shaped red patches":                  "vet_now",
		"heat stroke":                                 "heat_stroke",
		"i think gus has heatstroke":                  "heat_stroke",
		"pig got electric shock":                      "shock",
		"Gus is stuck in the hot wire":                "shock",
		"coughing blood":                              "vet_now",
		"pig broke its leg":                           "vet_now",
		"call the vet":                                "vet_now",
		"should I call the vet?":                      "vet_now",
		"bloody diarrhea":                             "vet_now",
		"ears turned purple":                          "vet_now",
		"not eating for two days":                     "vet_now",
		"not eating and coughing blood":               "vet_now",
		"temp 105":                                    "fever",
		"Olive temp 105.2":                            "vet_now",
		"her temperature is 41.2":                     "vet_now",
		"prolapse":                                    "vet_now",
		"two pigs died overnight":                     "vet_now",
		"staggering":                                  "vet_now",
		"blind":                                       "vet_now",
		"what do i do, pig had a fit?":                "vet_now",
		"no idea why but rufus has blood in his poop": "vet_now",
		"can i give them kitchen scraps":              "kitchen_waste",
		"fed leftovers from the kitchen":              "kitchen_waste",
	} {
		b := readyBook(t)
		o := b.text(t, text)
		if card == "vet_now" && len(b.state(t).Alarms) > 0 {
			require.True(t, strings.HasPrefix(said(o), "⚠"), "an alarm calls the vet by its own card: %s: %s", text, said(o))
		} else {
			require.Equal(t, card, cardOf(o), "%s: %s", text, said(o))
		}
		require.NotContains(t, said(o), "Nothing to record", text)
		require.NotContains(t, said(o), "did not understand", text)
		require.NotContains(t, said(o), "Not understood", text)
	}
}

func TestHarmlessTextsBringNoCard(t *testing.T) {
	for _, text := range []string{
		"has Olive had a fit before?",
		"when did rufus last have a fit?",
		"no blood in the poop",
		"no fits, no fever",
		"blisters on feet: none",
		"no sign of any blisters on their feet",
		"wife had a fit when she saw the feed bill",
		"the new door fits in the frame",
		"fitting the new waterer",
		"replaced the pipe fitting",
		"staggering feed price",
		"built a deer blind",
		"blisters on my hands from the shovel",
		"put out rat poison in the shed",
		"temp 105 today",
		"air temperature 41",
		"Olive temp 102.5",
		"how do I prevent heat stroke?",
		"last year two pigs died of it",
		"no need to call the vet",
		"the vet was here, all good",
		"dog ate rat poison",
		"broke the gate leg",
		"pigs broke back into the pen",
		"ear tag is blue",
		"wormed all, vaccinated for erysipelas",
		"leftover feed in the trough",
		"remind me to call the vet friday",
		"fence shocked Gus, he learned",
		"need the vet certificate for the butcher",
		"several dead trees in the pen",
		"they had a good fit of zoomies",
		"bucket for the black scour barrel", "dog has a fever", "both kids have a fever", "kids have blisters on their feet",
		"fed 150, full",
		"straw 20 bucks",
	} {
		o := readyBook(t).text(t, text)
		require.Empty(t, cardOf(o), "%s: %s", text, said(o))
	}
}

func TestNamesOfPigsWinOverTheWordsOfEmergencies(t *testing.T) {
	b := openBook(t, store.Options{Ephemeral: true})
	out := b.text(t, "3 pigs came today: Blind, Prolapse and Blister, 90 lb each")
	require.Empty(t, cardOf(out), said(out))
	for _, text := range []string{"Blind 38 girth", "prolapse 40 girth", "Blister's girth 37", "blind is limping"} {
		out := b.text(t, text)
		require.Empty(t, cardOf(out), "%s: %s", text, said(out))
	}
	require.Equal(t, "vet_now", cardOf(b.text(t, "Blister cant breathe")))
}

func TestACardLeavesTheRecord(t *testing.T) {
	b := readyBook(t)
	out := b.text(t, "Rufus is coughing blood")
	require.Equal(t, "vet_now", cardOf(out))
	require.Len(t, b.state(t).Sicks, 1)
	require.Contains(t, said(out), "Rufus coughing blood")

	out = b.text(t, "coughing blood")
	require.Equal(t, "vet_now", cardOf(out))
	require.Contains(t, said(out), "Which pig?", "what is in doubt is still asked")
	require.NotEmpty(t, out.Replies[0].Buttons)

	require.Equal(t, wording.Voice{}.Urgent("vet_now"), said(b.text(t, "pig cant breathe")), "nothing recorded: the card alone")
}

func TestAnAlarmBringsItsOwnCardOnly(t *testing.T) {
	b := readyBook(t)
	out := b.text(t, "pig down not breathing right")
	require.Len(t, b.state(t).Alarms, 1)
	require.Empty(t, cardOf(out))
	require.Equal(t, 1, strings.Count(said(out), "⚠"), said(out))
}

func TestAFirstWordMayBeAnEmergency(t *testing.T) {
	out := openBook(t, store.Options{Ephemeral: true}).text(t, "pig cant breathe")
	require.Equal(t, wording.Voice{}.Urgent("vet_now"), said(out), "the card, and no question of setting up")
}

func TestCardsSayWhatToDoAndNoDose(t *testing.T) {
	for _, code := range urgentCards {
		card := wording.Voice{}.Urgent(code)
		require.Equal(t, code != "kitchen_waste", strings.HasPrefix(card, "⚠ "), code)
		require.Contains(t, card, "vet", code)
		require.LessOrEqual(t, strings.Count(card, "\n"), 3, code)
		for _, dose := range []string{" mg", " ml", " cc", "!"} {
			require.NotContains(t, card, dose, code)
		}
	}
	require.Equal(t, wording.Voice{}.Urgent("vet_now"), wording.Voice{}.Urgent("unheard_of"))
}
