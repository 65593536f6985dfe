package reading

import "strings"

// thingsThatGot takes "got" behind a feeder or a barrel for what went into it:
// "the small hopper got 2 bags".
func (r *reader) thingsThatGot() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		switch it.s {
		case "dropped off", "dropped", "brought", "hauled":
			if all := (span{0, r.sentenceStart(k), r.sentenceEnd(k)}); it.is(sSlaughtered) && r.has(all, sIngredient) && !r.has(all, sPigs) && !r.eachNamed(all.i, all.j) {
				it.sense = setOf(sBuy) // "the truck dropped off a ton of corn"
			}
		}
		if (it.s == "got" || it.s == "gets" || it.s == "received" || it.s == "has gotten") && it.gap == gapNone && p.pig < 0 &&
			(p.feeder >= 0 || p.barrel >= 0 || p.isAny(setOf(sFeeder, sBarrel)) && p.kind == itWord || k > 1 && p.soft && (r.items[k-2].feeder >= 0 || r.items[k-2].barrel >= 0)) {
			it.sense, it.unit = setOf(sPour), 0
			if r.leftIn(k) {
				it.sense = setOf(sIs) // "the feeder's got about a third left"
			}
		}
	}
}

// fillForFull takes a "fill" that ends a clause behind a thing or a level for the
// "full" that a phone made of it: "hopper fill, took 64".
func (r *reader) fillForFull() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if it.s == "filed" && it.kind == itWord && r.vesselNamed(k) {
			it.sense.add(sFill)
		}
		if it.s != "fill" || it.gap != gapNone || k+1 < len(r.items) && r.items[k+1].gap < gapAnd && r.items[k+1].s != "too" {
			continue
		}
		if p.feeder >= 0 || p.barrel >= 0 || p.kind == itFrac || p.kind == itWord && p.isAny(setOf(sFeeder, sBarrel, sWallow)) {
			it.sense = setOf(sFull)
		}
	}
}

// vesselNamed says that a feeder or a barrel is named right behind item k.
func (r *reader) vesselNamed(k int) bool {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		if it := &r.items[n]; it.feeder >= 0 || it.barrel >= 0 || it.isAny(setOf(sFeeder, sBarrel)) {
			return true
		}
	}
	return false
}

// feedOutOf takes "feed out" apart where a verb before it tells what was taken out
// of a feeder: "scooped the wet feed out".
func (r *reader) feedOutOf() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.s != "feed out" {
			continue
		}
		for n := k - 1; n >= r.clauseFrom(k); n-- {
			switch firstWord(r.items[n].s) {
			case "scooped", "took", "cleaned", "dug", "shoveled", "shovelled", "threw", "pulled", "raked", "bailed", "dumped", "scraped", "tossed", "get", "got":
				it.sense = setOf(sFeed, sWaste)
			}
		}
	}
}

// leftIn says that the clause from item k on tells what is left.
func (r *reader) leftIn(k int) bool {
	for n := k; n < r.clauseEnd(k); n++ {
		if r.items[n].is(sLeft) || r.items[n].kind == itFrac && strings.HasSuffix(r.items[n].s, "left") {
			return true
		}
	}
	return false
}
