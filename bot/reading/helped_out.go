package reading

// What somebody else did with our things: a child, a sitter, a neighbour.

// childOfAge takes a child told by its age for one of the house: "my six year old helped
// fill the porch barrel". The age counts nothing.
func (r *reader) childOfAge() {
	for k := 1; k+2 < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if it.kind != itNum || it.v > oldestChild || !ownerWords[p.s] || it.gap != gapNone || firstWord(r.items[k+1].s) != "year" && r.items[k+1].s != "yr" {
			continue
		}
		n := k + 1
		if r.items[n].s == "year" || r.items[n].s == "yr" {
			n++
		}
		if lastWord(r.items[n].s) != "old" || n+1 < len(r.items) && (r.items[n+1].pig >= 0 || r.items[n+1].isAny(setOf(sPigs, sBarrow, sGilt, sSow, sBoar))) {
			continue
		}
		for x := k; x <= n; x++ {
			r.blank(x)
		}
		r.items[n].s, r.items[n].sense = "child", setOf(sForeign)
	}
}

// oldestChild is the highest age told of a child.
const oldestChild = 18

// sitterDid takes the word for a sitter before a deed for who did it, and for no wish.
func (r *reader) sitterDid() {
	for k := 0; k+1 < len(r.items); k++ {
		if it := &r.items[k]; it.is(sDo) && lastWord(it.s) == "sitter" && r.items[k+1].gap == gapNone && r.items[k+1].isAny(setOf(sFill, sPour, sMove, sWatered, sGave, sTook)) && pastTense(r.items[k+1].s) {
			it.sense = senses{}
		}
	}
}

// strangeFeed says that the word of another animal at item k but names the feed that went
// into a feeder of ours: "a bag of chicken pellets in the pig feeder".
func (r *reader) strangeFeed(k int, s span) bool {
	if s.frame != fFeed || k+1 >= s.j || !r.items[k+1].is(sFeed) || r.items[k+1].gap != gapNone || k == 0 || !r.items[k-1].is(sOf) && !r.items[k-1].qty(vessel) {
		return false
	}
	for n := k + 2; n < s.j; n++ {
		if it := &r.items[n]; it.feeder >= 0 || it.is(sFeeder) {
			return r.find(s, sPour) >= 0
		}
	}
	return false
}

// strangeFeedIn says that a span tells of such feed, so that it is asked whether it counts.
func (r *reader) strangeFeedIn(s span, _ int) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(sForeign) && r.strangeFeed(k, s) {
			return true
		}
	}
	return false
}

// neighborDid says that somebody from outside filled a thing that may be ours: "the
// neighbor filled the feeder while we were out".
func (r *reader) neighborDid(s span) bool {
	if s.frame != fFeed && s.frame != fWater {
		return false
	}
	who, thing := -1, false
	for k := max(r.clauseFrom(s.i), 0); k < s.j; k++ {
		it := &r.items[k]
		switch it.s {
		case "his", "her", "their", "theirs", "own":
			return false
		}
		if helpers[lastWord(it.s)] && it.is(sForeign) && who < 0 {
			for n := k + 1; n < s.j && n <= k+2; n++ {
				if r.items[n].isAny(setOf(sFill, sPour, sWatered)) && pastTense(r.items[n].s) || r.items[n].is(sPour) && r.items[n].s == "dumped" {
					who = k
				}
			}
		}
		thing = thing || it.feeder >= 0 || it.barrel >= 0 || k > 0 && it.isAny(setOf(sFeeder, sBarrel)) && ourWords[r.items[k-1].s]
	}
	return who >= 0 && thing
}

var (
	helpers  = setOfWords(split("neighbor, neighbour, neighbors, neighbours, friend, buddy, uncle, aunt, cousin, kid, boy, girl, guy, lady, coworker, nephew, niece"))
	ourWords = setOfWords(split("the, our, my, pig"))
)
