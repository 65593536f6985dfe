package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Wall times of the two clock changes.
func TestClockChanges(t *testing.T) {
	tests := []struct {
		name, zone string
		lines      []string // of the form "2026-11-01 01:30"
		at         []string
	}{
		{"autumn: the first pass", "America/Chicago", []string{"2026-11-01 01:30"}, []string{"2026-11-01T01:30:00-05:00"}},
		{
			"autumn: the second pass where the first would go back", "America/Chicago",
			[]string{"2026-11-01 01:30", "2026-11-01 01:10", "2026-11-01 01:30", "2026-11-01 02:00"},
			[]string{"2026-11-01T01:30:00-05:00", "2026-11-01T01:10:00-06:00", "2026-11-01T01:30:00-06:00", "2026-11-01T02:00:00-06:00"},
		},
		{
			"spring: forward by the gap", "America/Chicago",
			[]string{"2026-03-08 01:59", "2026-03-08 02:30", "2026-03-08 03:30"},
			[]string{"2026-03-08T01:59:00-06:00", "2026-03-08T03:30:00-05:00", "2026-03-08T03:30:00-05:00"},
		},
		{
			"a change of half an hour", "Australia/Lord_Howe",
			[]string{"2026-04-05 01:45", "2026-04-05 01:40"},
			[]string{"2026-04-05T01:45:00+11:00", "2026-04-05T01:40:00+10:30"},
		},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var log string
			for _, l := range tt.lines {
				log += l + " |\n"
			}
			status, stdout, stderr := call(t, log, "replay", "--json", "--zone", tt.zone)
			require.Equal(t, exitDone, status, stderr)
			var at []string
			for _, e := range jsonLines(t, stdout) {
				at = append(at, e.At)
			}
			require.Equal(t, tt.at, at)
		})
	}
}

// Going back by an hour that was not repeated is an error.
func TestTimeGoesBack(t *testing.T) {
	status, all, _ := replayed(t, "2026-11-01 03:30 |\n2026-11-01 02:30 |\n2026-11-01 01:30 |\n")
	require.Equal(t, exitFailed, status)
	require.Len(t, only(all, "error"), 2)
}

// The zone of --zone holds until a text states the herd's own; the clock keeps
// its wall time in the new zone from that text on, its own moment included.
func TestTheZoneStated(t *testing.T) {
	log := "2026-05-16 08:09 | fence 5\n2026-05-16 08:10 | eastern time (America/New_York)\n2026-05-16 08:11 | fence 5.2\n"
	status, all, _ := replayed(t, log)
	require.Equal(t, exitDone, status)
	var at []string
	for _, e := range only(all, "text") {
		at = append(at, e.At)
	}
	require.Equal(t, []string{"2026-05-16T08:09:00-05:00", "2026-05-16T08:10:00-04:00", "2026-05-16T08:11:00-04:00"}, at)
	for _, e := range all[3:6] { // the answer too
		require.Equal(t, "2026-05-16T08:10:00-04:00", e.At, e.raw)
	}
}

// A zone stated by the hour there is the one that this hour means, once.
func TestTheZoneByItsHour(t *testing.T) {
	for text, want := range map[string]string{
		"it is 7:40 am here":  "2026-05-16T08:40:00-06:00",
		"it is 9:40 am here":  "2026-05-16T08:40:00-04:00",
		"it is 3:40 pm here":  "2026-05-16T08:40:00+02:00",
		"it is 8:40 am here":  "2026-05-16T08:40:00-05:00",
		"it is 11:40 pm here": "2026-05-16T08:40:00+10:00",
	} {
		_, all, _ := replayed(t, "2026-05-16 08:40 | "+text+"\n2026-05-16 08:41 | fence 5\n")
		require.Equal(t, want, only(all, "text")[0].At, text)
		require.Equal(t, want, only(all, "reply")[0].At, text)
		require.Equal(t, strings.Replace(want, "08:40", "08:41", 1), only(all, "text")[1].At, text)
	}
}

// The machine's zone holds where --zone names none.
func TestTheMachinesZone(t *testing.T) {
	for tz, want := range map[string]string{
		"Asia/Tokyo":                        "2026-05-16T08:10:00+09:00",
		":America/Denver":                   "2026-05-16T08:10:00-06:00",
		"/usr/share/zoneinfo/Europe/Berlin": "2026-05-16T08:10:00+02:00",
		"UTC":                               "2026-05-16T08:10:00+00:00",
	} {
		t.Setenv("TZ", tz)
		_, stdout, _ := call(t, "2026-05-16 08:10 |\n", "replay", "--json")
		require.Equal(t, want, jsonLines(t, stdout)[0].At)
	}
}
