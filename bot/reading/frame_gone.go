package reading

import (
	"troughbell/model"
)

// fillGone reads deaths, sales, pigs gone to the butcher, and what they weighed
// there.
func (r *reader) fillGone(s span) {
	how := ""
	switch {
	case r.has(s, sHung) || r.has(s, sPackaged) && !r.has(s, sSold) && !r.has(s, sDied):
		how = model.Butchered
	case r.has(s, sDied):
		how = model.Died
	case r.has(s, sSold):
		how = model.Sold
	case r.has(s, sSlaughtered), r.tookThere(s):
		how = model.Butchered
	}
	if how == model.Died && r.has(s, sSlaughtered) && r.has(s, sButcher) {
		how = model.Butchered
	}
	if r.has(s, sHung) || r.has(s, sPackaged) && how == model.Butchered {
		r.hung(s)
		return
	}
	if how == model.Butchered && r.comingDay(s) {
		r.fillBooked(s)
		return
	}
	if how == model.Butchered && r.onlyHauled(s) {
		r.idleSpan(s)
		return
	}
	if how == model.Butchered && r.dayOfCarcasses(s) {
		return
	}
	s.j = r.goneUntil(s)
	g := model.Gone{How: how}
	if how == model.Sold && r.sellsPart(s) {
		r.useAll(s)
		sold := g
		if sel := r.selectPigs(s.i, s.j); len(sel.pigs) > 0 && !sel.all {
			sold.Animals = sel.names(r)
		} else {
			sold.Count = 1
		}
		r.clarify(doubtful([]Entry{r.draft(Fact{sold}, s)}), s)
		return
	}
	if how != "" && r.moreThanThere(s) >= 0 {
		r.askWhoWent(s, g)
		return
	}
	sel := r.selectPigs(s.i, s.j)
	one := how != "" && r.oneOfGroup(s)
	count := 0
	switch {
	case sel.some:
		one, count = false, sel.count
	case sel.part > 0 && !one && how != "":
		count = sel.part
	}
	if one || sel.some || sel.part > 0 && how != "" {
		sel = selection{}
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(money):
			g.Amount, g.Currency = model.Float(it.v), it.unit.name()
		case it.kind == itNum && it.soft:
			if !sel.any || sel.count <= 1 && sel.all {
				count = 1
			}
		case it.kind == itNum && !it.ord:
			switch {
			case count == 0 && len(sel.pigs) == 0 && it.v <= float64(max(r.alive, 1)) && it.v == float64(int(it.v)) && !r.quoteBefore(k, "for"):
				count = int(it.v)
			case how == model.Sold && g.Amount == nil && it.v > 15:
				g.Amount = model.Float(it.v)
			default:
				continue
			}
		case it.isAny(setOf(sDied, sSold, sSlaughtered, sLost)):
		default:
			continue
		}
		it.used = true
	}
	if sel.stray && how != "" { // a number that no pig has
		r.useAll(s)
		r.whichPig("gone", s, r.draft(Fact{g}, s), func(n []string) Act {
			v := g
			v.Animals = n
			return Fact{v}
		})
		return
	}
	if count == 0 && !sel.any && (r.quoteHas(s, "a", "one") || r.quoteHas(s, "found one dead", "lost one", "lost a pig", "lost a", "dead pig")) {
		count = 1
	}
	if one {
		count = 1
	}
	if how == model.Sold && g.Amount == nil {
		r.priceBehind(s, &g)
	}
	r.soldEach(span{s.frame, s.i, r.sentenceEnd(s.j - 1)}, &g, max(len(sel.pigs), count))
	if sel.all && count > 0 && count < r.alive {
		sel.all, sel.pigs = false, nil
	}
	if how == model.Died && !sel.any && r.quoteHas(s, "put down") {
		r.idleSpan(s) // "put down new straw"
		return
	}
	if how == "" && r.diedLater(s) { // "lost juno overnight. dead in the hut"
		how = model.Died
		g.How = how
	}
	if how == "" { // "lost one": died, out, or a tag
		r.lostOne(s, sel, count)
		return
	}
	fill := func(names []string, n int) Act {
		v := g
		v.Animals, v.Count = names, n
		return Fact{v}
	}
	switch {
	case len(sel.pigs) > 0 && !sel.all:
		names := sel.names(r)
		e := r.draft(fill(names, 0), s)
		r.bareHour(&e, s)
		if sel.near {
			r.clarify(Clarify{About: "gone", Code: "near_name", Names: names, Draft: []Entry{e}, Choices: []Choice{{Code: "yes", Entries: []Entry{e}}, {Code: "no"}}}, s)
			return
		}
		r.remember(sel)
		r.out = append(r.out, e)
	case sel.all && count == 0:
		if how == model.Died && !r.has(s, sAll) {
			r.goneCount(s, fill, how)
			return
		}
		r.emit(fill([]string{model.All}, 0), s)
	case count > 0 && (!r.anyNamed() || count >= r.alive):
		r.emit(fill(nil, count), s)
	case count > 0, len(r.subject) == 0:
		if count == 0 {
			count = 1
		}
		if count == 1 {
			draft := r.draft(fill(nil, 1), s)
			r.whichPig("gone", s, draft, func(n []string) Act { return fill(n, 0) })
			return
		}
		e := r.draft(fill(nil, count), s)
		r.clarify(Clarify{About: "gone", Code: "which_animal", Want: "animals", Draft: []Entry{e}}, s)
	default:
		sel = selection{pigs: append([]int16(nil), r.subject...), any: true}
		r.emit(fill(sel.names(r), 0), s)
	}
}

func (r *reader) goneCount(s span, fill func([]string, int) Act, how string) {
	e := r.draft(fill(nil, 1), s)
	if !r.anyNamed() {
		r.out = append(r.out, e)
		return
	}
	r.whichPig("gone", s, e, func(n []string) Act { return fill(n, 0) })
}

// lostOne asks what became of a pig that was lost.
func (r *reader) lostOne(s span, sel selection, count int) {
	if r.alive == 0 || !sel.any && count == 0 && !r.quoteHas(s, "lost one", "lost a pig", "we lost") {
		r.idleSpan(s)
		return
	}
	var names []string
	if len(sel.pigs) > 0 && !sel.all {
		names = sel.names(r)
	}
	if names == nil && count == 0 {
		count = 1
	}
	died := model.Gone{Animals: names, How: model.Died}
	sold := model.Gone{Animals: names, How: model.Sold}
	if names == nil {
		died.Count, sold.Count = count, count
	}
	e := r.draft(Fact{died}, s)
	r.clarify(Clarify{About: "gone", Code: "died_or_out", Names: names, Draft: []Entry{e}, Choices: []Choice{
		{Code: "died", Entries: []Entry{e}},
		{Code: "out", Entries: []Entry{r.draft(Fact{model.Alarm{What: model.AlarmOut, Animals: names}}, s)}},
		{Code: "nothing"},
	}}, s)
}

// diedLater says that the words behind the span tell of a death.
func (r *reader) diedLater(s span) bool {
	for k := s.j; k < len(r.items) && k < s.j+4; k++ {
		if r.items[k].is(sDied) {
			for n := s.j; n < len(r.items) && n < s.j+6; n++ {
				r.items[n].used = true
			}
			r.skip = k
			return true
		}
	}
	return false
}

// goneUntil is where what went ends: a clause with a doing of its own tells of other
// pigs, "sold 209 for 300, also the barrows got wormed".
func (r *reader) goneUntil(s span) int {
	for k := s.i + 1; k < s.j; k++ {
		if r.items[k].gap < gapComma || r.find(span{s.frame, s.i, k}, sSold) < 0 && r.find(span{s.frame, s.i, k}, sDied) < 0 {
			continue
		}
		for n := k; n < s.j && (n == k || r.items[n].gap < gapComma); n++ {
			if r.items[n].pig < 0 && r.items[n].isAny(setOf(sWorm, sTreat, sProduct, sMove, sSick, sGirth, sTape)) {
				return k
			}
		}
	}
	return s.j
}
