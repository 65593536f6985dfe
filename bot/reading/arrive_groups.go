package reading

import "troughbell/model"

// headCount is a count of pigs that may begin a group.
type headCount struct {
	k, n  int
	sexed bool
}

// heads lists the counts of pigs in the span.
func (r *reader) heads(s span) []headCount {
	var out []headCount
	sexes := setOf(sBarrow, sGilt, sBoar, sSow)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.ord || it.v < 1 || it.v > 200 || it.v != float64(int(it.v)) || it.plus || it.minus {
			continue
		}
		for n := k + 1; n < s.j && n <= k+4; n++ {
			x := &r.items[n]
			if n == k+1 && x.kind == itDay && x.gap == gapNone && !it.soft && it.v <= 60 && len(r.c.Herd.Animals) == 0 { // "2 on april 1 and 3 on may 2"
				out = append(out, headCount{k, int(it.v), false})
				break
			}
			if x.gap > gapNone && n > k+1 || x.number() && !(x.kind == itQty && x.unit.dim() != head) {
				break
			}
			if x.isAny(sexes) || x.is(sPigs) || x.is(sYoung) && !x.is(sFiller) || (x.is(sArrive) || x.is(sMore)) && n == k+1 && !it.soft && x.s != "have" {
				out = append(out, headCount{k, int(it.v), x.isAny(sexes)})
				break
			}
			if x.gap >= gapComma {
				break
			}
		}
	}
	if len(out) == 0 { // "pigs: 4 at 30 kg", "there are four"
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			if it.kind == itNum && !it.soft && !it.ord && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)) {
				out = append(out, headCount{k, int(it.v), false})
				break
			}
		}
	}
	return out
}

// arrivalGroups cuts the span into groups: where each count has a weight, a day
// or a birth of its own, each is a group.
func (r *reader) arrivalGroups(s span) []span {
	hs := r.heads(s)
	if parts := r.comings(s, hs); len(parts) > 1 {
		return parts
	}
	if parts := r.ownParts(s, hs); len(parts) > 1 {
		return parts
	}
	if len(hs) < 2 {
		return []span{s}
	}
	// A count followed by its parts ("6 pigs, 3 barrows and 3 gilts") is one.
	var starts []int
	for n := 0; n < len(hs); n++ {
		sum, m := 0, n+1
		for m < len(hs) && hs[m].sexed && sum+hs[m].n <= hs[n].n {
			sum += hs[m].n
			m++
		}
		starts = append(starts, hs[n].k)
		if !hs[n].sexed && sum == hs[n].n && m > n+1 || !hs[n].sexed && m > n+1 && sum < hs[n].n {
			n = m - 1
		}
	}
	var out []span
	from := s.i
	// Each head's stretch must tell a weight or a day of its own.
	own := true
	for n, k := range starts {
		end := s.j
		if n+1 < len(starts) {
			end = starts[n+1]
		}
		own = own && r.ownFact(k, end)
	}
	if !own || len(starts) < 2 {
		return []span{s}
	}
	for n, k := range starts {
		end := s.j
		if n+1 < len(starts) {
			end = starts[n+1]
		}
		if n > 0 {
			from = k
		}
		out = append(out, span{s.frame, from, end})
	}
	return out
}

// ownParts cuts "7 pigs: four barrows came April 2 at 60 lb, three gilts April 30
// at 45 lb": a whole that is counted first and of which each part tells its own.
func (r *reader) ownParts(s span, hs []headCount) []span {
	if len(hs) < 3 || hs[0].sexed {
		return nil
	}
	sum := 0
	var out []span
	for n := 1; n < len(hs); n++ {
		end := s.j
		if n+1 < len(hs) {
			end = hs[n+1].k
		}
		sum += hs[n].n
		if !hs[n].sexed || !r.ownFact(hs[n].k, end) {
			return nil
		}
		out = append(out, span{s.frame, hs[n].k, end})
	}
	if sum != hs[0].n {
		return nil
	}
	r.items[hs[0].k].used = true
	out[0].i = hs[0].k + 1
	return out
}

// onlyWhole drops a count of the whole herd that stands before the groups it is
// made of: "I keep 7 pigs. Four barrows came ..., three gilts came ...".
func (r *reader) onlyWhole() {
	first, sum, groups := -1, 0, 0
	for k := range r.out {
		f, ok := r.out[k].Act.(Fact)
		if !ok {
			continue
		}
		a, ok := f.Fact.(model.Arrive)
		if !ok {
			continue
		}
		if first < 0 {
			if len(a.Animals) > 0 || a.WeightKg != nil || a.Born != nil || r.out[k].Dated {
				return
			}
			first, sum = k, a.Count
			continue
		}
		sum -= a.Count
		groups++
	}
	if groups > 1 && sum == 0 {
		r.out = append(r.out[:first], r.out[first+1:]...)
	}
}

// comings cuts the span at the sentences that tell of another coming: each has
// its own word for it, and its own count or names.
func (r *reader) comings(s span, hs []headCount) []span {
	var out []span
	from, told := s.i, false
	for k := s.i; k < s.j; {
		end := min(r.sentenceEnd(k), s.j)
		here := false
		for n := k; n < end && !here; n++ {
			here = r.items[n].is(sArrive) && !r.items[n].is(sNamed)
		}
		if here {
			counted := r.has(span{s.frame, k, end}, sMore) || r.quoteHas(span{s.frame, k, end}, "another", "other")
			for _, h := range hs {
				counted = counted || h.k >= k && h.k < end
			}
			if told && counted {
				out = append(out, span{s.frame, from, k})
				from = k
			}
			told = true
		}
		k = end
	}
	return append(out, span{s.frame, from, s.j})
}

// ownFact says that items[i:j] tell a weight, an age or a birth.
func (r *reader) ownFact(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.qty(mass) || it.is(sBorn) || it.kind == itNum && k > i && !it.soft && it.v >= 12 && (r.items[k-1].s == "at" || r.items[k-1].is(sAbout) || r.items[k-1].is(sWeigh)) {
			return true
		}
	}
	return false
}

func (r *reader) ofWhole(k int) bool { return k > 0 && r.items[k-1].s == "of" }
