package reading

import (
	"strconv"
	"strings"
)

// Where pens are numbered a bare number can be one: "pigs in 3", "put them in 2". It
// never ends an alarm, since it may count the pigs as well.

// numberedPens takes the number that closes a clause about where the pigs are for the
// pen of that number.
func (r *reader) numberedPens() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord || it.v != float64(int(it.v)) || it.quest || r.force[k] != 0 || !r.closes(k) && !r.nowBehind(k) || !r.herdGoesTo(k) {
			continue
		}
		pen := r.penNumbered(int(it.v))
		if pen < 0 {
			continue
		}
		it.kind, it.pen = itThing, pen
		r.forceRange(r.clauseFrom(k), r.clauseEnd(k), fMove)
		for n := r.clauseFrom(k); n < k; n++ {
			r.items[n].sense.drop(sBackIn)
		}
	}
}

// penNumbered is the pen whose name is the number, or ends on it behind a word for
// pens; -1 if there is none.
func (r *reader) penNumbered(n int) int8 {
	for k, p := range r.c.Herd.Pens {
		if k > 100 {
			break
		}
		words := strings.Fields(strings.ToLower(p.Name))
		if len(words) > 0 && words[len(words)-1] == strconv.Itoa(n) && (len(words) == 1 || len(words) == 2 && genericThing[words[0]] == sPen) {
			return int8(k)
		}
	}
	return -1
}

func (r *reader) nowBehind(k int) bool {
	return k+1 < len(r.items) && (r.items[k+1].is(sNow) || r.items[k+1].s == "now") && r.closes(k+1)
}

// herdGoesTo says that the clause before item k tells of the herd, and that a word for
// where it is or goes stands right before the item.
func (r *reader) herdGoesTo(k int) bool {
	if r.items[k].gap != gapNone {
		return false
	}
	switch lastWord(r.items[k-1].s) {
	case "in", "into", "to":
	default:
		return false
	}
	herd := false
	for n := r.clauseFrom(k); n < k; n++ {
		it := &r.items[n]
		switch w := firstWord(it.s); {
		case it.pig >= 0, it.is(sPigs), theySaid[w], w == "pigs", w == "moved", w == "all", w == "everybody", w == "everyone":
			herd = true
		case it.number() && !it.soft, it.isAny(setOf(sFeeder, sFeed, sBarrel, sFence, sNot, sPlan, sOut)):
			return false
		case it.kind == itWord && (it.isAny(setOf(sFiller, sIs, sMove, sPour, sNow, sTo, sBackIn)) || w == "in" || w == "into" || w == "put" || w == "got"):
		case it.kind == itDay, it.kind == itClock:
		default:
			return false
		}
	}
	return herd
}
