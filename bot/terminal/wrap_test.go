package terminal

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestWrap(t *testing.T) {
	tests := []struct {
		name, line string
		width      int
		want       []string
	}{
		{"it fits", "four pigs came today", 20, []string{"four pigs came today"}},
		{"between words", "four pigs came today, all well", 20, []string{"four pigs came", "today, all well"}},
		{"a long word stays whole", "a " + strings.Repeat("x", 30) + " b", 20, []string{"a", strings.Repeat("x", 30), "b"}},
		{"characters, not bytes", strings.Repeat("ä", 20), 20, []string{strings.Repeat("ä", 20)}},
		{"width not known", strings.Repeat("word ", 40), 0, []string{strings.Repeat("word ", 40)}},
		{"empty", "", 80, []string{""}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) { require.Equal(t, tt.want, wrap(tt.line, tt.width)) })
	}
}

// Nothing is lost, and only a word can be too long.
func TestWrapLosesNothing(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		words := rapid.SliceOfN(rapid.StringMatching(`[a-zé–]{1,25}`), 1, 30).Draw(r, "words")
		width := rapid.IntRange(0, 90).Draw(r, "width")
		line := strings.Join(words, " ")
		parts := wrap(line, width)
		require.Equal(r, line, strings.Join(parts, " "))
		for _, p := range parts {
			if width >= leastWidth && strings.Contains(p, " ") {
				require.LessOrEqual(r, utf8.RuneCountInString(p), width)
			}
		}
	})
}
