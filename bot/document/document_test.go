package document

import (
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/require"

	"troughbell/model"
)

var (
	newYork = func() *time.Location {
		l, err := time.LoadLocation("America/New_York")
		if err != nil {
			panic(err)
		}
		return l
	}()
	july = time.Date(2026, 7, 25, 8, 0, 0, 0, newYork)
)

func ptr[T any](v T) *T { return &v }

// herd is an invented herd with something of everything; moved is on which day
// its butcher is booked.
func herd(booked model.Day) *model.Herd {
	n := 0
	rec := func(day int, f model.Fact) model.Record {
		n++
		on := model.DateDay(2026, 5, 2) + model.Day(day)
		return model.Record{ID: "r" + strings.Repeat("1", n), On: on, At: on.At(9*60, newYork), Fact: f}
	}
	return model.Fold([]model.Record{
		rec(0, model.Setting{Key: model.SetHerd, Text: "Hill & <b>Dale</b>"}),
		rec(0, model.Arrive{Count: 2, Animals: []string{"Olive", "Rufus"}, WeightKg: ptr(22.0)}),
		rec(20, model.Weigh{Animals: []string{"Olive"}, WeightKg: 35, By: model.ByScale}),
		rec(60, model.Worm{Treatment: model.Treatment{Animals: []string{model.All}, Product: "fenbendazole", WithdrawalDays: ptr(40)}}),
		rec(61, model.Treat{Treatment: model.Treatment{Animals: []string{"Rufus"}}}),
		rec(62, model.Spend{Amount: 40, Currency: "USD", What: "=straw"}),
		rec(63, model.Sick{Animals: []string{"Olive"}, Note: "coughing"}),
		rec(64, model.Booked{Day: booked, Minute: ptr(7 * 60)}),
		rec(64, model.Remind{Day: model.DateDay(2026, 8, 3), What: "order straw; " + strings.Repeat("and hay, ", 12)}),
	})
}

// The report stands by itself, says what the label decides, and takes no text for
// markup.
func TestReportStandsByItself(t *testing.T) {
	b, err := Report(herd(model.DateDay(2026, 9, 15)), july)
	require.NoError(t, err)
	page := string(b)
	for _, part := range []string{
		"Hill &amp; &lt;b&gt;Dale&lt;/b&gt;: season report", "Sat Jul 25 2026", "77 lb, Fri May 22", "fenbendazole", "40 days",
		"days not known", "NOT CLEAR", "coughing", "$40", "the label and the vet decide", "Butcher",
	} {
		require.Contains(t, page, part)
	}
	for _, no := range []string{"<script", "http:", "https:", "src=", "url(", "<link", "<b>Dale"} {
		require.NotContains(t, page, no)
	}
	empty, err := Report(model.Fold(nil), july)
	require.NoError(t, err)
	require.Contains(t, string(empty), "Nothing is recorded yet.")
}

// Each change of the clock is written with the offsets on both its sides.
func TestZones(t *testing.T) {
	for name, want := range map[string][]string{
		"America/New_York": {"-0500>-0400", "-0400>-0500", "-0500>-0400", "-0400>-0500", "-0500>-0400"},
		"Asia/Kathmandu":   {"+0530>+0545"},
	} {
		loc, err := time.LoadLocation(name)
		require.NoError(t, err)
		var got []string
		for _, c := range zoneOf(loc, july).Components {
			p := c.(*ics.GeneralComponent)
			got = append(got, p.GetProperty("TZOFFSETFROM").Value+">"+p.GetProperty("TZOFFSETTO").Value)
		}
		require.Equal(t, want, got, name)
	}
	require.Equal(t, "+1234", offset(12*3600+34*60))
	require.Equal(t, "-003020", offset(-(30*60 + 20)))
}
