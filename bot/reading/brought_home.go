package reading

// Feed that was fetched, told by where it came from or went: "hauled 5 bags home from
// the elevator", "six more bags from the co-op".

// broughtHome takes the words for a place where feed is bought, and "home", beside a
// count of bags for a word of buying, and what they were carried by for no pouring.
func (r *reader) broughtHome() {
	for k := range r.items {
		if it := &r.items[k]; !it.qty(vessel) || it.unit == unitBale || it.unit == unitBatch || it.quest {
			continue
		}
		i, j := r.clauseFrom(k), r.clauseEnd(k)
		if at := r.boughtAt(i, j); at >= 0 {
			r.items[at].sense = setOf(sBuy)
			for n := i; n < j; n++ {
				if it := &r.items[n]; carries[it.s] && n < k {
					it.sense = setOf(sFiller)
				} else if n > k && it.kind == itWord && (n <= at || it.s == "op" || sellers[it.s]) {
					it.used = true
				}
			}
		}
	}
}

// boughtAt is the item of items[i:j] that says that goods were fetched, -1 where none
// does or where they went on into a feeder.
func (r *reader) boughtAt(i, j int) int {
	at := -1
	for k := i; k < j; k++ {
		it := &r.items[k]
		prev := &item{}
		if k > i {
			prev = &r.items[k-1]
		}
		switch {
		case it.feeder >= 0, it.pig >= 0, it.isAny(setOf(sFeeder, sBuy, sPigs, sFill, sTook, sButcher)) && !it.is(sFiller), it.is(sPour) && !it.is(sFiller) && !carries[it.s]:
			return -1
		case it.s == "home" && (prev.unit.dim() == vessel || carries[prev.s] || prev.s == "way"):
			at = k
		case sellers[it.s] && r.sellerAhead(k, i), it.s == "co" && k+1 < j && r.items[k+1].s == "op":
			at = k
		case it.s == "dropped off", it.s == "dropped" && k+1 < j && r.items[k+1].qty(vessel):
			at = k
		}
	}
	return at
}

// sellerAhead says that a word of coming from, or being at, stands before the seller at
// item k.
func (r *reader) sellerAhead(k, i int) bool {
	for n := k - 1; n >= i && n >= k-3; n-- {
		switch firstWord(r.items[n].s) {
		case "from", "at", "to", "in", "off":
			return true
		}
		if !r.items[n].is(sFiller) && r.items[n].s != "feed" && r.items[n].s != "grain" {
			return false
		}
	}
	return false
}

// sellers are who feed is bought from, and where.
var sellers = setOfWords(split("elevator, grain elevator, feed elevator, coop, store, feed place, farm store, hardware store, ranch store, town, supplier, dealer, merchant, agri store, market, feed man, feed guy"))

// carries are words for carrying that tell no pouring where goods are fetched.
var carries = setOfWords(split("hauled, lugged, carried, dragged, toted, trucked, drove, brought, dropped off, dropped, got, took, schlepped, packed"))

// boughtShared settles what was bought where it is told behind how much of it went into
// a feeder: "bought 4 sacks of grower for 6,200 and put one in the feeder".
func (r *reader) boughtShared() {
	for k := range r.items {
		it := &r.items[k]
		if !it.qty(vessel) || it.unit == unitBale || it.unit == unitBatch || it.quest || it.v <= 0 {
			continue
		}
		i := r.clauseFrom(k)
		_, j := r.stretch(k)
		for j < len(r.items) && r.onlyPrice(j, r.stretchEnd(j)) {
			j = r.stretchEnd(j)
		}
		bought := span{fStock, i, j}
		if !r.has(bought, sBuy) && !r.tellsGoods(i, j) && !r.feedPriced(bought) || r.has(bought, sFeeder) || r.has(bought, sPlan) || r.has(bought, sNot) || r.has(bought, sForeign) || r.find(bought, sFill) >= 0 {
			continue
		}
		shares := r.sharesFrom(j, sharedOut{it.v, it.unit})
		if len(shares) == 0 {
			continue
		}
		r.settled = append(r.settled, bought)
		r.giveShares(shares)
		return
	}
}

// feedPriced says that a count of feed and a bare number too high for a count stand
// together: "4 sacks grower 6200".
func (r *reader) feedPriced(s span) bool {
	k := r.firstNum(s)
	return k >= 0 && r.items[k].v > mostVessels && (r.has(s, sFeed) || r.has(s, sIngredient))
}

func (r *reader) stretchEnd(k int) int {
	_, j := r.stretch(k)
	return j
}

// onlyPrice says that items[i:j] tell nothing but money.
func (r *reader) onlyPrice(i, j int) bool {
	priced := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(money), it.kind == itNum && !it.soft && !it.ord && (it.v > mostVessels || it.decimals2()):
			priced = true
		case it.kind == itWord && it.unit == 0 && it.isAny(setOf(sFiller, sPay, sTotal, sEach)):
		default:
			return false
		}
	}
	return priced
}
