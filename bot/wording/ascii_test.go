package wording

import (
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"
)

// Every sentence of the program has a form in ASCII that says the same: none has a
// character in it that comes out as a question mark.
func TestASCII(t *testing.T) {
	seen := 0
	for part, of := range english {
		for code, s := range of {
			asked := 0
			for _, r := range s {
				if r == '?' {
					asked++
				}
				if r > unicode.MaxASCII {
					seen++
				}
			}
			got := ASCII(s)
			for _, r := range got {
				if r == '?' {
					asked--
				}
				require.LessOrEqual(t, r, rune(unicode.MaxASCII), "%s %s: %s", part, code, got)
			}
			require.Zero(t, asked, "%s %s: %s", part, code, got)
		}
	}
	require.NotZero(t, seen)
	for text, want := range map[string]string{
		"93 °F, 5–7 days · ⚠ Heat": "93 F, 5-7 days - (!) Heat",
		"Bäcker’s Höfli, 12 m²":    "Backer's Hofli, 12 m2",
		"€40 ½ left…":              "EUR 40 1/2 left...",
		"Straße æbler":             "Strasse aebler",
		"日本 🐖":                     "?? ?",
		"e\u0301t\u00e9":           "ete",
		"plain":                    "plain",
	} {
		require.Equal(t, want, ASCII(text))
	}
}
