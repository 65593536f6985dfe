package reading

import (
	"troughbell/model"
)

// fillFeed reads pours and levels of feeders.
func (r *reader) fillFeed(s span) {
	ps, clear := r.levelsInTurn(r.portions(s, true))
	if !clear {
		if r.askInOrder(s) {
			return
		}
		r.idleSpan(s)
		return
	}
	first := len(r.out)
	var before contents
	for n, p := range ps {
		c := r.contentsOf(p.i, p.j, true)
		c.full = c.full || p.full && c.amount != nil
		r.mixedInto(span{s.frame, p.i, p.j}, &p.things, &c)
		if n > 0 && r.dittoFor(ps[n-1], p, &c) {
			c = before
		}
		before = c
		if n > 0 {
			first = 0
		}
		if (n > 0 || len(r.out) > 1) && p.every && c.amount == nil && c.fraction == nil && c.vessels == 0 && r.allFull(min(first, 0)) {
			continue // "big 160 small 80 full both"
		}
		if len(ps) > 1 {
			if r.has(s, sFill) && !c.left && !((c.empty || c.fraction != nil) && !r.has(span{s.frame, s.i, p.j}, sFill)) {
				c.filled, c.verb = true, true
			}
			if c.amount == nil && !c.full && !c.empty && c.fraction == nil && c.days == nil && c.vessels == 0 {
				if r.anotherFilled(p.i, s.j-1) {
					continue // nothing was said of this one but how it looks
				}
				if n+1 < len(ps) || !r.has(s, sFill) {
					if !r.has(s, sFull) && !r.has(s, sFill) {
						continue
					}
				}
				c.full = c.full || r.has(s, sFull) || r.has(s, sFill)
			}
		}
		r.feedEntries(span{s.frame, p.i, p.j}, p.things, c, s)
		r.noteUnits(p.i, p.j) // "two bags in the big hopper and one in the small"
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
	if c.low && c.amount == nil && c.vessels == 0 && c.fraction == nil && c.days == nil && !c.full && !c.empty && !c.filled && (t.any || r.has(whole, sFeed)) {
		r.askLevel(whole, t)
		return
	}
	if c.amount == nil && c.vessels == 0 && c.fraction == nil && c.days == nil && !c.full && !c.empty && !c.filled && !c.openBag {
		r.idleSpan(s) // "moss looks great": no level of anything
		return
	}
	if r.wasted(whole) { // "threw out 20 lb of wet feed"
		r.noteSpan(whole)
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
	if w, ok := r.seenDryBefore(whole); ok && (c.verb || c.full && r.ofIt(whole)) && !t.any && c.amount == nil && c.fraction == nil { // "barrel empty. filled it."
		r.useAll(whole)
		r.emit(Fact{w}, s)
		return
	}
	if c.verb && c.amount == nil && c.fraction == nil && len(t.at) == 0 {
		if ws := r.bothBarrels(whole); len(ws) > 0 {
			r.useAll(whole)
			for _, w := range ws {
				r.emit(Fact{w}, s)
			}
			return
		}
	}
	alone := c.verb && c.amount == nil && c.vessels == 0 && c.fraction == nil && c.days == nil && !t.any
	if alone && !c.full && r.fillsStranger(whole) {
		r.idleSpan(s)
		return
	}
	names, sure := r.feederNames(t)
	if sure && len(names) > 1 && len(t.at) == 0 && r.oneOf(whole) {
		sure = false // "one of the hoppers is empty"
	}
	if !sure {
		r.whichFeeder(whole, c, nil)
		return
	}
	if len(c.rivals) > 0 && c.amount != nil && len(names) == 1 && c.bare && c.vessels == 0 && r.rivalry(s, names[0], &c) {
		return
	}
	if c.vessels > 0 {
		r.askSize(whole, names[0], c)
		return
	}
	if c.bare && r.fewOrBags(s, whole, names[0], c) {
		return
	}
	if alone && !c.full && r.fedAlone(whole) {
		if act, ok := r.feedFact(names[0], c, 1); ok {
			r.useAll(whole)
			r.clarify(doubtful([]Entry{r.draft(act, s)}), s)
			return
		}
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
	if len(names) > 1 && c.amount != nil && len(c.each) != len(names) && t.every {
		switch r.sharedIn(whole, c.said) {
		case sharedTotal:
			split = float64(len(names))
		case sharedUnclear:
			r.askShared(whole, names, c)
			return
		}
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
		if (c.bare || r.onlyVessels(s) && !r.amongChores(s)) && c.amount != nil && !t.any && !c.filled && !r.moreOfIt(s) && !r.alsoPoured(s) && !c.full && !c.left && !r.has(whole, sFeed) {
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

func valueOf(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
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
