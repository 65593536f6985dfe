package reading

// unheardDrug takes a word that is known for nothing for a drug, where it was given to a pig
// and days are told that the meat must wait: "gave gus bute for his leg, 14 days on the meat".
// Else the days would be lost, and with them that he is not clear.
func (r *reader) unheardDrug() {
	for k := 2; k < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.pig >= 0 || it.quest || it.gap != gapNone || len(it.s) < 4 || !it.sense.empty() || it.unit != 0 || it.canon != "" || r.lex.plain[it.s] || houseStuff[it.s] || commonEnglish().has(it.s) || rarerEnglish().has(it.s) || !r.handedTo(k) || !r.meatWaits(k) {
			continue
		}
		it.sense, it.canon, it.known = setOf(sProduct), it.s, true
		return
	}
}

// handedTo says that what stands at item k was given to a pig: "gave gus | bute", "gave her a |
// bute pill".
func (r *reader) handedTo(k int) bool {
	n := k - 1
	for n > 0 && r.items[n].gap == gapNone && (r.items[n].s == "a" || r.items[n].s == "some" || r.items[n].s == "an" || r.items[n].s == "his" || r.items[n].s == "her" && r.items[n-1].pig >= 0) {
		n--
	}
	if r.items[n].pig < 0 && !herdPronouns[r.items[n].s] {
		return false
	}
	for m := n - 1; m >= 0 && m >= n-2 && r.items[m+1].gap <= gapAnd; m-- {
		if it := &r.items[m]; it.pig < 0 && it.isAny(setOf(sGave, sTreat)) && gaveDrug[lastWord(it.s)] {
			return true
		}
	}
	return false
}

var gaveDrug = listed("gave, given, giving, got, dosed, injected, shot, treated, him, her")

// meatWaits says that the sentence of item k tells days that the meat must wait, and of no
// drug that is known.
func (r *reader) meatWaits(k int) bool {
	s := span{fDrug, r.sentenceStart(k), r.sentenceEnd(k)}
	if r.has(s, sProduct) || r.has(s, sWorm) {
		return false
	}
	for n := k + 1; n < s.j; n++ {
		if !r.items[n].qty(days) {
			continue
		}
		for m := max(k+1, n-3); m < s.j && m <= n+7; m++ {
			if it := &r.items[m]; it.pig < 0 && (it.is(sWithdraw) || it.s == "meat" || eatWords[it.s]) {
				return true
			}
		}
	}
	return false
}
