package bot

import (
	"slices"
	"strings"
	"unicode"
)

// urgentSentence is the words of a sentence, "," between its clauses.
type urgentSentence struct {
	words []string
	asked bool
}

// urgentSentences cuts a text into sentences of words in lower case without
// apostrophes.
func urgentSentences(text string) []urgentSentence {
	var out []urgentSentence
	var s urgentSentence
	var word strings.Builder
	flush := func() {
		if word.Len() == 0 {
			return
		}
		w := word.String()
		word.Reset()
		if n := len(s.words); n > 0 && w == "not" && contracted[s.words[n-1]] != "" {
			s.words[n-1] = contracted[s.words[n-1]]
			return
		}
		s.words = append(s.words, w)
	}
	runes := []rune(strings.ToLower(text))
	for i, r := range runes {
		switch {
		case r == '\'' || r == '’' || r == '`':
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			word.WriteRune(r)
		case r == '.' && i > 0 && i+1 < len(runes) && unicode.IsDigit(runes[i-1]) && unicode.IsDigit(runes[i+1]):
			word.WriteRune(r)
		case strings.ContainsRune(".?!;\n", r):
			flush()
			s.asked = r == '?'
			if len(s.words) > 0 {
				out = append(out, s)
			}
			s = urgentSentence{}
		case r == ',':
			flush()
			s.words = append(s.words, ",")
		default:
			flush()
		}
	}
	flush()
	if len(s.words) > 0 {
		out = append(out, s)
	}
	return out
}

func clauses(words []string) [][]string {
	var out [][]string
	from := 0
	for i := 0; i <= len(words); i++ {
		if i == len(words) || words[i] == "," {
			if i > from {
				out = append(out, words[from:i])
			}
			from = i + 1
		}
	}
	return out
}

// asPigs puts "pig" in the place of each pig's name.
func asPigs(words, names []string) []string {
	if len(names) == 0 {
		return words
	}
	byFirst := map[string][][]string{}
	for _, n := range names {
		for _, s := range urgentSentences(n) {
			byFirst[s.words[0]] = append(byFirst[s.words[0]], s.words)
		}
	}
	var out []string
	for i := 0; i < len(words); {
		taken := 0
		for _, name := range byFirst[strings.TrimSuffix(words[i], "s")] {
			if len(name) == 1 { // "Oliver's" is Olivers without its apostrophe
				taken = max(taken, 1)
			}
		}
		for _, name := range byFirst[words[i]] {
			if len(name) <= len(words)-i && slices.Equal(name, words[i:i+len(name)]) {
				taken = max(taken, len(name))
			}
		}
		if taken == 0 {
			out = append(out, words[i])
			i++
			continue
		}
		out = append(out, "pig")
		i += taken
	}
	return out
}
