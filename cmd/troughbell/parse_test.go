package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// One line for each line of input, whatever it holds, in order.
func TestOneLineForEachText(t *testing.T) {
	db := kept(t, orchard)
	long := strings.Repeat("a long text ", 400)
	texts := []string{
		"fence 5.2", "", "   ", `"fence 5.2\nbarrels full"`, `"`, `""`, `"\u00e9"`, `["not","a","text"]`, "# no comment here",
		strings.Repeat("x", 4096), strings.Repeat("y", 4097), long, strings.Repeat("ä", 4096), "\x00\x01", "日本語 🐖", "| | |", "why?", "undo",
	}
	all := parsed(t, db, "2026-04-18T09:00", texts...)
	for i, e := range all {
		require.NotEmpty(t, e.Entries, texts[i])
		for _, entry := range e.Entries {
			require.NotEmpty(t, entry["intent"], e.raw)
		}
		for _, key := range []string{`"text":`, `"entries":[`, `"reply":"`} {
			require.Contains(t, e.raw, key)
		}
	}
	for _, i := range []int{1, 2, 5} {
		require.Equal(t, "none", all[i].Entries[0]["intent"])
		require.NotEmpty(t, all[i].Entries[0]["reason"])
		require.Empty(t, all[i].Text)
	}
	require.Equal(t, "fence 5.2\nbarrels full", all[3].Text)
	require.Len(t, all[3].Entries, 2)
	require.Equal(t, `"`, all[4].Text)
}

// The last line needs no line break.
func TestTheLastLine(t *testing.T) {
	status, out, _ := call(t, "fence 5\nfence 6", "parse", "--db", kept(t, orchard), "--json")
	require.Equal(t, exitDone, status)
	require.Len(t, jsonLines(t, out), 2)
	status, out, _ = call(t, "", "parse", "--db", kept(t, orchard), "--json")
	require.Equal(t, exitDone, status)
	require.Empty(t, out)
}

// A line that cannot be read is none with a reason; the others are read, and the
// status says so at the end.
func TestALineThatCannotBeRead(t *testing.T) {
	status, out, stderr := call(t, "fence 5\n\xff\xfe\nfence 6\n", "parse", "--db", kept(t, orchard), "--json")
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	all := jsonLines(t, out)
	require.Len(t, all, 3)
	require.Equal(t, "none", all[1].Entries[0]["intent"])
	require.NotEmpty(t, all[1].Entries[0]["reason"])
	require.Equal(t, "fence", all[2].Entries[0]["intent"])
}

// Any text at all gets a line that is JSON and has an entry.
func TestParseAnyText(t *testing.T) {
	db := kept(t, orchard)
	rapid.Check(t, func(r *rapid.T) {
		texts := rapid.SliceOfN(rapid.StringN(0, 60, -1), 1, 12).Draw(r, "texts")
		var in strings.Builder
		for _, text := range texts {
			b, err := json.Marshal(text)
			require.NoError(r, err)
			fmt.Fprintf(&in, "%s\n", b)
		}
		status, out, stderr := call(t, in.String(), "parse", "--db", db, "--now", "2026-04-18T09:00", "--json")
		require.Equal(r, exitDone, status, stderr)
		all := jsonLines(t, out)
		require.Len(r, all, len(texts))
		for i, e := range all {
			require.Equal(r, texts[i], e.Text)
			require.NotEmpty(r, e.Entries, e.raw)
			require.True(r, utf8.ValidString(e.raw))
		}
	})
}

// It changes nothing: not one record, and the next message is read as if
// nothing had been asked.
func TestParseChangesNothing(t *testing.T) {
	db := kept(t, orchardJuly)
	before := records(t, db)
	first := parsed(t, db, "2026-07-04T10:00", "fence 5.2", "undo", "wormed all", "target 280 lb", "Hazel died", "our herd is Other, mountain time", "skip")
	require.Equal(t, before, records(t, db))
	again := parsed(t, db, "2026-07-04T10:00", "fence 5.2", "undo", "wormed all", "target 280 lb", "Hazel died", "our herd is Other, mountain time", "skip")
	require.Equal(t, raws(first), raws(again))
}

// Each line is read alone: the one before leaves no trace.
func TestEachLineAlone(t *testing.T) {
	db := kept(t, orchard)
	together := parsed(t, db, "2026-04-18T09:00", "shed half full", "no, hill", "undo", "Hazel 300 lb", "yes", "why?")
	for i, text := range []string{"shed half full", "no, hill", "undo", "Hazel 300 lb", "yes", "why?"} {
		require.Equal(t, together[i].raw, parsed(t, db, "2026-04-18T09:00", text)[0].raw, text)
	}
}

// The moment of the texts: the herd's zone, an offset, the clock.
func TestNow(t *testing.T) {
	db := kept(t, orchard)
	for now, date := range map[string]string{
		"2026-08-11T18:30":          "2026-08-11",
		"2026-08-11 18:30":          "2026-08-11",
		"2026-08-11T18:30:15":       "2026-08-11",
		"2026-08-11T23:30-05:00":    "2026-08-11",
		"2026-08-12T03:30:00Z":      "2026-08-11",
		"2026-08-12T02:30+02:00":    "2026-08-11",
		"2026-08-11T23:30:00-07:00": "2026-08-12",
	} {
		require.Equal(t, date, parsed(t, db, now, "fence 5")[0].Entries[0]["date"], now)
	}
	status, out, _ := call(t, "fence 5\n", "parse", "--db", db, "--json")
	require.Equal(t, exitDone, status)
	chicago, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	got, err := time.ParseInLocation(time.DateOnly, jsonLines(t, out)[0].Entries[0]["date"].(string), chicago)
	require.NoError(t, err)
	require.WithinDuration(t, time.Now(), got, 26*time.Hour)
	for _, bad := range []string{"noon", "2026-08-11", "18:30", "2026-13-01T10:00"} {
		status, _, stderr := call(t, "fence 5\n", "parse", "--db", db, "--now", bad)
		require.Equal(t, exitWrong, status, bad)
		oneLine(t, stderr)
	}
}

// The question that is open in the file is answered by a line; each line
// answers it anew.
func TestTheQuestionInView(t *testing.T) {
	db := kept(t, orchardJuly+"2026-07-11 08:00 | Hazel 80 lb\n")
	asked := parsed(t, kept(t, orchardJuly), "2026-07-11T08:00", "Hazel 80 lb")[0]
	require.Equal(t, "clarify", asked.Entries[0]["intent"], asked.raw)
	require.Equal(t, "weigh", asked.Entries[0]["about"])
	require.NotEmpty(t, asked.Entries[0]["question"])
	choices := asked.Entries[0]["choices"].([]any)
	require.NotEmpty(t, choices)
	for range 2 {
		got := parsed(t, db, "2026-07-11T08:05", choices[0].(string))[0]
		require.Equal(t, "weigh", got.Entries[0]["intent"], got.raw)
		require.Equal(t, "2026-07-11", got.Entries[0]["date"])
		require.Equal(t, []any{"Hazel"}, got.Entries[0]["animals"])
	}
}

// What parse says is what replay records.
func TestParseAgreesWithReplay(t *testing.T) {
	db := kept(t, orchardJuly)
	for _, text := range []string{
		"fence 5.2", "barrels full", "how much feed is left?", "wormed all with ivermectin, 18 days withdrawal",
		"Hazel 37 inches", "spent $20 on straw", "what's due?",
	} {
		_, all, _ := replayed(t, orchardJuly+"2026-07-11 06:30 | "+text+"\n")
		reply := only(all, "reply")[len(only(all, "reply"))-1]
		got := parsed(t, db, "2026-07-11T06:30", text)[0]
		require.Equal(t, reply.Entries, got.Entries, text)
	}
}

// A slot is SI with exact conversions, rounded to 0.01; what was not said is
// absent.
func TestSlots(t *testing.T) {
	db := kept(t, orchard)
	const lb, in, gal = 0.45359237, 2.54, 3.785411784
	tests := []struct {
		text string
		want map[string]any
	}{
		{"Hazel 55.5 lb", map[string]any{"intent": "weigh", "animals": []any{"Hazel"}, "weight_kg": round2(55.5 * lb), "date": "2026-04-18"}},
		{"Hazel 24.5 in", map[string]any{"intent": "weigh", "animals": []any{"Hazel"}, "girth_cm": round2(24.5 * in), "date": "2026-04-18"}},
		{"shed 12 gal added", map[string]any{"intent": "water", "barrel": "shed", "litres": round2(12 * gal), "date": "2026-04-18"}},
		{"barrels full", map[string]any{"intent": "water", "full": true, "date": "2026-04-18"}},
		{"hill is dry", map[string]any{"intent": "water", "barrel": "hill", "fraction": 0.0, "seen": true, "date": "2026-04-18"}},
		{"big hopper 90 lb, full", map[string]any{"intent": "refill", "feeder": "big hopper", "feed_kg": round2(90 * lb), "full": true, "date": "2026-04-18"}},
		{"small hopper half left", map[string]any{"intent": "feed_level", "feeder": "small hopper", "fraction": 0.5, "date": "2026-04-18"}},
		{"wormed all with ivermectin at 8:15, 18 days withdrawal", map[string]any{
			"intent": "worm", "animals": []any{"all"}, "product": "ivermectin", "withdrawal_days": 18.0, "date": "2026-04-18", "at": "08:15",
		}},
		{"moved to Cherry yesterday", map[string]any{"intent": "move", "pen": "Cherry", "date": "2026-04-17"}},
		{"fence 5.2", map[string]any{"intent": "fence", "kv": 5.2, "date": "2026-04-18"}},
		{"high 95", map[string]any{"intent": "weather", "high_c": 35.0, "date": "2026-04-18"}},
		{"spent $45 on straw", map[string]any{"intent": "spend", "amount": 45.0, "currency": "USD", "what": "straw", "date": "2026-04-18"}},
		{"target 280 lb", map[string]any{"intent": "settings", "key": "target_kg", "value": round2(280 * lb)}},
	}
	for _, tt := range tests {
		t.Run(tt.text, func(t *testing.T) {
			got := parsed(t, db, "2026-04-18T09:00", tt.text)[0]
			require.Len(t, got.Entries, 1, got.raw)
			require.Equal(t, tt.want, got.Entries[0])
		})
	}
}

func round2(x float64) float64 { return float64(int(x*100+0.5)) / 100 }
