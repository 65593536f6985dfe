package document

import (
	"bytes"
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
		"Hill &amp; &lt;b&gt;Dale&lt;/b&gt;: season report", "Sat 25 Jul 2026", "77 lb, Fri 22 May", "fenbendazole", "40 days",
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

// The file reads back, each event has what RFC 5545 requires (sections 3.6.1 and
// 3.1), times lie in the herd's zone, and a date keeps its UID when it moves.
func TestCalendar(t *testing.T) {
	before, err := Calendar(herd(model.DateDay(2026, 9, 15)), "1-abc", july)
	require.NoError(t, err)
	for _, l := range strings.SplitAfter(string(before), "\n") {
		require.LessOrEqual(t, len(l), 77, "folded at 75 octets and the line's end: %q", l)
		require.True(t, l == "" || strings.HasSuffix(l, "\r\n"), "%q", l)
	}
	uids := map[string]*ics.VEvent{}
	cal, err := ics.ParseCalendar(bytes.NewReader(before))
	require.NoError(t, err)
	require.Len(t, cal.Timezones(), 1)
	for _, e := range cal.Events() {
		for _, p := range []ics.ComponentProperty{ics.ComponentPropertyUniqueId, ics.ComponentPropertyDtstamp, ics.ComponentPropertyDtStart, ics.ComponentPropertyDtEnd, ics.ComponentPropertySummary} {
			require.NotNil(t, e.GetProperty(p), "%s of %s", p, e.Id())
		}
		require.Nil(t, uids[e.Id()], "%s twice", e.Id())
		uids[e.Id()] = e
	}
	butcher := uids["butcher-1-1-abc@troughbell"]
	require.NotNil(t, butcher)
	at, err := butcher.GetStartAt()
	require.NoError(t, err)
	require.True(t, at.Equal(time.Date(2026, 9, 15, 7, 0, 0, 0, newYork)), at)
	require.NotNil(t, uids["round-20260801-1-abc@troughbell"])
	clear := uids["clear-1-1-abc@troughbell"] // Olive's; Rufus has a drug of unknown days
	require.NotNil(t, clear)
	require.Contains(t, clear.GetProperty(ics.ComponentPropertySummary).Value, "Olive")
	require.NotContains(t, clear.GetProperty(ics.ComponentPropertySummary).Value, "Rufus")
	found := false
	for id, e := range uids {
		if strings.HasPrefix(id, "remind-") {
			found = true
			require.Equal(t, "20260803", e.GetProperty(ics.ComponentPropertyDtStart).Value)
			require.Contains(t, e.GetProperty(ics.ComponentPropertySummary).Value, "order straw; and hay, and hay,")
		}
	}
	require.True(t, found)

	later, err := Calendar(herd(model.DateDay(2026, 9, 16)), "1-abc", july.Add(time.Hour))
	require.NoError(t, err)
	cal, err = ics.ParseCalendar(bytes.NewReader(later))
	require.NoError(t, err)
	moved := false
	for _, e := range cal.Events() {
		if e.Id() != butcher.Id() {
			continue
		}
		moved = true
		at, err := e.GetStartAt()
		require.NoError(t, err)
		require.True(t, at.Equal(time.Date(2026, 9, 16, 7, 0, 0, 0, newYork)), at)
		require.Greater(t, e.GetProperty(ics.ComponentPropertySequence).Value, butcher.GetProperty(ics.ComponentPropertySequence).Value)
	}
	require.True(t, moved)
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
