package reading

// sides reads "x 42" or "by 42 by 6" after a first side.
func (r *reader) sides(it *item, j int) int {
	n := 0
	var first unitID
	read := func(k int) (float64, unitID, int) {
		if k >= len(r.toks) {
			return 0, 0, 0
		}
		v, m := 0.0, 0
		switch t := &r.toks[k]; {
		case t.kind == tokNum:
			v, m = t.v, 1
			if add, k2 := andHalf(r.toks[k+1:]); k2 > 0 {
				v += add
				m += k2
			}
		case t.kind == tokSlash && t.v < t.v2:
			v, m = t.v/t.v2, 1
		case t.kind == tokWord:
			v, m = r.lex.spoken(r.toks[k:])
		}
		return v, 0, m
	}
	times := func(k int) bool {
		if k >= len(r.toks) {
			return false
		}
		s := r.toks[k].s
		return s == "x" || s == "×" || s == "*" || s == "by" && k+1 < len(r.toks) && (r.toks[k+1].kind == tokNum || isSpokenNumber(r.lex, r.toks[k+1].s))
	}
	k := j
	if !times(k) {
		u, m := r.sideUnit(k)
		if m == 0 || !times(k+m) {
			return 0
		}
		first = u
		k += m
	}
	v2, _, m := read(k + 1)
	if m == 0 {
		return 0
	}
	n = k + 1 + m - j
	it.kind, it.v2, it.unit = itDim, v2, first
	k = j + n
	u, m := r.sideUnit(k)
	if m > 0 {
		it.unit = u
	}
	if times(k + m) {
		if v3, _, m3 := read(k + m + 1); m3 > 0 {
			it.v3 = v3
			n = k + m + 1 + m3 - j
			k = j + n
			u, m = r.sideUnit(k)
			if m > 0 {
				it.unit = u
			}
			return n + m
		}
	}
	return n + m
}

func isSpokenNumber(l *lexicon, s string) bool {
	m := l.of[s]
	return m != nil && m.isNum
}

// sideUnit reads a unit of length or area behind a side.
func (r *reader) sideUnit(k int) (unitID, int) {
	if k >= len(r.toks) {
		return 0, 0
	}
	switch t := &r.toks[k]; {
	case t.s == "\"" || t.s == "”" || t.s == "″":
		return unitIn, 1
	case t.kind == tokMark && (t.s == "'" || t.s == "′" || t.s == "’") && !t.spaced:
		return unitFt, 1
	}
	u, m := r.unitPhrase(k)
	if m > 0 && (u.dim() == length || u.dim() == area) && (r.toks[k].s != "in" || !r.toks[k].spaced || !r.wordFollows(k+1)) {
		return u, m
	}
	return 0, 0
}

func (r *reader) wordFollows(k int) bool {
	if k >= len(r.toks) || r.toks[k].kind != tokWord {
		return false
	}
	switch r.toks[k].s {
	case "the", "use", "it", "there":
		return true
	}
	return false
}

// widestRange is how many times the lower end of a range the upper one may be
// where the dash stands free.
const widestRange = 1.6

// rangeTo reads "-3" or "to 3" or "or 3" after a number.
func (r *reader) rangeTo(it *item, j int) int {
	if j+1 >= len(r.toks) {
		return 0
	}
	t, u := &r.toks[j], &r.toks[j+1]
	if u.kind != tokNum || u.ordinal {
		return 0
	}
	dash := (t.s == "-" || t.s == "–") && !u.spaced == !t.spaced
	or := t.s == "or" && u.v > it.v && u.v < it.v*2
	if dash && t.spaced && (u.v <= it.v || u.v > widestRange*it.v) {
		dash = false // a dash between two facts: "low of 71 - 9 bags"
	}
	if !dash && !or {
		return 0
	}
	it.v2, it.rng = u.v, true
	return 2
}
