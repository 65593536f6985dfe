package reading

// What is hauled, loaded or taken out to pigs is goods, and the pigs stay where they are.

// goodsToPigs takes the butcher from the hauling and the escape from the "out" of what
// goes to pigs: "hauled hay to the gilts", "rolled the pumpkins out to otis".
func (r *reader) goodsToPigs() {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0 || it.quest:
		case it.is(sSlaughtered) && haulWords[it.s] && r.haulsGoods(k):
			it.sense.drop(sSlaughtered)
			if it.sense.empty() {
				it.sense = setOf(sFiller)
			}
		case lastWord(it.s) == "out" && it.isAny(setOf(sOut, sEmpty)) && r.outToPigs(k):
			r.blank(k)
		}
	}
}

// haulsGoods says that what was hauled at item k is no pig, and that pigs are where it
// went.
func (r *reader) haulsGoods(k int) bool {
	thing := false
	for n := k + 1; n < len(r.items) && n <= k+7 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		switch {
		case it.pig >= 0, it.group >= 0, it.isAny(whoWords), it.s == "them", it.s == "em":
			return false // a pig was hauled
		case it.is(sButcher), it.number() && !it.soft && it.kind != itQty:
			return false
		case it.s == "to" || it.s == "for" || lastWord(it.s) == "to":
			return thing && r.pigBehind(n)
		case !it.is(sFiller):
			thing = true
		}
	}
	return false
}

// outToPigs says that the "out" at item k leads to pigs: "went out to the gilts".
func (r *reader) outToPigs(k int) bool {
	if k+2 >= len(r.items) || r.items[k+1].s != "to" || r.items[k+1].gap != gapNone {
		return false
	}
	for n := k - 1; n >= r.clauseFrom(k); n-- { // "the boys got out to the gilts"
		if it := &r.items[n]; it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) || theySaid[firstWord(it.s)] {
			return false
		}
	}
	return r.pigBehind(k + 1)
}
