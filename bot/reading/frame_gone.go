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
	sel := r.selectPigs(s.i, s.j)
	g := model.Gone{How: how}
	count := 0
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.qty(money):
			g.Amount, g.Currency = model.Float(it.v), it.unit.name()
		case it.kind == itNum && it.soft:
			if !sel.any || sel.count == 0 && sel.all {
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
	if count == 0 && !sel.any && (r.quoteHas(s, "a", "one") || r.quoteHas(s, "found one dead", "lost one", "lost a pig", "lost a", "dead pig")) {
		count = 1
	}
	if sel.all && count > 0 && count < r.alive {
		sel.all, sel.pigs = false, nil
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

// hung reads hanging and packaged weights: one for each pig, or a total.
func (r *reader) hung(s span) {
	total := r.has(s, sTotal)
	packagedFirst := -1
	type part struct {
		kg   float64
		pack bool
		k    int
	}
	var ps []part
	g := model.Gone{How: model.Butchered}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.is(sPackaged) && !it.is(sHung):
			packagedFirst = k
			it.used = true
		case it.is(sHung):
			it.used = true
		case it.qty(mass):
			ps = append(ps, part{it.si(), false, k})
			it.used = true
		case it.kind == itNum && !it.soft && !it.ord && !r.countOfPigs(k, s) && it.v >= 20:
			ps = append(ps, part{r.massUnit().si(it.v), false, k})
			it.used = true
		case it.qty(money):
			g.Amount, g.Currency = model.Float(it.v), it.unit.name()
			it.used = true
		}
	}
	if len(ps) == 0 {
		r.idleSpan(s)
		return
	}
	hungAt := r.find(s, sHung)
	for x := range ps { // a number belongs to the nearer of the two words
		switch {
		case hungAt < 0:
			ps[x].pack = true
		case packagedFirst >= 0:
			dh, dp := abs(ps[x].k-hungAt), abs(ps[x].k-packagedFirst)
			ps[x].pack = dp < dh
		}
	}
	sel := r.selectPigs(s.i, s.j)
	var hungs, packs []part
	for _, p := range ps {
		if p.pack {
			packs = append(packs, p)
		} else {
			hungs = append(hungs, p)
		}
	}
	names := sel.pigs
	if len(names) > 0 && !sel.all && len(hungs) == len(names) && len(hungs) > 0 {
		for x, p := range hungs {
			v := g
			v.Animals = selection{pigs: names[x : x+1]}.names(r)
			v.HangingKg = model.Float(p.kg)
			if len(packs) == len(hungs) {
				v.PackagedKg = model.Float(packs[x].kg)
			}
			r.emit(Fact{v}, s)
		}
		return
	}
	v := g
	v.Animals = sel.names(r)
	if len(names) == 0 || sel.all {
		v.Animals = []string{model.All}
	}
	if len(hungs) > 1 && !total && v.Animals[0] == model.All { // a list: whose is whose is not said
		if gone := r.lastButchered(len(hungs)); len(gone) == len(hungs) {
			for x, p := range hungs {
				o := g
				o.Animals = []string{gone[x]}
				o.HangingKg = model.Float(p.kg)
				r.emit(Fact{o}, s)
			}
			return
		}
	}
	sum := 0.0
	for _, p := range hungs {
		sum += p.kg
	}
	if sum > 0 {
		v.HangingKg = model.Float(sum)
	}
	sum = 0
	for _, p := range packs {
		sum += p.kg
	}
	if sum > 0 {
		v.PackagedKg = model.Float(sum)
	}
	r.emit(Fact{v}, s)
}

// lastButchered are the names of the pigs that a list of n weights can be about:
// those last gone to the butcher, else none.
func (r *reader) lastButchered(n int) []string {
	gones := r.c.Herd.Gones
	for k := len(gones) - 1; k >= 0; k-- {
		g := gones[k].F
		if g.How == model.Butchered && len(g.Animals) == n && g.HangingKg == nil {
			return nil // their order at the butcher's is not theirs in the text
		}
	}
	return nil
}

func abs(x int) int {
	if x < 0 {
		return -x
	}
	return x
}

// fillBooked reads appointments with the butcher: several days give several
// bookings.
func (r *reader) fillBooked(s span) {
	if r.tookThere(s) {
		r.fillGone(s)
		return
	}
	cancel := r.has(s, sCancel) && !r.quoteHas(s, "rescheduled")
	var days []int
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay {
			days = append(days, k)
		}
	}
	if len(days) == 0 {
		if cancel {
			r.emitOn(Fact{model.Booked{Cancelled: true}}, s, r.today, nil, false)
			return
		}
		if r.has(s, sBook) && r.has(s, sButcher) && !r.has(s, sAsk) {
			r.clarify(Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{model.Booked{Count: r.bookedCount(s.i, s.j)}}, s)}}, s)
			return
		}
		r.idleSpan(s)
		return
	}
	for n, k := range days {
		it := &r.items[k]
		lo, hi := s.i, s.j
		if n > 0 {
			lo = r.partStart(days[n-1]+1, k+1)
			if lo == days[n-1]+1 && r.items[lo].gap < gapAnd {
				lo = k
			}
		}
		if n+1 < len(days) {
			hi = r.partStart(k+1, days[n+1]+1)
			if hi == k+1 && r.items[hi].gap < gapAnd {
				hi = days[n+1]
			}
		}
		it.used = true
		if it.day.coarse {
			r.clarify(Clarify{About: "booked", Code: "date_unclear", Want: "date", Draft: []Entry{r.draft(Fact{model.Booked{Count: r.bookedCount(lo, hi)}}, s)}}, s)
			continue
		}
		day, ok := it.day.on(r.today, lookForward, r.dayFirst)
		if !ok {
			continue
		}
		b := model.Booked{Day: day, Cancelled: cancel}
		for x := lo; x < hi; x++ {
			if c := &r.items[x]; c.kind == itClock && (n == 0 || x > k) {
				b.Minute = model.Int(settleClock(c.clock, c.ampm, it.day.part, false, r.nowMin, lookForward))
				c.used = true
				break
			}
		}
		if b.Minute == nil {
			for x := k + 1; x < hi; x++ {
				if r.items[x].kind == itNum && r.clockLike(x, s) {
					b.Minute = model.Int(settleClock(int(r.items[x].v)*60, r.items[x].v > 12, it.day.part, false, r.nowMin, lookForward))
					r.items[x].used = true
				}
			}
		}
		b.Count = r.bookedCount(lo, hi)
		if sel := r.selectPigs(lo, hi); b.Count == 0 && len(sel.pigs) > 0 && !sel.all {
			b.Count = len(sel.pigs)
		}
		for x := lo; x < hi; x++ {
			if r.items[x].isAny(setOf(sButcher, sBook, sCancel, sMove, sPigs)) {
				r.items[x].used = true
			}
		}
		r.emitOn(Fact{b}, span{s.frame, lo, hi}, r.today, b.Minute, false).Minute = b.Minute
	}
}

// bookedCount is how many pigs a booking is for, 0 where not said.
func (r *reader) bookedCount(i, j int) int {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.kind == itNum && !it.soft && !it.ord && !it.used && it.v <= 60 && it.v >= 1 && it.v == float64(int(it.v)) && !r.clockLike(k, span{0, i, j}) {
			it.used = true
			return int(it.v)
		}
		if it.is(sAll) && k+1 < j && r.items[k+1].kind == itNum {
			continue
		}
	}
	return 0
}

// fillAway reads a span of days of absence.
func (r *reader) fillAway(s span) {
	var days []model.Day
	var exprs []dayExpr
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay {
			continue
		}
		from := r.today
		if len(days) > 0 {
			from = days[len(days)-1]
		}
		e := it.day
		var d model.Day
		var ok bool
		if e.form == dayWeekday && len(days) > 0 {
			d, ok = from.Next(weekdayOf(e.a)), true
		} else if e.form == dayOffset && e.coarse {
			d, ok = r.today+7, true
		} else {
			d, ok = e.on(from, lookForward, r.dayFirst)
		}
		if ok {
			it.used = true
			days = append(days, d)
			exprs = append(exprs, e)
		}
	}
	// "jul 24 to 27", "24th-27th of july": a bare number closes the span.
	if len(days) == 1 && exprs[0].form == dayDate {
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			if it.kind == itNum && !it.soft && it.v >= 1 && it.v <= 31 && it.v == float64(int(it.v)) && !it.used {
				e := exprs[0]
				e.b = int(it.v)
				if d, ok := e.on(r.today, lookForward, r.dayFirst); ok {
					if d < days[0] && k < r.dayAt(s) {
						days = []model.Day{d, days[0]}
					} else if d >= days[0] {
						days = append(days, d)
					}
					it.used = true
					break
				}
			}
		}
	}
	a := model.AwayFrom{}
	switch {
	case len(days) >= 2:
		a.From, a.To = days[0], days[1]
	case len(days) == 1:
		a.From, a.To = days[0], days[0]
		if k := r.firstOpenDays(s); k >= 0 {
			a.To = a.From + model.Day(r.items[k].si()) - 1
			r.items[k].used = true
		} else if r.quoteHas(s, "until", "till", "til", "through", "thru", "back", "bis") && !r.has(s, sFrom) {
			a.From = r.today
		}
		if exprs[0].form == dayWeekday && a.To == a.From { // a weekend has two days
			a.To += model.Day(exprs[0].b)
		}
		if exprs[0].coarse && exprs[0].form == dayOffset {
			a.From = r.today + model.Day((8-int(r.today.Weekday()))%7)
			if a.From <= r.today {
				a.From += 7
			}
			a.To = a.From + 6
		}
	default:
		if k := r.firstOpenDays(s); k >= 0 {
			a.From, a.To = r.today, r.today+model.Day(r.items[k].si())-1
			r.items[k].used = true
		} else {
			r.idleSpan(s)
			return
		}
	}
	if a.To < a.From {
		r.clarify(Clarify{About: "away", Code: "date_unclear", Want: "", Draft: []Entry{r.draft(Fact{a}, s)}}, s)
		return
	}
	for k := s.i; k < s.j; k++ {
		if r.items[k].is(sAway) {
			r.items[k].used = true
		}
	}
	r.emitOn(Fact{a}, s, r.today, nil, false)
}

func (r *reader) dayAt(s span) int {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itDay {
			return k
		}
	}
	return s.j
}

func (r *reader) firstOpenDays(s span) int { return r.firstQty(s, days) }

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

// tookThere says that pigs were brought to the butcher already.
func (r *reader) tookThere(s span) bool {
	if s.i < s.j {
		s.i = r.sentenceStart(s.i)
	}
	return r.has(s, sButcher) && r.quoteHas(s, "took", "hauled", "went", "dropped", "dropped off", "brought", "sent", "loaded", "drove", "delivered", "taken", "gone") && !r.has(s, sPlan)
}
