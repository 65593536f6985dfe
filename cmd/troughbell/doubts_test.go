package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// entriesOf gives the entries of the replies to the last lines of a log.
func entriesOf(t *testing.T, log string, last int) [][]map[string]any {
	t.Helper()
	status, all, stderr := replayed(t, log)
	require.Equal(t, exitDone, status, stderr)
	replies := only(all, "reply")
	var out [][]map[string]any
	for _, r := range replies[len(replies)-last:] {
		out = append(out, r.Entries)
	}
	return out
}

// What is certain is recorded, what is doubtful asked; the answer yields the
// entry of the day and the time that the text meant.
func TestDoubts(t *testing.T) {
	got := entriesOf(t, orchardJuly+`2026-07-11 08:00 | fence 5.2, Hazel 80 lb
2026-07-12 07:30 | 80 lb is right
`, 2)
	require.Len(t, got[0], 2)
	require.Equal(t, map[string]any{"intent": "fence", "kv": 5.2, "date": "2026-07-11"}, got[0][0])
	require.Equal(t, "clarify", got[0][1]["intent"])
	require.Equal(t, "weigh", got[0][1]["about"])
	require.Contains(t, got[0][1]["choices"], "80 lb is right")
	require.Equal(t, []map[string]any{
		{"intent": "weigh", "animals": []any{"Hazel"}, "weight_kg": 36.29, "date": "2026-07-11"},
	}, got[1])
}

// A correction yields the full new entry; a reply corrects what it replies to.
func TestCorrections(t *testing.T) {
	got := entriesOf(t, orchardJuly+`2026-07-12 08:00 | Clover 175 lb
2026-07-12 08:01 | no, Otis
2026-07-12 08:02 | 181 not 175
2026-07-12 08:03 | fence 5.2
2026-07-12 08:04 | barrels full
2026-07-12 08:05 reply 20 | 6.2
`, 6)
	require.Equal(t, []map[string]any{
		{"intent": "weigh", "animals": []any{"Otis"}, "weight_kg": 79.38, "date": "2026-07-12", "replaces": true},
	}, got[1])
	require.Equal(t, []map[string]any{
		{"intent": "weigh", "animals": []any{"Otis"}, "weight_kg": 82.1, "date": "2026-07-12", "replaces": true},
	}, got[2])
	require.Equal(t, []map[string]any{{"intent": "fence", "kv": 6.2, "date": "2026-07-12", "replaces": true}}, got[5])
}

// A fact of a day to come records nothing; the day and time of one that is past
// are its own.
func TestDaysOfFacts(t *testing.T) {
	log := orchardJuly + `2026-07-11 08:00 | wormed all tomorrow
2026-07-11 08:01 | yesterday at 6:15 pm wormed Otis with fenbendazole, 14 days
`
	got := entriesOf(t, log, 2)
	require.Equal(t, "none", got[0][0]["intent"])
	require.NotEmpty(t, got[0][0]["reason"])
	require.Equal(t, []map[string]any{{
		"intent": "worm", "animals": []any{"Otis"}, "product": "fenbendazole", "withdrawal_days": 14.0, "date": "2026-07-10", "at": "18:15",
	}}, got[1])
	db := kept(t, log)
	require.Len(t, exported(t, db)["worm.csv"], 1)
}

// What is undone is named, and an edit takes what its message said back.
func TestUndoAndEdit(t *testing.T) {
	log := orchardJuly + `2026-07-12 08:00 | spent $20 on hay
2026-07-12 08:01 edit 17 | spent $30 on hay
2026-07-12 08:02 | fence 5.2
2026-07-12 08:03 | undo
`
	got := entriesOf(t, log, 4)
	require.Equal(t, 30.0, got[1][0]["amount"])
	require.Equal(t, []map[string]any{{"intent": "undo", "of": "fence"}}, got[3])
	db := kept(t, log)
	require.Empty(t, fences(t, db))
	cost := asked(t, db, "2026-07-12T09:00", "what have they cost so far?")
	require.Equal(t, 75.0, cost["spent"], "45 and 30, not 20")
}

// Each button of the standing message is understood when its label is sent.
func TestLabelsOfTheStandingMessage(t *testing.T) {
	_, all, _ := replayed(t, orchard+"2026-04-18 07:00 |\n")
	for _, row := range only(all, "nudge")[0].Buttons {
		for _, label := range row {
			got := entriesOf(t, orchard+"2026-04-18 07:30 | "+label+"\n", 1)[0]
			want := "snooze"
			if strings.EqualFold(label, "done") {
				want = "done"
			}
			require.Equal(t, want, got[0]["intent"], label)
			require.NotEmpty(t, got[0]["about"], label)
			if want == "snooze" {
				require.True(t, isDay(got[0]["until"]) || isNumber(got[0]["hours"]), "%s: %v", label, got[0])
			}
		}
	}
}
