package reading

// What shows that a feeder or barrel is full without the word: "three bags and the lid
// won't shut", "that's all it would hold", "both barrels topped, feeder too".

// fullSigns are clauses that say so of what something was poured into right before.
var fullSigns = phrasesOf(`lid won't shut, lid wont shut, lid won't close, lid wont close, lid wouldn't shut, lid wouldnt shut, lid wouldn't close, lid wouldnt close, lid doesn't shut, lid doesnt shut,
	lid doesn't close, lid doesnt close, lid will not close, lid will not shut, can't shut the lid, cant shut the lid, can't close the lid, cant close the lid, couldn't shut the lid, couldn't close the lid, couldnt close the lid,
	all it would hold, all it would take, all it could hold, all it could take, all it holds, all it will hold, all it'd hold, all it'd take, all that would fit, all that'd fit, all that fits, all i could fit, all i could get in,
	no more room, no room left, out of room, no space left, wouldn't hold any more, wouldnt hold any more, won't hold any more, wont hold any more, can't fit any more, cant fit any more`)

// showsFull takes the clauses that show that what was poured before filled its thing,
// for the word that says so.
func (r *reader) showsFull() {
	for i := 1; i < len(r.items); i++ {
		if r.items[i].gap < gapAnd || r.items[i].gap >= gapStop || r.items[i].quest {
			continue
		}
		if !r.pouredBefore(i) {
			continue
		}
		j := r.stretchEnd(i)
		if !saysAny(r.said(span{0, i, j}), fullSigns) {
			continue
		}
		from := i
		for from > 0 && r.items[from].gap < gapStop && r.onlyTalk(r.stretchOf(from-1), from) {
			from = r.stretchOf(from - 1)
		}
		gap := r.items[from].gap
		for k := from; k < j; k++ {
			r.blank(k)
			r.items[k].gap = gapNone
		}
		r.items[from].s, r.items[from].sense, r.items[from].gap, r.items[from].used = "full", setOf(sFull), min(gap, gapComma), false
	}
}

// overflowed takes "before it started spilling over" behind what was poured for full: that
// nothing more went in is all that it tells.
func (r *reader) overflowed() {
	for k := 1; k < len(r.items); k++ {
		if it := &r.items[k]; it.s != "before" && it.s != "till" && it.s != "until" && it.s != "til" || it.quest || it.gap >= gapStop || !r.pouredBefore(k) {
			continue
		}
		end := k + 1
		for end < len(r.items) && end <= k+5 && r.items[end].gap == gapNone {
			end++
		}
		if !saysAny(r.said(span{0, k, end}), overflowing) {
			continue
		}
		for n := k; n < end; n++ {
			r.blank(n)
		}
		r.items[k].s, r.items[k].sense, r.items[k].used = "full", setOf(sFull), false
	}
}

var overflowing = phrasesOf("spilling over, spilled over, spilt over, spilling, ran over, running over, overflowed, overflowing, over the top, came out the top, coming out the top")

// pouredBefore says that the last thing told before item i in its sentence is an amount
// of feed, or of water, that was poured.
func (r *reader) pouredBefore(i int) bool {
	for k := i - 1; k >= r.sentenceStart(i); k-- {
		switch it := &r.items[k]; {
		case it.qty(mass), it.qty(vessel), it.qty(volume):
			return true
		case it.pig >= 0, it.isAny(setOf(sPlan, sNot)):
			return false
		}
	}
	return false
}

// onlyTalk says that items[i:j] tell nothing: "and then I had to quit".
func (r *reader) onlyTalk(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.kind != itWord || it.unit != 0 || it.pig >= 0 || it.feeder >= 0 || it.barrel >= 0 || it.isAny(tradeSenses) {
			return false
		}
	}
	return true
}

// fullToo takes the "too" behind a thing for its being full as well, where that is
// what was told before: "both barrels topped, feeder too".
func (r *reader) fullToo() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		well := it.s == "as" && k+1 < len(r.items) && r.items[k+1].s == "well"
		if !sameToo[it.s] && !well || it.gap != gapNone || p.feeder < 0 && p.barrel < 0 && !(p.kind == itWord && p.isAny(setOf(sFeeder, sBarrel))) || !well && k+1 < len(r.items) && r.items[k+1].gap < gapAnd {
			continue
		}
		i := r.stretchOf(k)
		if i == 0 || r.items[i].gap >= gapStop || !r.amountless(i, k) {
			continue
		}
		for n := i - 1; n >= r.sentenceStart(i); n-- {
			x := &r.items[n]
			if x.number() && !x.soft || x.kind == itFrac || x.isAny(setOf(sEmpty, sNot, sPlan)) && !x.is(sFiller) {
				break
			}
			if x.isAny(setOf(sFull, sFill)) && x.kind == itWord {
				it.s, it.sense = "full", setOf(sFull)
				if well {
					r.blank(k + 1)
				}
				break
			}
		}
	}
}

var sameToo = setOfWords(split("too, as well, also, likewise"))
