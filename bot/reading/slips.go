package reading

// What a person takes back in the same breath: "moss 150 no 153", "hazel 198,
// wait no, that was with the door open, 196", "hill full, no wait, hill is half".

// slipReach is how many words may stand between a value and its taking back.
const slipReach = 8

// slipsOfTongue drops what a later word of the same text puts right: a number, a
// day, a name, a thing or a level.
func (r *reader) slipsOfTongue() {
	for k := 1; k+1 < len(r.items); k++ {
		if !r.takesBack(k) {
			continue
		}
		n := r.putRight(k)
		if n < 0 {
			continue
		}
		right := r.items[n]
		if r.settleSlip(k, n) {
			for x := k; x < n; x++ {
				r.blank(x)
			}
			r.saidAgain(n, &right)
			k = n - 1
		}
	}
}

// saidAgain drops the number that put another right where it is said once more right
// behind: "4 bags... no wait, we only opened two. Two bags, it's full now".
func (r *reader) saidAgain(n int, right *item) {
	for k := n + 1; k < len(r.items) && k <= n+3; k++ {
		it := &r.items[k]
		if it.kind != itQty || it.soft {
			if it.kind == itWord && it.is(sFiller) {
				continue
			}
			return
		}
		if it.v == right.v && (right.kind == itNum || it.unit == right.unit) {
			r.blank(k)
		}
		return
	}
}

// notThatMany drops a number that is denied right behind another one: "we put
// nine bags in yesterday, not eight".
func (r *reader) notThatMany() {
	for k := 1; k+1 < len(r.items); k++ {
		now := &r.items[k+1]
		if r.items[k].s != "not" || !now.number() || now.soft || now.gap != gapNone || r.sentenceEnd(k) > k+3 {
			continue
		}
		for was := k - 1; was >= r.sentenceStart(k); was-- {
			if old := &r.items[was]; old.number() && !old.soft && old.v != now.v && (old.unit == now.unit || now.kind == itNum) {
				r.denied = now.v
				if k+2 < len(r.items) && r.items[k+2].gap == gapNone && r.items[k+2].unit == old.unit {
					r.blank(k + 2)
				}
				r.blank(k)
				r.blank(k + 1)
				break
			}
		}
	}
}

// takesBack says that item k is a word by which a person takes back what was
// just said.
func (r *reader) takesBack(k int) bool {
	it := &r.items[k]
	if it.pig >= 0 || k+1 < len(r.items) && r.items[k+1].quest {
		return false
	}
	switch it.s {
	case "n", "fix", "not right", "edit", "y":
		return false
	case "make it": // "brick squirmed but I make it 29"
		switch r.items[k-1].s {
		case "i", "we", "i'd", "id", "i'll", "can", "could", "to", "he'd", "she'd", "will", "would":
			return false
		}
		return true
	case "jk", "or was it", "scratch that", "strike that", "no scratch that", "forget that", "cancel that":
		return true
	}
	return it.is(sNo)
}

// putRight is the item that begins what is right behind the word of taking back
// at item k, over small words and an aside of why it was wrong; -1 if none does.
func (r *reader) putRight(k int) int {
	n := k + 1
	for ; n < len(r.items) && n <= k+slipReach && !r.slipValue(n); n++ {
		it := &r.items[n]
		switch {
		case it.kind != itWord:
			return -1
		case it.isAny(setOf(sNo, sFiller, sAbout, sIs, sPronoun, sPour, sTook, sWeigh)) && !it.isAny(setOf(sFull, sEmpty)) || it.s == "jk" || it.s == "only" || it.s == "opened":
		case n > k+1 && r.asideBefore(k, n):
		default:
			return -1
		}
	}
	if n >= len(r.items) || !r.slipValue(n) {
		return -1
	}
	return n
}

// asideBefore says that item n stands in an aside, "that was with the door open,
// ...", whose end is a comma or a stop.
func (r *reader) asideBefore(k, n int) bool {
	begins := false
	for x := k + 1; x < n; x++ {
		switch r.items[x].s {
		case "that was", "that", "it was", "was", "that's", "thats", "with", "forgot":
			begins = true
		}
	}
	if !begins || r.items[n].number() && !r.items[n].soft {
		return false
	}
	for x := n + 1; x < len(r.items) && x <= n+slipReach; x++ {
		if r.items[x].gap >= gapComma {
			return true
		}
		if r.items[x].number() && !r.items[x].soft {
			return false
		}
	}
	return false
}

// slipValue says that item n is something that can put another one right.
func (r *reader) slipValue(n int) bool {
	it := &r.items[n]
	switch it.kind {
	case itNum:
		return !it.soft
	case itQty, itDim, itFrac, itDay, itName, itThing:
		return true
	}
	return it.isAny(setOf(sFull, sEmpty)) && !it.is(sNo)
}

// settleSlip drops what item n puts right among the items before k, and says
// whether there was such a thing.
func (r *reader) settleSlip(k, n int) bool {
	now := &r.items[n]
	switch {
	case now.kind == itName:
		return r.otherPig(k, n)
	case now.kind == itThing:
		return r.otherThing(k, n)
	case now.kind == itDay:
		if n+1 < len(r.items) && r.items[n+1].gap < gapStop {
			return false // a day that begins another fact
		}
		return r.putLast(k, n, func(it *item) bool { return it.kind == itDay })
	case now.number() || now.kind == itDim:
		for was := k - 1; was >= 0 && was >= k-slipReach; was-- {
			old := &r.items[was]
			if old.pig >= 0 && was < k-1 && r.items[was+1].gap >= gapStop {
				return false
			}
			if !old.number() && old.kind != itDim || old.soft || old.ord {
				continue
			}
			if old.kind == itNum && now.kind == itQty {
				old.kind, old.unit = itQty, now.unit // "thirty eight no thirty nine inches"
			}
			if old.kind != now.kind && now.kind != itNum || old.kind == itQty && now.kind == itQty && old.unit.dim() != now.unit.dim() {
				return false
			}
			if now.kind == itNum && old.kind == itQty {
				now.kind, now.unit = itQty, old.unit
			}
			r.putInPlace(was, n)
			return true
		}
		return false
	}
	return r.putLast(k, n, func(it *item) bool { return it.kind == itFrac || it.isAny(setOf(sFull, sEmpty)) && !it.is(sFill) })
}

// putLast puts item n in the place of the last item before k of the kind that is
// sought.
func (r *reader) putLast(k, n int, is func(*item) bool) bool {
	for was := k - 1; was >= 0 && was >= k-slipReach; was-- {
		if is(&r.items[was]) {
			r.putInPlace(was, n)
			return true
		}
	}
	return false
}

// putInPlace lets item n stand where the item was that it puts right, so that
// the words around that one hold for it.
func (r *reader) putInPlace(was, n int) {
	old := &r.items[was]
	from, to, gap, lead, label := old.from, old.to, old.gap, old.lead, old.label
	*old = r.items[n]
	old.from, old.to, old.gap, old.lead, old.label = from, to, gap, lead, label
	r.blank(n)
}

// otherPig puts another pig in the place of the last one named: "otis 210 oh
// actually clover", "otis two ten no clover two ten". A pig with another number
// of its own drops the earlier one only where it is the same pig.
func (r *reader) otherPig(k, n int) bool {
	was := k - 1
	for was >= 0 && was >= k-slipReach && r.items[was].kind != itName {
		was--
	}
	if was < 0 || r.items[was].kind != itName {
		return false
	}
	old := -1
	for x := was + 1; x < k; x++ {
		if it := &r.items[x]; it.number() && !it.soft || it.kind == itDim {
			old = x
		}
	}
	own := -1
	for x := n + 1; x < len(r.items) && x <= n+3 && r.items[x].gap < gapStop; x++ {
		if it := &r.items[x]; it.number() && !it.soft || it.kind == itDim {
			own = x
			break
		}
	}
	switch {
	case own < 0:
		r.putInPlace(was, n)
	case old >= 0 && (r.items[was].pig == r.items[n].pig || r.items[old].v == r.items[own].v):
		r.blank(was)
		r.blank(old)
	case old < 0 && !r.valueBetween(was+1, k) && !r.valueBetween(r.stretchOf(was), was):
		r.blank(was) // "red 15, no red 16, 94"
	default:
		return false
	}
	return true
}

// otherThing puts another feeder, barrel or pen in the place of the last one of
// its kind, or another level or amount in the place of that thing's first one.
func (r *reader) otherThing(k, n int) bool {
	now := &r.items[n]
	alike := func(it *item) bool {
		return it.kind == itThing && (it.feeder >= 0) == (now.feeder >= 0) && (it.barrel >= 0) == (now.barrel >= 0) && (it.pen >= 0) == (now.pen >= 0)
	}
	own := false
	for x := n + 1; x < r.clauseEnd(n); x++ {
		it := &r.items[x]
		own = own || it.number() && !it.soft || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty))
	}
	for was := k - 1; was >= 0 && was >= k-slipReach; was-- {
		it := &r.items[was]
		if !alike(it) {
			continue
		}
		same := it.feeder == now.feeder && it.barrel == now.barrel && it.pen == now.pen
		if own && !same && !r.valueBetween(r.stretchOf(was), was) && !r.levelBetween(was+1, k) && k-was <= 3 {
			r.blank(was) // "big hopper no small hopper 2 bags"
			return true
		}
		if own && !same {
			return false // another thing with a level of its own is another fact
		}
		for x := was + 1; own && x < k; x++ {
			if o := &r.items[x]; o.number() && !o.soft || o.kind == itFrac || o.isAny(setOf(sFull, sEmpty)) {
				r.blank(x)
			}
		}
		if own {
			r.blank(was)
		} else {
			r.putInPlace(was, n)
		}
		return true
	}
	return false
}

// levelBetween says that a number, a part or a level stands in items[i:j].
func (r *reader) levelBetween(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty)) {
			return true
		}
	}
	return false
}

// blank makes a small word of an item, which nothing is made of.
func (r *reader) blank(k int) {
	it := &r.items[k]
	it.kind, it.used, it.known, it.soft = itWord, true, true, false
	it.sense, it.unit, it.canon, it.either = setOf(sFiller), 0, "", false
	it.pig, it.feeder, it.barrel, it.pen, it.group = -1, -1, -1, -1, -1
	it.v, it.v2, it.v3 = 0, 0, 0
}
