package reading

import (
	"troughbell/model"
)

// fillFeed reads pours and levels of feeders.
func (r *reader) fillFeed(s span) {
	ps := r.portions(s, true)
	first := len(r.out)
	for n, p := range ps {
		c := r.contentsOf(p.i, p.j, true)
		if n > 0 {
			first = 0
		}
		if (n > 0 || len(r.out) > 1) && p.every && c.amount == nil && c.fraction == nil && c.vessels == 0 && r.allFull(min(first, 0)) {
			continue // "big 160 small 80 full both"
		}
		if len(ps) > 1 {
			if r.has(s, sFill) && !c.left {
				c.filled, c.verb = true, true
			}
			if c.amount == nil && !c.full && !c.empty && c.fraction == nil && c.days == nil && c.vessels == 0 {
				if n+1 < len(ps) || !r.has(s, sFill) {
					if !r.has(s, sFull) && !r.has(s, sFill) {
						continue
					}
				}
				c.full = c.full || r.has(s, sFull) || r.has(s, sFill)
			}
		}
		r.feedEntries(span{s.frame, p.i, p.j}, p.things, c, s)
	}
}

// feedEntries makes the entries of one portion.
func (r *reader) feedEntries(s span, t things, c contents, whole span) {
	h := r.c.Herd
	if c.full && !c.verb && !t.any && c.amount == nil && c.vessels == 0 && c.fraction == nil && !r.has(whole, sFeed) && r.pourWasFull(s) {
		return
	}
	if c.wrong && c.amount == nil && c.vessels == 0 {
		r.waterEntries(s, things{}, r.contentsOf(s.i, s.j, false), whole)
		return
	}
	if c.amount == nil && c.vessels == 0 && c.fraction == nil && c.days == nil && !c.full && !c.empty && !c.filled && !c.openBag {
		r.idleSpan(s) // "moss looks great": no level of anything
		return
	}
	if r.has(whole, sShed) && !t.any && !c.verb && (c.amount != nil || c.vessels > 0) { // "6 bags left in the shed"
		r.fillStock(whole)
		return
	}
	if (c.bags || r.has(whole, sFeed) && c.amount != nil && !c.bare) && c.second && !t.any && !c.verb && !c.left { // "6 bags feed 108": bought
		r.fillStock(whole)
		return
	}
	names, sure := r.feederNames(t)
	if !sure {
		r.whichFeeder(whole, c, nil)
		return
	}
	if len(c.rivals) > 0 && len(names) == 1 && c.bare && c.vessels == 0 && r.rivalry(s, names[0], &c) {
		return
	}
	if c.vessels > 0 {
		r.askSize(whole, names[0], c)
		return
	}
	if c.openBag {
		r.openBag(whole, names[0], c)
		return
	}
	if c.left && c.amount != nil && c.fraction != nil && c.filled { // "a third left, took 200"
		for _, n := range names {
			r.emit(Fact{model.FeedLevel{Feeder: n, Fraction: c.fraction}}, s)
		}
		c.fraction, c.left = nil, false
	}
	split := 1.0
	if len(names) > 1 && c.amount != nil && !r.has(whole, sEach) && t.every {
		split = float64(len(names)) // one amount for all of them
	}
	for k, n := range names {
		if len(c.each) == len(names) && len(names) > 1 { // "both full 150 140"
			c.amount, split = model.Float(c.each[k]), 1
		}
		act, ok := r.feedFact(n, c, split)
		if !ok {
			r.idleSpan(s)
			return
		}
		if f, isPour := act.(Fact); isPour {
			if pour, is := f.Fact.(model.Refill); is && pour.FeedKg != nil && (r.tooMuch(n, *pour.FeedKg) || r.onTopOf(pour, s)) {
				r.pourTooBig(whole, pour)
				continue
			}
			if level, is := f.Fact.(model.FeedLevel); is && level.FeedKg != nil && r.tooMuch(n, *level.FeedKg) {
				r.pourTooBig(whole, model.Refill{Feeder: n, FeedKg: level.FeedKg})
				continue
			}
		}
		if r.eitherIn(s) && !r.sureFeed(s, c) {
			r.feedOrWater(whole, act, c)
			continue
		}
		if (c.bare || r.onlyVessels(s)) && c.amount != nil && !t.any && !c.filled && !c.full && !c.left && !r.has(whole, sFeed) {
			draft := r.draft(act, s)
			r.clarify(Clarify{
				About: "refill", Code: "which_kind", Draft: []Entry{draft},
				Q:       []model.Quantity{{Value: *c.amount, Unit: model.Kilograms}},
				Choices: []Choice{{Code: "poured", Entries: []Entry{draft}}, {Code: "nothing"}},
			}, s)
			continue
		}
		r.emit(act, s)
	}
	for _, n := range names {
		for k, f := range h.Feeders {
			if f.Name == n {
				r.useThings(true, []int8{int8(k)})
			}
		}
	}
}

// rivalry settles which of several bare numbers was poured: the only one that a
// feeder can take, or else it asks and says so.
func (r *reader) rivalry(s span, name string, c *contents) bool {
	room := 0.0
	if f := r.c.Herd.Feeder(name); f != nil {
		room = r.judge.room(f)
	}
	var fit []float64
	for _, kg := range append([]float64{*c.amount}, c.rivals...) {
		if kg >= leastPourKg && (room == 0 || kg <= room*pourSlack) {
			fit = append(fit, kg)
		}
	}
	if len(fit) == 1 {
		c.amount = model.Float(fit[0])
	}
	if len(fit) < 2 {
		return false
	}
	cl := Clarify{About: "refill", Code: "doubtful", Names: []string{name}, Want: "feed_kg"}
	for _, kg := range fit {
		one := *c
		one.amount, one.rivals = model.Float(kg), nil
		if act, ok := r.feedFact(name, one, 1); ok && len(cl.Choices) < 3 {
			e := r.draft(act, s)
			cl.Draft = append(cl.Draft[:0], e)
			cl.Choices = append(cl.Choices, Choice{Code: "meant", Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}}, Entries: []Entry{e}})
		}
	}
	cl.Choices = append(cl.Choices, Choice{Code: "nothing"})
	r.useAll(s)
	r.clarify(cl, s)
	return true
}

// pourWasFull marks the pour right before the span as having filled its feeder:
// "9 bags in", and on the next line "full".
func (r *reader) pourWasFull(s span) bool {
	if len(r.out) == 0 || r.out[len(r.out)-1].To > r.items[s.i].from {
		return false
	}
	last := &r.out[len(r.out)-1]
	f, ok := last.Act.(Fact)
	if !ok {
		return false
	}
	p, ok := f.Fact.(model.Refill)
	if !ok || p.FeedKg == nil || p.Full || p.Fraction != nil {
		return false
	}
	p.Full = true
	last.Act = Fact{p}
	return true
}

// feedFact decides between a pour and a level only seen.
func (r *reader) feedFact(name string, c contents, split float64) (Act, bool) {
	amount := c.amount
	if amount != nil && split > 1 {
		amount = model.Float(*amount / split)
	}
	switch {
	case c.days != nil && !c.filled && amount == nil:
		return Fact{model.FeedLevel{Feeder: name, Days: c.days}}, true
	case c.left && (!c.filled || !c.verb && c.fraction != nil) && (amount != nil || c.fraction != nil):
		if c.fraction != nil {
			amount = nil
		}
		return Fact{model.FeedLevel{Feeder: name, Fraction: c.fraction, FeedKg: amount}}, true
	case c.fraction != nil && amount == nil && !c.filled && !c.full:
		return Fact{model.FeedLevel{Feeder: name, Fraction: c.fraction}}, true
	case c.empty && !c.filled && amount == nil && !c.full:
		return Fact{model.FeedLevel{Feeder: name, Fraction: model.Float(0)}}, true
	case c.left && amount == nil && c.fraction == nil && !c.full:
		return nil, false
	}
	f := model.Refill{Feeder: name, FeedKg: amount, Full: c.full, FromEmpty: c.empty}
	if c.fraction != nil && !c.full {
		f.Fraction = c.fraction
		if *f.Fraction >= 1 {
			f.Full, f.Fraction = true, nil
		}
	}
	if amount == nil && f.Fraction == nil {
		f.Full = f.Full || c.verb
	}
	if f.FeedKg == nil && f.Fraction == nil && !f.Full || f.FeedKg != nil && *f.FeedKg <= 0 {
		return nil, false
	}
	return Fact{f}, true
}

// feederNames are the feeders meant: those named, all, or the only one. sure is
// false where one of several must be meant and was not named.
func (r *reader) feederNames(t things) (names []string, sure bool) {
	h := r.c.Herd
	switch {
	case len(t.at) > 0:
		for _, k := range t.at {
			names = append(names, h.Feeders[k].Name)
		}
		return names, true
	case t.every && len(h.Feeders) > 1:
		for _, f := range h.Feeders {
			names = append(names, f.Name)
		}
		return names, true
	case len(h.Feeders) == 1:
		return []string{h.Feeders[0].Name}, true
	case len(h.Feeders) > 1:
		if n := len(r.setUp.feeders); n > 0 && !t.one { // "the south hopper was empty, put four bags in"
			return []string{h.Feeders[r.setUp.feeders[n-1]].Name}, true
		}
		return nil, false
	}
	return []string{""}, true
}

// whichFeeder asks which of several feeders is meant.
func (r *reader) whichFeeder(s span, c contents, _ *model.Refill) {
	cl := Clarify{About: "refill", Code: "which_feeder", Want: "feeder"}
	for _, f := range r.c.Herd.Feeders {
		act, ok := r.feedFact(f.Name, c, 1)
		if !ok || c.vessels > 0 {
			act = Fact{model.Refill{Feeder: f.Name, Full: true}}
		}
		if _, seen := act.(Fact).Fact.(model.FeedLevel); seen {
			cl.About = "feed_level"
		}
		e := r.draft(act, s)
		if c.vessels > 0 {
			continue
		}
		cl.Draft = []Entry{e}
		cl.Choices = append(cl.Choices, Choice{Label: f.Name, Entries: []Entry{e}})
	}
	if c.vessels > 0 {
		r.askSize(s, "", c)
		return
	}
	if len(r.c.Herd.Feeders) == 2 && c.amount == nil {
		var both []Entry
		for _, ch := range cl.Choices {
			both = append(both, ch.Entries...)
		}
		cl.Choices = append(cl.Choices, Choice{Code: "both", Entries: both})
	}
	r.clarify(cl, s)
}

// pourSlack is how much over a feeder's capacity a pour may be said: a heaped
// lid, a generous guess.
const pourSlack = 1.12

// mostOver is how many times what fits an amount may be before nobody can have
// meant it.
const mostOver = 4

// A pour of more than bigPour of a feeder is held against what should still be in
// it; levelDoubt of the feeder is left to the figure's own error and to pigs that
// ate more than it knows.
const (
	bigPour    = 0.65
	levelDoubt = 0.25
)

// roomLeft is what may fit into a feeder now, in kilograms: its size less the
// cautious figure of what it holds, where there is one.
func (r *reader) roomLeft(f *model.Feeder) float64 {
	room := r.judge.room(f)
	if room > 0 {
		room -= min(r.judge.held(f, r.c.Now), 0.95*room)
	}
	return room
}

// onTopOf says that a pour of today is more than what the feeder can have room
// for, by what it should still hold. A level told with it is believed.
func (r *reader) onTopOf(pour model.Refill, s span) bool {
	f := r.c.Herd.Feeder(pour.Feeder)
	if f == nil || pour.Fraction != nil || pour.FromEmpty {
		return false
	}
	room := r.judge.room(f)
	if room <= 0 || *pour.FeedKg <= room*bigPour {
		return false
	}
	on, _, _ := r.when(s, lookBack)
	return on == r.today && *pour.FeedKg > r.roomLeft(f)+room*levelDoubt
}

func (r *reader) tooMuch(name string, kg float64) bool {
	f := r.c.Herd.Feeder(name)
	if f == nil {
		return false
	}
	room := r.judge.room(f)
	return room > 0 && kg > room*pourSlack
}

// pourTooBig asks about a pour that cannot have fitted.
func (r *reader) pourTooBig(s span, pour model.Refill) {
	f := r.c.Herd.Feeder(pour.Feeder)
	room := r.roomLeft(f)
	said := *pour.FeedKg
	c := Clarify{
		About: "refill", Code: "implausible_pour", Names: []string{f.Name}, Want: "feed_kg",
		Q:     []model.Quantity{{Value: said, Unit: model.Kilograms}, {Value: room, Unit: model.Kilograms}},
		Draft: []Entry{r.draft(Fact{pour}, s)},
	}
	add := func(code string, kg float64) {
		p := pour
		p.FeedKg = model.Float(kg)
		c.Choices = append(c.Choices, Choice{Code: code, Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}}, Entries: []Entry{r.draft(Fact{p}, s)}})
	}
	if said/10 <= room && said/10 > room*0.03 {
		add("meant", said/10)
	}
	full := model.Refill{Feeder: pour.Feeder, Full: true}
	c.Choices = append(c.Choices, Choice{Code: "just_full", Entries: []Entry{r.draft(Fact{full}, s)}})
	for _, o := range r.c.Herd.Feeders {
		if o != f && r.judge.room(o) >= said && len(c.Choices) < 3 {
			p := pour
			p.Feeder = o.Name
			c.Choices = append(c.Choices, Choice{Label: o.Name, Entries: []Entry{r.draft(Fact{p}, s)}})
		}
	}
	if said <= mostOver*r.judge.room(f) {
		add("as_said", said)
	}
	r.clarify(c, s)
}

// askSize asks once how much a bag or bucket holds; the answer completes the
// record and is kept.
func (r *reader) askSize(s span, feeder string, c contents) {
	pour := model.Refill{Feeder: feeder, Full: c.full, FromEmpty: c.empty}
	cl := Clarify{
		About: "refill", Code: "bag_size", Names: []string{c.vessel}, Want: "size",
		Q:     []model.Quantity{{Value: c.vessels, Unit: model.Count}},
		Draft: []Entry{r.draft(Fact{pour}, s)},
	}
	for _, kg := range r.usualSizes(c.vessel) {
		p := pour
		p.FeedKg = model.Float(kg*c.vessels + valueOf(c.amount))
		cl.Choices = append(cl.Choices, Choice{
			Code: "holds", Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}},
			Entries: []Entry{r.sizeEntry(c.vessel, kg, s), r.draft(Fact{p}, s)},
		})
	}
	r.clarify(cl, s)
}

func (r *reader) sizeEntry(vessel string, kg float64, s span) Entry {
	e := Entry{Act: Fact{model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: vessel, FeedKg: model.Float(kg)}}}, On: r.today}
	e.From, e.To = r.bytes(s)
	return e
}

func valueOf(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
}

// usualSizes are the sizes offered for a measure: common practice, no source.
func (r *reader) usualSizes(vessel string) []float64 {
	us := r.units != model.Metric
	switch vessel {
	case "bag", "sack":
		if us {
			return []float64{50 * kgPerLb, 40 * kgPerLb, 100 * kgPerLb}
		}
		return []float64{25, 20, 50}
	case "batch":
		if us {
			return []float64{100 * kgPerLb, 200 * kgPerLb}
		}
		return []float64{50, 100}
	case "bucket", "pail":
		if us {
			return []float64{25 * kgPerLb, 20 * kgPerLb, 30 * kgPerLb}
		}
		return []float64{10, 12, 15}
	}
	if us {
		return []float64{3 * kgPerLb, 5 * kgPerLb}
	}
	return []float64{1, 2}
}

// openBag asks how much there was in a bag that was open: "what was left in the
// open bag plus one".
func (r *reader) openBag(s span, feeder string, c contents) {
	size, ok := r.sizeOf(unitBag)
	pour := model.Refill{Feeder: feeder, Full: c.full}
	cl := Clarify{About: "refill", Code: "open_bag", Want: "feed_kg", Draft: []Entry{r.draft(Fact{pour}, s)}}
	more := 0.0
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && it.v <= 20 {
			more = it.v
		}
	}
	base := valueOf(c.amount)
	if c.bare {
		base = 0
	}
	if ok {
		for _, part := range []float64{0.5, 0.25, 0.75} {
			p := pour
			p.FeedKg = model.Float(base + (more+part)*size)
			cl.Choices = append(cl.Choices, Choice{Code: "meant", Q: []model.Quantity{{Value: *p.FeedKg, Unit: model.Kilograms}}, Entries: []Entry{r.draft(Fact{p}, s)}})
		}
	}
	r.clarify(cl, s)
}

// eitherIn says that the span names its thing by a word that both a feeder and
// a water barrel bear.
func (r *reader) eitherIn(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].either {
			return true
		}
	}
	return false
}

// sureFeed says that weight, bags or a word for feed settle what was filled.
func (r *reader) sureFeed(s span, c contents) bool {
	return c.amount != nil && !c.bare || r.has(s, sFeed) || r.has(s, sFeeder) || c.days != nil
}

// feedOrWater asks whether feed or water is meant.
func (r *reader) feedOrWater(s span, feed Act, c contents) {
	w := model.Water{Full: c.full || c.filled && c.fraction == nil, Fraction: c.fraction}
	if c.empty && !c.filled {
		w = model.Water{Fraction: model.Float(0), Seen: true}
	} else if c.fraction != nil {
		w.Seen = !c.filled
	}
	if c.amount != nil {
		litres := r.volumeUnit().si(*c.amount / units[r.massUnit()].factor)
		w = model.Water{Litres: &litres, Full: c.full}
	}
	f := r.draft(feed, s)
	r.clarify(Clarify{About: "refill", Code: "feed_or_water", Draft: []Entry{f}, Choices: []Choice{
		{Code: "feed", Entries: []Entry{f}},
		{Code: "water", Entries: []Entry{r.draft(Fact{w}, s)}},
	}}, s)
}

// onlyVessels says that the span is a count of bags and nothing else: poured,
// or bought?
func (r *reader) onlyVessels(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.qty(vessel) && !it.is(sFiller) && it.kind != itDay && it.kind != itClock {
			return false
		}
	}
	return true
}

// allFull marks the pours since the given entry as having filled their feeders.
func (r *reader) allFull(first int) bool {
	done, pours := false, 0
	for k := first; k < len(r.out); k++ {
		if f, ok := r.out[k].Act.(Fact); ok && f.Kind() == "refill" {
			pours++
		}
	}
	if pours < len(r.c.Herd.Feeders) {
		return false
	}
	for k := first; k < len(r.out); k++ {
		if f, ok := r.out[k].Act.(Fact); ok {
			if p, ok := f.Fact.(model.Refill); ok && p.FeedKg != nil {
				p.Full, p.Fraction = true, nil
				r.out[k].Act = Fact{p}
				done = true
			}
		}
	}
	return done
}
