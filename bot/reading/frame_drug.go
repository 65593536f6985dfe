package reading

import (
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
			it.used = true
		case it.qty(days) && (t.WithdrawalDays == nil || r.nearWithdraw(k, s)):
			if k > s.i && r.items[k-1].s == "every" {
				continue
			}
			d := int(it.si() + 0.5)
			t.WithdrawalDays = &d
			it.used = true
		case it.kind == itNum && !it.soft && !it.ord && r.nearWithdraw(k, s) && it.v == float64(int(it.v)):
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
	if named := r.lastNamed(s.i); !sel.any && named >= 0 && (len(r.subject) != 1 || r.subject[0] != named) {
		r.subject = append(r.subject[:0], named) // whom the sentence spoke of last
	}
	switch {
	case !sel.any && r.alive == 1:
		sel = selection{pigs: []int16{0}, any: true}
	case !sel.any && len(r.subject) == 1 && !worm:
		sel = selection{pigs: append([]int16(nil), r.subject...), any: true}
	case !sel.any && worm && (r.quoteHas(s, "them", "everybody", "everyone") || !r.anyNamed()):
		sel = selection{all: true, any: true}
	}
	draft := r.draft(act(sel.names(r)), s)
	r.bareHour(&draft, s)
	if !sel.any || sel.lost {
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
			e.Minute = model.Int(settleClock(int(it.v)*60%1440, it.v > 12, part, e.On == r.today, r.nowMin, lookBack))
			it.used = true
			return
		}
	}
}

// clockLike says that "at" stands before a bare number of an hour.
func (r *reader) clockLike(k int, s span) bool {
	it := &r.items[k]
	if k == s.i || it.v < 1 || it.v > 23 || it.v != float64(int(it.v)) {
		return false
	}
	p := r.items[k-1].s
	return p == "at" || p == "@" || (p == "around" || p == "about") && k > s.i+1 && (r.items[k-2].kind == itDay || r.items[k-2].s == "at")
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

// fillMove reads pigs put into a pen.
func (r *reader) fillMove(s span) {
	h := r.c.Herd
	if parts := r.byPen(s); len(parts) > 1 {
		for _, p := range parts {
			r.fillMove(p)
		}
		return
	}
	s = r.withoutStaying(s)
	pen := ""
	at := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.pen < 0 || it.pig >= 0 {
			continue
		}
		if r.quoteBefore(k, "from") || r.quoteBefore(k, "out of") || r.quoteBefore(k, "off") {
			it.used = true
			continue
		}
		if pen == "" {
			pen, at = h.Pens[it.pen].Name, k
		}
		it.used = true
	}
	near := at >= 0 && r.items[at].near
	if pen == "" {
		pen = r.newPen(s)
	}
	if pen == "" {
		if !r.movedOutright(s) || !r.has(s, sPen) && !r.has(s, sPigs) && !r.has(s, sAll) && !r.quoteHas(s, "them", "em") {
			r.idleSpan(s)
			return
		}
		r.whichPen(s)
		return
	}
	_ = near
	sel := r.selectPigs(s.i, s.j)
	m := model.Move{Pen: pen}
	if sel.any && !sel.all && len(sel.pigs) > 0 {
		m.Animals = sel.names(r)
	}
	r.remember(sel)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sMove, sPen)) || it.kind == itNum && k+1 < s.j && it.v == float64(max(len(sel.pigs), sel.count)) && r.items[k+1].isAny(whoWords) {
			it.used = true
		}
	}
	r.emit(Fact{m}, s)
}

func (r *reader) quoteBefore(k int, word string) bool {
	for n := k - 1; n >= 0 && n >= k-3; n-- {
		if r.items[n].s == word {
			return true
		}
		if !r.items[n].is(sFiller) && r.items[n].s != "the" {
			return false
		}
	}
	return false
}

// withoutStaying takes a clause about pigs that stay where they are off a move:
// "moved hazel to pear, everyone else stays put".
func (r *reader) withoutStaying(s span) span {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "stay", "stays", "stayed", "staying", "remain", "remains":
		default:
			continue
		}
		from, to := k, k+1
		for from > s.i && r.items[from].gap < gapAnd {
			from--
		}
		for to < s.j && r.items[to].gap < gapAnd {
			to++
		}
		switch {
		case from > s.i && r.penBehind(span{s.frame, s.i, from}) > 0:
			r.useAll(span{s.frame, from, s.j})
			s.j = from
			return s
		case from == s.i && to < s.j:
			r.useAll(span{s.frame, from, to})
			s.i = to
			return s
		}
	}
	return s
}

// newPen is a pen that set-up did not name: "pen 7", "moved to the far lot".
func (r *reader) newPen(s span) string {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sPen) || it.is(sMove) {
			continue
		}
		if k+1 < s.j && r.items[k+1].kind == itNum && r.items[k+1].gap == gapNone {
			r.items[k+1].used = true
			name := "pen " + itoa(int(r.items[k+1].v))
			if p := r.c.Herd.Pen(name); p != nil {
				return p.Name
			}
			if p := r.c.Herd.Pen(itoa(int(r.items[k+1].v))); p != nil {
				return p.Name
			}
			return name
		}
		if k > s.i {
			p := &r.items[k-1]
			if p.kind == itWord && (!p.known || r.lex.plain[p.s]) && !p.is(sFiller) && p.gap == gapNone {
				p.used = true
				return r.text[p.from:p.to]
			}
		}
	}
	for k := s.i; k+1 < s.j; k++ { // "moved to 3"
		if (r.items[k].s == "to" || r.items[k].is(sMove)) && r.items[k+1].kind == itNum && r.items[k+1].v < 30 && r.has(s, sMove) {
			if p := r.c.Herd.Pen("pen " + itoa(int(r.items[k+1].v))); p != nil {
				return p.Name
			}
		}
	}
	return ""
}

func (r *reader) whichPen(s span) {
	c := Clarify{About: "move", Code: "which_pen", Want: "pen", Draft: []Entry{r.draft(Fact{model.Move{}}, s)}}
	for _, p := range r.c.Herd.Pens {
		if !p.InUse {
			c.Choices = append(c.Choices, Choice{Label: p.Name, Entries: []Entry{r.draft(Fact{model.Move{Pen: p.Name}}, s)}})
		}
	}
	r.clarify(c, s)
}

// byPen cuts a move to several pens, each with its own pigs before it: "hazel
// and clover to the oak pen, rest to the creek".
func (r *reader) byPen(s span) []span {
	var out []span
	from := s.i
	who := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		who = who || it.pig >= 0 || it.isAny(whoWords)
		if it.pen >= 0 && it.pig < 0 && !r.quoteBefore(k, "from") {
			if !who {
				return nil
			}
			out = append(out, span{s.frame, from, k + 1})
			from, who = k+1, false
		}
	}
	if len(out) > 0 {
		out[len(out)-1].j = s.j
	}
	return out
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

// movedOutright says that a verb of moving stands in the span, not only a word
// for a direction.
func (r *reader) movedOutright(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sMove) {
			switch firstWord(it.s) {
			case "into", "over", "onto", "in", "put", "walked", "opened", "went", "let", "new", "to":
			default:
				return true
			}
		}
	}
	return false
}
