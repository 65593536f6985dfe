package reading

import "troughbell/model"

// The smaller words of a departure: a price for each, an hour, a weight for each,
// the butcher who came for them.

// priceOfEach says that the money at item k was got for each pig: "275 dollars for
// each one", "300 apiece".
func (r *reader) priceOfEach(k int) bool {
	for n := max(k-2, r.sentenceStart(k)); n < len(r.items) && n <= k+3 && (n <= k || r.items[n].gap < gapStop); n++ {
		if it := &r.items[n]; it.is(sEach) || it.s == "each" || it.s == "for each" || it.s == "per pig" || it.s == "apiece" {
			return true
		}
	}
	return false
}

// soldEach makes the amount of a sale of several pigs what they brought together,
// where it was told for each.
func (r *reader) soldEach(s span, g *model.Gone, pigs int) {
	if g.Amount == nil || pigs < 2 {
		return
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.number() && !it.soft && it.v == *g.Amount && r.priceOfEach(k) {
			*g.Amount *= float64(pigs)
			return
		}
	}
}

// hangingAll gives the pigs and weights of a sentence that ends or begins with a
// word for hanging to it as a whole: "got the weights back, hazel 188 and clover
// 191 hanging".
func (r *reader) hangingAll() {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sHung) || it.pig >= 0 || it.quest || r.force[k] != 0 {
			continue
		}
		from, to := r.sentenceStart(k), r.sentenceEnd(k)
		s := span{fGone, from, to}
		if r.has(s, sIf) || r.has(s, sPlan) || r.has(s, sAskSure) || r.has(s, sFeeder) || r.has(s, sFence) || r.has(s, sWater) || r.has(s, sTape) {
			continue
		}
		first, last, pairs := -1, -1, 0
		for n := from; n+1 < to; n++ {
			if x, v := &r.items[n], &r.items[n+1]; x.pig >= 0 && (v.kind == itNum && !v.soft && v.v >= 20 || v.qty(mass)) {
				if first < 0 {
					first = n
				}
				last = n + 1
				pairs++
			}
		}
		if pairs > 1 {
			r.forceRange(min(first, k), max(last, k)+1, fGone)
		}
	}
}
