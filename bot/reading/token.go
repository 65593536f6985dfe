package reading

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// tokenKind is what a token looks like, before any meaning.
type tokenKind uint8

const (
	tokWord  tokenKind = iota
	tokNum             // 38, 38.5, 1,200, 5th
	tokClock           // 7:40
	tokSlash           // 8/5, 1/2, 94/71, 8/5/26
	tokISO             // 2026-08-05
	tokMark            // one rune of punctuation or a sign
	tokBreak           // end of a line
)

// token is one piece of the text with its place in it, in bytes.
type token struct {
	tag      tagKind
	amount   bool // a number that is no tag, as the row it stands in shows
	name     bool // stands in a list of new names, so that it is no slip of the pen
	kind     tokenKind
	from, to int
	s        string // lower case
	v, v2    float64
	v3       float64 // third part of a date, 0 if none
	ordinal  bool    // 5th
	spaced   bool    // white space stands before it
	capital  bool    // begins with a capital letter
	upper    bool    // all capitals
	decimals int     // digits after the decimal sign
}

// scan cuts a text into tokens. metric makes the comma a decimal sign and a
// point before exactly three digits a thousands sign.
func scan(toks []token, text string, metric bool) []token {
	toks = toks[:0]
	spaced := true
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == '\n':
			toks = append(toks, token{kind: tokBreak, from: i, to: i + 1, s: "\n", spaced: true})
			i += size
			spaced = true
			continue
		case unicode.IsSpace(r) || r == 0xfeff || r == 0x200b:
			i += size
			spaced = true
			continue
		}
		t := token{from: i, spaced: spaced}
		switch {
		case r >= '0' && r <= '9' || r == '.' && i+1 < len(text) && isDigit(text[i+1]):
			scanNumber(&t, text, metric)
		case fractionRune(r) > 0:
			t.kind, t.v, t.to, t.decimals = tokNum, fractionRune(r), i+size, 2
			t.s = text[t.from:t.to]
		case unicode.IsLetter(r):
			scanWord(&t, text)
		default:
			t.kind, t.to, t.s = tokMark, i+size, text[i:i+size]
		}
		toks = append(toks, t)
		i = t.to
		spaced = false
	}
	return toks
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// fractionRune is the value of a one-rune fraction, 0 for any other rune.
func fractionRune(r rune) float64 {
	switch r {
	case '½':
		return 0.5
	case '¼':
		return 0.25
	case '¾':
		return 0.75
	case '⅓':
		return 1.0 / 3
	case '⅔':
		return 2.0 / 3
	case '⅛':
		return 0.125
	}
	return 0
}

// scanWord reads letters, with apostrophes inside, and "a.m." as one word.
func scanWord(t *token, text string) {
	i, uppers, letters := t.from, 0, 0
	var odd bool // needs more than lowering ASCII
	for i < len(text) {
		r, size := utf8.DecodeRuneInString(text[i:])
		if unicode.IsLetter(r) || unicode.Is(unicode.Mn, r) {
			letters++
			if unicode.IsUpper(r) {
				uppers++
				if letters == 1 {
					t.capital = true
				}
			}
			i += size
			continue
		}
		if r == '\'' || r == '’' {
			next, _ := utf8.DecodeRuneInString(text[i+size:])
			if unicode.IsLetter(next) {
				odd = odd || r == '’'
				i += size
				continue
			}
		}
		if r == '.' && letters == 1 && i+2 < len(text) && (text[i+1] == 'm' || text[i+1] == 'M') && text[i+2] == '.' {
			i += 3 // "a.m."
			t.to, t.kind = i, tokWord
			t.s = strings.ToLower(text[t.from:t.from+1]) + "m"
			return
		}
		break
	}
	if s := text[t.from:i]; i < len(text) && (text[i] == '2' || text[i] == '3') && (s == "m" || s == "ft" || s == "M") && (i+1 == len(text) || !isDigit(text[i+1])) {
		i++ // square and cubic metres
	}
	t.kind, t.to = tokWord, i
	t.upper = uppers == letters && letters > 1
	t.s = text[t.from:i]
	if uppers > 0 {
		t.s = strings.ToLower(t.s)
	}
	if odd {
		t.s = strings.ReplaceAll(t.s, "’", "'")
	}
}

// digits reads a run of digits at i and gives its value and its end.
func digits(text string, i int) (v float64, end int) {
	for end = i; end < len(text) && isDigit(text[end]); end++ {
		if end-i < 15 {
			v = v*10 + float64(text[end]-'0')
		}
	}
	return v, end
}

func scanNumber(t *token, text string, metric bool) {
	i := t.from
	v, end := digits(text, i)
	t.kind, t.v, t.to = tokNum, v, end
	defer func() { t.s = text[t.from:t.to] }()
	at := func(k int) byte {
		if k < len(text) {
			return text[k]
		}
		return 0
	}
	switch c := at(end); {
	case c == ':' && end-i <= 2 && isDigit(at(end+1)) && isDigit(at(end+2)) && !isDigit(at(end+3)) && v <= 24:
		m, e := digits(text, end+1)
		if m < 60 {
			t.kind, t.v2, t.to = tokClock, m, e
		}
		return
	case c == '-' && end-i == 4 && isDigit(at(end+1)) && isDigit(at(end+2)) && at(end+3) == '-' && isDigit(at(end+4)):
		m, e := digits(text, end+1)
		d, e2 := digits(text, e+1)
		t.kind, t.v2, t.v3, t.to = tokISO, m, d, e2
		return
	case c == '/' && isDigit(at(end+1)):
		b, e := digits(text, end+1)
		t.kind, t.v2, t.to = tokSlash, b, e
		if at(e) == '/' && isDigit(at(e+1)) {
			y, e2 := digits(text, e+1)
			t.v3, t.to = y, e2
		}
		return
	}
	scanDecimals(t, text, i, end, metric)
	scanOrdinal(t, text)
	r, size := utf8.DecodeRuneInString(text[t.to:])
	if f := fractionRune(r); f > 0 { // 2½
		t.v, t.to, t.decimals = t.v+f, t.to+size, 2
	}
}

// scanDecimals reads what follows the whole part: thousands, then decimals.
func scanDecimals(t *token, text string, i, end int, metric bool) {
	thousands := func(sep byte) bool {
		return end < len(text) && text[end] == sep && end-i <= 3 && end > i && text[i] != '0'
	}
	for _, sep := range []byte{',', '.'} {
		for thousands(sep) {
			_, e := digits(text, end+1)
			if e-end-1 != 3 || (sep == '.') != metric && text[end+1:e] != "000" && (sep == '.' || text[e-1] != '0') { // nobody writes decimals that end in 0
				break
			}
			v, _ := digits(text, end+1)
			t.v = t.v*1000 + v
			i, end = end+1, e
			t.to = end
		}
	}
	if end < len(text) && (text[end] == '.' || text[end] == ',' && end > i) && end+1 < len(text) && isDigit(text[end+1]) {
		_, e := digits(text, end+1)
		if text[end] == ',' && !metric && e-end-1 != 1 {
			return // "38,42": two numbers
		}
		scale := 0.1
		for k := end + 1; k < e && k < end+9; k++ {
			t.v += float64(text[k]-'0') * scale
			scale /= 10
		}
		// Summing tenths drifts: settle on the nearest number with those digits.
		t.decimals = min(e-end-1, 8)
		t.v = roundTo(t.v, t.decimals)
		t.to = e
	}
}

func roundTo(v float64, decimals int) float64 {
	p := 1.0
	for range decimals {
		p *= 10
	}
	return float64(int64(v*p+0.5)) / p
}

func scanOrdinal(t *token, text string) {
	if t.to+2 > len(text) {
		return
	}
	switch strings.ToLower(text[t.to : t.to+2]) {
	case "st", "nd", "rd", "th":
		if t.to+2 == len(text) || !unicode.IsLetter(rune(text[t.to+2])) {
			t.ordinal = true
			t.to += 2
		}
	}
}
