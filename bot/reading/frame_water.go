package reading

import (
	"strings"

	"troughbell/model"
)

// fillWater reads fills and levels of water barrels.
func (r *reader) fillWater(s span) {
	if r.wallowWater(s) {
		return
	}
	r.hoppersToo(s)
	s = r.feederBeside(r.feedBeside(s))
	ps, clear := r.levelsInTurn(r.portions(s, false))
	if !clear {
		if r.askInOrder(s) {
			return
		}
		r.idleSpan(s)
		return
	}
	if len(ps) > 1 && r.toldDay(s) {
		r.keepDay(s) // "yesterday tank 100 l, drum 80 l"
	}
	var before contents
	for n, p := range ps {
		c := r.contentsOf(p.i, p.j, false)
		c.full = c.full || p.full && c.amount != nil
		if n > 0 && r.dittoFor(ps[n-1], p, &c) {
			c = before
		}
		before = c
		if p.every && c.full && c.amount == nil && c.fraction == nil && r.pouredFull(span{s.frame, p.i, p.j}) {
			r.useAll(span{s.frame, p.i, p.j})
			continue
		}
		bare := c.amount == nil && !c.full && !c.empty && c.fraction == nil
		if len(ps) > 1 && bare && n+1 < len(ps) {
			if r.anotherFilled(p.i, s.j-1) {
				continue
			}
			c.full = r.has(s, sFull) || r.has(s, sFill) || r.has(s, sWatered)
			if !c.full {
				continue
			}
		}
		r.waterEntries(span{s.frame, p.i, p.j}, p.things, c, s)
	}
}

// haveWater says no more than that there is water: "they have water".
func (r *reader) haveWater(s span) bool {
	all := span{s.frame, r.clauseFrom(s.i), r.clauseEnd(s.j - 1)}
	return r.quoteHas(all, "have", "has", "got", "still have", "plenty", "plenty of") && !r.has(all, sFill) && !r.has(all, sWatered) && !r.has(all, sDone) && !r.has(all, sPour) && !r.has(all, sNot)
}

// feederBeside reads a feeder that ends a span about water that was filled,
// "topped both barrels and the feeder", and gives the rest of the span.
func (r *reader) feederBeside(s span) span {
	for k := s.j - 1; k > s.i && r.items[k].gap < gapStop; k-- {
		it := &r.items[k]
		if it.kind != itWord && it.kind != itThing || it.number() || it.isAny(setOf(sFull, sEmpty)) {
			break
		}
		if it.gap < gapAnd {
			continue
		}
		feeder := r.find(span{fFeed, k, s.j}, sFeeder) >= 0 || r.items[s.j-1].feeder >= 0
		if !feeder || !r.has(span{s.frame, s.i, k}, sFill) && !r.has(span{s.frame, s.i, k}, sWatered) {
			break
		}
		for n, name := range r.feedersSaid(k, s.j) {
			if n == 0 {
				r.useAll(span{fFeed, k, s.j})
			}
			r.emit(Fact{model.Refill{Feeder: name, Full: true}}, span{fFeed, k, s.j})
		}
		s.j = k
		break
	}
	return s
}

// feedersSaid are the feeders that items[i:j] name, or the only one.
func (r *reader) feedersSaid(i, j int) []string {
	var out []string
	for k := i; k < j; k++ {
		if f := r.items[k].feeder; f >= 0 {
			out = append(out, r.c.Herd.Feeders[f].Name)
		}
	}
	if len(out) == 0 && len(r.c.Herd.Feeders) == 1 {
		out = append(out, r.c.Herd.Feeders[0].Name)
	}
	return out
}

// feedBeside reads a clause that is but a bare number and "full" beside what is
// said of the water, "both barrels full, 165 full", as the feed, and gives the
// rest of the span.
func (r *reader) feedBeside(s span) span {
	pour := func(i, j int) bool {
		number, full := false, false
		for k := i; k < j; k++ {
			it := &r.items[k]
			switch {
			case it.kind == itNum && !it.soft && !it.ord && !number && it.v > 12:
				number = true
			case it.is(sFull):
				full = true
			case it.kind == itWord && it.isAny(setOf(sFiller, sAnd)):
			default:
				return false
			}
		}
		return number && full
	}
	told := func(i, j int) bool {
		for k := i; k < j; k++ {
			if r.items[k].isAny(setOf(sFull, sWatered, sFill, sBoth, sAll, sDone)) {
				return true
			}
		}
		return false
	}
	from := s.j - 1
	for from > s.i && r.items[from].gap < gapComma {
		from--
	}
	if from > s.i && pour(from, s.j) && told(s.i, from) {
		r.fillFeed(span{fFeed, from, s.j})
		s.j = from
		return s
	}
	if to := r.clauseEnd(s.i); to < s.j && pour(s.i, to) && told(to, s.j) {
		r.fillFeed(span{fFeed, s.i, to})
		s.i = to
	}
	return s
}

func (r *reader) waterEntries(s span, t things, c contents, whole span) {
	h := r.c.Herd
	if c.wrong && c.amount == nil && r.eitherIn(s) {
		r.feedEntries(s, things{}, r.contentsOf(s.i, s.j, true), whole)
		return
	}
	if c.amount == nil && c.fraction == nil && !c.full && !c.empty && !c.filled && whole.j < len(r.items) && r.items[whole.j].s == "nothing" && r.items[whole.j].gap < gapStop {
		r.useAll(span{whole.frame, whole.i, r.clauseEnd(whole.j)}) // "tank: nothing yet"
		r.none(NoneNegation, whole)
		return
	}
	w := model.Water{Full: c.full}
	switch {
	case c.amount != nil:
		w.Litres = c.amount
		w.Seen = c.left && !c.filled
		if c.fraction != nil && c.filled && !c.full {
			w.Fraction = c.fraction
		}
	case c.fraction != nil && !c.full:
		w.Fraction = c.fraction
		w.Seen = !c.filled
		if *w.Fraction >= 1 {
			w.Full, w.Fraction = true, nil
		}
	case c.empty && !c.filled && !c.full:
		w.Fraction, w.Seen = model.Float(0), true
	case c.full:
		w.Seen = c.left && r.quoteHas(s, "still")
	case c.filled || r.has(whole, sWatered):
		w.Full = true
	default:
		if r.has(span{fWater, r.clauseFrom(s.i), r.clauseEnd(s.j - 1)}, sNoWater) && !r.saidAlarm(model.AlarmNoWater) {
			r.useAll(s) // the alarm beside it says it all
			return
		}
		if r.saidAlarm(model.AlarmNoWater) { // "no water in any barrel"
			dry := model.Water{Fraction: model.Float(0), Seen: true}
			if len(t.at) == 1 {
				dry.Barrel = h.Barrels[t.at[0]].Name
			}
			r.emit(Fact{dry}, s)
			return
		}
		if r.openAlarm(model.AlarmNoWater) != nil && r.quoteHas(whole, "back on", "back", "running", "running again", "thawed", "flowing", "on again") {
			r.useAll(whole)
			r.emit(Fact{model.Alarm{What: model.AlarmNoWater, Over: true}}, whole)
			return
		}
		if !r.quoteHas(whole, "gone", "dry", "empty") && r.quoteHas(whole, "stuck", "leak", "leaks", "leaking", "leaky", "clogged", "plugged", "dripping", "drips", "valve", "gasket", "hose", "algae", "dirty", "scrubbed") {
			r.noteSpan(whole)
			return
		}
		if r.amountless(whole.i, whole.j) && (r.quoteHas(whole, "ok", "okay", "good", "fine", "great", "is fine", "looks fine", "plenty") || r.haveWater(whole)) {
			r.useAll(whole) // all is well with it: nothing to write down
			return
		}
		if !r.quoteHas(whole, "gone", "dry", "empty") && r.quoteHas(span{whole.frame, r.sentenceStart(whole.i), r.sentenceEnd(whole.j - 1)}, "leak", "leaks", "leaking", "leaky", "cracked", "crack", "broken", "stuck", "clogged") {
			r.noteSpan(whole)
			return
		}
		w.Full = r.doneWithWater(s, t)
		if !w.Full {
			r.clarifyWater(whole, t)
			return
		}
	}
	var names []string
	switch {
	case len(t.at) > 0:
		for _, k := range t.at {
			names = append(names, h.Barrels[k].Name)
		}
	case len(h.Barrels) == 1:
		names = []string{h.Barrels[0].Name}
	case len(h.Barrels) > 1 && !r.eitherIn(s) && (t.one || r.oneOf(whole)):
		r.whichBarrel(whole, w)
		return
	case !t.any && len(r.setUp.barrels) > 0 && !r.has(s, sWatered):
		names = []string{h.Barrels[r.setUp.barrels[len(r.setUp.barrels)-1]].Name}
	case w.Litres != nil && len(h.Barrels) > 1 && !t.every:
		r.whichBarrel(whole, w)
		return
	default:
		names = []string{""}
	}
	if r.eitherIn(s) && len(t.at) == 0 && c.amount == nil && !r.has(s, sWater) && !r.has(s, sWatered) {
		act, ok := r.feedFact("", c, 1)
		if ok {
			r.feedOrWater(whole, act, c)
			return
		}
	}
	for _, n := range names {
		one := w
		one.Barrel = n
		if b := h.Barrel(n); n != "" && b != nil && b.CapacityL != nil && one.Litres != nil && *one.Litres > *b.CapacityL*pourSlack {
			r.waterTooMuch(whole, one, b)
			continue
		}
		r.emit(Fact{one}, s)
	}
	r.useThings(false, t.at)
}

// doneWithWater says that a mention of barrels without a verb means that they
// were filled: "blue today", "water", "both tanks".
func (r *reader) doneWithWater(s span, t things) bool {
	said := r.said(span{0, r.clauseFrom(s.i), r.clauseEnd(s.j - 1)})
	for _, w := range likewise {
		said = strings.ReplaceAll(said, " "+w+" ", " ")
	}
	if r.has(s, sDone) || r.quoteHas(s, "done") || r.has(s, sThanks) && !saysAny(said, howItIs) {
		return true
	}
	if saysAny(said, howItIs) || saysAny(said, elsewhere) {
		return false
	}
	for k := r.clauseFrom(s.i); k < r.clauseEnd(s.j-1); k++ {
		if k >= s.j && !r.items[k].known && r.items[k-1].is(sIs) {
			return false // "blue was drrt": how it was is not understood
		}
		if (k < s.i || k >= s.j) && !r.idleAt(k) && (r.items[k].used || !r.items[k].is(sMove)) {
			continue // it is of another fact
		}
		it := &r.items[k]
		if it.kind != itDay && it.kind != itClock && it.kind != itThing && !it.isAny(setOf(sFiller, sBarrel, sWater, sBoth, sAll, sAnd, sEach)) && it.kind != itNum {
			return false
		}
	}
	return t.every || len(t.at) > 0 && s.j-s.i < len(r.items) || r.has(s, sWater) // a name alone says nothing
}

// likewise give a barrel what was said of another: "shed full and so is hill".
var likewise = split("so is, so are, so was, so were, is too, are too, is the same, are the same")

// howItIs begin what is told of a barrel itself, or say that nothing was done with it.
var howItIs = phrasesOf(`is, was, are, were, looks, looked, smells, seems, has, not, never, didn't, didnt, couldn't, couldnt, can't, cant, won't, wont, because, cuz, cause, nipple, nipples, float, valve, lid, hose, paint, new, old one, moved, 2nd, second`)

// elsewhere say that a barrel is but where something else is.
var elsewhere = phrasesOf(`by the, near the, beside the, behind the, under the, next to the, past the, around the, in front of, down by, over by, dead, died`)

func (r *reader) clarifyWater(s span, t things) {
	full := model.Water{Full: true}
	dry := model.Water{Fraction: model.Float(0), Seen: true}
	if len(t.at) == 1 {
		full.Barrel = r.c.Herd.Barrels[t.at[0]].Name
		dry.Barrel = full.Barrel
	}
	e := r.draft(Fact{full}, s)
	r.clarify(Clarify{About: "water", Code: "which_kind", Draft: []Entry{e}, Want: "water", Choices: []Choice{
		{Code: "full", Entries: []Entry{e}},
		{Code: "empty", Entries: []Entry{r.draft(Fact{dry}, s)}},
		{Code: "nothing"},
	}}, s)
}

// whichBarrel asks which of several barrels is meant.
func (r *reader) whichBarrel(s span, w model.Water) {
	c := Clarify{About: "water", Code: "which_barrel", Want: "barrel", Draft: []Entry{r.draft(Fact{w}, s)}}
	for _, b := range r.c.Herd.Barrels {
		one := w
		one.Barrel = b.Name
		c.Choices = append(c.Choices, Choice{Label: b.Name, Entries: []Entry{r.draft(Fact{one}, s)}})
	}
	if len(c.Choices) < 4 && w.Litres == nil {
		c.Choices = append(c.Choices, Choice{Code: "all", Entries: []Entry{r.draft(Fact{w}, s)}})
	}
	r.clarify(c, s)
}

// waterTooMuch asks about water that cannot have gone in.
func (r *reader) waterTooMuch(s span, w model.Water, b *model.Barrel) {
	c := Clarify{
		About: "water", Code: "implausible_pour", Names: []string{b.Name}, Want: "litres", Draft: []Entry{r.draft(Fact{w}, s)},
		Q: []model.Quantity{{Value: *w.Litres, Unit: model.Litres}, {Value: *b.CapacityL, Unit: model.Litres}},
	}
	add := func(code string, v model.Water) {
		ch := Choice{Code: code, Entries: []Entry{r.draft(Fact{v}, s)}}
		if v.Litres != nil {
			ch.Q = []model.Quantity{{Value: *v.Litres, Unit: model.Litres}}
		}
		c.Choices = append(c.Choices, ch)
	}
	if l := *w.Litres / 10; l <= *b.CapacityL && l > *b.CapacityL*0.03 {
		v := w
		v.Litres = &l
		add("meant", v)
	}
	add("just_full", model.Water{Barrel: w.Barrel, Full: true})
	if *w.Litres <= mostOver*(*b.CapacityL) {
		add("as_said", w)
	}
	r.clarify(c, s)
}

// saidAlarm says that the text has raised an alarm of the kind.
func (r *reader) saidAlarm(what string) bool {
	for _, e := range r.out {
		if f, ok := e.Act.(Fact); ok {
			if a, ok := f.Fact.(model.Alarm); ok && a.What == what {
				return true
			}
		}
	}
	return false
}

// hoppersToo records feeders that share the mark of the water: "hoppers and
// barrels full".
func (r *reader) hoppersToo(s span) {
	k := s.i
	for k < s.j && r.items[k].isAny(setOf(sFiller, sAll, sBoth)) && !r.items[k].is(sWater) {
		k++
	}
	if k == 0 || !r.has(s, sFull) && !r.has(s, sDone) || r.items[s.i].gap != gapAnd && (k >= s.j || r.items[k].gap != gapAnd) {
		return
	}
	p := &r.items[s.i-min(1, s.i)]
	if p.used || !p.isAny(setOf(sFeeder, sFeed)) || p.feeder >= 0 || s.i == 0 {
		return
	}
	p.used = true
	names, _ := r.feederNames(things{every: true, any: true})
	for _, n := range names {
		r.emit(Fact{model.Refill{Feeder: n, Full: true}}, span{s.frame, s.i - 1, s.j})
	}
}

// withoutDoubleWater drops a fill of all barrels said twice: "everybody got
// water, all three barrels to the brim".
func withoutDoubleWater(es []Entry) []Entry {
	out := es[:0]
	seen := map[model.Day]bool{}
	for _, e := range es {
		if f, ok := e.Act.(Fact); ok {
			if w, ok := f.Fact.(model.Water); ok && w.Full && w.Barrel == "" && w.Litres == nil {
				if seen[e.On] {
					continue
				}
				seen[e.On] = true
			}
		}
		out = append(out, e)
	}
	return out
}
