package reading

import (
	"strings"
)

// settleContainers decides for each general word such as "barrel" or "tank"
// whether it means a feeder or a water barrel here: what set-up called a thing
// wins. Where both or neither bear the name, it stays open.
func (r *reader) settleContainers() {
	h := r.c.Herd
	r.learnSizes()
	r.thingsThatGot()
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
		case inFeeders && !inBarrels, word == it.s && len(h.Feeders) > 0 && r.toldByWeight(k):
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

// toldByWeight reports whether what went into the thing at item k is told by
// weight or in bags, nothing between: then it is feed, whatever the thing is
// called, for water is told by volume.
func (r *reader) toldByWeight(k int) bool {
	i, j := r.stretch(k)
	weight := false
	for n := i; n < j; n++ {
		switch it := &r.items[n]; {
		case it.qty(volume), n != k && it.isAny(setOf(sWater, sWatered)), it.pig >= 0, it.barrel >= 0:
			return false
		case it.qty(mass), it.qty(vessel) && it.unit == unitBag:
			weight = true
		}
	}
	return weight
}

// learnSizes finds what the text itself says that a measure holds, "bags are 50
// lb", so that it counts for the words before too.
func (r *reader) learnSizes() {
	for k := range r.items {
		it := &r.items[k]
		if it.unit == 0 || it.unit.dim() != vessel || it.unit == unitBale || it.unit == unitBatch || it.kind == itQty && it.v != 1 || it.kind != itWord && it.kind != itQty || k+2 >= len(r.items) {
			continue
		}
		if n := &r.items[k+1]; (n.is(sIs) || n.is(sHolds) || n.is(sWeigh)) && r.items[k+2].qty(mass) {
			r.setUp.sizes = setSize(r.setUp.sizes, it.unit.name(), r.items[k+2].si())
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
	case it.is(sFull) && (strings.HasPrefix(it.s, "all ") && it.s != "all the way" && it.s != "all the way up") && k > s.i && (it.gap >= gapAnd || r.items[k-1].isAny(kind) && it.s == "all full"):
		t.any, t.every = true, true
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
	said := r.setUp.barrels
	if feed {
		said = r.setUp.feeders
	}
	return append(said[:len(said):len(said)], r.setUp.inSpan...)
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
		return !it.soft && !it.ord || feed && r.oneOfThem(k)
	case itQty:
		d := it.unit.dim()
		return d == mass && feed || d == volume || d == vessel || d == percent || d == days
	case itFrac:
		return true
	case itSlash:
		return feed && it.v > 16 && it.v2 > 16
	}
	return it.is(sFull) || it.is(sEmpty)
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

// oneVessel says that a phrase ends on the word for a single barrel.
func (r *reader) oneVessel(s string) bool {
	i := strings.LastIndexByte(s, ' ')
	return i > 0 && genericThing[s[i+1:]] == sBarrel
}
