package reading

import "strings"

// asides takes the clauses out that only tell of the day, with a number that is
// nobody's amount: "gotta be at work at 6", "the truck needs 4 tires". They would
// lend their number, or their mood, to the clause beside them.
func (r *reader) asides() {
	for from := 0; from < len(r.items); {
		to := from + 1
		for to < len(r.items) && r.items[to].gap < gapAnd {
			to++
		}
		if to-from < len(r.items) && r.isAside(from, to) {
			for k := from; k < to; k++ {
				r.blank(k)
			}
			r.items[from].gap = max(r.items[from].gap, gapSemi)
			if to < len(r.items) {
				r.items[to].gap = max(r.items[to].gap, gapSemi)
			}
		}
		from = to
	}
}

// isAside says that every word of a clause is talk and every number in it is
// accounted for by the word beside it.
func (r *reader) isAside(from, to int) bool {
	if to-from < 3 {
		return false
	}
	planned, numbers, content := false, false, false
	for k := from; k < to; k++ {
		it := &r.items[k]
		if it.is(sPlan) && r.wantsWeight(k) > k { // "want em about 270, sundays 1 pm"
			return false
		}
		planned = planned || it.is(sPlan) && it.pig < 0 || it.kind == itDay && (it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0)
	}
	for k := from; k < to; k++ {
		it := &r.items[k]
		content = content || it.kind == itWord && (it.sense.empty() && len(it.s) > 2 || it.isAny(setOf(sForeign, sPlan)) || it.s == "been")
		if it.quest || it.pig >= 0 || it.group >= 0 || it.kind == itName || it.kind == itThing || it.stray || it.label || it.kind == itWord && !r.isTalk(it, planned) {
			return false
		}
	}
	for k := from; k < to; k++ {
		it := &r.items[k]
		switch it.kind {
		case itWord, itDay:
		case itClock:
			numbers = true
		case itNum:
			if it.soft {
				continue
			}
			if !planned && !r.countsPlain(k, to) && !r.toldHour(k, from) {
				return false
			}
			numbers = true
		case itQty:
			if !(it.qty(hours) || it.qty(days)) || !r.ofOurDay(from, to) && !planned {
				return false
			}
			numbers = true
		default:
			return false
		}
	}
	return numbers && content // "sat at 5:45 pm" is no aside
}

// talkList is what words of an aside may mean: who, when, what is meant to be.
var talkList = []sense{sFiller, sPlan, sForeign, sPronoun, sIs, sAnd, sTo, sNow, sHere, sAt, sOn, sOf, sAbout, sThanks, sNot}

// isTalk says that a word can be one of an aside. What is to come may tell of the
// weather.
func (r *reader) isTalk(it *item, planned bool) bool {
	switch {
	case it.unit != 0:
		return false
	case it.is(sFiller), strings.HasSuffix(it.s, "feed store"): // "it's 20 miles to the feed store"
		return true
	}
	rest := it.sense
	for _, x := range talkList {
		rest.drop(x)
	}
	if planned {
		for _, x := range []sense{sWeather, sHigh, sLow} {
			rest.drop(x)
		}
	}
	return rest.empty()
}

// ofOurDay says that a clause tells how the person spent the day, so that hours in
// it are theirs: "only slept 5 hours".
func (r *reader) ofOurDay(from, to int) bool {
	for k := from; k < to; k++ {
		switch r.items[k].s {
		case "slept", "worked", "drove", "waited", "sat", "stood", "late", "overtime", "sleep", "work", "drive":
			return true
		}
	}
	return false
}

// countsPlain says that a plain noun of no trade follows the number at item k: "4
// tires", "14 eggs".
func (r *reader) countsPlain(k, to int) bool {
	if k+1 >= to || r.items[k+1].gap != gapNone {
		return false
	}
	n := &r.items[k+1]
	return n.kind == itWord && n.sense.empty() && len(n.s) > 2 && r.lex.plain[n.s]
}

// toldHour says that a word before the number at item k makes it an hour or an age:
// "at 6", "since 4", "turned 9".
func (r *reader) toldHour(k, from int) bool {
	if k == from || r.items[k].v > 99 {
		return false
	}
	switch r.items[k-1].s {
	case "at", "since", "till", "til", "until", "turned", "turns", "by":
		return k-1 > from
	}
	return false
}
