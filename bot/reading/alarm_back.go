package reading

import (
	"slices"

	"troughbell/model"
)

// A breakout is often told when it is over: "gus got out but i got him back in", "they
// were out this morning, back in now". Such an alarm is told as ended, so that nobody is
// asked all day whether the pigs are in.

// backSince says that behind the span of an alarm it is told that the pigs are in again,
// and nothing that leaves room for one that is out still.
func (r *reader) backSince(s span) bool {
	out := r.find(s, sOut)
	if out < 0 {
		return false
	}
	back := false
	for k := out + 1; k < len(r.items) && k <= out+backReach; k++ {
		it := &r.items[k]
		switch {
		case it.quest, it.is(sNot) && it.kind == itWord && it.pig < 0, it.is(sPlan) && !it.is(sFiller), it.is(sOut) && it.pig < 0, roomForMore[it.s], fewWords[it.s], it.is(sRest), it.is(sBut) && it.s != "but", it.soft && it.s != "a", it.kind == itNum && int(it.v) < r.alive && it.v == float64(int(it.v)):
			return false
		case it.is(sBackIn) && it.pig < 0, r.broughtIn(k), r.inHand(k):
			back = true
		}
	}
	return back
}

// backReach is within how many words of the breakout its end is told.
const backReach = 24

// broughtIn says that the "back", "in" or "home" at item k ends what pigs were brought or
// came by: "chased them back", "got him in", "she's home".
func (r *reader) broughtIn(k int) bool {
	it := &r.items[k]
	switch lastWord(it.s) {
	case "back", "home":
		if k+1 < r.clauseEnd(k) && !behindBack[firstWord(r.items[k+1].s)] && r.items[k+1].kind != itClock && r.items[k+1].kind != itDay {
			return false // "by the back gate"
		}
	case "in":
		if !r.closes(k) {
			return false
		}
	default:
		return false
	}
	if w := firstWord(it.s); w != it.s && (herdPronouns[w] || isPronouns[w]) {
		return true
	}
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch p := &r.items[n]; {
		case p.pig >= 0, p.pig < 0 && p.isAny(whoWords), herdPronouns[firstWord(p.s)], isPronouns[firstWord(p.s)]:
			return true
		case !p.isAny(setOf(sFiller, sIs)):
			return false
		}
	}
	return false
}

// inHand says that the pronoun at item k ends the having of pigs in hand: "got em", "we
// caught him with a bucket of corn".
func (r *reader) inHand(k int) bool {
	if k == 0 || !herdPronouns[r.items[k].s] || r.items[k].gap != gapNone || !gotWords[lastWord(r.items[k-1].s)] {
		return false
	}
	if r.closes(k) {
		return r.items[k-1].s != "have" && r.items[k-1].s != "found"
	}
	return k+1 < len(r.items) && (r.items[k+1].s == "with" || r.items[k+1].s == "by" || r.items[k+1].is(sThanks) || isOk[r.items[k+1].s])
}

// gotThemAll gives the sense of being in again to the last word of what tells that the
// pigs of the open alarm are in hand: "got em", "we caught him".
func (r *reader) gotThemAll() {
	if n := len(r.items) - 1; n >= 1 && n < 8 && (r.inHand(n) || r.hadIn(n)) {
		r.items[n].sense, r.items[n].pen = setOf(sBackIn), -1
	}
}

// hadIn says that item n closes "he's in" or "got gus", where that pig was out.
func (r *reader) hadIn(n int) bool {
	p := &r.items[n-1]
	return r.items[n].pig >= 0 && gotWords[lastWord(p.s)] && p.s != "have" || r.items[n].s == "in" && isPronouns[p.s] && p.s != "is" && p.s != "are"
}

// onlyOutOnes says that all pigs named are those the open alarm is about.
func (r *reader) onlyOutOnes() bool {
	a := r.openAlarm(model.AlarmOut)
	if a == nil || len(a.Animals) == 0 {
		return false
	}
	named := 0
	for k := range r.items {
		if p := r.items[k].pig; p >= 0 {
			if !slices.Contains(a.Animals, r.pigs[p].Name) {
				return false
			}
			named++
		}
	}
	return named == len(a.Animals)
}

var (
	herdPronouns = listed("him, her, them, em, 'em, she, he, they, it, all of them, both of them, them all, them both")
	isPronouns   = listed("he's, hes, she's, shes, they're, theyre, everyone's, everybody's, is, are")
	behindBack   = listed("in, home, now, again, safe, where, by, with, tho, though, thank, thanks, thankfully, before, after, to, inside, already, without, ok, okay, and, into, since")
	isOk         = listed("tho, though, now, again, ok, okay, fine, quick, quickly, fast, before, after, all, both, safe")
	roomForMore  = listed("still, trying, try, almost, nearly, except, missing, one, ones, other, another, wish, heading, coming, hopefully, hope, cant, can't, some, most, half")
)
