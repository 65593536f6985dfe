package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// A thing that joins a herd that has pigs already: "put a second feeder by the gate,
// holds 300 lb, call it Gate". That it is new is said by a word for it, or by one for
// getting it; that it is a thing and no filling of one, by what such things have: a
// name, nipples, a size that it holds.

// broughtBy tell that a thing came to the herd.
var broughtBy = setOfWords(split(`bought, i bought, we bought, just bought, got, we got, i got, just got, have, we have, i have, now have, there, there is, there's, we've got, i've got, picked up, built, we built, i built, made, installed, set up, put up, hung, mounted, fenced, fenced off,
	add, please add, added, i added, we added, just added, put, i put, we put, put in, put out, bring in, brought in, brought, rigged up, hooked up, welded, found, borrowed, fixed up, plumbed in, set out, placed, may, started using, using`))

// newnessWords tell that a thing is one more than there were.
var newnessWords = setOfWords(split(`new, brand new, brand-new, another, another one, a new, a second, a third, a fourth, second, third, fourth, fifth, sixth, extra, additional, further, one more, 2nd, 3rd, 4th, 5th, bagong, spare`))

// capacityWords tell what a thing holds, besides those that tell nothing else.
var capacityWords = setOfWords(split(`takes, it takes, will take, can take, takes about, fits, it fits, capacity, good for, has room for, with room for, room for, size`))

// oneWords count one nipple.
var oneWords = setOfWords(split(`a, one, single, a single`))

// pouringInto are words of filling that a thing to be set up does not stand behind.
var pouringInto = setOf(sFill, sWatered, sTook, sLeft, sEmpty)

// addedThing is a thing that a stretch of the text adds to the herd.
type addedThing struct {
	newThing
	s    span
	kind thingKind
	word int // the item that says what kind of thing it is
}

// forceAdded settles the clauses that add a thing to a running herd.
func (r *reader) forceAdded() {
	if r.alive == 0 {
		return
	}
	for k := range r.items {
		if r.force[k] != 0 || addable(&r.items[k]) == sNone {
			continue
		}
		if a, ok := r.addedAt(k); ok {
			f := fSetFeeder
			switch a.kind.key {
			case model.SetBarrel:
				f = fSetBarrel
			case model.SetPen:
				f = fSetPen
			}
			r.forceRange(a.s.i, a.s.j, f)
			for n := a.s.i + 1; n < a.s.j; n++ {
				r.items[n].gap = min(r.items[n].gap, gapComma) // a sentence that names it is part of the telling
			}
		}
	}
}

// fillAdded records the thing that a span adds, if it adds one.
func (r *reader) fillAdded(s span) bool {
	if r.alive == 0 {
		return false
	}
	for k := s.i; k < s.j; k++ {
		if addable(&r.items[k]) == sNone {
			continue
		}
		a, ok := r.addedAt(k)
		if !ok {
			continue
		}
		if a.name == "" {
			a.name = r.nextName(a)
		}
		r.useAll(s)
		if n := r.firstQty(s, money); n >= 0 {
			r.emit(Fact{model.Spend{Amount: r.items[n].v, Currency: r.items[n].unit.name(), What: singular(r.items[k].s)}}, s)
		}
		r.set(s, model.Setting{Key: a.kind.key, Thing: &model.Thing{Name: a.name, CapacityKg: a.kg, CapacityL: a.l, AreaM2: a.m2, Nipples: a.nipples}})
		return true
	}
	return false
}

// addableSenses are senses of the words that speak of such things, "new pen" too.
var addableSenses = setOf(sFeeder, sBarrel, sPen, sWater, sMove)

// addable is the kind of thing that one word, in the singular, speaks of: sFeeder,
// sBarrel, sPen, or sNone.
func addable(it *item) sense {
	if it.kind != itThing && !it.isAny(addableSenses) || it.kind != itWord && it.kind != itThing || it.pig >= 0 {
		return sNone
	}
	last := lastWord(it.s)
	switch kind := genericThing[last]; {
	case kind == sFeeder, kind == sBarrel, kind == sPen:
		return kind
	case kind != sNone, it.kind == itThing, strings.HasSuffix(last, "s"):
		return sNone
	}
	switch {
	case it.is(sFeeder):
		return sFeeder
	case it.is(sBarrel):
		return sBarrel
	case it.is(sPen):
		return sPen
	}
	return sNone
}

// addedAt reads the thing that the word at item k adds.
func (r *reader) addedAt(k int) (addedThing, bool) {
	a := addedThing{word: k}
	it := &r.items[k]
	what := addable(it)
	from, isNew, got := r.addedFrom(k)
	if !isNew && !got || k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].s == "of" {
		return a, false
	}
	for n := r.sentenceStart(k); n < from; n++ {
		if r.notAdded(n) {
			return a, false
		}
	}
	a.s = span{fSetFeeder, from, k + 1}
	holds, called := false, false
	a.kind = feederKind
	switch {
	case what == sPen:
		a.kind = penKind
	case what == sBarrel:
		a.kind = barrelKind
	}
	if len(r.namesOf(a.kind)) == 0 {
		return a, false
	}
	for n := from; n < len(r.items); n++ {
		x := &r.items[n]
		if n > k && x.gap >= gapComma && !r.moreOfAdded(n, &a) {
			break
		}
		a.s.j = n + 1
		takes := n > k && x.kind == itWord && (capacityWords[x.s] || x.is(sHolds))
		if r.notAdded(n) || n > k && !takes && (x.isAny(pouringInto) || x.kind == itFrac && n > k+1) {
			return a, false
		}
		switch {
		case n == k:
		case n > k && x.gap >= gapAnd && r.anotherKind(n, what):
			return a, false // a set-up of several things
		case takes:
			holds = true
		case x.unit == unitNipple && x.kind == itWord && n > k && oneWords[r.items[n-1].s]:
			a.nipples = model.Int(1)
		case r.nipplesHere(n):
			a.nipples = model.Int(int(x.v + 0.5))
		case n > k && x.is(sNamed) && a.name == "":
			called = true
			to := 0
			if a.name, to = r.addedName(n+1, &a); to > n {
				n = to - 1
				a.s.j = to
			}
		case x.qty(volume) && what != sPen:
			a.l, a.said = model.Float(x.si()), true
		case x.qty(mass) && what != sPen:
			a.kg, a.said = model.Float(x.si()), true
			if what != sFeeder {
				a.kind = feederKind
			}
		case x.qty(vessel) && what == sFeeder && holds:
			if size, ok := r.sizeOf(x.unit); ok {
				a.kg, a.said = model.Float(x.v*size), true
			}
		case what == sPen && (x.kind == itDim || x.qty(area)):
			if m2, ok := r.areaOf(x); ok {
				a.m2, a.said = model.Float(m2), true
			}
		case x.kind == itNum && !x.soft && !x.ord && n > k && holds && !a.said && what != sPen:
			if a.kind.key == model.SetFeeder {
				a.kg = model.Float(r.massUnit().si(x.v))
			} else {
				a.l = model.Float(r.volumeUnit().si(x.v))
			}
			a.said = true
		}
	}
	if what == sFeeder && a.nipples != nil && a.kg == nil && a.l != nil { // a trough with nipples is for water
		a.kind = barrelKind
	}
	switch {
	case called && a.name == "", a.kind.key == model.SetFeeder && a.kg == nil && a.l == nil && !called, a.kind.key == model.SetBarrel && a.kg != nil:
		return a, false
	case called, a.nipples != nil && a.said, holds && a.said:
	case isNew && a.said && (got || from == r.sentenceStart(k) || a.kind.key == model.SetPen):
	default:
		return a, false
	}
	if a.kind.key == model.SetPen && (!a.said && !isNew || r.has(a.s, sInUse)) {
		return a, false
	}
	if a.name == "" {
		a.name = r.nameOfAdded(&a)
	}
	return a, true
}

// anotherKind says that the stretch that item n begins speaks of a thing of another kind.
func (r *reader) anotherKind(n int, what sense) bool {
	for m := n; m < len(r.items) && (m == n || r.items[m].gap < gapAnd); m++ {
		if kind := addable(&r.items[m]); kind != sNone && kind != what {
			return true
		}
	}
	return false
}

// addedFrom is where the words begin that add the thing at item k, whether they say
// that it is new and whether they tell that it came.
func (r *reader) addedFrom(k int) (from int, isNew, got bool) {
	from, isNew = k, strings.HasPrefix(r.items[k].s, "new ")
	n := k - 1
	for ; n >= 0 && n >= k-4 && r.items[n+1].gap == gapNone; n-- {
		x := &r.items[n]
		switch {
		case newnessWords[x.s], x.kind == itNum && x.ord:
			isNew = true
		case x.s == "the", x.s == "my", x.s == "our", x.s == "that", x.s == "this", x.s == "each", x.s == "every", x.s == "of", x.s == "to", x.s == "in", x.s == "into":
			return from, false, false
		case x.s == "more" && n > 0 && r.items[n-1].s == "one":
			isNew = true
			n--
		case broughtBy[x.s]:
			got = n < k-1 || x.s == "add"
			return r.subjectOf(n), isNew, got
		case isNew && (x.s == "a" || x.s == "an" || x.s == "one" || x.s == "now" || x.s == "also" || x.s == "is" || x.s == "is a"):
		case x.kind == itWord && (x.s == "a" || x.s == "an"), x.kind == itNum && x.soft:
			if n > 0 && r.items[n].gap == gapNone && (broughtBy[r.items[n-1].s] || n > 1 && r.items[n-1].is(sFiller) && broughtBy[r.items[n-2].s]) {
				if !broughtBy[r.items[n-1].s] {
					n--
				}
				return r.subjectOf(n - 1), isNew, true
			}
			return from, isNew, false
		case !isNew && (x.qty(volume) || x.qty(mass)): // "a 40 gallon barrel"
		case !isNew && x.kind == itWord && !x.isAny(setOf(sFill, sPour, sTook, sLeft, sEmpty, sFull)) && x.pig < 0:
		default:
			return from, isNew, false
		}
		from = n
	}
	if n >= 0 && r.items[n+1].gap == gapNone && isNew && broughtBy[r.items[n].s] {
		return r.subjectOf(n), true, true
	}
	return from, isNew, false
}

// subjectOf takes the small words before the verb at item n to it.
func (r *reader) subjectOf(n int) int {
	for n > 0 && r.items[n].gap == gapNone && r.items[n-1].is(sFiller) {
		n--
	}
	return n
}

// notAdded says that the word at item n makes a plan, a rumour or a question of what
// stands with it.
func (r *reader) notAdded(n int) bool {
	x := &r.items[n]
	if x.quest || x.kind == itDay && (x.day.form == dayOffset && x.day.a > 0 || x.day.mod > 0) {
		return true
	}
	return x.isAny(setOf(sPlan, sIf, sHearsay, sForeign, sNot)) && x.pig < 0 && !x.isAny(setOf(sHolds, sTook, sWell))
}

// moreOfAdded says that the clause that item n begins goes on about the added thing: it
// holds its size, its nipples, its name or its place, and nothing else.
func (r *reader) moreOfAdded(n int, a *addedThing) bool {
	end := r.clauseEnd(n)
	if r.items[n].gap >= gapStop && !r.items[n].isAny(setOf(sNamed, sHolds)) && !(n+1 < end && r.items[n].is(sFiller) && r.items[n+1].isAny(setOf(sNamed, sHolds))) && !strings.HasPrefix(r.items[n].s, "name") {
		return false
	}
	if r.has(span{0, n, end}, sNamed) {
		return true
	}
	for m := n; m < end; m++ {
		x := &r.items[m]
		switch {
		case x.is(sHolds), capacityWords[x.s], oneWords[x.s], x.is(sFiller), r.nipplesHere(m), x.unit == unitNipple, x.qty(volume), x.qty(mass), x.kind == itDim, x.qty(area):
		case x.qty(vessel) && m > n && r.items[m-1].is(sHolds):
		case x.kind == itNum && !x.ord && m > n && r.items[m-1].is(sHolds):
		case x.kind == itDay && x.day.form == dayOffset && x.day.a <= 0:
		case end == n+1 && r.nameLike(m):
		case x.isAny(a.kind.generic) && m == end-1 && m > n && r.nameLike(m-1):
		case end == n+2 && m == n && r.nameLike(m) && r.items[m+1].isAny(a.kind.generic):
		default:
			return false
		}
	}
	return true
}

// nipplesHere says that item n tells how many nipples a thing has.
func (r *reader) nipplesHere(n int) bool {
	it := &r.items[n]
	return it.qty(nippleCount) || it.kind == itNum && n+1 < len(r.items) && r.items[n+1].unit == unitNipple && r.items[n+1].kind == itWord
}

// addedName is the name that begins at item n, behind a word for calling, and where it
// ends.
func (r *reader) addedName(n int, a *addedThing) (string, int) {
	for n < len(r.items) && r.items[n].gap == gapNone && (r.items[n].is(sFiller) || r.items[n].is(sPronoun)) && !r.items[n].capital {
		n++
	}
	to := n
	for to < len(r.items) && to < n+3 && (to == n && r.items[to].gap <= gapComma || r.items[to].gap == gapNone) {
		x := &r.items[to]
		if x.kind == itQty || x.kind == itDim || x.isAny(setOf(sHolds, sNamed)) || to > n && (x.is(sFiller) || x.kind == itNum && x.v > 30) {
			break
		}
		to++
	}
	if to == n {
		return "", n
	}
	return strings.TrimSpace(r.text[r.items[n].from:r.items[to-1].to]), to
}

// nameOfAdded is the name of a thing that no word for calling gives one: a clause of
// its own, the place where it is, its colour.
func (r *reader) nameOfAdded(a *addedThing) string {
	for n := a.word + 1; n < a.s.j; n++ {
		x := &r.items[n]
		end := min(r.clauseEnd(n), a.s.j)
		sized := n+1 < end && (r.items[n+1].number() || r.items[n+1].kind == itDim)
		beside := n == a.word+1 && x.gap == gapNone && (x.capital || (!x.known || placeWords[x.s]) && (sized || n+1 == end))
		if x.gap < gapComma && !beside || !r.nameLike(n) || x.number() {
			continue
		}
		if n+1 == end || n+2 == end && r.items[n+1].isAny(a.kind.generic) || sized || beside {
			to := n
			if n+2 == end && r.items[n+1].isAny(a.kind.generic) {
				to++
			}
			if name := r.freeName(n, to, a); name != "" {
				return name
			}
		}
	}
	for n := a.word + 1; n+1 < a.s.j; n++ {
		if x := &r.items[n]; nearWords[x.s] {
			for m := n + 1; m < a.s.j && m <= n+3 && r.items[m].gap == gapNone; m++ {
				if y := &r.items[m]; (placeWords[y.s] || y.capital || !y.known) && y.kind == itWord && y.s != "the" {
					return r.freeName(m, m, a)
				}
			}
		}
	}
	if n := a.word - 1; n >= a.s.i && r.items[a.word].gap == gapNone && placeWords[r.items[n].s] && !newnessWords[r.items[n].s] {
		return r.freeName(n, n, a)
	}
	return ""
}

// nearWords stand before the place of a thing.
var nearWords = setOfWords(split(`by, near, behind, beside, at, in, under, next to, along, by the, at the, in the, near the, on the, on`))

// freeName is what items[n:to+1] say, unless a thing of the kind is called so already.
func (r *reader) freeName(n, to int, a *addedThing) string {
	name := strings.TrimSpace(r.text[r.items[n].from:r.items[to].to])
	if r.badName(name) {
		return ""
	}
	if called(r.namesOf(a.kind), name) {
		return ""
	}
	return name
}

// namesOf are the names of the herd's things of a kind.
func (r *reader) namesOf(kind thingKind) []string {
	var out []string
	switch kind.key {
	case model.SetFeeder:
		for _, f := range r.c.Herd.Feeders {
			out = append(out, f.Name)
		}
	case model.SetBarrel:
		for _, b := range r.c.Herd.Barrels {
			out = append(out, b.Name)
		}
	case model.SetPen:
		for _, p := range r.c.Herd.Pens {
			out = append(out, p.Name)
		}
	}
	return out
}

// nextName is the person's word for a thing without a name, numbered behind those that
// there are.
func (r *reader) nextName(a addedThing) string {
	word := singular(r.items[a.word].s)
	have := r.namesOf(a.kind) // there is one at least, else nothing is added
	for n := len(have) + 1; ; n++ {
		if name := word + " " + itoa(n); !called(have, name) {
			return name
		}
	}
}

// called says that one of the names is this one, but for capitals.
func called(names []string, name string) bool {
	return slices.ContainsFunc(names, func(n string) bool { return strings.EqualFold(n, name) })
}
