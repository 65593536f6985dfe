package reading

import (
	"strings"

	"troughbell/model"
)

// contents is what a portion says of a feeder or a barrel.
type contents struct {
	amount   *float64  // kilograms of feed, or litres
	each     []float64 // the amounts one by one
	vessels  float64   // of unknown size
	vessel   string
	full     bool
	empty    bool
	fraction *float64
	days     *float64
	left     bool // what is still there, not what went in
	filled   bool // a word of filling or pouring
	verb     bool // a word of filling: without an amount it means to the brim
	openBag  bool
	low      bool // little is left, nobody said how much
	wrong    bool // an amount of the other kind: gallons of feed
	bare     bool // the amount had no unit
	approx   bool
	bags     bool      // the amount was counted in bags or buckets
	second   bool      // a bare number stands beside the amount
	said     int       // its item
	rivals   []float64 // bare numbers beside the amount that do not add up with it
}

// contentsOf reads the amounts, marks and verbs of items[i:j].
func (r *reader) contentsOf(i, j int, feed bool) contents {
	c := contents{said: -1}
	joined, explicit := false, false
	add := func(v float64) {
		if c.bare && c.amount != nil && !joined && explicit { // a unit is worth more than none
			r.items[c.said].used = false
			c.amount, c.each, c.bare = nil, nil, false
		}
		c.each = append(c.each, v)
		if c.amount == nil {
			c.amount = model.Float(v)
			return
		}
		*c.amount += v
	}
	for k := i; k < j; k++ {
		it := &r.items[k]
		prev := &item{}
		if k > i {
			prev = &r.items[k-1]
		}
		joined = it.plus || it.is(sMore) || prev.is(sMore)
		explicit = it.kind == itQty
		switch {
		case it.kind == itQty && it.unit.dim() == mass && feed, it.kind == itQty && it.unit.dim() == volume && !feed:
			if c.amount != nil && c.vessels == 0 && sameAmount(*c.amount, it.si()) {
				break // "3 bags, 150 lb" says one amount twice
			}
			add(it.si())
			c.said = k
		case it.kind == itQty && it.unit.dim() == vessel && feed:
			size, ok := r.sizeOf(it.unit)
			if it.v2 > 0 && !it.rng {
				size, ok = it.v2, true
			}
			c.bags = true
			if k+1 < j && r.items[k+1].qty(mass) && r.items[k+1].gap <= gapAnd && !ok { // "2 50 lb bags" and "2 bags 50 lb"
				size, ok = r.items[k+1].si(), true
				r.items[k+1].used = true
				k++
			}
			if !ok {
				c.vessels += it.v
				c.vessel = it.unit.name()
			} else if c.amount != nil && sameAmount(*c.amount, it.v*size) {
				break
			} else {
				add(it.v * size)
			}
			c.said = k
		case it.kind == itQty && (it.unit.dim() == volume && feed || it.unit.dim() == mass && !feed):
			c.wrong = true
		case it.kind == itQty && it.unit == unitPct:
			c.fraction = model.Float(it.v / 100)
			if k+1 < j && r.items[k+1].s == "full" && r.items[k+1].gap == gapNone { // "16% full" is no full
				r.items[k+1].used = true
				it.used = true
				k++
				continue
			}
		case it.kind == itQty && it.unit.dim() == days:
			c.days = model.Float(it.si())
		case it.kind == itFrac:
			c.fraction = model.Float(it.v)
			if r.downBy(k, i) {
				c.fraction = model.Float(1 - it.v)
			}
			if k+1 < j && goneBehind[r.items[k+1].s] && r.items[k+1].gap == gapNone { // "three quarters empty"
				c.fraction = model.Float(1 - it.v)
				it.used, r.items[k+1].used = true, true
				k++
				continue
			}
		case it.kind == itSlash && feed && it.v > 16 && it.v2 > 16 && c.amount == nil: // "hoppers 150/70"
			add(r.massUnit().si(it.v))
			add(r.massUnit().si(it.v2))
			c.bare, c.said = true, k
		case it.kind == itSlash && it.v2 > 0 && it.v <= it.v2 && it.v2 <= 16: // 7/8
			c.fraction = model.Float(it.v / it.v2)
		case it.kind == itDay && it.day.form == daySlash && it.v < it.v2 && it.v2 <= 8 && k > i && prev.is(sAbout):
			c.fraction = model.Float(it.v / it.v2)
		case it.kind == itNum && (!it.soft || feed && r.oneOfThem(k)) && !it.ord && !it.label:
			if r.countsThings(k, j, feed) {
				it.used = true
				continue
			}
			if u := r.vesselBefore(k, i); u != 0 && feed && it.v <= mostVessels { // "mixed three batches, put two in the big one"
				if size, ok := r.sizeOf(u); ok {
					c.bags = true
					add(it.v * size)
					break
				}
			}
			u := r.massUnit()
			if !feed {
				u = r.volumeUnit()
			}
			if c.amount == nil {
				add(u.si(it.v))
				c.bare = true
				c.said = k
			} else if !sameAmount(*c.amount, u.si(it.v)) {
				c.second = true
				if !r.addsUp(k, i, j) {
					if c.bare {
						c.rivals = append(c.rivals, u.si(it.v))
					}
					continue // left to be asked about or quoted
				}
				add(u.si(it.v))
			}
		case it.is(sFull) && !it.is(sFill) && !r.negated(k, i), it.s == "topped off":
			c.full = true
			c.filled = c.filled || it.is(sFill)
		case it.is(sEmpty), it.is(sOut) && (it.s == "out" || it.s == "is out" || it.s == "are out"):
			c.empty = true
		case it.is(sLow) && it.kind == itWord && feed && it.s != "down to" && it.s != "night":
			c.low = true
		case it.is(sOpenBag):
			c.openBag = true
		case it.is(sTook):
			c.filled = true
			if c.verb { // "filled the south hopper, took 150"
				c.full = true
			}
			c.verb = true
			if strings.Contains(it.s, "fill") || strings.Contains(it.s, "top") || strings.Contains(it.s, "full") {
				c.full = true
			}
		case it.is(sFill) && it.kind == itWord && c.amount != nil && r.negated(k, i): // "which did not fill it"
			c.filled = true
		case c.amount != nil && prev.number() && it.gap == gapNone && rimWords[it.s] && (k+1 == j || r.items[k+1].gap >= gapComma): // "big 120 lid"
			c.full = true
		case it.is(sFill) || it.is(sWatered) || it.is(sDone):
			c.filled, c.verb = true, true
			if c.amount != nil && it.is(sFill) && prev.number() && it.gap == gapNone && k+1 < j && !r.items[k+1].number() && pastTense(it.s) { // "3 bags filled it"
				c.full = true
			}
			if c.amount != nil && (prev.s == "that" || prev.s == "which" || prev.s == "it" && k > i+1 && r.items[k-2].s == "and") { // "put nine bags in and that topped it"
				c.full = true
			}
		case it.s == "in it" && r.holdsNow(i, k):
			c.left = true
		case it.is(sPour) && it.s != "plus":
			c.filled = true
		case it.s == "in" && feed && prev.number() && (prev.qty(vessel) || prev.qty(mass) || prev.kind == itNum && !prev.soft && r.speaksOfFeed(k)) && (k+1 == j || r.items[k+1].gap >= gapComma):
			c.filled = true // "9 bags in"
		case it.s == "into" && feed && (prev.qty(vessel) || prev.qty(mass)) && it.gap == gapNone:
			c.filled = true
		case it.is(sLeft), it.is(sLook) && (it.s == "saw" || it.s == "level" || it.s == "sits"), it.s == "still" && !r.notFull(k, j):
			c.left = true
		default:
			continue
		}
		it.used = true
		c.approx = c.approx || it.approx || prev.is(sAbout)
	}
	if c.fraction != nil && c.amount != nil && !c.filled && r.leftThenMore(i, c.said) { // "a quarter left, so 2 bags into it"
		c.left, c.filled = true, true
	}
	if !c.filled && c.amount != nil && c.said > 0 && r.holdsNow(i, c.said) {
		c.left = true
	}
	if c.fraction != nil && c.amount == nil && !c.full && r.fractionLeft(i, j) {
		c.left, c.filled, c.verb = true, false, false
	}
	if c.fraction != nil && c.amount != nil && c.filled && !c.left && r.levelBefore(i, j) {
		c.left = true // "was about a third full and I put two bags in"
	}
	if c.fraction != nil && c.verb && !c.full && !c.left && r.levelThenFill(i, j) { // "down about a third, topped them"
		c.fraction, c.full = nil, true
	}
	if c.fraction != nil && c.verb && !c.full && c.amount == nil && r.fillThenLevelBefore(i, j) { // "filled all barrels, they were half"
		c.fraction, c.full, c.left = nil, true, false
	}
	if c.left && c.verb && len(c.each) == 1 && c.fraction == nil && r.leftBeforeVerb(i, j) { // "had ten gallons left, so I filled it"
		c.amount, c.left, c.full = nil, false, true
	}
	return c
}

// addsUp says that a second bare number belongs to the first: one for each of
// several things, or joined to it by an "and", a plus or a "more".
func (r *reader) addsUp(k, i, j int) bool {
	it := &r.items[k]
	if it.plus || it.gap == gapAnd || k+1 < j && r.items[k+1].is(sMore) {
		return true
	}
	for n := i; n < j; n++ {
		if r.items[n].isAny(setOf(sBoth, sAll, sEach)) || r.items[n].is(sBuy) {
			return true
		}
	}
	return i < k && r.items[k-1].isAny(setOf(sMore, sAnd)) && r.items[k-1].s != "with"
}

func sameAmount(a, b float64) bool {
	if a == 0 {
		return false
	}
	q := a / b
	return q > 0.97 && q < 1.03
}

// mostVessels is how many bags or buckets a bare number behind a count of them can
// mean: "two bags in the big hopper, one in the small". Common practice, no source.
const mostVessels = 12

// oneOfThem says that a soft "one" counts the bags or buckets told before in the
// sentence: it goes into something, or something got or took it.
func (r *reader) oneOfThem(k int) bool {
	if !r.items[k].soft || r.items[k].v != 1 {
		return false
	}
	into := k+1 < len(r.items) && (r.items[k+1].s == "in" || r.items[k+1].s == "into" || r.items[k+1].s == "to" || r.items[k+1].s == "for" || r.items[k+1].is(sMore))
	got := k > 0 && r.items[k-1].gap < gapStop && (r.items[k-1].is(sTook) || r.items[k].gap == gapNone && r.items[k-1].is(sPour) && r.items[k-1].kind == itWord && r.items[k-1].s != "plus" && r.items[k-1].s != "put" || r.items[k-1].s == "got" || r.items[k-1].s == "gets")
	if !into && !got {
		return false
	}
	for n := k - 1; n >= 0 && r.items[n+1].gap < gapStop; n-- {
		if r.items[n].qty(vessel) && r.items[n].unit != unitBale {
			return true
		}
	}
	return r.carry[vessel] != 0
}

// vesselBefore is the measure that a bare count at item k may be of: that of the
// spans before, or for "one more" that of items[i:k].
func (r *reader) vesselBefore(k, i int) unitID {
	if k+1 < len(r.items) && r.items[k+1].is(sMore) || r.items[k].soft {
		for n := k - 1; n >= i; n-- {
			if r.items[n].qty(vessel) && r.items[n].unit != unitBale {
				return r.items[n].unit
			}
		}
	}
	return r.carry[vessel]
}

// negated says that "not" stands right before item k: "not quite full".
func (r *reader) negated(k, i int) bool {
	for n := k - 1; n >= min(i, r.clauseFrom(k)) && n >= k-3; n-- {
		it := &r.items[n]
		if it.is(sNot) || it.s == "but not" || it.s == "no" && n == k-1 && it.gap == gapNone || n == k-1 && it.gap <= gapAnd && (it.s == "how" || it.s == "if" || it.s == "whether" || it.s == "neither") {
			it.used = true
			return true
		}
		if !it.is(sFiller) || it.gap > gapAnd {
			return false
		}
	}
	return false
}

// speaksOfFeed says that the sentence of item k names a feeder or feed, or pours.
func (r *reader) speaksOfFeed(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.feeder >= 0 || it.isAny(setOf(sFeeder, sFeed, sFill, sPour, sTook, sFull, sIngredient)) {
			return true
		}
	}
	return false
}

// leftThenMore says that a part is told to be left in a clause before that of item k.
func (r *reader) leftThenMore(i, k int) bool {
	cut := false
	for n := k; n > i; n-- {
		cut = cut || r.items[n].gap >= gapComma || r.items[n].s == "so"
		if p := &r.items[n-1]; cut && p.kind == itFrac && strings.HasSuffix(p.s, " left") {
			return true
		}
	}
	return false
}

// rimWords are where what is full up to them reaches.
var rimWords = setOfWords(split("lid, rim, lip, the lip, edge, neck, brim, top, the lid, the rim, the brim"))

// notFull says that behind the "still" at item k it is told that a thing is not full.
func (r *reader) notFull(k, j int) bool {
	for n := k + 1; n < j && n <= k+3; n++ {
		if r.items[n].is(sFull) {
			return n > k+1 && (r.items[n-1].is(sNot) || r.items[n-1].s == "no")
		}
	}
	return false
}

// countsThings says that a number counts feeders or barrels: "all 3 barrels",
// "3x full".
func (r *reader) countsThings(k, j int, feed bool) bool {
	it := &r.items[k]
	if it.v > 12 {
		return false
	}
	if k+1 < j {
		n := &r.items[k+1]
		if n.gap == gapNone && (n.isAny(setOf(sFeeder, sBarrel)) && strings.HasSuffix(n.s, "s") || n.is(sWater) && n.s != "water" || n.s == "x" || n.is(sPigs) || n.s == "times") {
			return true
		}
	}
	if k > 0 && r.items[k-1].is(sAll) && it.gap == gapNone && (k+1 == j || it.v == float64(len(r.c.Herd.Barrels)) && !feed) {
		return true
	}
	return false
}

// sizeOf is what one bag, bucket or batch holds in this herd. Bag and sack are
// one word for two, as are bucket and pail, where only one of them is known.
func (r *reader) sizeOf(u unitID) (float64, bool) {
	h := r.c.Herd
	if u == unitBatch {
		if kg, ok := r.setUp.sizes["batch"]; ok {
			return kg, true
		}
		return h.BatchKg()
	}
	for _, name := range sizeNames(u.name()) {
		if kg, ok := r.setUp.sizes[name]; ok {
			return kg, true
		}
		if kg, ok := h.Sizes[name]; ok {
			return kg, true
		}
	}
	return 0, false
}

func sizeNames(name string) []string {
	switch name {
	case "bag":
		return []string{"bag", "sack"}
	case "sack":
		return []string{"sack", "bag"}
	case "bucket":
		return []string{"bucket", "pail"}
	case "pail":
		return []string{"pail", "bucket"}
	}
	return []string{name}
}
