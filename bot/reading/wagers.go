package reading

// Sentences that tell of nothing that was done or seen: bets.

// wagers takes the sentences out in which somebody bets: "bet you a beer 503 breaks 300
// before the truck comes".
func (r *reader) wagers() {
	for i := 0; i < len(r.items); {
		j := r.sentenceEnd(i)
		if saysFirst(r.said(span{0, i, j}), betting...) && !r.items[i].quest {
			for k := i; k < j; k++ {
				r.blank(k)
			}
			r.items[i].gap = gapStop
			if j < len(r.items) {
				r.items[j].gap = gapStop
			}
		}
		i = j
	}
}

// betting are words that a bet begins with; "i bet" alone may begin a guess.
var betting = split("bet you, bet u, bet ya, bet me, bet him, bet her, i bet you, i'll bet, ill bet, i'd bet, a beer says, a beer that, my money's on, my money is on, wanna bet, want to bet, betting")
