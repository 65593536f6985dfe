package reading

import (
	"math"
	"strings"

	"troughbell/model"
)

// What a question supposes, "if I sell three", "with two more pigs", "say we take
// them to 280", stands in a clause of its own. It is read by itself, so that its
// pigs, its day and its weight are not taken for those asked about.

// supposition is the clause of a question that supposes something, and what; nil if
// it supposes nothing that can be reckoned with.
func (r *reader) supposition(s span) (span, *model.Assumption) {
	for k := s.i; k < s.j; k++ {
		if !r.supposesAt(k, s.i) {
			continue
		}
		c := span{fAsk, k, r.supposedTo(k, s.j)}
		if as := r.supposedIn(c); as != nil {
			return c, as
		}
	}
	return span{}, nil
}

// supposedHead is the item from which a sentence asks by what it supposes first: "let's
// say three go to market how long does the feed last"; -1 if it does not.
func (r *reader) supposedHead(from, to int) int {
	for k := from; k < to; k++ {
		if k > from && r.items[k].gap == gapNone && !r.onlyOpening(from, k) && !r.muses(k) || !r.supposesAt(k, from) {
			continue
		}
		c := span{fAsk, k, r.supposedTo(k, to)}
		if c.j >= to || !r.items[to-1].quest && !r.asksBehind(c.j, to) || r.supposedIn(c) == nil && r.find(c, sAway) < 0 {
			continue
		}
		if r.tells(from, k) {
			return k
		}
		return from
	}
	return -1
}

// supposesAt says that a clause which supposes something can begin at item k of a
// question that begins at item from.
func (r *reader) supposesAt(k, from int) bool {
	it := &r.items[k]
	if it.kind == itNum && k == from && k+1 < len(r.items) && r.items[k+1].isAny(setOf(sMore, sFewer)) {
		return true // "two more pigs, how long would the feed last then"
	}
	if it.kind != itWord || it.pig >= 0 {
		return false
	}
	switch first := firstWord(it.s); {
	case first == "if" || supposeHeads[first] || strings.HasPrefix(it.s, "what if") || strings.HasPrefix(it.s, "what happens") || strings.HasPrefix(it.s, "what would happen"):
		return k == 0 || !r.ifNot(k-1)
	case it.s == "let's say", it.s == "lets say", it.s == "say i", it.s == "say we", it.s == "say they", it.s == "were i", it.s == "were we":
		return true
	case first == "say" || first == "without":
		return k == from || it.gap >= gapComma || r.onlyOpening(from, k) || first == "without"
	case first == "with":
		return true
	case first == "nobody", first == "noone", it.s == "no one":
		return k == from
	case first == "when", first == "once": // "when the barrows are gone how long will the water last"
		return k == from && k+1 < len(r.items) && !helpVerbs[secondWord(it.s)] && !helpVerbs[firstWord(r.items[k+1].s)]
	}
	return false
}

var supposeHeads = setOfWords(split("suppose, supposing, assuming, assume, imagine, imagining, pretend, hypothetically, providing, provided"))

// supposedTo is where the clause that begins at item k ends: where a question begins.
func (r *reader) supposedTo(k, end int) int {
	comma := end
	for n := k + 1; n < end; n++ {
		it := &r.items[n]
		if it.pig >= 0 || it.kind != itWord {
			continue
		}
		if r.asksBehind(n, end) {
			return n
		}
		if it.gap >= gapComma && comma == end && !r.items[n].isAny(setOf(sPigs, sSold, sSlaughtered, sMore)) {
			if _, score := r.topicOf(span{fAsk, n, end}); score >= topicSure {
				comma = n
			}
		}
	}
	return comma
}

// topicSure is what a topic's words must weigh so that a stretch without a question's
// words asks by them. Common practice, no source.
const topicSure = 2.5

// asksBehind says that item n begins a question behind what it supposes.
func (r *reader) asksBehind(n, end int) bool {
	it, p := &r.items[n], &r.items[n-1]
	w := firstWord(it.s)
	subject := it.gap == gapNone && (p.isAny(setOf(sPronoun, sPigs, sYoung, sAll, sRest)) || p.pig >= 0 || p.kind == itNum && (r.finishKg(n-1) == 0 || (it.s == "is" || it.s == "was" || it.s == "are") && !(n+1 < end && r.items[n+1].is(sPronoun))) || headSubject[lastWord(p.s)])
	switch {
	case askWords[w]:
		return !(w == "when" || w == "where" || w == "which" || w == "who") || n+1 < end && (helpVerbs[secondWord(it.s)] || helpVerbs[firstWord(r.items[n+1].s)]) || it.gap >= gapComma
	case subject && !(helpVerbs[w] && it.s == w && r.ownSubject(n+1, end)):
		return false
	case it.is(sAskSure) && it.s != "what":
		return true
	case helpVerbs[w] && n+1 < end && it.s == w:
		x := &r.items[n+1]
		return x.isAny(setOf(sPronoun, sFeed, sWater, sPigs, sFeeder, sBarrel)) || x.pig >= 0 || x.kind == itThing || determiners[firstWord(x.s)] || askedSubjects[firstWord(x.s)]
	}
	return false
}

// ownSubject says that the feed, the water or what holds it stands at item k, as the
// subject of the verb before it: "if we got one more pig would the hopper last".
func (r *reader) ownSubject(k, end int) bool {
	if k < end && determiners[firstWord(r.items[k].s)] {
		k++
	}
	return k < end && (r.items[k].kind == itThing && r.items[k].pen < 0 || r.items[k].isAny(setOf(sFeed, sFeeder, sWater, sBarrel)) && !r.items[k].is(sFiller))
}

// headSubject are the last words of heads and phrases that are a clause's subject.
var headSubject = setOfWords(split("i, we, they, he, she, it, you, there, that, this, them, nobody, anybody, somebody, everybody, everyone, one, ones, half, who, no one"))

func secondWord(s string) string {
	_, rest, _ := strings.Cut(s, " ")
	return firstWord(rest)
}

// supposedIn is what a clause supposes of the herd, its target or the person's round.
func (r *reader) supposedIn(c span) *model.Assumption {
	said := r.said(c)
	as := model.Assumption{}
	head := firstWord(r.items[c.i].s)
	if kg := r.supposedTarget(c, said); kg > 0 && head != "with" && head != "when" && head != "once" {
		as.TargetKg = &kg
	}
	if as.TargetKg == nil {
		as.SkipDays = r.supposedSkip(c, said)
	}
	if as.SkipDays == 0 {
		as.CountDelta = r.supposedPigs(c, said, as.TargetKg != nil)
	}
	if as == (model.Assumption{}) {
		return nil
	}
	return &as
}

var (
	goalWords  = phrasesOf("target, goal, aim, aiming, aimed, finish weight, end weight, raise it, raised it, bump it, set it, change it")
	priceWords = phrasesOf("apiece, a piece, a head, dollars, bucks, a pound, per pound, a kilo, per kilo, for the pair, price, cost, costs")
)

// supposedTarget is a target weight that a clause supposes, in kilograms; 0 if none.
func (r *reader) supposedTarget(c span, said string) float64 {
	if saysAny(said, priceWords) || r.asksHeat(c) || saysAny(said, heatSupposed) {
		return 0
	}
	goal := r.has(c, sTarget) || saysAny(said, goalWords)
	for k := c.i + 1; k < c.j; k++ { // its first item is the word that supposes
		kg := r.finishKg(k)
		if kg == 0 || r.insteadOf(k, c.i) {
			continue
		}
		switch p := firstWord(r.items[k-1].s); {
		case goal:
		case p == "is", p == "was", p == "weighs", p == "are", p == "were", p == "be", p == "for":
			continue // "if otis is 250 by then"
		case r.has(c, sSold):
			continue
		}
		return kg
	}
	return 0
}

var heatSupposed = phrasesOf("degrees, hot, heat")

// finishKg is item k as a weight that pigs may be finished at, in kilograms; 0 if it
// is none.
func (r *reader) finishKg(k int) float64 {
	it := &r.items[k]
	if !it.number() || it.soft || it.ord || it.pig >= 0 || it.plus {
		return 0
	}
	u := it.unit
	if it.kind == itNum {
		u = r.massUnit()
	}
	if u.dim() != mass {
		return 0
	}
	if kg := u.si(it.v); kg >= 60 && kg <= 250 {
		return kg
	}
	return 0
}

// insteadOf says that the number at item k is what another one stands instead of:
// "to 280 instead of 265".
func (r *reader) insteadOf(k, from int) bool {
	for n := k - 1; n >= from && n >= k-3; n-- {
		switch s := r.items[n].s; {
		case s == "instead of", s == "rather than", s == "not", s == "than", s == "over", s == "from", lastWord(s) == "than":
			return true
		case r.items[n].number() && !r.items[n].soft:
			return false
		}
	}
	return false
}

var (
	skipWords   = phrasesOf("skip, skipped, skipping, skips, miss, missed, missing")
	nobodyWords = phrasesOf("nobody, no one, noone, no body, none of us, no-one, not a soul, nobody's, leave them alone, leave them be, leave em alone, left them alone, left them be, leave the pigs alone, let them be, stay away, stayed away, stay home, stayed home, can't get out there, cant get out there, can't make it, cant make it, couldn't make it, couldnt make it, couldn't get out, couldnt get out, can't get out, cant get out")
	notWords    = phrasesOf("don't, dont, didn't, didnt, do not, did not, not, can't, cant, cannot, couldn't, couldnt, won't, wont, never, doesn't, doesnt, wasn't, wasnt, weren't, werent, am not, forget to, forgot to")
	roundWords  = phrasesOf("come, came, coming, comes, go out, go there, get there, get out there, be there, be here, show up, shows up, check, checks, checked, do chores, did chores, fill, filled, top up, topped up, feed them, fed them, refill, out there, there")
)

// supposedSkip is for how many days a clause supposes that nobody does the round; 0
// if it does not.
func (r *reader) supposedSkip(c span, said string) int {
	if !saysAny(said, nobodyWords) && !saysAny(said, skipWords) && !(saysAny(said, notWords) && saysAny(said, roundWords)) {
		return 0
	}
	for k := c.i; k < c.j; k++ {
		if it := &r.items[k]; it.qty(days) && it.v > 0 {
			return int(it.si() + 0.5)
		}
	}
	switch {
	case saysAny(said, oneDay):
		return 1
	case saysAny(said, fortnightWords):
		return 14
	}
	return 7 // a round a week
}

var fortnightWords = phrasesOf("fortnight")

var oneDay = phrasesOf("a day, one day, the day")

var (
	otherHerd  = phrasesOf("next spring, next summer, next fall, next autumn, next year, next season, next time, next batch")
	fewerWords = phrasesOf("less, fewer, minus, without, gone, going, goes, sold, die, died")
	moreWords  = phrasesOf("more, extra, another, additional")
	addWords   = phrasesOf("add, added, adding, get, got, getting, buy, bought, buying, take on, took on, bring, brought, put, throw, threw, squeeze, have, had, keep, kept, raise, raised, with, adopt, adopted, having")
	leaveWords = phrasesOf("eat, eats, ate, sell, sold, selling, sells, go, goes, going, gone, went, leave, leaves, leaving, left, butcher, butchered, butchering, slaughter, slaughtered, slaughtering, haul, hauled, hauling, ship, shipped, shipping, rid, die, dies, died, dead, lose, lost, losing, kill, killed, send, sent, remove, removed, removing, give, gave, less, fewer, without, minus, load, loaded, off, out, away, process, processed, take in, take to, cull, culled, gives, moved out, market, taken, down to")
	sellWords  = phrasesOf("eat, ate, sell, sold, selling, sells, butcher, butchered, butchering, slaughter, slaughtered, slaughtering, haul, hauled, hauling, ship, shipped, shipping, rid, lose, lost, losing, kill, killed, send, sent, remove, removed, removing, give, gave, less, fewer, without, minus, load, loaded, process, processed, take, took, off, cull, culled, down to, move, moved, drop, dropped")
	selfWords  = phrasesOf("i, we, i'm, im, we're, i've, we've")
	onlyWords  = phrasesOf("only, just, down to, there were, there was, instead")
	haveWords  = phrasesOf("had, have, were, was, are, keep, kept, left, raise, raised, with, down to, having, be")
	thingWords = setOf(sFeeder, sBarrel, sWater, sPen, sIngredient, sFeed, sWallow)
)

// supposedPigs is how many pigs more a clause supposes, fewer below zero.
func (r *reader) supposedPigs(c span, said string, target bool) int {
	if r.alive == 0 || saysAny(said, otherHerd) {
		return 0
	}
	head := firstWord(r.items[c.i].s)
	n, at := r.pigsCounted(c, target)
	more := saysAny(said, moreWords)
	leave := saysAny(said, leaveWords) && (saysAny(said, sellWords) || !saysAny(said, selfWords))
	switch {
	case more && n == 0 && saysAny(said, onePigMore) && (r.has(c, sPigs) || r.has(c, sYoung)):
		return 1
	case more && n > 0:
		return n
	case n > 0 && at >= 0 && n != r.alive && !saysAny(said, fewerWords) && saysAny(said, haveWords) && (saysAny(said, onlyWords) || r.herdOf(at, c) > 0 && !saysAny(said, gettingWords)):
		return n - r.alive
	case (head == "when" || head == "once") && !saysAny(said, fewerWords):
		return 0
	case leave && !target:
		if at < 0 {
			n = 0
		}
		if named := r.pigsLeaving(c, target); named > 0 && (n == 0 || named < n || r.namesIn(c)) {
			n = named
		}
		return -min(n, r.alive)
	case n > 0 && saysAny(said, addWords) && (r.has(c, sPigs) || r.has(c, sYoung) || saysAny(said, toTheseWords)):
		return n
	}
	return 0
}

var toTheseWords = phrasesOf("in with, to the, with them")

var gettingWords = phrasesOf("get, got, add, added, buy, bought")

var onePigMore = phrasesOf("another, one more, a pig more, an extra, an additional")

// pigsCounted is the number of pigs that a clause names, and the item that does.
func (r *reader) pigsCounted(c span, target bool) (int, int) {
	for k := c.i; k < c.j; k++ {
		it := &r.items[k]
		if k+1 < c.j && (r.items[k+1].isAny(thingWords) && !r.items[k+1].is(sPigs) || k+2 < c.j && r.items[k+1].isAny(setOf(sMore, sFiller)) && r.items[k+2].isAny(thingWords) && !r.items[k+2].is(sPigs)) {
			continue // "another feeder", "2 more barrels"
		}
		switch {
		case it.pig >= 0:
		case it.kind == itFrac && !target && it.unit == 0 && it.v > 0 && it.v < 1:
			return int(math.Round(it.v * float64(r.alive))), k
		case it.kind == itNum && !it.ord && it.v >= 1 && it.v <= mostPigs && it.v == float64(int(it.v)) && r.finishKg(k) == 0:
			if it.soft && (k+1 < c.j && r.items[k+1].kind == itWord && !r.items[k+1].isAny(setOf(sPigs, sYoung, sMore, sFewer, sBarrow, sGilt)) && it.s != "one") {
				continue
			}
			return int(it.v), k
		}
	}
	return 0, -1
}

// pigsLeaving is how many pigs a clause names by name, sex or age, or as all of them.
func (r *reader) pigsLeaving(c span, target bool) int {
	used := make([]bool, 0, c.j-c.i)
	for k := c.i; k < c.j; k++ {
		used = append(used, r.items[k].used)
	}
	sel := r.selectPigs(c.i, c.j)
	for k := c.i; k < c.j; k++ {
		r.items[k].used = used[k-c.i]
	}
	switch {
	case sel.all && !target && r.has(c, sAll):
		return r.alive
	case sel.all || sel.stray || sel.lost:
		return 0
	}
	return len(sel.pigs)
}

func (r *reader) namesIn(c span) bool {
	for k := c.i; k < c.j; k++ {
		if r.items[k].pig >= 0 {
			return true
		}
	}
	return false
}

// doesTo is the item behind "do to" in a question of what something would do to
// something else, "what would 2 more pigs do to the feed", -1 if it is none.
func (r *reader) doesTo(s span) int {
	for k := s.i; k+2 < s.j; k++ {
		switch r.items[k].s {
		case "do", "does", "mean", "means":
			if n := &r.items[k+1]; n.gap == gapNone && (n.s == "to" || n.s == "for") {
				return k + 2
			}
		case "do to", "does to", "mean for", "means for":
			return k + 1
		}
	}
	return -1
}
