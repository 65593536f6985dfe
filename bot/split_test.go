package bot

import (
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Nothing of a text is lost but line ends at a cut, no part is too long, and no
// character is cut in two.
func TestSplit(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("ab \né🐷")), 0, 200, -1).Draw(rt, "text")
		limit := rapid.IntRange(2, 50).Draw(rt, "limit")
		parts := split(text, limit)
		for i, p := range parts {
			require.LessOrEqual(rt, len(utf16.Encode([]rune(p))), limit)
			if i < len(parts)-1 {
				require.NotEmpty(rt, p)
			}
		}
		plain := func(s string) string { return strings.ReplaceAll(s, "\n", "") }
		require.Equal(rt, plain(text), plain(strings.Join(parts, "")))
		if units(text) <= limit {
			require.Equal(rt, []string{text}, parts)
		}
	})
	require.Equal(t, []string{"one", "two"}, split("one\ntwo", 5), "at a line end")
}
