package bot

import (
	"strings"

	"troughbell/bot/wording"
)

// Command takes a leading "/word@bot" apart; ok is false where the text is none.
func Command(text string) (word, bot, rest string, ok bool) {
	if !strings.HasPrefix(text, "/") || len(text) < 2 {
		return "", "", "", false
	}
	word, rest, _ = strings.Cut(text[1:], " ")
	if first, more, cut := strings.Cut(word, "\n"); cut {
		word, rest = first, more+" "+rest
	}
	word, bot, _ = strings.Cut(word, "@")
	return strings.ToLower(word), bot, strings.TrimSpace(rest), word != ""
}

// plainly is a text in which a command stands as the words that it is short for.
func plainly(text string) string {
	if word, _, rest, ok := Command(text); ok {
		return wording.CommandText(word, rest)
	}
	return text
}
