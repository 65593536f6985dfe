package reading

// entryWords says that each of words, separated by commas, can mean a sense. A
// new word is one more item of a line.
type entryWords struct {
	sense sense
	words string
}

// tradeWords is the trade's own vocabulary.
var tradeWords = []entryWords{
	{sPigs, "pigs came, pigs here, pigs arrived, new pigs, pig, pigs, hog, hogs, piggies, piggy, piggys, animals, animal, critters, swine, porkers, head, pigz, snouts, shoats, shoat, feeders pigs, feeder pigs, pigs out, pig out, pig down, pigs down, they got out, they're out, theyre out, they are out, she got out, he got out, they escaped, they broke out, they got loose, pigs in, pigs back, pigs are in, all pigs in, pgis, pgs, pigss, ferkel, schweine, schwein, läufer"},
	{sAll, "alle, all, everyone, everybody, whole herd, the lot, every pig, the pigs, the herd, the hogs, all pigs, all hogs, every one, every one of them, everything, the whole bunch, all of them, whole lot, the piggies, all the pigs, all the hogs, the entire herd, the whole herd, the bunch, everyones, the gang, all our pigs, all my pigs, my pigs, our pigs, em all, them all"},
	{sBarrow, "barrow, barrows, boy, boys, castrate, castrates, the boys, males, male, barrow's"},
	{sGilt, "gilt, gilts, girl, girls, the girls, females, female"},
	{sBoar, "boar, boars, intact male"},
	{sSow, "sow, sows"},
	{sYoung, "small ones, little ones, younger ones, young ones, babies, the babies, new ones, second batch, second group, the youngsters, youngsters, younger, younger pigs, little pigs, small pigs, the littles, young pigs, new pigs, late ones, second lot"},
	{sOld, "big ones, older ones, old ones, first batch, first group, older, older pigs, big pigs, the bigs, first lot, big boys"},

	{sGirth, "girth, heart girth, girthed, chest, girths, grith, heartgirth, around the heart, around the chest, round the chest, girth's, brustumfang, umfang"},
	{sLength, "length, long, len, lenght, lengths, longs, in length, nose to tail, länge"},
	{sTape, "taped, tape, tapes, measured, taping, tape measured, taped out, measures, measure, taped at"},
	{sWeigh, "weigh, weighs, weighed, weight, weights, weighing, wt, wts, scale, scaled, scales, weighed in, tips the scales, weighed out, weighin, wgt, on the scale, weighd, wieght, wiegh, wieghs, wieghed, tipped the scale, put on the scale, went over the scale, comes to, clocked, liveweight, live weight, avg, average, averaging, averages, averaged, average weight, avg weight, mean weight"},
	{sCrate, "crate, in crate, in the crate, with the crate, with crate, incl crate, crated, including crate, including the crate, crate and all, crate included, cage, in the box, with box, pig and crate, crate + pig, crate plus pig"},
	{sEmptyCrate, "empty crate, crate empty, crate alone, crate alone is, tare, empty crate is, crate itself, crate weighs, crate is, crate by itself, the crate alone, crate on its own, less crate, minus crate, less the crate, minus the crate, crate only"},
	{sGain, "up, gained, put on, gain, gained about, heavier, packed on"},

	{sFeed, "feed, grain, chow, mash, grower, finisher, starter, pellets, pellet, slop, food, ground feed, mixed feed, hog feed, pig feed, crumble, meal feed, fodder, crumbles, feeds"},
	{sFeeder, "feeder, barrel feeder, barrel feeders, drum feeder, drum feeders, tote feeder, hop, feeders, hopper, hoppers, trough, troughs, self feeder, bin, bulk bin, feed bin, feed barrel, feed barrels, feed drum, feed tank, selffeeder, self-feeder, feed hopper, feed hoppers, feedr, hoper"},
	{sFill, "gefüttert, aufgefüllt, gefüllt, nachgefüllt, filled, fill, refilled, refill, topped, topped off, topped up, top up, top off, topping, fed, feeding, filled up, refilling, filling, filed up, filld, filld, topd, topped it up, topped it off, brought up, loaded up, recharged, restocked, top'd, replenished, refreshed, toped, filed, topt, fillled, fild"},
	{sPour, "poured, dumped, put in, added, tipped in, in it, poured in, dumped in, threw in, put, gave them, gave, add, went in, emptied in, shoveled in, dropped in, pourd, tipped, emptied, poured into, dumped into, ran in, pumped, pumped in, shoveled, put into, hauled, carried, dropped, lugged, gone in, plus, supplied, received, has received, went into, put down, laid down, gave em, dished out, threw, shovelled, forked"},
	{sFull, "full, to the lid, to the brim, brim, brimful, to the top, to the rim, topped off, full up, brimming, all the way up, all the way, to the top of the lid, right to the top, lid closed, lid barely closes, til full, till full, until full, full again, clear to the lid, chock full, to full, filled to the top, completely full, fulll, up to the lid, up to the brim, fully, all full, clear full, plumb full, full to the top, full to the lid, level full, to the gills, voll, ful, fulled, maxed out, over the top, overflowing, running over"},
	{sEmpty, "empty, bone dry, dry, ran out, run out, ran dry, gone dry, run dry, all gone, nothing left, scraping bottom, licked clean, cleaned out, was empty, is empty, went dry, out of, all out, drained, leer, bottomed out, empties, totally empty, emtpy, empy, nothing in it, nothing in there, cleaned up"},
	{sLeft, "left, remaining, still in, still in it, still in there, to go, in there, still has, remains, still got, still has about, left over, leftover, of it left, left in it, left in there, still there, down to, sitting at, looks about, at about, lookin, looks like, looks, now at, about that much, lef, lft, showing, reads"},
	{sTook, "took, takes, taken, swallowed, needed, it took, only took, to fill, to fill it, to fill up, to top, to top off, to top it off, to fill em, to get full, fit, ate"},
	{sLast, "last, lasts, good for, enough for, of feed, should last, worth, will last, worth of feed, lasts for, supply, cover"},
	{sOpenBag, "open bag, opened bag, open sack, the open one, opened one, started bag, the rest of the open bag, what was left in the open bag, remainder of the open bag"},
	{sPartOf, "of it, of that, of them, of those, of which, of these, of this"},

	{sWater, "water, waters, h2o, drinker, drinkers, waterer, waterers, watering, wtr, watr, wasser, water barrel, water barrels, water tank, water tanks, water drum, water drums, water tote, water trough, nipple barrel"},
	{sWatered, "watered, filled water, filled the water, waterd, filled waters, did water, did the water, did waters, topped water, hauled water, refilled water, water done"},
	{sBarrel, "barrel, barrels, drum, drums, tank, tanks, tote, totes, cube, ibc, cistern, tub, tubs, brl, brls, barrell, barel, barels, barrells, barrles, butt, butts, keg, kegs"},
	{sWallow, "wallow, mud hole, mudhole, mud bath, mud pit, wallows, mud wallow, wallo, wallw, mud puddle, mudbath, wallow hole, suhle, wollow"},
	{sHose, "hosed, hosed down, ran the hose, hose ran, hose on, wetted down, soaked, sprinkled, hosing, ran hose, ran water into, wet down, hosed out, ran the water, hosed in"},
	{sLook, "looks, looked, saw, seen, found, noticed, checked, looking, spotted, level, showing, at, sits, reads, see"},

	{sWorm, "worm, wormed, worming, wormer, dewormed, dewormer, deworm, deworming, drenched, drench, wormd, wormin, de-wormed, de wormed, dewormd, wormers, entwurmt, wormimg, wormed up"},
	{sTreat, "shot, shots, jab, jabbed, jabs, injected, injection, inject, treated, treatment, treat, vaccinated, vaccine, vaccinate, dose, dosed, doses, medicated, antibiotic, antibiotics, poked, meds, medicine, penned, iron shot, injecton, vaccinations, vaccination, course of, pen shot, oral dose, tablet, pills, needle, doctored, painkiller"},
	{sGave, "gave, given, got, gets, administered, had, stuck, under the vet, per vet, per the vet, vet gave, from the vet, by the vet, vet came, vet's, vet"},
	{sWithdraw, "withdrawal, wd, withdraw, withhold, withholding, whp, withdrawl, withdrwal, withdrawal period, withdrawal time, withdrawl period, wait, clear in, meat withdrawal, wdl, w/d, hold, label says, label, days before slaughter, slaughter withdrawal, days withdrawal, withdrawal days, waiting period, wartezeit, vet says, vet said, the vet says, on the label, before butchering, withold, label days"},

	{sMove, "umgezogen, move, moved, rotated, shifted, switched, moved them, moved to, walked, new pen, into, turned into, put into, moving to, turned out, let into, rotated to, opened up, moved em, movd, swapped, moved over, went into, over to, onto, relocated, brought over, in pen, transferred, mved, opened"},
	{sPen, "pen, pens, paddock, paddocks, lot, pasture, pastures, run, runs, cell, yard, corral, field, plot, grazing, koppel, paddoc, padock"},
	{sInUse, "in use, they are in, they're in, theyre in, using, currently, currently in, now in, current, in now, pigs are in, are in, is in use, using now, being used, start in, started in, starting in, living in, they are on, are on, start on, they live in, pigs are on, active, right now in, occupied, live in, are now in, pigs in, is where they are, where they are now, where they are, where the pigs are, is the current one, pigs are currently in, at present in, in it now, they start in, at the moment"},
	{sFence, "fence, wire, hot wire, hotwire, netting, charger, energizer, fencer, fence is, fence at, wires, electric, zaun, fens, energiser, fenc, fence reads, volts, voltage, fence volts, fence voltage, electric fence, the wire"},
	{sDead, "dead, shorted, off, not hot, no power, grounded, cold, not working, no spark, broken, is out, is dead"},

	{sSick, `hinkt, hustet, durchfall, limping, limped, coughed, sneezed, scoured all night, lame, off feed, cough, coughing, coughs, scours, scouring, the runs, has runs, diarrhea, diarrhoea, sick, ill, ailing, unwell, not eating, don't want eat, doesn't want to eat, don't want to eat, doesn't eat, not want to eat, refuses to eat, don't eat, off its feed, won't touch feed, refusing feed, no appetite, off her food, not interested in feed, didn't come to eat, did not eat, has not eaten, hasn't eaten, hasnt eaten, has a limp, dragging a leg, dragging, 
		won't eat, wont eat, isn't eating, isnt eating, not herself, not himself, limp, limps, swollen, bleeding, cut, wound, fever, feverish, shivering, sneezing,
		vomiting, vomited, panting, breathing hard, breathing fast, heavy breathing, lethargic, sluggish, hunched, skinny, thin, abscess, lump, rash, red spots, sunburned, sunburnt,
		sunburn, bitten, tail bitten, prolapse, rupture, hernia, poor, poorly, droopy, slow, stiff, lameness, sore, favoring, favouring, off his feed,
		off her feed, off their feed, off food, off his food, off her food, not drinking, won't drink, isn't drinking, constipated, mange, itching, itchy,
		scratching, infected, infection, runny nose, snotty, weepy eye, eye, hurt, injured, puking, puked, ear, not right, off, acting off, looks off, runny, loose stool,
		loose manure, not well, looks rough, looking rough, rough, going lame, gone lame, lame on, puffy, barely eating, hardly eating, picky, worms, has worms,
		didn't eat, didnt eat, hobbling, hobbles, three legged, three-legged, gimpy, gimping, limpin, limpping, scour, sneezes, wheezing, weak, wobbly, not getting up to eat, lying around, not moving much,
		bloody, blood, scrape, scraped, torn, bite, bit, hoof, leg, foot, overheated, hot and panting, listless, feels warm, warm ears, coughin, lamed, scoured, runs bad, bad leg`},
	{sWell, "recovered, better, fine again, up again, back up, up and about, on her feet, on his feet, on its feet, standing again, up and walking, back on her feet, back on his feet, ok again, okay again, walking again, back to normal, healed, all better, good again, is better, eating again, sound again, walking fine, well again, no longer limping, stopped limping, no more limping, not limping anymore, doing better, much better, back on feed, is fine, looks fine, back to eating, quit limping, quit coughing, stopped coughing, not limping any more, over it"},
	{sOut, "they got out, they're out, theyre out, they are out, she got out, he got out, they escaped, they broke out, they got loose, out, loose, escaped, got out, broke out, on the road, in the road, through the fence, gone through the fence, pigs out, get out, out on road, on road, out in the road, out on the street, escapees, running loose, got loose, on the loose, missing, breakout, jumped the fence, in the garden, in the neighbor's field, are out, is out, out on the road, out again, on highway, out of the pen, outside the fence, in the corn, under the fence, busted out, broke into, broke in the, roaming, not in the pen, pig out, ausgebrochen"},
	{sDown, "down, cant get up, can't get up, cannot get up, won't get up, wont get up, collapsed, seizing, seizure, convulsing, not breathing, staggering, unconscious, pig down, on its side, on his side, on her side, not moving, can't stand, cant stand, won't stand, cannot stand, flat out, unresponsive, gasping, convulsions, having fits, fitting, paddling, down and, open mouth breathing, laid out, choking, foaming, pigs down, won't rise, not getting up, dying"},
	{sNoWater, "no water, out of water, water out, water's out, waters out, without water, water is out, no water at all, water not running, have no water, has no water, ran out of water, no h2o, nothing to drink, water froze, water frozen, water is frozen, nipples froze, nipples frozen, nipple froze, nipple frozen, frozen water, water off, water line burst, water stopped, water is off, water quit, no water in the barrels, no water left"},
	{sNoFeed, "no feed, out of feed, feed out, no food, feed's out, out of food, feed ran out, feed is out, without feed, ran out of feed, no grain, feed all gone, no feed left, out of grain"},
	{sBackIn, "all in, back in, caught, all back, all back in, rounded up, home again, got them back, all accounted for, got em back, safe again, pigs back, pigs in, pigs are in, penned up again, back in the pen, all pigs in, got them all in, got them in, got em in, all home, all present, back where they belong, is in, are back"},

	{sWeather, "degrees, weather, temp, temps, temperature, forecast, hot, cold, heat, outside, degrees out, here today, scorcher, roasting, warm, cool, sunny, chilly, hot out, muggy, in the shade, thermometer, hit, topped out, heatwave, heat wave, hott, scorching, boiling"},
	{sHigh, "high, high of, hi, daytime high, max, highs, tops, peak, highest, up to"},
	{sLow, "low, low of, lo, overnight low, night low, min, lows, overnight, lowest, at night, night, down to, bottomed"},
	{sHumid, "humidity, humid, rh, humidty, relative humidity, luftfeuchte, hum"},

	{sMixed, "mixed, mixing, ground, mixed up, blended, milled, made, stirred up, mixd, mixed a, made up, ground up, gemischt"},
	{sRecipe, "recipe, mix is, the mix, our mix, mix, ration is, ration, a batch is, batch is, formula, blend, recipe is, per batch, each batch, one batch is, batch has, mix:, recipe:, feed mix, new mix, mix now, ration now, mischung, grower mix, home mix, the recipe, blend is, a batch has, batch of, our ration, i mix, we mix, mixture"},
	{sBuy, "bought, buy, buying, purchased, delivered, delivery, restocked, stocked up, picked up, got, order came, ordered, brought home, brought, truck brought, hauled home, mill, feed mill, the mill, feed store, at the feed store, gekauft, bougt, bout, bght, store run, grabbed, fetched, came home with, unloaded"},
	{sShed, "in the shed, on hand, in stock, in the barn, in storage, in the tote, have left, in the bin, shed has, in shed, stock is, barn has, stock, inventory, counted, shed, unopened, in the feed room, stashed, still have, in the garage"},

	{sPay, "spent, paid, cost, costs, pay, bill, invoice, receipt, spend, payed, deposit, owed, charged, fee, bill was, for only, price, bezahlt, expense, expenses, total bill, shelled out, forked over, ran me, set me back, invoiced"},
	{sReceived, "received, got paid, refund, earned, income, paid me, made"},

	{sArrive, "arrived, arrive, came, came home, came in, brought home, new pigs, unloaded, moved in, pigs here, got here, showed up, landed, here, are here, got, picked up, arrival, arrivals, started with, we have, i have, have, got in, joined, home today, pigs came, arived, arrved, came here, bought, purchased, we've got, we got, i've got, started, since, keep, keeping, raising, we keep, i keep, i got, fattening, pigs arrived, delivered, angekommen, had, took in, there are, weaners, piglets, feeder pigs, weaner pigs, weaner"},
	{sNamed, "named, called, names, names are, call them, call it, call, name, known as, name's, their names are, the names are, they are called, we call them, namely, i call it, named it, labelled, labeled"},
	{sAge, "old, of age, weeks old, days old, months old, aged, age, wks old, wk old, week old, mo old"},
	{sBorn, "born, farrowed, dob, birthday, birth date, birthdate, farrowing date, farrow date, born on, date of birth, birth, geboren, hatched"},
	{sDied, "died, dead, dead in, dead pig, passed, passed away, found dead, put down, euthanized, euthanised, had to shoot, had to put down, croaked, perished, is dead, are dead, was dead, dead this morning, dead in the pen, passed on, had to be put down, death, dies, didn't make it, didnt make it, did not make it, found one dead, dead when i got there, ded, dropped dead"},
	{sLost, "lost, lost one, lost a pig, we lost, lost a, losing, lose"},
	{sSold, "sold, sale of, sold off, sell, selling, verkauft, went to a new home, sold to"},
	{sSlaughtered, "butchered, slaughtered, killed, harvested, processed, loaded, went to butcher, went to the butcher, to the butcher, at the butcher, dropped off, took to the butcher, to the freezer, hauled, hauled to, off to the butcher, went in the freezer, dispatched, gone to the butcher, took to butcher, taken to the butcher, to slaughter, went to slaughter, to the locker, butchering done, delivered to the butcher, hauled in, geschlachtet, went to the processor, took to the processor, dropped at the butcher"},
	{sHung, "hung, hung weight, hung weights, hanging, hanging weight, hanging weights, carcass, carcasses, dressed, dressed out, hang, hw, on the rail, hot carcass, carcase, hot carcass weight, hcw, hangs, hanging wt, hung at, dressed weight, on the hook, hook weight, hnaging"},
	{sPackaged, "packaged, boxed, take home, wrapped, meat, packed, cuts, freezer, in the freezer, cut and wrapped, of meat, picked up, take-home, home with, brought home, pork, packages, take home meat, cured, packed out, final meat, packaged weight, in packages, vacuum packed, of pork"},
	{sTotal, "total, in total, all together, altogether, combined, sum, together, in all, overall, all told, all in all"},
	{sButcher, "butcher, slaughter, processor, abattoir, locker, butcher date, kill date, slaughter date, kill day, butcher day, butcher's, the butcher, butchers, butchering, slaughterhouse, meat locker, kill, harvest, processing, packing house, bucher, buther, butchr, schlachter, butcher appointment, kill slot, slaughter day, freezer camp, metzger"},
	{sBook, "booked, book, appointment, appt, slot, slots, booking, scheduled, reserved, confirmed, has us down, has us, date is, got a date, is set for, set for, got us in, can take, takes, penciled in, on the calendar, spots, spot, locked in, schedule, has a slot, rescheduled, moved us to, changed to, got the date, taking, booked in, will take, signed up"},
	{sCancel, "cancel, cancelled, canceled, call off, called off, fell through, scratch, cancels, no longer booked, cancelling, lost the slot, cancel the, canceling"},
	{sAway, "away, vacation, wedding, funeral, conference, camping, off camping, hiking, holiday, holidays, trip, out of town, gone from, travelling, traveling, not here, not home, be gone, on leave, gone, out of state, won't be here, wont be here, off grid, visiting, leave, leaving, im gone, i'm gone, we're gone, were gone, not around, won't be around, urlaub, at the lake, will be gone, am away"},

	{sTarget, "target, aim, aiming, aim for, goal, finish weight, market weight, butcher weight, finish at, aiming for, finishing weight, target weight, shooting for, want them at, want them to reach, finish them at, take them to, butcher at, slaughter weight, goal weight, aim is, finish, aiming at, zielgewicht, slaughter at, to finish, butcher them at, want them to hit, ending weight, final weight, raise them to, grow them to, we finish, get them to, live weight target"},
	{sChore, "chores, chore day, chore days, rounds, choreday, chore, round, big day, work day, feeding day, weekly round, chores are, chore time, do chores, do the chores, weekly chores, pig day, do the pigs, do the round, i do chores, weekly visit, stalltag"},
	{sTell, "message, message me, write, write me, nudge, nudge me, text me, text, ping, ping me, notify, nudges, messages, reminders, tell me, remind us, notifications, write to me, alert me, send, message at, nudges at, send it, hour, notify me, text us, write us, prompt me, send me, push, reminder at, weekly message, let me know, messages at, buzz me"},
	{sQuiet, "quiet, quiet hours, do not disturb, don't disturb, dont disturb, no messages, don't text, dont text, silent, don't write, dont write, dnd, silence, no texts, let me sleep, don't message, leave me alone, no nudges"},
	{sZone, "time zone, timezone, tz, zone, time, clock, local time, timezone is, time zone is, based in, live in, located in, we are in, we're in, near, outside of, located, farm is in, from, i'm in, im in, here in, we live in, place is in, farm in, located near, located outside, town is"},
	{sUnits, "units, unit, measurements, measures, work in, use, using, measure in, i use, we use, think in, everything in, prefer, we work in, i think in, measurement, in units, system"},
	{sUS, "us units, us, u.s., american, imperial, american units, pounds and inches, pounds and gallons, lb and gal, lbs and inches, us customary, imperial units, u.s. units, pounds inches gallons, lb in gal, lbs and gallons, pounds and feet, standard units, customary, pounds inches and gallons, freedom units"},
	{sMetric, "metric, metric units, kilos and centimeters, kg and cm, kilos and litres, kg and litres, kilos and liters, kg and l, metrisch, kg cm, kilos, kg/cm, si units, metric system, metrics, kg and liters, kilograms and litres, kilograms and liters"},
	{sHerd, "herd, herd name, farm, farm name, herd is, herd's name, call us, outfit, place, herd called, farm called, homestead, name of the herd, the farm is, our farm, our herd, my farm, my herd, name of our herd, name our herd, name the herd, call the herd, herd name is, the herd is, the herd is called, our herd is, our place, name of the farm, herd named, call this herd, call our herd, name this herd"},
	{sCurrency, "currency, money in, prices in, costs in, pay in, money"},
	{sHolds, "holds, hold, capacity, takes, fits, carries, holding, can hold, worth, has room for, size, sized, big, max, capacity of, holds about, hold about, is a, each, apiece, a piece, hlds, hodls, which holds, that holds, that hold, which hold, fassen, fasst, with a capacity of, good for, take, weigh, weighs, bag is, bag weighs, capacities, of capacity"},
	{sDeep, "deep, depth, down, tief, in depth, depth is"},
	{sMute, "mute, stop telling, stop asking, no more, stop the, turn off, quit asking, quit telling, stop nagging, unsubscribe, don't remind me, stop reminding me, stop reminding, don't nag, no more reminders, stop nudging, stop bugging, stop bothering, dont remind me"},
}
