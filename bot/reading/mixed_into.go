package reading

import "troughbell/model"

// What was mixed and then went into a feeder: "mixed 3, all in big", "mixed two
// batches, one in each feeder".

// forceMixed keeps the batches behind a word of mixing with it, where the sentence
// goes on with where they went.
func (r *reader) forceMixed() {
	for k := 0; k+1 < len(r.items); k++ {
		if it := &r.items[k]; !it.is(sMixed) || it.kind != itWord || it.pig >= 0 || it.quest || r.force[k] != 0 {
			continue
		}
		n := k + 1
		if r.items[n].is(sFiller) && n+1 < len(r.items) {
			n++
		}
		it := &r.items[n]
		if it.gap >= gapComma || !(it.qty(vessel) && it.unit == unitBatch) && !(it.kind == itNum && it.v <= mostVessels && !it.ord) {
			continue
		}
		end := r.sentenceEnd(k)
		into := r.find(span{fFeed, n + 1, end}, sFeeder) >= 0 || r.find(span{fFeed, n + 1, end}, sPour) >= 0
		for x := n + 1; x < end; x++ {
			if r.items[x].isAny(setOf(sIngredient, sRecipe)) {
				into = false
				break
			}
			into = into || r.items[x].feeder >= 0 || r.items[x].is(sEach) && r.items[x-1].s == "in"
		}
		if it.unit != unitBatch && !r.allOfIt(n+1, end) {
			continue
		}
		if !into || n+1 >= end || r.items[n+1].gap < gapAnd && !r.items[n+1].is(sPour) {
			continue
		}
		r.forceRange(k, n+1, fMixed)
		r.items[n+1].gap = max(r.items[n+1].gap, gapComma)
		if r.force[n+1] == 0 && r.allOfIt(n+1, r.clauseEnd(n+1)) {
			r.forceRange(n+1, r.clauseEnd(n+1), fFeed)
		}
	}
}

// allOfIt says that items[i:j] tell of all that was told before and where it went:
// "all in big", "one in each", "put it all in the big hopper".
func (r *reader) allOfIt(i, j int) bool {
	for k := i; k < j; k++ {
		switch r.items[k].s {
		case "all", "it all", "all of it", "them all", "em all", "all of them", "it", "them", "em", "both", "one", "everything":
			return true
		}
	}
	return false
}

// mixedInto gives a pour without an amount what was just mixed, where it says that
// all of it went in, and one batch each where it says so.
func (r *reader) mixedInto(s span, t *things, c *contents) {
	few := c.bare && len(c.each) == 1 && len(t.at) == 1
	from, to := r.clauseFrom(s.i), r.clauseEnd(s.j-1)
	each := r.has(span{s.frame, from, to}, sEach)
	size, ok := r.sizeOf(unitBatch)
	if !ok {
		return
	}
	oneEach := each && !t.any && (c.amount == nil || sameAmount(*c.amount, size))
	if c.amount != nil && !few && !oneEach || c.fraction != nil || c.vessels > 0 || c.left || c.empty || len(r.out) == 0 || r.items[s.i].gap >= gapStop {
		return
	}
	f, ok := r.out[len(r.out)-1].Act.(Fact)
	if !ok || r.out[len(r.out)-1].To > r.items[s.i].from {
		return
	}
	m, ok := f.Fact.(model.Mixed)
	if !ok || m.Batches == nil || *m.Batches <= 0 {
		return
	}
	switch {
	case few:
		n := *c.amount / r.massUnit().si(1)
		if n > *m.Batches {
			return
		}
		c.amount, c.bare = model.Float(n*size), false // "mixed 4, 2 in big"
		c.each = []float64{*c.amount}
		c.filled, c.bags = true, true
		return
	case c.amount == nil && len(t.at) == 1 && r.allOfIt(from, to):
		c.amount = model.Float(*m.Batches * size)
	case c.amount == nil && t.every && len(t.at) == 0 && each && *m.Batches == float64(len(r.c.Herd.Feeders)):
		c.amount = model.Float(size)
	case oneEach && *m.Batches == float64(len(r.c.Herd.Feeders)): // "mixed 2, one in each"
		t.any, t.every, c.each = true, true, nil
		for range r.c.Herd.Feeders {
			c.each = append(c.each, size)
		}
		c.amount = model.Float(*m.Batches * size)
	default:
		return
	}
	c.filled, c.bags = true, true
	r.useAll(span{s.frame, from, to})
}
