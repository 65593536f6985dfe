package reading

import "strings"

// What is said beside money, and what was bought with it that has no name in the trade.

// besideMoney keeps quiet of what happened to the things bought: "$37 worth of insulators
// and the kid has lost half of them already", "T posts $62 and he bent two of them".
func (r *reader) besideMoney() {
	for k := range r.items {
		if !r.items[k].qty(money) {
			continue
		}
		_, i := r.stretch(k)
		if i >= len(r.items) || r.items[i].gap >= gapStop {
			continue
		}
		j := r.stretchEnd(i)
		someone, ofThem := false, false
		for n := i; n < j; n++ {
			it := &r.items[n]
			if it.pig >= 0 || it.kind == itQty || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sPour, sFill, sTook, sSick)) && !it.is(sFiller) {
				someone = false
				break
			}
			someone = someone || it.is(sForeign) || household[it.s] || it.is(sPronoun) && n < i+2
			ofThem = ofThem || it.is(sPartOf) || n > i && (it.s == "them" || it.s == "it" || it.s == "em")
		}
		if someone && ofThem {
			for n := i; n < j; n++ {
				r.blank(n)
			}
		}
	}
}

// moneyDropped takes "dropped" before a sum and an "on" for a word of paying: "dropped 37
// on a new hose".
func (r *reader) moneyDropped() {
	for k := 0; k+2 < len(r.items); k++ {
		n := &r.items[k+1]
		if it := &r.items[k]; it.s == "dropped" && n.gap == gapNone && (n.kind == itNum && !n.soft || n.qty(money)) && r.items[k+2].s == "on" {
			it.sense = setOf(sPay)
		}
	}
}

// oddments settles clauses that are but a price with its cents and a thing of no trade:
// "6.99 marshmallows (pig bribes)".
func (r *reader) oddments() {
	for k := 0; k+1 < len(r.items); k++ {
		it, thing := &r.items[k], &r.items[k+1]
		if it.kind != itNum || it.soft || it.quest || it.rng || !it.decimals2() || k != r.clauseFrom(k) || !r.noTrade(k+1) || thing.gap != gapNone || len(thing.s) < 4 {
			continue
		}
		j := r.clauseEnd(k)
		for n := k + 2; n < j; n++ {
			if x := &r.items[n]; x.number() && !x.soft || x.pig >= 0 || x.kind == itThing || x.kind == itDim || x.isAny(tradeSenses) {
				j = 0
			}
		}
		if j > 0 {
			r.settled = append(r.settled, span{fSpend, k, j})
		}
	}
}

// fares settles clauses of what bringing the feed or the pigs cost: "tricycle 120 to bring
// the feed".
func (r *reader) fares() {
	for k := range r.items {
		if !fareWords[r.items[k].s] || r.items[k].pig >= 0 || r.items[k].quest {
			continue
		}
		i, j := r.clauseFrom(k), r.clauseEnd(k)
		sums := 0
		for n := i; n < j; n++ {
			it := &r.items[n]
			switch {
			case it.kind == itNum && !it.soft && !it.ord, it.qty(money):
				sums++
			case it.kind == itQty, it.kind == itDim, it.pig >= 0, it.kind == itThing, it.isAny(setOf(sFeeder, sPlan, sNot, sSick, sFull)) && !it.is(sFiller):
				sums = 2
			}
		}
		if sums == 1 {
			r.settled = append(r.settled, span{fSpend, i, j})
		}
	}
}

var fareWords = setOfWords(split("tricycle, trike, jeepney, fare, freight, trucking, haulage, delivery charge, delivery fee, courier, taxi, van hire, trailer hire"))

// noTrade says that item k is a plain word, or one that nobody knows, and no slip for a
// pig's name.
func (r *reader) noTrade(k int) bool {
	it := &r.items[k]
	if it.kind != itWord || !it.sense.empty() || it.unit != 0 || it.canon != "" || it.pig >= 0 || it.near || it.stray {
		return false
	}
	_, near := r.nearName(it.s)
	return !near && !strings.HasSuffix(it.s, "ed")
}
