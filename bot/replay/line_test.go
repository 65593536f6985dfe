package replay

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

func TestParseLine(t *testing.T) {
	at := time.Date(2026, 5, 16, 8, 10, 0, 0, time.UTC)
	good := []struct {
		name, in string
		want     line
	}{
		{"text", "2026-05-16 08:10 | dot 38 girth", line{wall: at, text: "dot 38 girth"}},
		{"who", "2026-05-16 08:10 Ann | full", line{wall: at, who: "Ann", text: "full"}},
		{"two words of who", "2026-05-16 08:10 Aunt May | full", line{wall: at, who: "Aunt May", text: "full"}},
		{"edit", "2026-05-16 08:10 edit 3 | half", line{wall: at, edit: 3, text: "half"}},
		{"edit by someone", "2026-05-16 08:10 Ann edit 3 | half", line{wall: at, who: "Ann", edit: 3, text: "half"}},
		{"reply", "2026-05-16 08:10 reply 12 | 38", line{wall: at, reply: 12, text: "38"}},
		{"tick", "2026-05-16 08:10 |", line{wall: at, tick: true}},
		{"tick with blanks", "2026-05-16 08:10 |   ", line{wall: at, tick: true}},
		{"the first bar ends the head", "2026-05-16 08:10 | a | b", line{wall: at, text: "a | b"}},
		{"JSON string", `2026-05-16 08:10 | "a\nb"`, line{wall: at, text: "a\nb"}},
		{"a quote that is no JSON", `2026-05-16 08:10 | "full" he said`, line{wall: at, text: `"full" he said`}},
		{"T between day and time", "2026-05-16T08:10 | full", line{wall: at, text: "full"}},
	}
	for _, tt := range good {
		t.Run(tt.name, func(t *testing.T) {
			got, err := parseLine(7, tt.in)
			require.NoError(t, err)
			tt.want.number = 7
			require.Equal(t, tt.want, got)
		})
	}
	bad := []struct{ name, in, why string }{
		{"no bar", "2026-05-16 08:10 full", "no \"|\""},
		{"no time", "2026-05-16 | full", "day and a time"},
		{"no such day", "2026-02-30 08:10 | full", "day and a time"},
		{"edit of nothing", "2026-05-16 08:10 edit x | full", "not a line number"},
		{"edit of line nought", "2026-05-16 08:10 edit 0 | full", "not a line number"},
		{"edit of no line", "2026-05-16 08:10 edit | full", "number of a line"},
		{"reply by someone to no line", "2026-05-16 08:10 Ann reply | full", "number of a line"},
		{"edit and reply", "2026-05-16 08:10 edit 3 reply 2 | full", "number of a line"},
		{"edit to nothing", "2026-05-16 08:10 edit 3 |", "needs a text"},
		{"not UTF-8", "2026-05-16 08:10 | \xff", "UTF-8"},
	}
	for _, tt := range bad {
		t.Run(tt.name, func(t *testing.T) {
			_, err := parseLine(7, tt.in)
			require.ErrorContains(t, err, tt.why)
		})
	}
}
