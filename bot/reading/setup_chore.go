package reading

// workWords tell of the round without the word for chores.
var workWords = setOfWords(split(`work, works, tend, tend to, go out, go, get out, get out there, get there, see to, take care of, come out, come, do everything, fill, fill up, fill everything, visit, drive out, check, once a week`))

// worksThen forces a habit of a day of the week, "we work on Sundays", into the chore
// day, where none is known yet.
func (r *reader) worksThen(k int) bool {
	it := &r.items[k]
	if it.kind != itDay || !it.day.every || r.c.Herd.Chore.Stated {
		return false
	}
	from, to := r.sentenceStart(k), r.sentenceEnd(k)
	work, who := false, false
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.kind == itDay && x.day.every, x.kind == itClock:
		case x.s == "i", x.s == "we":
			who = true
		case workWords[x.s]:
			work = true
		case x.pig >= 0, x.kind != itWord, x.quest, !x.isAny(setOf(sFiller, sOn, sAt, sAnd, sPigs, sPronoun, sAll, sFeed, sWater, sFill, sOut, sTell)) && x.s != "everything":
			return false
		}
	}
	if !work || !who {
		return false
	}
	r.forceRange(from, to, fChore)
	return true
}
