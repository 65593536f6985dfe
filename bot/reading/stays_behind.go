package reading

// staysBehind takes the pigs out of a sale or an appointment with the butcher that are told
// to stay: "sold emil and greta, lotte stays", "not lotte".
func (r *reader) staysBehind() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if it.pig < 0 || it.quest {
			continue
		}
		n := k + 1
		if n+1 < len(r.items) && r.items[n].gap == gapNone && r.items[n].is(sIs) && r.items[n].kind == itWord {
			n++
		}
		stays := n < len(r.items) && r.items[n].gap == gapNone && r.items[n].pig < 0 && stayVerbs[firstWord(r.items[n].s)]
		not := r.items[k-1].s == "not" && r.items[k-1].gap >= gapComma && (k+1 >= len(r.items) || r.items[k+1].gap >= gapComma)
		if !stays && !not {
			continue
		}
		s := span{fGone, r.sentenceStart(k), k}
		if !r.has(s, sButcher) && !r.has(s, sBook) && !r.has(s, sSold) && !r.has(s, sSlaughtered) {
			continue
		}
		from := k
		if not {
			from = k - 1
		}
		end := r.clauseEnd(k)
		for n := from; n < end; n++ {
			r.blank(n)
		}
		r.items[from].gap = max(r.items[from].gap, gapComma)
	}
}

var stayVerbs = setOfWords(split("stays, stay, stayed, staying, remains, remained, waits, keeps, is staying, will stay, lives, gets"))

// saleToCome takes a sale for agreed and not for done where a buyer will have pigs of
// ours: "he'll have 2 off me, 400 bucks, shook on it".
func (r *reader) saleToCome() {
	for k := range r.items {
		it := &r.items[k]
		if !offUs[it.s] {
			continue
		}
		i, j := r.sentenceStart(k), r.sentenceEnd(k)
		if r.items[i].quest || r.firstQty(span{fGone, i, j}, money) < 0 {
			continue
		}
		will := false
		for n := i; n < k; n++ {
			x := &r.items[n]
			will = will || x.is(sPlan) || willHave[x.s] || willHave[firstWord(x.s)]
		}
		if !will {
			continue
		}
		at := r.firstQty(span{fSpend, i, j}, money)
		for n := i; n < j; n++ {
			if n != at {
				r.blank(n)
			}
		}
		if at > i { // what is left is a plan to be paid
			r.items[at-1].sense, r.items[at].gap = setOf(sPlan), gapNone
		}
	}
}

var (
	offUs    = setOfWords(split("off me, off us, off of me, off of us, from me, from us, off my hands, off our hands"))
	willHave = setOfWords(split("he'll, she'll, they'll, hell, will, wants, is buying, buying, are buying, gonna, is taking, is getting"))
)
