package reading

import (
	"maps"
	"slices"
	"strings"
	"sync"
)

// asked is a set of what the words of a question speak of. A topic's phrases say
// one way to ask; what a person asks about shows in which of these meet, in
// whatever order and with whatever words between.
type asked uint64

const (
	qFeed    asked = 1 << iota // feed, what holds it
	qWater                     // water, what holds it
	qWallow                    // the mud
	qPen                       // ground
	qVessel                    // bags, batches: feed by the piece
	qEat                       // to eat, of the pigs
	qLast                      // to hold out, to be left, to run out
	qHowLong                   // how long, when
	qWhen                      // when, on what day
	qHowMuch                   // how much, how many, a total
	qUntil                     // until, by, to
	qEnd                       // the butcher, the end
	qBuy                       // to buy, to need, to mix
	qHowBig                    // how big, what size
	qHold                      // to hold, to fit
	qUnit                      // pounds, gallons
	qEnough                    // enough, too small
	qWhich                     // which of them, who, any
	qOver                      // over, under
	qGrow                      // growth by any word
	qMoney                     // money
	qMeat                      // meat
	qUse                       // to eat, to sell, to butcher them
	qMay                       // may, is it ok
	qAgain                     // again, yet, already
	qClear                     // clear, clean of
	qDrug                      // a drug, the wormer
	qPast                      // did, was
	qDeed                      // what was done
	qWho                       // who, anybody
	qRecall                    // told, logged
	qForget                    // cannot remember
	qHow                       // how, where from
	qYou                       // the bot
	qFigure                    // a number or an answer, and to find one
	qWhy                       // why
	qTell                      // to write to the bot
	qDo                        // to do, chores
	qAny                       // anything, what
	qMore                      // else, left, still
	qRest                      // to sit down, to go in
	qGet                       // to get pigs, to keep them
	qSpring                    // a season to come, a first time
	qThing                     // feeders, barrels, nipples as things to have
	qGoal                      // the target
	qHeat                      // heat, weather
	qBad                       // dangerous, a problem
	qMix                       // the mix, what is in it
	qRight                     // right, rich enough
	qWeight                    // weight
	qGuess                     // guess, estimate
	qPigs                      // the pigs, a pig's name
	qNumber                    // a number that may be a weight
	qNamed                     // a pig by its name
	qCount                     // a number of pigs
	qDay                       // a day
	qComing                    // a day to come
	qMove                      // to move
	qStay                      // to stay, to rest
	qWorm                      // worming
)

// askedWords says which words speak of what. A phrase takes its words: what it says,
// they do not say alone.
var askedWords = []struct {
	is    asked
	words string
}{
	{qFeed, "feed's, feed, feeds, grub, food, grain, chow, fodder, feeder, feeders, hopper, hoppers, ration left, rations, feedstuff, feeding"},
	{qFeed | qVessel, "bag of feed, bags of feed, sacks of feed, feed bags, lug bags, haul feed, haul bags"},
	{qWater, "water, barrel, barrels, tank, tanks, drum, drums, drink, drinking, drinkers, thirsty, waterer, ibc, tote, gallons, gallon, gal, litres, liters"},
	{qWallow, "wallow, mud, mudhole, mud hole, mud bath, mud pit"},
	{qPen, "meadow, meadows, pen, pens, paddock, paddocks, pasture, field, lot, plot, ground, yard, enclosure"},
	{qVessel, "bag, bags, sack, sacks, batch, batches, ton, tons, tonne, tonnes, scoop, bucket, buckets, scoops, hundredweight"},
	{qEat, "eat, eats, eating, eaten, consume, consumed, go through, goes through, going through, use up, put away, get through, munch"},
	{qLast, "last, lasts, hold out, holds out, hold us, holds us, hold them, tide, tides, make it to, make it til, make it till, make it until, make it through, gonna make it, see us through, get us to, get us through, get us by, get them to, get them through, get me to, carry us, carry them, good for, good til, good till, good until, good through, run out, runs out, run dry, runs dry, empty, left, remaining, remains, still there, still is, is still, is there still, in it still, are they set, set for, go dry, bottom out, reaches, reach, suffice, suffices, inside, have we got in, got in, we got in the, i got in the"},
	{qHowLong, "how much time, how many time, how far off, how far away, how far from, timeline, time frame, how long, how many days, how many more days, until when, till when, for how long, days, what day, how soon, how much longer, how many weeks, how many more weeks, how many months"},
	{qHowLong | qWhen, "when, when's, whens, when do, when does, when will, what date, which day, what month, by when, how soon"},
	{qHowMuch, "how much, how many, how many more, how much more, total, quantity, amount, what quantity, what amount, number of"},
	{qUntil, "until, till, til, by, before, to, for bringing them to, for bringing, between now and, from now, from here, go at, go to, here on out, hit, reach, take them to, get em to, get them to"},
	{qEnd, "she's done, shes done, he's done, hes done, butcher, slaughter, slaughtering, kill day, kill date, killing day, the end, they're done, theyre done, they are done, done, finished, they finish, finish, finishing, market, weight, full weight, target, ready, process, processing, the processor, freezer"},
	{qBuy, "buy, purchase, order, mix, need, needed, needs, require, required, take, takes, pick up, lay in, stock up, get in, haul"},
	{qHowBig, "how heavy is, how big, how big's, how bigs, how wide's, how large, what size, what's the size, whats the size, size of, the size, what area, how many square feet, how many acres, how wide, how deep, dimensions, measurements, square footage, what are the dimensions"},
	{qHold, "hold, holds, fit, fits, go in, goes in, capacity, takes, take, when its full, when it's full, when full, if full, weigh, weighs, how heavy is"},
	{qUnit, "lb, lbs, pounds, pound, kg, kilo, kilos, l, litres, liters, litre, liter, gallon, gallons, gal, gals"},
	{qEnough, "big enough, large enough, enough, too small, too little, bigger, larger, sufficient, adequate, suffice, do for"},
	{qWhich, "which, which one, which ones, which pig, which pigs, who, who's, whos, whose, any, anybody, any of them, anyone, the ones, how many of them, are any, have any"},
	{qOver, "over, above, under, below, past, at least, more than, less than, heavier than, lighter than, beyond, north of, upwards of, topped, at or over"},
	{qGrow, "growing, growth, grow, grows, gaining, gain, gains, putting it on, putting on, put on, packing on, packing it on, packing on the pounds, lagging, lag, behind, coming along, coming on, getting on, getting along, thriving, filling out, slow, slowest, fastest, faster, slower, pulling ahead, holding back, fattening up, bulking up, progressing, progress, doing, shaping up, developing, falling behind, keeping up, catching up"},
	{qMoney, "owe, owed, cost, costs, costed, costing, money, dollars, bucks, pesos, euros, pounds sterling, spent, spend, spending, expenses, paid, pay, into these pigs for, into them for, damage, tab, expensive, price, cheaper, out of pocket, forked out, shelled out, sunk into, outlay"},
	{qMeat, "meat, pork, bacon, ham, hams, chops, sausage, carcass, hang, hangs, hanging, freezer, packaged, yield, dress"},
	{qUse, "eat, eating, eaten, sell, sold, butcher, slaughter, butchered, slaughtered, kill, killed, go, meat, process, processed, go to the butcher, human consumption, haul in, take in, consume"},
	{qMay, "may, can, could, ok, okay, safe, allowed, alright, all right, permitted, fit, legal, good, ready, is it fine, fine, must, have to, need to"},
	{qAgain, "again, yet, already, still, how long until, until"},
	{qClear, "clear, clean, cleared, free of, out of her system, out of his system, out of their system, out of their systems, left their systems, left their system, left her system, left his system, left the system, out of the system, out of system, worn off, over, off the meds, off meds, past the withdrawal, waiting time, waited long enough"},
	{qDrug, "wormer, dewormer, medicine, meds, medication, drug, drugs, shot, shots, antibiotic, antibiotics, withdrawal, injection, penicillin, treatment, jab, paste, worming, deworming"},
	{qPast, "did, was, were, have i, have we, has anyone, has anybody, did i, did we, did anyone, did anybody, was it, had, haven't i, didn't i, didnt i, have you got me, was it me, last time, since, who filled, who did"},
	{qDeed, "fill, filled, top up, topped up, top off, topped off, pour, poured, put feed, put in, feed in, fed, feed, worm, wormed, worming, deworm, dewormed, treat, treated, move, moved, water, watered, do the barrels, do the barrel, do water, do the water, do the feed, do feed, do the feeder, do the hopper, do the wallow, do wallow, fill the, weigh, weighed, tape, taped, mix, mixed, buy, bought, get here, arrive, came, come, hose, hosed, do the chores, moved, clean, cleaned, switched, happen, happened, sell, sold, charge"},
	{qWho, "who, who's, whos, anyone, anybody, somebody, someone, who did"},
	{qRecall, "told you, tell you, said, say, logged, log, recorded, noted, wrote, written, write down, wrote down, entered"},
	{qForget, "can't remember, cant remember, don't remember, dont remember, cannot remember, can't recall, cant recall, don't recall, dont recall, do not recall, can't think, cant think, forget if, forget when, forgot if, forgot when, do not remember, lost track, my memory"},
	{qHow, "how, where did, where'd, whered, where do, where does, how do, how did, how can, how could, how should, how does, how would, how is, what makes, show me how, teach me, in what way, what way, explain how"},
	{qYou, "you, u, ya, you're, your, yourself, thou"},
	{qFigure, "figure, figures, number, numbers, answer, come up, come by, know, know that, know this, work out, worked out, calculate, calculated, get that, got that, get this, think, say, tell me, told me, told, reckon, so sure, certain, arrive at, derive, say that, think that, think so, pull that, dream that up, estimate"},
	{qWhy, "why, how come, what for, for what reason, what makes you, on what grounds, how's that, hows that, how so"},
	{qTell, "tell you, text you, write you, write to you, message you, send you, write, word it, phrase it, phrase things, spell, spell it, type, type it, enter, enters, entering, log, logging, record, recording, report, reporting, put in, put it in, input, jot, say to you, note down, let you know, instruct me, instruct, understand, format, commands, words do you know, use you, use this, work this, talk to you, inform you, communicate, write like, write it, in words, write normal, write normally, talk normal, just say it, just say, plain english, fill in, key in, dictate, instructions, have to write, need to write, teach me, show me how, teach you, do i write, to write, to say"},
	{qDo, "do, done, be done, get done, see to, take care of, look after, attend to, duties, duty, chores, chore, jobs, tasks, task, needs doing, need doing, my plate, handle, take care, need from me, want from me, on the agenda, on the list, awaits, await, wants doing, to be done, tend to, catch up on"},
	{qAny, "anything, what, what's, whats, what do, is there, are there, anything else, what else, something, which, any, what jobs, what chores, what should, what must, what have, what all, what needs"},
	{qMore, "else, left, still, remains, remaining, more, next, first, tonight, today, this evening, this weekend, this morning, this afternoon, tomorrow, before bed, before dark, now, out there, due, coming up, missing, forgotten, forgetting, overdue, on for, pending"},
	{qRest, "sit down, sit, go in, go inside, go to bed, call it a day, call it a night, call it quits, rest, put my feet up, head in, head inside, hit the hay, done for the day, done for today, done for tonight, finished for the day, finished for today, good for the day, good for today, go home, all caught up, caught up, off the hook"},
	{qGet, "get pigs, getting pigs, get some pigs, keep pigs, keeping pigs, raise, raising, start with, have pigs, to have, keep, want, wanted, would want, bought, took on, got, get, getting, have ready, prepare, be prepared, have ready for"},
	{qSpring, "next spring, next year, next summer, next season, this spring, spring, in the fall, first time, first timer, never had, never kept, never raised, never done, new to this, beginner, beginners, starting out, newbie, from scratch, ready, ready for them, before they come, before they arrive, before we get"},
	{qThing, "feeders, barrels, nipples, nipple drinkers, drinkers, waterers, hoppers, troughs, feeding places, tanks, water barrels, how many nipples, shelter, hut"},
	{qGoal, "target, goal, aiming, aim, shooting for, goal weight, target weight, end weight, going for"},
	{qHeat, "heat, hot, degrees, celsius, fahrenheit, temperature, warm, warmth, weather, scorcher, sun, humid, muggy, boiling, roasting, heatwave"},
	{qBad, "danger, dangerous, bad, bad for, problem, a problem, risk, risky, harm, harmful, hurt, trouble, worry, worried, too much, safe, ok for, stress, stressful, cope, handle, stand it, survive, suffer, bother, dangerous for, be ok, be okay, make it through"},
	{qMix, "mix, mixture, ration, recipe, soy, soybean, soybean meal, soya, protein, lysine, blend, corn, barley, feed mix, what i mix, rations, what they get, formula, peas"},
	{qRight, "right, rich enough, strong enough, adequate, sufficient, enough, still good, still ok, still right, still fine, ok, okay, too much, too little, too rich, too weak, change, adjust, correct, tweak, cut back, cut, switch, lower, raise, good for, fit for, right for, suit, suits, suitable, good enough, balanced, ought, should"},
	{qWeight, "how heavy, how fat, weight, weigh, weighs, weighing, heavy, heaviest, lightest, biggest, smallest, tip the scale, tip the scales, on the scale, pounds makes, weigh in, size up, live weight"},
	{qGuess, "guess, estimate, your guess, best guess, reckon, expect, predict, forecast, likely, figure"},
	{qMove, "change the meadow, change the pen, change the paddock, change the pasture, change pens, change paddocks, move, moving, shift, shifted, rotate, switch, fresh ground, new ground, fresh grass, next paddock, next pen, comes next, go next, after this pen, moved"},
	{qStay, "stay, rest, rested, stays, be in there, keep them in, leave them, put them, where they are, been rested, recovered, regrown"},
	{qWorm, "worm, wormed, worming, deworm, dewormed, deworming, wormer, worms, dewormer"},
}

// askedIn is what each word or phrase speaks of, with the most words of a phrase.
var askedIn = sync.OnceValue(func() (out struct {
	of      map[string]asked
	longest int
},
) {
	out.of = map[string]asked{}
	for _, e := range askedWords {
		for _, w := range split(e.words) {
			out.of[w] |= e.is
			out.longest = max(out.longest, strings.Count(w, " ")+1)
		}
	}
	for _, w := range slices.Sorted(maps.Keys(out.of)) {
		for _, form := range otherForms(w) {
			if _, known := out.of[form]; !known {
				out.of[form] = out.of[w]
				out.longest = max(out.longest, strings.Count(form, " ")+1)
			}
		}
	}
	return out
})

// askedOf gathers what the span speaks of.
func (r *reader) askedOf(s span) asked {
	var is asked
	table := askedIn()
	from, to := r.tokenRange(s)
	var store [96]byte
	for i := from; i < to; i++ {
		if r.toks[i].kind != tokWord {
			continue
		}
		for _, key := range r.phrasesAt(store[:0], i, min(to, i+table.longest)) {
			is |= table.of[string(key)]
		}
		if _, known := table.of[r.toks[i].s]; !known {
			if w, ok := r.correct(r.toks[i].s); ok {
				is |= table.of[w]
			}
		}
	}
	for k := s.i; k < s.j; k++ {
		is |= r.askedBy(k, s)
	}
	if r.asksOfDeed(from, to) {
		is |= qWho | qPast | qDeed
	}
	return is
}

// enoughBehind says that a thing's name is but a measure here: "big enough".
func (r *reader) enoughBehind(k int) bool {
	return k+1 < len(r.items) && r.items[k+1].gap == gapNone && firstWord(r.items[k+1].s) == "enough"
}

// askedBy is what an item speaks of by what it stands for in the herd.
func (r *reader) askedBy(k int, s span) asked {
	it := &r.items[k]
	var is asked
	switch {
	case it.pig >= 0:
		is |= qPigs | qNamed
	case it.feeder >= 0 && !it.either && !r.enoughBehind(k):
		is |= qFeed
	case it.barrel >= 0 && !it.either:
		is |= qWater
	case it.pen >= 0:
		is |= qPen
	case it.is(sPigs), it.s == "they're", it.s == "theyre", it.s == "she's", it.s == "he's", it.s == "shes", it.s == "hes", it.s == "they", it.s == "them", it.s == "em", it.s == "he", it.s == "she", it.s == "him", it.s == "her", it.group >= 0:
		is |= qPigs
	}
	switch {
	case it.is(sProduct):
		is |= qDrug
	case it.qty(mass):
		is |= qNumber
	case it.kind == itNum && !it.soft && !it.ord:
		if it.v >= 60 {
			is |= qNumber
		}
		if k+1 < s.j && r.items[k+1].isAny(setOf(sPigs, sYoung)) || k > s.i && r.items[k-1].s == "for" && it.v >= 2 && it.v <= mostPigs {
			is |= qCount
		}
	case it.qty(temperature):
		is |= qHeat
	case it.kind == itDay:
		is |= qDay
		if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok && d > r.today && !it.day.every {
			is |= qComing
		}
	}
	return is
}
