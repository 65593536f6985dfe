package reading

// tapedTwice takes the name out by which a pig is named a second time for its length:
// "girth of amihan 78, length of amihan 82".
func (r *reader) tapedTwice() {
	last := int16(-1)
	for k := range r.items {
		it := &r.items[k]
		if k > 0 && it.gap >= gapStop {
			last = -1
		}
		if it.pig < 0 {
			continue
		}
		if last == it.pig && r.lengthBeside(k) {
			r.blank(k)
			it.gap = min(it.gap, gapAnd)
			continue
		}
		last = it.pig
	}
}

// lengthBeside says that the pig at item k is named for its length, and that a girth was
// told before.
func (r *reader) lengthBeside(k int) bool {
	at := -1
	for n := max(k-2, 0); n < len(r.items) && n <= k+1; n++ {
		if r.items[n].is(sLength) && r.items[n].pig < 0 {
			at = n
		}
	}
	return at >= 0 && r.find(span{fWeigh, r.sentenceStart(k), k}, sGirth) >= 0 && r.find(span{fWeigh, r.sentenceStart(k), min(at, k)}, sLength) < 0
}

// inThatOrder takes the word for the group out where its pigs are named in the order of
// their weights: "the babies are 96, 101 and 104, that's fern juno brick in that order".
func (r *reader) inThatOrder() {
	for k := 0; k < len(r.items); {
		i, j := k, r.sentenceEnd(k)
		k = j
		if j-i < 5 || !r.orderTold(i, j) {
			continue
		}
		pigs, weights, firstPig, lastWeight := 0, 0, -1, -1
		for n := i; n < j; n++ {
			switch it := &r.items[n]; {
			case it.pig >= 0 && it.kind == itName:
				pigs++
				if firstPig < 0 {
					firstPig = n
				}
			case it.number() && !it.soft && (it.kind == itNum || it.qty(mass)):
				weights++
				lastWeight = n
			}
		}
		if pigs < 2 || pigs != weights || lastWeight > firstPig {
			continue
		}
		for n := i; n < firstPig; n++ {
			if it := &r.items[n]; it.group >= 0 || it.isAny(whoWords) {
				r.blank(n)
			}
		}
	}
}

// orderTold says that items[i:j] say that what is named is in the order of what was told,
// or name it with a "that's".
func (r *reader) orderTold(i, j int) bool {
	said := r.said(span{0, i, j})
	return saysAny(said, orderWords)
}

var orderWords = phrasesOf("in that order, in this order, in order, in the order, respectively, that's, thats, that is, same order")
