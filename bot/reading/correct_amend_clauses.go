package reading

import (
	"slices"
	"strconv"
	"strings"
)

// The clauses of a text that puts a record right.

// slashPart reads as a part what looks like a date: "wasn't full, more like 3/4".
func (r *reader) slashPart(it *item) (item, bool) {
	over, under, ok := strings.Cut(r.text[it.from:it.to], "/")
	n, err1 := strconv.Atoi(over)
	d, err2 := strconv.Atoi(under)
	if !ok || err1 != nil || err2 != nil || n >= d || n <= 0 {
		return item{}, false
	}
	part := *it
	part.kind, part.v = itFrac, float64(n)/float64(d)
	return part, true
}

// toldLately says that one of the last texts has a word, or a longer one that begins
// so.
func (r *reader) toldLately(w string) bool {
	for n := range r.c.Before {
		if _, ok := r.recent(n); ok && r.toldWith(n, w) {
			return true
		}
	}
	return false
}

// toldWith says that the text of the n-th record has the word.
func (r *reader) toldWith(n int, w string) bool {
	return strings.Contains(strings.ToLower(r.c.Before[n].Text), w)
}

// dashBefore says that a dash parts item k from the one before.
func (r *reader) dashBefore(k int) bool {
	from, to := r.items[k-1].to, r.items[k].from
	return from < to && strings.HasPrefix(r.text[from:to], " -")
}

// anyValue says that a value stands in items[i:j].
func (r *reader) anyValue(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.pig >= 0 || it.kind == itThing || it.kind == itFrac || it.kind == itDay {
			return true
		}
	}
	return false
}

// excuse says that the clause items[i:j] but tells why a wrong value was told: "thumb
// slipped", "i forgot to send".
func (r *reader) excuse(i, j int) bool {
	if j-i > 12 {
		return false
	}
	told := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.quest || it.kind != itWord && !it.soft && it.pig < 0 || it.isAny(setOf(sSick, sFeed, sFill, sWater, sMove, sWorm, sTreat, sDied, sRemind)) && !it.is(sFiller) {
			return false
		}
		told = told || excuseWords[it.s] || excuseWords[firstWord(it.s)]
	}
	return told
}

// plainExcuse says that the clause items[i:j] tells of a slip, and not but of being tired.
func (r *reader) plainExcuse(i, j int) bool {
	for k := i; k < j; k++ {
		if w := r.items[k].s; (w == "read" || w == "red" || w == "write") && k > i && r.items[k-1].is(sNot) { // "can't read my own writing"
			return true
		}
		if w := r.items[k].s; (excuseWords[w] || excuseWords[firstWord(w)]) && !vagueExcuses[w] && !vagueExcuses[firstWord(w)] {
			return true
		}
	}
	return false
}

// cannotRead says that item k begins why a value was read wrong, without a comma: "pepper
// was 176 cant read my own writing".
func (r *reader) cannotRead(from, k int) bool {
	if k <= from+1 || !r.items[k].is(sNot) {
		return false
	}
	return k+1 < len(r.items) && (r.items[k+1].s == "read" || r.items[k+1].s == "write" || r.items[k+1].s == "red") && r.excuse(k, r.sentenceEnd(k))
}

// spentLast says that the message before told what was spent.
func (r *reader) spentLast() bool {
	f, ok := r.c.Before[0].Entry.Act.(Fact)
	return ok && f.Kind() == "spend" && r.c.Now.Sub(r.c.Before[0].At) <= justTold
}

// sorryWords begin an excuse.
var sorryWords = setOfWords(split(`sorry, sry, soz, pardon, excuse, excuse me, apologies, my`))

// mereReason says that the clause items[i:j] names no value and nothing of the trade.
func (r *reader) mereReason(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.quest || it.kind != itWord && !it.soft || it.pig >= 0 || it.isAny(tradeSenses) && !it.is(sFiller) || it.isAny(setOf(sPlan, sIf, sAskSure, sPigs, sOut, sRemind)) && !it.is(sFiller) {
			return false
		}
	}
	return true
}

// tellsUndone takes the clause items[i:j] that says of a pig that it was not done: "haven't
// done pearl" behind "that was gus".
func (r *reader) tellsUndone(a *amends, i, j int) bool {
	not, pig := false, int16(-1)
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && pig < 0:
			pig = it.pig
		case it.is(sNot) && it.s != "not":
			not = true
		case it.kind != itWord && !it.soft || it.pig >= 0 || it.quest || !it.isAny(setOf(sFiller, sPronoun, sWeigh, sDone, sUndone, sGirth, sNow)):
			return false
		}
	}
	if !not || pig < 0 {
		return false
	}
	a.notPigs = append(a.notPigs, pig)
	return true
}

// saysItStands takes the clause items[i:j] where it says that a value was right: "83 is
// right", "203 stands".
func (r *reader) saysItStands(a *amends, i, j int) bool {
	if !standsWords[r.items[j-1].s] {
		return false
	}
	var values []float64
	pig := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0:
			pig = true
		case it.kind == itNum && !it.soft:
			values = append(values, it.v)
		case it.kind == itQty:
			values = append(values, it.v)
		case it.kind == itWord && (standsWords[it.s] || amendSmall[it.s] || it.isAny(setOf(sFiller, sIs))):
		default:
			return false
		}
	}
	if !pig && len(values) == 0 {
		return false
	}
	a.cue, a.stays = true, append(a.stays, values...)
	return true
}

// amendKind notes which kind of record item k is a word of.
func (r *reader) amendKind(a *amends, k int) bool {
	it := &r.items[k]
	kind := ""
	switch {
	case it.is(sGirth) || it.is(sTape) || it.s == "around" && k > 0 && r.items[k-1].kind == itNum:
		kind = "girth"
	case it.is(sFence) && it.pig < 0:
		kind = "fence"
	case it.is(sSick) && it.pig < 0:
		kind = "sick"
	case it.is(sFeed) && !it.is(sFiller) || it.is(sFeeder) && !it.is(sBarrel):
		kind = "refill"
	case it.is(sBarrel) && !it.is(sFeeder) || it.is(sWater):
		kind = "water"
	case it.is(sWallow):
		kind = "wallow"
	case it.is(sWorm):
		kind = "worm"
	case it.isAny(setOf(sMove, sInUse)) && it.pen < 0:
		kind = "move"
	case it.is(sFill) && !it.is(sFull) || it.is(sPour):
		kind = "refill"
	case it.is(sMixed):
		kind = "mixed"
	case it.is(sPay):
		kind = "spend"
	case it.s == "temp" || it.s == "temperature" || it.is(sHigh):
		kind = "weather"
	case it.s == "weight" || it.s == "weighed" || it.s == "weighs" || it.s == "weigh":
		kind = "weigh"
	}
	if kind == "" {
		return false
	}
	if a.kind == "" || a.kind == kind {
		a.kind = kind
	}
	return true
}

// inUnit is a bare number in the unit of another amount.
func (r *reader) inUnit(it, as *item) *item {
	if as == nil || it.kind != itNum || as.kind != itQty {
		return it
	}
	in := *it
	in.kind, in.unit = itQty, as.unit
	return &in
}

// heldBefore says that a number or a pig was told lately.
func (r *reader) heldBefore(it *item) bool {
	for n := range r.c.Before {
		f, ok := r.recent(n)
		if ok && (it.pig >= 0 && slices.Contains(AnimalsOf(f), r.pigs[it.pig].Name) || it.number() && !it.soft && r.holdsAmount(n, it)) {
			return true
		}
	}
	return false
}
