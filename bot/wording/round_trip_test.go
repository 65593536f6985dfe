package wording_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// bare is a herd that has said its units and nothing else.
func bare(t *testing.T, units string) *model.Herd {
	j := &journal{t: t}
	return j.add("2026-04-01", 600, true, model.Setting{Key: model.SetUnits, Text: units}).herd()
}

// small is four pigs with names, one feeder and one barrel without, in US units.
func small(t *testing.T) *model.Herd {
	j := &journal{t: t}
	return j.add("2026-04-18", 600, true,
		model.Setting{Key: model.SetUnits, Text: model.US},
		model.Arrive{Count: 4, WeightKg: model.Float(48 * lb)},
		setting(model.SetFeeder, model.Thing{Name: "feeder", CapacityKg: model.Float(300 * lb)}),
		setting(model.SetBarrel, model.Thing{Name: "barrel", CapacityL: model.Float(55 * gal)}),
	).herd()
}

// whereSaid is a herd in which the fact could be said: things are set up where
// they are not there yet, a pour names no feeder where there is one, and pigs
// that are only counted have no names.
func whereSaid(t *testing.T, f model.Fact) *model.Herd {
	switch f := f.(type) {
	case model.Setting:
		if f.Thing != nil && f.Thing.Soil != "" { // of a pen that is there
			return season(t).herd()
		}
		return bare(t, model.US)
	case model.Arrive:
		return bare(t, model.US)
	case model.Refill:
		if f.Feeder == "" {
			return small(t)
		}
	case model.FeedLevel:
		if f.Feeder == "" {
			return small(t)
		}
	case model.Gone:
		if f.Count > 0 {
			return small(t)
		}
	}
	return season(t).herd()
}

// Every phrase that stands for a fact reads back to that fact.
func TestEchoReadsBack(t *testing.T) {
	for _, row := range echoes {
		if s, ok := row.fact.(model.Sick); ok && s.Well && s.Note == "" {
			continue // read back with its words as the note
		}
		h := whereSaid(t, row.fact)
		text := wording.Voice{Herd: h, Now: now}.Echo(entry(row.fact))
		r := reading.Read(reading.Context{Now: now, Herd: h}, text)
		if len(r.Entries) != 1 {
			t.Errorf("%q reads as %d entries: %v", text, len(r.Entries), r.Entries)
			continue
		}
		f, ok := r.Entries[0].Act.(reading.Fact)
		if !ok {
			t.Errorf("%q reads as %#v", text, r.Entries[0].Act)
			continue
		}
		if want, got := rounded(t, named(row.fact)), rounded(t, named(f.Fact)); want != got {
			t.Errorf("%q reads as %s, not %s", text, got, want)
		}
	}
}

// Days and spans of days read back as they are written, in either order and with the
// year of another year.
func TestDaysReadBack(t *testing.T) {
	for _, units := range []string{model.US, model.Metric} {
		h := (&journal{t: t}).add("2025-01-01", 600, true,
			model.Setting{Key: model.SetUnits, Text: units}, model.Arrive{Count: 4, WeightKg: model.Float(20)},
			setting(model.SetFeeder, model.Thing{Name: "feeder", CapacityKg: model.Float(130)}),
			model.Setting{Key: model.SetChore, List: []string{"sat"}}, model.Setting{Key: model.SetHour, List: []string{"07:00"}},
		).herd()
		v := wording.Voice{Herd: h, Now: now}
		only := func(text string) (reading.Entry, model.Fact) {
			r := reading.Read(reading.Context{Now: now, Herd: h}, text)
			require.Len(t, r.Entries, 1, "%s: %v", text, r.Entries)
			f, ok := r.Entries[0].Act.(reading.Fact)
			require.True(t, ok, "%s: %#v", text, r.Entries[0].Act)
			return r.Entries[0], f.Fact
		}
		today := model.DayOf(now)
		for away := model.Day(1); away < 540; away += 13 {
			text := v.Echo(reading.Entry{On: today - away, Minute: model.Int(390), Act: reading.Fact{Fact: model.Refill{Full: true}}})
			e, _ := only(text)
			require.Equal(t, today-away, e.On, text)
			require.Equal(t, 390, *e.Minute, text)

			booked := model.Booked{Day: today + away, Minute: model.Int(450), Count: 4}
			text = v.Echo(reading.Entry{On: today, Act: reading.Fact{Fact: booked}})
			_, f := only(text)
			require.Equal(t, booked, f, text)
			booked.Minute = nil
			text = v.Echo(reading.Entry{On: today, Act: reading.Fact{Fact: booked}})
			_, f = only(text)
			require.Equal(t, booked, f, text)

			for _, long := range []model.Day{1, 9, 40, 200} {
				text := "away " + v.DayRange(today+away, today+away+long)
				_, f := only(text)
				require.Equal(t, model.AwayFrom{From: today + away, To: today + away + long}, f, text)
			}
		}
	}
}

// named is a fact with the things filled in that reading knows by there being
// only one of them.
func named(f model.Fact) model.Fact {
	switch f := f.(type) {
	case model.Refill:
		if f.Feeder == "feeder" {
			f.Feeder = ""
		}
		return f
	case model.FeedLevel:
		if f.Feeder == "feeder" {
			f.Feeder = ""
		}
		return f
	}
	return f
}

// rounded is a fact with its kind as JSON, amounts to 0.01.
func rounded(t *testing.T, f model.Fact) string {
	t.Helper()
	b, err := json.Marshal(f)
	require.NoError(t, err)
	var m any
	require.NoError(t, json.Unmarshal(b, &m))
	b, err = json.Marshal(roundAll(m))
	require.NoError(t, err)
	return string(f.Kind()) + " " + string(b)
}

func roundAll(x any) any {
	switch x := x.(type) {
	case float64:
		return math.Round(x*100) / 100
	case []any:
		for i := range x {
			x[i] = roundAll(x[i])
		}
	case map[string]any:
		for k := range x {
			x[k] = roundAll(x[k])
		}
	}
	return x
}

// Every text that help offers records or asks something when it is sent.
func TestHelpIsReadable(t *testing.T) {
	for _, v := range []wording.Voice{{Herd: season(t).herd(), Now: now}, metric(t)} {
		for _, topic := range wording.Topics {
			if topic.Name == "settings" {
				continue
			}
			for _, text := range v.Examples(topic) {
				requireReadable(t, v.Herd, text)
			}
		}
		for _, c := range wording.Offered(wording.PrivateMenu, "") {
			requireReadable(t, v.Herd, wording.CommandText(c.Name, ""))
		}
	}
	for _, units := range []string{model.US, model.Metric} {
		h := bare(t, units)
		text, _, _ := strings.Cut(wording.Voice{Herd: h, Now: now}.Help("settings"), ":")
		require.NotEmpty(t, text)
		for _, topic := range wording.Topics {
			if topic.Name == "settings" {
				for _, text := range (wording.Voice{Herd: h, Now: now}).Examples(topic) {
					requireReadable(t, h, text)
				}
			}
		}
	}
}

// So is every example in a sentence that asks for what is missing, said in the
// herd that misses it.
func TestMissingExamplesAreReadable(t *testing.T) {
	whole := []wording.Voice{{Herd: season(t).herd(), Now: now}, metric(t)}
	empty := []wording.Voice{{Herd: bare(t, model.US), Now: now}, {Herd: bare(t, model.Metric), Now: now}}
	for what, voices := range map[string][]wording.Voice{
		"pigs": empty, "feeder": empty, "barrels": empty, "wallow": empty, "pen": empty, "count": empty,
		"weight": whole, "birth": whole, "capacity": whole, "level": whole, "water_level": whole, "pen_area": whole,
		"recipe": whole, "bag_size": whole, "booking": whole, "humidity": whole, "temperature": whole, "spend": whole,
	} {
		for _, v := range voices {
			said := v.Missing(&model.Missing{What: what}, "today")
			_, examples, ok := strings.Cut(said, "as in: ")
			if !ok {
				_, examples, ok = strings.Cut(said, "ext: ")
			}
			require.True(t, ok, said)
			for text := range strings.SplitSeq(strings.TrimSuffix(examples, "."), ", or") {
				requireReadable(t, v.Herd, strings.TrimPrefix(strings.TrimSpace(text), ": "))
			}
		}
	}
}

func requireReadable(t *testing.T, h *model.Herd, text string) {
	t.Helper()
	r := reading.Read(reading.Context{Now: now, Herd: h}, text)
	for _, e := range r.Entries {
		switch e.Act.(type) {
		case reading.None, reading.Clarify:
			t.Errorf("%q reads as %#v", text, e.Act)
		}
	}
}
