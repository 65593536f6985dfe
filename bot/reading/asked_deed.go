package reading

// asksDeed says that behind a "did" at token i stands who is asked about and then the
// plain form of a deed: "did bill fill the feeder yesterday", "did my wife move them".
func (r *reader) asksDeed(i int) bool {
	who := 0
	for k := i + 1; k < len(r.toks) && k <= i+askedWhoReach && r.toks[k].kind == tokWord; k++ {
		w := r.toks[k].s
		if who > 0 && plainDeeds[w] {
			return true
		}
		switch m := r.lex.of[w]; {
		case plainDeeds[w]: // "did feed water and bedding"
			return false
		case m != nil && m.sense.any(setOf(sFeed, sWater, sFeeder, sBarrel, sWallow, sPen, sPigs, sAll, sBoth, sRest, sDone)):
			return false
		case m == nil, r.toks[k].capital, !m.sense.has(sFiller):
			who++
		}
	}
	return false
}

// askedWhoReach is within how many words behind "did" the deed is named.
const askedWhoReach = 4

// plainDeeds are the deeds of a keeper in the form that stands behind "did".
var plainDeeds = listed("fill, refill, feed, water, top, put, worm, deworm, move, weigh, tape, give, buy, order, mix, grind, check, empty, clean, do, pour, add, sell, pay, treat, haul, hose, pick, get, say, come, finish, remember, ever, already")

// deedAsked says that the words, of which w gives the one so far on, ask of a deed by
// somebody of the house or anybody at all.
func (r *reader) deedAsked(w func(int) string, at int) bool {
	who := at + 1
	if determiners[w(who)] && !plainSubjects[w(who)] || w(who) == "you" {
		who++ // "did the kids ...", "did you guys ..."
	}
	someone := plainSubjects[w(who)] && w(who) != "you" && w(who) != "u" || household[w(who)] || relatives[w(who)] || w(who) == "guys" || w(who) == "boys" || w(who) == "girls"
	behind := w(who + 1)
	if behind == "already" || behind == "ever" || behind == "even" || behind == "actually" || behind == "both" || behind == "all" {
		behind = w(who + 2)
	}
	switch w(at) {
	case "did":
		return someone && plainDeeds[behind]
	case "has", "have":
		return someone && w(who) != "they" && w(who) != "it" && w(who) != "she" && w(who) != "he" && (pastDeeds[behind] || behind == "done" || behind == "been")
	case "anybody", "anyone", "somebody", "someone":
		return plainDeeds[w(at+1)]
	}
	return false
}

// asksOfDeed says that the tokens from i to j begin with such a question.
func (r *reader) asksOfDeed(i, j int) bool {
	w := func(k int) string {
		if k < j && r.toks[k].kind == tokWord {
			return r.toks[k].s
		}
		return ""
	}
	for k := i; k < j && k < i+deedReach; k++ {
		if r.deedAsked(w, k) {
			return true
		}
		if !openers[r.toks[k].s] {
			return false
		}
	}
	return false
}
