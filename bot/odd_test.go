package bot_test

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/store"
)

// look looks at the herd at an hour of the book's day.
func (b *book) look(tb testing.TB, hour int) []bot.Push {
	tb.Helper()
	y, m, d := b.now.Date()
	b.now = time.Date(y, m, d, hour, 0, 0, 0, b.zone)
	var out []bot.Push
	require.NoError(tb, b.store.Write(context.Background(), func(tx *store.Tx) error {
		var err error
		out, err = b.desk.Look(tx, b.herd, b.now, time.Time{})
		return err
	}))
	return out
}

// askedOfFeed is a herd that took far more feed in a week than it eats, and the
// question on it.
func askedOfFeed(t *testing.T) (*book, bot.Push) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	b.text(t, "filled 200 lb from empty, full")
	b.text(t, "sheds and oak full")
	for _, lb := range []int{110, 115, 120, 195} {
		b.now = b.now.AddDate(0, 0, 7)
		b.look(t, 7)
		b.text(t, fmt.Sprintf("fed %d lb, full", lb))
		b.text(t, "both barrels full")
	}
	for _, p := range b.look(t, 19) {
		if len(p.Nudge.Lines) == 1 && len(p.Nudge.Lines[0].Choices) > 0 {
			return b, p
		}
	}
	require.Fail(t, "no question came")
	return nil, bot.Push{}
}

func last(h *model.Herd) (model.Refill, model.Refill) {
	n := len(h.Refills)
	return h.Refills[n-2].F, h.Refills[n-1].F
}

func TestQuestionsOnFeedAreAnswered(t *testing.T) {
	for _, tt := range []struct {
		say, want string
		check     func(t *testing.T, h *model.Herd)
	}{
		{"spilled or wasted", "spilled", func(t *testing.T, h *model.Herd) {
			require.Len(t, h.FeedLevels, 1)
			require.True(t, h.FeedLevels[0].F.Spilled)
			require.True(t, h.FeedLevels[0].At.Before(h.Refills[len(h.Refills)-1].At))
		}},
		{"2", "spilled", func(t *testing.T, h *model.Herd) { require.Len(t, h.FeedLevels, 1) }},
		{"raccoons", "spilled", func(t *testing.T, h *model.Herd) { require.Len(t, h.FeedLevels, 1) }},
		{"red hopper spilled 60 lb", "spilled 60 lb", func(t *testing.T, h *model.Herd) {
			require.Len(t, h.FeedLevels, 1)
			require.True(t, h.FeedLevels[0].At.Before(h.Refills[len(h.Refills)-1].At), "it was spilled before the fill")
		}},
		{"they ate it", "Kept", func(t *testing.T, h *model.Herd) { require.Empty(t, h.FeedLevels) }},
		{"not full last time", "120 lb", func(t *testing.T, h *model.Herd) {
			before, now := last(h)
			require.False(t, before.Full)
			require.True(t, now.Full)
		}},
	} {
		t.Run(tt.say, func(t *testing.T) {
			b, p := askedOfFeed(t)
			require.Equal(t, []string{"spilled or wasted", "other animals", "they ate it", "not full last time"}, joined(p.Buttons))
			require.Len(t, b.state(t).OddFeed(), 1)
			helper := b.member(t, "Pete", store.Family) // anyone may answer
			got := said(b.message(t, bot.Message{ID: "a", Text: tt.say, From: helper}))
			require.Contains(t, got, tt.want)
			h := b.state(t)
			tt.check(t, h)
			require.Empty(t, h.Open())
			if tt.say != "not full last time" {
				require.Empty(t, h.OddFeed())
			}
			for _, p := range append(b.look(t, 20), b.look(t, 20)...) {
				require.NotContains(t, p.Text, "What took the rest", "asked once")
			}
		})
	}
}

func joined(rows [][]string) []string {
	var out []string
	for _, r := range rows {
		out = append(out, r...)
	}
	return out
}

// A press below the nudge answers it whenever it comes, a bare word for a day and
// a half.
func TestQuestionsInNudgesStand(t *testing.T) {
	b, p := askedOfFeed(t)
	b.now = b.now.AddDate(0, 0, 3)
	require.NotContains(t, said(b.text(t, "they ate it")), "Kept")
	require.Len(t, b.state(t).Open(), 1)
	require.Contains(t, said(b.message(t, bot.Message{ID: "press", Text: "they ate it", ReplyNudge: p.Nudge.Key})), "Kept")
	require.Empty(t, b.state(t).Open())
}

func TestWhyAfterANudge(t *testing.T) {
	b, p := askedOfFeed(t)
	got := said(b.text(t, "why?"))
	require.Contains(t, got, "195 lb gone since")
	require.LessOrEqual(t, strings.Count(got, "\n"), 2)
	b.text(t, "how long till butcher?")
	later := said(b.text(t, "why?"))
	require.NotContains(t, later, "195 lb gone", "the question is the later of the two")
	require.Contains(t, said(b.message(t, bot.Message{ID: "reply", Text: "why?", ReplyNudge: p.Nudge.Key})), "195 lb gone since")
}

// A note that tells what it was spares the question.
func TestTroubleToldIsNotAsked(t *testing.T) {
	for note, asked := range map[string]bool{"note nipple stuck open on oak": false, "note the butcher called": true} {
		b := openBook(t, store.Options{})
		b.text(t, setUp)
		b.text(t, "both barrels full")
		b.now = b.now.AddDate(0, 0, 1)
		b.text(t, "oak empty")
		require.Len(t, b.state(t).OddWater(), 1)
		b.text(t, note)
		b.text(t, "oak full")
		found := false
		for _, p := range b.look(t, 19) {
			found = found || strings.Contains(p.Text, "What was it?")
		}
		require.Equal(t, asked, found, note)
	}
	require.True(t, reading.Trouble("raccoons got the lid off"))
}
