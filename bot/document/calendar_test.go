package document

import (
	"bytes"
	"strconv"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// phone is a calendar program that takes in files: an event of a known UID goes
// over the one it has where its sequence is higher, or the same and made later
// (RFC 5546, section 2.1.5), and one that is cancelled goes away.
type phone struct {
	events map[string]*ics.VEvent
	gone   map[string]int64
}

func newPhone() phone { return phone{map[string]*ics.VEvent{}, map[string]int64{}} }

func prop(t *testing.T, e *ics.VEvent, p ics.ComponentProperty) string {
	t.Helper()
	require.NotNil(t, e.GetProperty(p), "%s of %s", p, e.Id())
	return e.GetProperty(p).Value
}

func sequence(t *testing.T, e *ics.VEvent) int64 {
	t.Helper()
	n, err := strconv.ParseInt(prop(t, e, ics.ComponentPropertySequence), 10, 32) // what clients hold
	require.NoError(t, err)
	return n
}

// take takes in a file, which has all that RFC 5545 requires of each event (sections
// 3.1 and 3.6.1), and gives which UIDs changed.
func (p phone) take(t *testing.T, file []byte) (changed []string) {
	t.Helper()
	for _, l := range strings.SplitAfter(string(file), "\n") {
		require.LessOrEqual(t, len(l), 77, "folded at 75 octets and the line's end: %q", l)
		require.True(t, l == "" || strings.HasSuffix(l, "\r\n"), "%q", l)
	}
	cal, err := ics.ParseCalendar(bytes.NewReader(file))
	require.NoError(t, err)
	seen := map[string]bool{}
	for _, e := range cal.Events() {
		require.False(t, seen[e.Id()], "%s twice", e.Id())
		seen[e.Id()] = true
		for _, must := range []ics.ComponentProperty{ics.ComponentPropertyDtstamp, ics.ComponentPropertyDtStart, ics.ComponentPropertyDtEnd, ics.ComponentPropertySummary} {
			prop(t, e, must)
		}
		was, n := p.gone[e.Id()], sequence(t, e)
		if have := p.events[e.Id()]; have != nil {
			was = sequence(t, have)
			same := event(t, have) == event(t, e)
			require.Equal(t, same, n == was, "the sequence of %s rises with a change: %d %d", e.Id(), was, n)
		}
		switch {
		case n <= was:
			require.Equal(t, was, n, "a sequence never falls: %s", e.Id())
		case prop(t, e, ics.ComponentPropertyStatus) == string(ics.ObjectStatusCancelled):
			delete(p.events, e.Id())
			p.gone[e.Id()] = n
			changed = append(changed, e.Id())
		default:
			p.events[e.Id()] = e
			changed = append(changed, e.Id())
		}
	}
	return changed
}

// event is what is seen of one.
func event(t *testing.T, e *ics.VEvent) string {
	t.Helper()
	return strings.Join([]string{
		prop(t, e, ics.ComponentPropertySummary), prop(t, e, ics.ComponentPropertyDtStart), prop(t, e, ics.ComponentPropertyDtEnd),
		prop(t, e, ics.ComponentPropertyStatus),
	}, "|")
}

// days lists the events of a summary, as their UIDs and beginnings.
func (p phone) days(t *testing.T, summary string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for id, e := range p.events {
		if strings.Contains(prop(t, e, ics.ComponentPropertySummary), summary) {
			out[id] = prop(t, e, ics.ComponentPropertyDtStart)
		}
	}
	return out
}

// seasonOf is an invented herd with something of everything, and then some facts
// more, each of the day in July that stands with it.
func seasonOf(more ...model.Record) *model.Herd {
	n := 0
	rec := func(day int, f model.Fact) model.Record {
		n++
		on := model.DateDay(2026, 5, 2) + model.Day(day)
		return model.Record{ID: "r" + strconv.Itoa(n), On: on, At: on.At(9*60, newYork), Fact: f}
	}
	return model.Fold(append([]model.Record{
		rec(0, model.Setting{Key: model.SetHerd, Text: "Hill and Dale"}),
		rec(0, model.Arrive{Count: 2, Animals: []string{"Olive", "Rufus"}, WeightKg: ptr(22.0)}),
		rec(0, model.Setting{Key: model.SetFeeder, Thing: &model.Thing{Name: "hopper", CapacityKg: ptr(120.0)}}),
		rec(60, model.Worm{Treatment: model.Treatment{Animals: []string{model.All}, Product: "fenbendazole", WithdrawalDays: ptr(40)}}),
		rec(61, model.Treat{Treatment: model.Treatment{Animals: []string{"Rufus"}}}),
		rec(64, model.Booked{Day: model.DateDay(2026, 9, 15), Minute: ptr(7 * 60)}),
		rec(64, model.Booked{Day: model.DateDay(2026, 10, 6)}),
		rec(64, model.Remind{Day: model.DateDay(2026, 8, 3), What: "order straw; " + strings.Repeat("and hay, ", 12)}),
		rec(64, model.Remind{Day: model.DateDay(2026, 8, 4), What: "book the trailer"}),
		rec(80, model.Refill{Feeder: "hopper", Full: true}),
	}, more...))
}

func later(id string, day int, f model.Fact) model.Record {
	on := model.DateDay(2026, 7, day)
	return model.Record{ID: id, On: on, At: on.At(10*60, newYork), Fact: f}
}

// A calendar that takes in one file after another shows what is so by the last:
// what moved stands once, what fell away is gone, and nothing else changed.
func TestCalendarsOneAfterAnother(t *testing.T) {
	p := newPhone()
	file, given, err := Calendar(seasonOf(), "1-abc", july, Given{})
	require.NoError(t, err)
	p.take(t, file)
	butcher := p.days(t, "Butcher")
	require.Equal(t, map[string]string{
		"butcher-r6-1-abc@troughbell": "20260915T070000", "butcher-r7-1-abc@troughbell": "20261006",
	}, butcher)
	require.Equal(t, "20260803", p.days(t, "order straw; and hay, and hay,")["remind-r8-1-abc@troughbell"])
	require.Len(t, p.days(t, "Pig round"), roundsAhead)
	for id := range p.days(t, "Clear of withdrawal: Olive") { // Rufus has a drug of unknown days
		require.NotContains(t, prop(t, p.events[id], ics.ComponentPropertySummary), "Rufus")
	}
	cal, err := ics.ParseCalendar(bytes.NewReader(file))
	require.NoError(t, err)
	require.Len(t, cal.Timezones(), 1)
	at, err := p.events["butcher-r6-1-abc@troughbell"].GetStartAt()
	require.NoError(t, err)
	require.True(t, at.Equal(time.Date(2026, 9, 15, 7, 0, 0, 0, newYork)), at)

	// Nothing happened: the same dates, made later.
	again, same, err := Calendar(seasonOf(), "1-abc", july.Add(10*time.Second), given)
	require.NoError(t, err)
	require.Equal(t, given, same)
	require.Empty(t, p.take(t, again))
	require.Contains(t, string(again), "DTSTAMP:20260725T120010Z")

	// The first appointment moves behind the second, a reminder is corrected, the other
	// taken back, the round goes to Sundays, the hopper is filled, all in the same minute.
	moved := []model.Record{
		later("r11", 25, model.Booked{Day: model.DateDay(2026, 9, 15), Cancelled: true}),
		later("r12", 25, model.Booked{Day: model.DateDay(2026, 10, 20), Minute: ptr(8 * 60)}),
		later("r13", 25, model.Void{Record: "r9"}),
		later("r14", 25, model.Void{Record: "r8"}),
		later("r15", 25, model.Remind{Day: model.DateDay(2026, 8, 5), What: "order straw; " + strings.Repeat("and hay, ", 12)}),
		later("r16", 25, model.Setting{Key: model.SetChore, List: []string{"sun"}}),
		later("r17", 25, model.Refill{Feeder: "hopper", Full: true}),
	}
	file, given, err = Calendar(seasonOf(moved...), "1-abc", july.Add(30*time.Second), given)
	require.NoError(t, err)
	changed := p.take(t, file)
	require.Equal(t, map[string]string{
		"butcher-r6-1-abc@troughbell": "20261020T080000", "butcher-r7-1-abc@troughbell": "20261006",
	}, p.days(t, "Butcher"))
	require.NotContains(t, changed, "butcher-r7-1-abc@troughbell")
	require.Equal(t, map[string]string{"remind-r8-1-abc@troughbell": "20260805"}, p.days(t, "order straw"))
	require.Empty(t, p.days(t, "book the trailer"))
	require.Contains(t, p.gone, "remind-r9-1-abc@troughbell")
	for _, day := range p.days(t, "Pig round") {
		at, err := time.Parse(localLayout, day)
		require.NoError(t, err)
		require.Equal(t, time.Sunday, at.Weekday(), day)
	}
	require.Len(t, p.days(t, "Pig round"), roundsAhead)

	// It is cancelled for good, and booked again for the same day: the same event again.
	gone := append(moved, later("r18", 25, model.Booked{Day: model.DateDay(2026, 10, 6), Cancelled: true}))
	file, given, err = Calendar(seasonOf(gone...), "1-abc", july.Add(time.Hour), given)
	require.NoError(t, err)
	p.take(t, file)
	require.NotContains(t, p.events, "butcher-r7-1-abc@troughbell")
	back := append(gone, later("r19", 26, model.Booked{Day: model.DateDay(2026, 10, 6)}))
	file, given, err = Calendar(seasonOf(back...), "1-abc", july.AddDate(0, 0, 1), given)
	require.NoError(t, err)
	p.take(t, file)
	require.Equal(t, "20261006", p.days(t, "Butcher")["butcher-r7-1-abc@troughbell"])

	// A year on all that is past took place: nothing of it is taken back or remembered.
	before := len(p.gone)
	file, given, err = Calendar(seasonOf(back...), "1-abc", july.AddDate(1, 0, 0), given)
	require.NoError(t, err)
	p.take(t, file)
	require.Len(t, p.gone, before)
	for _, e := range given.Events {
		require.GreaterOrEqual(t, e.Last, model.DateDay(2027, 7, 25)-keptGiven)
	}
}

// A file that left no note, as from the command line beside a bot that runs, is gone
// over by the next one all the same.
func TestCalendarThatLeftNoNote(t *testing.T) {
	p := newPhone()
	file, _, err := Calendar(seasonOf(), "1-abc", july, Given{})
	require.NoError(t, err)
	p.take(t, file)
	file, _, err = Calendar(seasonOf(later("r11", 25, model.Refill{Feeder: "hopper", Full: true})), "1-abc", july.Add(time.Hour), Given{})
	require.NoError(t, err)
	cal, err := ics.ParseCalendar(bytes.NewReader(file))
	require.NoError(t, err)
	for _, e := range cal.Events() {
		if have := p.events[e.Id()]; have != nil {
			require.Greater(t, sequence(t, e), sequence(t, have))
		}
	}
}
