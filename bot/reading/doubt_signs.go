package reading

import (
	"strings"

	"troughbell/model"
)

// The signs that a span was taken for more than it says.

// otherWords counts the words of the sentence around a span that mean something
// and that nothing was made of.
func (r *reader) otherWords(s span) int {
	n := 0
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if k >= s.i && k < s.j && it.used && it.kind != itWord {
			continue
		}
		if it.kind == itWord && it.isAny(setOf(sFiller, sAnd, sPronoun, sIs, sThanks, sYes, sNow, sTell, sSnooze, sDone, sUS, sMetric, sUnits, sStop, sAsk, sAskSure, sTopic)) || it.kind == itDay || it.kind == itClock || it.unit != 0 && it.kind == itWord {
			continue
		}
		n++
	}
	return n
}

// toldOther says that the sentence of a putting off tells something else, so that
// it is but talk: "the blue one sprang a leak, I'll fix it tomorrow".
func (r *reader) toldOther(s span) bool {
	other := 0
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if k >= s.i && k < s.j || it.kind == itWord && it.isAny(setOf(sFiller, sAnd, sPronoun, sIs, sThanks, sYes, sNow, sTell, sStop, sNo, sAsk)) || aboutOf(it.s) != "" || it.kind == itDay || it.kind == itClock {
			continue
		}
		other++
	}
	return other > 1
}

// choreHeading says that the day of a span only heads what was done on it, where
// the chore day is known: "saturday round: ...".
func (r *reader) choreHeading(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itDay && it.day.every || it.kind == itClock || it.is(sTell) && !it.is(sChore) || it.s == "chore day" || it.s == "chore days" || it.s == "choreday" || it.s == "chores are" {
			return false
		}
		switch it.s {
		case "now", "instead", "change", "switch", "move", "moved", "from now on", "is", "are", "set", "make", "every", "to":
			return false
		}
	}
	return s.j < len(r.items)
}

// feedEnough says that "no feed" means that none was given, since enough is there:
// "no feed today, they still have plenty".
func (r *reader) feedEnough(s span) bool {
	if !r.has(s, sNoFeed) {
		return false
	}
	all := span{0, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	return r.quoteHas(all, "plenty", "enough", "still have", "still has", "still full", "still half", "given", "fed", "needed", "necessary") || saysAny(r.said(all), givenByUs)
}

// givenByUs tell who gave no feed, not that there is none.
var givenByUs = phrasesOf("no feed from me, no feed from us, no feed by me, no feed from him, no feed from her, no feed from my side, no feed from our side, no food from me, no food from us")

// arrived says that the text itself tells of pigs that came.
func (r *reader) arrived() bool {
	for _, e := range r.out {
		if f, ok := e.Act.(Fact); ok {
			if _, is := f.Fact.(model.Arrive); is {
				return true
			}
		}
	}
	return false
}

// penHeading says that a span is but the name of a pen that heads what follows:
// "Birch: fence 5,1".
func (r *reader) penHeading(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pen < 0 && !it.is(sPen) && !it.is(sFiller) {
			return false
		}
	}
	return r.items[s.j-1].label && s.j < len(r.items)
}

// penBehind is the item of a pen's name in a span or right behind it, 0 if there
// is none.
func (r *reader) penBehind(s span) int {
	for k := s.i; k < min(s.j+4, r.clauseEnd(s.j-1)); k++ {
		if r.items[k].pen >= 0 && r.items[k].pig < 0 {
			return k
		}
	}
	return 0
}

func (r *reader) hasThing(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].pen >= 0 {
			return true
		}
	}
	return false
}

// sizeless says that no size stands in a span.
func (r *reader) sizeless(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDim || it.qty(area) {
			return false
		}
	}
	return true
}

// cameOutright says that a verb of coming or getting stands in a span, not only
// one of having: the herd is there already.
func (r *reader) cameOutright(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sArrive) || it.isAny(setOf(sBorn, sNamed)) {
			continue
		}
		switch firstWord(it.s) {
		case "have", "had", "here", "are", "there", "we", "i", "i've", "we've", "keep", "keeping", "raising", "since", "home", "started", "start":
			if strings.Contains(it.s, "got") || strings.HasSuffix(it.s, "here") && strings.Contains(it.s, "pig") {
				return true
			}
		default:
			return true
		}
	}
	return false
}

// allOurs says that all pigs said to have come live here already.
func (r *reader) allOurs(from int) bool {
	for _, e := range r.out[from:] {
		f, ok := e.Act.(Fact)
		if !ok {
			return false
		}
		a, ok := f.Fact.(model.Arrive)
		if !ok || len(a.Animals) == 0 {
			return false
		}
		for _, name := range a.Animals {
			if !r.lives(name) {
				return false
			}
		}
	}
	return true
}

func (r *reader) lives(name string) bool {
	for _, a := range r.pigs[:r.alive] {
		if strings.EqualFold(a.Name, name) {
			return true
		}
	}
	return false
}

// onlyIdea says that the sentence of a booking speaks of a thought, not of an
// appointment.
func (r *reader) onlyIdea(s span) bool {
	for k := r.sentenceStart(s.i); k < s.j; k++ {
		switch r.items[k].s {
		case "thinking of", "thinking about", "thinking to", "thinking i", "thinking", "maybe", "hoping for", "around", "might", "may do", "consider", "considering", "should", "i should", "hope to", "hoping", "hoping to", "want to", "wants to", "wondering", "tempted", "would like to", "would like", "i'd like to", "we might", "i might", "maybe i'll", "ought to", "if", "need to", "i need to", "we need to", "have to", "must", "wish":
			return true
		}
	}
	return false
}

// goingRate says that money is told as a price by the measure and that nobody
// paid it: "corn is up to 7 dollars a bushel".
func (r *reader) goingRate(s span) bool {
	if r.quoteHas(s, "spent", "paid", "bought", "cost", "bill", "charged", "receipt") {
		return false
	}
	from, to := r.sentenceStart(s.i), r.sentenceEnd(s.j-1)
	if r.quoteHas(span{s.frame, from, to}, "quote", "quoted", "estimate", "asking", "wants", "would cost") {
		return true
	}
	if r.has(span{s.frame, from, to}, sBuy) {
		return false
	}
	for k := from; k < to; k++ {
		it := &r.items[k]
		if (it.s == "price" || it.s == "prices") && k <= s.i+1 && k+1 < to && r.items[k+1].s == "of" {
			return true
		}
		if it.s == "bushel" || k > from && (r.items[k-1].s == "a" || r.items[k-1].s == "per") && (it.unit.dim() == mass) && it.kind == itWord {
			return true
		}
	}
	return false
}

// forOthers says that goods were got for other animals or people: "3 bags of
// feed for the hens".
func (r *reader) forOthers(s span) bool {
	for k := s.i + 1; k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.is(sForeign) && !household[it.s] && (r.items[k-1].s == "for" || k > s.i+1 && r.items[k-2].s == "for" && r.items[k-1].is(sFiller)) {
			return true
		}
	}
	return false
}

// firstMoney is the first amount of money in the sentence from a span on, -1 if
// there is none.
func (r *reader) firstMoney(s span) int {
	return r.firstQty(span{s.frame, s.i, r.sentenceEnd(s.j - 1)}, money)
}

// leastBuy is the least that a bare number beside an ingredient is taken for, in
// the herd's unit. Common practice, no source.
const leastBuy = 12

// bareGoods says that what was got has neither a unit nor a name: "got up to 93".
func (r *reader) bareGoods(s span, from int) bool {
	if r.has(s, sIngredient) && !r.has(s, sBuy) && !r.has(s, sShed) && len(r.out) == from+1 { // "corn is 6.20 now"
		if k := r.firstAny(s); k >= 0 && r.firstQty(s, mass) < 0 && r.firstQty(s, vessel) < 0 && r.firstQty(s, money) < 0 && r.items[k].v < leastBuy {
			return true
		}
	}
	if r.has(s, sFeed) || r.has(s, sIngredient) || r.has(s, sShed) || r.firstQty(s, money) >= 0 || r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 {
		return false
	}
	for _, e := range r.out[from:] {
		if f, ok := e.Act.(Fact); ok {
			if st, is := f.Fact.(model.Stock); is && st.Ingredient == "" && st.Count == nil && st.Amount == nil {
				return true
			}
		}
	}
	return false
}

// supposed says that a span without a question's form stands behind an "if".
func (r *reader) supposed(s span) bool {
	for k := r.sentenceStart(s.i); k < s.j; k++ {
		if it := &r.items[k]; it.s == "if" || it.s == "unless" {
			return true
		}
	}
	return false
}

// otherGoods says that the bucket or bag was of something that is no feed: "a
// bucket of apples".
func (r *reader) otherGoods(s span) bool {
	for k := s.i; k < s.j && k+2 < len(r.items); k++ {
		it, of, x := &r.items[k], &r.items[k+1], &r.items[k+2]
		if !it.qty(vessel) || of.s != "of" || of.gap != gapNone || x.gap != gapNone {
			continue
		}
		return !x.isAny(setOf(sFeed, sIngredient, sFiller, sPronoun, sRecipe, sMixed, sWater)) && x.kind != itQty && !x.number()
	}
	return false
}

// ownAches says that a span tells but of aching limbs, whose it does not say, so that
// they are likelier those of the person who writes: "wallow 300 l. feet hurt".
func (r *reader) ownAches(s span) bool {
	limb, ache := false, false
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.i); k++ {
		switch it := &r.items[k]; {
		case it.s == "feet" || it.s == "back" || it.s == "knees" || it.s == "hands" || it.s == "head" || it.s == "legs" || it.s == "arms" || it.s == "shoulders":
			limb = true
		case it.s == "feet hurt" || it.s == "back hurts" || it.s == "feet are killing me":
			limb, ache = true, true
		case it.s == "hurt" || it.s == "hurts" || it.s == "ache" || it.s == "aches" || it.s == "aching" || it.s == "sore":
			ache = true
		case it.is(sFiller) && it.pig < 0:
		default:
			return false
		}
	}
	return limb && ache
}

// nobodySick says that the span names no animal that is unwell, so that its word
// is of something else: "the ground was all torn up".
func (r *reader) nobodySick(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 || it.group >= 0 || it.soft || it.number() || it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sYoung, sOld, sBoth, sRest, sPronoun, sEach)) || it.isAny(setOf(sSick)) && r.strongSick(span{s.frame, k, k + 1}) {
			return false
		}
	}
	return len(r.subject) == 0 && r.alive > 1 && !r.tellsOfOne(s.i)
}

// onlyNamed says that nothing but a pig's name made a question of a sentence
// with words of its own: "juno is so cute when she sleeps".
func (r *reader) onlyNamed(s span, from int) bool {
	a, ok := r.out[from].Act.(Ask)
	if !ok || a.Topic != "weight" || len(a.Animals) == 0 || a.On != nil || r.has(s, sTopic) || r.has(s, sAskSure) || r.has(s, sWeigh) {
		return false
	}
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.kind == itWord && it.sense.empty() && it.unit == 0 {
			return true
		}
	}
	return false
}

// handful says that a bare number too small for a pour was taken for one, with
// no word of pouring: "the three small go to apple".
func (r *reader) handful(s span, from int) bool {
	if r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 || r.has(s, sFill) || r.has(s, sPour) || r.has(s, sTook) {
		return false
	}
	for _, e := range r.out[from:] {
		if f, ok := e.Act.(Fact); ok {
			if p, is := f.Fact.(model.Refill); is && p.FeedKg != nil && *p.FeedKg < leastPourKg {
				return true
			}
		}
	}
	return false
}

// leastPourKg is the least that a bare number beside a feeder is taken for, in
// kilograms. Common practice, no source.
const leastPourKg = 2.5

// misheard says that a fence's reading was put into words that a machine heard
// wrong: "fence for point eight", "fence five ate".
func (r *reader) misheard(s span) bool {
	if r.firstQty(s, voltage) >= 0 {
		return false
	}
	for k := s.i + 1; k < r.clauseEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.s == "point" && k+1 < len(r.items) && r.items[k+1].kind == itNum && r.items[k-1].kind != itNum || it.s == "ate" && r.items[k-1].kind == itNum {
			return true
		}
	}
	return false
}

// fenceAside says that a bare number stands apart from the word for the fence,
// behind an "at" or "on" and words of another kind: "fence guy comes at 5".
func (r *reader) fenceAside(s span, from int) bool {
	if r.firstQty(s, voltage) >= 0 || len(r.out) != from+1 {
		return false
	}
	at := r.find(s, sFence)
	if at < 0 {
		return false
	}
	for k := at + 1; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itNum && !it.soft {
			return k-at > 2 && r.items[k-1].s == "at" && it.v == float64(int(it.v))
		}
	}
	return false
}

// eitherAmount says that an amount is told as one or another: "3 or 4 bags".
func (r *reader) eitherAmount(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.rng && it.used && (it.qty(vessel) || it.qty(mass) || it.qty(volume)) {
			return true
		}
	}
	return false
}
