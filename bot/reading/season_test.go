package reading

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// Seasons that are over are asked for by "last" or their year; what is no question
// about one is read as ever.
func TestSeasonsAskedFor(t *testing.T) {
	now := time.Date(2026, 7, 4, 8, 0, 0, 0, time.UTC)
	rec := func(y int, m time.Month, f model.Fact) model.Record {
		on := model.DateDay(y, m, 2)
		return model.Record{ID: on.String(), On: on, At: on.At(600, time.UTC), Fact: f}
	}
	h := model.Fold([]model.Record{
		rec(2025, 5, model.Arrive{Count: 2, Animals: []string{"Gus", "Dot"}}),
		rec(2025, 10, model.Gone{Animals: []string{model.All}, How: model.Butchered}),
		rec(2026, 5, model.Arrive{Count: 1, Animals: []string{"Ada"}}),
	})
	read := func(text string) Act {
		got := Read(Context{Herd: h, Now: now}, text)
		require.Len(t, got.Entries, 1, text)
		return got.Entries[0].Act
	}
	for text, season := range map[string]string{
		"last season": LastSeason, "report last season": LastSeason, "season report 2025": "2025", "report for 2025": "2025", "2025 season": "2025",
		"How did last year go?": "2025", "how was last season": LastSeason, "show me last season": LastSeason, "the previous batch": LastSeason,
		"how did we do in 2025?": "2025", "report 2019": "2019",
	} {
		require.Equal(t, Do{What: "report", Arg: season}, read(text), text)
	}
	for text, want := range map[string]Ask{
		"graph of last season":            {Topic: "growth", Season: LastSeason, Picture: true},
		"growth last year":                {Topic: "growth", Season: "2025", Picture: true},
		"growth picture 2025":             {Topic: "growth", Season: "2025", Picture: true},
		"graph of Gus last season":        {Topic: "growth", Season: LastSeason, Picture: true, Animals: []string{"Gus"}},
		"calendar 2025":                   {Topic: "today", Season: "2025", Picture: true},
		"last season's calendar":          {Topic: "today", Season: LastSeason, Picture: true},
		"What did last season cost?":      {Topic: "cost", Season: LastSeason},
		"how much did we spend last year": {Topic: "cost", Season: "2025"},
		"cost picture 2025":               {Topic: "cost", Season: "2025", Picture: true},
	} {
		require.Equal(t, want, read(text), text)
	}
	for _, text := range []string{"2025", "2025 lb", "last year we lost one", "last season Gus hung 190 lb", "report 2031"} {
		got := Read(Context{Herd: h, Now: now}, text)
		for _, e := range got.Entries {
			require.NotEqual(t, "report", func() string { d, _ := e.Act.(Do); return d.What }(), text)
		}
	}
}
