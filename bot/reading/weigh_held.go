package reading

// A pig weighed in somebody's arms, told in pieces: "me alone 61.2 kg, me holding Pearl
// 93.0", "205 with pearl, 135 just me".

// heldPigs takes the weight of who held it off that of both, where one piece of the text
// tells the one and the others the other.
func (r *reader) heldPigs() {
	if r.alive == 0 || !r.sentenceNames(0, len(r.items), heldHints) {
		return
	}
	pieces := r.weighedPieces()
	if len(pieces) < 2 {
		return
	}
	alone := -1
	for n, p := range pieces {
		switch {
		case r.holderAlone(p):
			if alone >= 0 {
				return
			}
			alone = n
		case !r.heldTogether(p):
			return
		}
	}
	if alone < 0 {
		return
	}
	a := pieces[alone]
	own := r.items[r.onlyWeight(a)]
	for n, p := range pieces {
		if n == alone {
			continue
		}
		it := &r.items[r.onlyWeight(p)]
		off := own.v
		switch {
		case it.kind == itQty && own.kind == itQty:
			off = own.si() / units[it.unit].factor
		case own.kind == itQty:
			it.kind, it.unit = itQty, own.unit
		}
		if off >= it.v {
			return
		}
		it.v -= off
		for k := p.i; k < p.j; k++ {
			if x := &r.items[k]; x != it && x.pig < 0 && x.kind != itDay {
				r.blank(k)
			}
		}
		r.settled = append(r.settled, span{fWeigh, p.i, p.j})
	}
	for k := a.i; k < a.j; k++ {
		if r.items[k].kind != itDay {
			r.blank(k)
		}
	}
	for _, p := range pieces {
		r.items[p.i].gap = max(r.items[p.i].gap, gapSemi)
	}
}

// heldHints are the words without which nobody tells of holding a pig.
var heldHints = setOfWords(split("me, holding, held, with, without, myself, arms, alone"))

// weighedPieces cuts the text at its commas and "and"s into pieces with one weight each;
// none where they do not come out so.
func (r *reader) weighedPieces() []span {
	var out []span
	from, has := 0, false
	for k := 0; k <= len(r.items); k++ {
		if k == len(r.items) || k > from && r.items[k].gap >= gapAnd {
			if has || k == len(r.items) && len(out) == 0 {
				out = append(out, span{fWeigh, from, k})
				from, has = k, false
			} else if k == len(r.items) {
				out[len(out)-1].j = k
			}
		}
		if k < len(r.items) && r.weightItem(k) {
			if has {
				return nil
			}
			has = true
		}
	}
	return out
}

// weightItem says that item k is a weight or a bare number.
func (r *reader) weightItem(k int) bool {
	it := &r.items[k]
	return it.kind == itNum && !it.soft && !it.ord && !it.rng || it.qty(mass) && !it.rng
}

// onlyWeight is the item of a piece's weight.
func (r *reader) onlyWeight(p span) int {
	for k := p.i; k < p.j; k++ {
		if r.weightItem(k) {
			return k
		}
	}
	return p.i
}

// holderAlone says that a piece tells but what somebody weighs without a pig.
func (r *reader) holderAlone(p span) bool {
	who := false
	for k := p.i; k < p.j; k++ {
		switch it := &r.items[k]; {
		case it.pig >= 0, it.kind == itThing, it.isAny(setOf(sFeed, sFeeder, sBarrel, sFence, sPour)) && it.kind == itWord:
			return false
		case holders[it.s], ofHouse(it.s), it.s == "without", it.s == "without her", it.s == "without him", it.s == "without it":
			who = true
		case r.weightItem(k), it.kind == itDay, it.s == "minus", it.s == "less", aloneWords[it.s], it.kind == itWord && it.isAny(setOf(sFiller, sIs, sWeigh, sAbout, sPronoun, sBut)):
		default:
			return false
		}
	}
	return who
}

// heldTogether says that a piece tells what one pig and who held it weigh.
func (r *reader) heldTogether(p span) bool {
	pigs, held := 0, false
	for k := p.i; k < p.j; k++ {
		switch it := &r.items[k]; {
		case it.pig >= 0 && int(it.pig) < r.alive && !it.near:
			pigs++
		case it.isAny(setOf(sFeed, sFeeder, sBarrel, sFence, sPour, sCrate)) && it.kind == itWord:
			return false
		case it.s == "me", it.s == "holding", it.s == "held", it.s == "myself", it.s == "with", it.s == "arms", ofHouse(it.s):
			held = true
		}
	}
	return pigs == 1 && held
}
