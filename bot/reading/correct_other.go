package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// otherThings lets "the other one" stand for the other of two feeders, barrels or pens,
// where the message right before was of one of them: "wrong drum, it was the other one",
// "filled the other one too".
func (r *reader) otherThings() {
	if len(r.c.Before) == 0 || r.part || !strings.Contains(r.plain, "other") || r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return
	}
	other, ok := r.otherThanTold()
	if !ok {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0 || it.kind == itThing:
			return
		case otherWords[it.s] && r.otherStands(k, &other):
			it.kind, it.feeder, it.barrel, it.pen, it.known, it.soft = itThing, other.feeder, other.barrel, other.pen, true, false
			it.sense = senses{}
			for n := k + 1; n < len(r.items) && n <= k+2 && r.items[n].gap == gapNone; n++ {
				r.items[n].lead = gapNone // no small word leads up to it any more
			}
			if k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].soft || r.items[k+1].isAny(setOf(sFeeder, sBarrel, sPen))) {
				r.blank(k + 1)
			}
			return
		}
	}
}

var otherWords = setOfWords(split("other, the other, the other one, other one"))

// otherStands says that the "other" at item k speaks of a thing of the kind of the given
// one, and not of another day or another pig.
func (r *reader) otherStands(k int, of *item) bool {
	if k > 0 && (r.items[k-1].isAny(setOf(sEach, sPigs)) || r.items[k-1].s == "each" || r.items[k-1].s == "any" || r.items[k-1].s == "no" || r.items[k-1].s == "some") && r.items[k].gap == gapNone {
		return false
	}
	if k+1 == len(r.items) || r.items[k+1].gap >= gapAnd {
		return true
	}
	next := &r.items[k+1]
	switch {
	case next.soft, next.isAny(setOf(sFull, sEmpty)), next.kind == itFrac, next.s == "is", next.s == "was", next.s == "too":
		return true
	case of.feeder >= 0:
		return next.is(sFeeder)
	case of.barrel >= 0:
		return next.isAny(setOf(sBarrel))
	}
	return next.is(sPen)
}

// otherThanTold is the other of two things one of which the message before was of.
func (r *reader) otherThanTold() (item, bool) {
	it := item{feeder: -1, barrel: -1, pen: -1}
	h := r.c.Herd
	for n := range r.c.Before {
		if r.c.Before[n].Text != r.c.Before[0].Text {
			break
		}
		f, ok := r.c.Before[n].Entry.Act.(Fact)
		if !ok {
			continue
		}
		if it.feeder >= 0 || it.barrel >= 0 || it.pen >= 0 { // two were told
			return it, false
		}
		switch v := f.Fact.(type) {
		case model.Water:
			it.barrel = otherOfTwo(h.Barrels, func(b *model.Barrel) bool { return b.Name == v.Barrel })
		case model.Refill:
			it.feeder = otherOfTwo(h.Feeders, func(f *model.Feeder) bool { return f.Name == v.Feeder })
		case model.FeedLevel:
			it.feeder = otherOfTwo(h.Feeders, func(f *model.Feeder) bool { return f.Name == v.Feeder })
		case model.Move:
			it.pen = otherOfTwo(h.Pens, func(p *model.Pen) bool { return p.Name == v.Pen })
		default:
			return it, false
		}
	}
	return it, it.feeder >= 0 || it.barrel >= 0 || it.pen >= 0
}

// otherOfTwo is the index of the other of two things, -1 where there are not two.
func otherOfTwo[T any](things []T, is func(T) bool) int8 {
	at := slices.IndexFunc(things, is)
	if len(things) != 2 || at < 0 {
		return -1
	}
	return int8(1 - at)
}
