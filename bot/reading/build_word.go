package reading

import "strings"

func (r *reader) readWord(it *item, i int) int {
	t := &r.toks[i]
	if n := r.zoneItem(it, i); n > 0 {
		return n
	}
	if i > 0 && t.capital && !t.upper && (r.toks[i-1].s == "called" || r.toks[i-1].s == "named") {
		return 1 // a name, whatever else the word means: "a new pen called Pond"
	}
	if len(t.s) == 1 && r.initialHere(i) {
		it.pig, _ = r.initial(t.s[0])
		it.init, it.kind, it.known = true, itName, true
		return 1
	}
	if u, k := r.unitPhrase(i); u != 0 && u.dim() == vessel && u != unitBale {
		if add, k2 := andHalf(r.toks[i+k:]); k2 > 0 && r.toks[i+k].kind == tokWord { // "bag and a half"
			it.kind, it.v, it.unit, it.known = itQty, 1+add, u, true
			return k + k2
		}
	}
	if u, k := r.unitPhrase(i); u != 0 && u.dim() == vessel && u != unitBale && u != unitBatch && k == 1 && t.s[len(t.s)-1] != 's' && i+1 < len(r.toks) && r.toks[i+1].s == "in" && r.beginsPiece(i) && (i+2 == len(r.toks) || r.toks[i+2].kind != tokWord && r.toks[i+2].kind != tokNum) {
		it.kind, it.v, it.unit, it.known = itQty, 1, u, true // "bag in."
		return 1
	}
	any := func(*meaning) bool { return true }
	m, n := r.lex.phrase(r.toks[i:], any)
	if n > 1 && m.sense.has(sOut) && r.endsInPen(i, n) {
		m, n = r.lex.phrase(r.toks[i:i+1], any) // "put them in the garden" where that is a pen
	}
	if m != nil && m.isFrac && (n > 1 || !m.isNum) {
		it.kind, it.v, it.known, it.sense, it.s = itFrac, m.frac, true, m.sense, m.text
		return r.afterFraction(it, i, n)
	}
	if n < 2 {
		if v, k := r.lex.spoken(r.toks[i:]); k > 0 {
			if k == 2 && v > mostDays && i+k < len(r.toks) && (r.toks[i+k].s == "day" || r.toks[i+k].s == "days") { // "around eight eighteen day withdrawal"
				if w, n := r.lex.spoken(r.toks[i : i+1]); n == 1 {
					v, k = w, 1
				}
			}
			if add, k2 := andHalf(r.toks[i+k:]); k2 > 0 && !r.levelFollows(i+k, k2) && !(t.s == "one" && k == 1 && r.toks[i+k].kind == tokSlash && len(r.items) > 0 && r.items[len(r.items)-1].kind == itThing) { // "big one 2/3"
				v += add
				k += k2
			}
			it.kind, it.v = itNum, v
			it.soft = k == 1 && t.s == "one"
			if t.s == "one" && k == 1 && m != nil {
				it.sense = m.sense
			}
			return r.afterNumber(it, i, k, 0)
		}
	}
	if t.s == "a" || t.s == "an" { // "a bag"
		if u, k := r.unitPhrase(i + 1); u != 0 && n < 2 && len(r.toks[i+1].s) > 2 && (u.dim() == hours && k == 1 && i > 0 && r.toks[i-1].s == "in" || u.dim() == days && k == 1 && i > 0 && (r.toks[i-1].s == "for" || i+2 < len(r.toks) && (r.toks[i+2].s == "left" || r.toks[i+2].s == "worth") && r.toks[i-1].s != "half") || u.dim() == vessel || u.name() == "short ton" || u.name() == "tonne") {
			it.kind, it.v, it.unit, it.known = itQty, 1, u, true
			it.soft = u.dim() == days
			if add, k2 := andHalf(r.toks[i+1+k:]); k2 > 0 && !r.levelFollows(i+1+k, k2) {
				it.v += add
				k += k2
			}
			return 1 + k
		}
	}
	if m != nil && n > 1 && m.sense.any(setOf(sBarrel, sWater)) {
		if h, k := r.nameAt(i + n - 1); k == 1 && h.barrel >= 0 && r.lex.of[t.s] != nil { // "the water tank" where a barrel is called tank
			m, n = r.lex.of[t.s], 1
		}
	}
	if m != nil && n > 1 && m.sense.has(sShed) && r.barrelThere(i, n) {
		m, n = r.lex.of[t.s], 1 // "put 20 gal in the shed barrel"
	}
	if m != nil {
		if n == 1 && m.sense.empty() && m.unit != 0 && len(t.s) >= 3 && !(i > 0 && r.toks[i-1].kind == tokNum) { // "mos": months, or a pig
			if h, ok := r.nearName(t.s); ok && h.pig >= 0 {
				r.takeName(it, h, i, 0)
				it.near = true
				return 1
			}
		}
		r.takeMeaning(it, m)
		return n
	}
	return r.unknownWord(it, i)
}

// barrelThere says that the phrase of n tokens at i, "in the shed", ends on the name of
// a barrel and is about its water: the word for a barrel follows, or a volume or a word
// for water stands right before.
func (r *reader) barrelThere(i, n int) bool {
	h, k := r.nameAt(i + n - 1)
	if k == 0 || h.barrel < 0 {
		return false
	}
	if j := i + n - 1 + k; j < len(r.toks) && genericThing[r.toks[j].s] == sBarrel || k > 1 {
		return true
	}
	for j := max(0, i-4); j < i; j++ {
		if r.unitAt(j).dim() == volume || genericThing[r.toks[j].s] == sBarrel || genericThing[r.toks[j].s] == sWater {
			return true
		}
	}
	return false
}

// mostDays is the longest span of days that two numbers spoken in a row are taken
// for one number of.
const mostDays = 200

func (r *reader) takeMeaning(it *item, m *meaning) {
	it.known = true
	it.s = m.text
	it.sense = m.sense
	it.unit = m.unit
	switch {
	case m.canon != "" && m.drug != "":
		it.canon = m.canon
	case m.canon != "":
		it.canon = m.canon
	case m.drug != "":
		it.canon = m.drug
	}
}

// unknownWord tries a near-miss spelling, then an initial.
func (r *reader) unknownWord(it *item, i int) int {
	t := &r.toks[i]
	s := t.s
	if len(s) > 2 && s[len(s)-2:] == "'s" {
		s = s[:len(s)-2]
		if m := r.lex.of[s]; m != nil {
			r.takeMeaning(it, m)
			return 1
		}
	}
	if len(s) == 1 {
		if p, ok := r.initial(s[0]); ok {
			it.pig, it.init, it.kind, it.known = p, true, itName, true
		}
		return 1
	}
	if r.lex.plain[s] || len(s) > 3 && s[len(s)-1] == 's' && r.lex.plain[s[:len(s)-1]] {
		it.known = true
		return 1
	}
	if t.capital && !t.upper && r.namingAt(i) || t.name {
		return 1 // a name of its own, not a slip
	}
	if h, ok := r.nearName(s); ok {
		r.takeName(it, h, i, 0)
		it.near = true
		return 1
	}
	if p, ok := r.cutName(s); ok {
		it.pig, it.kind, it.known, it.near = p, itName, true, true
		return 1
	}
	if i > 0 && r.toks[i-1].s == "at" && strings.HasSuffix(t.s, "'s") {
		return 1 // "at Miller's": a place
	}
	if w, ok := r.correct(s); ok && !r.lex.of[w].sense.has(sForeign) {
		m := r.lex.of[w]
		switch {
		case m.isFrac:
			it.kind, it.v, it.known = itFrac, m.frac, true
		case m.isNum:
			it.kind, it.v = itNum, m.number
			return r.afterNumber(it, i, 1, 0)
		case m.isDay:
			it.kind, it.day, it.known = itDay, m.day, true
		default:
			r.takeMeaning(it, m)
		}
		it.s = w
	}
	return 1
}

// namingAt says that the word at token i stands where names are given: inside a
// sentence of a herd that is still being set up, or behind a word for naming.
func (r *reader) namingAt(i int) bool {
	if i == 0 {
		return false
	}
	p := &r.toks[i-1]
	if m := r.lex.of[p.s]; m != nil && m.sense.any(setOf(sHerd, sNamed)) {
		return true
	}
	if p.capital && p.kind == tokWord && i > 1 && r.namingAt(i-1) {
		return true
	}
	return len(r.c.Herd.Animals) == 0 && p.kind != tokBreak && p.s != "."
}

// initialHere says that the single letter at token i is a pig's initial: a
// number stands right behind it, or before it at the end of its clause.
func (r *reader) initialHere(i int) bool {
	t := &r.toks[i]
	if _, ok := r.initial(t.s[0]); !ok || (t.s == "a" || t.s == "i" || t.s == "n" || t.s == "w") && !t.capital || t.s == "x" {
		return false
	}
	return i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && (r.toks[i+1].spaced || r.toks[i+1].v >= 30) && (i == 0 || r.toks[i-1].kind != tokNum || t.capital || t.spaced)
}

// rightSpelling puts words right that are one slip away from a word of the
// lexicon, so that they count in phrases too. Names are left as they stand.
func (r *reader) rightSpelling() {
	r.heardWrong()
	named := false
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind != tokWord || t.tag != noTag || len(t.s) < 2 || r.lex.longest[t.s] > 0 || r.lex.of[t.s] != nil || r.lex.inside[t.s] || r.lex.plain[t.s] || r.lex.placeWord[t.s] || t.capital && !t.upper && r.namingAt(i) {
			continue
		}
		if t.name = r.listedAt(i) || named && r.namedBefore(i) || r.tapedAt(i); t.name {
			named = true
			continue
		}
		if _, n := r.nameAt(i); n > 0 {
			continue
		}
		if _, ok := r.nearName(t.s); ok {
			continue
		}
		if _, ok := r.cutName(t.s); ok {
			continue
		}
		if w, ok := r.lex.clipped[t.s]; ok {
			t.s = w
			continue
		}
		if w, ok := r.likelyWord(i); ok {
			t.s = w
			continue
		}
		if len(t.s) < 3 {
			continue
		}
		if w, ok := r.lex.corrected(t.s, true); ok && (r.lex.inside[w] || !r.lex.of[w].sense.has(sForeign)) {
			t.s = w
		}
	}
}

// correction is what the lexicon makes of a word.
type correction struct {
	said, meant string
	ok          bool
}

// correct is the lexicon's, which remembers the last few words: each is looked at for
// a unit, a name and a sense.
func (r *reader) correct(s string) (string, bool) {
	for _, c := range r.corrections {
		if c.said == s {
			return c.meant, c.ok
		}
	}
	c := correction{said: s}
	c.meant, c.ok = r.lex.correct(s)
	r.corrections[r.lastCorrection] = c
	r.lastCorrection = (r.lastCorrection + 1) % len(r.corrections)
	return c.meant, c.ok
}

// endsInPen says that the phrase of n tokens at token i ends in the name of a pen of the
// herd.
func (r *reader) endsInPen(i, n int) bool {
	for k := i + 1; k < i+n; k++ {
		if h, m := r.nameAt(k); m > 0 && h.pen >= 0 && k+m == i+n {
			return true
		}
	}
	return false
}
