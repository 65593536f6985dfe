package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// pictureHerd is an invented herd with names that pictures are asked for by.
func pictureHerd(t *testing.T) reading.Context {
	t.Helper()
	at := time.Date(2026, 5, 2, 9, 0, 0, 0, time.UTC)
	facts := []model.Fact{
		model.Arrive{Count: 3, Animals: []string{"Dot", "Big Tom", "Moss"}, WeightKg: model.Float(20)},
		model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "red hopper", CapacityKg: model.Float(90)}},
		model.Setting{Key: model.SetBarrel, Thing: &model.Thing{Name: "oak", CapacityL: model.Float(200)}},
	}
	var records []model.Record
	for _, f := range facts {
		records = append(records, model.Record{On: model.DayOf(at), At: at, Fact: f})
	}
	return reading.Context{Now: at.AddDate(0, 0, 30), Herd: model.Fold(records)}
}

func TestPictured(t *testing.T) {
	c := pictureHerd(t)
	for _, x := range []struct {
		text    string
		topic   string // empty: no picture
		animals []string
		dark    bool
	}{
		{"picture", "growth", nil, false},
		{"chart", "growth", nil, false},
		{"Chart please", "growth", nil, false},
		{"graph of weights", "growth", nil, false},
		{"show me the growth", "growth", nil, false},
		{"growth curve", "growth", nil, false},
		{"can you draw me a graph of how they are growing?", "growth", nil, false},
		{"plot dot", "growth", []string{"Dot"}, false},
		{"Dot's chart", "growth", []string{"Dot"}, false},
		{"graph big tom and moss", "growth", []string{"Big Tom", "Moss"}, false},
		{"picture of the feed", "feed_left", nil, false},
		{"feed chart", "feed_left", nil, false},
		{"chart of the red hopper", "feed_left", nil, false},
		{"show me a picture of the water", "water_left", nil, false},
		{"oak graph", "water_left", nil, false},
		{"heat chart", "heat", nil, false},
		{"graph of the weather", "heat", nil, false},
		{"calendar", "today", nil, false},
		{"show me the season", "today", nil, false},
		{"picture of the season", "today", nil, false},
		{"cost picture", "cost", nil, false},
		{"chart what we spent", "", nil, false},
		{"chart of spending", "cost", nil, false},
		{"dark picture", "growth", nil, true},
		{"dark picture of the feed", "feed_left", nil, true},
		// Told, not asked for.
		{"took a picture of dot", "", nil, false},
		{"moved to plot 3", "", nil, false},
		{"plot 3", "", nil, false},
		{"dot 38 girth, chart later", "", nil, false},
		{"I drew a chart of the pen", "", nil, false},
		{"show me the money", "", nil, false},
		{"calendar file", "", nil, false},
		{"seen the feed", "", nil, false},
		{"see dot tomorrow", "", nil, false},
	} {
		t.Run(x.text, func(t *testing.T) {
			got := reading.Read(c, x.text)
			ask, ok := got.Entries[0].Act.(reading.Ask)
			if x.topic == "" {
				require.False(t, ok && ask.Picture, "%+v", ask)
				return
			}
			require.True(t, ok, "%+v", got.Entries[0])
			require.True(t, ask.Picture)
			require.Equal(t, x.topic, ask.Topic)
			require.Equal(t, x.animals, ask.Animals)
			require.Equal(t, x.dark, ask.Dark)
			require.Empty(t, got.Left)
		})
	}
}

func TestPictureOfWhatWasAsked(t *testing.T) {
	c := pictureHerd(t)
	c.LastAsked = &reading.Ask{Topic: "feed_left"}
	ask := reading.Read(c, "as a picture please").Entries[0].Act.(reading.Ask)
	require.Equal(t, "feed_left", ask.Topic)
	c.LastAsked = &reading.Ask{Topic: "withdrawal"} // is not drawn
	ask = reading.Read(c, "as a picture please").Entries[0].Act.(reading.Ask)
	require.Equal(t, "growth", ask.Topic)
}

func TestPictureStyleIsSet(t *testing.T) {
	c := pictureHerd(t)
	for text, style := range map[string]string{
		"dark pictures": model.DarkPictures, "pictures dark": model.DarkPictures, "Dark mode": model.DarkPictures,
		"light pictures": model.LightPictures, "light mode": model.LightPictures,
	} {
		f, ok := reading.Read(c, text).Entries[0].Act.(reading.Fact)
		require.True(t, ok, text)
		require.Equal(t, model.Setting{Key: model.SetPictures, Text: style}, f.Fact, text)
	}
}
