package reading

import "strings"

// notOurs takes the herd's names back from words that only look like them.
func (r *reader) notOurs() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind == itName && r.commonNoun(k) {
			it.pig, it.kind, it.init, it.near = -1, itWord, false, false
		}
		if k > 0 && r.placeName(k-1, k) {
			for _, x := range []*item{&r.items[k-1], it} {
				x.feeder, x.barrel, x.pen, x.group, x.kind, x.sense = -1, -1, -1, -1, itWord, senses{}
			}
		}
	}
}

// commonNoun says that a name which is a plain word stands as one, small, behind
// an article and before another plain word: "the plum tree".
func (r *reader) commonNoun(k int) bool {
	it := &r.items[k]
	if it.capital || it.near {
		return false
	}
	if r.stuffOf(k) && (r.lex.plain[it.s] || commonEnglish().has(it.s) || rarerEnglish().has(it.s)) {
		return true
	}
	if k+1 >= len(r.items) || !r.lex.plain[it.s] {
		return false
	}
	n := &r.items[k+1]
	if n.gap != gapNone || n.kind != itWord || !r.lex.plain[n.s] || strings.HasSuffix(n.s, "ing") || !n.sense.empty() || n.unit != 0 {
		return false
	}
	if k == 0 || gardenWords[n.s] {
		return gardenWords[n.s]
	}
	switch r.items[k-1].s {
	case "the", "a", "an", "some", "our", "my", "that", "those", "these", "of":
		return true
	}
	return false
}

// stuffOf says that the name at item k is what an amount or a deed is of: "10 lb of
// moss", "scraped the moss off the roof".
func (r *reader) stuffOf(k int) bool {
	if k == 0 || r.items[k].gap != gapNone {
		return false
	}
	switch p := r.items[k-1].s; p {
	case "of":
		return k > 1 && (r.items[k-2].qty(mass) || r.items[k-2].qty(volume) || r.items[k-2].qty(vessel) || heaps[r.items[k-2].s])
	case "some", "any", "much", "more":
		return true
	case "the", "this", "that":
		if k < 2 || k+1 >= len(r.items) || r.items[k+1].gap != gapNone {
			return false
		}
		switch r.items[k+1].s {
		case "off", "off the", "from", "out", "out of":
			return strings.HasSuffix(r.items[k-2].s, "ed") && !r.items[k-2].is(sMove)
		}
	}
	return false
}

// heaps are loose measures of stuff.
var heaps = setOfWords(split("lots, load, loads, bunch, pile, piles, ton, tons, bit, patch, handful"))

// gardenWords behind a name that is a plain word make it one: "plum trees", where
// "fern keeps sneezing" tells of a pig.
var gardenWords = map[string]bool{
	"tree": true, "trees": true, "jam": true, "plant": true, "plants": true, "seed": true, "seeds": true, "sauce": true, "juice": true, "pie": true, "bed": true, "beds": true,
	"bush": true, "bushes": true, "leaf": true, "leaves": true, "grinder": true, "patch": true, "orchard": true, "salad": true, "honey": true, "tea": true, "wall": true, "harvest": true, "blossom": true,
}

// placeName says that two names of things of different kinds, both capital, make
// one name of a place: "the game in Cherry Hill".
func (r *reader) placeName(a, b int) bool {
	x, y := &r.items[a], &r.items[b]
	if x.kind != itThing || y.kind != itThing || y.gap != gapNone || !x.capital || !y.capital || x.upper || y.upper {
		return false
	}
	return x.pen >= 0 && x.barrel < 0 && x.feeder < 0 && y.pen < 0 || y.pen >= 0 && y.barrel < 0 && y.feeder < 0 && x.pen < 0
}

// waterItself gives a span that fills "it" behind what the same sentence says of a
// water barrel or the wallow to that: "the shed barrel was dry, filled it".
func (r *reader) waterItself(spans []span) []span {
	out := spans[:0]
	for _, s := range spans {
		n := len(out) - 1
		for n > 0 && out[n].frame == fIdle && r.items[out[n].i].gap < gapStop {
			n--
		}
		if n >= 0 && s.frame == fFeed && s.i < s.j && r.items[s.i].gap < gapStop && r.noFeed(s) && r.saysIt(s) {
			last := &out[n]
			if last.frame == fWater && r.items[s.i].is(sFill) && r.hasBarrel(*last) || last.frame == fWallow && r.has(s, sFill) {
				last.j = s.j
				out = out[:n+1]
				continue
			}
		}
		out = append(out, s)
	}
	return out
}

// verbsForward gives the verb that ends a span of water, feed or the wallow to
// the thing right behind it, where the next span begins with it: "the barrel was
// empty so I filled it, and friday I topped | the hopper".
func (r *reader) verbsForward(spans []span) []span {
	filling := func(f frame) bool { return f == fFeed || f == fWater || f == fWallow }
	for n := 1; n < len(spans); n++ {
		a, b := &spans[n-1], &spans[n]
		if a.frame == fSpend && b.i+1 < b.j && a.i < a.j && r.items[a.j-1].number() && r.items[b.i].gap == gapNone && r.items[b.i].kind == itWord && r.items[b.i+1].gap >= gapAnd && r.items[b.i].pig < 0 {
			a.j, b.i = a.j+1, b.i+1 // "12.50 tape | and plum 36"
		}
		if filling(a.frame) && b.frame != a.frame {
			r.fullBack(a, b)
		}
		if !filling(a.frame) || !filling(b.frame) && b.frame != fDrug || a.frame == b.frame || b.i >= b.j || r.items[b.i].gap != gapNone {
			continue
		}
		t := a.j - 1
		for t > a.i && r.items[t].gap < gapAnd {
			t--
		}
		if t <= a.i {
			if t = r.lastVerb(*a); t <= a.i {
				continue
			}
		}
		verb, only := false, true
		for k := t; k < a.j; k++ {
			it := &r.items[k]
			verb = verb || it.isAny(setOf(sFill, sPour, sGave, sBoth, sAll))
			only = only && (it.kind == itDay || it.kind == itClock || it.kind == itWord && it.isAny(setOf(sFill, sPour, sFiller, sAnd, sPronoun, sBoth, sAll, sEach)) && !it.isAny(setOf(sWater, sBarrel, sFeeder, sFeed, sWallow)))
		}
		if verb && only {
			a.j, b.i = t, t
		}
	}
	return spans
}

// lastVerb is the item of a verb of filling that ends a span whose level or
// amount is told before it, 0 if there is none: "barrels half | filled | big hopper".
func (r *reader) lastVerb(a span) int {
	t := a.j - 1
	if t > a.i && r.items[t].kind == itWord && r.items[t].isAny(setOf(sBoth, sAll, sEach)) && !r.items[t].is(sFull) {
		return t // "hill barrel empty | both hoppers full"
	}
	for t > a.i && r.items[t].kind == itWord && r.items[t].isAny(setOf(sFiller, sPronoun)) && !r.items[t].isAny(setOf(sFill, sPour)) {
		t--
	}
	if !r.items[t].isAny(setOf(sFill, sPour)) || r.items[t].is(sFull) {
		return 0
	}
	for k := a.i; k < t; k++ {
		if it := &r.items[k]; it.kind == itFrac || it.isAny(setOf(sFull, sEmpty)) || it.number() && !it.soft {
			return t
		}
	}
	return 0
}

// fullBack gives a "full" that begins a span, and that another clause follows, to
// the filling right before it: "filled big hopper 165, full, the wallow ...".
func (r *reader) fullBack(a, b *span) {
	k := b.i
	for k < b.j && r.items[k].kind == itWord && r.items[k].isAny(setOf(sFiller, sIs, sNow, sPronoun)) && !r.items[k].is(sFull) && k < b.i+4 {
		k++
	}
	if k+1 >= b.j || !r.items[k].isAny(setOf(sFull, sFill)) || r.items[k+1].gap < gapAnd || r.items[b.i].gap >= gapStop {
		return
	}
	if r.items[k].is(sFill) && !r.items[k].is(sFull) && a.frame != fWallow {
		return
	}
	for x := a.i; x < a.j; x++ {
		if r.items[x].isAny(setOf(sFull, sEmpty)) && !r.items[x].is(sFill) || r.items[k].is(sFill) && r.items[x].isAny(setOf(sFill, sHose)) {
			return
		}
	}
	a.j, b.i = k+1, k+1
}

// saysIt says that the thing filled is an "it" or a "them".
func (r *reader) saysIt(s span) bool {
	for k := s.i; k < s.j && k < s.i+3; k++ {
		switch r.items[k].s {
		case "it", "them", "that", "filled it", "filled it up", "filled it right up", "filled them up":
			return true
		}
	}
	return false
}

// noFeed says that a span names no feeder and no feed.
func (r *reader) noFeed(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.feeder >= 0 || it.isAny(setOf(sFeeder, sFeed)) || it.qty(mass) || it.qty(vessel) {
			return false
		}
	}
	return true
}
