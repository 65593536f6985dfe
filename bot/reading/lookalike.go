package reading

import (
	"strings"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// A name in letters that only look like those of a pig's name, as of another
// script, is that pig's when the person says so: it comes from a strange keyboard,
// or from somebody who wants it taken for hers.

// lookAlikes are letters that look like a Latin one, by that one: those of the
// Cyrillic, Greek, Armenian, Cherokee, Coptic and further Latin alphabets which
// Unicode lists as such (Unicode Technical Standard 39, confusables.txt 13.0.0).
// What is a Latin letter in other dress, full width or bold, is folded by
// Unicode's own rules (NFKC).
var lookAlikes = func() map[rune]byte {
	m := map[rune]byte{}
	for latin, others := range map[byte]string{
		'a': "ɑαаΑАᎪ", 'b': "ƄЬᏏΒВᏴꞴ", 'c': "ϲсᴄⲥꮯϹСᏟⲤ", 'd': "ԁᏧᎠ", 'e': "еҽꬲΕЕᎬ", 'f': "ſքẝꞙꬵϜꞘ", 'g': "ƍɡցᶃԌᏀᏳ",
		'h': "һհᏂΗНᎻⲎ", 'j': "ϳјͿЈᎫꞲ", 'k': "ΚКᏦⲔ", 'l': "ƖǀΙІӀⲒᏞⳐıɩɪͺιіӏᎥꙇꭵ", 'm': "ΜϺМᎷⲘ", 'n': "ոռΝⲚ",
		'o': "οσоօᴏᴑⲟꬽΟОՕⲞ", 'p': "ρϱрⲣΡРᏢⲢ", 'q': "ԛգզ", 'r': "гᴦⲅꭇꭈꮁƦᎡᏒ", 's': "ƽѕꜱꮪЅՏᏕᏚ", 't': "ΤТᎢⲦ", 'u': "ʋυսᴜꞟꭎꭒՍ",
		'v': "νѵᴠꮩѴᏙ", 'w': "ɯѡԝաᴡꮃԜᎳᏔ", 'x': "хΧХⲬꞳ", 'y': "ɣʏγуүᶌỿꭚΥϒУҮᎩᎽⲨ", 'z': "ᴢꮓΖᏃ",
	} {
		for _, r := range others {
			m[r] = latin
		}
	}
	return m
}()

// looks is what a name looks like: two that look alike have the same. An i and an
// l do where one of them is of another script.
func looks(s string) string {
	s = norm.NFKC.String(s)
	var b strings.Builder
	for _, r := range s {
		if latin, ok := lookAlikes[r]; ok {
			b.WriteByte(latin)
			continue
		}
		b.WriteRune(r)
	}
	return strings.ReplaceAll(strings.ToLower(b.String()), "i", "l")
}

// plainLetters says that a text is of ASCII alone.
func plainLetters(s string) bool {
	for i := range len(s) {
		if s[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// alike says that two names look the same though their letters are not.
func alike(a, b string) bool {
	return (!plainLetters(a) || !plainLetters(b)) && !strings.EqualFold(a, b) && looks(a) == looks(b)
}

// alikeAt finds the one pig whose name looks like the words at token i, and how
// many they are.
func (r *reader) alikeAt(i int) (pig int16, n int) {
	if r.toks[i].kind != tokWord {
		return -1, 0
	}
	pig = -1
	for k := range r.names {
		h := &r.names[k]
		end := i + len(h.words)
		if h.pig < 0 || h.part || h.tag || len(h.words) == 0 || end > len(r.toks) {
			continue
		}
		said := r.text[r.toks[i].from:r.toks[end-1].to]
		if plainLetters(said) && r.plainNames || !alike(said, r.pigs[h.pig].Name) {
			continue
		}
		if pig >= 0 && pig != h.pig {
			return -1, 0
		}
		pig, n = h.pig, len(h.words)
	}
	return pig, n
}
