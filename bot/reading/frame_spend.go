package reading

import (
	"strings"

	"troughbell/model"
)

// fillSpend reads money paid or received.
func (r *reader) fillSpend(s span) {
	var at []int
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.qty(money) || it.kind == itNum && !it.soft && !it.ord && !(k+1 < s.j && r.items[k+1].is(sPartOf)) {
			at = append(at, k)
		}
	}
	if p := r.find(s, sPay); p >= 0 && r.firstQty(s, money) < 0 && len(at) > 1 && at[0] < p && at[len(at)-1] > p {
		for at[0] < p {
			at = at[1:] // "moss 35 44 spent 12.50"
		}
		s.i = p
	}
	for k := r.clauseFrom(s.i); k < s.i; k++ {
		if r.items[k].unit == unitBale {
			s.i = k // "6 bales of straw $30"
		}
	}
	if k := r.firstQty(s, money); k >= 0 && !r.has(span{s.frame, s.i, k}, sPay) {
		for len(at) > 0 && at[0] < k && r.items[at[0]].kind == itNum {
			at = at[1:] // "94 today and had a flat, 85 dollars"
			s.i = min(k, r.clauseFrom(k))
		}
	}
	if len(at) > 1 && at[1]-at[0] == 1 && r.saidInWords(at[0]) && r.saidInWords(at[1]) && r.items[at[1]].v < 100 { // "twenty two fifty"
		r.items[at[0]].v += r.items[at[1]].v / 100
		r.items[at[1]].used, r.items[at[1]].sense = true, setOf(sFiller)
		r.items[at[1]].kind = itWord
		at = append(at[:1], at[2:]...)
	}
	if len(at) > 1 && at[1]-at[0] > 1 { // "18.50 straw and 45 vet"
		r.keepDay(s)
		from := s.i
		for n, k := range at {
			p := span{s.frame, from, s.j}
			if n+1 < len(at) {
				p.j = r.spendCut(k, at[n+1])
			}
			r.oneSpend(p)
			from = p.j
		}
		return
	}
	r.oneSpend(s)
}

// spendCut is where one of two amounts ends and the other begins: at the comma or
// the "and" between them, else before the second.
func (r *reader) spendCut(a, b int) int {
	for k := a + 1; k <= b; k++ {
		if r.items[k].gap >= gapAnd {
			return k
		}
	}
	return b
}

// saidInWords says that a number is written in letters.
func (r *reader) saidInWords(k int) bool {
	it := &r.items[k]
	return it.kind == itNum && it.from < len(r.text) && !isDigit(r.text[it.from])
}

func (r *reader) oneSpend(s span) {
	sp := model.Spend{Income: r.has(s, sReceived) && !r.has(s, sPay)}
	at := -1
	if k := r.firstQty(s, money); k >= 0 {
		at = k
		sp.Amount, sp.Currency = r.items[k].v, r.items[k].unit.name()
	} else if k := r.firstNum(s); k >= 0 {
		at = k
		sp.Amount, sp.Currency = r.items[k].v, r.currency()
	}
	if at < 0 || sp.Amount <= 0 {
		r.idleSpan(s)
		return
	}
	r.items[at].used = true
	sp.What = r.spendWords(s, at)
	if sp.What == "" || strings.EqualFold(sp.What, "bill") {
		if w := r.wordsBefore(s); w != "" {
			sp.What = strings.TrimSpace(w + " " + sp.What)
		}
	}
	if sp.What == "" && r.quoteHas(span{0, 0, s.i}, "vet", "vet gave", "vet came", "the vet", "from the vet") {
		sp.What = "vet" // "the vet gave brick penicillin and charged 80"
	}
	from := len(r.out)
	r.emit(Fact{sp}, s)
	if k := r.find(span{s.frame, at + 1, s.j}, sPay); k >= 0 {
		r.items[k].used = true
	}
	if ofTheHouse(sp.What) {
		r.confirm(s, from)
	}
}

// houseBills are what a household pays for with or without pigs, so that it is asked
// whether the pigs bear it.
var houseBills = setOfWords(split(`electric, electricity, power, light, phone, internet, car, truck, water, rent, mortgage, insurance, cable, heating, propane, groceries, grocery`))

// ofTheHouse says that money went for such a bill: "electric bill", "car repair".
func ofTheHouse(what string) bool {
	words := strings.Fields(strings.ToLower(what))
	if len(words) == 0 || len(words) > 3 {
		return false
	}
	last := words[len(words)-1]
	bill := last == "bill" || last == "bills" || last == "payment" || last == "insurance" || last == "repair" || last == "repairs" || len(words) == 1 && (last == "mortgage" || last == "rent" || last == "groceries" || last == "insurance")
	for _, w := range words {
		if houseBills[w] && (bill || w == "groceries") {
			return true
		}
	}
	return false
}

func (r *reader) currency() string {
	if c := r.c.Herd.Currency; c != "" {
		return c
	}
	if r.units == model.US {
		return "USD"
	}
	return ""
}

// spendWords is what the money was for, in the person's words.
func (r *reader) spendWords(s span, at int) string {
	var words []string
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if k == at || it.kind == itDay || it.kind == itClock {
			continue
		}
		if len(words) > 0 && whyWords[it.s] { // "20 bucks for a sprinkler so they stay cool"
			r.useAll(span{s.frame, k, s.j})
			break
		}
		if it.is(sPay) || it.s == "bought" || it.s == "got" || it.is(sReceived) && it.s != "made" {
			it.used = true
			if it.s == "deposit" || firstWord(it.s) == "bill" && !strings.HasPrefix(it.s, "billed") {
				words = append(words, firstWord(it.s))
			}
			continue
		}
		if it.is(sFiller) && it.pig < 0 || it.is(sTotal) || it.s == "for" || it.s == "worth" || it.is(sAnd) {
			continue
		}
		it.used = true
		words = append(words, strings.TrimSpace(r.text[it.from:it.to]))
	}
	return trimSpend(words)
}

// whyWords begin what is said of why money was spent.
var whyWords = setOfWords(split("so, because, cuz, cos, since, which, as"))

// trimSpend takes the small words off both ends of what money was for: "the butcher",
// "vet bill came to".
func trimSpend(words []string) string {
	what := strings.Join(words, " ")
	for again := true; again; {
		again = false
		for _, small := range []string{"the ", "at ", "to ", "on "} {
			if len(what) > len(small) && strings.EqualFold(what[:len(small)], small) {
				what, again = what[len(small):], true
			}
		}
		for _, small := range []string{" came to", " came", " to", " was", " is", " were", " at"} {
			if n := len(what) - len(small); n > 0 && strings.EqualFold(what[n:], small) {
				what, again = what[:n], true
			}
		}
	}
	return what
}

// wordsBefore are the words of the clause right before a span, where it is but the
// name of a thing and begins its sentence: "straw: $45".
func (r *reader) wordsBefore(s span) string {
	if s.i == 0 || r.items[s.i].gap >= gapStop {
		return ""
	}
	from := r.sentenceStart(s.i)
	if s.i-from > 3 {
		return ""
	}
	var words []string
	for k := from; k < s.i; k++ {
		it := &r.items[k]
		if it.kind != itWord || it.used || it.unit != 0 || it.pig >= 0 || it.isAny(setOf(sPigs, sFull, sEmpty)) {
			return ""
		}
		if it.is(sFiller) || it.is(sPay) || it.is(sBuy) {
			if firstWord(it.s) != "bill" {
				continue
			}
		}
		words = append(words, r.text[it.from:it.to])
	}
	for k := from; k < s.i && len(words) > 0; k++ {
		r.items[k].used = true
	}
	return trimSpend(words)
}

// strayMoney records money told beside another fact: "vet came for Lotte 45
// euro".
func (r *reader) strayMoney(s span) {
	switch s.frame {
	case fDrug, fSick, fMove, fMixed, fBooked, fFeed, fWater, fFence:
	default:
		return
	}
	k := r.firstQty(s, money)
	if k < 0 || r.items[k].used {
		return
	}
	r.items[k].used = true
	sp := model.Spend{Amount: r.items[k].v, Currency: r.items[k].unit.name()}
	switch {
	case r.quoteHas(s, "vet", "vet gave", "vet came", "the vet", "veterinarian"):
		sp.What = "vet"
	case s.frame == fBooked:
		sp.What = "butcher"
	case s.frame == fDrug:
		sp.What = "treatment"
	case s.frame == fMixed || s.frame == fFeed:
		sp.What = "feed"
	}
	if sp.Amount > 0 {
		r.emit(Fact{sp}, s)
	}
}
