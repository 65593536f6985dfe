package reading

// countedAt is the count of pigs that item k tells, "two", "the two"; 0 where it is none.
func (r *reader) countedAt(k int) int {
	if k < 0 || k+1 >= len(r.items) || r.items[k+1].gap != gapNone {
		return 0
	}
	it := &r.items[k]
	switch {
	case it.is(sBoth):
		return 2
	case it.kind == itNum && !it.soft && !it.ord && !it.rng && it.pig < 0 && it.v >= 1 && it.v <= mostPigs && it.v == float64(int(it.v)):
		return int(it.v)
	}
	return 0
}

// someOf is how many pigs of a kind are spoken of where there are more of the kind:
// "two of the gilts" where five live; 0 where all are, or no kind is counted.
func (r *reader) someOf(i, j int) int {
	for k := i; k < j; k++ {
		count := r.countedAt(k)
		if count == 0 {
			continue
		}
		n := k + 1
		for n < j && n < k+4 && r.items[n].gap == gapNone && (r.items[n].s == "of" || r.items[n].s == "the" || r.items[n].s == "of the" || r.items[n].s == "my" || r.items[n].s == "our") {
			n++
		}
		if n >= j || r.items[n].gap != gapNone || r.items[n].pig >= 0 || !r.items[n].isAny(setOf(sBarrow, sGilt, sBoar, sSow)) {
			continue
		}
		size := 0
		r.addSex(&r.items[n], func(int16) { size++ })
		if size > count {
			r.items[k].used, r.items[n].used = true, true
			return count
		}
	}
	return 0
}

// countsUsed takes the counts that stand before the words for the pigs and say how
// many they are: "the four big ones".
func (r *reader) countsUsed(i, j int, s *selection) {
	n := len(s.pigs)
	if s.all && n == 0 {
		n = r.alive
	}
	for k := max(i-1, 0); k < j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord || it.v != float64(n) || n == 0 {
			continue
		}
		for m := k + 1; m < j && m <= k+3 && r.items[m].gap == gapNone; m++ {
			if x := &r.items[m]; x.isAny(whoWords) || x.group >= 0 || x.s == "of them" {
				it.used = true
				break
			} else if !x.is(sFiller) && x.s != "of" {
				break
			}
		}
	}
}
