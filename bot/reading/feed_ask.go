package reading

import (
	"slices"

	"troughbell/model"
)

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

// askLevel asks how much is left in a feeder that is said to be low.
func (r *reader) askLevel(s span, t things) {
	names, sure := r.feederNames(t)
	if !sure {
		names = []string{""}
	}
	level := func(part float64) (es []Entry) {
		for _, n := range names {
			es = append(es, r.draft(Fact{model.FeedLevel{Feeder: n, Fraction: model.Float(part)}}, s))
		}
		return es
	}
	c := Clarify{About: "feed_level", Code: "how_low", Draft: level(0.25), Want: "feed_level"}
	if sure {
		c.Names = names
		c.Choices = []Choice{{Code: "half_left", Entries: level(0.5)}, {Code: "quarter_left", Entries: level(0.25)}, {Code: "empty", Entries: level(0)}}
	}
	r.useAll(s)
	r.clarify(c, s)
}

// amongChores says that a count of bags stands in a list of what was done in a
// herd with one feeder, so that they were poured: "8 bags, both tanks full".
func (r *reader) amongChores(s span) bool {
	if len(r.c.Herd.Feeders) != 1 {
		return false
	}
	for k := range r.items {
		it := &r.items[k]
		if (k < s.i || k >= s.j) && (it.barrel >= 0 || it.isAny(setOf(sFence, sWater, sWatered, sWallow, sGirth)) && !it.is(sFiller)) {
			return true
		}
	}
	return false
}

// moreOfIt says that a bare amount goes on with a pour of the same sentence: "fed
// 440 yesterday and 100 more today".
func (r *reader) moreOfIt(s span) bool {
	if len(r.out) == 0 || !r.has(s, sMore) || r.items[s.i].gap >= gapStop {
		return false
	}
	_, ok := refillOf(r.out[len(r.out)-1])
	return ok
}

// alsoPoured says that the sentence of a span told a pour of another day right before,
// whose verb holds for it too: "fed two buckets yesterday and a bucket today".
func (r *reader) alsoPoured(s span) bool {
	if len(r.out) == 0 || r.items[s.i].gap >= gapStop {
		return false
	}
	last := &r.out[len(r.out)-1]
	if _, ok := refillOf(*last); !ok {
		return false
	}
	from := r.sentenceStart(s.i)
	on, _, _ := r.when(s, lookBack)
	return last.From >= r.items[from].from && last.On != on && (r.has(span{fFeed, from, s.i}, sFill) || r.has(span{fFeed, from, s.i}, sPour))
}

// smallPour is the part of a feeder that a bare number has to be for it to be a
// weight without a question, where bags of a known size are poured.
const smallPour = 0.05

// fewOrBags asks whether a small bare number poured into a big feeder counts bags:
// "put in 9, full".
func (r *reader) fewOrBags(s, whole span, name string, c contents) bool {
	f := r.c.Herd.Feeder(name)
	bag, known := r.sizeOf(unitBag)
	if f == nil || len(c.each) != 1 || c.left || r.noFeedAtAll(s) || r.otherGoods(s) || r.strangeThing(s) {
		return false
	}
	n := c.each[0] / r.massUnit().si(1)
	room := r.judge.room(f)
	if n > mostVessels || n < 1 || n != float64(int(n)) || room <= 0 || c.each[0] > room*smallPour || n*bag > room*pourSlack {
		return false
	}
	meant := []float64{n * bag, c.each[0]}
	if !known { // the few pounds alone can be offered
		meant = meant[1:]
	}
	cl := Clarify{About: "refill", Code: "doubtful", Want: "feed_kg"}
	for _, kg := range meant {
		one := c
		one.amount = model.Float(kg)
		act, ok := r.feedFact(name, one, 1)
		if !ok {
			return false
		}
		e := r.draft(act, s)
		cl.Draft = append(cl.Draft[:0], e)
		cl.Choices = append(cl.Choices, Choice{Code: "meant", Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}}, Entries: []Entry{e}})
	}
	cl.Draft = cl.Choices[0].Entries
	cl.Choices = append(cl.Choices, Choice{Code: "nothing"})
	r.useAll(s)
	r.clarify(cl, whole)
	return true
}

// strangeThing says that a span holds a word that means nothing here, which may be
// what was counted.
func (r *reader) strangeThing(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itWord && it.sense.empty() && it.unit == 0 && it.pig < 0 && it.feeder < 0 {
			return true
		}
	}
	return false
}

// soManyOr says that a span tells a pour by a count of bags that is not sure: "3 or 4
// bags in the feeder".
func (r *reader) soManyOr(s span, from int) bool {
	if len(r.out) != from+1 {
		return false
	}
	pour, ok := refillOf(r.out[from])
	k := r.firstQty(s, vessel)
	return ok && k >= 0 && r.items[k].rng && r.items[k].v2 > r.items[k].v && pour.FeedKg != nil && !pour.Full
}

// askSoManyOr asks how many it were, either count a choice.
func askSoManyOr(r *reader, s span, from int) {
	e := r.out[from]
	it := &r.items[r.firstQty(s, vessel)]
	pour, _ := refillOf(e)
	more := e
	kg := *pour.FeedKg * it.v2 / it.v
	pour.FeedKg = &kg
	more.Act = Fact{pour}
	c := doubtful([]Entry{e})
	c.Choices = slices.Insert(c.Choices, 1, Choice{Entries: []Entry{more}})
	r.takeBack(s, from)
	r.useAll(s)
	r.clarify(c, s)
}
