package reading

import "troughbell/model"

// sickCount is how many pigs of a herd without names are told to be unwell by the
// sign at item first: "one is coughing", "2 pigs limp"; 0 if that is not said, which
// means all of them.
func (r *reader) sickCount(s span, first int) int {
	if r.anyNamed() {
		return 0
	}
	for k := r.clauseFrom(first); k < first; k++ {
		it := &r.items[k]
		n := 0
		switch {
		case it.kind == itNum || it.qty(head):
			n = int(it.v)
		case it.s == "one", it.s == "a pig", it.s == "someone", it.s == "somebody", it.s == "a" && r.items[k+1].is(sPigs):
			n = 1
		}
		if n >= 1 && n < r.alive {
			it.used = true
			return n
		}
		if it.is(sAll) || it.is(sEach) {
			return 0
		}
	}
	return 0
}

// sickOf is the fact that pigs are unwell, or well again.
func (r *reader) sickOf(s span, first int, note string, well bool) func([]string) Act {
	count := r.sickCount(s, first)
	return func(names []string) Act {
		sick := model.Sick{Animals: names, Note: note, Well: well}
		if len(names) == 1 && names[0] == model.All {
			sick.Count = count
		}
		return Fact{sick}
	}
}

// tellsOfOne says that the clause of the sign at item first begins with a pig or two
// that have no name there: "one has a runny nose", "two of them won't eat".
func (r *reader) tellsOfOne(first int) bool {
	k := r.clauseFrom(first)
	for k < first && r.items[k].is(sFiller) && r.items[k].s != "one" {
		k++
	}
	if k >= first {
		return false
	}
	one := &r.items[k]
	if one.s == "one's" || one.s == "ones" {
		return true
	}
	few := one.kind == itNum && !one.soft && one.v >= 1 && int(one.v) <= r.alive && one.v == float64(int(one.v))
	if !one.qty(head) && !few && (one.kind == itQty || one.s != "one" && one.s != "one of") {
		return false
	}
	told := one.qty(head) || k+1 == first && !few
	for n := k + 1; n < first; n++ {
		it := &r.items[n]
		if it.unit != 0 || !it.is(sFiller) && !it.isAny(whoWords) && !it.isAny(setOf(sPronoun, sIs, sOf, sGave, sArrive, sPartOf)) {
			return false
		}
		told = told || it.isAny(whoWords) || it.is(sIs) || it.s == "has" || it.s == "have" || it.s == "got" || it.s == "of them" || it.s == "of"
	}
	if told {
		for n := k; n < first; n++ {
			r.items[n].used = true
		}
	}
	return told
}
