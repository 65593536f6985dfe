package schedule

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// What must be bought is told at an hour of its own; the other message of that day
// keeps its hour.
func TestShoppingHasItsOwnHour(t *testing.T) {
	f := calm()
	f.move = d("2026-05-14")
	told := func(more ...model.Fact) []string {
		l := newHerd(t, "America/Chicago").add("2026-05-04 09:00", model.Recipe{Ingredients: map[string]float64{"corn": 34, "soybean meal 48": 10}},
			model.Stock{Ingredient: "soybean meal 48", FeedKg: model.Float(1), Counted: true})
		l.add("2026-05-04 09:30", more...)
		l.add("2026-05-07 12:00", model.Question{About: "refill", Code: "bag_size"})
		var out []string
		f := f
		f.feedDays = 6
		for _, s := range l.walk("2026-05-07 08:00", "2026-05-08 23:00", with(f)) {
			for _, x := range s.Lines {
				if x.Grade == Routine {
					out = append(out, s.at.Format("Mon 15:04 ")+x.Code)
				}
			}
		}
		return out
	}
	require.Equal(t, []string{"Thu 19:00 check_question", "Fri 17:00 stock_eve"}, told())
	require.Equal(t, []string{"Thu 19:00 check_question", "Fri 15:30 stock_eve"}, told(model.Setting{Key: model.SetShop, List: []string{"15:30"}}))
	require.Equal(t, []string{"Thu 19:00 check_question", "Fri 19:00 stock_eve"}, told(model.Setting{Key: model.SetShop, List: []string{"23:30"}})) // in the quiet hours
}

// A topic that was stopped comes again once it is wanted again.
func TestAStoppedTopicComesAgain(t *testing.T) {
	f := calm()
	f.move = d("2026-05-10")
	said := func(l *log) []string {
		var out []string
		for _, s := range l.walk("2026-05-04 08:00", "2026-05-17 12:00", with(f)) {
			for _, x := range s.Lines {
				if x.About == aboutMove {
					out = append(out, s.at.Format("01-02 ")+x.Code)
				}
			}
		}
		return out
	}
	stop := model.Snooze{Topics: []string{aboutMove}, Stop: true}
	for _, topic := range []string{aboutMove, model.All} {
		again := model.Setting{Key: model.SetUnmute, Text: topic}
		require.Equal(t, []string{"05-09 move_due", "05-16 move_due"}, said(newHerd(t, "America/Chicago").add("2026-05-09 12:00", stop).add("2026-05-09 13:00", again)))
		require.Equal(t, []string{"05-16 move_due"}, said(newHerd(t, "America/Chicago").add("2026-05-04 12:00", model.Setting{Key: model.SetMute, Text: aboutMove}).add("2026-05-11 13:00", again)))
	}
	require.Equal(t, []string{"05-09 move_due"}, said(newHerd(t, "America/Chicago").add("2026-05-09 12:00", stop).add("2026-05-09 13:00", model.Setting{Key: model.SetUnmute, Text: aboutWallow})))
}

// Where chores are done every day what waits for days is told once a week.
func TestDailyChoresTellOnceAWeekWhatWaits(t *testing.T) {
	f := calm()
	f.worm, f.waterDays = d("2026-05-01"), 1.5
	l := newHerd(t, "America/Chicago").add("2026-05-04 09:00", model.Setting{Key: model.SetChore, List: []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"}})
	worm, water := 0, 0
	for _, s := range l.walk("2026-05-05 06:00", "2026-05-18 23:00", with(f)) { // fourteen rounds
		for _, x := range s.Lines {
			if s.Standing && x.About == aboutWorm {
				worm++
			}
			if s.Standing && x.About == aboutWater {
				water++
			}
		}
	}
	require.Equal(t, 2, worm)
	require.Equal(t, 14, water)
}
