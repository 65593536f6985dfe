package reading

// exceptionsAhead puts who is left out of one weight for many right behind the many, where
// it is read: "all about 180 but otis", "the gilts are 38 except Tala". What is put so has
// no place of its own in the text.
func (r *reader) exceptionsAhead() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sBut) && it.s != "but" && it.s != "not" && it.s != "save" || it.pig >= 0 || it.quest || it.gap >= gapStop {
			continue
		}
		end := r.pigListEnd(k + 1)
		if end == k+1 {
			continue
		}
		refused := end < len(r.items) && r.items[end].gap == gapNone && balks[r.items[end].s] && !r.moreFigures(end)
		many, weight := -1, -1
		for n := r.sentenceStart(k); n < k; n++ {
			x := &r.items[n]
			switch {
			case x.kind == itNum && !x.soft && !x.ord, x.qty(mass):
				if weight >= 0 {
					many = -1 // several weights: one of each
				}
				weight = n
			case x.pig >= 0, x.isAny(setOf(sFeeder, sBarrel, sMove, sSick, sWorm, sTreat)):
				many, weight = -1, k
			case weight < 0 && (x.isAny(setOf(sAll, sBarrow, sGilt, sYoung, sOld)) && x.s != "old" || x.group >= 0):
				if x.is(sAll) && many >= 0 {
					continue // "the littles are all 88"
				}
				many = n
			}
		}
		switch {
		case many < 0:
		case weight < 0 && it.s == "but" && many == k-1: // "the big ones but otis are about 180"
			it.sense = setOf(sBut)
		case weight < k && weight > many && (end == len(r.items) || refused || r.items[end].gap >= gapComma && !r.goesOnOf(end)):
			for n, to := end, r.clauseEnd(end-1); refused && n < to; n++ {
				r.blank(n) // "but emil wouldn't go on"
			}
			it.sense = setOf(sBut)
			r.moveBehind(many, k, end)
		}
	}
}

// balks are what a pig does that is not weighed.
var balks = setOfWords(split("wouldn't, wouldnt, would not, refused, didn't, didnt, did not, couldn't, couldnt, won't, was not having it, wasn't, hid, ran off, bolted"))

// pigListEnd is where a list of pigs ends that begins at item k; k itself where none does.
func (r *reader) pigListEnd(k int) int {
	n := k
	for n < len(r.items) && (n == k || r.items[n].gap < gapSemi) {
		it := &r.items[n]
		if it.pig < 0 || it.near {
			if n > k && it.is(sAnd) && n+1 < len(r.items) && r.items[n+1].pig >= 0 {
				n++
				continue
			}
			break
		}
		n++
	}
	return n
}

// goesOnOf says that the clause at item k tells of the pigs right before it: "but emil, he
// is 90".
func (r *reader) goesOnOf(k int) bool {
	switch firstWord(r.items[k].s) {
	case "he", "she", "he's", "she's", "they", "who", "they're", "it", "it's":
		return true
	}
	return r.items[k].number() && !r.items[k].soft
}

// moveBehind moves items i to j right behind item k, without a place in the text.
func (r *reader) moveBehind(k, i, j int) {
	moved := append([]item(nil), r.items[i:j]...)
	copy(r.items[k+1+len(moved):j], r.items[k+1:i])
	at := r.items[k].to
	for n := range moved {
		moved[n].from, moved[n].to = at, at
		if n == 0 {
			moved[n].gap = gapNone
		}
	}
	copy(r.items[k+1:], moved)
}
