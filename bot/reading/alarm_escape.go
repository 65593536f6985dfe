package reading

import "strings"

// Pigs that got out, as it is said in talk: by the way they went, "legged it", "over the
// wall", or by whose garden they are in.

// escapes are turns for having got out, which say it of pigs alone. They have no sense of
// their own: the person may have legged it too.
var escapes = setOfWords(split(escapeTurns))

const escapeTurns = `legged it, leg it, legging it, did a runner, done a runner, doing a runner, did a bunk, walkabout, on walkabout, gone walkabout, went walkabout, scarpered, made a break for it, made a run for it, making a break for it,
	on the run, on the lam, awol, gone awol, went awol, vanished, has vanished, have vanished, flew the coop, flown the coop, let themselves out, let herself out, let himself out, bolted, did a houdini, busted free, broke free, got free, running free, on the lamb, ran away, run away, out and gone`

// barriers are what keeps pigs in, as what they went over, under or through.
var barriers = setOfWords(split("fence, wall, gate, hedge, wire, rail, rails, fencing, netting, hurdle, hurdles, barrier, mesh, panel, panels, stile"))

// goneOver are the verbs that lead a pig over or through a barrier.
var goneOver = setOfWords(split(`went, go, gone, jumped, leapt, leaped, lept, yeeted, cleared, sailed, climbed, hopped, vaulted, flew, got, bust, busted, launched, scrambled, popped, came, broke, burst, barged, crashed, smashed, squeezed, pushed,
	wriggled, slipped, crawled, ran, dug, shot, bulldozed, ploughed, plowed, tunnelled, tunneled, is, are, was, were, has, have, just, clean, right, straight, right on, again, hurdled, flung, hurled, threw, yote, forced, forced his way, forced her way, made it, snuck, sneaked, somersaulted, bolted, charged, wiggled, shimmied`))

// escapees gives the sense of being out to such turns of pigs.
func (r *reader) escapees() {
	for k := range r.items {
		it := &r.items[k]
		if it.pig >= 0 || it.quest || it.kind != itWord {
			continue
		}
		switch w := lastWord(it.s); {
		case escapes[it.s]:
			if (r.straySubject(k) >= 0 || r.pigsSaid(k)) && r.wayGoesOn(k) {
				it.sense = setOf(sOut)
			}
		case w == "over" || w == "through" || w == "under" || w == "past":
			if n := r.barrierBehind(k); n > 0 && r.wentBy(k) {
				r.markStray(k, n)
			}
		case barriers[w] && goneOver[firstWord(it.s)] && it.is(sFence): // "cleared the fence"
		case (it.s == "jumped" || it.s == "hopped" || it.s == "cleared" || it.s == "vaulted" || it.s == "leapt" || it.s == "hurdled") && r.straySubject(k) >= 0:
			if n := r.barrierBehind(k); n > 0 {
				r.markStray(k, n)
			}
		case w == "everywhere" && it.gap == gapNone && k > 0 && r.closes(k) && r.straySubject(k) >= 0 && (r.clauseFrom(k) >= k-2 && r.items[k-1].is(sPigs) || r.gateOpen(k)):
			it.sense = setOf(sOut)
		case ruinWords[it.s]:
			if n := r.strayPlace(k); n > 0 && gardens[lastWord(r.items[n].s)] && r.straySubject(k) >= 0 {
				r.markStray(k, n)
			}
		case w == "in" || w == "at" || w == "on":
			if n := r.ofOthers(k); n > 0 && r.straySubject(k) >= 0 {
				r.markStray(k, n)
			}
		}
	}
}

// wayGoesOn says that what is told at item k is a way out: it ends there or goes on with
// where or when, and nothing was bolted or made to vanish.
func (r *reader) wayGoesOn(k int) bool {
	if k > 0 && (r.items[k-1].s == "from" || r.items[k-1].s == "back from") {
		return false
	}
	if s := r.items[k].s; s != "bolted" && lastWord(s) != "vanished" || r.closes(k) || r.items[k+1].gap >= gapAnd {
		return true
	}
	return wayOn[r.items[k+1].s]
}

var wayOn = setOfWords(split("when, as, after, while, down, off, out, through, into, across, for, from, over, past, in, on, up, towards, during, last, this, some time"))

// secondAlarm is the clause that begins another emergency in the span of one, 0 if there
// is none: "pigs out, fence flat".
func (r *reader) secondAlarm(s span) int {
	kind := func(i, j int) string {
		c := span{s.frame, i, j}
		switch {
		case r.has(c, sFence) && r.has(c, sDown):
			return "fence"
		case r.has(c, sOut) && !r.has(c, sBackIn):
			return "out"
		}
		return ""
	}
	for n := s.i + 1; n < s.j; n++ {
		if r.items[n].gap < gapAnd {
			continue
		}
		a, b := kind(s.i, n), kind(n, s.j)
		if a != "" && b != "" && a != b {
			return n
		}
	}
	return 0
}

// notTheirs takes the sense of being out from what others than pigs did, and from what
// reached through a barrier: "we jumped the fence", "stuck his nose through the fence".
func (r *reader) notTheirs(k int) bool {
	it := &r.items[k]
	if k == 0 || it.is(sPigs) || !barriers[lastWord(it.s)] && it.s != "took off" && it.s != "got out" && it.s != "ran off" {
		return false
	}
	if p := &r.items[k-1]; it.gap == gapNone && (p.s == "i" || p.s == "we" || p.s == "i just" || p.is(sForeign) && beasts[lastWord(p.s)]) {
		return true
	}
	return barriers[lastWord(it.s)] && r.sentenceNames(r.clauseFrom(k), k, reached)
}

// outInto says that the "out" at item k only leads into a pen of the herd that somebody
// brought pigs to: "kicked them all out into creek".
func (r *reader) outInto(k int) bool {
	if r.items[k].s != "out" || k == 0 || k+2 >= len(r.items) || r.items[k].gap != gapNone || r.items[k+1].gap != gapNone {
		return false
	}
	switch r.items[k+1].s {
	case "into", "to", "in", "on", "onto":
	default:
		return false
	}
	for n := k + 2; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		if r.items[n].pen >= 0 && r.items[n].pig < 0 {
			return r.sentenceNames(r.clauseFrom(k), k, brought)
		}
		if !r.items[n].is(sFiller) {
			return false
		}
	}
	return false
}

// brought are the verbs of bringing pigs to a pen.
var brought = setOfWords(split("kicked, chased, shooed, pushed, let, turned, moved, herded, drove, ran, put, led, walked, brought, threw, sent"))

// reached are the words of what reaches through a barrier, and no pig goes.
var reached = setOfWords(split("nose, noses, snout, head, heads, foot, ear, tongue, scratched, scratching, scratch, petted, petting, pet, passed, fed, feeding, talked, chatted, looked, looking, peeking, saw, watched, watching, sniffing, sniffed, touched, photo, staring, stared, pushing, rubbing"))

var (
	ruinWords = setOfWords(split("rooting, rooting up, digging, digging up, tearing up, trashing, wrecking, destroying, eating, munching, ruining, plowing, plowing up, rototilling"))
	gardens   = setOfWords(split("lawn, garden, flowers, bed, beds, flowerbed, flowerbeds, roses, tulips, yard, patch, allotment, petunias, begonias, dahlias, orchard"))
)

// barrierBehind is the item of a barrier right behind item k, 0 if none is.
func (r *reader) barrierBehind(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.kind == itWord && (barriers[it.s] || barriers[lastWord(it.s)]) {
			if n+1 < len(r.items) && r.items[n+1].gap == gapNone && (r.items[n+1].number() || r.items[n+1].is(sFence)) {
				return 0 // "over the fence post"
			}
			return n
		}
		if !it.is(sFiller) && !it.is(sPronoun) {
			return 0
		}
	}
	return 0
}

// wentBy says that pigs stand before item k with nothing between but the way they went.
func (r *reader) wentBy(k int) bool {
	for n := k - 1; n >= 0 && n >= k-6 && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		switch {
		case it.is(sNot), it.is(sPlan), it.is(sForeign), it.s == "i", it.s == "we", it.s == "you", it.s == "i'm", it.s == "to":
			return false
		case it.pig >= 0 && !it.near, it.group >= 0, it.pig < 0 && it.isAny(whoWords):
			return true
		case it.s == "himself", it.s == "herself", it.s == "themselves", it.s == "itself", it.s == "his", it.s == "her", it.s == "way", it.s == "their":
		case theySaid[firstWord(it.s)], it.s == "he", it.s == "she", it.s == "he's", it.s == "she's":
			return n == r.clauseFrom(n) || r.fillersBefore(n)
		case it.soft, it.kind == itNum && it.v <= float64(r.alive), fewWords[it.s]:
			return true
		case it.kind == itWord && goneOver[it.s]:
		default:
			return false
		}
	}
	return false
}

// gateOpen says that the text tells of an open gate.
func (r *reader) gateOpen(k int) bool {
	for n := r.sentenceStart(k); n < k; n++ {
		if r.items[n].s == "gate" {
			return true
		}
	}
	return false
}

// ofOthers is the last item of what is in somebody's else, right behind the "in" at item
// k at the end of its clause: "in mom's tulips", "in next door's maize"; 0 if nothing is.
func (r *reader) ofOthers(k int) int {
	n := k + 1
	if n < len(r.items) && r.items[n].gap == gapNone && (r.items[n].s == "my" || r.items[n].s == "the" || r.items[n].s == "our") {
		n++
	}
	if n+1 >= len(r.items) || r.items[n].gap != gapNone || r.items[n+1].gap != gapNone || !r.owner(n) {
		return 0
	}
	last := n
	for x := n + 1; x < len(r.items) && x <= n+3 && r.items[x].gap == gapNone; x++ {
		it := &r.items[x]
		if it.s == "again" || it.kind == itDay || it.is(sThanks) {
			break
		}
		if notGround[it.s] || it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sPen, sFeeder, sBarrel, sIs)) {
			return 0
		}
		last = x
	}
	if last == n || !r.closes(last) {
		return 0
	}
	return last
}

// owner says that item n says whose something is, of another place than the pen.
func (r *reader) owner(n int) bool {
	s := r.items[n].s
	bare := strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(s, "s"), "'"), "'s")
	if bare == s || r.items[n].pig >= 0 {
		return false
	}
	return household[bare] || relatives[bare] || neighbors[bare]
}

var neighbors = setOfWords(split("neighbor, neighbour, next door, nextdoor, my neighbor, my neighbour, landlord, uncle, aunt, auntie, cousin, gran, nan, mam, ma, pa, missus, pastor, vicar, priest, farmer, mum, school"))

// notGround are what a pig may be in of somebody's that is no place to get out to.
var notGround = setOfWords(split("way, face, lap, arms, hands, books, truck, trailer, pocket, photo, photos, picture, pictures, story, eyes, name, head, van, car, opinion, absence, care, old, ear"))
