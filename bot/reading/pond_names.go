package reading

import "strings"

// Where a thing stands or what it is made of tells it from another of its kind: the pond
// barrel and the shop barrel, the wood feeder and the steel one.

// pondNames takes a pond that a thing is called by for its name and no wallow: "pond
// barrel 55 gal", "two barrels: shop 55 gal, pond 30 gal", "pens: pond 60x80".
func (r *reader) pondNames() {
	h := r.c.Herd
	for k := range r.items {
		it := &r.items[k]
		if it.pig >= 0 || !it.is(sWallow) || it.kind != itWord || strings.Contains(it.s, " ") || it.s != "pond" && it.s != "pool" && it.s != "puddle" {
			continue
		}
		vessel, pen := barrelKind.generic, penKind.generic
		if k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].pig < 0 && r.items[k+1].isAny(setOf(sBarrel, sFeeder, sPen)) && !r.items[k+1].isAny(setOf(sFiller, sWallow)) {
			it.sense, it.known = senses{}, false
			continue
		}
		head := span{0, 0, k}
		if k+1 < len(r.items) && r.items[k+1].s == "one" && len(h.Barrels) == 0 && r.hasAny(head, vessel) { // "two barrels, the shop one and the pond one"
			it.sense, it.known = senses{}, false
			continue
		}
		if it.gap < gapAnd || k+1 >= len(r.items) || r.items[k+1].gap != gapNone {
			continue
		}
		switch n := &r.items[k+1]; {
		case len(h.Barrels) == 0 && n.qty(volume) && r.hasAny(head, vessel), len(h.Pens) == 0 && (n.kind == itDim || n.qty(area)) && r.hasAny(head, pen):
			it.sense, it.known = senses{}, false
		}
	}
}

// hasAny says that an item of the span has one of the senses.
func (r *reader) hasAny(s span, of senses) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].pig < 0 && r.items[k].isAny(of) {
			return true
		}
	}
	return false
}

// tellsApart says that what item k is made of, or the building it stands at, is a
// thing's name: its sentence tells the sizes of several.
func (r *reader) tellsApart(k int) bool {
	sizes := 0
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.qty(mass) || it.qty(volume) || it.qty(area) || it.kind == itDim || it.kind == itNum && !it.soft && it.v >= 15 {
			sizes++
		}
	}
	return sizes > 1
}

// apartWords are a thing's name only where it must be told from another.
var apartWords = listed("plastic, wooden, metal, steel, tin, galvanized, aluminum, rubber, poly, shop, store, iron, concrete, cement")
