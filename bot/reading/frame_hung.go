package reading

import (
	"troughbell/model"
)

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
	if !sel.any && len(hungs) == 1 && len(packs) == 0 {
		sel = r.onePigBefore(s, sel)
	}
	names := sel.pigs
	if sel.stray { // a number that no pig has
		r.useAll(s)
		r.whichPig("gone", s, r.draft(Fact{g}, s), func(n []string) Act {
			v := g
			v.Animals = n
			if len(hungs) == 1 {
				v.HangingKg = model.Float(hungs[0].kg)
			}
			return Fact{v}
		})
		return
	}
	if !sel.any && len(hungs) == 1 && len(packs) == 0 && !total && r.alive > 1 && r.anyNamed() && len(r.subject) == 0 && !r.eachBehind(s) && !r.awaitsWeight() && !r.quoteHas(s, "they", "average", "on average", "avg") {
		r.useAll(s) // "hung 198" does not say whose
		r.whichPig("gone", s, r.draft(Fact{g}, s), func(n []string) Act {
			v := g
			v.Animals, v.HangingKg = n, model.Float(hungs[0].kg)
			return Fact{v}
		})
		return
	}
	told := g
	told.Animals = sel.names(r)
	if len(names) == 0 || sel.all {
		told.Animals = []string{model.All}
	}
	var kgs []float64
	for _, p := range hungs {
		kgs = append(kgs, p.kg)
	}
	if len(kgs) == 1 {
		told.HangingKg = model.Float(kgs[0])
	}
	if r.hungTooMuch(s, sel, told, kgs) {
		return
	}
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
	if named := !sel.all && len(names) > 1; named && len(packs) == len(names) && len(hungs) == 0 {
		for x, p := range packs {
			v := g
			v.Animals = selection{pigs: names[x : x+1]}.names(r)
			v.PackagedKg = model.Float(p.kg)
			r.emit(Fact{v}, s)
		}
		return
	} else if named && !total && (len(hungs) > 1 || len(packs) > 1) {
		r.unevenLists("gone", s, sel)
		return
	} else if !sel.all && len(names) == 1 && !total && len(hungs) > 1 && len(packs) == 0 && !r.halves(s) {
		r.unevenLists("gone", s, sel)
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
	each := r.eachBehind(s) && !total && v.Animals[0] == model.All
	if len(hungs) == 1 && (each || !total && v.Animals[0] == model.All && r.onlyOneHangs(s, sum)) {
		sum *= r.goneTogether()
	}
	if sum > 0 {
		v.HangingKg = model.Float(sum)
	}
	sum = 0
	for _, p := range packs {
		sum += p.kg
	}
	if len(packs) == 1 && each {
		sum *= r.goneTogether()
	}
	if sum > 0 {
		v.PackagedKg = model.Float(sum)
	}
	r.emit(Fact{v}, s)
}

// halves says that the weights are of one carcass's sides.
func (r *reader) halves(s span) bool {
	return r.quoteHas(s, "sides", "halves", "side", "half", "left", "right", "plus")
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

// onePigBefore is the one pig that the text names before a span that names none: "took
// 413 in this morning.. hung 198".
func (r *reader) onePigBefore(s span, sel selection) selection {
	pig := int16(-1)
	for k := 0; k < s.i; k++ {
		if it := &r.items[k]; it.pig >= 0 {
			if pig >= 0 && pig != it.pig {
				return sel
			}
			pig = it.pig
			it.used = true
		}
	}
	if pig < 0 {
		return sel
	}
	for k := range s.i {
		if r.items[k].is(sTook) || r.items[k].s == "took" {
			r.items[k].used = true
		}
	}
	return selection{pigs: []int16{pig}, any: true}
}

// dayOfCarcasses takes a sentence that tells but the day on which pigs were slaughtered
// whose carcasses the text has weighed, "both were slaughtered on Wednesday", for the day
// of those.
func (r *reader) dayOfCarcasses(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 || it.number() && it.kind != itDay {
			return false
		}
	}
	if !r.has(s, sBoth) && !r.has(s, sAll) && !r.has(s, sPronoun) {
		return false
	}
	day, _, dated := r.when(s, lookBack)
	if !dated || day > r.today {
		return false
	}
	found := false
	for k := range r.out {
		f, ok := r.out[k].Act.(Fact)
		if !ok {
			continue
		}
		if g, ok := f.Fact.(model.Gone); ok && g.How == model.Butchered && g.HangingKg != nil {
			r.out[k].On, r.out[k].Dated, found = day, true, true
		}
	}
	if found {
		r.useAll(s)
	}
	return found
}
