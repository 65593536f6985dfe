package reading

import "strings"

// portion is one stretch of a span with the things it is about.
type portion struct {
	things
	i, j int
	full bool // the heading of the list says so of all of them
}

// portions cuts a span at its mentions of feeders or barrels. Mentions come
// before their amounts if the first mention does.
func (r *reader) portions(s span, feed bool) []portion {
	type mention struct {
		k int
		t things
	}
	var ms []mention
	firstAmount := s.j
	r.setUp.inSpan = r.setUp.inSpan[:0]
	defer func() { r.setUp.inSpan = r.setUp.inSpan[:0] }()
	for k := s.i; k < s.j; k++ {
		if t, ok := r.thingAt(k, feed, s); ok {
			if !t.other {
				r.setUp.inSpan = append(r.setUp.inSpan, t.at...)
			}
			ms = append(ms, mention{k, t})
			r.items[k].used = true
			continue
		}
		if r.amountLike(k, feed) && firstAmount == s.j {
			firstAmount = k
		}
	}
	if len(ms) == 0 {
		return []portion{{i: s.i, j: s.j}}
	}
	if out := r.clausePortions(s, feed, len(ms), func(n int) (int, things) { return ms[n].k, ms[n].t }); out != nil {
		return out
	}
	// Mentions with nothing between them belong together, a named one over a
	// general one: "north hopper", "north and south".
	type cluster struct {
		from, to int
		t        things
	}
	var cs []cluster
	for _, m := range ms {
		if n := len(cs); n > 0 && r.items[m.k].is(sBoth) && len(m.t.at) == 0 && len(cs[n-1].t.at) == 2 {
			cs[n-1].to = m.k // "hill and blue were dry, filled both"
			continue
		}
		if n := len(cs); n > 0 && !r.amountBetween(cs[n-1].to, m.k, feed) && r.deedFrom(s.i-1, cs[n-1].to, m.k) == m.k && !r.restBetween(cs[n-1].to, m.k) && !(r.items[m.k].gap >= gapStop) && !r.onlyLookedAt(m.k, s) && !r.filledBefore(cs[n-1].from, m.k, s) && !(m.t.every && len(m.t.at) == 0 && r.items[m.k].gap >= gapComma && len(cs[n-1].t.at) > 0 && firstAmount < m.k) && !(m.t.every && len(m.t.at) == 0 && r.items[m.k].isAny(setOf(sBoth, sAll)) && m.k+1 < s.j && r.items[m.k+1].is(sFull) && firstAmount < m.k && len(cs[n-1].t.at) > 0) {
			c := &cs[n-1]
			c.to = m.k
			c.t = join(c.t, m.t)
			continue
		}
		if n := len(cs); n == 1 && !feed && r.items[m.k].barrel >= 0 && cs[0].from == cs[0].to && r.items[cs[0].to].s == "water" || n == 1 && !feed && r.items[m.k].barrel >= 0 && cs[0].from == cs[0].to && r.items[cs[0].to].s == "wasser" {
			if c := &cs[0]; r.items[m.k].gap == gapNone && !r.amountBetween(m.k, s.j, feed) && r.amountBetween(c.to, m.k, feed) {
				c.t = join(c.t, m.t) // "water 300 l tank"
				continue
			}
		}
		cs = append(cs, cluster{m.k, m.k, m.t})
	}
	full := false
	if r.headed(len(cs), func(n int) things { return cs[n].t }) { // "feeders: 150 big, 70 small"
		head := span{s.frame, s.i, cs[0].to + 1}
		for head.j < cs[1].from && !r.items[head.j].number() && r.items[head.j].gap < gapComma {
			head.j++
		}
		full = r.has(head, sFull)
		r.useAll(head)
		s.i = cs[0].to + 1
		for s.i < cs[1].from && r.items[s.i].isAny(setOf(sFull, sFiller)) {
			s.i++
		}
		cs = cs[1:]
		firstAmount = s.j
		for k := s.i; k < s.j && firstAmount == s.j; k++ {
			if r.amountLike(k, feed) {
				firstAmount = k
			}
		}
	}
	before := cs[0].from < firstAmount
	if !before && len(cs) > 1 && r.numberBetween(cs[len(cs)-1].to, s.j) {
		before = true
	}
	// Marks right behind a name belong to it even where numbers come first.
	ends := make([]int, len(cs))
	for n, c := range cs {
		ends[n] = c.to + 1
		for ends[n] < s.j && !r.items[ends[n]].number() && r.items[ends[n]].gap < gapComma && (n+1 == len(cs) || ends[n] < cs[n+1].from && !r.nextDeed(ends[n])) {
			ends[n]++
		}
		if k := ends[n]; k < s.j && r.items[k].is(sFull) && r.items[k].gap == gapComma && (k+1 == s.j || r.items[k+1].gap >= gapAnd || r.items[k+1].s == "too") && (n+1 == len(cs) || k < cs[n+1].from) {
			ends[n]++ // "155 in the big one, full, and 3 buckets in the small one"
		}
	}
	var out []portion
	for n, c := range cs {
		p := portion{things: c.t, i: s.i, j: s.j, full: full}
		if before {
			if n > 0 {
				p.i = r.deedFrom(cs[n-1].to, cs[n-1].to, c.from)
			}
			if n+1 < len(cs) {
				p.j = r.deedFrom(c.to, c.to, cs[n+1].from)
			}
		} else {
			if n > 0 {
				p.i = ends[n-1]
			}
			if n+1 < len(cs) {
				p.j = ends[n]
			}
		}
		out = append(out, p)
	}
	return out
}

// clausePortions cuts a span at its clauses where each names one thing and tells its
// amount, but some before and some behind it: "small one is a third, 2 bags in the big
// one". None where it is not so, or where all are told in one order.
func (r *reader) clausePortions(s span, feed bool, n int, at func(int) (int, things)) []portion {
	if n < 2 {
		return nil
	}
	var out []portion
	ahead, behind := false, false
	for m := 0; m < n; {
		from, t := at(m)
		p := portion{things: t, i: max(r.clauseFrom(from), s.i), j: min(r.clauseEnd(from), s.j)}
		to := from
		for m++; m < n; m++ {
			k, more := at(m)
			if k >= p.j {
				break
			}
			p.things, to = join(p.things, more), k
		}
		if len(p.at) != 1 {
			return nil
		}
		if len(out) > 0 {
			if p.at[0] == out[len(out)-1].at[0] {
				return nil
			}
			out[len(out)-1].j = p.i
		} else {
			p.i = s.i
		}
		before, after := r.amountBetween(p.i-1, from, feed), r.amountBetween(to, p.j, feed)
		if before == after {
			return nil
		}
		ahead, behind = ahead || before, behind || after
		out = append(out, p)
	}
	out[len(out)-1].j = s.j
	if !ahead || !behind {
		return nil
	}
	return out
}

// anotherFilled says that how the thing at item i is was told, and that another clause
// tells that the one at item k was filled: "north looks ok, filled the south".
func (r *reader) anotherFilled(i, k int) bool {
	from, named := r.clauseFrom(k), false
	for n := from; n <= k; n++ {
		named = named || r.items[n].feeder >= 0 || r.items[n].barrel >= 0
	}
	if from <= i || !named {
		return false
	}
	s := span{0, i + 1, from}
	return r.has(span{0, from, k}, sFill) && (r.has(s, sIs) || r.has(s, sLook) || r.has(s, sLow) || r.has(s, sLeft) || r.has(s, sEmpty)) && !r.has(s, sFill)
}

// restBetween says that a "rest" stands at the head of a clause behind item i, of which
// nobody knows how much it is: "100 lb to big, rest to small".
func (r *reader) restBetween(i, k int) bool {
	for n := i + 1; n <= k; n++ {
		if it := &r.items[n]; it.is(sRest) && (it.gap >= gapAnd || r.items[n-1].gap >= gapAnd) && n+1 < len(r.items) && (r.items[n+1].s == "to" || r.items[n+1].s == "in" || r.items[n+1].s == "into" || strings.HasPrefix(r.items[n+1].s, "went")) {
			return true
		}
	}
	return false
}

// nextDeed says that an "and" begins another filling at item k: "160 in big | and
// topped off the small one", "hill and blue are dry | i filled hill".
func (r *reader) nextDeed(k int) bool {
	if r.items[k].gap < gapAnd {
		return false
	}
	for n := k; n < len(r.items) && n <= k+2 && (n == k || r.items[n].gap == gapNone); n++ {
		switch it := &r.items[n]; {
		case it.kind != itWord || it.feeder >= 0 || it.barrel >= 0:
			return false
		case it.is(sFill):
			return true
		case !fillers[it.s]:
			return false
		}
	}
	return false
}

// fillers are who fills, and when, before the word for it.
var fillers = setOfWords(split("i, we, just, only, so, so i, so we, he, she, they, then, have, i've, ive, already"))

// deedFrom is where what is told of the thing at item j begins, behind the one at item
// i: at another filling, where a number stands between that and item from, else at its
// own name.
func (r *reader) deedFrom(from, i, j int) int {
	for k := i + 1; k < j; k++ {
		if r.nextDeed(k) && (r.numberBetween(from, k) || r.anotherFilled(from, j)) {
			return k
		}
	}
	return j
}

// dittoFor says that a portion tells nothing of its own but that it is as the one
// before: "north 200, ditto south".
func (r *reader) dittoFor(before, p portion, c *contents) bool {
	if c.amount != nil || c.full || c.empty || c.fraction != nil || c.days != nil || c.vessels > 0 || !p.any {
		return false
	}
	for k := before.i; k < p.j; k++ {
		if it := &r.items[k]; it.is(sDitto) && it.gap <= gapComma {
			it.used = true
			return true
		}
	}
	return false
}

// headed says that of n mentions the first names all things alike and those behind
// it one each: it is but the heading of a list.
func (r *reader) headed(n int, at func(int) things) bool {
	if n < 3 || !at(0).every || len(at(0).at) > 0 {
		return false
	}
	for k := 1; k < n; k++ {
		if len(at(k).at) != 1 {
			return false
		}
	}
	return true
}

// filledBefore says that the things from item i on were filled, and that the one
// at item k stands in a later clause with a level of its own: "filled hill and
// blue, shed still half".
func (r *reader) filledBefore(i, k int, s span) bool {
	if r.items[k].gap < gapComma && !r.saysHowItIs(k) {
		return false
	}
	verb := false
	for n := r.clauseFrom(i); n < k; n++ {
		verb = verb || r.items[n].isAny(setOf(sFill, sWatered)) && r.items[n].kind == itWord
	}
	if !verb {
		return false
	}
	for n := k + 1; n < s.j && r.items[n].gap < gapComma; n++ {
		it := &r.items[n]
		if it.kind == itFrac || it.qty(percent) || it.is(sEmpty) || it.is(sFull) && r.has(span{0, k, n}, sIs) {
			return true
		}
	}
	return false
}

// saysHowItIs says that the thing at item k begins a clause of its own that tells what
// state it is in: "the west is still sitting at a third".
func (r *reader) saysHowItIs(k int) bool {
	n := k + 1
	for n < len(r.items) && r.items[n].gap == gapNone && (r.items[n].soft || r.items[n].isAny(setOf(sBarrel, sFeeder))) {
		n++
	}
	if n >= len(r.items) || r.items[n].gap != gapNone {
		return false
	}
	switch r.items[n].s {
	case "is", "was", "has", "had", "still", "is at", "was at", "sitting at", "is still", "still has", "only has", "stands at":
		return true
	}
	return false
}

func (r *reader) amountBetween(i, j int, feed bool) bool {
	for k := i + 1; k < j; k++ {
		if r.amountLike(k, feed) {
			return true
		}
	}
	return false
}

func (r *reader) numberBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if r.items[k].number() && !r.items[k].soft {
			return true
		}
	}
	return false
}

// onlyLookedAt says that the thing at item k was but looked at: "and the tank i only
// looked at, it's half full".
func (r *reader) onlyLookedAt(k int, s span) bool {
	for n := k + 1; n < s.j && n < k+5 && r.items[n].gap == gapNone; n++ {
		it := &r.items[n]
		if it.is(sLook) && !it.is(sFiller) {
			return n > k+1
		}
		if it.kind != itWord || !it.is(sFiller) {
			return false
		}
	}
	return false
}
