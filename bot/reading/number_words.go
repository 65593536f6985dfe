package reading

var numberWords = map[string]float64{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
	"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
	"seventeen": 17, "eighteen": 18, "nineteen": 19, "twenty": 20, "thirty": 30, "forty": 40, "fourty": 40,
	"fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90, "hundred": 100, "thousand": 1000,
	"couple": 2, "dozen": 12, "oh": 0,
}

// fractionWords are levels and parts said in words.
var fractionWords = map[string]float64{
	"nearly empty": 0.1, "almost empty": 0.1, "about empty": 0.1, "nearly full": 0.9, "almost full": 0.9, "mostly full": 0.8, "mostly empty": 0.2,
	"half": 0.5, "a half": 0.5, "one half": 0.5, "half full": 0.5, "half way": 0.5, "halfway": 0.5, "half empty": 0.5,
	"quarter": 0.25, "a quarter": 0.25, "one quarter": 0.25, "quarter full": 0.25, "a quarter full": 0.25, "one fourth": 0.25, "a fourth": 0.25,
	"three quarters": 0.75, "three quarter": 0.75, "three quarters full": 0.75, "three fourths": 0.75, "3 quarters": 0.75, "three-quarters": 0.75,
	"a third": 1.0 / 3, "a turd": 1.0 / 3, "just shy of full": 0.9, "shy of full": 0.9, "a hair under full": 0.9, "close to full": 0.9, "a thurd": 1.0 / 3, "one third": 1.0 / 3, "third full": 1.0 / 3, "a third full": 1.0 / 3, "two thirds": 2.0 / 3, "two thirds full": 2.0 / 3,
	"one third full": 1.0 / 3, "half gone": 0.5, "halfway down": 0.5, "half left": 0.5, "halfway full": 0.5, "half way down": 0.5, "half down": 0.5,
	"half way full": 0.5, "1 quarter": 0.25, "1 third": 1.0 / 3, "2 thirds": 2.0 / 3, "a third left": 1.0 / 3, "a quarter left": 0.25, "quarter left": 0.25,
	"third": 1.0 / 3, "halfway up": 0.5, "half way up": 0.5, "a tenth": 0.1, "an eighth": 0.125, "a fifth": 0.2, "haf": 0.5, "half of it": 0.5,
	"three quarters gone": 0.25, "two thirds gone": 1.0 / 3, "a quarter gone": 0.75, "a third gone": 2.0 / 3, "halb": 0.5, "halb voll": 0.5,
	"a third fill": 1.0 / 3, "half fill": 0.5, "half fool": 0.5, "a quarter fill": 0.25, "three quarters fill": 0.75, "a forth": 0.25, "one forth": 0.25, "a forth full": 0.25, "three forths": 0.75,
	"half the": 0.5, "one-third": 1.0 / 3, "one-half": 0.5, "two-thirds": 2.0 / 3, "half-full": 0.5, "half-empty": 0.5,
}

func addNumbers(l *lexicon) {
	for w, v := range numberWords {
		m := l.meaning(w)
		m.number, m.isNum = v, true
	}
	for w, v := range spokenParts() {
		m := l.meaning(w)
		m.frac, m.isFrac = v, true
	}
	for w, v := range fractionWords {
		m := l.meaning(w)
		m.frac, m.isFrac = v, true
	}
}

// spokenParts are levels said in fifths, sixths, eighths and tenths: "five eighths full".
func spokenParts() map[string]float64 {
	of := map[string]float64{"fifths": 5, "sixths": 6, "eighths": 8, "tenths": 10, "eights": 8}
	out := map[string]float64{}
	for w, v := range numberWords {
		for part, n := range of {
			if v < 2 || v >= n {
				continue
			}
			for _, behind := range []string{"", " full", " left"} {
				out[w+" "+part+behind] = v / n
			}
		}
	}
	return out
}

// spoken reads a number said in words from toks and gives its value and how
// many tokens it took; 0 tokens means none. "one eighty" is 180, "two oh five"
// 205, "a dozen" 12, "one hundred and five" 105, "two and a half" 2.5.
func (l *lexicon) spoken(toks []token) (v float64, n int) {
	word := func(i int) (float64, bool) {
		if i >= len(toks) || toks[i].kind != tokWord {
			return 0, false
		}
		m := l.of[toks[i].s]
		if m == nil || !m.isNum {
			return 0, false
		}
		return m.number, true
	}
	is := func(i int, s string) bool { return i < len(toks) && toks[i].s == s }
	start := 0
	if is(0, "a") || is(0, "an") {
		x, ok := word(1)
		if !ok || x != 100 && x != 1000 && x != 2 && x != 12 {
			return 0, 0
		}
		start = 1
	}
	x, ok := word(start)
	if !ok || is(start, "oh") {
		return 0, 0
	}
	v, n = x, start+1
	if n < len(toks) && toks[n].s == "of" && x == 2 && start == 1 {
		n++ // "a couple of"
	}
	var part float64 // the hundreds so far
	if x >= 100 {
		part = x // "a hundred and five"
	}
	for n < len(toks) {
		j := n
		if is(j, "-") {
			j++
		}
		if is(j, "and") && part > 0 {
			j++
		}
		y, ok := word(j)
		if !ok || is(j, "couple") || y < 10 && v >= 10 && is(j+1, "oh") { // "two twenty | two oh four"
			break
		}
		switch {
		case y == 1000:
			v *= y
			n = j + 1
			if is(n, "and") {
				j = n
			}
			if rest, k := l.spoken(toks[j+1:]); k > 0 && rest > 0 && rest < 1000 { // "nine thousand five hundred"
				v, n = v+rest, j+1+k
			}
			return v, n
		case y == 100:
			v *= y
			part = v
		case is(j, "oh") && v < 10:
			if z, ok := word(j + 1); ok && z < 10 { // "two oh five"
				v, part = v*100+z, 0
				n = j + 2
				continue
			}
			return v, n
		case v >= 20 && v < 100 && int(v)%10 == 0 && y >= 1 && y < 10, part > 0 && y < 100 && int(v)%100 == 0:
			v += y
		case v >= 1 && v < 10 && part == 0 && y >= 10 && y < 100: // "one eighty"
			v, part = v*100+y, 1
			if z, ok := word(j + 1); ok && z >= 1 && z < 10 && y >= 20 && int(y)%10 == 0 && !is(j+1, "oh") {
				v += z
				j++
			}
		case part > 0 && int(v)%10 == 0 && int(v)%100 != 10 && y >= 1 && y < 10:
			v += y
		default:
			return v, n
		}
		n = j + 1
	}
	if is(n, "point") && n+1 < len(toks) { // "four point five"
		if d, ok := word(n + 1); ok && d < 10 {
			v, n = v+d/10, n+2
			if d2, ok := word(n); ok && d2 < 10 {
				v, n = v+d2/100, n+1
			}
		} else if toks[n+1].kind == tokNum && toks[n+1].v < 10 && toks[n+1].decimals == 0 {
			v, n = v+toks[n+1].v/10, n+2
		}
	}
	return v, n
}

// andHalf reads "and a half", "and a quarter", "1/2" or "½" standing behind a
// whole number, and gives what it adds and how many tokens it took.
func andHalf(toks []token) (add float64, n int) {
	is := func(i int, s string) bool { return i < len(toks) && toks[i].s == s }
	if len(toks) == 0 {
		return 0, 0
	}
	if is(0, "and") || is(0, "n") || is(0, "an") && is(1, "a") || is(0, "&") || is(0, "+") || is(0, "plus") {
		i := 1
		if is(i, "a") || is(i, "one") {
			i++
		}
		switch {
		case is(0, "+") && i < len(toks) && (toks[i].kind == tokSlash && toks[i].v3 == 0 && toks[i].v < toks[i].v2 && smallParts(toks[i].v2) || toks[i].kind == tokNum && toks[i].v < 1 && fractionLike(toks[i].s)):
			if toks[i].kind == tokNum {
				return toks[i].v, i + 1
			}
			return toks[i].v / toks[i].v2, i + 1
		case is(i, "half"):
			return 0.5, i + 1
		case is(i, "quarter"):
			return 0.25, i + 1
		case is(i, "three") && is(i+1, "quarters"):
			return 0.75, i + 2
		}
		return 0, 0
	}
	if t := toks[0]; t.kind == tokSlash && t.spaced && t.v3 == 0 && t.v < t.v2 && smallParts(t.v2) {
		return t.v / t.v2, 1
	} else if t.kind == tokNum && t.v < 1 && fractionLike(t.s) {
		return t.v, 1
	}
	return 0, 0
}

func smallParts(d float64) bool {
	return d == 2 || d == 3 || d == 4 || d == 5 || d == 8 || d == 10 || d == 16
}

func fractionLike(s string) bool {
	for _, r := range s {
		return fractionRune(r) > 0
	}
	return false
}
