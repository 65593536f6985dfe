package reading

import (
	_ "embed"
	"strings"
)

// The words of English, as far as it matters here: what is one of them was most often
// meant as it stands. The lists are of SCOWL (Spell Checker Oriented Word Lists, version
// 2020.12.07, sizes 10 and 20, and 35), letters alone, up to nine and eight of them.

//go:embed english/common.txt
var commonEnglish string

//go:embed english/rarer.txt
var rarerEnglish string

// wordIn says that a sorted list of lines has a word.
func wordIn(list, w string) bool {
	lo, hi := 0, len(list)
	for lo < hi {
		from := strings.LastIndexByte(list[:(lo+hi)/2], '\n') + 1
		to := from + strings.IndexByte(list[from:], '\n')
		switch c := strings.Compare(list[from:to], w); {
		case c == 0:
			return true
		case c < 0:
			lo = to + 1
		default:
			hi = from
		}
	}
	return false
}
