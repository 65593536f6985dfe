package reading

// A weight told again for another pig: "fern 84, juno ditto", "otis 39 girth, same
// for clover". And weights that are told twice or between two bounds.

// again is the measure that a word such as "ditto" at item k stands for, the last
// one said; false where no pig is named beside it or nothing was said before.
func (r *reader) again(k int, s span, ms []measure) (measure, bool) {
	if !r.items[k].is(sDitto) && !alsoWords[r.items[k].s] || len(ms) == 0 {
		return measure{}, false
	}
	m := ms[len(ms)-1]
	if !r.items[k].is(sDitto) && (m.same || !r.alsoNamed(m.at, k, s)) {
		return measure{}, false
	}
	named := false
	for n := m.at + 1; n < s.j && n <= k+3; n++ {
		it := &r.items[n]
		if it.number() && !it.soft && n > k {
			break
		}
		named = named || r.subjectItem(n, s)
	}
	m.at, m.claimed, m.same = k, false, true
	return m, named
}

// whoseAgain gives the measures told again their pigs: those named before the word
// for it, else those behind.
func (r *reader) whoseAgain(s span, ms []measure) {
	for k := 1; k < len(ms); k++ {
		if !ms[k].same {
			continue
		}
		hi := s.j
		if k+1 < len(ms) {
			hi = ms[k+1].at
		}
		if sel := r.selectPigs(ms[k-1].at+1, ms[k].at); sel.any {
			ms[k].pigs = sel
		} else if sel = r.selectPigs(ms[k].at+1, hi); sel.any {
			ms[k].pigs = sel
		}
	}
}

// between makes one estimate of two weights that bound it: "between 170 and 190".
func (r *reader) between(s span, ms []measure) []measure {
	if len(ms) != 2 || ms[1].at != ms[0].at+1 || ms[0].at == s.i || ms[0].v >= ms[1].v {
		return ms
	}
	if w := r.items[ms[0].at-1].s; w != "between" && w != "from" {
		return ms
	}
	ms[0].v = (ms[0].v + ms[1].v) / 2
	ms[0].approx = true
	if ms[0].unit == 0 {
		ms[0].unit, ms[0].role = ms[1].unit, ms[1].role
	}
	return ms[:1]
}

// withoutDifference drops a weight that only says what taking the crate off gives:
// "148 in the crate, crate 56, so 92". It gives the crate's place anew.
func withoutDifference(ms []measure, tare int) (kept []measure, at int) {
	kept = make([]measure, 0, len(ms))
	for k, m := range ms {
		told := false
		for j := 0; j < k && k != tare; j++ {
			if d := ms[j].v - ms[tare].v - m.v; j != tare && d < differenceSlack && d > -differenceSlack {
				told = true
			}
		}
		if k == tare {
			at = len(kept)
		}
		if !told {
			kept = append(kept, m)
		}
	}
	return kept, at
}

// differenceSlack is how far a difference told may lie from the one reckoned, in
// the unit it was told in: people round.
const differenceSlack = 1.01

// alsoWords tell a weight again by the way: "hazel 180, otis too", "and so is otis".
var alsoWords = setOfWords(split("too, as well, also, so is, so was, so did"))

// alsoNamed says that behind the number at item m a pig is named beside the word at
// item k and no number of its own: it has the one before.
func (r *reader) alsoNamed(m, k int, s span) bool {
	named := false
	for n := m + 1; n < s.j && (n <= k+2 || !named); n++ {
		it := &r.items[n]
		if it.number() && !it.soft || it.kind == itDim {
			return false
		}
		named = named || it.pig >= 0
	}
	return named
}
