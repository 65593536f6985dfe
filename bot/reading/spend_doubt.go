package reading

// strangeBefore is how many words of no known concern before an amount of money
// make it another's: "church ladies raised 240 dollars".
const strangeBefore = 3

// strangersMoney says that nobody of the household is said to have paid the money
// of a span, and that the words before it are of something else.
func (r *reader) strangersMoney(s span) bool {
	k := r.firstQty(s, money)
	if k < 0 {
		return false
	}
	from, strange := r.clauseFrom(k), 0
	for n := from; n < k; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sPay, sBuy, sReceived, sIngredient, sFeed, sTreat, sWorm, sSold, sButcher, sFeeder, sBarrel)) && !it.is(sFiller) || sundries[it.s] || it.s == "for" {
			return false
		}
		if it.kind == itWord && it.unit == 0 && !it.isAny(setOf(sFiller, sIs, sAnd, sPronoun, sOf)) && it.sense.empty() {
			strange++
		}
	}
	return strange >= strangeBefore
}

// drugReceived says that what was received in the sentence of a span is a drug, by pigs.
func (r *reader) drugReceived(s span, _ int) bool {
	whole := span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}
	return r.has(whole, sReceived) && r.has(whole, sProduct) && r.firstQty(whole, money) < 0
}
