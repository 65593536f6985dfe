package reading

import "strings"

// tellsOfOthers says that the sentence of a span has other people or their animals
// for its subject, "my cousin lost 40 pigs to swine fever", "the pigs of our
// neighbor are sick, 4 died", and names nothing of ours.
func (r *reader) tellsOfOthers(s span) bool {
	begin := r.sentenceStart(s.i)
	switch s.frame {
	case fSick, fGone, fDrug, fWeigh, fAlarm:
	case fMove, fArrive:
		return false
	default:
		return r.othersOnly(begin, r.sentenceEnd(s.j-1))
	}
	if r.othersOnly(begin, r.sentenceEnd(s.j-1)) || s.frame == fAlarm && r.saidNotOurs(begin, r.sentenceEnd(s.j-1)) {
		return true
	}
	others := false
	for k := begin; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && !it.near, it.feeder >= 0, it.barrel >= 0, it.pen >= 0 && it.kind == itThing && !it.near, (it.s == "ours" || it.s == "mine") && (k == 0 || !r.items[k-1].is(sNot)), it.s == "my pigs", it.s == "our pigs", it.s == "all my pigs", it.s == "all our pigs":
			return false
		case it.is(sPigs) && it.pig < 0 && k < s.j && r.ownerBefore(k):
			others = true
		case it.is(sForeign) && !household[it.s] && k < s.i+2:
			others = others || r.owns(k)
		}
	}
	return others
}

// othersOnly says that a sentence, items from to end, begins with other people who
// lost, sold or have something, and speaks of nothing of ours: "heard the Millers lost
// two hogs, 110 in their barn".
func (r *reader) othersOnly(from, end int) bool {
	at := -1
	for k := from; k < end && k < from+othersReach; k++ {
		it := &r.items[k]
		if (it.pig >= 0 || it.kind == itThing) && !it.near {
			return false
		}
		if r.otherFamily(k) || it.is(sForeign) && !ofHouse(it.s) {
			if r.befell(k+1) || strings.HasPrefix(it.s, "next door ") { // "next door got 8 weaners"
				at = k
				break
			}
		}
	}
	if at < 0 {
		return false
	}
	for k := from; k < end; k++ {
		it := &r.items[k]
		if it.pig >= 0 && !it.near || it.kind == itThing && it.pen < 0 && !it.near || it.group >= 0 {
			return false
		}
	}
	said := r.said(span{0, from, end})
	for _, w := range oursWords {
		for at := strings.Index(said, " "+w+" "); at >= 0; {
			if !strings.HasSuffix(said[:at], " not") {
				return false // "not ours" is theirs all the same
			}
			next := strings.Index(said[at+1:], " "+w+" ")
			if next < 0 {
				break
			}
			at += 1 + next
		}
	}
	return true
}

// othersReach is how many items may stand before other people in their sentence.
const othersReach = 6

// oursWords tell that a sentence speaks of the person's own.
var oursWords = split("i, we, us, our, ours, my, mine, i'm, im, i've, ive, we've, weve, me")

// otherFamily says that item k is the name of a family that is none of the herd's:
// "the Millers", "Mang Tonyo's".
func (r *reader) otherFamily(k int) bool {
	it := &r.items[k]
	if !it.capital || it.kind != itWord || it.pig >= 0 || it.known || len(it.s) < 4 {
		return false
	}
	w := strings.ToLower(r.text[it.from:it.to])
	switch {
	case strings.HasSuffix(w, "'s"), strings.HasSuffix(w, "’s"), strings.HasSuffix(w, "s'"), strings.HasSuffix(w, "s’"):
		return true
	}
	return k > 0 && r.items[k-1].s == "the" && strings.HasSuffix(w, "s")
}

// befell says that what befell others, or what they have, is told right from item k.
func (r *reader) befell(k int) bool {
	for n := k; n < len(r.items) && n <= k+5 && r.items[n].gap < gapComma; n++ {
		switch it := &r.items[n]; {
		case it.isAny(setOf(sDied, sLost, sSold)), it.is(sOut) && !it.is(sFiller):
			return true
		case it.s == "had", it.s == "has", it.s == "has had", it.s == "have", it.s == "keeps", it.s == "keep", it.s == "raises", it.s == "raise", it.s == "lose", it.s == "wormed", it.s == "sell", it.s == "lost":
			return true
		case it.s == "helped", it.s == "came", it.s == "gave", it.s == "brought", it.s == "bought", it.s == "paid", it.s == "took", it.s == "lent", it.s == "delivered", it.s == "dropped":
			return false
		}
	}
	return false
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
