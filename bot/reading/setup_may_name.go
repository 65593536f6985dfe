package reading

import "strings"

// What words of a set-up may be a thing's name, and what makes them one.

// givenBy says what makes words a name, the weakest first.
type givenBy uint8

const (
	byNothing givenBy = iota
	byPlace           // a colour, a side, a place: "the feeder by the barn"
	bySide            // its place beside the thing's word, its size or another name
	byCapital         // a capital inside a sentence
	byHerd            // it is a name already
	byCall            // a word for calling stands before it
)

// stateWords tell how a thing is, where it comes from or who speaks, and are no name
// unless a thing is called so.
var stateWords = setOfWords(split(`secondhand, second-hand, used, new, brand-new, newish, newer, older, homemade, homebuilt, diy, spare, broken, leaky, cracked, rusty, dented, cheap, nice, good, great, huge, tiny, fat,
	thin, full, empty, actual, real, proper, decent, whole, entire, single, double, own, different, other, another, extra, additional, similar, same, usual, standard, normal, regular, bit, piece, spot, area, section, strip, patch, chunk,
	lady, guy, man, woman, seller, dealer, neighbor, neighbour, husband, hubby, wife, dad, mom, kid, kids, son, daughter, thing, things, stuff, lot, kind, sort, type, model, brand, ebay, craigslist, auction`))

// neverNames says that item k is a participle, a verb, a small word or a word for a
// state, which no thing has for its name unless the text says that it is called so.
func (r *reader) neverNames(k int) bool {
	it := &r.items[k]
	if it.kind == itThing || placeWords[it.s] && it.s != "new" && it.s != "old" {
		return false
	}
	if it.isAny(setOf(sPronoun)) || strings.Contains(it.s, " ") && stopWords[firstWord(it.s)] {
		return true
	}
	if it.capital && it.gap < gapStop {
		return false
	}
	if stateWords[it.s] {
		return true
	}
	return participle(it.s) && (!it.capital || it.gap >= gapStop)
}

// participle says that a word has the shape of a participle: fenced, having.
func participle(w string) bool {
	return len(w) > 5 && (strings.HasSuffix(w, "ed") && !strings.HasSuffix(w, "eed") || strings.HasSuffix(w, "ing")) || w == "built" || w == "made" || w == "bought" || w == "found"
}

// mayName says that item k may be a word of a thing's name.
func (r *reader) mayName(k int, w *setUpSaid) bool {
	if !r.nameLike(k) || r.inUsePhrase(k, w.s) {
		return false
	}
	return r.calledAt(k, w) || !r.neverNames(k)
}

// calledAt says that a word for calling stands right before item k, or before the
// list of names that it goes on.
func (r *reader) calledAt(k int, w *setUpSaid) bool {
	for n := k - 1; n >= w.s.i && n >= k-3; n-- {
		switch p := &r.items[n]; {
		case p.is(sNamed) && !(p.capital && p.gap < gapStop):
			return true
		case p.s == "it", p.s == "that", p.s == "this", p.s == "them", p.s == "one", p.s == "the":
		default:
			n = w.s.i
		}
	}
	if n := len(w.names); n > 0 && w.names[n-1].given == byCall && w.names[n-1].k == k-1 && r.items[k].gap >= gapAnd && r.items[k].gap < gapStop {
		return true
	}
	return false
}

// givenBy says what makes items[from:to+1] a name.
func (r *reader) givenBy(from, to int, w *setUpSaid) givenBy {
	it := &r.items[from]
	switch {
	case r.calledAt(from, w):
		return byCall
	case it.capital && it.gap < gapStop && (to == from || r.items[to].capital || r.items[to].isAny(w.kind.generic)):
		return byCapital
	case r.besideKind(from, to, w), r.beforeSize(from, to, w), r.goesOn(from, w):
		return bySide
	case placeWords[it.s] && it.s != "well":
		return byPlace
	}
	return byNothing
}

// besideKind says that the words stand right beside the word for the kind, or have
// it in them: "stone barrel", "barrels: stone".
func (r *reader) besideKind(from, to int, w *setUpSaid) bool {
	kind := func(n int) bool {
		return n >= w.s.i && n < w.s.j && r.items[n].isAny(w.kind.generic) && r.items[n].kind == itWord
	}
	return kind(to) || kind(to+1) && r.items[to+1].gap == gapNone || kind(from-1) || kind(from-2) && r.items[from-1].s == "is"
}

// beforeSize says that the words begin a clause or a piece of a list and that their
// size follows: "stone 55 gal, well is 30".
func (r *reader) beforeSize(from, to int, w *setUpSaid) bool {
	if p := from - 1; p >= w.s.i && r.items[from].gap < gapAnd && !r.items[p].number() && r.items[p].kind != itDim && !r.items[p].is(sFiller) && !newWords[r.items[p].s] {
		return false
	}
	if p := from - 1; p >= w.s.i && r.items[from].gap < gapAnd && r.items[p].kind == itThing {
		return false
	}
	n := to + 1
	for n < w.s.j && n <= to+2 && (r.items[n].isAny(setOf(sIs, sHolds)) || r.items[n].s == "at" || r.items[n].s == "with" || r.items[n].s == "a") {
		n++
	}
	if n >= w.s.j {
		return from > w.s.i && (r.items[from-1].number() || r.items[from-1].kind == itDim)
	}
	x := &r.items[n]
	return x.number() || x.kind == itDim || x.kind == itFrac
}

// goesOn says that the name goes on a list of names: "red, yellow and white".
func (r *reader) goesOn(from int, w *setUpSaid) bool {
	n := len(w.names)
	return n > 0 && w.names[n-1].k == from-1 && r.items[from].gap >= gapAnd && r.items[from].gap < gapStop
}

// keepGiven drops words that nothing made a name, and of several for one size those
// that are weaker than one that the thing is called by.
func (w *setUpSaid) keepGiven() {
	kept := w.names[:0]
	for n, x := range w.names {
		if x.given == byNothing || x.given != byHerd && w.outdone(n) {
			continue
		}
		kept = append(kept, x)
	}
	w.names = kept
}

// outdone says that a thing with the size that name n belongs to is called by
// another name, or has one by its place that leaves no room for this.
func (w *setUpSaid) outdone(n int) bool {
	x := w.names[n]
	for m, y := range w.names {
		if m == n || !w.sameSize(x.k, y.k) {
			continue
		}
		if y.given == byCall && x.given < byCall || w.count <= 1 && x.given == byPlace && y.given > byPlace {
			return true
		}
	}
	return false
}

// sameSize says that no size stands between items a and b.
func (w *setUpSaid) sameSize(a, b int) bool {
	for _, z := range w.sizes {
		if z.k > min(a, b) && z.k < max(a, b) {
			return false
		}
	}
	return true
}
