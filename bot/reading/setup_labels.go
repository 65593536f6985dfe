package reading

import "troughbell/model"

// nameBefore says that the kind word at k is the tail of a name: the item
// before it is one.
func (r *reader) nameBefore(k int, s span, kind thingKind) bool {
	return k > s.i && r.items[k].gap == gapNone && r.items[k].capital && r.nameLike(k-1) && r.items[k-1].capital
}

// numberNames are numbers that name things: those right behind the kind's word.
func (r *reader) numberNames(k int, s span, kind thingKind) []int {
	var out []int
	for n := k + 1; n < s.j; n++ {
		it := &r.items[n]
		if it.kind != itNum || it.soft || it.ord || it.v > 30 || it.v != float64(int(it.v)) {
			break
		}
		if n == k+1 && it.gap > gapNone || n > k+1 && it.gap == gapNone {
			break
		}
		if n+1 < s.j && kind.key != model.SetPen && (r.items[n+1].isAny(kind.generic) || r.items[n+1].unit == unitNipple) {
			break
		}
		out = append(out, n)
	}
	return out
}

// letterAt says that a single letter names a thing: behind the word for its
// kind, or in a list of letters, as in "paddocks A, B and C".
func (r *reader) letterAt(k int, s span, kind thingKind) bool {
	letter := func(n int) bool {
		return n >= s.i && n < s.j && (r.items[n].kind == itWord || r.items[n].init) && len(r.items[n].s) == 1 && r.items[n].s[0] >= 'a' && r.items[n].s[0] <= 'z'
	}
	if !letter(k) {
		return false
	}
	it := &r.items[k]
	switch {
	case k > s.i && r.items[k-1].isAny(kind.generic) && r.items[k-1].kind == itWord && (it.capital || it.s >= "b" && it.s <= "h"):
		return true
	case k+1 < s.j && r.items[k+1].kind == itNum && r.items[k+1].from == it.to:
		return true
	case letter(k+1) && r.items[k+1].gap >= gapAnd && r.items[k+1].gap < gapStop, letter(k-1) && it.gap >= gapAnd && it.gap < gapStop:
		return true
	}
	return false
}

// numberedAt says that a small number names a pen whose size follows: "pens: 1
// (0.25 acre), 2 (0.5 acre)".
func (r *reader) numberedAt(k int, s span) bool {
	it := &r.items[k]
	if it.kind != itNum || it.soft || it.ord || it.v > 30 || it.v != float64(int(it.v)) || k+1 >= s.j || !r.has(span{s.frame, s.i, k}, sPen) {
		return false
	}
	n := &r.items[k+1]
	return (n.kind == itDim || n.qty(area)) && n.gap <= gapComma
}

// inUsePhrase says that the words are about where the pigs are, not a name.
func (r *reader) inUsePhrase(k int, s span) bool { return r.items[k].is(sInUse) && !r.items[k].capital }

// frontAndBack takes the "and back" behind a side for the other side, a name: "call them
// front and back".
func (r *reader) frontAndBack() {
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if it.kind == itWord && it.s == "and back" && (p.s == "front" || p.s == "middle" || p.s == "side") && it.gap < gapComma {
			it.s, it.gap, it.sense = "back", gapAnd, senses{}
			it.from = it.to - len("back")
		}
	}
}
