package reading

// Where water came from, and what it was carried and run in by: "green got 60 litres out
// of the tote", "two jerry cans, that's forty liters", "tote full, just ran the hose".

// waterSources takes the barrels that water was but taken out of for no barrels that were
// filled, and an amount that went nowhere for none that was poured.
func (r *reader) waterSources() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.barrel < 0 && !(it.kind == itWord && it.is(sBarrel) && !it.is(sWatered)) {
			continue
		}
		from := r.sourceWord(k)
		if from < 0 {
			continue
		}
		i, j := r.clauseFrom(k), r.clauseEnd(k)
		filled, taken := false, false
		for n := i; n < j; n++ {
			x := &r.items[n]
			filled = filled || (n < from || n > k) && (x.barrel >= 0 || x.isAny(setOf(sBarrel, sWallow, sFeeder)) && !x.is(sFiller))
			taken = taken || takenWords[firstWord(x.s)]
		}
		if !filled && !taken {
			continue
		}
		for n := from; n <= k || n < j && r.items[n].soft && r.items[n].gap == gapNone; n++ {
			r.blank(n)
		}
		for n := i; !filled && n < j; n++ {
			if r.items[n].qty(volume) {
				r.blank(n)
			}
		}
	}
}

// sourceWord is the "from" or "out of" before the barrel at item k, -1 where none is.
func (r *reader) sourceWord(k int) int {
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
		switch r.items[n].s {
		case "from", "out of", "outta", "off of", "from the", "out of the":
			return n
		}
		if !r.items[n].is(sFiller) {
			return -1
		}
	}
	return -1
}

var takenWords = setOfWords(split("took, drew, drained, dipped, used, scooped, siphoned, pumped, borrowed, stole, bailed, pulled"))

// carriedIn takes the count of the cans that water was carried in for no amount, where
// the amount is told as well: "two jerry cans, that's forty liters".
func (r *reader) carriedIn() {
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.kind != itNum || it.ord || it.v > mostVessels {
			continue
		}
		n := k + 1
		if n+1 < len(r.items) && r.items[n].kind == itWord && !waterCans[r.items[n].s] && r.items[n+1].gap == gapNone {
			n++ // "jerry cans"
		}
		if r.items[k+1].gap != gapNone || !waterCans[r.items[n].s] || r.items[n].kind != itWord {
			continue
		}
		for x := n + 1; x < r.sentenceEnd(k) && x <= n+6; x++ {
			if r.items[x].qty(volume) {
				for b := k; b <= n; b++ {
					r.blank(b)
				}
				break
			}
			if r.items[x].number() && !r.items[x].soft {
				break
			}
		}
	}
}

var waterCans = setOfWords(split("cans, can, jerrycans, jerrycan, jugs, jug, containers, container, carboys, kettles, pitchers, trips, loads, runs, canisters, jars"))

// hoseForBarrel takes a hose for what a barrel was filled by, where the sentence tells a
// barrel's level and names no wallow: "tote full, just ran the hose".
func (r *reader) hoseForBarrel() {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sHose) || it.kind != itWord {
			continue
		}
		s := span{fWater, r.sentenceStart(k), r.sentenceEnd(k)}
		i, j := r.stretch(k)
		into := r.hasBarrel(span{0, k, j}) && !r.has(span{0, i, j}, sPigs)
		if r.has(s, sWallow) || r.has(s, sPigs) || !r.hasBarrel(s) && !r.has(s, sBarrel) || !into && !r.has(s, sFull) && !r.has(s, sFill) || r.firstQty(s, hours) >= 0 {
			continue
		}
		r.blank(k)
	}
}
