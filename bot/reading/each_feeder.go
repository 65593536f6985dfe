package reading

// eachFeeder counts one of a vessel that is named without a number and is for each feeder or
// barrel: "bucket each hopper", "bag per hopper".
func (r *reader) eachFeeder() {
	for k := 0; k+2 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.unit.dim() != vessel || it.unit == unitBale || it.unit == unitBatch || it.quest || k > 0 && it.gap < gapAnd || it.feeder >= 0 || it.barrel >= 0 {
			continue
		}
		n := k + 1
		if w := r.items[n].s; w == "in" || w == "into" || w == "to" || w == "for" {
			n++
		}
		if n+1 >= len(r.items) || r.items[n].gap != gapNone || !r.items[n].is(sEach) && !r.items[n].is(sPer) && r.items[n].s != "per" {
			continue
		}
		x := &r.items[n+1]
		if x.gap != gapNone || x.kind != itWord || !x.is(sFeeder) {
			continue
		}
		it.kind, it.v, it.soft = itQty, 1, false
		r.items[n].sense.add(sEach)
		r.items[n].s = "each"
	}
}

// wentToWallow takes the wallow for the place that pigs went to: "three of them went to the
// wallow".
func (r *reader) wentToWallow() {
	for k := 2; k < len(r.items); k++ {
		it := &r.items[k]
		if !it.is(sWallow) || it.kind != itWord || it.quest {
			continue
		}
		i, j := r.stretch(k)
		s := span{fWallow, i, j}
		if r.has(s, sFill) || r.has(s, sHose) || r.has(s, sPour) || r.has(s, sWater) || r.firstQty(s, volume) >= 0 || r.firstQty(s, hours) >= 0 {
			continue
		}
		went := false
		for n := max(i+1, k-4); n < k; n++ {
			went = went || goings[firstWord(r.items[n].s)] && (r.countGoes(n) || r.pigGoes(n))
		}
		if !went {
			continue
		}
		for n := i; n < j; n++ {
			if r.items[n].pig < 0 {
				r.blank(n)
			}
		}
	}
}

// tapeRound says that the number at token i is the pig that the tape was put round: "put the
// tape round 206".
func (r *reader) tapeRound(i int) bool {
	if i < 2 || r.toks[i-1].s != "round" && r.toks[i-1].s != "around" || r.toks[i].v < bigTag {
		return false
	}
	for k := i - 2; k >= 0 && k >= i-3; k-- {
		if r.toks[k].s == "tape" {
			return true
		}
	}
	return false
}
