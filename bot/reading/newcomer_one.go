package reading

// A pig that came, told without the word: "got a third one today 55 lb, naming it Fig".

// newcomerOnes takes the "one" of such a sentence for a pig: it came to a herd, has a
// weight or is called by a name, and the sentence speaks of nothing that is no pig.
func (r *reader) newcomerOnes() {
	if r.alive == 0 {
		return
	}
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if r.newPig(k) {
			if p := &r.items[k-1]; r.sentenceStart(k) == k-1 { // "new pig today, 42 lb" is one
				p.kind, p.v, p.soft, p.s, p.sense = itNum, 1, true, "one", setOf(sArrive)
			}
			r.settled = append(r.settled, span{fArrive, r.sentenceStart(k), r.sentenceEnd(k)})
			continue
		}
		if k < 2 || it.s != "one" || it.kind != itNum || it.gap != gapNone {
			continue
		}
		p := &r.items[k-1]
		if !newnessWords[p.s] && !(p.kind == itNum && p.ord) || p.gap != gapNone {
			continue
		}
		got := r.items[k-2].is(sArrive)
		if (r.items[k-2].s == "a" || r.items[k-2].s == "the") && k > 2 {
			got = r.items[k-3].is(sArrive) && r.items[k-2].s == "a"
		}
		if !got {
			continue
		}
		named, pig := false, true
		for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
			x := &r.items[n]
			named = named || x.is(sNamed)
			if x.quest || x.qty(vessel) || x.qty(volume) || x.qty(money) || x.isAny(setOf(sFeeder, sBarrel, sPen, sFeed, sIngredient, sHolds, sPlan, sNot, sForeign)) && !x.is(sFiller) {
				pig = false
			}
		}
		if !pig {
			continue
		}
		if named {
			r.blank(k - 1)
			it.kind, it.sense, it.known = itWord, setOf(sPigs), true
			it.s = "another pig"
			continue
		}
		for n := k - 2; n < r.sentenceEnd(k); n++ { // of what, nobody said
			r.items[n].sense.drop(sBuy)
		}
	}
}

// newPig says that the word at item k is of a pig that is new, "we have a new pig, Fig,
// 50 lb", and that its sentence speaks of nothing else.
func (r *reader) newPig(k int) bool {
	it := &r.items[k]
	if it.s != "pig" && it.s != "piglet" || it.quest || !newnessWords[r.items[k-1].s] || it.gap != gapNone {
		return false
	}
	if r.sentenceStart(k) == k-1 { // "new pig today, 42 lb"
	} else if p := &r.items[k-2]; !p.is(sArrive) && !(k > 2 && p.s == "a" && r.items[k-3].is(sArrive)) {
		return false
	}
	weight := false
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		x := &r.items[n]
		weight = weight || x.qty(mass)
		if x.pig >= 0 || x.qty(vessel) || x.qty(volume) || x.qty(money) || x.isAny(setOf(sFeeder, sBarrel, sPen, sFeed, sIngredient, sPlan, sNot, sForeign, sSick)) && !x.is(sFiller) {
			return false
		}
	}
	return weight
}
