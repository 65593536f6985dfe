package reading

import (
	"strings"

	"troughbell/model"
)

// newThing is a feeder, barrel or pen that a text sets up.
type newThing struct {
	name    string
	at      int // where its name or size stands
	kg, l   *float64
	m2      *float64
	nipples *int
	inUse   bool
	said    bool // its size was said
}

// thingKind says which words and amounts belong to a kind of thing.
type thingKind struct {
	key     string
	generic senses
	names   func(it *item) int8
	old     func(r *reader, k int8) string
	size    func(r *reader, it *item) (t newThing, ok bool)
}

var feederKind = thingKind{
	key: model.SetFeeder, generic: setOf(sFeeder, sBarrel),
	names: func(it *item) int8 { return it.feeder },
	old:   func(r *reader, k int8) string { return r.c.Herd.Feeders[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		switch {
		case it.qty(mass):
			return newThing{kg: model.Float(it.si())}, true
		case it.qty(volume):
			return newThing{l: model.Float(it.si())}, true
		case it.qty(vessel) && it.unit != unitBale:
			if size, ok := r.sizeOf(it.unit); ok {
				return newThing{kg: model.Float(it.v * size)}, true
			}
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 20:
			return newThing{kg: model.Float(r.massUnit().si(it.v))}, true
		}
		return newThing{}, false
	},
}

var barrelKind = thingKind{
	key: model.SetBarrel, generic: setOf(sBarrel, sWater),
	names: func(it *item) int8 { return it.barrel },
	old:   func(r *reader, k int8) string { return r.c.Herd.Barrels[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		switch {
		case it.qty(volume):
			return newThing{l: model.Float(it.si())}, true
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 10:
			return newThing{l: model.Float(r.volumeUnit().si(it.v))}, true
		}
		return newThing{}, false
	},
}

var penKind = thingKind{
	key: model.SetPen, generic: setOf(sPen),
	names: func(it *item) int8 { return it.pen },
	old:   func(r *reader, k int8) string { return r.c.Herd.Pens[k].Name },
	size: func(r *reader, it *item) (newThing, bool) {
		if m2, ok := r.areaOf(it); ok {
			return newThing{m2: model.Float(m2)}, true
		}
		return newThing{}, false
	},
}

// areaOf is the area of 50x80 ft, 400 m2 or half an acre, in square metres.
func (r *reader) areaOf(it *item) (float64, bool) {
	switch {
	case it.qty(area):
		return it.si(), true
	case it.kind == itDim:
		u := it.unit
		if u.dim() != length {
			u = unitFt
			if r.units == model.Metric {
				u = unitM
			}
		}
		return u.si(it.v) * u.si(it.v2), true
	}
	return 0, false
}

// thingsIn reads what a span sets up of one kind: "two hoppers 300 lb each
// called north and south", "three barrels: shed 55 gal 2 nipples, hill 55 gal".
func (r *reader) thingsIn(s span, kind thingKind) []newThing {
	r.listedSizes(s)
	count := 0
	word := ""
	type sized struct {
		newThing
		k int
	}
	var sizes []sized
	type named struct {
		name string
		k    int
		from int
	}
	var names []named
	var nipples []sized
	var generic []named
	each := r.has(s, sEach) || r.has(s, sBoth)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		isKind := it.isAny(kind.generic) && it.kind == itWord && !r.nameBefore(k, s, kind)
		if kind.names(it) >= 0 && it.pig < 0 {
			names = append(names, named{kind.old(r, kind.names(it)), k, k})
			it.used = true
			continue
		}
		if it.qty(nippleCount) || it.kind == itNum && k+1 < s.j && r.items[k+1].unit == unitNipple && r.items[k+1].kind == itWord {
			nipples = append(nipples, sized{newThing{nipples: model.Int(int(it.v + 0.5))}, k})
			it.used = true
			continue
		}
		if it.kind == itNum && it.v >= 1 && it.v <= mostNipples && len(nipples) > 0 && k > s.i && r.items[k-1].s == "with" && (k+1 == s.j || r.items[k+1].gap >= gapAnd) { // "and a white barrel 30 gallons with one"
			nipples = append(nipples, sized{newThing{nipples: model.Int(int(it.v + 0.5))}, k})
			it.used = true
			continue
		}
		if it.unit == unitNipple && it.kind == itWord && len(nipples) == 0 && k > s.i && r.items[k-1].s == "a" {
			nipples = append(nipples, sized{newThing{nipples: model.Int(1)}, k})
		}
		if isKind {
			it.used = true
			generic = append(generic, named{singular(it.s), k, k})
			own := kind.key != model.SetFeeder || it.is(sFeeder) // "feeder is a 55 gal drum"
			if word == "" || own && genericRank(it.s) > genericRank(word) {
				word = singular(it.s)
			}
			if k > s.i {
				if p := &r.items[k-1]; p.kind == itNum && !p.ord && p.v <= 12 && !p.used {
					count += int(p.v)
					p.used = true
				} else if p.s == "a pair of" || p.is(sBoth) {
					count += 2
				}
			}
			// "pens 1, 2, 3 and 4", "barrel 2"
			if n := r.numberNames(k, s, kind); len(n) > 0 {
				for _, x := range n {
					names = append(names, named{word + " " + strings.TrimSpace(r.text[r.items[x].from:r.items[x].to]), x, x})
					r.items[x].used = true
				}
			}
			continue
		}
		if it.used {
			continue
		}
		if r.letterAt(k, s, kind) || kind.key == model.SetPen && r.numberedAt(k, s) {
			name := strings.TrimSpace(r.text[it.from:it.to])
			if k+1 < s.j && r.items[k+1].kind == itNum && r.items[k+1].from == it.to { // P1
				r.items[k+1].used = true
				name = strings.TrimSpace(r.text[it.from:r.items[k+1].to])
			} else if word != "" {
				name = word + " " + name
			}
			names = append(names, named{name, k, k})
			it.used = true
			continue
		}
		if it.kind == itNum && !it.soft && !it.ord && it.v <= 12 && (r.kindSoon(k, s, kind) || count == 0 && r.countOfSized(k, s, kind)) {
			count += int(it.v)
			it.used = true
			continue
		}
		if it.qty(vessel) && it.unit != unitBale && kind.key == model.SetFeeder { // "6 sacks of 50 lb"
			if n := r.massSoon(k, s); n > k {
				r.items[n].used, it.used = true, true
				sizes = append(sizes, sized{newThing{kg: model.Float(it.v * r.items[n].si())}, k})
				continue
			}
		}
		if t, ok := kind.size(r, it); ok {
			sizes = append(sizes, sized{t, k})
			it.used = true
			continue
		}
		if r.nameLike(k) && !r.inUsePhrase(k, s) {
			from := k
			to := k
			for to+1 < s.j && r.items[to+1].gap == gapNone && (r.nameLike(to+1) || r.items[to+1].isAny(kind.generic) && r.items[to+1].kind == itWord) && !r.items[to+1].qty(nippleCount) {
				to++
				if r.items[to].isAny(kind.generic) && !r.items[to].capital {
					break
				}
			}
			for x := from; x <= to; x++ {
				r.items[x].used = true
			}
			name := strings.TrimSpace(r.text[r.items[from].from:r.items[to].to])
			if g := singular(r.items[to].s); r.items[to].isAny(kind.generic) && to > from && !r.items[to].capital {
				if strings.HasSuffix(r.items[to].s, "s") { // "north and south hoppers"
					name = strings.TrimSpace(r.text[r.items[from].from:r.items[to-1].to])
					word = g
				} else if word == "" {
					word = g
				}
			}
			if r.badName(name) {
				k = to
				continue
			}
			names = append(names, named{name, to, from})
			k = to
		}
	}
	if count == 0 && r.quoteHas(s, "pair", "pair of", "the pair") {
		count = 2
	}
	if count > 1 && len(names) == 1 && len(generic) > 0 && generic[len(generic)-1].k == names[0].k+1 && len(sizes) < 2 {
		names = nil // "two blue drums": what they look like, not a name
	}
	var out []newThing
	switch {
	case len(sizes) > 1 && len(sizes) == len(names) && names[len(names)-1].k < sizes[0].k: // "A, B and C: 400, 500 and 450 m2"
		for n, z := range sizes {
			t := z.newThing
			t.at, t.said, t.name = z.k, true, names[n].name
			out = append(out, t)
		}
	case len(sizes) > 1 && len(sizes) >= len(names) || len(sizes) > 1 && !each:
		nameFirst := len(names) == 0 || names[0].k < sizes[0].k
		for n, z := range sizes {
			t := z.newThing
			t.at, t.said = z.k, true
			lo, hi := s.i-1, z.k
			if n > 0 {
				lo = sizes[n-1].k
			}
			if !nameFirst {
				lo, hi = z.k, s.j
				if n+1 < len(sizes) {
					hi = sizes[n+1].k
				}
			}
			for _, x := range names {
				if x.k > lo && x.k < hi {
					t.name = x.name
					if nameFirst {
						continue // the nearest name counts
					}
					break
				}
			}
			out = append(out, t)
		}
		if len(sizes) == 2 && len(names) <= 1 && len(generic) == 1 && count <= 1 && out[0].l != nil && out[1].kg != nil && r.has(s, sHolds) { // "a 30 gallon feeder, holds 180 lb"
			out[0].kg = out[1].kg
			out = out[:1]
		}
		if len(sizes) == 2 && len(out) == 2 && len(names) == 1 && out[0].kg != nil && out[1].l != nil { // "hopper 300 lb, 55 gal"
			out[0].l = out[1].l
			out = out[:1]
		}
	default:
		n := max(count, len(names), 1)
		if len(sizes) == 0 && len(nipples) == 0 && kind.key != model.SetPen {
			return nil
		}
		if count > 0 && count < len(names) && count > 1 {
			names = names[:count]
			n = count
		}
		for x := range n {
			t := newThing{at: s.i}
			if len(sizes) > 0 {
				t = sizes[0].newThing
				t.at, t.said = sizes[0].k, true
			}
			if x < len(names) {
				t.name = names[x].name
				t.at = names[x].k
			}
			out = append(out, t)
		}
	}
	for x := range out { // nipples belong to the thing before them, one number to all
		if len(nipples) == 1 && (len(out) == 1 || each || len(sizes) <= 1) {
			out[x].nipples = nipples[0].nipples
			continue
		}
		for _, p := range nipples {
			if p.k > out[x].at && (x+1 == len(out) || p.k < out[x+1].at) {
				out[x].nipples = p.nipples
			}
		}
	}
	if len(names) == 0 && len(out) > 1 && count == 0 { // "a tank of 600 l and a tub of 200 l"
		own := map[string]bool{}
		called := make([]string, len(out))
		for x := range out {
			for _, g := range generic {
				if g.k < out[x].at && (x == 0 || g.k > out[x-1].at) {
					called[x] = g.name
				}
			}
			if called[x] != "" {
				own[called[x]] = true
			}
		}
		if len(own) == len(out) {
			for x := range out {
				out[x].name = called[x]
			}
		}
	}
	if len(names) > 0 && len(generic) > 1 { // "creek 55 gal, gate 55 gal, tote 275 gal"
		for x := 1; x < len(out); x++ {
			for _, g := range generic[1:] {
				if out[x].name == "" && g.k < out[x].at && g.k > out[x-1].at && g.name != generic[0].name && g.name != "barrel" && g.name != "feeder" && g.name != "pen" {
					out[x].name = g.name
				}
			}
		}
	}
	r.nameThings(out, word, kind)
	return out
}

// listedSizes gives the bare numbers of a list the unit of its last: "400, 500 and
// 450 m2".
func (r *reader) listedSizes(s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.qty(area) && !it.qty(volume) && !it.qty(mass) || it.gap < gapAnd {
			continue
		}
		for n := k - 1; n >= s.i && r.items[n].kind == itNum && !r.items[n].soft && !r.items[n].ord && r.items[n].v >= leastListed && r.items[n+1].gap >= gapAnd; n-- {
			r.items[n].kind, r.items[n].unit = itQty, it.unit
		}
	}
}

// mostNipples is the most that a bare number behind "with" is taken for.
const mostNipples = 8

// leastListed is the least that a bare number of a list of sizes is taken for one;
// smaller ones count or name things.
const leastListed = 20

// nameBefore says that the kind word at k is the tail of a name: the item
// before it is one.
func (r *reader) nameBefore(k int, s span, kind thingKind) bool {
	return k > s.i && r.items[k].gap == gapNone && r.items[k].capital && r.nameLike(k-1) && r.items[k-1].capital
}

// kindSoon says that a word of the kind follows within two items: "two 55 gal
// barrels", "2 water barrels".
func (r *reader) kindSoon(k int, s span, kind thingKind) bool {
	for n := k + 1; n < s.j && n <= k+3; n++ {
		it := &r.items[n]
		if it.gap > gapNone {
			return false
		}
		if it.isAny(kind.generic) && it.kind == itWord {
			return true
		}
	}
	return false
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

// countOfSized says that the number at k counts things, behind the word for their
// kind and before their size: "feeders: 2 at 200 lb", "water: 2 x 55 gal".
func (r *reader) countOfSized(k int, s span, kind thingKind) bool {
	if k == s.i || !r.items[k-1].isAny(kind.generic) || r.items[k].v != float64(int(r.items[k].v)) {
		return false
	}
	n := k + 1
	if n < s.j && (r.items[n].s == "at" || r.items[n].s == "@" || r.items[n].s == "of") {
		n++
	}
	return n < s.j && (r.items[n].qty(mass) || r.items[n].qty(volume)) && r.items[n].gap == gapNone
}

// massSoon is the weight said right behind item k, "6 sacks of 50 lb"; k if none.
func (r *reader) massSoon(k int, s span) int {
	for n := k + 1; n < s.j && n <= k+2 && r.items[n].gap <= gapComma; n++ {
		if r.items[n].qty(mass) {
			return n
		}
		if r.items[n].s != "of" && r.items[n].s != "at" && r.items[n].s != "@" {
			return k
		}
	}
	return k
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
