package reading

// build turns tokens into items.
func (r *reader) build() {
	gap, lead := uint8(gapStop), uint8(gapNone)
	approx, plus, minus := false, false, false
	var currency unitID
	days := dayReader{lex: r.lex, toks: r.toks, metric: r.dayFirst}
	for i := 0; i < len(r.toks); {
		t := &r.toks[i]
		if t.kind == tokBreak {
			gap = gapStop
			i++
			continue
		}
		if t.kind == tokMark {
			switch t.s {
			case ",", "(", ")", "•", "·", "|", "->", "→", "\\":
				gap = max(gap, gapComma)
			case ";":
				gap = max(gap, gapSemi)
			case ".", "!", "…":
				gap = max(gap, gapStop)
			case "?":
				gap = max(gap, gapStop)
				r.markQuestion()
			case "&", "/":
				gap = max(gap, gapAnd)
			case "+":
				if i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && !r.toks[i+1].spaced && t.spaced {
					plus = true
				}
				gap = max(gap, gapAnd)
			case "-", "–", "—", "−":
				if i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && !r.toks[i+1].spaced && t.spaced {
					minus = true
				} else if t.spaced {
					gap = max(gap, gapComma)
				}
			case ":":
				if n := len(r.items); n > 0 {
					r.items[n-1].label = true
				}
				gap = max(gap, gapComma)
			case "~", "≈", "±":
				approx = true
			case "$", "€", "£":
				currency = r.currencySign(t.s)
			case "=":
			}
			i++
			continue
		}
		it := item{from: t.from, gap: gap, pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1, capital: t.capital, upper: t.upper, approx: approx, plus: plus, minus: minus}
		n := r.read(&it, i, days, currency)
		if it.kind == itWord && (it.is(sAnd) && len(it.s) < 5 && it.unit == 0) && n == 1 {
			if gap < gapAnd {
				gap = gapAnd
			}
			if it.s == "and" || it.s == "&" || it.s == "n" || it.s == "und" || it.s == "plus" {
				i += n
				continue
			}
		}
		it.to = r.toks[i+n-1].to
		if it.s == "but" && n == 1 && len(r.items) > 0 && !r.items[len(r.items)-1].isAny(setOf(sAll, sEach)) {
			it.gap = max(it.gap, gapComma)
		}
		it.lead = lead
		if filler := setOf(sFiller); it.kind == itWord && it.sense == filler {
			lead = max(lead, it.gap)
		} else {
			lead = gapNone
		}
		r.items = append(r.items, it)
		if it.kind != itWord {
			approx, plus, minus, currency = false, false, false, 0
		}
		gap = gapNone
		i += n
	}
}

// markQuestion marks the items of the sentence so far as part of a question.
func (r *reader) markQuestion() {
	for k := len(r.items) - 1; k >= 0; k-- {
		r.items[k].quest = true
		if r.items[k].gap >= gapStop {
			break
		}
	}
}

func (r *reader) currencySign(s string) unitID {
	switch s {
	case "€":
		return mustUnit("EUR")
	case "£":
		return mustUnit("GBP")
	}
	return mustUnit(r.dollar())
}

// dollar is the currency that the dollar sign means here.
func (r *reader) dollar() string {
	switch r.c.Herd.Currency {
	case "CAD", "AUD", "NZD":
		return r.c.Herd.Currency
	}
	return "USD"
}

// read makes the item that begins at token i and says how many tokens it took.
func (r *reader) read(it *item, i int, days dayReader, currency unitID) int {
	t := &r.toks[i]
	it.s = t.s
	if currency == 0 {
		if h, n := r.nameAt(i); n > 0 && !r.plainUse(i, n, h, days) {
			r.takeName(it, h, i, n)
			return n
		}
		if e, n := days.at(i); n > 0 && !(t.kind == tokSlash && n == 1 && r.partOf(i)) {
			it.kind, it.day, it.known = itDay, e, true
			it.v, it.v2 = t.v, t.v2
			if m, k := r.lex.phrase(r.toks[i:], func(m *meaning) bool { return m.isDay }); m != nil && k == n {
				it.sense, it.s = m.sense, m.text
			}
			return n
		}
		if m, said, n := clockAt(r.lex, r.toks, i); n > 0 {
			it.kind, it.clock, it.ampm, it.known = itClock, m, said, true
			return n
		}
	}
	switch t.kind {
	case tokNum, tokSlash, tokClock, tokISO:
		return r.readNumber(it, i, currency)
	}
	return r.readWord(it, i)
}

// plainUse says that what looks like a name of the herd is a plain word here:
// "may 5" where a pig is called May, "red" in "red spots".
func (r *reader) plainUse(i, n int, h herdName, days dayReader) bool {
	if n > 1 || r.toks[i].kind != tokWord {
		return false
	}
	m, k := r.lex.phrase(r.toks[i:], func(*meaning) bool { return true })
	if m != nil && k > 1 && (h.pig >= 0 || h.part && m.sense.any(whoWords)) {
		return true
	}
	if days.month(i) > 0 {
		_, k, _ := days.dayNumber(i + 1)
		return k > 0 && !r.toks[i].capital || r.toks[i].s != h0(h) && k > 0
	}
	return false
}

func h0(h herdName) string {
	if len(h.words) > 0 {
		return h.words[0]
	}
	return ""
}

// takeName makes the item stand for a thing of the herd. The word's other
// meanings stay, so that "barrel 2" still speaks of water.
func (r *reader) takeName(it *item, h herdName, i, n int) {
	it.pig, it.feeder, it.barrel, it.pen, it.group = h.pig, h.feeder, h.barrel, h.pen, h.group
	it.kind = itThing
	if h.pig >= 0 {
		it.kind = itName
	}
	it.known = true
	if h.pig >= 0 {
		return
	}
	for k := i; k < i+n; k++ {
		if g := genericThing[r.toks[k].s]; g != 0 {
			it.sense.add(g)
		} else if len(r.toks[k].s) > 2 && r.toks[k].s[len(r.toks[k].s)-1] == 's' {
			if g := genericThing[r.toks[k].s[:len(r.toks[k].s)-1]]; g != 0 {
				it.sense.add(g)
			}
		}
	}
}

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
	it.kind, it.v, it.ord = itNum, t.v, t.ordinal
	if i+1 < len(r.toks) && r.toks[i+1].s == "o" && !r.toks[i+1].spaced && t.decimals == 0 { // the letter for the digit
		it.v *= 10
		n++
	}
	if fractionLike(t.s) {
		it.kind = itFrac
		return r.afterFraction(it, i, 1)
	}
	if add, k := andHalf(r.toks[i+1:]); k > 0 && !r.levelFollows(i+1, k) {
		it.v += add
		n += k
	}
	return r.afterNumber(it, i, n, currency)
}

// levelFollows says that "and a half" begins a level of its own: "180 and half
// left".
func (r *reader) levelFollows(i, k int) bool {
	if r.toks[i].s != "and" && r.toks[i].s != "n" || k > 2 {
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
		it.kind, it.unit = itQty, r.unitAt(j+1)
		return j + 2 - i
	}
	if j < len(r.toks) && (r.toks[j].s == "a" || r.toks[j].s == "of") && j+1 < len(r.toks) {
		if r.toks[j+1].s == "a" {
			j++
		}
		if u, k := r.unitPhrase(j + 1); u != 0 && (u.dim() == vessel || u.dim() == mass || u.dim() == volume) && len(r.toks[j+1].s) > 1 {
			it.kind, it.unit = itQty, u
			return j + 1 + k - i
		}
		return n
	}
	if u, k := r.unitPhrase(j); u != 0 && (u.dim() == vessel || len(r.toks[j].s) > 1 && u.dim() != days && u.dim() != money && r.toks[j].s != "in") {
		it.kind, it.unit = itQty, u
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
		case t.s == "$" || t.s == "€" || t.s == "£":
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
		if t.upper || t.capital {
			if _, ok := r.initial(t.s[0]); ok && t.s != "f" && t.s != "c" {
				return false
			}
		}
		if t.s == "w" || t.s == "h" || t.s == "d" || t.s == "v" || t.s == "m" {
			_, taken := r.initial(t.s[0])
			return !taken && (t.s != "m" || r.dayFirst) && (t.s != "w" && t.s != "h")
		}
	case "st":
		return !t.spaced || it.v > 2
	case "min":
		return it.v != 0 && next() != "mix"
	case "pounds":
		return true
	case "can", "cans":
		return false
	}
	return true
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
		if w, ok := r.lex.correct(s); ok {
			if m := r.lex.of[w]; m.unit != 0 {
				return m.unit, 1
			}
		}
	}
	return 0, 0
}

// sides reads "x 42" or "by 42 by 6" after a first side.
func (r *reader) sides(it *item, j int) int {
	n := 0
	var first unitID
	read := func(k int) (float64, unitID, int) {
		if k >= len(r.toks) {
			return 0, 0, 0
		}
		v, m := 0.0, 0
		switch t := &r.toks[k]; {
		case t.kind == tokNum:
			v, m = t.v, 1
			if add, k2 := andHalf(r.toks[k+1:]); k2 > 0 {
				v += add
				m += k2
			}
		case t.kind == tokSlash && t.v < t.v2:
			v, m = t.v/t.v2, 1
		case t.kind == tokWord:
			v, m = r.lex.spoken(r.toks[k:])
		}
		return v, 0, m
	}
	times := func(k int) bool {
		if k >= len(r.toks) {
			return false
		}
		s := r.toks[k].s
		return s == "x" || s == "×" || s == "*" || s == "by" && k+1 < len(r.toks) && (r.toks[k+1].kind == tokNum || isSpokenNumber(r.lex, r.toks[k+1].s))
	}
	k := j
	if !times(k) {
		u, m := r.sideUnit(k)
		if m == 0 || !times(k+m) {
			return 0
		}
		first = u
		k += m
	}
	v2, _, m := read(k + 1)
	if m == 0 {
		return 0
	}
	n = k + 1 + m - j
	it.kind, it.v2, it.unit = itDim, v2, first
	k = j + n
	u, m := r.sideUnit(k)
	if m > 0 {
		it.unit = u
	}
	if times(k + m) {
		if v3, _, m3 := read(k + m + 1); m3 > 0 {
			it.v3 = v3
			n = k + m + 1 + m3 - j
			k = j + n
			u, m = r.sideUnit(k)
			if m > 0 {
				it.unit = u
			}
			return n + m
		}
	}
	return n + m
}

func isSpokenNumber(l *lexicon, s string) bool {
	m := l.of[s]
	return m != nil && m.isNum
}

// sideUnit reads a unit of length or area behind a side.
func (r *reader) sideUnit(k int) (unitID, int) {
	if k >= len(r.toks) {
		return 0, 0
	}
	switch t := &r.toks[k]; {
	case t.s == "\"" || t.s == "”" || t.s == "″":
		return unitIn, 1
	case t.kind == tokMark && (t.s == "'" || t.s == "′" || t.s == "’") && !t.spaced:
		return unitFt, 1
	}
	u, m := r.unitPhrase(k)
	if m > 0 && (u.dim() == length || u.dim() == area) && (r.toks[k].s != "in" || !r.toks[k].spaced || !r.wordFollows(k+1)) {
		return u, m
	}
	return 0, 0
}

func (r *reader) wordFollows(k int) bool {
	if k >= len(r.toks) || r.toks[k].kind != tokWord {
		return false
	}
	switch r.toks[k].s {
	case "the", "use", "it", "there":
		return true
	}
	return false
}

// rangeTo reads "-3" or "to 3" or "or 3" after a number.
func (r *reader) rangeTo(it *item, j int) int {
	if j+1 >= len(r.toks) {
		return 0
	}
	t, u := &r.toks[j], &r.toks[j+1]
	if u.kind != tokNum || u.ordinal {
		return 0
	}
	dash := (t.s == "-" || t.s == "–") && !u.spaced == !t.spaced
	or := t.s == "or" && u.v > it.v && u.v < it.v*2
	if !dash && !or {
		return 0
	}
	it.v2, it.rng = u.v, true
	return 2
}

func (r *reader) readWord(it *item, i int) int {
	t := &r.toks[i]
	if n := r.zoneItem(it, i); n > 0 {
		return n
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
	any := func(*meaning) bool { return true }
	m, n := r.lex.phrase(r.toks[i:], any)
	if m != nil && m.isFrac && (n > 1 || !m.isNum) {
		it.kind, it.v, it.known, it.sense, it.s = itFrac, m.frac, true, m.sense, m.text
		return r.afterFraction(it, i, n)
	}
	if n < 2 {
		if v, k := r.lex.spoken(r.toks[i:]); k > 0 {
			if add, k2 := andHalf(r.toks[i+k:]); k2 > 0 && !r.levelFollows(i+k, k2) {
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
		if u, k := r.unitPhrase(i + 1); u != 0 && n < 2 && len(r.toks[i+1].s) > 2 && u.dim() == vessel {
			it.kind, it.v, it.unit, it.known = itQty, 1, u, true
			if add, k2 := andHalf(r.toks[i+1+k:]); k2 > 0 && !r.levelFollows(i+1+k, k2) {
				it.v += add
				k += k2
			}
			return 1 + k
		}
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
	if r.lex.plain[s] {
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
	if w, ok := r.lex.correct(s); ok {
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

// zoneItem reads a time zone where the words around it are about one: a name
// with a slash, "... time", an abbreviation in capitals, or a place behind
// "in", "near" or "zone".
func (r *reader) zoneItem(it *item, i int) int {
	zone, n := r.zoneAt(i)
	if n == 0 {
		return 0
	}
	t := &r.toks[i]
	last := &r.toks[i+n-1]
	sure := false
	for k := i; k < i+n; k++ {
		sure = sure || r.toks[k].s == "/"
	}
	next := func(k int) string {
		if k < len(r.toks) && r.toks[k].kind == tokWord {
			return r.toks[k].s
		}
		return ""
	}
	switch {
	case sure, last.s == "time" && n > 1:
		sure = true
	case next(i+n) == "time" && (next(i+n+1) != "to" && next(i+n+1) != "for"):
		sure = true
		n++
		if next(i+n) == "zone" {
			n++
		}
	case next(i+n) == "timezone", next(i+n) == "time zone":
		sure = true
		n++
	case n == 1 && len(t.s) <= 4 && t.upper && (t.s[len(t.s)-1] == 't' || t.s == "utc" || t.s == "mez" || t.s == "uk") && t.s != "sat":
		sure = true
	}
	if !sure {
		sure = r.placeWanted(i) && (t.capital || r.lex.of[t.s] == nil || n > 1)
	}
	if !sure {
		return 0
	}
	it.s, it.canon, it.known = zone, zoneCanon, true
	// "Springfield, Missouri": the state decides.
	if k := i + n; k+1 < len(r.toks) && r.toks[k].s == "," {
		if z, m := r.zoneAt(k + 1); m > 0 {
			it.s = z
			return n + 1 + m
		}
	}
	return n
}

// placeWanted says that the words before token i ask for a place.
func (r *reader) placeWanted(i int) bool {
	for j := i - 1; j >= 0 && j >= i-4; j-- {
		switch s := r.toks[j].s; s {
		case "zone", "timezone", "tz", "near", "outside", "located", "from", "based", "live":
			return true
		case "in":
			for k := j - 1; k >= 0 && k >= j-3; k-- {
				switch r.toks[k].s {
				case "i'm", "im", "we're", "were", "am", "are", "live", "farm", "located", "based", "here", "place", "is", "clock", "zone", "up", "down", "out", "over":
					if k > 0 && (r.toks[k-1].s == "they" || r.toks[k-1].s == "pigs") {
						return false
					}
					return true
				}
			}
			return j == 0
		case ":", "is", "=", "the", "of", "a", "just", "town", "called":
		default:
			return false
		}
	}
	return false
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

// listedAt says that the word at token i stands in a list of names of pigs that
// came: behind a colon, a comma or an "and" of a sentence about their coming, or
// before a comma or an "and" of one.
func (r *reader) listedAt(i int) bool {
	side := func(k int) bool {
		return k >= 0 && k < len(r.toks) && (r.toks[k].s == "," || r.toks[k].s == "and" || r.toks[k].s == "&" || r.toks[k].s == ":")
	}
	if !side(i-1) && !side(i+1) {
		return false
	}
	for _, step := range []int{-1, 1} {
		for k := i + step; k >= 0 && k < len(r.toks) && k-i < tapeReach && i-k < tapeReach; k += step {
			t := &r.toks[k]
			if t.kind == tokBreak || t.s == "." {
				break
			}
			switch t.s {
			case "came", "arrived", "come", "arrive":
				return true
			}
		}
	}
	return false
}

// tapedAt says that the word at token i stands where the name of a pig does,
// before a number and a word of the tape: "walter 36 girth".
func (r *reader) tapedAt(i int) bool {
	if i+2 >= len(r.toks) || r.toks[i+1].kind != tokNum || i > 0 && r.toks[i-1].kind != tokMark && r.toks[i-1].kind != tokBreak {
		return false
	}
	if _, near := r.nearName(r.toks[i].s); near {
		return false
	}
	m := r.lex.of[r.toks[i+2].s]
	return m != nil && m.sense.any(setOf(sGirth, sTape, sLength))
}

// namedBefore says that the word at token i stood in a list of new names before.
func (r *reader) namedBefore(i int) bool {
	for k := range i {
		if r.toks[k].name && r.toks[k].s == r.toks[i].s {
			return true
		}
	}
	return false
}

// initialHere says that the single letter at token i is a pig's initial: a
// number stands right behind it, or before it at the end of its clause.
func (r *reader) initialHere(i int) bool {
	t := &r.toks[i]
	if _, ok := r.initial(t.s[0]); !ok || (t.s == "a" || t.s == "i" || t.s == "n" || t.s == "w") && !t.capital || t.s == "x" {
		return false
	}
	return i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && r.toks[i+1].spaced && (i == 0 || r.toks[i-1].kind != tokNum || t.capital || t.spaced)
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
		return i == 0 && t.v3 == 0 && t.v < t.v2 && smallParts(t.v2) && i+1 < len(r.toks) && r.levelWord(i+1)
	}
	if i+1 < len(r.toks) && r.levelWord(i+1) {
		return true
	}
	switch r.toks[i-1].s {
	case "about", "maybe", "only", "at", "to", "still", "is", "was", "roughly", "nearly", "almost", "its", "it's", "filled", "hopper", "feeder", "barrel", "tank", "level", "looks", "a", "~":
		return true
	}
	if h, n := r.nameAt(i - 1); n > 0 && h.pig < 0 {
		return true
	}
	return r.toks[i-1].kind == tokNum
}

func (r *reader) levelWord(i int) bool {
	switch r.toks[i].s {
	case "full", "left", "of", "empty", "gone", "bag", "bags", "batch", "batches", "bucket", "sack", "in", "remaining", "tank", "barrel":
		return true
	}
	return false
}

// rightSpelling puts words right that are one slip away from a word of the
// lexicon, so that they count in phrases too. Names are left as they stand.
func (r *reader) rightSpelling() {
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind != tokWord || len(t.s) < 3 || r.lex.longest[t.s] > 0 || r.lex.of[t.s] != nil || r.lex.plain[t.s] || t.capital && !t.upper && r.namingAt(i) {
			continue
		}
		if t.name = r.listedAt(i) || r.namedBefore(i) || r.tapedAt(i); t.name {
			continue
		}
		if _, n := r.nameAt(i); n > 0 {
			continue
		}
		if _, ok := r.nearName(t.s); ok {
			continue
		}
		if w, ok := r.lex.correct(t.s); ok {
			t.s = w
		}
	}
}

// tapeReach is how many tokens around a number are looked at for what it
// measures.
const tapeReach = 14
