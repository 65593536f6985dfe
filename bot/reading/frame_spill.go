package reading

import (
	"strings"

	"troughbell/model"
)

// What is said of feed that no pig ate.
var (
	spiltWords  = phrasesOf("spilled, spilt, spill, spilled over, spillage, spilling")
	lossWords   = phrasesOf("lost, gone, wasted, on the ground, spilled, spilt, out, maybe, about, probably")
	overWords   = phrasesOf("knocked over, tipped over, turned over, pushed over, flipped over, overturned")
	tippedWords = phrasesOf("tipped, tipped over, tipped itself, tipped out, knocked over, knocked down, fell over, fallen over, fell down, blew over, overturned, turned over, toppled, pushed over, upended, rooted over, flipped, flipped over, got tipped, was tipped")
	robberWords = phrasesOf("raccoon, raccoons, racoon, racoons, coon, coons, rat, rats, mouse, mice, crow, crows, bird, birds, starling, starlings, squirrel, squirrels, deer, bear, bears, possum, possums, opossum, dog, dogs, chicken, chickens, goat, goats, turkeys, geese, sparrows, pigeons, cow, cows, badger, badgers, skunk, skunks, fox")
	robbedWords = phrasesOf("into, in, ate, eaten, eating, raided, robbed, stole, cleaned out, emptied, tore, at, got")
	tillSpilled = phrasesOf("before it started spilling, before it started spilling over, before it spilled, before it spilt, before it was spilling, till it spilled, till it started spilling, until it spilled, until it started spilling, til it spilled")
	feedWords   = phrasesOf("feed, grain, mash, pellets, ration")
	spoiltWords = phrasesOf("got wet, is wet, was wet, wet feed, soaked, moldy, mouldy, mold, mould, spoiled, spoilt, rotten, caked, ruined")
	thrownWords = phrasesOf("threw, thrown, tossed, dumped, shoveled out, shovelled out, scooped out, lost, chucked, discarded, went to waste, wasted, cleaned out, composted, ruined, spoiled")
	onGround    = phrasesOf("on the ground, onto the ground, on the dirt, in the dirt, in the mud")
	leakWords   = phrasesOf("leaked, leaked out, leaking feed, rooted, nosed, scattered, flung, kicked out")
	waterWords  = phrasesOf("water, wallow, drinker, nipple, nipples, tank, gal, gallon, gallons, litres, liters, diesel, fuel, milk, coffee, paint, my, truck, trailer, wheelbarrow")
)

// spillSpan is the items around item k that tell of feed that was lost from a
// feeder, and how much where the next words say it.
func (r *reader) spillSpan(k int) (span, bool) {
	for _, s := range r.pieces(k) {
		if r.tellsSpill(s) {
			return r.withLoss(s), true
		}
	}
	return span{}, false
}

// withLoss adds the clause behind a spill that says how much it was.
func (r *reader) withLoss(s span) span {
	if r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0 || s.j >= len(r.items) || r.items[s.j].gap >= gapStop {
		return s
	}
	next := r.pieces(s.j)[0]
	if (r.firstQty(next, mass) >= 0 || r.firstQty(next, vessel) >= 0) && saysAny(r.said(next), lossWords) && !r.has(next, sFill) {
		s.j = next.j
	}
	return s
}

// tellsSpill says that a span tells of feed that was lost from a feeder: tipped,
// spilled, spoilt or taken by what is no pig of ours.
func (r *reader) tellsSpill(s span) bool {
	said := r.said(s)
	if saysAny(said, denied) || saysAny(said, tillSpilled) || saysAny(said, waterWords) || r.firstQty(s, volume) >= 0 || r.firstQty(s, money) >= 0 {
		return false
	}
	feeder := r.has(s, sFeeder)
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		feeder = feeder || it.feeder >= 0
		if it.quest || it.barrel >= 0 && it.feeder < 0 && !it.either || it.pig >= 0 {
			return false
		}
	}
	feed := feeder || r.has(s, sFeed) || r.has(s, sIngredient) || r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0
	switch {
	case !feed:
		return false
	case saysAny(said, spiltWords):
		return true
	case saysAny(said, onGround), saysAny(said, leakWords) && feeder:
		return r.firstQty(s, mass) >= 0 || r.firstQty(s, vessel) >= 0
	case saysAny(said, tippedWords) && !strings.Contains(said, " in ") && !strings.Contains(said, " into "):
		return feeder && r.thingBefore(s, "tipped", "knocked", "fell", "fallen", "blew", "overturned", "turned", "toppled", "flipped") || saysAny(said, overWords)
	case saysAny(said, robberWords):
		return (feeder || r.has(s, sFeed) || saysAny(said, feedWords)) && saysAny(said, robbedWords) && !r.has(s, sPigs) && !strings.Contains(said, " dead ")
	case saysAny(said, spoiltWords):
		return r.has(s, sFeed) && saysAny(said, thrownWords) || feeder && r.firstQty(s, mass) >= 0 && saysAny(said, thrownWords)
	}
	return false
}

// thingBefore says that a feeder is named before one of the words.
func (r *reader) thingBefore(s span, words ...string) bool {
	seen := false
	for n := s.i; n < s.j; n++ {
		it := &r.items[n]
		seen = seen || it.is(sFeeder) || it.feeder >= 0
		for _, w := range words {
			if strings.HasPrefix(it.s, w) {
				return seen
			}
		}
	}
	return false
}

// spillStarts are words with which the telling of a spill may go on.
var spillStarts = setOfWords(split("on, onto, in, leaked, leaking, nosed, scattered, flung, kicked, tipped, knocked, fell, fallen, blew, overturned, turned, toppled, pushed, upended, rooted, flipped, got, wet, soaked, moldy, mouldy, mold, mould, spoiled, spoilt, rotten, caked"))

// spillStart says that the word of item k may begin the telling of a spill, so
// that only such sentences are looked at.
func (r *reader) spillStart(k int) bool {
	w := firstWord(r.items[k].s)
	return spiltWords().behind(w) != nil || robberWords().behind(w) != nil || spillStarts[w]
}

// fillSpill reads feed that was lost, and how much.
func (r *reader) fillSpill(s span) {
	l := model.FeedLevel{Spilled: true}
	at := things{}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		kg := 0.0
		switch {
		case it.qty(mass):
			kg = it.si()
		case it.qty(vessel):
			if size, ok := r.sizeOf(it.unit); ok {
				kg = it.v * size
			}
		case it.feeder >= 0:
			at.at = append(at.at, it.feeder)
		}
		if kg > 0 && l.SpilledKg == nil {
			l.SpilledKg = model.Float(kg)
		}
	}
	r.useAll(s)
	names, sure := r.feederNames(at)
	if !sure {
		cl := Clarify{About: "feed_level", Code: "which_feeder", Want: "feeder"}
		for _, f := range r.c.Herd.Feeders {
			one := l
			one.Feeder = f.Name
			e := r.draft(Fact{one}, s)
			cl.Draft = []Entry{e}
			cl.Choices = append(cl.Choices, Choice{Label: f.Name, Entries: []Entry{e}})
		}
		r.clarify(cl, s)
		return
	}
	for _, n := range names {
		one := l
		one.Feeder = n
		if l.SpilledKg != nil && len(names) > 1 {
			one.SpilledKg = model.Float(*l.SpilledKg / float64(len(names)))
		}
		r.emit(Fact{one}, s)
	}
}
