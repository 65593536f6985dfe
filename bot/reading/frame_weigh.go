package reading

import (
	"math"
	"strings"

	"troughbell/model"
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
	same    bool // the one before it, told again for another pig
	uneven  bool // of a list that is longer or shorter than that of the pigs before it
}

// fillWeigh reads weights and tape readings: any order of names, numbers and
// labels, one or several pigs.
func (r *reader) fillWeigh(s span) {
	if len(r.pigs) == 0 { // weights of pigs that are only being set up
		if r.weightOfArrival(s) {
			return
		}
		s.i = r.sentenceStart(s.i)
		if r.has(s, sGain) { // nothing can have gained here
			r.idleSpan(s)
			return
		}
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
	ms = r.subtractCrate(r.lessCrate(s, r.between(s, ms)))
	ms = joinTape(r, ms)
	ms = r.onlyAverage(s, ms)
	r.whose(s, ms)
	r.whoseAgain(s, ms)
	var first []model.Weigh // none where the number fits no measure
	if len(ms) > 0 {
		first = r.options(&ms[0])
	}
	if len(first) > 0 && (r.oneUnnamed(s, ms) || r.oneOrOther(s)) {
		on, _, _ := r.when(s, lookBack)
		r.whichPigFor(s, first[0], on)
		return
	}
	if len(ms) > 1 && len(first) > 0 && r.anyNamed() && r.several(ms) && (ofTheWhole(ms) || r.ofOneGroup(s, ms)) {
		on, _, _ := r.when(s, lookBack) // a list for a herd with names: whose is whose is not said
		r.whichPigFor(s, first[0], on)
		return
	}
	asked := false
	for k := range ms {
		switch {
		case ms[k].role == roleTare:
		case ms[k].uneven && !asked:
			r.unevenLists("weigh", s, ms[k].pigs)
			asked = true
		case !ms[k].uneven:
			r.weighing(s, &ms[k])
		}
	}
}

// unevenLists asks whose is whose where a list of pigs and one of numbers differ in
// their length: a number may be missing anywhere.
func (r *reader) unevenLists(about string, s span, sel selection) {
	r.useAll(s)
	r.clarify(Clarify{About: about, Code: "uneven_lists", Names: sel.names(r)}, s)
}

// measures lists the numbers of the span with what their labels say.
func (r *reader) measures(s span) []measure {
	var ms []measure
	taped := r.has(s, sTape)
	crate := r.find(s, sCrate)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		m := measure{at: k, v: it.v, v2: it.v2, unit: it.unit, approx: it.approx}
		if same, ok := r.again(k, s, ms); ok {
			it.used = true
			ms = append(ms, same)
			continue
		}
		switch {
		case it.kind == itDim && it.v3 == 0:
			m.role = rolePair
		case it.kind == itSlash && !r.tapeLike(it.v) && !r.tapeLike(it.v2): // "hazel and otis 180/190"
			it.used = true
			ms = append(ms, measure{at: k, v: it.v})
			m.v, m.v2 = it.v2, 0
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
			if p.is(sGain) && p.s != "gain" || p.sense == setOf(sGain) {
				m.role = roleGain
			}
		}
		if it.plus {
			m.role = roleGain
		}
		if r.takenOff(k, s, crate >= 0) {
			m.role = roleTare
		}
		if k+1 < s.j && r.items[k+1].is(sAbout) && r.items[k+1].gap == gapNone && (k+2 >= s.j || r.items[k+2].kind != itNum) {
			m.approx = true
		}
		ms = append(ms, m)
	}
	r.label(s, ms)
	for k := range ms {
		m := &ms[k]
		if m.role == roleOpen && taped && !r.has(s, sWeigh) && (r.tapeLike(m.v) || r.lengthUnit() == unitCm || m.v < leastByTape) { // "190 by the tape" is what it makes of it
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

// leastByTape is the least weight, in pounds, that a tape is taken to have told; what is
// less and no girth is a slip.
const leastByTape = 100

// onlyAverage keeps, of several weights of a herd without names, the one said to
// be their average: "they were 170 181 176 so call it 176 average".
func (r *reader) onlyAverage(s span, ms []measure) []measure {
	if len(ms) < 2 || r.anyNamed() {
		return ms
	}
	for n := len(ms) - 1; n >= 0; n-- {
		at := ms[n].at
		for k := max(s.i, at-2); k < s.j && k <= at+2; k++ {
			switch r.items[k].s {
			case "average", "avg", "averaged", "averaging", "call it", "on average", "mean":
				return ms[n : n+1]
			}
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
	if k+1 < len(r.items) {
		n := &r.items[k+1]
		if n.gap == gapNone && n.s == "of" && k+3 < len(r.items) && r.items[k+3].isAny(whoWords) && !r.items[k+2].number() {
			return true // "two of the barrows"
		}
		if k+1 >= s.j {
			return k > s.i && (r.items[k-1].is(sAll) && it.v == float64(r.alive)) && r.items[k].gap == gapNone
		}
		if n.gap == gapNone && n.isAny(setOf(sPigs, sBarrow, sGilt, sYoung, sOld, sBoar, sSow)) && n.pig < 0 {
			return true
		}
		if n.gap == gapNone && (strings.HasPrefix(n.s, "of them") || n.s == "of 'em" || n.s == "of em" || n.s == "of" && k+2 < s.j && r.items[k+2].isAny(setOf(sPronoun, sPigs))) {
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

// weightOfArrival gives a weight told by itself, "weight: 60 lb", to the pigs that
// the text said to have come.
func (r *reader) weightOfArrival(s span) bool {
	k := r.firstQty(s, mass)
	if k < 0 || r.items[k].rng || !r.has(s, sWeigh) || r.firstNum(s) >= 0 {
		return false
	}
	for n := len(r.out) - 1; n >= 0; n-- {
		f, ok := r.out[n].Act.(Fact)
		if !ok {
			continue
		}
		a, ok := f.Fact.(model.Arrive)
		if !ok {
			continue
		}
		if a.WeightKg != nil {
			return false
		}
		a.WeightKg = model.Float(r.items[k].si())
		r.out[n].Act = Fact{a}
		r.useAll(s)
		return true
	}
	return false
}

// oneOrOther says that a weight is told of one of two pigs, and not of which: "hazel
// or otis 180".
func (r *reader) oneOrOther(s span) bool {
	for k := s.i + 1; k+1 < s.j; k++ {
		if r.items[k].s == "or" && r.items[k-1].pig >= 0 && r.items[k+1].pig >= 0 {
			return true
		}
	}
	return false
}

// oneUnnamed says that a single weight is told of one pig of a herd with names, and
// not of which: "one of the small ones is 84", "one pig weighs 184".
func (r *reader) oneUnnamed(s span, ms []measure) bool {
	if !r.anyNamed() || r.alive < 2 || len(ms) != 1 || len(ms[0].pigs.pigs) == 1 || len(r.options(&ms[0])) == 0 {
		return false
	}
	if r.oneOf(s) || r.oneOfGroup(s) {
		return true
	}
	if r.eachNamed(s.i, s.j) {
		return false
	}
	for k := max(s.i-2, r.sentenceStart(s.i)); k+1 < s.j; k++ {
		if it := &r.items[k]; (it.soft && it.kind == itNum || it.s == "a" || it.s == "one") && r.items[k+1].is(sPigs) && r.items[k+1].gap == gapNone && !r.items[k+1].is(sAll) {
			return true
		}
	}
	return false
}
