package bot_test

import (
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

func readyBook(t *testing.T) *book {
	t.Helper()
	b := openBook(t, store.Options{Ephemeral: true})
	b.text(t, setUp)
	h := b.state(t)
	require.Len(t, h.Animals, 4)
	require.Len(t, h.Feeders, 1)
	require.Len(t, h.Barrels, 2)
	return b
}

func TestAnEditCorrectsItsRecord(t *testing.T) {
	b := readyBook(t)
	b.message(t, bot.Message{ID: "a", Text: "spent 20 straw"})
	b.message(t, bot.Message{ID: "a", Text: "spent 25 straw", Edit: true})
	require.Len(t, b.state(t).Spends, 1)
	require.Equal(t, 25.0, b.state(t).Spends[0].F.Amount)

	again := b.message(t, bot.Message{ID: "a", Text: "spent 25 straw", Edit: true})
	require.Empty(t, again.New, "an edit that changes no word changes nothing")
	require.Empty(t, again.Replies)

	b.message(t, bot.Message{ID: "never seen", Text: "spent 30 wire", Edit: true})
	require.Len(t, b.state(t).Spends, 2, "the edit of a message never seen is a message")
}

func TestAnEditDropsTheQuestionOfTheOldText(t *testing.T) {
	b := readyBook(t)
	b.message(t, bot.Message{ID: "a", Text: "3 bags in the hopper"})
	require.Len(t, b.state(t).Open(), 1)
	b.message(t, bot.Message{ID: "a", Text: "150 lb in the hopper", Edit: true})
	require.Empty(t, b.state(t).Open())
	require.Len(t, b.state(t).Refills, 1)
}

func TestAQuestionIsAnsweredWithTheOriginalTime(t *testing.T) {
	b := readyBook(t)
	out := b.text(t, "3 bags in the hopper")
	require.NotEmpty(t, out.Replies[0].Buttons)
	require.Empty(t, b.state(t).Refills)
	asked := b.now
	b.now = b.now.Add(3 * time.Hour)
	b.text(t, "50")
	h := b.state(t)
	require.Len(t, h.Refills, 1)
	require.InDelta(t, 150*0.45359237, *h.Refills[0].F.FeedKg, 0.01)
	require.InDelta(t, 50*0.45359237, h.Sizes["bag"], 0.01, "the size is kept")
	require.Equal(t, asked.Day(), h.Refills[0].At.Day())
	require.Empty(t, h.Open())

	b.text(t, "2 bags in the hopper")
	require.Len(t, b.state(t).Refills, 2, "asked once and kept")
}

func TestUndoNamesWhatItUndoes(t *testing.T) {
	b := readyBook(t)
	b.text(t, "fence 6.2")
	out := b.text(t, "undo")
	require.Contains(t, said(out), "6.2")
	require.Empty(t, b.state(t).Fences)
}

func TestUndoTakesBackWhatIsNamed(t *testing.T) {
	b := readyBook(t)
	b.text(t, "fence 6.2")
	b.text(t, "fence 5.1")
	out := b.text(t, "scrap the 6.2 on the fence, wrong wire")
	require.Contains(t, said(out), "6.2")
	require.Len(t, b.state(t).Fences, 1)
	require.InDelta(t, 5.1, b.state(t).Fences[0].F.Kv, 0.01)

	b.now = b.now.Add(2 * time.Hour)
	out = b.text(t, "forget what i said about the fence")
	require.Len(t, b.state(t).Fences, 1, "old enough to be asked about")
	b.text(t, out.Replies[0].Buttons[0][0])
	require.Empty(t, b.state(t).Fences)
}

func TestUndoOfADrugWantsATap(t *testing.T) {
	b := readyBook(t)
	b.text(t, "wormed all with fenbendazole, label says 6 days")
	require.Len(t, b.state(t).Worms, 1)
	out := b.text(t, "undo")
	require.Len(t, b.state(t).Worms, 1, "not yet")
	require.NotEmpty(t, out.Replies[0].Buttons)
	b.text(t, out.Replies[0].Buttons[0][0])
	require.Empty(t, b.state(t).Worms)
}

func TestUndoOfAnOldRecordWantsATap(t *testing.T) {
	b := readyBook(t)
	b.text(t, "fence 6.2")
	b.now = b.now.Add(2 * time.Hour)
	out := b.text(t, "undo")
	require.Len(t, b.state(t).Fences, 1)
	labels := out.Replies[0].Buttons[0]
	require.Len(t, labels, 2)
	b.text(t, labels[1])
	require.Len(t, b.state(t).Fences, 1, "kept")
}

func TestAHelperLogsTheRoundOnly(t *testing.T) {
	b := readyBook(t)
	kim := b.member(t, "Kim", store.Helper)
	b.message(t, bot.Message{ID: "h1", From: kim, Text: "fence 6.2"})
	require.Len(t, b.state(t).Fences, 1)
	for _, text := range []string{"wormed all with fenbendazole, label says 6 days", "spent 20 straw", "undo"} {
		out := b.message(t, bot.Message{ID: text, From: kim, Text: text})
		require.Contains(t, said(out), "owner or family", text)
	}
	h := b.state(t)
	require.Empty(t, h.Worms)
	require.Empty(t, h.Spends)
	require.Len(t, h.Fences, 1)
}

func TestAHelperSeesNoMoney(t *testing.T) {
	b := readyBook(t)
	kim := b.member(t, "Kim", store.Helper)
	b.text(t, "spent 61 straw")
	for _, text := range []string{"what do they cost?", "cost picture", "what have I logged", "what did we spend last week"} {
		out := b.message(t, bot.Message{ID: text, From: kim, Text: text})
		require.Contains(t, said(out), "owner or family", text)
		require.NotContains(t, said(out), "61", text)
		require.Empty(t, out.Replies[0].Answers, text)
		require.Empty(t, out.Replies[0].Pictures, text)
	}
	require.Contains(t, said(b.text(t, "what do they cost?")), "61")
	out := b.message(t, bot.Message{ID: "fence", From: kim, Text: "how much feed is left?"})
	require.NotContains(t, said(out), "owner or family")
}

func TestAlarmsAreAnyones(t *testing.T) {
	for _, text := range []string{"PIGS OUT", "pig down", "no water"} {
		b := openBook(t, store.Options{Ephemeral: true}) // nothing set up
		kim := b.member(t, "Kim", store.Helper)
		out := b.message(t, bot.Message{ID: "1", From: kim, Text: text})
		require.True(t, strings.HasPrefix(said(out), "⚠"), "%s: %s", text, said(out))
		require.Len(t, b.state(t).Alarms, 1, text)
	}
}

func TestWhatIsNoTextIsSaidSo(t *testing.T) {
	b := readyBook(t)
	for _, medium := range []string{"voice", "photo", "sticker", "location", "hologram"} {
		out := b.message(t, bot.Message{ID: medium, Medium: medium})
		require.Contains(t, said(out), "only read text", medium)
	}
	for name, text := range map[string]string{"damaged": "fed \xff\xfe", "too long": strings.Repeat("ab ", 2000)} {
		out := b.message(t, bot.Message{ID: name, Text: text})
		require.Contains(t, said(out), "Nothing recorded", name)
		require.Empty(t, out.New)
	}
}

func TestInvitations(t *testing.T) {
	b := readyBook(t)
	require.Contains(t, said(b.text(t, "invite")), "family")
	require.Contains(t, said(b.text(t, "invite helper")), "helper")
	require.Contains(t, said(b.text(t, "invite herd")), "Only the operator")
	kim := b.member(t, "Kim", store.Family)
	require.Contains(t, said(b.message(t, bot.Message{ID: "k", From: kim, Text: "invite"})), "Only the owner")
}

func TestSettingUpCanBeSkipped(t *testing.T) {
	b := openBook(t, store.Options{Ephemeral: true})
	out := b.text(t, "start")
	questions := 0
	for strings.Contains(said(out), "?") {
		questions++
		require.LessOrEqual(t, questions, 5, "five questions at most")
		labels := out.Replies[len(out.Replies)-1].Buttons
		last := labels[len(labels)-1]
		require.Equal(t, "skip", last[len(last)-1])
		out = b.text(t, "skip")
	}
	require.Equal(t, 5, questions)
	require.Empty(t, b.state(t).Open())
	require.Contains(t, said(b.text(t, "fence 6.2")), "6.2", "it works without any of it")
}

func TestAFirstWordBeginsTheConversation(t *testing.T) {
	b := openBook(t, store.Options{Ephemeral: true})
	require.Contains(t, said(b.text(t, "hello")), "How many pigs")
	require.NotContains(t, said(b.text(t, "hello again")), "How many pigs", "asked once")
}

func TestAQuestionCanBeTurnedDown(t *testing.T) {
	b := readyBook(t)
	b.text(t, "3 bags in the hopper")
	require.Len(t, b.state(t).Open(), 1)
	require.Contains(t, said(b.text(t, "never mind")), "Dropped")
	require.Empty(t, b.state(t).Open())
	require.Empty(t, b.state(t).Refills)
}

func TestAMovedAppointmentTakesThePlaceOfTheOld(t *testing.T) {
	b := readyBook(t)
	b.text(t, "butcher sep 15 4 pigs")
	b.text(t, "butcher moved us to sep 22")
	h := b.state(t)
	require.Len(t, h.Bookings, 1)
	require.Equal(t, "2026-09-22", h.Bookings[0].F.Day.String())
	require.Equal(t, 4, h.Bookings[0].F.Count)
	b.text(t, "undo")
	h = b.state(t)
	require.Len(t, h.Bookings, 1)
	require.Equal(t, "2026-09-15", h.Bookings[0].F.Day.String(), "the old one stands again")
	b.text(t, "butcher oct 27 2 pigs")
	require.Len(t, b.state(t).Bookings, 2, "a further appointment stands beside the first")
}

func TestTheFirstUnitsAreTheHerds(t *testing.T) {
	for _, tt := range []struct{ text, units, says string }{
		{"3 pigs came today, 25 kg each", "metric", "25 kg"},
		{"3 pigs came today, 48 lb each", "us", "48 lb"},
		{"3 pigs came today", "", ""},
	} {
		b := openBook(t, store.Options{Ephemeral: true})
		out := b.text(t, tt.text)
		require.Equal(t, tt.units, b.state(t).Units, tt.text)
		require.Contains(t, said(out), tt.says)
		b.text(t, "undo")
		require.Empty(t, b.state(t).Animals, "undo speaks of what was said")
	}
	b := openBook(t, store.Options{Ephemeral: true})
	b.text(t, "US units. 3 pigs came today, 25 kg each")
	require.Equal(t, "us", b.state(t).Units, "what is chosen stands")
}

// The answer that closes a set-up says when the pigs are ready once.
func TestSetUpIsSummedUpOnce(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, "hi")
	got := b.text(t, "4 pigs 48 lb, target 265, feeder 55 gal, 2 water barrels 55 gal, sat 7 am, it is 8:11 am here").Replies[0].Text
	require.Regexp(t, `(?m)^4 pigs came, 48 lb each\.$`, got)
	m := regexp.MustCompile(`Set\. 265 lb about \w{3} (\w{3} \d+) \((\w{3} \d+)–(\w{3} \d+)\)`).FindStringSubmatch(got)
	require.NotNil(t, m, got)
	for _, day := range m[1:] {
		require.Equal(t, 1, strings.Count(got, day), "%s in: %s", day, got)
	}
}
