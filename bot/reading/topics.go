package reading

// topicVote is what a word says for a topic of questions.
type topicVote struct {
	topic  string
	weight float32
}

// topicWords says which words speak for which topic, and how strongly.
var topicWords = []struct {
	topic  string
	weight float32
	words  string
}{
	{"butcher_date", 3, "butcher date, butcher day, kill date, slaughter date, till butcher, to butcher, until butcher, before butcher, butcher time, ready, finish, finished, done growing, be ready, market, be done, booked for, days to, days till, days until, big enough, hit target, reach target, reach the target, butcher weight, market weight, to slaughter, until slaughter, till slaughter, at target, hits target, make weight, reach weight, reach market weight, book the butcher, finishing date, before they go, ready to go, go to the butcher, send them, hits, hit, reaches, reach, reached, make it to, gets to, get to, until they hit, till they hit, to finish, long till freezer, to the freezer, weeks till, weeks until, ship, go to market, schlachten, schlachtreif, long to, away from, fertig, till kill, till slaughter weight, ready by, slaughtering, countdown"},
	{"butcher_date", 3, "how many more weeks, how many more days, how much longer, weeks left, months left, how many weeks, fat enough, fat enuf, big enuf, heavy enough"},
	{"butcher_date", 1.6, "butcher, slaughter, processor, kill, harvest, days left, butcherin, butchering, bucher, slaughtered, butchered"},
	{"weight", 2.2, "weigh, weight, weights, weighing, heavy, worth weighing, how heavy, how big, weighs, what do they weigh, average weight, avg weight, mean weight, size of the pigs, current weight, how fat, fat, estimated weight, wiegt, wiegen, gewicht, wt, how large, weigh now, weighed, biggest, heaviest, lightest, smallest, wiegh, weights today, poundage"},
	{"growth", 3, "how are the pigs doing, how are they doing, how are the pigs, doing, growing, growth, gain, gaining, rate of gain, average daily gain, adg, growth rate, gained, gains, how fast, on track, growing well, weight gain, daily gain, per day gaining, catching up, put on, putting on, behind, slowest, thriving, growing right, doing growth wise, pounds a day, pounds per day, grow, fastest, on schedule, zunahme, kg a day, kilos a day, lb a day, lbs a day, wachsen, growin"},
	{"feed_left", 3.4, "still there, is still there, feed is there, feed consumption"},
	{"feed_left", 3, "enough feed, enough food, enough grain, feed left, left in the feeder, left in feeder, left in the hopper, feed last, last till, last until, food left, in the feeder, run out of feed, run out, runs out, days of feed, feeder last, feeder empty, hopper last, feed level, grain left, feed remaining, will it last, enough feed till, last to, feeder run, hopper run, feed run out, make it to saturday, make it till, make it until, left in the barrel, in the hopper, in the hoppers, hopper empty, go empty, run dry, lasts, how long will the feed, does the feed, next refill, refill, need filling, fill the feeder, when do i fill, when to fill, need to fill, fill up, hoppers last, feeders last, left in, futter reicht, reicht, empties, be empty, how full, last the week, hold out, last through, feed situation, need feeding, due a fill"},
	{"feed_left", 1.2, "last, feeder, hopper, left, feed, hoppers, feeders, filled, food, remaining, empty, chow, grain, long, futter, enough"},
	{"feed_need", 3.2, "feed needed, need to buy, should i buy, do i need to buy, to buy, to mix, how much feed do i need, feed do i need, feed do we need, feed until, feed till, feed to, feed to finish, need to finish, feed for, batches do i need, batches to mix, need to mix, batches do we need, should i mix, how many batches, how much to mix, need to get them to, how many bags, feed will they need, feed will they eat, will they eat, eat until, eat till, feed to buy, need from now, total feed, much more feed, more feed, feed do they need, feed to get, feed required, bags do i need, needed until, needed till, feed to the end, feed through, to order, should i order, feed will i need, need until, need till, much feed will, eat between, how many more bags, bags will, batches to, feed use until, tons of feed, eat from now, still need to, they gonna eat, eat before, must i buy, must i mix, should we buy, should we mix, to purchase, feed between now, feed to reach, bags to, pour, to pour, should i pour, brauche, bags until"},
	{"feed_need", 0.8, "how much feed"},
	{"feed_need", 3.6, "feed until butcher, feed till butcher, feed to butcher, feed until slaughter, feed till slaughter, feed until the butcher"},
	{"feed_need", 1.3, "buy, batches, batch, mix, needed, need, order, eat, eating, bags, required"},
	{"water_left", 3.2, "gallons, gal, litres, liters, water, water left, barrels last, barrel last, water last, water run out, out of water, drinking water, days of water, barrel empty, fill the barrels, fill water, barrels run, tank last, water level, barrels, barrel, tanks, enough water, drink, drinking, water barrels, thirsty, wasser, drinkers, drinker, drum, drums, water hold, waters"},
	{"ration_check", 5, "mix still ok, mix still good, mix still fine, ration still ok, still ok mix, should the mix be, the mix be, mix be at, the mix at, should they get now, should they be eating"},
	{"ration_check", 3.2, "ration, mix right, mix ok, mix okay, protein, lysine, recipe, is the mix, mixture, the mixture, enough protein, mix good, feed right, enough lysine, mix still right, mix right for, ration right, ration ok, right mix, good mix, ration check, balanced, mix fine, mix strong enough, what should i mix now, protein enough, right feed, feed ok, feed good enough, soy enough, enough soy, mineral enough, right ration, mix good enough, change the mix, change the ration, mix need, mixing right, blend, mix balanced, mischung, formula, crude protein, energy, step down, mix suit, mix suitable, nutrition, rations, mix adequate"},
	{"cost", 3.4, "cost, costs, cost me, spend, spent, spending, price, per pound, per lb, money, expense, expenses, how much have i spent, paid, cost so far, break even, budget, cost per, per kilo, expensive, costing, kosten, kostet, dollars, worth, bill, profit, per kg, totals so far, in the hole, set me back, bucks, invest, invested, outlay, expenditure, running me"},
	{"worming", 3.2, "worm, worming, wormed, deworm, wormer, worm them, dewormed, deworming, next worming, worms, entwurmen, due for worming, worm again, wormin, worm treatment, drench"},
	{"move", 3.2, "go next, where next, next paddock, stay in, where are the pigs, where are they, move, move them, move pens, moved, rotate, next pen, pen move, change pens, new pen, time to move, next paddock, move the pigs, moving, rotation, switch pens, pen, paddock, pens, pasture, graze, umstallen, which pen, ground bare, move em, shift them"},
	{"wallow", 3.4, "wallow, mud, mud hole, wallow dry, fill the wallow, hose, suhle, wallow need, mudhole, top up the wallow"},
	{"heat", 3.2, "too much for them, degrees, die, heat, hot, too hot, heat stress, thi, temperature, heat index, heat risk, how hot, danger heat, heat danger, weather, hitze, heiss, warm, heat wave, safe for them, heatwave, humidity, cooling, shade, overheating, sweltering, heat bad"},
	{"yield", 3.4, "yield, hanging weight, meat, how much meat, take home, packaged, carcass, dressing, hanging, freezer space, pounds of meat, meat will, how much pork, pork, bacon, hang, cuts, freezer, retail, dress out, carcase, hung, fleisch, bring home, meat per pig, hanging weights, dressed, hams, chops, cutting yield, in the freezer, sausage, dressing percentage"},
	{"plan", 3.4, "plan, planning, if i get, if i got, to start, raise pigs, what do i need, need for pigs, starting out, getting pigs, if i buy, what would i need, want to raise, thinking of getting, get pigs, raise, newcomer, what will i need, first pigs, need to raise, do i need for, plan for, before i get pigs, get started, how much space, shelter, need for, plan a batch, set up for, what do we need, do you need for, would i need, weaners, buy piglets, to keep, space do, next batch"},
	{"today", 3.6, "still have to tell, have to tell you, still need to tell, do you still need, you still need, is missing, what's missing, still missing, what else do you need, need to know, left to tell, left to set up, set up yet"},
	{"today", 3.2, "gotta do, gotta get done, have to get done, needs to get done, anything i need, anything i should, anything due, anything coming, anything to do, due, what's due, whats due, to do, todo, chores, what needs doing, this week, on the list, list for, what should i do, what do i do, coming up, upcoming, next chore, do today, needs doing, anything to do, agenda, what's saturday, what is saturday, to do list, what's next, whats next, what now, anything due, schedule, on saturday, do on, tasks, jobs, what's on, whats on, need doing, do saturday, do this, needs done, need to do, what's happening, status, summary, overview, what's up for, on the docket, rundown, ansteht, zu tun, what else, plan for today, round, what's coming, next job, morning list, work is there, chore list, should i be doing, be doing, on sunday, for saturday, for sunday, waiting for me, left to do, still to do, outstanding, bring"},
	{"withdrawal", 4, "medicine, not sell, can't sell, still not sell, sell because, medicated, not eat yet, can't butcher"},
	{"withdrawal", 5, "waiting time, wait time, withdrawal time, withdrawal period, safe to butcher, still in withdrawal"},
	{"withdrawal", 3.4, "can i sell, can we sell, ok to sell, safe to sell, can i eat, can we eat, ok to eat, can be eaten, can i butcher, ok to butcher, withdrawal, clear, withdrawal clear, be clear, clear of, cleared, withdrawal over, drug free, safe to eat, safe to butcher, withdrawal up, withhold, clear yet, wd, when clear, clear to, wartezeit, medication, shot wear off, clears, off withdrawal, under withdrawal, in withdrawal, withdrawal end, meds, withdrawal date, still on, waiting period, treated, wear off, be eaten, allowed to slaughter, may be slaughtered, not clear, drug, drugs"},
	{"feed_left", 5, "are we on feed, we on feed, i got on feed, are we on food, are we on grain, we doing on feed, fill again, next fill, have to fill, to fill again, feed till when, feed til when, feed until when, feeder ok, feeders ok, hopper ok, hoppers ok, food till, food til, enough food till, feed status, feed remains, feed remaining, wait to fill, feed wait, pounds are in the, how the feed is, feed hold out, ok on feed, good on feed, short on feed, doing on feed, feed ok til, feed ok till, feed ok until"},
	{"water_left", 5, "are we on water, we on water, i got on water, to water again, have to water, water till when, water til when, water until when, barrel ok, barrels ok, water supply, haul water, water status, ok on water, good on water, doing on water, water hold out, water hold, water supply hold"},
	{"weight", 4.5, "weight wise, weightwise, are they at weight, pounds are they, kilos are they, everybody at, everyone at, they all at, how big are they, how big are they now, how big is he, how big is she, what are they at, whats he at, whats she at"},
	{"growth", 5, "growth wise, gain this week, gained this week, gain last week, gain since, grown since, they gain, gain a week, growing slower, growing faster, slow grower, slowest grower, best grower, worst grower"},
	{"butcher_date", 4, "when do they go, when does he go, when does she go, take them in, taking them in, haul them in, bring them in, weeks to go, days to go, months to go, will they be big enough, be big enough, can clover go, can they go, can he go, can she go, big enough to go, go to slaughter, they done, they finished"},
	{"ration_check", 5, "mix fit, feed fit, fit them, strong enough, change the feed, cut the soy, cut back the soy, cut back on soy, cut the protein, less soy, more soy, more protein, less protein, my ration, my mix, the recipe, feed mix, mix for their size, weak for them, right for their size, rich enough, too rich"},
	{"cost", 5, "total spent, into them for, into these pigs for, my total, money so far, cheaper than, than the store, in these pigs, tied up in, have we spent, have i spent, paid out, out of pocket, what am i in for"},
	{"worming", 5.5, "worm before butcher, worm before slaughter, latest day to worm, last day to worm, supposed to worm, should i worm, do i worm, need wormed, to worm before"},
	{"withdrawal", 5.5, "not allowed for slaughter, not allowed to slaughter, allowed for slaughter, clear for butcher, clear for slaughter, with the wormer, after the wormer, on a withdrawal, on withdrawal, clear to go, clear yet, all clear"},
	{"today", 5, "anything to be done, on for today, todays chores, today's chores, todays jobs, anything urgent, how are things, how's everything, hows everything, plan for the weekend, plan for sat, plan for sun, plan for today, plan for the day, plan tomorrow, plan saturday, plan for the week, plan for saturday, plan for tomorrow, in store, things going, everything ok, everything all right, everything okay, on deck"},
	{"feed_need", 5, "feed to finish, to finish them, to finish the pigs, feed to finish them, go through until, go through till, need to finish them"},
	{"target", 5, "we going for, are we going for, i going for, shooting for, aiming at, goal weight, end weight set, weight are we going for"},
	{"sizes", 5.5, "a bag weighs, a bucket weighs, a sack weighs, a scoop weighs, a batch weighs, pounds to a bucket, pounds to a bag, pounds in a bucket, pounds in a bag, kilos in a bucket, kilos in a sack, to a bucket, to a bag"},
	{"why", 5, "why's that, whys that, based on what, what's that based on, whats that based on"},
	{"heat", 4.5, "heat dangerous, this heat, in the heat, heat today, with the heat"},
	{"yield", 4.5, "expected hanging weight, hanging weight expected, hang at, they hang, would hang, will hang"},
	{"plan", 5.5, "take to raise, does it take to raise, what does it take, what all do i need, what all would i need"},
	{"water_left", 7, "put water, add water, fill water, fill the water, fill the barrel, fill the barrels, fill the drum, fill the tank, fill the tub, top up water, top up the water, haul water, bring water, put more water, give water"},
	{"butcher_date", 4, "big enough yet, fat enough yet, heavy enough yet, how far off, how far away, anywhere near, far from done, from being done"},
	{"weight", 4.5, "pigs running, they running, you have them at, you got them at, them down at, would they be today, they be today, putting them at, tip the scale, tip the scales, would you put them at"},
	{"growth", 4.5, "putting weight on, put weight on, putting on weight, slowpoke, the runt, falling behind, lagging behind, lagging"},
	{"ration_check", 5, "feeding them right, feeding right, feed them right, too weak, too strong, too lean, still right, still the right"},
	{"butcher_date", 5, "get rid of them, get rid of these, goes first, first to go"},
	{"cost", 7, "i got in them, have in them, got in them, got into them, have into them, i put into them, tied up in them"},
	{"cost", 5, "am i in for, are we in for, am i out, into it for"},
	{"today", 5, "my attention, needs attention, need attention, caught up, anything for, anything on for"},
	{"withdrawal", 6, "legal to, legal yet, are they legal, be legal"},
	{"target", 5.5, "finishing them at, finish them at, taking them up to, taking them to, are we feeding them, am i feeding them to, feeding them to, feed them to, finishing at, take them up to"},
	{"sizes", 6.5, "capacity of, has one bag, has one sack, has a bag, has a sack, is in one bag, is one bag, is one sack, in one bag, in one sack"},
	{"why", 5, "base that, base this, you base, says who, you say this, how you know"},
	{"feed_left", 5, "till the feed's gone, till the feed is gone, until the feed's gone, until the feed is gone, feed's gone, feed is gone, hopper hold out, feeder hold out, hoppers hold out, feeders hold out"},
	{"water_left", 5, "barrel hold out, barrels hold out, tank hold out, tanks hold out"},
	{"feed_left", 7, "put feed, put feeds, add feed, put food, fill feed, top up the feed, put more feed, bring feed, give feed"},
	{"butcher_date", 6, "do to the date, does to the date, do to our date, do to the day, change the date, move the date, shift the date, affect the date, mean for the date, push the date, what date then, to book, i book, we book, book it, book them, book them in, book in, make the appointment, ring the butcher, call the butcher, call the processor, book a slot, get a slot, book a date, should book, must book"},
	{"butcher_date", 3.4, "fat enough yet, there yet, close yet, nearly there, nearly ready, almost there, almost ready, about ready, how close, near done, nearly done, close to done, close to ready, finishes first, finish first, ready first, done first, go first"},
	{"move", 5, "transfer, transfers, transferred, be transferred, to transfer, transfer again, next transfer"},
	{"today", 6, "expected of me, wanted of me, needed of me, asked of me, want from me, need from me, want me to do, need me to do, awaits me, waits for me, i still gotta, left for tonight, left for today, left to do tonight, left out there, did i miss, did i forget, i forget, forgot today, am i missing, be made on, stuff to do, things to do, something to do, done out there"},
	{"history", 5, "have i wormed, have i moved, have i filled, have i weighed, have i treated, have we wormed, have we moved, have we filled, have we weighed, did i already, did we already"},
	{"history", 6, "total feed so far, total feed, feed used so far, feed used, fed so far, water have i put in, water did i put in, water so far, water have we put in, water have they drunk, have they drunk, fed them so far, did i feed them, have i fed, have they eaten, gone through so far"},
	{"history", 5, "last worming, last move, last refill, last weighing, last weigh in, last treatment, last fill, the last time, last worm"},
	{"history", 3.4, "history, what happened, what did we do, last wormed, last weighed, last filled, last fill, when did, last time, have i recorded, records, log, recorded, past, when was, journal, last moved, last entries, did i fill, did i worm, did i weigh, weighed last, wormed last, show me the log, entries, last entry, last refill, list the weighings, previous weights, did i log, last watered, the last, last few, list of weights, when last, letzte, did i record, past weights, noted, notes, did i note, did i buy, did i move, did i last, weighings, did i put"},
	{"history", 1.4, "what did i, did we, did i, did they arrive, did i get, did i say, did i tell, have we, have i, did it"},
	{"target", 3.2, "target, goal, aiming for, target weight, our target, finish weight, zielgewicht, target set"},
	{"why", 4, "why, how come, how do you know, explain, reason, what makes you say, based on what, how did you get, why so, warum, where does that come from, how so, show your work, how did you work that out, explain that, how was that calculated, how do you figure, how do you get that, what is that based on, reasoning, says who, on what basis, why that, how sure are you, are you sure"},
	{"sizes", 6, "how many pigs do, how many pigs have, how many pigs are, how many hogs do, how many pigs left, how many head do, how many animals do, how many animals are, how many do we have, how many do i have, pig count, number of pigs, how many pigs in"},
	{"sizes", 5, "fit in the hopper, fit in the feeder, fit in the barrel, fits in the hopper, fit in, fits in, how many nipples, how big a, how big of a, how many feeder holes, how many holes, size feeder, size pen, size barrel"},
	{"sizes", 3.4, "what's a batch, whats a batch, what is a batch, what's a bag, what is a bag, bag size, size of a bag, how big is a bag, how much is in a bag, how much is in a bucket, in a batch, in a bag, in a bucket, is a bag, is a bucket, is a batch, is a scoop, feeder hold, hopper hold, barrel hold, capacity, sizes, how big is the, hold, bucket hold, size is, does the feeder hold, feeder size, a bag weigh, a bucket weigh, does a bag, does a bucket, does a batch, does a scoop, my batch, tank hold, hoppers hold, barrels hold, in a scoop, dimensions, wallow size, pen size, sizes do you have, how big are, size, how much does the big, fits in, fit in, area of, square feet"},
}

func addTopics(l *lexicon) {
	for _, t := range topicWords {
		for _, w := range split(t.words) {
			l.topics[w] = append(l.topics[w], topicVote{t.topic, t.weight})
			first := w
			for i := range len(w) {
				if w[i] == ' ' {
					first = w[:i]
					break
				}
			}
			l.longest[first] = max(l.longest[first], 1)
		}
	}
	// Nouns that by themselves are a question.
	for _, w := range split(topicNouns) {
		l.meaning(w).sense.add(sTopic)
	}
}

// topicNouns are short ways to ask without a question's words.
const topicNouns = `water ok til, water ok till, water ok until, enough water till, enough water til, enough water until, enough feed till, enough feed til, enough feed until, feed ok til, feed ok till, feed ok until, batches needed, bags needed, sacks needed, total feed so far, total feed, feed so far, feed used so far, feed used, water till when, water til when, water until when, feed till when, feed til when, feed until when, feed status, feed ok, total spent, money so far, weeks to go, days to go, months to go, expected hanging weight, expected hanging, todays chores, today's chores, todays jobs, anything urgent, how are things, everything ok, based on what, why's that, whys that, my total, total so far, latest day to worm, last day to worm, check my ration, check the ration, check my mix, check the mix, check the feed, water supply, feed to, feed until, feed till, how far, butcher date, kill date, feed left, feed need, weights, growth, gain, ration check, cost, costs, cost so far, worming due, next worming,
	next move, yield, history, withdrawal, withdrawals, sizes, plan, log, records, todo, to do, status, days to, days till, days until, eta, cost per lb, cost per pound,
	feed level, water level, water left, heat risk, due, agenda, growth rate, hanging weight estimate, days left, days of feed, days of feed left, feed remaining, weights now, weights today,
	current weights, withdrawal status, withdrawal clear, feed status, water status, butcher countdown, time to target, to do list, upcoming, overview, summary, time till butcher, weight now, est weight, what's due, whats due, list chores, expenses, meat yield, heat index, thi, move due, worming date, wallow status, feed needed, feed to buy, total cost, spending, target date, finish date, average weight, avg weight, weight of, tell me, show me, last weights, days of water, feed report, report, forecast weight, current weight, daily gain, adg, rate of gain, expected weight, expected yield, average daily gain, countdown, feed check, mix check, ration ok, next chores, reason, explain, cost report`
