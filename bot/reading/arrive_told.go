package reading

// morePigs takes "+3 pigs" for pigs that came.
func (r *reader) morePigs() {
	for k := 0; k+1 < len(r.items); k++ {
		if it := &r.items[k]; it.kind == itNum && it.plus && (k == 0 || it.gap >= gapStop) && r.items[k+1].is(sPigs) && r.items[k+1].gap == gapNone {
			it.plus = false
			r.items[k+1].sense.add(sArrive)
		}
	}
}

// forceArrivals settles, in a herd without pigs, the sentences about pigs that
// came, and those behind them that tell nothing but their weight, birth or sex.
func (r *reader) forceArrivals() {
	told := false
	for i := 0; i < len(r.items); {
		s := span{fArrive, i, r.sentenceEnd(i)}
		i = s.j
		pigs, count, came, details, other := false, false, false, false, r.items[s.i].quest
		only := true
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			sexed := it.isAny(setOf(sBarrow, sGilt, sBoar, sSow))
			pigs = pigs || it.is(sPigs) || sexed
			count = count || it.kind == itNum && !it.ord && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v))
			came = came || it.is(sArrive)
			details = details || it.qty(mass) || it.isAny(setOf(sBorn, sAge)) || sexed
			other = other || it.canon != "" || it.kind == itClock || it.kind == itDim ||
				it.isAny(setOf(sFeeder, sBarrel, sPen, sButcher, sTarget, sPlan, sIf, sWhatIf, sForeign, sOut, sDown, sNoWater, sSick, sDied, sLost, sSold, sChore, sGirth, sHerd, sFull, sUS, sMetric, sUnits, sZone, sTell, sQuiet)) && it.kind == itWord && !it.capital
			only = only && (it.number() || it.kind == itDay || sexed || it.isAny(setOf(sBorn, sAge, sEach, sAbout, sFiller, sIs, sAnd, sPronoun, sWeigh, sAll, sBoth, sRest, sAt, sOn)))
		}
		switch {
		case other:
		case pigs && count && came && details, told && only && details, pigs && count && came && r.detailsFollow(s.j):
			r.forceRange(s.i, s.j, fArrive)
			told = true
		}
	}
}

// detailsFollow says that the sentence from item k on begins with a weight, a
// birth or an age.
func (r *reader) detailsFollow(k int) bool {
	for n := k; n < len(r.items) && n < k+3 && (n == k || r.items[n].gap < gapStop); n++ {
		if it := &r.items[n]; it.qty(mass) || it.isAny(setOf(sBorn, sAge)) {
			return true
		}
	}
	return false
}

// joinArrivals joins spans about pigs that came where the later ones only tell
// more of the same pigs.
func (r *reader) joinArrivals(spans []span) []span {
	out := spans[:0]
	for _, s := range spans {
		if n := len(out); n > 0 && s.frame == fArrive && out[n-1].frame == fArrive && out[n-1].j == s.i && !r.comesAgain(s) {
			out[n-1].j = s.j
			continue
		}
		out = append(out, s)
	}
	return out
}

func (r *reader) comesAgain(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sArrive) && !it.isAny(setOf(sBorn, sNamed)) || it.is(sPigs) {
			return true
		}
	}
	return false
}
