package reading

import "strings"

// How far a word of mood reaches. A "not", a "going to", a "tomorrow" governs the
// clause that it stands in and no more: what another clause of the same span states
// is a fact all the same.

// scoped takes the clauses that only deny, plan or put off out of a span in which
// another clause states something: "tank is like 3/4 I didn't touch it", "I was
// going to worm all of them but the paste ran out so only fern got it".
func (r *reader) scoped(s span) span {
	if s.frame == fAlarm {
		return s // what is said beside an alarm is seen to there
	}
	start := max(r.sentenceStart(s.i), s.i-headReach)
	var room [4]scope
	governed := room[:0]
	for m := start; m < s.j; m++ {
		if s.frame == fDrug && r.waitsDays(m) {
			r.items[m].sense = setOf(sWithdraw)
		}
		if !r.governs(m, s) {
			continue
		}
		a, b := r.moodClause(m, start)
		b = min(b, max(s.j, m+1))
		governed = append(governed, scope{a, b})
		m = max(m, b-1)
	}
	if len(governed) == 0 || !r.toldOutside(governed, s) {
		return s
	}
	for _, c := range governed {
		r.silence(c, governed, s)
	}
	return s
}

// scope is a clause that a word of mood governs, from item a to before item b.
type scope struct{ a, b int }

func outside(k int, governed []scope) bool {
	for _, c := range governed {
		if k >= c.a && k < c.b {
			return false
		}
	}
	return true
}

// governs says that item m makes its clause no fact.
func (r *reader) governs(m int, s span) bool {
	it := &r.items[m]
	switch {
	case it.used || it.pig >= 0:
		return false
	case it.kind == itDay && m > 0 && r.items[m-1].s == "for" && r.doneBefore(m, s):
		it.day.mod, it.day.a = 0, 0 // "mixed 2 for tomorrow" says what they are for
		r.blank(m)
		return false
	case r.whether(m):
		return true
	case it.s == "nowhere near" || it.s == "nowhere" || it.s == "far from" || it.s == "far" && m+1 < len(r.items) && r.items[m+1].s == "from":
		return true // "far from full"
	case it.s == "way" && m > 0 && r.items[m-1].s == "long" && m+1 < len(r.items) && r.items[m+1].s == "from":
		return true
	}
	return r.unreal(m)
}

// waitsDays says that the word at item m tells how long meat has to wait: "four days
// he must wait", "14 days not eat".
func (r *reader) waitsDays(m int) bool {
	if it := &r.items[m]; it.kind == itDay || !it.isAny(setOf(sNot, sPlan)) {
		return false
	}
	wait := false
	for k := r.clauseFrom(m); k < r.clauseEnd(m); k++ {
		it := &r.items[k]
		if it.isAny(setOf(sGave, sProduct, sPigs)) || it.pig >= 0 {
			return false
		}
		wait = wait || it.qty(days)
	}
	return wait
}

// whether says that item m is an "if" that leaves open what it leads: "idk if it's
// full".
func (r *reader) whether(m int) bool {
	return m > 0 && (r.items[m].s == "if" || r.items[m].s == "whether") && r.ifNot(m-1)
}

// doneBefore says that the clause before item m tells what was done.
func (r *reader) doneBefore(m int, s span) bool {
	for k := m - 1; k >= s.i && r.items[k+1].gap < gapComma; k-- {
		it := &r.items[k]
		if it.is(sPlan) || it.is(sNot) {
			return false
		}
		if it.isAny(setOf(sMixed, sFill, sPour, sWatered)) && pastTense(it.s) {
			return true
		}
	}
	return false
}

// moodClause is the clause of item m, not before start.
func (r *reader) moodClause(m, start int) (a, b int) {
	a, b = m, m+1
	for a > start && !r.opensClause(a, start) {
		a--
	}
	for b < len(r.items) && (!r.opensClause(b, m) || r.items[b].gap < gapComma && becauseWords[r.items[b].s]) {
		b++
	}
	return a, b
}

// becauseWords lead to why something was not done, and begin what is no part of what
// was done.
var becauseWords = map[string]bool{"because": true, "cause": true, "cuz": true, "coz": true}

// opensClause says that a clause begins at item k. Without a mark it does where a
// word turns, or where a subject follows what was already told since from.
func (r *reader) opensClause(k, from int) bool {
	it := &r.items[k]
	if it.gap >= gapComma {
		return true
	}
	if becauseWords[it.s] {
		return true
	}
	switch it.s {
	case "but", "anyway", "though", "although", "however", "instead", "only", "otherwise", "so":
		return it.s != "so" || k+1 >= len(r.items) || r.items[k+1].s != "far" && r.items[k+1].s != "that"
	}
	switch firstWord(it.s) {
	case "idk", "dunno", "no idea", "no clue", "not sure", "nowhere", "far":
		return true
	case "i", "we", "i'm", "im", "i've", "we've":
		return r.endsTelling(k-1, from)
	}
	if it.is(sNot) && k > from && strings.HasSuffix(it.s, "t") && it.s != "not" {
		p := &r.items[k-1]
		return p.number() && !p.soft || p.kind == itFrac || p.kind == itDim || p.isAny(setOf(sFull, sEmpty)) // "fence 4.1 don't know why"
	}
	if it.gap == gapAnd && k > from && r.topicFirst(k) {
		return true
	}
	if it.pig < 0 || k == from {
		return false
	}
	if it.gap == gapAnd && k+1 < len(r.items) && (r.items[k+1].is(sIs) || r.items[k+1].number() && !r.items[k+1].soft) {
		return true
	}
	return r.endsTelling(k-1, from)
}

// topicFirst says that what is done to it stands behind the name of a thing or a pig
// at item k: "and the hill one I never got to".
func (r *reader) topicFirst(k int) bool {
	named := false
	for n := k; n < len(r.items) && n < k+4 && (n == k || r.items[n].gap == gapNone); n++ {
		it := &r.items[n]
		if named && (firstWord(it.s) == "i" || firstWord(it.s) == "we" || it.is(sNot)) {
			return true
		}
		named = named || it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel))
		if !named && !it.is(sFiller) {
			return false
		}
	}
	return false
}

// endsTelling says that what item k ends is told: an amount, a level, a day, a word
// for a thing that stands behind an amount.
func (r *reader) endsTelling(k, from int) bool {
	if k < 0 || r.items[k].kind == itThing {
		return false // "hill I never got to"
	}
	for n := k; n >= from && n > k-5; n-- {
		it := &r.items[n]
		if it.number() && !it.soft || it.kind == itFrac || it.kind == itDim || it.kind == itDay || it.isAny(setOf(sFull, sEmpty, sSick)) {
			return true
		}
		if it.kind == itThing && !r.placeBefore(n) || it.kind != itThing && !it.isAny(setOf(sFeeder, sBarrel, sFiller, sPour)) {
			return false
		}
	}
	return false
}

// toldOutside says that the span states something of its frame in clauses that
// nothing governs.
func (r *reader) toldOutside(governed []scope, s span) bool {
	told, level, verb, bare := false, false, false, s.frame != fWeather
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !outside(k, governed) || it.used && it.kind == itWord {
			continue
		}
		if it.is(sIf) && !it.is(sFiller) || it.s == "if" || it.isAny(setOf(sHearsay, sForeign)) && it.pig < 0 {
			return false // another mood: let the rest decide
		}
		bare = bare && it.kind != itThing && it.pig < 0 && !it.isAny(setOf(sPronoun, sIs, sFeeder, sBarrel, sFill, sPour, sTook, sFull, sEmpty, sWorm, sProduct, sSick)) && !pastTense(it.s) && it.s != "i" && it.s != "we"
		verb = verb || it.isAny(setOf(sFill, sPour, sTook, sGave))
		level = level || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty))
		told = told || r.tellsOf(k, s)
	}
	for _, c := range governed {
		for k := c.a; k < c.b; k++ {
			it := &r.items[k]
			if s.frame == fFeed && !verb && !level && k >= s.i && it.isAny(setOf(sFill, sPour, sGave)) {
				return false // "50 lb bag there, didn't pour it"
			}
			if bare && it.pig < 0 && (it.kind == itDay && r.unreal(k) || it.is(sPlan)) {
				return false // "might butcher otis early, around 240"
			}
		}
	}
	return told
}

// tellsOf says that item k can be what a span of its frame states.
func (r *reader) tellsOf(k int, s span) bool {
	it := &r.items[k]
	amount := it.number() && !it.soft && !it.qty(days) && !it.qty(hours)
	switch s.frame {
	case fDrug:
		return it.is(sProduct) || it.pig >= 0 && r.has(s, sProduct) || it.isAny(setOf(sWorm, sTreat)) && pastTense(it.s)
	case fMove:
		return it.isAny(setOf(sMove)) && pastTense(it.s)
	case fSick:
		return it.is(sSick)
	case fGone:
		return it.isAny(setOf(sDied, sSold, sSlaughtered, sLost))
	case fWeigh:
		return amount || it.kind == itDim
	case fFeed, fWater:
		return amount || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty)) || it.isAny(setOf(sFill, sWatered)) && pastTense(it.s)
	}
	return amount || it.kind == itFrac
}

// silence takes all meaning from the clause between items a and b. The names in it
// stay where the rest of the span names nothing, and so do the words that say what
// the span is about.
func (r *reader) silence(c scope, governed []scope, s span) {
	named, before := false, false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		before = before || k < c.a && outside(k, governed) && r.tellsOf(k, s)
		named = named || outside(k, governed) && (it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sAll, sBoth, sRest, sWallow, sFence)) && it.kind == itWord && !it.used)
	}
	from := c.a
	if !before && named {
		from = min(from, s.i) // "greta is a princess, she lets nobody near, but emil ..."
	}
	keep := setOf(sWorm, sTreat, sMove, sGirth, sLength, sTape, sWeigh)
	for k := from; k < c.b; k++ {
		it := &r.items[k]
		if it.kind == itDay && it.day.form == dayOffset && it.day.a <= 0 && it.day.mod <= 0 {
			continue
		}
		if !named && (it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sWallow))) && !it.isAny(setOf(sNot, sPlan)) || it.isAny(keep) && s.frame != fSick && !it.isAny(setOf(sNot, sPlan)) {
			it.used = true
			continue
		}
		r.blank(k)
	}
}
