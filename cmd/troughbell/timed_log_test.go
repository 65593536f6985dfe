package main

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

func moment(t *testing.T, s string) time.Time {
	t.Helper()
	at, err := time.Parse(time.RFC3339, s)
	require.NoError(t, err)
	return at
}

// Every line that is neither blank nor a comment ends with exactly one ready,
// whatever is wrong with it, and the log goes on behind it.
func TestOneReadyForEachLine(t *testing.T) {
	log := strings.Join([]string{
		"# a comment",
		"",
		"   # an indented comment",
		"2026-05-16 08:10 | fence 5.2",          // 4
		"2026-05-16 08:11 |",                    // 5: a tick
		"no head",                               // 6
		"2026-05-16 08:12 fence 5",              // 7: no bar
		"2026-02-30 08:12 | fence 5",            // 8: no such day
		"2026-05-16 25:12 | fence 5",            // 9: no such time
		"2026-05-16 08:12 edit x | fence 5",     // 10
		"2026-05-16 08:12 edit 5 | fence 5",     // 11: a tick is no message
		"2026-05-16 08:12 reply 99 | fence 5",   // 12: not yet
		"2026-05-16 08:12 edit 4 |",             // 13: edited to nothing
		"2026-05-16 08:09 | fence 5",            // 14: time goes back
		"2026-05-16 08:12 | fence \xff",         // 15: not UTF-8
		"2026-05-16 08:13 Ann edit 4 | fence 6", // 16
		"2026-05-16 08:14 reply 4 | fence 6.1",  // 17
		"2026-05-16 08:15 | " + strings.Repeat("x", 5000),
		"2026-05-16 08:16 | fence 6.2", // 19, without a line break
	}, "\n")
	status, all, stderr := replayed(t, log)
	require.Equal(t, exitFailed, status)
	oneLine(t, stderr)
	require.Len(t, only(all, "ready"), 16)
	var bad []int
	for _, e := range only(all, "error") {
		require.NotEmpty(t, e.Text)
		bad = append(bad, e.Line)
	}
	require.Equal(t, []int{6, 7, 8, 9, 10, 11, 12, 13, 14, 15}, bad)
	for i, e := range all { // an error is all that its line has
		if e.Kind == "error" {
			require.Equal(t, "ready", all[i+1].Kind)
		}
	}
	texts := only(all, "text")
	require.Len(t, texts, 5)
	require.Equal(t, "fence 6.2", texts[4].Text)
	require.Equal(t, "ready", all[len(all)-1].Kind)
}

// A clean log ends with status 0 and says nothing on standard error.
func TestReplayOfAFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "season.log")
	write(t, path, "\uFEFF"+strings.ReplaceAll(orchard, "\n", "\r\n"))
	status, fromFile, stderr := replayed(t, "", path)
	require.Equal(t, exitDone, status, stderr)
	require.Empty(t, stderr)
	for _, args := range [][]string{{"-"}, nil} {
		status, fromInput, _ := replayed(t, orchard, args...)
		require.Equal(t, exitDone, status)
		require.Equal(t, fromFile, fromInput)
	}
	for _, e := range fromFile {
		require.NotContains(t, e.Text, "\r")
	}
}

// The shape of each event is the promised one.
func TestShapeOfEvents(t *testing.T) {
	_, all, _ := replayed(t, orchard+"2026-04-18 09:00 | hello there\n")
	for _, e := range all {
		keys := map[string][]string{
			"text":  {"at", "kind", "text"},
			"reply": {"at", "kind", "text", "entries", "buttons"},
			"nudge": {"at", "kind", "about", "standing", "grade", "text", "buttons"},
			"ready": {"at", "kind"},
		}[e.Kind]
		for _, k := range keys {
			require.Contains(t, e.raw, `"`+k+`":`, e.raw)
		}
		at := moment(t, e.At)
		_, east := at.Zone()
		require.Equal(t, -5*3600, east, "the herd's offset: %s", e.raw)
		for _, entry := range e.Entries {
			require.NotEmpty(t, entry["intent"], e.raw)
		}
	}
	require.NotEmpty(t, only(all, "nudge"))
}

// Within a line: what fell due before its time, each with its own moment, then
// the text, its replies, ready.
func TestOrderWithinALine(t *testing.T) {
	_, all, _ := replayed(t, orchard+"2026-05-16 09:00 | fence 5.2\n")
	from := 0
	for i, e := range all {
		if e.Kind == "ready" && strings.HasPrefix(e.At, "2026-04-11T08:26") {
			from = i + 1
		}
	}
	last := all[from:]
	n := len(last) - 3
	require.Greater(t, n, 4, "five weeks have their nudges")
	require.Equal(t, []string{"text", "reply", "ready"}, kinds(last[n:]))
	before := moment(t, "2026-04-11T08:26:00-05:00")
	for _, e := range last[:n] {
		require.Equal(t, "nudge", e.Kind)
		at := moment(t, e.At)
		require.False(t, at.Before(before), "in order: %s", e.raw)
		require.False(t, at.After(moment(t, last[n].At)), e.raw)
		before = at
	}
}

// A jump in time is lived through: each chore day of it has its one standing
// message at its hour. Nothing falls due after the end of the input.
func TestAJumpIsLivedThrough(t *testing.T) {
	_, all, _ := replayed(t, orchard+"2026-05-16 06:59 |\n")
	var standing []string
	for _, e := range only(all, "nudge") {
		require.NotContains(t, e.About, "catch_up", "no outage")
		if *e.Standing {
			standing = append(standing, e.At)
		}
	}
	require.Equal(t, []string{
		"2026-04-18T07:00:00-05:00", "2026-04-25T07:00:00-05:00", "2026-05-02T07:00:00-05:00", "2026-05-09T07:00:00-05:00",
	}, standing)
	_, more, _ := replayed(t, orchard+"2026-05-08 18:00 | fence 5.2\n2026-05-16 07:00 |\n")
	require.Equal(t, "2026-05-16T07:00:00-05:00", only(more, "nudge")[len(only(more, "nudge"))-1].At, "due at its time counts")
	_, none, _ := replayed(t, orchard)
	require.Empty(t, only(none, "nudge"))
}

// Every nudge says what it is about in the promised words.
func TestWordsOfNudges(t *testing.T) {
	abouts := strings.Fields("refill water wallow worm move weigh book heat cold level ration stock capacity check withdrawal alarm catch_up own season")
	log := orchardJuly + `2026-07-04 09:00 | remind me on july 8 at 10 am to call the vet
2026-07-04 09:01 | pigs are out
2026-07-04 09:05 | pigs are back in
2026-11-01 09:00 |
`
	_, all, _ := replayed(t, log)
	seen := map[string]bool{}
	for _, e := range only(all, "nudge") {
		require.Contains(t, []string{"routine", "welfare", "danger"}, e.Grade)
		for _, a := range e.About {
			require.Contains(t, abouts, a, e.raw)
			seen[a] = true
		}
		at := moment(t, e.At)
		if quiet := at.Hour() >= 21 || at.Hour() < 6; quiet {
			require.Equal(t, "danger", e.Grade, "only danger breaks quiet hours: %s", e.raw)
		}
	}
	for _, a := range []string{"refill", "water", "weigh", "worm", "move", "book", "own"} {
		require.True(t, seen[a], a)
	}
}

// The standing message of a chore day on which nothing is to do is about
// nothing, and comes all the same; filling stands there only where something is
// to be filled before the next chore day.
func TestAllIsWell(t *testing.T) {
	_, all, _ := replayed(t, `2026-05-02 08:10 | our herd is Well, central time (America/Chicago), US units
2026-05-02 08:12 | 2 pigs came today, Ash and Elm, 60 lb each
2026-05-02 08:15 | one feeder, holds 900 lb
2026-05-02 08:17 | one water barrel, 550 gal
2026-05-02 08:24 | target 265 lb, chore day Saturday 7 am
2026-05-02 08:26 | butcher booked september 19
2026-05-08 18:28 | Ash 65 lb, Elm 66
2026-05-08 18:29 | feeder 3/4 left
2026-05-08 18:30 | barrel 3/4 left
2026-05-09 07:00 |
`)
	nudge := only(all, "nudge")[len(only(all, "nudge"))-1]
	require.Equal(t, "2026-05-09T07:00:00-05:00", nudge.At)
	require.True(t, *nudge.Standing)
	require.Equal(t, "routine", nudge.Grade)
	require.Contains(t, nudge.raw, `"about":[]`)
	require.NotEmpty(t, nudge.Text)

	_, all, _ = replayed(t, orchardJuly+"2026-07-10 18:00 | barrels nearly empty\n2026-07-11 07:00 |\n")
	nudge = only(all, "nudge")[len(only(all, "nudge"))-1]
	require.Equal(t, "2026-07-11T07:00:00-05:00", nudge.At)
	require.Contains(t, nudge.About, "water")
}

// Who said it, edits and replies.
func TestHeads(t *testing.T) {
	log := orchard + `2026-04-18 08:00 Ann | fence 5.2
2026-04-18 08:01 Ann edit 10 | fence 6.2
2026-04-18 08:02 reply 10 | "thank you\nall"
2026-04-18 08:03 Aunt May | barrels full
2026-04-18 08:04 edit 10 | fence 6.2
`
	status, all, stderr := replayed(t, log)
	require.Equal(t, exitDone, status, stderr)
	texts := only(all, "text")[8:]
	require.Equal(t, "Ann", texts[0].Who)
	require.Equal(t, "Aunt May", texts[3].Who)
	require.Equal(t, "thank you\nall", texts[2].Text)
	require.Equal(t, "ready", all[len(all)-1].Kind)
	require.Equal(t, "text", all[len(all)-2].Kind, "an edit that changes nothing needs no answer")

	db := kept(t, log)
	at := parsed(t, db, "2026-04-18T09:00", "undo")
	require.NotEmpty(t, at[0].Reply)
	require.Equal(t, map[string]int{"fence 6.2": 1}, fences(t, db), "the edit takes the place of the first text")
}

// A text that is a JSON string is decoded; a quotation mark alone is text.
func TestTextsOfLines(t *testing.T) {
	for in, want := range map[string]string{
		`"fence 5.2\nbarrels full"`: "fence 5.2\nbarrels full",
		`"tab\tand \u00e9"`:         "tab\tand é",
		`"full" he said`:            `"full" he said`,
		`"`:                         `"`,
		`a | b`:                     "a | b",
		`   spaces   `:              "spaces",
	} {
		_, all, _ := replayed(t, "2026-05-16 08:10 | "+in+"\n")
		require.Equal(t, want, only(all, "text")[0].Text, in)
	}
	_, all, _ := replayed(t, `2026-05-16 08:10 | ""`+"\n")
	require.Equal(t, []string{"ready"}, kinds(all), "an empty text is a tick, however written")
}

// A button is pressed by sending its label, and it means what it says.
func TestButtonsAreTexts(t *testing.T) {
	_, all, _ := replayed(t, orchard+"2026-04-18 07:00 |\n")
	nudge := only(all, "nudge")[0]
	require.NotEmpty(t, nudge.Buttons)
	label := nudge.Buttons[0][0]
	_, all, _ = replayed(t, orchard+"2026-04-18 07:30 | "+label+"\n")
	replies := only(all, "reply")
	entry := replies[len(replies)-1].Entries[0]
	require.Equal(t, "done", entry["intent"], entry)
	require.ElementsMatch(t, nudge.About, entry["about"])
}

// Without --json a person reads the same conversation.
func TestPage(t *testing.T) {
	status, page, _ := call(t, orchard+"bad line\n", "replay", "--zone", "America/Chicago")
	require.Equal(t, exitFailed, status)
	require.Contains(t, page, "Saturday April 11 2026")
	require.Contains(t, page, "08:24 > target 265 lb, chore day Saturday 7 am")
	require.Contains(t, page, "line 10: ")
}
