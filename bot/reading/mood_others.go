package reading

import "strings"

// tellsOfOthers says that the sentence of a span has other people or their animals
// for its subject, "my cousin lost 40 pigs to swine fever", "the pigs of our
// neighbor are sick, 4 died", and names nothing of ours.
func (r *reader) tellsOfOthers(s span) bool {
	switch s.frame {
	case fSick, fGone, fDrug, fWeigh, fAlarm:
	default:
		return false
	}
	begin := r.sentenceStart(s.i)
	others := false
	for k := begin; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && !it.near, it.feeder >= 0, it.barrel >= 0, it.pen >= 0 && it.kind == itThing, it.s == "ours", it.s == "mine", it.s == "my pigs", it.s == "our pigs", it.s == "all my pigs", it.s == "all our pigs":
			return false
		case it.is(sPigs) && it.pig < 0 && k < s.j && r.ownerBefore(k):
			others = true
		case it.is(sForeign) && !household[it.s] && k < s.i+2:
			others = others || r.owns(k)
		}
	}
	return others
}

// ownerBefore says that somebody else's name stands before the word for a pig at
// item k: "my teacher's show hog".
func (r *reader) ownerBefore(k int) bool {
	for n := k - 1; n >= 0 && n >= k-2 && r.items[n+1].gap == gapNone; n-- {
		it := &r.items[n]
		w := strings.ToLower(r.text[it.from:it.to])
		if it.pig < 0 && it.kind == itWord && (strings.HasSuffix(w, "'s") || strings.HasSuffix(w, "’s")) && !it.isAny(setOf(sIs, sPronoun, sAskSure, sAsk)) && len(w) > 4 {
			return !household[strings.TrimSuffix(strings.TrimSuffix(w, "'s"), "’s")] && w != "that's" && w != "there's" && w != "here's" && w != "let's" && w != "today's" && w != "what's" && w != "who's"
		}
	}
	return false
}

// owns says that the other people at item k are told to have animals, or that
// something befell theirs.
func (r *reader) owns(k int) bool {
	if w := r.items[k].s; strings.HasSuffix(w, "'s") || strings.HasSuffix(w, "s'") {
		return !r.placeBefore(k)
	}
	for n := max(0, k-3); n < k; n++ {
		if r.items[n].s == "of" || r.items[n].s == "belonging to" {
			return true
		}
	}
	for n := k + 1; n < len(r.items) && n <= k+7 && r.items[n].gap < gapComma; n++ {
		switch it := &r.items[n]; {
		case it.isAny(setOf(sDied, sLost)), it.s == "had", it.s == "has", it.s == "has had", it.s == "they had", it.s == "keeps", it.s == "raises", it.s == "says", it.s == "told me", it.s == "lost":
			return true
		case it.s == "helped", it.s == "came", it.s == "came over", it.s == "gave", it.s == "and i", it.s == "stopped":
			return false
		}
	}
	return false
}

// placeBefore says that what stands at item k is a place: "pigs at the neighbor's".
func (r *reader) placeBefore(k int) bool {
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		switch r.items[n].s {
		case "at", "in", "to", "into", "on", "over at", "over to", "over in":
			return true
		}
		if !r.items[n].is(sFiller) {
			break
		}
	}
	return false
}
