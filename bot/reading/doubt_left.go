package reading

import "strings"

// What stands beside a record and was not understood casts doubt on it: a number
// inside of it, above all.

// doubtLeft asks about the numbers that nothing was made of where other parts of
// the text are recorded. One inside of what a record was read from puts that
// record in doubt; one apart from all is asked about itself.
func (r *reader) doubtLeft() {
	if !r.recordsAny() {
		return
	}
	asked := false
	for k := range r.items {
		if !r.strayNumber(k) {
			continue
		}
		if n := r.recordOver(k); n >= 0 {
			e := r.out[n]
			r.out[n].Act = doubtful([]Entry{e})
			asked = true
			r.forgetLeft(k)
			continue
		}
		about := r.intentOfStray(k)
		if asked || about == "" || r.alreadyAsks() {
			continue
		}
		s := span{fIdle, r.clauseFrom(k), r.clauseEnd(k)}
		for s.i < k && (r.items[s.i].used || !r.idleAt(s.i)) {
			s.i++
		}
		for s.j > k+1 && (r.items[s.j-1].used || !r.idleAt(s.j-1)) {
			s.j--
		}
		asked = true
		r.forgetLeft(k)
		r.clarify(Clarify{About: about, Code: "left_part", Names: []string{r.quote(s.i, s.j)}}, s)
	}
}

func (r *reader) recordsAny() bool {
	for _, e := range r.out {
		if _, ok := e.Act.(Fact); ok {
			return true
		}
	}
	return false
}

func (r *reader) alreadyAsks() bool {
	for _, e := range r.out {
		if _, ok := e.Act.(Clarify); ok {
			return true
		}
	}
	return false
}

// strayNumber says that item k is an amount that nothing was made of and that
// does not only count pigs, hours or the lines of a list.
func (r *reader) strayNumber(k int) bool {
	it := &r.items[k]
	if it.used || it.soft || !it.number() && it.kind != itDim || it.qty(hours) {
		return false
	}
	if it.kind == itNum && it.v <= mostPigs && it.v == float64(int(it.v)) && r.countsPigs(k) {
		return false
	}
	return true
}

// mostPigs is the highest bare number that may but count pigs.
const mostPigs = 60

// countsPigs says that the number at item k counts pigs: "the 4 big ones", "six
// of them", "all seven", "1 limping".
func (r *reader) countsPigs(k int) bool {
	who := setOf(sPigs, sAll, sBoth, sEach, sRest, sBarrow, sGilt, sBoar, sSow, sYoung, sOld, sPronoun, sSick)
	if k > 0 && r.items[k].gap == gapNone && r.items[k-1].isAny(setOf(sAll, sWorm, sTreat, sMove, sArrive)) {
		return true
	}
	if k > 1 && r.items[k-1].is(sAbout) && r.items[k-2].kind == itDay && r.items[k-2].day.part != partNone {
		return true // "yesterday afternoon about four" tells the hour
	}
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.isAny(who) || it.kind == itName || it.s == "ones" || it.group >= 0 || strings.HasSuffix(it.s, "them") {
			return true
		}
		if !it.isAny(setOf(sOf, sFiller)) {
			return false
		}
	}
	return false
}

// recordOver is the entry that was read from words around item k, -1 if none was.
func (r *reader) recordOver(k int) int {
	for n, e := range r.out {
		if _, ok := e.Act.(Fact); ok && e.From <= r.items[k].from && r.items[k].to <= e.To && !r.idleAt(k) {
			return n
		}
	}
	return -1
}

// intentOfStray is the intent that a number with nothing made of it is asked
// about, empty where no word of the trade stands beside it.
func (r *reader) intentOfStray(k int) string {
	for n := r.clauseFrom(k); n < r.clauseEnd(k); n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.is(sGirth), it.is(sWeigh):
			return "weigh"
		case it.feeder >= 0, it.is(sFeeder), it.is(sFeed):
			return "refill"
		case it.barrel >= 0, it.is(sBarrel), it.is(sWater):
			return "water"
		case it.is(sFence):
			return "fence"
		case it.is(sPay), it.qty(money):
			return "spend"
		case it.is(sIngredient):
			return "stock"
		}
	}
	return ""
}

// forgetLeft takes the words around item k off what is quoted as not understood,
// for they are asked about.
func (r *reader) forgetLeft(k int) {
	kept := r.left[:0]
	from := 0
	for _, s := range r.left {
		at := strings.Index(r.text[from:], s)
		at += from
		if at >= from && at <= r.items[k].from && r.items[k].to <= at+len(s) {
			from = at + len(s)
			continue
		}
		kept = append(kept, s)
	}
	r.left = kept
}
