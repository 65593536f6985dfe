package reading

import (
	"math"
	"strings"
)

// role is what a number of a weighing is.
type role uint8

const (
	roleOpen role = iota
	roleGirth
	roleLength
	roleWeight
	rolePair // girth and length together
	roleTare // the empty crate
	roleGain
)

// measure is one number of a weighing with the pigs it is for.
type measure struct {
	role    role
	v, v2   float64
	unit    unitID
	at      int // its item
	approx  bool
	crate   bool
	pigs    selection
	claimed bool
}

// fillWeigh reads weights and tape readings: any order of names, numbers and
// labels, one or several pigs.
func (r *reader) fillWeigh(s span) {
	if len(r.pigs) == 0 { // weights of pigs that are only being set up
		s.i = r.sentenceStart(s.i)
		r.fillArrive(s)
		return
	}
	ms := r.measures(s)
	if len(ms) == 0 {
		r.idleSpan(s)
		return
	}
	if r.alive != 1 && len(r.subject) == 0 && !r.subjAll && r.quoteHas(s, "it", "it's", "its", "it was") && !r.has(s, sWeigh) && !r.has(s, sGirth) && !r.has(s, sTape) && !r.eachNamed(s.i, s.j) {
		r.fillWeather(s) // "it was 97 yesterday"
		return
	}
	for k := range ms {
		if ms[k].unit == unitStone {
			r.none(NoneUnit, s)
			return
		}
	}
	ms = r.subtractCrate(ms)
	ms = joinTape(r, ms)
	r.whose(s, ms)
	for k := range ms {
		if ms[k].role != roleTare {
			r.weighing(s, &ms[k])
		}
	}
}

// measures lists the numbers of the span with what their labels say.
func (r *reader) measures(s span) []measure {
	var ms []measure
	taped := r.has(s, sTape)
	crate := r.find(s, sCrate)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		m := measure{at: k, v: it.v, v2: it.v2, unit: it.unit, approx: it.approx}
		switch {
		case it.kind == itDim && it.v3 == 0:
			m.role = rolePair
		case it.kind == itSlash:
			m.role = rolePair
		case it.kind == itNum && it.rng, it.kind == itQty && it.rng:
			if r.tapeLike(it.v) && r.tapeLike(it.v2) && it.v2-it.v > 3 && it.kind == itNum {
				m.role = rolePair
			} else {
				m.v = (it.v + it.v2) / 2
				m.approx = true
			}
		case it.kind == itNum && !it.soft && !it.ord:
			if r.countOfPigs(k, s) {
				continue
			}
		case it.kind == itQty && it.unit.dim() == mass, it.kind == itQty && it.unit.dim() == length, it.unit == unitStone && it.kind == itQty:
		default:
			continue
		}
		it.used = true
		if n := len(ms); n > 0 && m.unit == 0 && m.role == roleOpen && ms[n-1].unit.dim() == mass {
			m.unit = ms[n-1].unit // a unit holds for the bare numbers behind it
		}
		if m.unit.dim() == mass && it.kind != itDim {
			m.role = roleWeight
		}
		if k > s.i {
			p := &r.items[k-1]
			m.approx = m.approx || p.is(sAbout) && p.s != "around"
			if p.is(sGain) && p.s != "gain" {
				m.role = roleGain
			}
		}
		if it.plus {
			m.role = roleGain
		}
		if k+1 < s.j && r.items[k+1].is(sAbout) && r.items[k+1].gap == gapNone && (k+2 >= s.j || r.items[k+2].kind != itNum) {
			m.approx = true
		}
		ms = append(ms, m)
	}
	r.label(s, ms)
	for k := range ms {
		m := &ms[k]
		if m.role == roleOpen && taped && !r.has(s, sWeigh) {
			m.role = roleGirth
		}
		if m.role == roleOpen && m.unit.dim() == length {
			m.role = roleGirth
		}
		if crate >= 0 && m.role != roleTare {
			m.crate = true
		}
	}
	return ms
}

// countOfPigs says that a number counts pigs and weighs none: "all 4 pigs".
func (r *reader) countOfPigs(k int, s span) bool {
	it := &r.items[k]
	if it.v > 30 || it.v != math.Trunc(it.v) {
		return false
	}
	if k+1 < s.j {
		n := &r.items[k+1]
		if n.gap == gapNone && n.isAny(setOf(sPigs, sBarrow, sGilt, sYoung, sOld, sBoar, sSow)) && n.pig < 0 {
			return true
		}
	}
	return k > s.i && (r.items[k-1].is(sAll) && it.v == float64(r.alive)) && r.items[k].gap == gapNone
}

// tapeLike says that a bare number could be a girth or a length of a pig.
func (r *reader) tapeLike(v float64) bool {
	if r.lengthUnit() == unitCm {
		return v >= 40 && v <= 180
	}
	return v >= 14 && v <= 72
}

// label gives roles from words such as "girth" before or behind numbers: behind
// them where a number stands before the first label.
func (r *reader) label(s span, ms []measure) {
	type tag struct {
		at   int
		role role
	}
	var tags []tag
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sEmptyCrate), it.s == "crate" && k+1 < s.j && r.items[k+1].number() && r.find(s, sCrate) < k:
			tags = append(tags, tag{k, roleTare})
		case it.is(sGirth), (it.s == "around" || it.s == "round") && r.around(k, s):
			tags = append(tags, tag{k, roleGirth})
		case it.is(sLength), it.s == "l" && k > s.i && r.items[k-1].number():
			tags = append(tags, tag{k, roleLength})
		case it.s == "g" && k > s.i && r.items[k-1].number():
			tags = append(tags, tag{k, roleGirth})
		case it.is(sWeigh) && it.pig < 0 && !strings.HasPrefix(it.s, "av") && !strings.HasPrefix(it.s, "mean"):
			tags = append(tags, tag{k, roleWeight})
		default:
			continue
		}
		r.items[k].used = true
	}
	if len(tags) == 0 {
		return
	}
	if len(tags) == 1 && tags[0].role != roleTare && tags[0].role != roleLength {
		for k := range ms {
			if ms[k].role == roleOpen && (tags[0].role != roleWeight || ms[k].unit.dim() != length) {
				ms[k].role = tags[0].role
			}
		}
		return
	}
	before := len(ms) > 0 && ms[0].at < tags[0].at
	if len(tags) == 1 && tags[0].role == roleLength {
		for k := range ms { // "97 cm, length 108 cm"
			if d := ms[k].at - tags[0].at; d > 0 && d <= 2 && r.items[ms[k].at].gap < gapComma {
				before = false
			}
		}
	}
	for _, t := range tags {
		best, far := -1, 99
		for k := range ms {
			d := ms[k].at - t.at
			if before && t.role != roleTare {
				d = -d
			}
			if d < 0 {
				d = -d + 2
			}
			if ms[k].claimed || ms[k].role == rolePair || d >= far {
				continue
			}
			best, far = k, d
		}
		if best >= 0 && far <= 5 {
			ms[best].claimed = true
			if ms[best].role == roleOpen || t.role == roleTare || ms[best].role == roleGirth {
				ms[best].role = t.role
			}
		}
	}
	// One kind of label for all: "dot 38, moss 40 girths".
	if one := tags[0].role; one == roleGirth {
		for _, t := range tags {
			if t.role != one {
				return
			}
		}
		for k := range ms {
			if ms[k].role == roleOpen {
				ms[k].role = one
			}
		}
	}
}

// around says that "around" means the girth and not "about".
func (r *reader) around(k int, s span) bool {
	return k > s.i && r.items[k-1].number() || r.has(s, sLength)
}

// subtractCrate takes the empty crate off the weights that were read with it.
func (r *reader) subtractCrate(ms []measure) []measure {
	tare := -1
	for k := range ms {
		if ms[k].role == roleTare {
			tare = k
		}
	}
	if tare < 0 {
		return ms
	}
	for k := range ms {
		if k == tare || ms[k].role == roleLength || ms[k].role == rolePair {
			continue
		}
		u := ms[k].unit
		if u == 0 {
			u = r.massUnit()
		}
		t := ms[tare].unit
		if t == 0 {
			t = u
		}
		ms[k].unit, ms[k].role = u, roleWeight
		ms[k].v -= t.si(ms[tare].v) / units[u].factor
	}
	return ms
}

// joinTape makes one measure of a girth and a length that stand together.
func joinTape(r *reader, ms []measure) []measure {
	out := ms[:0]
	for k := 0; k < len(ms); k++ {
		m := ms[k]
		if k+1 < len(ms) {
			n := ms[k+1]
			gap := r.namesBetween(m.at, n.at)
			switch {
			case gap:
			case m.role == roleGirth && n.role == roleLength:
				m.v2, m.role = n.lengthIn(r, m), rolePair
				k++
			case m.role == roleLength && n.role == roleGirth:
				n.v2, n.role = m.lengthIn(r, n), rolePair
				n.at = m.at
				m = n
				k++
			case m.role == roleOpen && n.role == roleOpen && m.unit == 0 && n.unit == 0 && r.tapeLike(m.v) && r.tapeLike(n.v) && r.oneName(m.at, n.at),
				m.role == roleGirth && n.role == roleGirth && r.oneName(m.at, n.at),
				m.role == roleGirth && n.role == roleOpen && r.tapeLike(n.v) && r.oneName(m.at, n.at):
				m.v2, m.role = n.lengthIn(r, m), rolePair
				k++
			}
		}
		out = append(out, m)
	}
	return out
}

// lengthIn is the measure's value in the unit of another.
func (m measure) lengthIn(r *reader, of measure) float64 {
	u, v := m.unit, of.unit
	if u == 0 {
		u = v
	}
	if v == 0 {
		v = u
	}
	if u == v {
		return m.v
	}
	if u.dim() != length || v.dim() != length {
		return m.v
	}
	return u.si(m.v) / units[v].factor
}

func (r *reader) namesBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if r.items[k].pig >= 0 || r.items[k].group >= 0 || r.items[k].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return false
}

// oneName says that the two numbers at i and j belong to one pig: no list of
// names stands beside them.
func (r *reader) oneName(i, j int) bool {
	names := 0
	for k := i - 1; k >= 0 && !r.items[k].number(); k-- {
		if r.items[k].pig >= 0 {
			names++
		}
		if r.items[k].gap >= gapStop {
			break
		}
	}
	return names < 2
}

// whose finds the pigs of each measure. Names stand before their numbers where
// a name comes first, else behind them. Several names before as many numbers
// take one each.
func (r *reader) whose(s span, ms []measure) {
	first := s.j
	for k := s.i; k < s.j; k++ {
		if r.subjectItem(k, s) {
			first = k
			break
		}
	}
	if first == s.j { // no pig named
		sel := r.defaultPigs(s)
		for k := range ms {
			ms[k].pigs = sel
		}
		return
	}
	namesFirst := first < ms[0].at && !r.forNames(ms, s)
	if !namesFirst && len(ms) > 1 && !r.subjectBetween(ms[len(ms)-1].at, s.j, s) {
		// "38 dot 40 moss 41 fig" ends on a name; "girth: 38 dot, moss 40" does not.
		namesFirst = first > ms[0].at && r.subjectsBefore(ms, s)
	}
	var last selection
	for k := 0; k < len(ms); k++ {
		lo, hi := s.i, s.j
		if namesFirst {
			if k > 0 {
				lo = ms[k-1].at + 1
			}
			hi = ms[k].at
			if sel := r.selectPigs(r.fromNames(lo, hi), hi); sel.any {
				last = sel
				if n := r.runOf(ms, k, s); n > 1 && !sel.all && len(sel.pigs) == n {
					for x := range n {
						one := sel
						one.pigs = sel.pigs[x : x+1]
						ms[k+x].pigs = one
					}
					k += n - 1
					continue
				}
			} else if k == 0 {
				last = r.defaultPigs(s)
			}
			ms[k].pigs = last
			if k+1 == len(ms) && ms[k].role != roleTare {
				if tail := r.selectPigs(ms[k].at+1, s.j); tail.any && (!ms[k].pigs.any || ms[k].pigs.all && !tail.all && len(tail.pigs) > 0) {
					ms[k].pigs = tail
				}
			}
			continue
		}
		lo = ms[k].at + 1
		if k+1 < len(ms) {
			hi = ms[k+1].at
		}
		sel := r.selectPigs(lo, hi)
		if !sel.any && k > 0 {
			sel = ms[k-1].pigs
		}
		ms[k].pigs = sel
	}
	if !namesFirst { // "170, 165 dot and moss"
		for k := 0; k < len(ms); k++ {
			n := k
			for n < len(ms) && !ms[n].pigs.any {
				n++
			}
			if n > k && n < len(ms) {
				if got := ms[n].pigs; len(got.pigs) == n-k+1 && !got.all {
					for x := k; x <= n; x++ {
						one := got
						one.pigs = got.pigs[x-k : x-k+1]
						ms[x].pigs = one
					}
				} else {
					for x := k; x < n; x++ {
						ms[x].pigs = got
					}
				}
			}
			k = n
		}
	}
}

// runOf counts the measures from k on with no subject between them.
func (r *reader) runOf(ms []measure, k int, s span) int {
	n := 1
	for k+n < len(ms) && !r.subjectBetween(ms[k+n-1].at, ms[k+n].at, s) {
		n++
	}
	return n
}

func (r *reader) subjectItem(k int, s span) bool {
	it := &r.items[k]
	return it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) && !(it.s == "each") && it.s != "old"
}

func (r *reader) subjectBetween(i, j int, s span) bool {
	for k := i + 1; k < j; k++ {
		if r.subjectItem(k, s) {
			return true
		}
	}
	return false
}

// subjectsBefore says that each number but the first has a subject right
// before it.
func (r *reader) subjectsBefore(ms []measure, s span) bool {
	for k := 1; k < len(ms); k++ {
		if !r.subjectBetween(ms[k-1].at, ms[k].at, s) {
			return false
		}
	}
	return true
}

// defaultPigs are the pigs meant where none is named: the only one, those said
// before in the text, or the whole herd where the words speak of a mean.
func (r *reader) defaultPigs(s span) selection {
	switch {
	case r.alive == 1:
		return selection{pigs: []int16{0}, any: true}
	case len(r.subject) > 0:
		return selection{pigs: append([]int16(nil), r.subject...), any: true}
	case r.subjAll:
		return selection{all: true, any: true}
	case r.has(s, sEach) || r.averages(s) || r.quoteHas(s, "they"):
		return selection{all: true, any: true}
	case r.alive > 0 && !r.anyNamed():
		return selection{all: true, any: true}
	}
	return selection{}
}

func (r *reader) anyNamed() bool {
	for p := range r.alive {
		if r.pigs[p].Name != "" {
			return true
		}
	}
	return false
}

func (r *reader) quoteHas(s span, words ...string) bool {
	for k := s.i; k < s.j; k++ {
		for _, w := range words {
			if r.items[k].s == w {
				return true
			}
		}
	}
	return false
}

// forNames says that names follow their numbers behind "for": "177 for hazel".
func (r *reader) forNames(ms []measure, s span) bool {
	for k := ms[0].at + 1; k+1 < s.j; k++ {
		if r.items[k].s == "for" && r.items[k-1].number() && r.items[k+1].pig >= 0 {
			return true
		}
	}
	return false
}

// fromNames skips words for several pigs that only lead up to their names:
// "both girls got weighed, Plum's at 163".
func (r *reader) fromNames(i, j int) int {
	for k := i; k < j; k++ {
		if r.items[k].pig >= 0 {
			for n := k; n > i; n-- {
				if r.items[n-1].is(sBut) {
					return i
				}
			}
			if r.items[k].gap >= gapComma || r.items[k].gap == gapAnd && k+1 < j && r.items[k+1].is(sIs) {
				return k
			}
			return i
		}
	}
	return i
}

// averages says that the span speaks of a mean.
func (r *reader) averages(s span) bool {
	for k := s.i; k < s.j; k++ {
		if w := r.items[k].s; strings.HasPrefix(w, "av") || strings.HasPrefix(w, "mean") {
			return true
		}
	}
	return false
}
