package reading

// outByName takes the name of a pig that nobody has told yet for one of them: "Birch got
// out" is no less an emergency. Where the pigs have names it must be no word of English:
// "zeke got out" may be what a child calls one.
func (r *reader) outByName() {
	if r.alive == 0 {
		return
	}
	named := r.anyNamed()
	for k := 0; k+1 < len(r.items); k++ {
		it, next := &r.items[k], &r.items[k+1]
		if it.kind != itWord || len(it.s) < 3 || !isLetters(it.s) || next.gap != gapNone || it.quest || it.pig >= 0 || household[it.s] || letOut[it.s] {
			continue
		}
		one := it.s == "someone" || it.s == "somebody"
		if !one && !it.sense.empty() || k != r.sentenceStart(k) && !r.relayedFrom(k) {
			continue
		}
		if k+2 < len(r.items) && r.items[k+2].gap == gapNone && r.items[k+2].s == "of" {
			continue // "the trash got out of hand"
		}
		if named && !one && (it.known || commonEnglish().has(it.s) || rarerEnglish().has(it.s)) {
			continue
		}
		if named && (!r.goesOnOut(k+1) || r.sentenceNames(r.sentenceStart(k), r.sentenceEnd(k), beasts)) {
			continue
		}
		if named && !one && next.s == "is out" {
			continue // who is away this week may be no pig
		}
		if next.is(sOut) && !next.is(sFiller) && next.s != "out" || gotOut[next.s] {
			it.sense, it.known = setOf(sPigs), true
		}
	}
}

// relayedFrom says that what begins at item k is what somebody said: "dad says birch got out".
func (r *reader) relayedFrom(k int) bool {
	return k > 0 && (k == r.clauseFrom(k) || callWords[lastWord(r.items[k-1].s)]) && r.toldByOther(k)
}

// goesOnOut says that behind the way out at item k the sentence ends, or tells where to.
func (r *reader) goesOnOut(k int) bool {
	n := k + 1
	if n >= len(r.items) || r.items[n].gap >= gapAnd || r.closes(k) {
		return true
	}
	switch r.items[n].s {
	case "again", "into", "in", "through", "under", "over", "and", "this", "last", "by", "on", "onto":
		return true
	}
	return false
}

var gotOut = setOfWords(split("got out, is out, escaped, got loose, is loose, broke out, busted out, ran off, got away"))

// letOut are what gets out in time.
var letOut = setOfWords(split("school, church, class, work, practice, game, court, traffic"))
