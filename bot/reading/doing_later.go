package reading

// What is only about to be done: "feeder is low, filling it tonight".

// doingLater takes the clauses out in which somebody is yet to do a chore.
func (r *reader) doingLater() {
	for i := 0; i < len(r.items); {
		j := i + 1
		for j < len(r.items) && r.items[j].gap < gapAnd {
			j++
		}
		if !r.items[i].quest && r.isDoingLater(i, j) && (i > 0 || j < len(r.items)) { // alone it is a plan, and says so
			for k := i; k < j; k++ {
				r.blank(k)
			}
			r.items[i].gap = max(r.items[i].gap, gapSemi)
			if j < len(r.items) {
				r.items[j].gap = max(r.items[j].gap, gapSemi)
			}
		}
		i = j
	}
}

// isDoingLater says that items[i:j] begin with a chore that goes on, and say when it is to
// be. With an amount it may be told of as it is done.
func (r *reader) isDoingLater(i, j int) bool {
	k := i
	for k < j && (r.isI(k) || r.items[k].is(sFiller) && !choreDoing[firstWord(r.items[k].s)]) {
		k++
	}
	if k == j || !choreDoing[firstWord(r.items[k].s)] {
		return false
	}
	for n := k + 1; n < j; n++ {
		it := &r.items[n]
		if it.number() && !it.soft {
			return false
		}
		if it.kind == itDay && (it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0) || yetToCome[it.s] {
			return true
		}
	}
	return false
}

var (
	choreDoing = setOfWords(split("filling, refilling, topping, moving, weighing, worming, mixing, pouring, hosing, feeding, taping, shifting"))
	yetToCome  = setOfWords(split("tonight, later, later on, later today, after, tomorrow, tmrw, soon, when, once, this evening, in the morning, first thing, next week"))
)
