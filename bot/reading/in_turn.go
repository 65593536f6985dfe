package reading

// Levels told one after the other belong to the things named before them in their
// order: "north and south half and a quarter". Of "hoppers half and a quarter" nobody
// knows which is which.

// levelsInTurn cuts the portions that tell a level for each of several things. It gives
// false where it is not clear which of several levels is whose.
func (r *reader) levelsInTurn(ps []portion) ([]portion, bool) {
	var out []portion
	for _, p := range ps {
		each, muddled := r.inTurn(p)
		switch {
		case muddled:
			return nil, false
		case each != nil:
			out = append(out, each...)
		default:
			out = append(out, p)
		}
	}
	return out, true
}

// inTurn cuts a portion of several named things that tells as many levels into one for
// each thing. It reports whether it tells several levels of which this is not clear.
func (r *reader) inTurn(p portion) (each []portion, muddled bool) {
	if len(p.at) < 2 && !p.every {
		return nil, false
	}
	var starts []int
	for k := p.i; k < p.j; k++ {
		switch it := &r.items[k]; {
		case it.kind == itFrac, it.qty(percent), it.kind == itWord && it.isAny(setOf(sFull, sEmpty)) && !it.isAny(setOf(sFill, sBoth, sAll)):
			if len(starts) == 0 || it.gap >= gapAnd {
				starts = append(starts, k)
			}
		case it.number() && !it.soft, it.kind == itSlash, it.isAny(setOf(sFill, sPour, sWatered, sNow, sBut, sTook, sEach, sRest)), it.s == "or", it.s == "then":
			return nil, false // poured, or told of another time
		}
	}
	if len(starts) < 2 {
		return nil, false
	}
	if len(starts) != len(p.at) {
		return nil, true
	}
	for n, k := range starts {
		q := portion{things: things{at: p.at[n : n+1], any: true}, i: k, j: p.j, full: p.full}
		if n+1 < len(starts) {
			q.j = starts[n+1]
		}
		each = append(each, q)
	}
	return each, false
}
