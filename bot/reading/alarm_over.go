package reading

import "troughbell/model"

// returnWords say of pigs that were out that they are not any more.
var returnWords = setOfWords(split(`back, back in, back home, home, rounded up, up again, in again, accounted for, accounted, caught, safe, secured, contained, penned, penned up, in, got back,
	came back, came home, went back, went back in, went back home, found, corralled, locked up, returned, inside, inside again, back inside, in the pen, herded, lured, rounded`))

// backAgain gives the sense of being in again to the words that end an alarm, where
// pigs are out. It never does so where a word leaves room for one that is out still.
func (r *reader) backAgain() {
	if r.openAlarm(model.AlarmOut) == nil || len(r.items) > 16 {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if it.number() && !it.soft && (it.kind != itNum || int(it.v) != r.alive) || it.soft || it.kind == itFrac || it.quest || fewWords[it.s] ||
			it.isAny(setOf(sNot, sPlan, sBut, sIf, sRest, sAskSure, sOut, sForeign, sHelp, sAbout, sMove)) && it.pig < 0 && !it.is(sBackIn) {
			return
		}
		switch it.s {
		case "trying", "try", "still", "almost", "nearly", "working on", "except", "no", "missing", "ones", "wish":
			return
		}
	}
	who := r.onlyOutOnes()
	named := !who
	r.gotThemAll()
	for k := range r.items {
		it := &r.items[k]
		who = who || it.pig < 0 && (it.isAny(whoWords) || theySaid[firstWord(it.s)] || it.s == "them all") || it.kind == itNum && int(it.v) == r.alive
		if it.pig >= 0 && named {
			return // a single one says nothing of the others
		}
	}
	if !who {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if !(returnWords[it.s] || theySaid[firstWord(it.s)] && (lastWord(it.s) == "in" || lastWord(it.s) == "back")) {
			continue
		}
		if lastWord(it.s) == "in" && !r.closes(k) || (it.s == "home" || it.s == "inside" || it.s == "found") && k == 0 && len(r.items) < 2 {
			continue
		}
		it.sense, it.pen = setOf(sBackIn), -1
	}
	if n := len(r.items) - 1; n >= 1 && (r.items[n].isAny(setOf(sAll)) && r.items[n].pig < 0) && r.sentenceNames(0, n, gotWords) { // "got them all"
		r.items[n].sense.add(sBackIn)
	}
}

// inAgain forces what tells that the pigs are in again into the end of the alarm.
func (r *reader) inAgain(k int) bool {
	if !r.items[k].is(sBackIn) || r.items[k].pig >= 0 || r.openAlarm(model.AlarmOut) == nil || r.items[k].sense != setOf(sBackIn) && r.items[k].sense != setOf(sBackIn, sAll) {
		return false
	}
	from, to := r.clauseFrom(k), r.clauseEnd(k)
	for n := from; n < to; n++ {
		if it := &r.items[n]; it.number() && !it.soft && it.kind != itNum || it.isAny(setOf(sFeeder, sBarrel, sWorm, sWeigh, sFill)) && !it.is(sBackIn) {
			return false
		}
	}
	r.forceRange(from, to, fAlarm)
	return true
}

// notAllBack says that what tells of pigs in again leaves room for one that is out:
// a "not", a part, fewer than were told to be out.
func (r *reader) notAllBack(s span, names []string) bool {
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.is(sBackIn) && !it.is(sNot):
		case it.kind == itNum && int(it.v) != r.alive && len(names) == 0 && !r.wereOut(int(it.v)):
			return true
		case it.s == "but" && k+1 < len(r.items) && (r.items[k+1].soft || r.items[k+1].kind == itNum || r.items[k+1].pig >= 0 || r.items[k+1].s == "one"):
			return true
		case it.is(sNot), it.is(sBut) && it.s != "but", it.kind == itFrac, fewWords[it.s], it.is(sPlan) && !it.is(sFiller):
			return true
		}
		switch it.s {
		case "almost", "nearly", "heading", "headed", "trying", "still", "except", "most of them", "some of them", "coming":
			return true
		}
	}
	return false
}

// wereOut says that the open alarm is about a number of pigs.
func (r *reader) wereOut(n int) bool {
	a := r.openAlarm(model.AlarmOut)
	return a == nil || len(a.Animals) == n
}

// gotWords are the verbs of having pigs in hand again.
var gotWords = setOfWords(split(`got, caught, found, have`))
