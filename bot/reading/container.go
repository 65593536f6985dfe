package reading

import (
	"strings"

	"troughbell/model"
)

// settleContainers decides for each general word such as "barrel" or "tank"
// whether it means a feeder or a water barrel here: what set-up called a thing
// wins. Where both or neither bear the name, it stays open.
func (r *reader) settleContainers() {
	h := r.c.Herd
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sBarrel) || it.pig >= 0 || it.feeder >= 0 || it.barrel >= 0 {
			continue
		}
		word := strings.TrimSuffix(it.s, "s")
		inFeeders, inBarrels := false, false
		for _, f := range h.Feeders {
			inFeeders = inFeeders || strings.Contains(strings.ToLower(f.Name), word)
		}
		for _, b := range h.Barrels {
			inBarrels = inBarrels || strings.Contains(strings.ToLower(b.Name), word)
		}
		switch {
		case inFeeders && !inBarrels:
			it.sense.drop(sBarrel)
			it.sense.add(sFeeder)
		case inBarrels && !inFeeders, !inFeeders && len(h.Barrels) > 0:
			it.sense.add(sWater)
		case len(h.Feeders) > 0 && inFeeders == inBarrels:
			it.either = true
		case len(h.Feeders) > 0 && len(h.Barrels) == 0:
			it.either = true
		}
	}
}

// things are the feeders or barrels that a stretch of text names.
type things struct {
	at    []int8
	every bool // all of them, by a word for all
	any   bool
	one   bool // a general word in the singular
	other bool // "the other one"
}

// portion is one stretch of a span with the things it is about.
type portion struct {
	things
	i, j int
}

// thingAt says what the item names of feeders (or else barrels).
func (r *reader) thingAt(k int, feed bool, s span) (things, bool) {
	it := &r.items[k]
	var t things
	count := len(r.c.Herd.Barrels)
	kind := setOf(sBarrel, sWater, sWatered)
	idx := it.barrel
	if feed {
		count = len(r.c.Herd.Feeders)
		kind = setOf(sFeeder)
		idx = it.feeder
		if it.either {
			kind.add(sBarrel)
		}
	}
	switch {
	case idx >= 0:
		t.at, t.any = []int8{idx}, true
		return t, true
	case it.feeder >= 0 || it.barrel >= 0:
		return t, false
	case it.isAny(kind):
		t.any = true
		plural := strings.HasSuffix(it.s, "s") && !it.is(sWatered) || it.is(sWatered) && !feed || it.is(sWater) && !it.is(sBarrel) && !r.oneVessel(it.s)
		prev := &item{}
		if k > s.i {
			prev = &r.items[k-1]
		}
		switch {
		case prev.is(sBoth) || prev.is(sAll) || prev.is(sEach) || plural:
			t.every = true
		case k > s.i+1 && r.items[k-2].is(sAll):
			t.every = true
		case prev.s == "other" && count == 2 && len(r.lastThings(feed)) == 1:
			t.at, t.other = []int8{1 - r.lastThings(feed)[0]}, true
		default:
			t.one = true
		}
		return t, true
	case it.is(sBoth) || it.is(sAll) && !it.is(sPigs) && !strings.Contains(it.s, "pig") && !strings.Contains(it.s, "hog") && !strings.Contains(it.s, "herd"):
		// "both full": of the things themselves
		if k+1 < s.j && (r.items[k+1].isAny(kind) || r.items[k+1].pig >= 0 || r.items[k+1].is(sPigs)) || it.s == "all done" {
			return t, false
		}
		if it.is(sAll) && k+1 < s.j && r.items[k+1].kind == itNum {
			return t, false
		}
		t.any, t.every = true, true
		return t, true
	case (it.s == "other" || it.s == "the other one") && count == 2 && len(r.lastThings(feed)) == 1:
		t.any, t.other = true, true
		t.at = []int8{1 - r.lastThings(feed)[0]}
		return t, true
	case it.is(sRest) && count > 1 && len(r.lastThings(feed)) > 0:
		t.any, t.other = true, true
		for n := range count {
			taken := false
			for _, x := range r.lastThings(feed) {
				taken = taken || x == int8(n)
			}
			if !taken {
				t.at = append(t.at, int8(n))
			}
		}
		return t, true
	}
	return t, false
}

func (r *reader) lastThings(feed bool) []int8 {
	if feed {
		return r.setUp.feeders
	}
	return r.setUp.barrels
}

func (r *reader) useThings(feed bool, at []int8) {
	for _, x := range at {
		if feed {
			r.setUp.feeders = append(r.setUp.feeders, x)
		} else {
			r.setUp.barrels = append(r.setUp.barrels, x)
		}
	}
}

// amountLike says that an item is a level or an amount of feed or water.
func (r *reader) amountLike(k int, feed bool) bool {
	it := &r.items[k]
	switch it.kind {
	case itNum:
		return !it.soft && !it.ord
	case itQty:
		d := it.unit.dim()
		return d == mass && feed || d == volume || d == vessel || d == percent || d == days
	case itFrac:
		return true
	}
	return it.is(sFull) || it.is(sEmpty)
}

// portions cuts a span at its mentions of feeders or barrels. Mentions come
// before their amounts if the first mention does.
func (r *reader) portions(s span, feed bool) []portion {
	type mention struct {
		k int
		t things
	}
	var ms []mention
	firstAmount := s.j
	for k := s.i; k < s.j; k++ {
		if t, ok := r.thingAt(k, feed, s); ok {
			ms = append(ms, mention{k, t})
			r.items[k].used = true
			continue
		}
		if r.amountLike(k, feed) && firstAmount == s.j {
			firstAmount = k
		}
	}
	if len(ms) == 0 {
		return []portion{{i: s.i, j: s.j}}
	}
	// Mentions with nothing between them belong together, a named one over a
	// general one: "north hopper", "north and south".
	type cluster struct {
		from, to int
		t        things
	}
	var cs []cluster
	for _, m := range ms {
		if n := len(cs); n > 0 && !r.amountBetween(cs[n-1].to, m.k, feed) && !(r.items[m.k].gap >= gapStop) {
			c := &cs[n-1]
			c.to = m.k
			c.t = join(c.t, m.t)
			continue
		}
		cs = append(cs, cluster{m.k, m.k, m.t})
	}
	before := cs[0].from < firstAmount
	if !before && len(cs) > 1 && r.numberBetween(cs[len(cs)-1].to, s.j) {
		before = true
	}
	// Marks right behind a name belong to it even where numbers come first.
	ends := make([]int, len(cs))
	for n, c := range cs {
		ends[n] = c.to + 1
		for ends[n] < s.j && !r.items[ends[n]].number() && r.items[ends[n]].gap < gapComma && (n+1 == len(cs) || ends[n] < cs[n+1].from) {
			ends[n]++
		}
	}
	var out []portion
	for n, c := range cs {
		p := portion{things: c.t, i: s.i, j: s.j}
		if before {
			if n > 0 {
				p.i = c.from
			}
			if n+1 < len(cs) {
				p.j = cs[n+1].from
			}
		} else {
			if n > 0 {
				p.i = ends[n-1]
			}
			if n+1 < len(cs) {
				p.j = ends[n]
			}
		}
		out = append(out, p)
	}
	return out
}

func (r *reader) amountBetween(i, j int, feed bool) bool {
	for k := i + 1; k < j; k++ {
		if r.amountLike(k, feed) {
			return true
		}
	}
	return false
}

func (r *reader) numberBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if r.items[k].number() && !r.items[k].soft {
			return true
		}
	}
	return false
}

func join(a, b things) things {
	a.any = true
	switch {
	case len(b.at) > 0:
		for _, x := range b.at {
			seen := false
			for _, y := range a.at {
				seen = seen || x == y
			}
			if !seen {
				a.at = append(a.at, x)
			}
		}
		a.every, a.one = false, false
	case len(a.at) > 0:
	default:
		a.every = a.every || b.every
		a.one = a.one || b.one
	}
	return a
}

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
	wrong    bool // an amount of the other kind: gallons of feed
	bare     bool // the amount had no unit
	approx   bool
	bags     bool // the amount was counted in bags or buckets
	second   bool // a bare number stands beside the amount
	said     int  // its item
}

// contentsOf reads the amounts, marks and verbs of items[i:j].
func (r *reader) contentsOf(i, j int, feed bool) contents {
	c := contents{said: -1}
	add := func(v float64) {
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
		switch {
		case it.kind == itQty && it.unit.dim() == mass && feed, it.kind == itQty && it.unit.dim() == volume && !feed:
			if c.amount != nil && c.vessels == 0 && sameAmount(*c.amount, it.si()) {
				break // "3 bags, 150 lb" says one amount twice
			}
			add(it.si())
			c.said = k
		case it.kind == itQty && it.unit.dim() == vessel && feed:
			size, ok := r.sizeOf(it.unit)
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
		case it.kind == itQty && it.unit.dim() == days:
			c.days = model.Float(it.si())
		case it.kind == itFrac:
			c.fraction = model.Float(it.v)
		case it.kind == itSlash && it.v2 > 0 && it.v <= it.v2 && it.v2 <= 16: // 7/8
			c.fraction = model.Float(it.v / it.v2)
		case it.kind == itDay && it.day.form == daySlash && it.v < it.v2 && it.v2 <= 8 && k > i && prev.is(sAbout):
			c.fraction = model.Float(it.v / it.v2)
		case it.kind == itNum && (!it.soft || r.carry[vessel] != 0 && feed && k+1 < j && (r.items[k+1].s == "in" || r.items[k+1].s == "into")) && !it.ord && !it.label:
			if r.countsThings(k, j, feed) {
				it.used = true
				continue
			}
			if u := r.carry[vessel]; u != 0 && feed && it.v <= 12 { // "mixed three batches, put two in the big one"
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
				add(u.si(it.v))
			}
		case it.is(sFull) && !it.is(sFill) && !r.negated(k, i), it.s == "topped off":
			c.full = true
			c.filled = c.filled || it.is(sFill)
		case it.is(sEmpty), it.is(sOut) && (it.s == "out" || it.s == "is out" || it.s == "are out"):
			c.empty = true
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
		case it.is(sFill) || it.is(sWatered) || it.is(sDone):
			c.filled, c.verb = true, true
		case it.is(sPour) && it.s != "plus":
			c.filled = true
		case it.is(sLeft), it.is(sLook) && (it.s == "saw" || it.s == "level" || it.s == "sits"), it.s == "still":
			c.left = true
		default:
			continue
		}
		it.used = true
		c.approx = c.approx || it.approx || prev.is(sAbout)
	}
	if c.left && c.verb && len(c.each) == 1 && c.fraction == nil && r.leftBeforeVerb(i, j) { // "had ten gallons left, so I filled it"
		c.amount, c.left, c.full = nil, false, true
	}
	return c
}

// leftBeforeVerb says that what was left is told before the filling.
func (r *reader) leftBeforeVerb(i, j int) bool {
	left, verb := -1, -1
	for k := i; k < j; k++ {
		if r.items[k].is(sLeft) && left < 0 {
			left = k
		}
		if r.items[k].isAny(setOf(sFill, sWatered)) {
			verb = k
		}
	}
	return left >= 0 && verb > left
}

func sameAmount(a, b float64) bool {
	if a == 0 {
		return false
	}
	q := a / b
	return q > 0.97 && q < 1.03
}

// negated says that "not" stands right before item k: "not quite full".
func (r *reader) negated(k, i int) bool {
	for n := k - 1; n >= i && n >= k-3; n-- {
		it := &r.items[n]
		if it.is(sNot) {
			it.used = true
			return true
		}
		if !it.is(sFiller) || it.gap > gapAnd {
			return false
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
	if k > 0 && r.items[k-1].is(sAll) && it.gap == gapNone && k+1 == j {
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

// oneVessel says that a phrase ends on the word for a single barrel.
func (r *reader) oneVessel(s string) bool {
	i := strings.LastIndexByte(s, ' ')
	return i > 0 && genericThing[s[i+1:]] == sBarrel
}
