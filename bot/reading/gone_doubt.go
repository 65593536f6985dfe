package reading

import (
	"slices"

	"troughbell/model"
)

// A departure never rests on a guess: what cannot be is asked about, and nothing
// of it is recorded until then.

// mostDressed is the most of a pig's live weight that hangs, a shrunk pig with
// its head on included. Common practice, no source.
const mostDressed = 0.8

// hungTooMuch asks about hanging weights that are more than the pigs can weigh
// alive. Pigs that went to the butcher before are not judged.
func (r *reader) hungTooMuch(s span, sel selection, draft model.Gone, hungs []float64) bool {
	if len(hungs) == 0 || r.alive == 0 {
		return false
	}
	pigs, all := sel.pigs, len(sel.pigs) == 0 || sel.all
	if all {
		if r.awaitsWeight() {
			return false
		}
		pigs = nil
		for p := range r.alive {
			pigs = append(pigs, int16(p))
		}
	}
	on, _, _ := r.when(s, lookBack)
	high := 0.0
	for _, p := range pigs {
		if int(p) >= r.alive {
			return false
		}
		est, err := r.judge.weight(r.pigs[p], on, model.ByScale)
		if err != nil {
			return false // nothing is known of what the pig weighs
		}
		high = max(high, est.Interval().High)
	}
	sum, most := 0.0, 0.0
	for _, kg := range hungs {
		sum, most = sum+kg, max(most, kg)
	}
	switch {
	case !all && len(hungs) == len(pigs) || len(hungs) == 1 && (r.eachBehind(s) || !all):
		if most <= high {
			return false
		}
	case len(hungs) > 1 && !r.has(s, sTotal):
		if sum/float64(len(hungs)) <= high {
			return false
		}
	case sum <= high*mostDressed*float64(len(pigs)):
		return false
	}
	e := r.draft(Fact{draft}, s)
	c := Clarify{
		About: "gone", Code: "implausible_weight", Want: "animals", Draft: []Entry{e},
		Q: []model.Quantity{{Value: most, Unit: model.Kilograms}},
	}
	if !all {
		c.Names = sel.names(r)
	} else if len(hungs) == 1 { // one pig of them, or all
		for _, p := range pigs {
			if name := r.pigs[p].Name; name != "" && len(c.Choices) < 3 {
				one := draft
				one.Animals = []string{name}
				c.Choices = append(c.Choices, Choice{Label: name, Entries: []Entry{r.draft(Fact{one}, s)}})
			}
		}
	}
	if len(c.Choices) == 0 {
		c.Choices = append(c.Choices, Choice{Code: "as_said", Q: c.Q, Entries: []Entry{e}})
	}
	c.Choices = append(c.Choices, Choice{Code: "nothing"})
	r.useAll(s)
	r.clarify(c, s)
	return true
}

// eachBehind says that the sentence of a span gives a weight for each pig.
func (r *reader) eachBehind(s span) bool {
	return r.has(span{s.frame, s.i, r.sentenceEnd(s.j - 1)}, sEach)
}

// awaitsWeight says that pigs went to the butcher whose hanging weight is not
// told yet.
func (r *reader) awaitsWeight() bool {
	for _, g := range r.c.Herd.Gones {
		if g.F.How == model.Butchered && g.F.HangingKg == nil {
			return true
		}
	}
	return false
}

// moreThanThere is the item of a count of pigs that is larger than the herd, -1
// if there is none.
func (r *reader) moreThanThere(s span) int {
	if s.i > 0 && r.countOfPigs(s.i-1, span{s.frame, s.i - 1, s.j}) {
		s.i--
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && !it.soft && !it.ord && it.v > float64(r.alive) && r.countOfPigs(k, s) {
			return k
		}
	}
	return -1
}

// askWhoWent asks which pigs left where more were said to than are there.
func (r *reader) askWhoWent(s span, g model.Gone) {
	c := Clarify{About: "gone", Code: "which_animal", Want: "animals", Draft: []Entry{r.draft(Fact{g}, s)}}
	with := func(names []string) []Entry {
		v := g
		v.Animals, v.Count = names, 0
		return []Entry{r.draft(Fact{v}, s)}
	}
	switch {
	case r.alive == 0:
		c.Want = ""
	case r.alive <= 2 && r.anyNamed():
		for _, a := range r.pigs[:r.alive] {
			if a.Name != "" {
				c.Choices = append(c.Choices, Choice{Label: a.Name, Entries: with([]string{a.Name})})
			}
		}
	}
	if r.alive > 1 {
		c.Choices = append(c.Choices, Choice{Code: "all_pigs", Entries: with([]string{model.All})})
	}
	c.Choices = append(c.Choices, Choice{Code: "nothing"})
	r.useAll(s)
	r.clarify(c, s)
}

// deadThings takes the death from a "dead" that stands before a thing that is no
// pig: "ate a dead rat".
func (r *reader) deadThings() {
	for k := range r.items {
		it := &r.items[k]
		if it.is(sDied) && it.pig < 0 && r.passedOnIt(k) {
			for n, end := k, r.partEnd(k); n < end; n++ {
				r.blank(n)
			}
			continue
		}
		if it.s != "dead" && it.s != "drowned" || k+1 >= len(r.items) || k == 0 && (k+2 >= len(r.items) || r.items[k+2].s != "in") {
			continue
		}
		switch r.items[max(k-1, 0)].s {
		case it.s:
		case "a", "some", "the", "that", "ate", "eating", "two", "three", "of":
		default:
			continue
		}
		n := &r.items[k+1]
		if n.gap == gapNone && n.kind == itWord && n.pig < 0 && (n.sense.empty() || n.is(sForeign)) && len(n.s) > 2 {
			it.sense.drop(sDied)
			it.sense.add(sFiller)
		}
	}
}

// passedOnIt says that the "passed on" at item k refuses something: "22 a bag, passed
// on it".
func (r *reader) passedOnIt(k int) bool {
	if r.items[k].s != "passed on" && r.items[k].s != "passed" {
		return false
	}
	n := k + 1
	if r.items[k].s == "passed" {
		if r.passedThing(n) {
			return true
		}
		if n >= len(r.items) || r.items[n].s != "on" {
			return false
		}
		n++
	}
	if n >= len(r.items) || r.items[n].gap != gapNone {
		return false
	}
	switch r.items[n].s {
	case "it", "that", "that one", "them", "those", "the", "this", "buying", "his", "their":
		return true
	}
	return false
}

// passedThing says that at item n, right behind a "passed", stands what was handed on or
// gone by and no time of death: "passed the apples to otis", "passed a deer on the lane".
func (r *reader) passedThing(n int) bool {
	if n+1 >= len(r.items) || r.items[n].gap != gapNone || r.items[n+1].gap != gapNone {
		return false
	}
	switch r.items[n].s {
	case "the", "a", "an", "some", "him", "her", "them", "his", "out", "my", "our":
	default:
		return false
	}
	return !saysAny(r.said(span{0, n, r.clauseEnd(n)}), passedWhen)
}

var passedWhen = phrasesOf("ago, night, day, morning, hour, hours, evening, afternoon, week, sudden, back")

// partEnd is the item behind item k that a mark, an "and" or a "but" begins.
func (r *reader) partEnd(k int) int {
	n := k + 1
	for n < len(r.items) && r.items[n].gap < gapAnd && r.items[n].s != "but" {
		n++
	}
	return n
}

// livesAfterAll reads a text that takes back a death just told, "no it's alive",
// and gives its record.
func (r *reader) livesAfterAll() (*Recorded, bool) {
	alive := false
	for k := range r.items {
		switch it := &r.items[k]; {
		case it.s == "alive", it.s == "still alive", it.s == "breathing", it.s == "still breathing":
			alive = true
		case k > 0 && it.is(sDied) && r.items[k-1].is(sNot):
			alive = true
		case it.number() && !it.soft, !it.known && it.pig < 0 && len(it.s) > 1:
			return nil, false
		}
	}
	if !alive || len(r.items) > 8 {
		return nil, false
	}
	for _, from := range [][]Recorded{r.c.ReplyTo, r.c.Before} {
		for k := range from {
			f, ok := from[k].Entry.Act.(Fact)
			if !ok || r.c.Now.Sub(from[k].At) > 48*3600*1e9 {
				continue
			}
			g, ok := f.Fact.(model.Gone)
			if !ok || g.How != model.Died || !r.namesOnly(g.Animals) {
				continue
			}
			return &from[k], true
		}
	}
	return nil, false
}

// namesOnly says that the text names no pig but those given; where none are
// given it names none.
func (r *reader) namesOnly(names []string) bool {
	for k := range r.items {
		if p := r.items[k].pig; p >= 0 && !slices.Contains(names, r.pigs[p].Name) {
			return false
		}
	}
	return true
}

// butcherTook turns the taking of pigs by the butcher, or to the butcher, into
// their leaving: "butcher took 2 pigs", "took 4 pigs to butcher".
func (r *reader) butcherTook() {
	for k := range r.items {
		it := &r.items[k]
		switch it.s {
		case "took", "collected", "picked up", "has taken", "taken":
		case "got", "fetched", "loaded":
			if k < 2 || !r.items[k-1].isAny(setOf(sFiller)) || r.find(span{0, r.sentenceStart(k), k}, sButcher) < 0 {
				continue
			}
		default:
			continue
		}
		n := k + 1
		if n >= len(r.items) || r.items[n].gap >= gapComma {
			continue
		}
		if x := &r.items[n]; x.pig < 0 && x.kind != itNum && !x.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sAll, sBoth, sRest)) && x.s != "them" {
			continue
		}
		at := -1
		if k > 0 && it.gap == gapNone && r.items[k-1].is(sButcher) && r.items[k-1].pig < 0 {
			at = k - 1
		}
		for b := k - 1; b >= 0 && b >= k-4 && at < 0 && (it.s == "took" || it.s == "got" || it.s == "fetched" || it.s == "loaded") && r.items[b+1].gap < gapStop; b-- { // "butcher came today, took 4"
			if x := &r.items[b]; x.is(sButcher) && x.pig < 0 && b+1 < k && (r.items[b+1].s == "came" || r.items[b+1].s == "was") {
				at = b
				x.sense, it.gap = setOf(sFiller), gapNone
			}
		}
		for n < len(r.items) && n < k+6 && r.items[n].gap == gapNone && at < 0 {
			if x := &r.items[n]; x.is(sButcher) && x.pig < 0 && x.kind == itWord && (r.items[n-1].s == "to" || r.items[n-1].s == "the") {
				at = n
			}
			n++
		}
		if at >= 0 {
			it.sense = setOf(sSlaughtered)
			r.items[at].sense.drop(sBook)
			r.items[at].used = true
		}
	}
}

// comingDay says that pigs go to the butcher on a day to come, with no word that
// they went: "2 pigs to the butcher oct 10".
func (r *reader) comingDay(s span) bool {
	if r.tookThere(s) {
		return false
	}
	to := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch it.s {
		case "to the butcher", "to slaughter", "off to the butcher", "to the locker":
			to = true
		default:
			if it.is(sSlaughtered) {
				return false
			}
		}
		if it.kind == itDay && to && !it.day.every {
			d, ok := it.day.on(r.today, lookBack, r.dayFirst)
			return ok && d > r.today
		}
	}
	return false
}

// butcherCame says that the butcher came for pigs and has them.
func (r *reader) butcherCame(s span) bool {
	for k := s.i + 1; k < s.j; k++ {
		if r.items[k].sense == setOf(sSlaughtered) && r.items[k-1].is(sButcher) {
			return true
		}
	}
	return false
}
