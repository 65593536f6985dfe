package reading

// turn trims a span to what it goes on to state where its head was only meant,
// denied or still to come: "we should have fed them 160 but only had 120, so
// that went in the big one", "supposed to be 97 tomorrow so I topped both tanks".
// What the head names stays where what follows names nothing.
func (r *reader) turn(s span) span {
	start := max(r.sentenceStart(s.i), s.i-headReach)
	m := -1
	for k := start; k < s.j; k++ {
		if r.unreal(k) {
			m = k
			break
		}
	}
	if m < 0 {
		return s
	}
	for k := s.i; k < m; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.kind == itDim {
			return s // "put 165 in big, wasn't quite full, maybe 7/8"
		}
	}
	t := -1
	for k := m + 1; k < s.j; k++ {
		if r.items[k].gap >= gapStop && k > s.i {
			break
		}
		if r.turns(k) && r.stated(k, s) {
			t = k
			break
		}
	}
	if t < 0 {
		return s
	}
	if t <= s.i { // the head stands before the span
		for k := start; k < s.i; k++ {
			if r.unreal(k) {
				r.blank(k)
			}
		}
		return s
	}
	named := false
	for k := t; k < s.j; k++ {
		it := &r.items[k]
		named = named || it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sFeeder, sBarrel, sAll, sBoth, sRest, sWallow, sFence))
	}
	if named {
		for k := s.i; k < t; k++ {
			r.items[k].used = true
		}
		s.i = t
		return s
	}
	for k := s.i; k < t; k++ {
		it := &r.items[k]
		if r.unreal(k) || it.number() || it.kind == itDim || it.kind == itFrac || it.isAny(setOf(sFull, sEmpty, sLeft, sTook)) && it.pig < 0 && it.kind == itWord {
			r.blank(k)
		}
	}
	return s
}

// nearlyForgotten takes "nearly forgot to" away where the same sentence says that
// it was done after all: "nearly forgot to fill the shed barrel, did it just now".
func (r *reader) nearlyForgotten() {
	for k := range r.items {
		switch r.items[k].s {
		case "nearly forgot to", "almost forgot to", "i nearly forgot to", "i almost forgot to":
		default:
			continue
		}
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			if it := &r.items[n]; it.s == "did it" || it.s == "just did it" || it.number() && !it.soft {
				r.blank(k)
				if !it.number() {
					r.blank(n)
				}
				break
			}
		}
	}
}

// unreal says that item k makes what is said around it a plan, a denial or a
// thing to come.
func (r *reader) unreal(k int) bool {
	it := &r.items[k]
	if it.pig >= 0 {
		return false
	}
	if it.kind == itDay {
		return it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0
	}
	if it.isAny(setOf(sSick, sDown, sNoWater, sNoFeed, sBut, sWell, sTook, sFull, sDied)) {
		return false
	}
	return it.isAny(setOf(sNot, sPlan)) && it.kind == itWord
}

// turns says that item k begins a clause that turns to what was done.
func (r *reader) turns(k int) bool {
	switch r.items[k].s {
	case "but", "so", "anyway", "ended up", "instead", "only had", "only got", "only", "did it", "just did it", "it's", "its", "now", "then":
		return true
	}
	return r.items[k].gap >= gapComma
}

// stated says that what stands from item k on in the span states an amount or a
// level and is not itself but meant, denied or supposed.
func (r *reader) stated(k int, s span) bool {
	told := false
	for n := k; n < s.j && (n == k || r.items[n].gap < gapStop); n++ {
		it := &r.items[n]
		if r.unreal(n) || it.isAny(setOf(sIf, sHearsay, sForeign)) && it.pig < 0 && !it.is(sFiller) || it.s == "if" {
			return told && n > k && r.items[n].gap >= gapAnd
		}
		told = told || s.frame == fMove && it.pen >= 0 || it.number() && !it.soft && !it.qty(days) && !it.qty(hours) || it.kind == itDim || it.kind == itFrac ||
			it.isAny(setOf(sFull, sWatered)) || it.isAny(setOf(sFill)) && it.kind == itWord && pastTense(it.s)
	}
	return told
}

// pastTense says that a verb tells what was done, not what is to be.
func pastTense(s string) bool {
	w := firstWord(s)
	switch w {
	case "did", "put", "fed", "got", "gave", "full", "poured":
		return true
	}
	return len(w) > 3 && w[len(w)-2:] == "ed"
}
