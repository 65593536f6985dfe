package reading

// clauseFrom is the item that begins the clause of item k.
func (r *reader) clauseFrom(k int) int {
	for k > 0 && r.items[k].gap < gapComma {
		k--
	}
	return k
}

// clauseEnd is the item that begins the next clause.
func (r *reader) clauseEnd(k int) int {
	n := k + 1
	for n < len(r.items) && r.items[n].gap < gapComma {
		n++
	}
	return n
}

// wallClock says that the time at k is what the clock on the wall shows: "it is
// 7:40 am here".
func (r *reader) wallClock(k int) bool {
	begin := r.clauseFrom(k)
	if k == begin || k-begin > 4 {
		return false
	}
	told := false
	for n := begin; n < k; n++ {
		switch r.items[n].s {
		case "it is", "it's", "its", "it is now", "it's now", "clock", "time", "time is", "the time is", "now", "it":
			told = true
		default:
			if !r.items[n].isAny(setOf(sFiller, sIs, sHere, sNow, sZone)) {
				return false
			}
		}
	}
	for n := begin; n < r.clauseEnd(k); n++ {
		if n != k && (r.items[n].is(sHere) || n == k+1 && r.items[n].s == "there") { // the question asks for the clock "there"
			return told
		}
	}
	return told && r.c.Herd.Zone == "" && r.clauseEnd(k) == k+1
}

// listOfSpending is the end of a list of amounts behind a word for paying,
// "spent 190 pigs, 510 feed, 96 straw"; k where none begins there.
func (r *reader) listOfSpending(k int) int {
	it := &r.items[k]
	if it.s == "receipt" && it.label {
		return r.pricedList(k + 1)
	}
	if it.s != "spent" && it.s != "spend" && it.s != "paid" || it.gap < gapComma && k > 0 || k+1 >= len(r.items) {
		return k
	}
	end := k
	for from := k + 1; from < len(r.items); {
		if x := &r.items[from]; (x.kind != itNum || x.soft || x.ord) && !x.qty(money) {
			break
		}
		to := r.clauseEnd(from)
		for n := from; n < to; n++ {
			if x := &r.items[n]; x.kind == itQty && x.unit.dim() != money || n > from && x.number() && x.gap < gapAnd || x.isAny(setOf(sFull, sGirth, sEmpty)) || x.kind == itThing || x.kind == itName {
				return end
			}
		}
		end, from = to, to
		if to < len(r.items) && r.items[to].gap >= gapSemi {
			break
		}
	}
	return end
}

// tellsBatch says that the sentence of item k gives amounts of several
// ingredients and no word of buying or mixing: what a batch holds.
func (r *reader) tellsBatch(k int) bool {
	parts := 0
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.isAny(setOf(sBuy, sPay, sMixed, sPour, sFill, sFull)) && !it.is(sIngredient) || it.qty(money) {
			return false
		}
		if it.is(sIngredient) && (n > 0 && r.items[n-1].number() || n+1 < len(r.items) && r.items[n+1].number()) {
			parts++
		}
	}
	return parts > 1
}

// tellsBarrels says that the sentence of item k sets up water barrels: it speaks
// of water, of volumes and of barrels or nipples, and not of feeding or filling.
func (r *reader) tellsBarrels(k int) bool {
	s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	if !r.has(s, sWater) || r.firstQty(s, volume) < 0 || r.has(s, sFeeder) || r.has(s, sFeed) || r.firstQty(s, mass) >= 0 {
		return false
	}
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sFill, sFull, sPour, sEmpty, sWatered, sTook, sPigs, sTarget, sChore, sWallow, sPen)) && !it.is(sLook) {
			return false
		}
	}
	return true
}

// amountless says that items[i:j] hold no amount.
func (r *reader) amountless(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itDim || it.kind == itFrac {
			return false
		}
	}
	return true
}

func (r *reader) sentenceNamesPig(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if r.items[n].pig >= 0 || r.items[n].is(sPigs) {
			return true
		}
	}
	return false
}

// waterFullBeside says that the next clause tells of water barrels filled, so
// that a bare weight before it was poured: "30,5 kg, tank full".
func (r *reader) waterFullBeside(k int) bool {
	s := span{0, k + 1, r.sentenceEnd(k)}
	if s.i < len(r.items) {
		s.j = r.clauseEnd(s.i)
	}
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; (it.barrel >= 0 || it.is(sWater) || it.is(sWatered)) && (r.has(s, sFull) || r.has(s, sFill) || it.is(sWatered)) {
			return true
		}
	}
	return false
}
