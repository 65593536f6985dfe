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
	return r.has(all, sEach) && r.firstQty(all, mass) >= 0 && r.firstQty(all, vessel) < 0 && r.firstQty(all, money) < 0 && !r.has(all, sFeed) && !r.has(all, sIngredient) && !r.has(all, sShed) && !r.has(all, sFeeder) && (r.has(all, sMore) || r.alive == 0)
}
