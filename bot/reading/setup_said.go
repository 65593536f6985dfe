package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// sizedAt is a size or a number of nipples that a set-up tells, by its item.
type sizedAt struct {
	newThing
	k int
}

// namedAt is a name, or a word for the kind, that a set-up says: items[from:k+1].
type namedAt struct {
	name  string
	k     int
	from  int
	given givenBy
}

// setUpSaid is what a span that sets up things of one kind says of them.
type setUpSaid struct {
	s       span
	kind    thingKind
	count   int
	word    string // the person's word for one of the kind
	each    bool
	sizes   []sizedAt
	names   []namedAt
	nipples []sizedAt
	generic []namedAt // the words for the kind
}

// setUpSaid gathers the counts, names, sizes and nipples of a span.
func (r *reader) setUpSaid(s span, kind thingKind) *setUpSaid {
	w := &setUpSaid{s: s, kind: kind, each: r.has(s, sEach) || r.has(s, sBoth)}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case kind.names(it) >= 0 && it.pig < 0:
			w.names = append(w.names, namedAt{kind.old(r, kind.names(it)), k, k, byHerd})
			it.used = true
		case r.nipplesAt(k, w):
			w.nipples = append(w.nipples, sizedAt{newThing{nipples: model.Int(int(it.v + 0.5))}, k})
			it.used = true
		case it.isAny(kind.generic) && it.kind == itWord && !r.nameBefore(k, s, kind):
			r.kindSaid(k, w)
		case it.used:
		case r.letterAt(k, s, kind) || kind.key == model.SetPen && r.numberedAt(k, s):
			r.labelSaid(k, w)
		case it.kind == itNum && !it.soft && !it.ord && it.v <= 12 && (r.kindSoon(k, s, kind) || w.count == 0 && r.countOfSized(k, s, kind)):
			w.count += int(it.v)
			it.used = true
		case r.sizeSaid(k, w):
		case r.mayName(k, w):
			k = r.nameSaid(k, w)
		}
		if it.unit == unitNipple && it.kind == itWord && len(w.nipples) == 0 && k > s.i && r.items[k-1].s == "a" {
			w.nipples = append(w.nipples, sizedAt{newThing{nipples: model.Int(1)}, k})
		}
	}
	if w.count == 0 && r.quoteHas(s, "pair", "pair of", "the pair") {
		w.count = 2
	}
	if n := len(w.generic); w.count > 1 && len(w.names) == 1 && n > 0 && w.generic[n-1].k == w.names[0].k+1 && len(w.sizes) < 2 {
		w.names = nil // "two blue drums": what they look like, not a name
	}
	r.dropLooks(w)
	w.keepGiven()
	return w
}

// dropLooks drops what several things together look like, which is no name of one: "two
// blue barrels 55 gal each, call em left and right".
func (r *reader) dropLooks(w *setUpSaid) {
	looks := func(x namedAt) bool {
		last, p := &r.items[x.k], x.from-1
		return x.from < x.k && x.given != byHerd && x.given != byCall && last.isAny(w.kind.generic) && strings.HasSuffix(last.s, "s") &&
			p >= w.s.i && r.items[p].kind == itNum && r.items[p].v > 1 && r.items[x.from].gap == gapNone && !r.items[x.from].capital
	}
	if !slices.ContainsFunc(w.names, func(x namedAt) bool { return x.given != byCall && !looks(x) }) {
		w.names = slices.DeleteFunc(w.names, looks)
	}
}

// kindSaid takes the word for the kind at item k, with the count before it and
// the numbers behind it that are names: "pens 1, 2, 3 and 4", "barrel 2".
func (r *reader) kindSaid(k int, w *setUpSaid) {
	it := &r.items[k]
	it.used = true
	w.generic = append(w.generic, namedAt{singular(it.s), k, k, bySide})
	own := w.kind.key != model.SetFeeder || it.is(sFeeder) // "feeder is a 55 gal drum"
	if w.word == "" || own && genericRank(it.s) > genericRank(w.word) {
		w.word = singular(it.s)
	}
	if k > w.s.i {
		if p := &r.items[k-1]; p.kind == itNum && !p.ord && p.v <= 12 && !p.used {
			w.count += int(p.v)
			p.used = true
		} else if p.s == "a pair of" || p.is(sBoth) {
			w.count += 2
		}
	}
	for _, x := range r.numberNames(k, w.s, w.kind) {
		w.names = append(w.names, namedAt{w.word + " " + strings.TrimSpace(r.text[r.items[x].from:r.items[x].to]), x, x, bySide})
		r.items[x].used = true
	}
}

// labelSaid takes the letter or number at item k that is a thing's name, P1 too.
func (r *reader) labelSaid(k int, w *setUpSaid) {
	it := &r.items[k]
	name := strings.TrimSpace(r.text[it.from:it.to])
	if k+1 < w.s.j && r.items[k+1].kind == itNum && r.items[k+1].from == it.to {
		r.items[k+1].used = true
		name = strings.TrimSpace(r.text[it.from:r.items[k+1].to])
	} else if w.word != "" {
		name = w.word + " " + name
	}
	w.names = append(w.names, namedAt{name, k, k, bySide})
	it.used = true
}

// sizeSaid takes item k for a size, if it is one of the kind.
func (r *reader) sizeSaid(k int, w *setUpSaid) bool {
	it := &r.items[k]
	if it.qty(vessel) && it.unit != unitBale && w.kind.key == model.SetFeeder { // "6 sacks of 50 lb"
		if n := r.massSoon(k, w.s); n > k {
			r.items[n].used, it.used = true, true
			w.sizes = append(w.sizes, sizedAt{newThing{kg: model.Float(it.v * r.items[n].si())}, k})
			return true
		}
	}
	t, ok := w.kind.size(r, it)
	if ok {
		w.sizes = append(w.sizes, sizedAt{t, k})
		it.used = true
	}
	return ok
}

// nameSaid takes the name that begins at item k and gives its last item.
func (r *reader) nameSaid(k int, w *setUpSaid) int {
	to := r.nameEnd(k, w)
	for x := k; x <= to; x++ {
		r.items[x].used = true
	}
	name := strings.TrimSpace(r.text[r.items[k].from:r.items[to].to])
	if g := singular(r.items[to].s); r.items[to].isAny(w.kind.generic) && to > k && !r.items[to].capital {
		if strings.HasSuffix(r.items[to].s, "s") { // "north and south hoppers"
			name = strings.TrimSpace(r.text[r.items[k].from:r.items[to-1].to])
			w.word = g
		} else if w.word == "" {
			w.word = g
		}
	}
	if !r.badName(name) {
		w.names = append(w.names, namedAt{name, to, k, r.givenBy(k, to, w)})
	}
	return to
}

// nameEnd is the last item of the name that begins at item k.
func (r *reader) nameEnd(k int, w *setUpSaid) int {
	to := k
	for to+1 < w.s.j && r.items[to+1].gap == gapNone && (r.mayName(to+1, w) || r.items[to+1].isAny(w.kind.generic) && r.items[to+1].kind == itWord) && !r.items[to+1].qty(nippleCount) {
		to++
		if r.items[to].isAny(w.kind.generic) && !r.items[to].capital {
			break
		}
	}
	return to
}
