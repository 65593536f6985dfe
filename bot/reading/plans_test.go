package reading

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Coming home early and moving an appointment, each read against the plans there are.
func TestPlansThatChange(t *testing.T) {
	day := func(s string) model.Day {
		d, err := model.ParseDay(s)
		require.NoError(t, err)
		return d
	}
	at := day("2026-04-18").At(600, time.UTC)
	records := []model.Record{
		{ID: "r1", On: day("2026-04-18"), At: at, Fact: model.Arrive{Count: 3, Animals: []string{"Tank", "Hank", "Ivy"}, WeightKg: model.Float(22)}},
		{ID: "r2", On: day("2026-04-18"), At: at, Fact: model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: "pen 7"}}},
		{ID: "r3", On: day("2026-06-18"), At: at.AddDate(0, 2, 0), Fact: model.Booked{Day: day("2026-09-01"), Count: 2, Animals: []string{"Hank", "Ivy"}}},
		{ID: "r4", On: day("2026-06-18"), At: at.AddDate(0, 2, 0), Fact: model.AwayFrom{From: day("2026-07-01"), To: day("2026-07-10")}},
	}
	out := model.Record{ID: "r5", On: day("2026-07-05"), At: day("2026-07-05").At(500, time.UTC), Fact: model.Alarm{What: model.AlarmOut}}
	read := func(now, text string, more ...model.Record) Entry {
		got := Read(Context{Now: day(now).At(600, time.UTC), Herd: model.Fold(append(records[:len(records):len(records)], more...))}, text)
		require.Len(t, got.Entries, 1, text)
		return got.Entries[0]
	}
	for _, text := range []string{"back home", "Home early!", "we're back", "We are home", "got home", "back from the trip", "I'm back home now"} {
		e := read("2026-07-05", text)
		require.Equal(t, Fact{model.AwayFrom{From: day("2026-07-01"), To: day("2026-07-04")}}, e.Act, text)
		require.Equal(t, "r4", e.Replace)
	}
	require.Equal(t, Fact{model.AwayFrom{From: day("2026-07-01"), To: day("2026-07-03")}}, read("2026-07-05", "back home yesterday").Act)
	require.Equal(t, Undo{Of: "away", Record: "r4"}, read("2026-07-01", "home again").Act)
	require.Equal(t, "none", read("2026-07-20", "back home").Act.Intent())
	require.Equal(t, "alarm", read("2026-07-05", "they're back home", out).Act.Intent())

	for _, c := range []struct {
		text, on string
		names    []string
	}{
		{"move hank to sep 15", "2026-09-15", []string{"Hank"}},
		{"push hank and ivy back to the 8th", "2026-09-08", []string{"Hank", "Ivy"}},
		{"move sep 1 to sep 3", "2026-09-03", []string{"Hank", "Ivy"}},
		{"reschedule the butcher to 9/4", "2026-09-04", []string{"Hank", "Ivy"}},
	} {
		e := read("2026-07-20", c.text)
		require.Equal(t, Fact{model.Booked{Day: day(c.on), Count: len(c.names), Animals: c.names}}, e.Act, c.text)
		require.Equal(t, day("2026-09-01"), e.InsteadOf)
	}
	require.Equal(t, "day_or_pen", read("2026-07-20", "move hank to 15").Act.(Clarify).Code)
	for _, text := range []string{"move hank to pen 7", "moved hank to pen 7"} {
		require.Equal(t, "move", read("2026-07-20", text).Act.Intent(), text)
	}
	require.NotEqual(t, "booked", read("2026-07-20", "move tank to sep 15").Act.Intent()) // he is in no appointment
}
