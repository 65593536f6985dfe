package reading

// What others guess a pig to weigh, which is no weighing, and what the person puts one
// at, which is.

// guessVerbs tell of a guess where somebody else is their subject.
var guessVerbs = setOfWords(split("guessed, guesses, guessing, guess, figured, figures, figure, thinks, thought, think, bet, bets, betting, eyeballed, eyeballs, estimated, estimates, pegged, pegs, judged, judges, swore, swears, supposed, supposes, called, calls, put, puts, had, has, said, says"))

// surmise are those of them that guess even where one of the house does.
var surmise = setOfWords(split("guessed, guesses, thinks, thought, bet, bets, swore, swears"))

// strangers are words for others than the person who writes and the household.
var strangers = setOfWords(split(`guy, man, lady, woman, boy, kid, buddy, friend, mailman, postman, visitor, visitors, somebody, someone, people, folks, fella, bloke, lad, driver, trucker, hauler, judge, teacher, guest, guests, customer, butcher, the butcher, farrier, plumber, inspector, grandpa,
	in law, in laws, law, neighbor, neighbour, coworker, boss, everyone, everybody`))

// guessedByOthers gives the sense of hearsay to a guess that is not the person's: "the
// neighbor guessed 260 for otis".
func (r *reader) guessedByOthers() {
	for k := 1; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itWord || it.pig >= 0 || it.quest || !guessVerbs[it.s] || !r.stranger(k) || !r.weightNear(k) {
			continue
		}
		switch it.s {
		case "put", "puts", "had", "has", "called", "calls":
			if !r.pigAtWeight(k) {
				continue
			}
		}
		it.sense = setOf(sHearsay)
		if surmise[it.s] {
			for n := r.clauseFrom(k); n < k; n++ {
				if x := &r.items[n]; x.kind == itWord && x.pig < 0 {
					r.blank(n) // whose guess it is says nothing of pigs: "the boy"
				}
			}
		}
	}
}

// stranger says that the subject of the verb at item k is neither the person who writes
// nor a pig.
func (r *reader) stranger(k int) bool {
	who := false
	for n := r.clauseFrom(k); n < k; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.s == "i", it.s == "we", it.s == "i'd", it.s == "we'd", it.s == "vet", it.s == "the vet", it.number() && !it.soft:
			return false
		case it.is(sForeign), strangers[it.s], strangers[lastWord(it.s)]:
			who = true
		case surmise[r.items[k].s] && (household[it.s] || relatives[it.s]):
			who = true
		}
	}
	return who
}

// weightNear says that a bare number or a weight stands in the sentence of item k.
func (r *reader) weightNear(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; it.kind == itNum && !it.soft || it.qty(mass) {
			return true
		}
	}
	return false
}

// pigAtWeight says that pigs and what they are put at follow the verb at item k: "put the
// gilts at about 210".
func (r *reader) pigAtWeight(k int) bool {
	pig, at := false, false
	for n := k + 1; n < len(r.items) && n <= k+6 && r.items[n].gap < gapComma; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.group >= 0, it.pig < 0 && it.isAny(setOf(sBarrow, sGilt, sBoar, sSow, sYoung, sOld)):
			pig = true
		case firstWord(it.s) == "at":
			at = true
		case it.kind == itNum && !it.soft, it.qty(mass):
			return pig && at
		case !it.isAny(setOf(sFiller, sAbout, sAnd, sAll, sBoth)) && it.kind == itWord:
			return false
		}
	}
	return false
}

// putAt takes the pouring from a "put" that gives pigs a weight: "put hazel at 180".
func (r *reader) putAt() {
	for k := range r.items {
		it := &r.items[k]
		if it.s != "put" && it.s != "putting" || it.quest || !r.pigAtWeight(k) {
			continue
		}
		it.sense = setOf(sAbout)
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			if x := &r.items[n]; firstWord(x.s) == "at" && x.kind == itWord && n+1 < len(r.items) && (r.items[n+1].kind == itNum || r.items[n+1].qty(mass) || r.items[n+1].is(sAbout)) {
				x.sense = setOf(sFiller, sAt, sAbout)
			}
		}
	}
}
