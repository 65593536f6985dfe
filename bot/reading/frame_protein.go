package reading

import (
	"maps"

	"troughbell/model"
)

// Protein that a tag, a bag or a test can tell of a feed, in percent.
const leastProteinPct, mostProteinPct = 5, 60

// richPct is the protein from which a tag without a name is that of the protein
// feed of a mix, not of the mix.
const richPct = 28

var (
	proteinWords = phrasesOf("protein, proteins, crude protein, cp")
	tagWords     = phrasesOf("tag, label, tag says, bag is, bag says, the bag, tests, tested, analysis, analyzed, analysed, assayed, lab, lab says, feed test, tag reads, labeled, guaranteed")
	testWords    = phrasesOf("tests, tested, analyzed, analysed, assayed, came back, test, lab")
	notProtein   = phrasesOf("left, full, empty, gone, remaining, humidity, rh, withdrawal, lysine, fiber, fibre, fat, need, needs, want, should, withdraw, day, days, off, discount, protein feed for, target, dressing, hanging, yield, charged, battery")
)

// proteinStart says that the word of item k may begin the telling of protein.
func (r *reader) proteinStart(k int) bool {
	it := &r.items[k]
	switch it.s {
	case "protein", "cp", "crude protein":
		return true
	}
	return it.qty(percent) || it.kind == itNum && !it.soft && it.v >= leastProteinPct && it.v <= mostProteinPct && k > 0 && saysAny(" "+r.items[k-1].s+" ", testWords)
}

// proteinSpan is the items around item k that tell the crude protein of a feed.
func (r *reader) proteinSpan(k int) (span, bool) {
	for _, s := range r.pieces(k) {
		if r.tellsProtein(s) {
			return s, true
		}
	}
	return span{}, false
}

func (r *reader) tellsProtein(s span) bool {
	if r.proteinAt(s) < 0 {
		return false
	}
	called := r.percentOfFeed(s)
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		if called && (it.s == "feeding" || it.is(sBuy) && it.unit == 0 && it.kind == itWord) {
			continue
		}
		if it.quest || it.pig >= 0 || it.qty(money) || it.qty(mass) || it.feeder >= 0 || it.barrel >= 0 && !it.either || it.isAny(setOf(sBuy, sFill, sMixed, sPour, sWorm, sTreat, sProduct, sHumid, sWeather)) && it.canon == "" {
			return false
		}
	}
	said := r.said(s)
	if saysAny(said, denied) || saysAny(said, notProtein) {
		return false
	}
	feed := r.has(s, sRecipe) || r.has(s, sFeed) || r.has(s, sIngredient)
	return called || saysAny(said, proteinWords) && (feed || saysAny(said, tagWords) || s.j-s.i <= 4) ||
		saysAny(said, tagWords) && (!saysAny(said, testWords) || feed)
}

// percentOfFeed says that the percentage is part of what a feed is called: "a 16% grower".
func (r *reader) percentOfFeed(s span) bool {
	k := r.proteinAt(s)
	if k < 0 || !r.items[k].qty(percent) {
		return false
	}
	for n := k + 1; n < s.j && n <= k+3 && r.items[n].gap == gapNone; n++ {
		if feedCalled[r.items[n].s] {
			return true
		}
	}
	return false
}

// feedCalled are the names of bought feeds for pigs at their stages.
var feedCalled = setOfWords(split("grower, growers, finisher, finishers, starter, grower pellets, finisher pellets, hog grower, hog finisher, pig grower, pig starter, hog feed, pig feed, grow finish, grower finisher, developer"))

// proteinAt is the item that gives the percentage, -1 where there is none or more
// than one.
func (r *reader) proteinAt(s span) int {
	at := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.qty(percent) && (it.kind != itNum || it.soft || it.ord) {
			continue
		}
		if it.is(sIngredient) { // "48 meal"
			continue
		}
		if at >= 0 || it.v < leastProteinPct || it.v > mostProteinPct {
			return -1
		}
		at = k
	}
	return at
}

// fillProtein reads the protein of the mix, or of one feed of it by its tag. It
// changes the mix of this text, else that of the herd; a herd without one feeds
// what it buys.
func (r *reader) fillProtein(s span) {
	at := r.proteinAt(s)
	if at < 0 { // two such sentences side by side
		r.idleSpan(s)
		return
	}
	pct := r.items[at].v
	name := ""
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sIngredient) && it.canon != "" {
			name = it.canon
		}
	}
	m, entry := r.mixSoFar()
	if r.percentOfFeed(s) && entry == nil { // what is bought is fed, and no mix any more
		m.Ingredients = nil
	}
	whole := r.has(s, sRecipe) || saysAny(r.said(s), testWords)
	switch {
	case len(m.Ingredients) == 0 && (name == "" || name == model.CompleteFeed) && !r.has(s, sRecipe):
		name = model.CompleteFeed
		m.Ingredients = map[string]float64{name: r.bagKg()}
	case name == "" && len(m.Ingredients) == 1 && m.Ingredients[model.CompleteFeed] > 0:
		name = model.CompleteFeed
	case name == "" && pct >= richPct && !whole:
		name = onlyProteinFeed(m)
	}
	if name != "" && m.Ingredients[name] <= 0 || name == "" && (len(m.Ingredients) == 0 || pct >= richPct) {
		r.idleSpan(s)
		return
	}
	if name == "" {
		m.ProteinPct = model.Float(pct)
	} else {
		m.TagProteinPct = maps.Clone(m.TagProteinPct)
		if m.TagProteinPct == nil {
			m.TagProteinPct = map[string]float64{}
		}
		m.TagProteinPct[name] = pct
		m.ProteinPct = nil // what was tested was another mix
	}
	r.useAll(s)
	if entry != nil {
		entry.Act = Fact{m}
		return
	}
	r.emit(Fact{m}, s)
}

// mixSoFar is the mix told in this text with its entry, else the herd's.
func (r *reader) mixSoFar() (model.Recipe, *Entry) {
	for k := len(r.out) - 1; k >= 0; k-- {
		if f, ok := r.out[k].Act.(Fact); ok {
			if m, ok := f.Fact.(model.Recipe); ok {
				return m, &r.out[k]
			}
		}
	}
	m, _ := r.c.Herd.Recipe()
	m.Ingredients = maps.Clone(m.Ingredients)
	return m, nil
}

// bagKg is the size of a bag of bought feed: the herd's, else the usual one.
func (r *reader) bagKg() float64 {
	if kg, ok := r.sizeOf(unitBag); ok {
		return kg
	}
	return r.usualSizes("bag")[0]
}

// onlyProteinFeed is the one protein feed of a mix; empty where it has none or
// several.
func onlyProteinFeed(m model.Recipe) string {
	found := ""
	for name := range m.Ingredients {
		if in, ok := model.Ingredient(name); ok && in.Protein {
			if found != "" {
				return ""
			}
			found = name
		}
	}
	return found
}
