package reading

// longestSentence is after how many items a sentence ends with its next clause, and
// after twice as many it ends in any case: what is looked for in a whole sentence
// must not take longer than the text is long.
const longestSentence = 100

// build turns tokens into items.
func (r *reader) build() {
	gap, lead := uint8(gapStop), uint8(gapNone)
	approx, plus, minus := false, false, false
	var currency unitID
	run := 0 // items of the sentence
	days := dayReader{lex: r.lex, toks: r.toks, metric: r.dayFirst}
	for i := 0; i < len(r.toks); {
		t := &r.toks[i]
		if t.kind == tokBreak {
			gap = gapStop
			i++
			continue
		}
		if r.enumerator(i) {
			gap = gapStop
			i += 2
			continue
		}
		if t.kind == tokMark {
			switch t.s {
			case ",", "(", ")", "•", "·", "|", "->", "→", "\\":
				gap = max(gap, gapComma)
			case ";":
				gap = max(gap, gapSemi)
			case ".", "!", "…":
				if t.s == "." && i > 0 && titles[r.toks[i-1].s] {
					break // "sold to Mr. Hale"
				}
				if t.s == "." && r.clippedDay(i) {
					break // "509 sold Sat. $410"
				}
				gap = max(gap, gapStop)
			case "?":
				gap = max(gap, gapStop)
				r.markQuestion()
			case "&", "/":
				gap = max(gap, gapAnd)
				if t.s == "/" && t.spaced && i+1 < len(r.toks) && r.toks[i+1].spaced {
					gap = max(gap, gapComma)
				}
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
		n += r.halfBehind(&it, i+n)
		if it.kind == itWord && (it.is(sAnd) && len(it.s) < 5 && it.unit == 0) && n == 1 {
			if gap < gapAnd {
				gap = gapAnd
			}
			if it.s == "and" || it.s == "&" || it.s == "n" || it.s == "und" || it.s == "plus" {
				i += n
				continue
			}
		}
		if it.s == "then" && n == 1 && len(r.items) > 0 {
			gap = max(gap, gapComma) // what comes then is another fact
			i += n
			continue
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
		if run++; run > longestSentence && it.gap >= gapComma || run > 2*longestSentence {
			it.gap = gapStop
		}
		if it.gap >= gapStop {
			run = 0
		}
		r.items = append(r.items, it)
		if it.kind != itWord {
			approx, plus, minus, currency = false, false, false, 0
		}
		gap = gapNone
		i += n
	}
}

// halfBehind adds the half that stands behind a counted vessel, "1 sack and a half",
// and gives how many tokens it took. What goes on to a level is none: "2 bags and
// half left".
func (r *reader) halfBehind(it *item, i int) int {
	if !it.qty(vessel) || it.v != float64(int(it.v)) || i >= len(r.toks) || r.toks[i].kind != tokWord && r.toks[i].s != "+" {
		return 0
	}
	add, n := andHalf(r.toks[i:])
	if n == 0 {
		return 0
	}
	if j := i + n; j < len(r.toks) && r.toks[j].kind == tokWord && !halfGoesOn[r.toks[j].s] {
		return 0
	}
	it.v += add
	return n
}

// halfGoesOn are the words that may stand behind such a half.
var halfGoesOn = setOfWords([]string{"in", "into", "to", "today", "yesterday", "this", "last", "now", "on", "at", "for", "went", "poured", "put", "fed", "more", "each", "again", "gone", "went", "so"})

// titles are words before a name whose full stop ends no sentence.
var titles = map[string]bool{"mr": true, "mrs": true, "ms": true, "dr": true, "messrs": true, "st": true}

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
	switch t.tag {
	case tagNew:
		it.tag, it.capital = true, true
		return 1
	case tagStray:
		it.stray, it.known = true, true
		return 1
	}
	if currency == 0 {
		if h, n := r.nameAt(i); n > 0 && !r.plainUse(i, n, h, days) {
			r.takeName(it, h, i, n)
			it.near = t.tag == tagDoubt
			return n
		}
		if p, n := r.alikeAt(i); n > 0 {
			it.pig, it.kind, it.known, it.near, it.alike = p, itName, true, true, true
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
		if m, said, n := clockAt(r.lex, r.toks, i); n > 0 && r.hourHere(i) {
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

// hourHere says that the number at token i can be a time of day: three digits
// before "this morning" are more often what a pig weighs, "otis 205 this morning".
func (r *reader) hourHere(i int) bool {
	t := &r.toks[i]
	if i > 0 && r.toks[i-1].s == "all" { // "wormed all five this morning"
		return false
	}
	if r.amountOfNight(i) {
		return false
	}
	if t.kind != tokNum || t.v < 100 || i+1 >= len(r.toks) || r.toks[i+1].s != "this" && r.toks[i+1].s != "in" {
		return true
	}
	if i == 0 {
		return true
	}
	switch r.toks[i-1].s {
	case "at", "@", "around", "about", "by", "since", "till", "til", "until", "from":
		return true
	}
	if t.v < 500 {
		return false
	}
	_, named := r.nameAt(i - 1)
	return named == 0
}

// amountOfNight says that a small number before "this morning" is an amount: "2 buckets last
// night, 1 this morning". Common practice, no source: nobody feeds at that hour of the
// night without saying "at".
func (r *reader) amountOfNight(i int) bool {
	t := &r.toks[i]
	if t.kind != tokNum || t.v > 4 || i == 0 || i+2 >= len(r.toks) || r.toks[i+1].s != "this" || r.toks[i+2].s != "morning" {
		return false
	}
	switch r.toks[i-1].s {
	case "and", "&", ",", "n", "then", "plus", "also", "only", "just":
		return true
	}
	return false
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
			case "joined", "adopted", "fetched", "collected", "arrivals", "newcomers", "called", "named":
				return r.toks[i].capital
			case "new", "more":
				return r.toks[i].capital && k+1 < len(r.toks) && newOnes[r.toks[k+1].s]
			}
		}
	}
	return false
}

// newOnes are who is told to be new.
var newOnes = setOfWords(split("pig, pigs, piglet, piglets, boys, girls, gilt, gilts, barrow, barrows, arrivals, weaners, hogs, ones, babies, kids"))

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

// clippedDay says that the full stop at token i ends but the short form of a day or a
// month, and that a number or a sum follows.
func (r *reader) clippedDay(i int) bool {
	if i == 0 || i+1 >= len(r.toks) || r.toks[i-1].to != r.toks[i].from || !clippedDays[r.toks[i-1].s] {
		return false
	}
	n := &r.toks[i+1]
	if n.kind == tokMark {
		return (n.s == "$" || n.s == "€" || n.s == "£") && i+2 < len(r.toks) && r.toks[i+2].kind == tokNum
	}
	return n.kind == tokNum && len(r.toks[i-1].s) < 4 && monthClips[r.toks[i-1].s]
}

var (
	clippedDays = setOfWords(split("sun, mon, tue, tues, wed, weds, thu, thur, thurs, fri, sat, jan, feb, mar, apr, jun, jul, aug, sep, sept, oct, nov, dec"))
	monthClips  = setOfWords(split("jan, feb, mar, apr, jun, jul, aug, sep, oct, nov, dec"))
)
