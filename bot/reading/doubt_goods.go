package reading

// The signs that no feed or water was poured or bought.

// habit says that a filling is what is always done, not what was: "i fill feed and
// water on saturdays".
func (r *reader) habit(s span) bool {
	from, to := r.clauseFrom(s.i), r.clauseEnd(s.j-1)
	for k := from; k < to; k++ {
		if it := &r.items[k]; it.kind == itDay && it.day.every {
			return r.amountless(from, to) && r.quoteHas(span{s.frame, from, to}, "fill", "i fill", "we fill", "refill", "do", "top", "check", "fill up")
		}
	}
	return false
}

// headsBought says that what was got is pigs, told by what each weighs and by no
// word of feed: "got three more today, 40 lb each".
func (r *reader) headsBought(s span) bool {
	all := span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	if r.quoteHas(all, "new pigs", "new piglets", "new weaners") && !r.quoteHas(all, "for", "bag", "bags", "sack") && r.firstQty(all, mass) >= 0 && r.firstQty(all, vessel) < 0 && !r.has(all, sFeed) && !r.has(all, sIngredient) {
		return true // "got our new pigs today, Otis and Clover, about 42 lb"
	}
	return r.has(all, sEach) && r.firstQty(all, mass) >= 0 && r.firstQty(all, vessel) < 0 && r.firstQty(all, money) < 0 && !r.has(all, sFeed) && !r.has(all, sIngredient) && !r.has(all, sShed) && !r.has(all, sFeeder) && (r.has(all, sMore) || r.alive == 0)
}

// weightOfNamed is the number in a span of feed that a pig's name and an "is" lead to,
// -1 if there is none: "moss is 161 and the hopper is half".
func (r *reader) weightOfNamed(s span) int {
	for k := max(s.i, 2); k < s.j; k++ {
		it := &r.items[k]
		if (it.kind == itNum || it.qty(mass)) && !it.soft && it.gap == gapNone && r.items[k-1].gap == gapNone && (r.items[k-1].s == "is" || r.items[k-1].s == "weighs" || r.items[k-1].s == "weighed") && r.items[k-2].pig >= 0 && !r.items[k-2].near {
			return k
		}
	}
	return -1
}

// fedNotWeighed says that the verb of a clause whose weight was taken for a pig's is one
// of feeding: "Brick helped me pour 60 pounds".
func (r *reader) fedNotWeighed(s span, from int) bool {
	if r.firstQty(s, mass) < 0 {
		return false
	}
	at := r.firstQty(s, mass)
	i, j := r.stretch(at)
	all := span{0, i, j}
	if r.has(all, sWeigh) || r.has(all, sTape) || r.has(all, sCrate) {
		return false
	}
	fed := false
	for k := all.i; k < all.j; k++ {
		if it := &r.items[k]; it.pig < 0 && feedVerbs[firstWord(it.s)] {
			fed = true
		}
		if r.items[k].qty(mass) {
			return fed
		}
	}
	return false
}

var feedVerbs = setOfWords(split("gave, fed, pour, poured, dump, dumped, ate, eats, eat, pouring, feeding"))

func weighApart(r *reader, s span, from int) {
	k := r.weightOfNamed(s)
	r.out = r.out[:from]
	r.fillWeigh(span{fWeigh, k - 2, k + 1})
	if k+1 < s.j {
		r.fillFeed(span{fFeed, k + 1, s.j})
	}
}

// onThePlatform says that a bare weight in a sentence that names a pig and no feed was
// taken for feed.
func (r *reader) onThePlatform(s span, from int) bool {
	k := r.firstQty(s, mass)
	if k < 0 || len(r.out) != from+1 {
		return false
	}
	named := false
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		named = named || n < k && it.pig >= 0 && !it.near
		if n > k && it.feeder >= 0 && n+1 < len(r.items) && r.items[n+1].gap == gapNone && (onePig[r.items[n+1].s] || r.items[n+1].is(sPigs)) {
			continue // "the little porker" is no little hopper
		}
		if it.feeder >= 0 || it.barrel >= 0 || it.qty(vessel) || it.isAny(setOf(sFeed, sFeeder, sFill, sPour, sTook, sGave, sIngredient, sMixed, sBuy, sLeft)) && it.kind == itWord && it.pig < 0 && !it.is(sFiller) {
			return false
		}
	}
	return named
}

func weighInstead(r *reader, s span, from int) {
	k := r.firstQty(s, mass)
	r.out = r.out[:from]
	r.fillWeigh(span{fWeigh, r.sentenceStart(k), k + 1})
}
