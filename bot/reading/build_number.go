package reading

func (r *reader) readNumber(it *item, i int, currency unitID) int {
	t := &r.toks[i]
	n := 1
	switch t.kind {
	case tokSlash:
		if t.v3 == 0 && t.v < t.v2 && smallParts(t.v2) {
			it.kind, it.v, it.v2 = itFrac, t.v/t.v2, t.v2
			return r.afterFraction(it, i, 1)
		}
		it.kind, it.v, it.v2 = itSlash, t.v, t.v2
		if m := r.unitAt(i + 1); m != 0 && units[m].dim == temperature {
			it.unit = m
			n++
		}
		return n
	case tokClock, tokISO:
		it.kind, it.v, it.v2 = itSlash, t.v, t.v2
		return 1
	}
	if t.decimals == 0 && t.v >= 10 && int(t.v)%10 == 0 && i+1 < len(r.toks) && r.toks[i+1].s == "s" && !r.toks[i+1].spaced { // "in the 90s" is no number
		it.kind, it.known = itWord, true
		it.sense.add(sWeather)
		return 2
	}
	it.kind, it.v, it.ord = itNum, t.v, t.ordinal
	if p := len(r.items) - 1; t.s == "1" && t.spaced && p >= 0 && r.items[p].kind == itThing && (i+1 >= len(r.toks) || r.toks[i+1].kind == tokWord || r.toks[i+1].kind == tokBreak) && r.unitAt(i+1) == 0 && (r.items[p].s == "big" || r.items[p].s == "small" || r.items[p].s == "little" || r.items[p].s == "other") {
		it.soft = true // "the big 1"
	}
	if i+1 < len(r.toks) && r.toks[i+1].s == "o" && !r.toks[i+1].spaced && t.decimals == 0 { // the letter for the digit
		it.v *= 10
		n++
	}
	if fractionLike(t.s) {
		it.kind = itFrac
		return r.afterFraction(it, i, 1)
	}
	if add, k := andHalf(r.toks[i+1:]); k > 0 && !it.soft && !r.levelFollows(i+1, k) && !r.dayBehind(i) {
		it.v += add
		n += k
	}
	return r.afterNumber(it, i, n, currency)
}

// dayBehind says that the slash behind the number at token i is that of a day and
// no part of the number: "fence 5.6 7/10", "hazel 180 7/8".
func (r *reader) dayBehind(i int) bool {
	n := &r.toks[i+1]
	return n.kind == tokSlash && (r.toks[i].decimals > 0 || n.v2 > 4 && r.toks[i].v > mostEighths)
}

// mostEighths is the highest number that fifths and eighths are told behind.
const mostEighths = 100

// levelFollows says that "and a half" begins a level of its own: "180 and half
// left".
func (r *reader) levelFollows(i, k int) bool {
	if w := r.toks[i].s; w != "and" && w != "n" && w != "+" && w != "plus" || k > 2 {
		return false
	}
	j := i + k
	return j < len(r.toks) && (r.toks[j].s == "left" || r.toks[j].s == "full")
}

// afterFraction reads the unit of a fraction: "1/2 bag", "half a bag".
func (r *reader) afterFraction(it *item, i, n int) int {
	it.known = true
	j := i + n
	if j < len(r.toks) && r.toks[j].s == "full" {
		return n + 1 // "3/4 full"
	}
	if j+1 < len(r.toks) && (r.toks[j].s == "an" || r.toks[j].s == "a") && r.unitAt(j+1).dim() == hours {
		it.kind, it.unit, it.v2 = itQty, r.unitAt(j+1), 0
		return j + 2 - i
	}
	if j < len(r.toks) && (r.toks[j].s == "a" || r.toks[j].s == "an" || r.toks[j].s == "of") && j+1 < len(r.toks) {
		if r.toks[j+1].s == "a" || r.toks[j+1].s == "an" {
			j++
		}
		if u, k := r.unitPhrase(j + 1); u != 0 && (u.dim() == vessel || u.dim() == mass || u.dim() == volume || u.dim() == area || u == unitFt) && len(r.toks[j+1].s) > 1 {
			it.kind, it.unit, it.v2 = itQty, u, 0
			return j + 1 + k - i
		}
		return n
	}
	if u, k := r.unitPhrase(j); u != 0 && (u.dim() == vessel || len(r.toks[j].s) > 1 && u.dim() != days && u.dim() != money && r.toks[j].s != "in") {
		it.kind, it.unit, it.v2 = itQty, u, 0
		return n + k
	}
	return n
}

// afterNumber reads what follows a number: another side, a range, a unit.
func (r *reader) afterNumber(it *item, i, n int, currency unitID) int {
	it.known = true
	j := i + n
	if currency != 0 {
		it.kind, it.unit = itQty, currency
		if r.unitAt(j).dim() == money {
			n++
		}
		return n
	}
	if j+2 < len(r.toks) && (r.toks[j].s == "x" || r.toks[j].s == "×") && it.v >= 1 && it.v <= 20 && it.v == float64(int(it.v)) && r.toks[j+1].kind == tokNum {
		if u, _ := r.unitPhrase(j + 2); u.dim() == volume || u.dim() == mass { // "2 x 55 gal": two of them
			return n + 1
		}
	}
	if k := r.sides(it, j); k > 0 {
		return n + k
	}
	if k := r.rangeTo(it, j); k > 0 {
		n += k
		j += k
	}
	if j >= len(r.toks) {
		return n
	}
	t := &r.toks[j]
	if t.kind == tokMark {
		switch {
		case t.s == "#" && !t.spaced:
			it.kind, it.unit = itQty, unitLb
			return n + 1
		case t.s == "\"" || t.s == "”" || t.s == "″" || t.s == "'" && j+1 < len(r.toks) && r.toks[j+1].s == "'":
			it.kind, it.unit = itQty, unitIn
			if t.s == "'" {
				return n + 2
			}
			return n + 1
		case (t.s == "'" || t.s == "′" || t.s == "’") && !t.spaced:
			it.kind, it.unit = itQty, unitFt
			return n + 1
		case t.s == "°" || t.s == "º":
			it.kind, it.unit = itQty, unitDegree
			if u := r.unitAt(j + 1); u == unitF || u == unitC {
				it.unit = u
				n++
			}
			return n + 1
		case t.s == "%":
			it.kind, it.unit = itQty, unitPct
			return n + 1
		case (t.s == "$" || t.s == "€" || t.s == "£") && !(t.spaced && j+1 < len(r.toks) && r.toks[j+1].kind == tokNum && !r.toks[j+1].spaced):
			it.kind, it.unit = itQty, r.currencySign(t.s)
			return n + 1
		case t.s == "-" && !t.spaced && j+1 < len(r.toks) && !r.toks[j+1].spaced:
			if u := r.unitAt(j + 1); u != 0 && len(r.toks[j+1].s) > 1 { // "50-lb bag"
				it.kind, it.unit = itQty, u
				return n + 2
			}
		}
		return n
	}
	if t.s == "more" { // "3 more days"
		if u, k := r.unitPhrase(j + 1); u != 0 && len(r.toks[j+1].s) > 2 {
			it.kind, it.unit = itQty, u
			return n + 1 + k
		}
	}
	if u, k := r.unitPhrase(j); u != 0 && r.unitFits(it, u, j, k) {
		it.kind, it.unit = itQty, u
		if u == unitDegree {
			if v := r.unitAt(j + k); v == unitF || v == unitC {
				it.unit = v
				k++
			}
		}
		return n + k
	}
	if t.kind == tokWord && t.s == "k" && !t.spaced {
		it.v *= 1000
		return n + 1
	}
	return n
}

// unitFits keeps short unit words from being taken where they are another
// word: "in" before a word, "d" or "m" as an initial, "head" of pigs.
func (r *reader) unitFits(it *item, u unitID, j, k int) bool {
	t := &r.toks[j]
	if k > 1 || t.kind != tokWord {
		return true
	}
	next := func() string {
		if j+1 < len(r.toks) && r.toks[j+1].kind == tokWord {
			return r.toks[j+1].s
		}
		return ""
	}
	switch t.s {
	case "in":
		if !t.spaced {
			return true
		}
		switch next() {
		case "the", "north", "south", "it", "crate", "there", "a", "each", "feeder", "hopper", "barrel", "both", "my", "pen", "and", "stock", "all", "total", "with", "our", "heat", "em", "them", "every", "this", "that", "one", "use":
			return next() == "and"
		}
		if j+1 < len(r.toks) {
			if h, m := r.nameAt(j + 1); m > 0 && h.pig < 0 {
				return false
			}
		}
		return it.v <= 72 && (r.tapeTold(j) || len(r.toks) < 4)
	case "m", "d", "f", "c", "g", "l", "h", "w", "v", "p", "b":
		if !t.spaced {
			return !r.sexTable || t.s != "m" && t.s != "f"
		}
		if t.s == "c" && it.v > 60 || t.s == "f" && it.v > hottestF {
			if _, ok := r.initial(t.s[0]); ok {
				return false // "hazel 178 c 184": no degrees
			}
		}
		if (t.s == "c" || t.s == "f") && j+1 < len(r.toks) && r.toks[j+1].kind == tokNum && j > 1 && r.toks[j-2].kind == tokWord {
			if _, ok := r.initial(t.s[0]); ok && len(r.toks[j-2].s) == 1 {
				return false // "h 38 c 38.5"
			}
		}
		if t.upper || t.capital {
			if _, ok := r.initial(t.s[0]); ok && t.s != "f" && t.s != "c" && (t.s != "l" || j+1 < len(r.toks) && r.toks[j+1].kind == tokNum) {
				return false
			}
		}
		if t.s == "w" || t.s == "h" || t.s == "d" || t.s == "v" || t.s == "m" {
			_, taken := r.initial(t.s[0])
			return !taken && (t.s != "m" || r.dayFirst) && (t.s != "w" && t.s != "h")
		}
	case "mos", "mo", "wks", "wk", "hrs", "hr": // a pig's name cut short, before a number of its own
		if h, ok := r.nearName(t.s); ok && h.pig >= 0 && t.spaced && j+1 < len(r.toks) && r.toks[j+1].kind == tokNum {
			return false
		}
	case "st":
		return !t.spaced || it.v > 2
	case "min":
		return it.v != 0 && next() != "mix" && !r.saysMax()
	case "pounds":
		return true
	case "can", "cans":
		return false
	}
	return true
}

// saysMax says that a "max" stands in the text, so that "min" is the least of
// something: "max 31 min 17".
func (r *reader) saysMax() bool {
	for i := range r.toks {
		if r.toks[i].s == "max" {
			return true
		}
	}
	return false
}

// unitAt gives the unit that the single token at i names, 0 if none.
func (r *reader) unitAt(i int) unitID {
	if i >= len(r.toks) || r.toks[i].kind != tokWord {
		return 0
	}
	if m := r.lex.of[r.toks[i].s]; m != nil {
		return m.unit
	}
	return 0
}

// unitPhrase finds the unit at i, of one or several words, with near-miss
// spelling for longer words.
func (r *reader) unitPhrase(i int) (unitID, int) {
	if i >= len(r.toks) || r.toks[i].kind != tokWord {
		return 0, 0
	}
	if m, n := r.lex.phrase(r.toks[i:], func(m *meaning) bool { return m.unit != 0 }); m != nil {
		if m.unit.dim() == length && i+n < len(r.toks) && r.toks[i+n].s == "²" {
			n++
		}
		return m.unit, n
	}
	s := r.toks[i].s
	if len(s) >= 5 && r.lex.of[s] == nil {
		if w, ok := r.correct(s); ok {
			if m := r.lex.of[w]; m.unit != 0 {
				return m.unit, 1
			}
		}
	}
	return 0, 0
}

// tapeTold says that the sentence around token i speaks of a pig's measures or
// of a depth, so that "in" behind a number is inches.
func (r *reader) tapeTold(i int) bool {
	for _, step := range []int{-1, 1} {
		for k := i; k >= 0 && k < len(r.toks) && k-i < tapeReach && i-k < tapeReach; k += step {
			t := &r.toks[k]
			if t.kind == tokBreak || t.s == "." && k != i {
				break
			}
			if m := r.lex.of[t.s]; m != nil && m.sense.any(setOf(sGirth, sLength, sTape, sDeep, sWallow, sPigs, sGilt, sBarrow)) {
				return true
			}
			if h, n := r.nameAt(k); n > 0 && h.pig >= 0 {
				return true
			}
		}
	}
	return false
}

// partOf says that 3/4 is a part of something and no day: the words beside it
// speak of a level.
func (r *reader) partOf(i int) bool {
	t := &r.toks[i]
	if t.v3 != 0 || t.v >= t.v2 || !smallParts(t.v2) || i == 0 {
		return i == 0 && t.v3 == 0 && t.v < t.v2 && t.v2 <= 8 && smallParts(t.v2) && i+1 < len(r.toks) && r.levelWord(i+1)
	}
	if i+1 < len(r.toks) && r.levelWord(i+1) {
		return true
	}
	switch r.toks[i-1].s {
	case "feed", "grain", "water", "about", "maybe", "only", "at", "to", "still", "is", "was", "roughly", "nearly", "almost", "its", "it's", "filled", "hopper", "feeder", "barrel", "tank", "level", "looks", "a", "~":
		return true
	}
	if h, n := r.nameAt(i - 1); n > 0 && (h.feeder >= 0 || h.barrel >= 0) {
		return true
	}
	return r.toks[i-1].kind == tokNum && !r.dayBehind(i-1)
}

func (r *reader) levelWord(i int) bool {
	switch r.toks[i].s {
	case "full", "left", "of", "empty", "gone", "bag", "bags", "batch", "batches", "bucket", "sack", "in", "remaining", "tank", "barrel":
		return true
	}
	return false
}

// tapeReach is how many tokens around a number are looked at for what it
// measures.
const tapeReach = 14
