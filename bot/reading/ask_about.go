package reading

import (
	"strings"

	"troughbell/model"
)

// What a question is about within its topic, where its figures are not what the
// topic alone would give.
const (
	AboutScraps    = "scraps"     // feeding kitchen waste
	AboutCold      = "cold"       // cold and frost
	AboutFoods     = "foods"      // what else pigs may eat
	AboutSickCare  = "sick_care"  // what to do for a sick pig
	AboutHeatCare  = "heat_care"  // what to do in heat
	AboutHeatLine  = "heat_line"  // from what temperature on
	AboutWaterNeed = "water_need" // what pigs drink
	AboutFlow      = "flow"       // how a drinker should run, or runs
	AboutStraw     = "straw"      // bedding
	AboutSpace     = "space"      // pens, shelter and shade
	AboutGround    = "ground"     // how many pigs ground carries
	AboutFeeder    = "feeder"     // feeding places and their width
	AboutFence     = "fence"      // strands and wire
	AboutBooking   = "booking"    // when to call the butcher
	AboutSize      = "size"       // what pigs should weigh in the end
	AboutSacks     = "sacks"      // batches that use up a sack
	AboutPigCost   = "pig_cost"   // what one pig costs
	AboutBreakEven = "break_even" // at what price the cost is covered
	AboutPigWorth  = "pig_worth"  // what a weaner may cost
	AboutEaten     = "eaten"      // feed of pigs that are only thought of
	AboutFeedOff   = "feed_off"   // when to take the feed away before the butcher
)

// subject says which words make a question one about something: one phrase of each
// group must stand in it, and none of without.
type subject struct {
	about, topic string
	groups       []phrases
	without      phrases
}

func sub(about, topic, without string, groups ...string) subject {
	s := subject{about: about, topic: topic, without: phrasesOf(without)}
	for _, g := range groups {
		s.groups = append(s.groups, phrasesOf(g))
	}
	return s
}

// subjects in the order in which they win.
var subjects = []subject{
	sub(AboutScraps, "ration_check", "",
		"kitchen scraps, table scraps, food scraps, scraps, leftovers, kitchen waste, food waste, slops, swill, garbage, peelings, plate waste, restaurant waste, kitchen slops, household scraps",
		"can i, can we, can you, can they, can pigs, ok to, okay to, should i, may i, is it ok, safe to, allowed, legal, could i, what about, do pigs, am i"),
	sub(AboutFoods, "ration_check", "how much, how many, wormer, medicine, drug, dose, butcher, withdrawal, how often, how long, enough, till, until, tomorrow, weather, last",
		"can i feed, can we feed, can pigs eat, can they eat, can they have, can pigs have, can i give them, can we give them, can i give the pigs, can the pigs have, can the pigs eat, ok to feed, okay to feed, ok to give, okay to give, safe to feed, safe for pigs, safe for them to eat, safe for the pigs, do pigs eat, do they like, what can they not eat, what can't they eat, what cant they eat, what can they eat, what can pigs eat, what should they not eat, poisonous to pigs, toxic to pigs, bad for pigs, good for pigs, let them eat, let the pigs eat"),
	sub(AboutHeatCare, "heat", "fence, wire",
		"heat, hot, heatwave, heat wave, hot weather, hot day, hot days, overheating, warm weather",
		"what do i do, what should i do, what to do, what can i do, what do we do, how do i keep, how do i cool, how to cool, how can i cool, keep them cool, keep pigs cool, keep the pigs cool, cool them, help them, how do pigs handle, get them through"),
	sub(AboutHeatLine, "heat", "fence, wire, today, tomorrow",
		"too hot, how hot, too warm, heat stress, heat, hot",
		"when is it, how hot is too hot, what temperature, what temp, at what temperature, at what temp, how hot can, how hot do, when does it get, when do pigs get, how warm is too warm"),
	sub(AboutCold, "heat", "cold water, freezer, fence, carcass, meat, cooler",
		"too cold, cold, frost, freeze, freezing, freezes, cold snap, below freezing, cold night, cold nights, chilly",
		"is it, is it going to, will it, how cold, frost tonight, freeze tonight, tonight, do they, do pigs, can they, can pigs, are they, will they, what do i do, what should i do, what about, how do i, when is it, what temperature, frost"),
	sub(AboutFlow, "water_left", "feed, overflow, left",
		"flow, flow rate, nipple flow, water flow, flow from the nipple",
		"what, how, is, are, enough, right, ok, okay, good, check, too"),
	sub(AboutWaterNeed, "water_left", "left, wallow, last, barrel hold, until, till, in the barrel, run out, feeders, raise, plan",
		"how much water, how much do they drink, how much do pigs drink, how much will they drink, how many gallons, how many gal, how many litres, how many liters, water per pig, water per day, how much drinking water, how much does a pig drink, what do they drink, how much water does",
		"need, needs, drink, drinks, a day, per day, daily, each day, every day, go through, use, for, per pig, per head"),
	sub(AboutStraw, "plan", "spent, bought",
		"straw, bedding, shavings, bales, bale",
		"how much, how many, how often, need, do i need, enough, what bedding"),
	sub(AboutFeeder, "plan", "left, last, until, till, in the feeder, in the hopper, filled, empty",
		"feeder, feeders, hopper, hoppers, feeding place, feeding places, feeder space, feeder spaces, feeding spaces, holes, hole, trough",
		"wide enough, how wide, width, how many holes, enough holes, how many feeding, how many feeder, feeder space, feeder spaces, big enough for, how many pigs on, how many pigs can, how many pigs per, pigs per, how many pigs will, space per pig, room per pig, how many places"),
	sub(AboutGround, "plan", "feeder, hopper, barrel, nipple, do i have, do we have, butcher, left",
		"how many pigs, how many hogs, how many can i, pigs per acre, stocking rate, stocking density, overstocked, too many pigs",
		"can i keep, can i have, can i raise, can we keep, could i keep, can i run, keep on, fit on, fit in, per acre, on my ground, on our ground, on my land, on this ground, on the ground, on an acre, an acre, acre, acres, hectare, pasture, my pens, my pen, these pens, this pen, on my place, stocking, for my ground, for my pens, for this ground, overstocked, land"),
	sub(AboutFence, "plan", "reading, reads, voltage, volts, last, charge, when did, hot is",
		"fence, fencing, wire, netting, strands, hot wire, electric fence",
		"what fence, what fencing, what kind, which fence, how high, how tall, how many strands, how many wires, how much wire, how much fence, need, what sort, what type, best, how do i fence, how should i fence, how far apart"),
	sub(AboutSpace, "plan", "freezer, is pen, are the pens, is the pen",
		"space, room, how big a pen, how big a paddock, how big should the pen, how big should a pen, how large a pen, what size pen, what size of pen, what size paddock, how big a shelter, how big a hut, how much ground, how much land, how many acres, how much area, how many square feet, how much pasture, square feet per pig, how big a yard, how big an area, what size shelter",
		"need, needs, for, per pig, per head, should, do i, do they, do pigs, a pig, each"),
	sub(AboutBooking, "butcher_date", "",
		"book, call, booking, ring, schedule, reserve, appointment, slot, get a date",
		"butcher, slaughter, processor, abattoir, slot, appointment, kill date",
		"when should, when do i, when do we, when to, how far ahead, how early, how long ahead, how far in advance, how soon, when must, should i, by when, how long before, do i need to, do i have to"),
	sub(AboutSize, "target", "today, now, freezer, how big are, how heavy are",
		"how big should, how heavy should, what weight should, what should they weigh, how much should they weigh, how big do they, how heavy do they, how big do pigs, how heavy do pigs, ideal weight, best weight, good weight, what weight do, what weight to, what weight is, what weight are, what size should, what is a good, how much should a pig weigh, when are they big enough, how big does a pig, how big should a pig, what weight",
		"butcher, butchering, slaughter, finish, market, kill, freezer, at the end, process, processing, harvest, big enough"),
	sub(AboutSacks, "sizes", "",
		"whole sack, whole sacks, whole bag, whole bags, full bags, full sacks, batches per bag, batches per sack, batches in a bag, batches in a sack, batches from a bag, batches from a sack, batches out of a bag, batches out of a sack, batches a bag, batches to a bag, batches does a bag, batches does a sack, batches will a bag, use up the bag, use up a bag, open bags, batch per bag"),
	sub(AboutFeedOff, "feed_left", "how much",
		"stop feeding, stop the feed, stop giving feed, quit feeding, pull feed, pull the feed, pull their feed, take feed away, take the feed away, take their feed away, take away the feed, feed off, take them off feed, take off feed, withhold feed, hold back feed, last feeding, last feed, fast them, empty stomach, off feed before, close the feeder",
		"butcher, slaughter, kill, processor, locker, abattoir, processing, loading, load, haul, trip, they go"),
	sub(AboutBreakEven, "cost", "",
		"break even, breakeven, break-even, cover my costs, cover the costs, cover our costs, not lose money, what should i charge, what do i charge, how much should i charge, what price should i sell"),
	sub(AboutPigWorth, "cost", "so far, spent",
		"can i pay, could i pay, should i pay, can we pay, is it worth paying, most i can pay, max i can pay, most for a, is it worth buying, is it worth getting, worth buying, worth getting, worth it to buy, worth it to get, would it pay to",
		"pig, pigs, weaner, weaners, piglet, piglets, feeder pig, shoat, shoats, hog"),
	sub(AboutPigCost, "cost", "so far, spent, take to",
		"a pig, one pig, each pig, per pig, pigs, a hog",
		"what does, how much does, how much do, what do, cost of raising, cost to raise, cost to keep, how much is, what would",
		"cost, costs, to raise, to keep"),
}

// askAbout settles what a question is about, and its topic with it. It gives the
// topic that holds after it.
func (r *reader) askAbout(a *Ask, s span) {
	said := r.said(s)
	for _, x := range subjects {
		if x.fits(said) {
			a.About, a.Topic = x.about, x.topic
			break
		}
	}
	if a.About == "" && saysAny(said, careWords) && (r.has(s, sSick) || r.sickLately() && saysAny(said, careFor)) {
		a.About, a.Topic = AboutSickCare, "history"
		return
	}
	if flow := r.flowTold(s); flow != nil && (a.About == AboutFlow || a.About == "" && r.tellsFlow(s)) {
		a.About, a.Topic, a.FlowLMin = AboutFlow, "water_left", flow
	}
	switch a.About {
	case AboutGround:
		a.AreaM2 = r.areaAsked(s)
	case AboutPigWorth:
		k := r.firstQty(s, money)
		if k < 0 {
			k = r.firstNum(s)
		}
		if k >= 0 {
			a.Price = model.Float(r.items[k].v)
		}
	}
	if a.Topic == "plan" && a.Count == 0 { // "I want to raise 3 pigs, what do I need"
		a.Count = r.pigsBefore(s)
	}
	switch {
	case a.Topic == "history":
		a.About = kindAsked(said)
	case a.About == "" && r.everBefore(said) && (len(a.Animals) > 0 || r.has(s, sPigs) || r.has(s, sPronoun)) && saysAny(said, kindsAsked[0].words):
		a.Topic, a.About = "history", "sick"
	}
}

func (x subject) fits(said string) bool {
	if saysAny(said, x.without) {
		return false
	}
	for _, g := range x.groups {
		if !saysAny(said, g) {
			return false
		}
	}
	return true
}

// careWords ask what is to be done, and careFor says for whom or what, where that
// was told right before.
var (
	careWords = phrasesOf("what do i do, what should i do, what can i do, what do we do, what should we do, what to do, how do i treat, how do i help, how can i help, what helps, what do you do, what can be done, should i call the vet, do i need the vet, do i need a vet, what's wrong with, whats wrong with, is it serious")
	careFor   = phrasesOf("about it, about that, about this, for it, for him, for her, for them, with him, with her, with it, about him, about her, about them, now, call the vet, the vet, a vet, serious, wrong, treat, help")
)

// sickLately says that the last thing told today or yesterday was a sick pig.
func (r *reader) sickLately() bool {
	if len(r.c.Before) == 0 || r.c.Before[0].Entry.On < r.today-1 {
		return false
	}
	f, ok := r.c.Before[0].Entry.Act.(Fact)
	if !ok {
		return false
	}
	s, ok := f.Fact.(model.Sick)
	return ok && !s.Well
}

// pigsBefore is the number of pigs that the text speaks of before a question, 0 if
// none.
func (r *reader) pigsBefore(s span) int {
	for k := s.i - 1; k > 0; k-- {
		it := &r.items[k-1]
		if r.items[k].isAny(setOf(sPigs, sYoung)) && it.kind == itNum && !it.ord && it.v >= 1 && it.v <= mostPigs && it.v == float64(int(it.v)) {
			it.used = true
			return int(it.v)
		}
	}
	return 0
}

// pigsThoughtOf takes a question on the needs of pigs as one about a plan where
// the herd has none, or another number of them.
func (r *reader) pigsThoughtOf(a *Ask) {
	if a.Topic != "feed_need" || a.Assume != nil || a.Count == 0 || a.Count == r.alive {
		return
	}
	a.Topic, a.About = "plan", AboutEaten
}

// areaAsked is ground that a question names, in square metres; nil if none.
func (r *reader) areaAsked(s span) *float64 {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDim || it.qty(area):
			if m2, ok := r.areaOf(it); ok && m2 > 0 {
				return model.Float(m2)
			}
		case it.kind == itWord && it.unit.dim() == area: // "an acre"
			return model.Float(it.unit.si(1))
		case it.pen >= 0:
			return r.c.Herd.Pens[it.pen].AreaM2
		}
	}
	return nil
}

// kindsAsked are the kinds of record that a question about the past can be
// limited to, in the order in which they win.
var kindsAsked = []struct {
	kind  string
	words phrases
}{
	{"sick", phrasesOf("sick, ill, fit, fits, seizure, seizures, limp, limping, limped, lame, cough, coughed, coughing, scours, scoured, the runs, diarrhea, diarrhoea, off feed, fever, lame before, hurt, injured, prolapse, rash")},
	{"worm", phrasesOf("worm, worming, wormed, dewormed, deworm, deworming, wormer, last worm")},
	{"treat", phrasesOf("treated, treatment, treatments, shot, shots, penicillin, antibiotic, antibiotics, injection, medicine, jab, vaccinated, drug, drugs, meds")},
	{"weigh", phrasesOf("weigh, weighed, weights, weighing, weighings, tape, taped, girth, measured, weight")},
	{"wallow", phrasesOf("wallow, hosed, hose, mud")},
	{"water", phrasesOf("water, watered, barrels, barrel, water barrels")},
	{"mixed", phrasesOf("mix, mixed, ground, batch, batches")},
	{"stock", phrasesOf("buy, bought, purchase, purchased, delivery, delivered")},
	{"move", phrasesOf("move, moved, moves, rotate, rotated, pen")},
	{"fence", phrasesOf("fence, voltage, volts")},
	{"spend", phrasesOf("spend, spent, pay, paid")},
	{"weather", phrasesOf("rain, rained, rainfall")},
	{"alarm", phrasesOf("got out, get out, escape, escaped, pigs out, loose")},
	{"refill", phrasesOf("fill, filled, refill, refilled, fed, feed, feeder, hopper, pour, poured")},
	{"gone", phrasesOf("died, die, butchered, sold, sell")},
	{"note", phrasesOf("note, notes, noted")},
}

// kindAsked is the kind of record that a question about the past names, empty
// for all.
func kindAsked(said string) string {
	for _, k := range kindsAsked {
		if saysAny(said, k.words) {
			return k.kind
		}
	}
	return ""
}

var everWords = phrasesOf("ever, before, last time")

// everBefore says that a question asks whether something ever was.
func (r *reader) everBefore(said string) bool {
	return strings.HasPrefix(said, " has ") || strings.HasPrefix(said, " have ") || strings.HasPrefix(said, " did ") || strings.HasPrefix(said, " was ") || saysAny(said, everWords)
}
