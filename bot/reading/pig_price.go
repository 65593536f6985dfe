package reading

// What was paid for pigs stands beside their coming, by the head or for all: "bought four
// pigs, 45 lb, paid 75 apiece", "3 weaners for 240". It is no weight, and what is paid by
// the head is paid as often as pigs came.

// pricedBy are the words right before a bare number that is a price.
var pricedBy = setOfWords(split("for, paid, paying, pd, cost, cost us, cost me, they cost, they were, at only"))

// pigPrices finds such a price and makes a sum of money of it, apart from the rest.
func (r *reader) pigPrices() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		bare := it.kind == itNum && !it.soft && !it.ord && !it.rng && pricedBy[r.items[k-1].s] && it.gap == gapNone
		if !bare && !it.qty(money) || it.quest {
			continue
		}
		n := r.pigsBought(k)
		if n == 0 {
			continue
		}
		end := r.byTheHead(k)
		if bare && end == 0 && r.items[k-1].s != "for" && r.items[k-1].s != "paid" {
			continue
		}
		r.payBare(k)
		if end > 0 {
			it.v *= float64(n)
			for m := k + 1; m < end; m++ {
				r.blank(m)
			}
		}
		at := k
		if pricedBy[r.items[k-1].s] && it.gap == gapNone {
			at = k - 1
			r.items[at].kind, r.items[at].s, r.items[at].sense, r.items[at].known = itWord, "paid", setOf(sPay), true
		}
		r.items[at].gap = max(r.items[at].gap, gapComma)
	}
}

// pigsBought is how many pigs the sentence of item k says were bought before it; 0 where
// it does not.
func (r *reader) pigsBought(k int) int {
	bought, n := false, 0
	for m := r.sentenceStart(k); m < r.sentenceEnd(k); m++ {
		it := &r.items[m]
		bought = bought || it.isAny(setOf(sBuy, sArrive, sPay))
		switch {
		case m > k || n > 0 || it.soft || it.v < 1 || it.v > mostPigs || it.v != float64(int(it.v)):
		case it.qty(head):
			n = int(it.v)
		case it.kind == itNum:
			for x := m + 1; x < k && x <= m+3 && r.items[x].gap == gapNone; x++ {
				if r.items[x].isAny(setOf(sPigs, sYoung, sBarrow, sGilt, sBoar, sSow)) && r.items[x].feeder < 0 {
					n = int(it.v)
					break
				}
			}
		}
	}
	if !bought {
		return 0
	}
	return n
}

// paidIn says that the clause of item k tells of money, which a "total" there then is of.
func (r *reader) paidIn(k int) bool {
	return r.firstQty(span{0, r.clauseFrom(k), r.clauseEnd(k)}, money) >= 0
}

// byTheHead is where the words end behind item k that make a price one of each pig; 0
// where there are none.
func (r *reader) byTheHead(k int) int {
	said := ""
	for m := k + 1; m < len(r.items) && m <= k+4 && r.items[m].gap == gapNone; m++ {
		it := &r.items[m]
		said += it.s + " "
		switch {
		case it.is(sEach) && it.kind == itWord, it.qty(head) && it.v == 1, said == "a pig ", said == "a piglet ", said == "per piglet ", said == "per weaner ":
			return m + 1
		}
	}
	return 0
}

// sellers blanks who the pigs of a sentence came from: "4 pigs from the feed store guy
// today". It is no feed, and no name of a pig.
func (r *reader) sellers() {
	for k := 1; k+1 < len(r.items); k++ {
		if !sellerLeads[r.items[k].s] || r.items[k].gap >= gapStop || r.pigsBought(k) == 0 {
			continue
		}
		for n := k; n < len(r.items) && (n == k || r.items[n].gap < gapComma) && r.items[n].kind != itDay && !r.items[n].number(); n++ {
			r.blank(n)
			r.items[n].capital = false
		}
	}
}

// sellerLeads stand before who pigs were bought from, or where.
var sellerLeads = setOfWords(split("from, from a, from the, from our, from my, off, off of, off a, by"))
