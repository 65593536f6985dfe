package reading

// What stands between pigs and their water, and what only sounds like it.

// frozenWords tell of water that pigs cannot drink.
var frozenWords = setOfWords(split(`frozen, froze, froze up, froze over, frozen over, frozen solid, froze solid, is frozen, is frozen solid, are frozen, iced over, iced up, froze shut, solid ice, freezing up, is froze, frozen up, was frozen, were frozen`))

// lackOfWater gives the sense of a lack of water to a barrel that is frozen, and takes
// it from a wallow that is only dry.
func (r *reader) lackOfWater() {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.is(sNoWater) && len(r.c.Herd.Barrels) == 0 && k+1 < len(r.items) && barrelsWord[r.items[k+1].s] && r.items[k+1].gap == gapNone:
			it.sense, it.unit = setOf(sFiller), 0 // "no water barrels" says what there is not, before any is set up
			r.items[k+1].sense, r.items[k+1].used = setOf(sFiller), true
		case it.is(sNoWater) && r.lackInWallow(k):
			it.sense, it.unit = setOf(sEmpty), 0
			r.forceRange(r.clauseFrom(k), r.clauseEnd(k), fWallow)
		case frozenWords[it.s] && it.pig < 0 && !it.quest && r.ofVessel(k) && !r.thawed(k):
			it.sense, it.unit = setOf(sNoWater), 0
			r.forceRange(r.clauseFrom(k), k+1, fAlarm)
		}
	}
}

// barrelsWord are barrels told of as such.
var barrelsWord = setOfWords(split("barrels, barrel, tanks, tank, drums, drum, troughs, trough"))

// lackInWallow says that the water that is lacking at item k is the wallow's: "no water in
// the wallow".
func (r *reader) lackInWallow(k int) bool {
	for n := k + 1; n < r.clauseEnd(k) && n <= k+4; n++ {
		it := &r.items[n]
		if it.is(sWallow) {
			return n > k+1 && lastWord(r.items[k+1].s) == "in"
		}
		if !it.isAny(setOf(sFiller, sLeft)) && lastWord(it.s) != "in" {
			return false
		}
	}
	return k > r.clauseFrom(k) && r.items[k-1].is(sWallow) && r.closes(k) // "wallow has no water"
}

// ofVessel says that the clause of item k speaks of a barrel or of water.
func (r *reader) ofVessel(k int) bool {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.isAny(setOf(sFeed, sFeeder, sWallow, sHose, sPackaged, sButcher)) || it.feeder >= 0 {
			return false
		}
		if it.isAny(setOf(sNot, sPlan, sIf)) && !it.is(sFiller) {
			return false
		}
	}
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		if it := &r.items[n]; it.barrel >= 0 || it.isAny(setOf(sBarrel, sWater)) && n != k || it.s == "nipple" || it.s == "nipples" {
			return true
		}
	}
	return false
}

// thawed says that the sentence or the next tells that the ice is gone again.
func (r *reader) thawed(k int) bool {
	for n := r.sentenceStart(k); n < len(r.items) && n < k+fixReach; n++ {
		switch lastWord(r.items[n].s) {
		case "thawed", "thaw", "broke", "chipped", "melted", "running", "flowing", "unfroze", "working", "heater":
			return true
		}
	}
	return false
}

// frozenIn says that water is lacking in a span because it is frozen.
func (r *reader) frozenIn(s span) bool {
	for k := s.i; k < s.j; k++ {
		if frozenWords[r.items[k].s] {
			return true
		}
	}
	return false
}
