package reading

import "strings"

// doingThen takes the clauses out that tell of what is going to be done at another time:
// "filling it after the meeting", "worming them once the vet was here".
func (r *reader) doingThen() {
	for k := range r.items {
		it := &r.items[k]
		w := firstWord(it.s)
		if it.kind != itWord || it.pig >= 0 || it.quest || len(w) < 6 || !strings.HasSuffix(w, "ing") || !it.isAny(doingSenses) {
			continue
		}
		i, j := r.clauseFrom(k), r.clauseEnd(k)
		if r.onlySubject(i, k) && r.putOffBehind(k, j) {
			for n := i; n < j; n++ {
				r.blank(n)
			}
		}
	}
}

// onlySubject says that items[i:k] are but who does something, now.
func (r *reader) onlySubject(i, k int) bool {
	for n := i; n < k; n++ {
		it := &r.items[n]
		if it.kind != itWord || it.s == "was" || it.s == "were" || !it.isAny(setOf(sFiller, sPronoun, sIs)) || pastTense(it.s) {
			return false
		}
	}
	return true
}

// putOffBehind says that behind the deed at item k, before item j, stands the time that it
// is put off to, and nothing that was measured.
func (r *reader) putOffBehind(k, j int) bool {
	then := false
	for n := k + 1; n < j; n++ {
		it := &r.items[n]
		switch {
		case it.number() && !it.soft && !it.qty(hours), it.kind == itFrac, it.is(sFull) && !it.is(sFill):
			return false
		case putOffWords[it.s], it.kind == itDay && (it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0):
			then = true
		case then && it.kind == itWord && pastTense(it.s):
			return false
		}
	}
	return then
}

var (
	doingSenses = setOf(sFill, sPour, sWorm, sTreat, sMove, sMixed, sWeigh, sTape, sHose, sWatered)
	putOffWords = setOfWords(split("after, before, soon, later on, later today, tomorrow, tmrw, this evening, in the morning, first thing, next week, when, once, once the, later, as soon as, soon as, tonight, after work, after lunch, after dinner, after supper, after church, after school, when i get home, when i get back"))
)
