package reading

// Of several pigs in one sentence each has what is told behind its own name: "plum is
// limping, moss is fine".

// nextAiling is the item of a second pig in a span that has a sign of its own
// behind it, or is told to be well, where a pig with either stands before; 0 if there is
// none.
func (r *reader) nextAiling(s span) int {
	pig, told, ill := false, false, false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.pig >= 0 && int(it.pig) < r.alive {
			if pig && told {
				for n := k + 1; n < s.j && n <= k+4 && r.items[n].gap < gapAnd; n++ {
					if x := &r.items[n]; x.is(sSick) && ill || x.is(sSick) != x.is(sWell) && x.is(sSick) != ill {
						return k
					} else if x.kind != itWord || x.pig >= 0 || x.isAny(setOf(sBut, sWell, sAnd)) {
						break
					}
				}
			}
			pig = true
		}
		if pig && it.pig < 0 {
			ill = ill || it.is(sSick) && !it.is(sWell)
			told = told || it.isAny(setOf(sSick, sWell))
		}
	}
	return 0
}

// othersWell says that the word of being well at item k is told of others than the sign
// before it: "plum is throwing up, the other one is fine".
func (r *reader) othersWell(k int) bool {
	i, _ := r.stretch(k)
	for n := i; n < k; n++ {
		if it := &r.items[n]; it.capital && n > i && it.kind == itWord || it.is(sRest) || it.capital && it.kind == itWord && it.gap < gapStop && !it.known || otherOnes[it.s] {
			return true
		}
	}
	return false
}

var otherOnes = setOfWords(split("other, others, the other, the others, other one, the other one, the rest, everyone else, everybody else, rest, miss"))
