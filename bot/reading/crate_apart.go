package reading

// The empty crate told in a line or a sentence of its own, before or behind the pigs
// that were weighed in it: "crate 78 empty" and below it "crate + Dot 212".

// boxWords are other things that a pig is weighed in.
var boxWords = setOfWords(split("box, trailer, sling, carrier, kennel, basket"))

// aloneWords say that it was weighed without a pig.
var aloneWords = setOfWords(split("alone, only, by itself, itself, on its own, its own, own, bare, leer, on his own, by its self"))

// emptyCrate is the crate told by itself.
type emptyCrate struct {
	v     float64
	unit  unitID
	ok    bool
	again bool // other sentences speak of the crate, and hold for them alone
}

// cratesApart takes such a sentence out of the text and keeps what it tells.
func (r *reader) cratesApart() {
	r.crate = emptyCrate{}
	first := -1
	for k := range r.items {
		if r.crateItem(k) {
			first = k
			break
		}
	}
	if first < 0 {
		return
	}
	for i := 0; i < len(r.items); {
		j := i + 1
		for j < len(r.items) && r.items[j].gap < gapSemi {
			j++
		}
		if at := r.tellsCrate(i, j); at >= 0 && j-i < len(r.items) {
			r.crate = emptyCrate{v: r.items[at].v, unit: r.items[at].unit, ok: true}
			if i == 0 && j < len(r.items) {
				r.items[j].gap = max(r.items[j].gap, gapStop)
			}
			r.items = append(r.items[:i], r.items[j:]...)
			break
		}
		i = j
	}
	if !r.crate.ok {
		return
	}
	for k := range r.items {
		if r.crateItem(k) {
			r.crate.again = true
			r.items[k].sense.add(sCrate)
		}
	}
}

// crateItem says that item k speaks of what pigs are weighed in.
func (r *reader) crateItem(k int) bool {
	it := &r.items[k]
	return it.isAny(setOf(sCrate, sEmptyCrate)) || it.sense.empty() && it.kind == itWord && boxWords[it.s]
}

// tellsCrate is the number in items[i:j] where they tell what the crate weighs without a
// pig, and nothing else; -1 where they do not.
func (r *reader) tellsCrate(i, j int) int {
	crate, alone, at := false, false, -1
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case r.crateItem(k):
			crate = true
			alone = alone || it.is(sEmptyCrate)
		case it.pig >= 0, it.kind == itDay, it.kind == itClock:
			return -1
		case it.kind == itNum && !it.soft && !it.ord && !it.rng && !it.plus, it.qty(mass) && !it.rng:
			if at >= 0 {
				return -1
			}
			at = k
		case it.is(sEmpty), aloneWords[it.s]:
			alone = true
		case it.kind == itWord && it.isAny(setOf(sFiller, sIs, sWeigh, sAbout)):
		default:
			return -1
		}
	}
	if !crate {
		return -1
	}
	if !alone { // "crate 78", and in the next line "crate + dot 212"
		more := false
		for k := j; k < len(r.items); k++ {
			more = more || r.crateItem(k)
		}
		if i > 0 || !more {
			return -1
		}
	}
	return at
}

// lessCrate takes the crate told apart off the weights of a span that were read with it.
func (r *reader) lessCrate(s span, ms []measure) []measure {
	if !r.crate.ok {
		return ms
	}
	for k := range ms {
		if ms[k].role == roleTare {
			return ms
		}
	}
	for k := range ms {
		m := &ms[k]
		if m.role != roleOpen && m.role != roleWeight || r.crate.again && !r.withCrate(s, ms, k) {
			continue
		}
		if m.unit == 0 {
			m.unit = r.massUnit()
		}
		tare := r.crate.unit
		if tare == 0 {
			tare = m.unit
		}
		if off := tare.si(r.crate.v) / units[m.unit].factor; off < m.v {
			m.v, m.role = m.v-off, roleWeight
		}
	}
	return ms
}

// withCrate says that measure k was read with the crate: it is named beside it, or heads
// the list.
func (r *reader) withCrate(s span, ms []measure, k int) bool {
	from, to := s.i, s.j
	if k > 0 {
		from = ms[k-1].at + 1
	}
	if k+1 < len(ms) {
		to = ms[k+1].at
	}
	for n := from; n < to; n++ {
		if n > ms[k].at && r.items[n].gap >= gapComma {
			break
		}
		if r.items[n].is(sCrate) {
			return true
		}
	}
	return r.find(span{0, s.i, ms[0].at}, sCrate) == s.i && !r.eachNamed(s.i, s.i+2)
}

// crateTold reads "I know that crate, it's 83 by itself" as the empty crate's weight.
func (r *reader) crateTold() {
	for k := 2; k < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k-1]
		if !onItsOwn[it.s] || it.gap != gapNone || n.kind != itNum && !n.qty(mass) || n.soft || it.quest {
			continue
		}
		p := &r.items[k-2]
		if p.pig >= 0 || !p.is(sPronoun) && !p.is(sIs) || !r.has(span{0, r.sentenceStart(k), k - 2}, sCrate) {
			continue
		}
		p.s, p.sense = "crate is", setOf(sEmptyCrate)
		p.gap = max(p.gap, gapComma)
		r.blank(k)
	}
}

var onItsOwn = setOfWords(split("by itself, on its own, alone, empty, with nothing in it"))
