package reading

import (
	"strings"

	"troughbell/model"
)

// loneAmount asks about a text that is but a word and a number: "stella 180" in a
// herd without a Stella, whose weight is asked for if it can be a pig's, and "car
// 320", which was likely spent on it.
func (r *reader) loneAmount() {
	if r.alive == 0 || r.c.Pending != nil {
		return
	}
	word, num := -1, -1
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.quest, it.gap >= gapSemi && k > 0:
			return
		case it.kind == itWord && it.isAny(setOf(sFiller)) && !it.is(sNot):
		case it.kind == itWord && word < 0 && num < 0 && it.sense.empty() && it.unit == 0 && it.canon == "" && len(it.s) > 2 && !strings.HasSuffix(it.s, "ing"):
			word = k
		case num < 0 && word >= 0 && (it.kind == itNum && !it.soft && !it.ord && !it.rng || it.qty(mass) || it.qty(money)):
			num = k
		default:
			return
		}
	}
	if word < 0 || num < 0 || len(r.items) > loneWords {
		return
	}
	s := span{fIdle, 0, len(r.items)}
	it := &r.items[num]
	if !it.qty(money) && !r.lex.plain[r.items[word].s] && !sundries[r.items[word].s] {
		u := it.unit
		if it.kind == itNum {
			u = r.massUnit()
		}
		w := model.Weigh{WeightKg: u.si(it.v)}
		if r.fitsSomePig(w) {
			r.left = nil
			r.whichPigFor(s, w, r.today)
			return
		}
	}
	if it.qty(mass) || it.v < leastSpent {
		return
	}
	sp := model.Spend{Amount: it.v, What: r.items[word].s, Currency: r.currency()}
	if it.qty(money) {
		sp.Currency = it.unit.name()
	}
	if sp.Check() != nil {
		return
	}
	r.left = nil
	r.clarify(doubtful([]Entry{r.draft(Fact{sp}, s)}), s)
}

// loneWords is how many words such a text has at most, leastSpent the least bare
// number that is taken for money.
const (
	loneWords  = 3
	leastSpent = 20
)

// fitsSomePig says that a reading can be that of a pig of the herd today.
func (r *reader) fitsSomePig(w model.Weigh) bool {
	for p := range r.alive {
		if z, ok := r.deviation(w, selection{pigs: []int16{int16(p)}}, r.today); ok && z <= oddsWeird {
			return true
		}
	}
	return false
}
