package reading

import "troughbell/model"

// Pigs that came running, came through a storm or are all accounted for are those that
// were here before: no new ones came.

// pigsPresent takes the sense of coming from what tells where the pigs of the herd are,
// and their count from what tells that none is missing.
func (r *reader) pigsPresent() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		switch it := &r.items[k]; {
		case it.is(sArrive) && lastWord(it.s) == "came" && it.pig < 0 && r.cameTo(k):
			it.sense.drop(sArrive)
			if it.s != "came" { // "the pigs came"
				it.sense.add(sPigs)
			}
		case it.kind == itNum && !it.soft && int(it.v) == r.alive && it.v == float64(r.alive) && r.openAlarm(model.AlarmOut) == nil:
			r.noneMissing(k)
		}
	}
}

// cameTo says that behind the "came" at item k stands to what or how pigs came that
// live here: "came running", "came up for breakfast", "came through it fine".
func (r *reader) cameTo(k int) bool {
	return k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].pig < 0 && cameHow[firstWord(r.items[k+1].s)]
}

var cameHow = listed("running, trotting, galloping, charging, racing, flying, up, through, down, when, right, screaming, squealing, barreling, tearing, walking")

// noneMissing blanks what counts the whole herd, at item k, only to tell that it is
// there and well: "all five pigs are accounted for".
func (r *reader) noneMissing(k int) {
	from := k
	for from > r.clauseFrom(k) && r.items[from].gap == gapNone && (r.items[from-1].is(sAll) || tallyWords[r.items[from-1].s]) {
		from--
	}
	if from > 0 && r.items[from].gap < gapAnd && !r.items[from-1].isAny(setOf(sFiller, sBut, sAnd)) {
		return // "wormed all five pigs, all fine"
	}
	pigs := from < k
	for n := k + 1; n < len(r.items) && n <= k+presentReach; n++ {
		it := &r.items[n]
		switch {
		case it.gap >= gapStop || it.quest || it.pig >= 0:
			return
		case presentWords[it.s] && pigs:
			for x := from; x <= n; x++ {
				r.blank(x)
			}
			return
		case it.is(sPigs):
			pigs = true
		case it.kind == itDay, it.isAny(setOf(sFiller, sAll, sIs, sAnd, sPronoun, sArrive)):
		default:
			return
		}
	}
}

// presentReach is within how many words of the count they are told to be there.
const presentReach = 6

var tallyWords = listed("counted, count, got, have, see, saw")

// presentWords tell of the pigs that none is missing or hurt.
var presentWords = listed("accounted, accounted for, all accounted for, present, there, all there, here, all here, safe, fine, ok, okay, sound, unharmed, unhurt, happy, alright, all right, home, good, well, doing fine, doing good, doing well, doing great, up and eating, eating")
