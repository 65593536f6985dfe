package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// fillDrug reads wormings and treatments: product, pigs, and the withdrawal
// days of the label or the vet. It never supplies days or a dose.
func (r *reader) fillDrug(s span) {
	t := model.Treatment{}
	worm := r.has(s, sWorm)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sProduct) && it.pig < 0:
			name := it.canon
			if m := r.lex.of[it.s]; m != nil && m.drug != "" {
				name = m.drug
			}
			if t.Product == "" || generalProduct[t.Product] && !generalProduct[name] {
				t.Product = name
			}
			if wormProducts[name] {
				worm = true
			}
			if t.Product == name {
				t.Product = r.asWritten(it, name)
			}
			it.used = true
		case it.qty(days) && (t.WithdrawalDays == nil || r.nearWithdraw(k, s)):
			if r.courseDays(k, s) {
				it.used = true
				continue
			}
			d := int(it.si() + 0.5)
			t.WithdrawalDays = &d
			it.used = true
		case it.kind == itNum && !it.soft && !it.ord && r.nearWithdraw(k, s) && it.v == float64(int(it.v)) && !r.clockLike(k, s):
			if t.WithdrawalDays == nil {
				d := int(it.v)
				t.WithdrawalDays = &d
			}
			it.used = true
		case it.isAny(setOf(sWorm, sTreat, sGave, sWithdraw)), it.qty(volume): // a dose is the vet's affair
			it.used = true
		}
	}
	if t.WithdrawalDays == nil && worm { // "wormed all 18"
		if k := r.firstNum(s); k >= 0 && r.items[k].v >= 0 && r.items[k].v <= 120 && k > r.find(s, sWorm) && !r.countOfPigs(k, s) && r.items[k].kind == itNum && !r.clockLike(k, s) {
			d := int(r.items[k].v)
			t.WithdrawalDays = &d
			r.items[k].used = true
		}
	}
	if t.WithdrawalDays == nil && r.quoteHas(s, "no") && r.has(s, sWithdraw) {
		t.WithdrawalDays = model.Int(0)
	}
	if t.Product == "" {
		t.Product = r.unknownProduct(s)
	}
	if !worm && t.Product == "" && r.onlyWithdraw(s) {
		r.idleSpan(s)
		return
	}
	sel := r.selectPigs(s.i, s.j)
	if before := r.whoBefore(s); !sel.any && before.any {
		sel = before
	}
	act := func(n []string) Act {
		v := t
		v.Animals = n
		if worm {
			return Fact{model.Worm{Treatment: v}}
		}
		return Fact{model.Treat{Treatment: v}}
	}
	about := "treat"
	if worm {
		about = "worm"
	}
	if named := r.lastNamed(s.i); !sel.any && named >= 0 && !slices.Contains(r.subject, named) {
		r.subject = append(r.subject[:0], named) // whom the sentence spoke of last
	}
	switch {
	case !sel.any && r.alive == 1:
		sel = selection{pigs: []int16{0}, any: true}
	case !sel.any && len(r.subject) > 0 && !worm: // "gus and pearl have scours, gave electrolytes"
		sel = selection{pigs: append([]int16(nil), r.subject...), any: true}
	case !sel.any && !worm && r.onlyAiling() >= 0 && saysAny(r.said(span{0, r.clauseFrom(s.i), s.j}), heWords): // "vet gave her a shot"
		sel = selection{pigs: []int16{r.onlyAiling()}, any: true}
	case !sel.any && worm && (r.quoteHas(s, "them", "em", "'em", "everybody", "everyone") || !r.anyNamed()):
		sel = selection{all: true, any: true}
	}
	draft := r.draft(act(sel.names(r)), s)
	r.bareHour(&draft, s)
	if !sel.any || sel.lost || r.oneOf(s) && r.anyNamed() && len(sel.pigs) != 1 {
		c := Clarify{About: about, Code: "which_animal", Want: "animals", Draft: []Entry{draft}}
		if worm {
			e := draft
			e.Act = act([]string{model.All})
			c.Choices = append(c.Choices, Choice{Code: "all_pigs", Entries: []Entry{e}})
		}
		for p := range r.alive {
			if len(c.Choices) == 4 || r.pigs[p].Name == "" {
				break
			}
			e := draft
			e.Act = act([]string{r.pigs[p].Name})
			c.Choices = append(c.Choices, Choice{Label: r.pigs[p].Name, Entries: []Entry{e}})
		}
		if len(c.Choices) == 0 {
			e := draft
			e.Act = act([]string{model.All})
			c.Choices = append(c.Choices, Choice{Code: "all_pigs", Entries: []Entry{e}})
		}
		r.clarify(c, s)
		return
	}
	if sel.near { // a drug never rests on a near-miss name
		r.clarify(Clarify{
			About: about, Code: "near_name", Names: sel.names(r), Draft: []Entry{draft},
			Choices: []Choice{{Code: "yes", Entries: []Entry{draft}}, {Code: "no"}},
		}, s)
		return
	}
	r.remember(sel)
	r.out = append(r.out, draft)
}

// whoBefore are the pigs that the sentence speaks of before a span, where nothing
// else was made of those words: "all three pigs I have | wormed with flubendazole".
func (r *reader) whoBefore(s span) selection {
	from := r.sentenceStart(s.i)
	for _, e := range r.out {
		if from < s.i && e.To > r.items[from].from {
			return selection{}
		}
	}
	return r.selectPigs(from, s.i)
}

// courseDays says that the days at item k are how long or how often a drug is
// given, which is no withdrawal: "put otis on penicillin for 5 days", "every 3
// days", "a 5 day course".
func (r *reader) courseDays(k int, s span) bool {
	if r.nearWithdraw(k, s) {
		return false
	}
	if k > s.i && r.items[k].gap < gapComma {
		switch r.items[k-1].s {
		case "every", "for", "for the next", "next", "another", "on", "past", "last", "in", "over":
			return true
		case "the", "about":
			if k > s.i+1 && (r.items[k-2].s == "for" || r.items[k-2].s == "over") {
				return true
			}
		}
	}
	if k+1 < len(r.items) && r.items[k+1].gap == gapNone {
		switch r.items[k+1].s {
		case "course", "course of", "ago", "running", "straight", "in a row", "in", "treatment", "more", "of", "regimen":
			return true
		}
	}
	return false
}

// lastNamed is the pig named last before item k in its sentence, -1 if none.
func (r *reader) lastNamed(k int) int16 {
	for n := k - 1; n >= r.sentenceStart(k); n-- {
		if it := &r.items[n]; it.pig >= 0 && int(it.pig) < r.alive && !it.near {
			return it.pig
		}
	}
	return -1
}

// bareHour reads "at 6" and "around 7" as the hour of a dose.
func (r *reader) bareHour(e *Entry, s span) {
	if e.Minute != nil {
		return
	}
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itNum && !it.used && r.clockLike(k, s) {
			part := partNone
			for n := s.i; n < s.j; n++ {
				if r.items[n].kind == itDay && r.items[n].day.part != partNone {
					part = r.items[n].day.part
				}
			}
			if part == partNone && e.On < r.today && it.v <= lateHours {
				part = partEvening // the later of the two keeps the meat longer
			}
			e.Minute = model.Int(settleClock(int(it.v)*60%1440, it.v > 12, part, e.On == r.today, r.nowMin, lookBack))
			it.used = true
			return
		}
	}
}

// lateHours are the bare hours of a day gone by that are taken for the afternoon.
// Common practice, no source: nobody is in the pen at four in the morning.
const lateHours = 5

// clockLike says that "at" stands before a bare number of an hour.
func (r *reader) clockLike(k int, s span) bool {
	it := &r.items[k]
	if k == s.i || it.v < 1 || it.v > 23 || it.v != float64(int(it.v)) {
		return false
	}
	p := r.items[k-1].s
	return p == "at" || p == "@" || p == "at about" || p == "at around" || (p == "around" || p == "about") && k > s.i+1 && (r.items[k-2].kind == itDay || r.items[k-2].s == "at")
}

var generalProduct = map[string]bool{"antibiotic": true, "vaccine": true, "iron": false}

func (r *reader) nearWithdraw(k int, s span) bool {
	for n := max(s.i, k-3); n < min(s.j, k+3); n++ {
		if r.items[n].is(sWithdraw) {
			return true
		}
	}
	return false
}

// asWritten is the name of a product as the person spelt it, where that is none of its
// names: a drug is never corrected unasked.
func (r *reader) asWritten(it *item, name string) string {
	typed := strings.ToLower(strings.TrimSpace(r.text[it.from:it.to]))
	if typed == it.s && !productSlips[typed] || strings.ContainsAny(typed, " -") || strings.Contains(it.s, " ") || it.s == "" {
		return name
	}
	return typed
}

// onlyWithdraw says that the span speaks of a withdrawal without a treatment.
func (r *reader) onlyWithdraw(s span) bool {
	return !r.has(s, sTreat) && !r.has(s, sProduct) && !r.has(s, sWorm)
}

// unknownProduct is a product's name that no lexicon knows, said behind "with"
// or "of".
func (r *reader) unknownProduct(s span) string {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itWord || it.known || it.pig >= 0 || len(it.s) < 4 {
			continue
		}
		if k > s.i {
			p := r.items[k-1].s
			if p == "with" || p == "of" || p == "product" || p == "using" || p == "some" || p == "got" || p == "gave" || p == "their" || p == "her" || p == "his" {
				it.used = true
				return r.text[it.from:it.to]
			}
		}
		if strings.HasSuffix(it.s, "ole") || strings.HasSuffix(it.s, "tin") || strings.HasSuffix(it.s, "cin") || strings.HasSuffix(it.s, "llin") || strings.HasSuffix(it.s, "mycin") || strings.HasSuffix(it.s, "ine") && len(it.s) > 6 {
			it.used = true
			return r.text[it.from:it.to]
		}
	}
	return ""
}

// withoutDoubleDrug drops a treatment without product and days that stands
// beside a fuller one of the same pigs: "treated moss for scours,
// oxytetracycline 28 days".
func withoutDoubleDrug(es []Entry) []Entry {
	full := map[string]bool{}
	treat := func(e Entry) (model.Treat, bool) {
		f, ok := e.Act.(Fact)
		if !ok {
			return model.Treat{}, false
		}
		t, ok := f.Fact.(model.Treat)
		return t, ok
	}
	key := func(t model.Treat) string { return strings.Join(t.Animals, "\n") }
	for _, e := range es {
		if t, ok := treat(e); ok && (t.Product != "" || t.WithdrawalDays != nil) {
			full[key(t)] = true
		}
	}
	out := es[:0]
	for _, e := range es {
		if t, ok := treat(e); ok && t.Product == "" && t.WithdrawalDays == nil && full[key(t)] {
			continue
		}
		out = append(out, e)
	}
	return out
}

// drugLine says that item k begins a line of a list that tells more of the drug
// told of before: "product: fenbendazole".
func (r *reader) drugLine(k int) bool {
	it := &r.items[k]
	if !it.label {
		return false
	}
	switch it.s {
	case "product", "drug", "medicine", "wormer", "what", "with", "withdrawal", "wd", "days", "label", "animals", "pigs", "who":
		return true
	}
	return it.is(sWithdraw)
}
