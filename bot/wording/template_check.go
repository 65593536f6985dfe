package wording

import (
	"fmt"
	"strconv"
	"strings"
)

// wrong says what is wrong with a sentence of a catalogue; empty if nothing is.
func wrong(sentence string) string {
	depth := 0
	for i := 0; i < len(sentence); i++ {
		switch sentence[i] {
		case '[':
			if depth++; depth > 1 {
				return "brackets in brackets"
			}
		case ']':
			if depth--; depth < 0 {
				return "a bracket too many"
			}
		case '{':
			end := strings.IndexByte(sentence[i:], '}')
			if end < 2 {
				return "an open mark"
			}
			if m := sentence[i+1 : i+end]; !knownMark(m) {
				return fmt.Sprintf("unknown mark {%s}", m)
			}
			i += end
		case '!':
			return "an exclamation mark"
		}
	}
	if depth != 0 {
		return "an open bracket"
	}
	return ""
}

func knownMark(m string) bool {
	m = strings.TrimPrefix(m, "?")
	m, nouns, counted := strings.Cut(m, "|")
	m, style, styled := strings.Cut(m, ":")
	if counted && strings.Count(nouns, "|") != 1 {
		return false
	}
	if styled && !knownStyle(style) {
		return false
	}
	if from, ok := strings.CutPrefix(m, "n*"); ok {
		_, err := strconv.Atoi(from)
		return err == nil && !counted
	}
	for part := range strings.SplitSeq(m, "~") {
		switch part {
		case "n", "N", "on", "at":
			continue
		}
		if len(part) < 2 || !strings.ContainsRune("nNdtq", rune(part[0])) {
			return false
		}
		if _, ok := place(part); !ok {
			return false
		}
	}
	return true
}
