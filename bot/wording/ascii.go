package wording

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// asciiSigns are the characters that the words of the program, and people's, use
// most beyond ASCII, as a screen without them shows them.
var asciiSigns = strings.NewReplacer(
	"–", "-", "—", "-", "−", "-", "·", "-", "•", "-", "…", "...", "×", "x", "÷", "/", "±", "+/-", "≥", ">=", "≤", "<=", "≈", "~",
	"°", "", "⚠\ufe0f", "(!)", "⚠", "(!)", "‘", "'", "’", "'", "′", "'", "“", `"`, "”", `"`, "″", `"`, "«", `"`, "»", `"`,
	"€", "EUR ", "£", "GBP ", "¥", "JPY ", "ß", "ss", "æ", "ae", "Æ", "AE", "ø", "o", "Ø", "O", "ł", "l", "Ł", "L", "đ", "d", "Đ", "D",
	"þ", "th", "Þ", "Th", "ð", "d", "Ð", "D", "œ", "oe", "Œ", "OE", "ı", "i", "\u00a0", " ", "\u202f", " ", "\u2009", " ",
)

// ASCII writes a text for a screen that shows nothing else: signs by what is typed
// for them, letters without their accents, "?" for what has neither.
func ASCII(text string) string {
	plain := true
	for i := range len(text) {
		plain = plain && text[i] < 0x80
	}
	if plain {
		return text
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r <= unicode.MaxASCII:
			return r
		case unicode.Is(unicode.Mn, r), unicode.Is(unicode.Cf, r):
			return -1
		}
		return '?'
	}, strings.ReplaceAll(norm.NFKD.String(asciiSigns.Replace(text)), "\u2044", "/")) // the bar of a fraction
}
