package reading

import "strings"

// How a word sounds, roughly: its consonants as they are spoken, with or without a
// mark for each vowel between them. "wait" and "weight" sound the same, "whine"
// and "when" have the same consonants.

// soundKey is the sound of a word in small letters. Without vowels only one that
// begins the word is marked. What has other letters than a to z has none.
func soundKey(w string, vowels bool) string {
	var out []byte
	put := func(c byte) {
		if len(out) == 0 || out[len(out)-1] != c {
			out = append(out, c)
		}
	}
	at := func(i int) byte {
		if i >= 0 && i < len(w) {
			return w[i]
		}
		return 0
	}
	for i := 0; i < len(w); {
		c := w[i]
		if c < 'a' || c > 'z' {
			return ""
		}
		if isVowel(c) || c == 'y' && i > 0 {
			mark, n := vowelSound(w, i)
			if i+n == len(w) && n == 1 && c == 'e' && len(out) > 1 { // silent at the end
				i += n
				continue
			}
			switch {
			case vowels:
				put(mark)
			case i == 0:
				put('A')
			}
			i += n
			continue
		}
		n := 1
		switch {
		case strings.HasPrefix(w[i:], "tch"):
			put('X')
			n = 3
		case strings.HasPrefix(w[i:], "dge"):
			put('J')
			n = 3
		case c == 'c' && at(i+1) == 'h', c == 's' && at(i+1) == 'h':
			put('X')
			n = 2
		case c == 'c' && at(i+1) == 'k', c == 'q' && at(i+1) == 'u':
			put('K')
			n = 2
		case c == 'c' && (at(i+1) == 'e' || at(i+1) == 'i' || at(i+1) == 'y'), c == 'z':
			put('S')
		case c == 'c', c == 'q':
			put('K')
		case c == 'p' && at(i+1) == 'h':
			put('F')
			n = 2
		case c == 't' && at(i+1) == 'h':
			put('0')
			n = 2
		case c == 'g' && at(i+1) == 'h':
			if i == 0 {
				put('G')
			}
			n = 2
		case i == 0 && (c == 'k' || c == 'g') && at(1) == 'n', i == 0 && c == 'w' && at(1) == 'r', c == 'b' && at(i-1) == 'm' && i+1 == len(w):
		case c == 'w' && at(i+1) == 'h':
			put('W')
			n = 2
		case c == 'w' && !isVowel(at(i+1)), c == 'w' && at(i-1) == 't', c == 'h' && (i > 0 || !isVowel(at(1))):
		case c == 'x':
			if i > 0 {
				put('K')
			}
			put('S')
		case c == 'd' && i+1 == len(w) && at(i-1) == 'e' && strings.IndexByte("kpsxfc", at(i-2)) >= 0 && i > 2:
			put('T') // "mixed"
		default:
			put(c - 'a' + 'A')
		}
		i += n
	}
	return string(out)
}

func isVowel(c byte) bool {
	switch c {
	case 'a', 'e', 'i', 'o', 'u':
		return true
	}
	return false
}

// vowelSounds are the sounds of vowels written together, the longer before the
// shorter that it begins with.
var vowelSounds = []struct {
	s    string
	mark byte
}{
	{"eigh", '1'},
	{"aigh", '1'},
	{"eau", '4'},
	{"ai", '1'},
	{"ay", '1'},
	{"ei", '1'},
	{"ey", '1'},
	{"ee", '2'},
	{"ea", '2'},
	{"ie", '2'},
	{"oo", '3'},
	{"ou", '3'},
	{"ew", '3'},
	{"ue", '3'},
	{"ui", '3'},
	{"oa", '4'},
	{"ow", '4'},
	{"au", '4'},
	{"aw", '4'},
	{"oe", '4'},
}

// vowelSound is the mark of the vowels that begin at i, and how many letters they
// are.
func vowelSound(w string, i int) (byte, int) {
	if i+1 < len(w) && (isVowel(w[i+1]) || w[i+1] == 'y' || w[i+1] == 'w') {
		for _, v := range vowelSounds {
			if strings.HasPrefix(w[i:], v.s) {
				return v.mark, len(v.s)
			}
		}
	}
	if i+2 < len(w) && w[i+2] == 'e' && i+3 == len(w) && !isVowel(w[i+1]) { // "same", "wine"
		switch w[i] {
		case 'a':
			return '1', 1
		case 'o':
			return '4', 1
		case 'u':
			return '3', 1
		case 'i':
			return '9', 1
		}
	}
	switch w[i] {
	case 'a':
		return '5', 1
	case 'e':
		return '6', 1
	case 'i', 'y':
		return '7', 1
	case 'o':
		return '4', 1
	}
	return '3', 1
}
