package reading

import (
	_ "embed"
	"strings"
	"sync"
)

// The words of English, as far as it matters here: what is one of them was most often
// meant as it stands. The lists are of SCOWL (Spell Checker Oriented Word Lists, version
// 2020.12.07, sizes 10 and 20, and 35), letters alone, up to nine and eight of them.

var (
	//go:embed english/common.txt
	commonText string
	//go:embed english/rarer.txt
	rarerText string

	commonEnglish = sync.OnceValue(func() *wordList { return newWordList(commonText) })
	rarerEnglish  = sync.OnceValue(func() *wordList { return newWordList(rarerText) })
)

// wordList is a sorted list of lines of small letters, one word each.
type wordList struct {
	text string
	from [26*26 + 1]int32 // where the words begin that begin with two letters
}

func newWordList(text string) *wordList {
	l := &wordList{text: text}
	next := 0
	for at := 0; at < len(text); at += strings.IndexByte(text[at:], '\n') + 1 {
		for n := headOf(text[at:]); next <= n; next++ {
			l.from[next] = int32(at)
		}
	}
	for ; next < len(l.from); next++ {
		l.from[next] = int32(len(text))
	}
	return l
}

// headOf numbers the first two letters of a word, in the order of the words; a
// single letter counts with what begins with it and an a. It is less than nothing
// where they are no small letters.
func headOf(w string) int {
	if w == "" || w[0] < 'a' || w[0] > 'z' {
		return -1
	}
	n := int(w[0]-'a') * 26
	if len(w) == 1 || w[1] == '\n' {
		return n
	}
	if w[1] < 'a' || w[1] > 'z' {
		return -1
	}
	return n + int(w[1]-'a')
}

// has says that the list has a word of small letters.
func (l *wordList) has(w string) bool {
	n := headOf(w)
	if n < 0 {
		return false
	}
	lo, hi := int(l.from[n]), int(l.from[n+1])
	for lo < hi {
		from := max(lo, strings.LastIndexByte(l.text[:(lo+hi)/2], '\n')+1)
		to := from + strings.IndexByte(l.text[from:], '\n')
		switch c := strings.Compare(l.text[from:to], w); {
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
