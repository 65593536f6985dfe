package reading

import "strings"

// What a heading is: a deed, a topic, a product, or a word for a plan, a question or
// a note, with or without a day.

// headKind is what a heading lends to the lines below it.
type headKind uint8

const (
	headNone headKind = iota
	headPlan
	headQuestion
	headNote
	headRemind
	headSpend
	headRecipe
	headSold
	headBooked
	headHung
	headDied
	headDrug
	headPour
	headFill
	headMove
	headSick
	headWater
	headFeeders
	headBarrels
	headPens
	headDay
)

// heading is a heading with the words it lends and the day it names.
type heading struct {
	kind           headKind
	verb           string
	dayFrom, dayTo int // tokens
	line           listLine
}

// headWords are the words of a heading, by what it is, with the words that its lines
// are read with.
var headWords = func() map[string]heading {
	m := map[string]heading{}
	lend := func(k headKind, verb, list string) {
		for _, w := range split(list) {
			m[w] = heading{kind: k, verb: verb}
		}
	}
	lend(headPlan, "plan", "want, wants, i want, we want, wish list, wishlist, to do, todo, to-do, todo list, to do list, todos, plan, plans, the plan, shopping list, to buy, still to do, jobs to do, left to do, not yet done, jobs for, tasks for, list for, chores for")
	lend(headPlan, "", "shopping, need, needs, jobs, tasks, next, need to, planned, ideas, goals, want to, upcoming, coming up, buy list, to get, before, by")
	lend(headQuestion, "", "ask, asks, asking, question, questions, q, qs, query, queries, quick question, quick questions, wondering, want to know, need to know, what i need to know, two questions, few questions, a few questions, some questions")
	lend(headNote, "note:", "note, notes, memo, memos, for the record, keep in mind, noted, observations, remarks")
	lend(headRemind, "remind me", "remind, reminder, reminders, remind me, remind me to, remind us, remember, remember to, don't forget, dont forget, don't let me forget, dont let me forget, set reminders, new reminders")
	lend(headSpend, "spent", "spent, spend, spending, spendings, costs, cost, expenses, expense, paid, bills, money spent, money out, money gone, money went, out of pocket, outlay, paid out, receipts, store run, feed store")
	lend(headSold, "sold", "sold, sale, sales, sold off, pigs sold")
	lend(headBooked, "booked", "booked, booking, butcher booked, butcher date, booked butcher, butcher booking, butcher appointment, slaughter date, slaughter booked, booked in, locker date, appointment, processor booked")
	lend(headHung, "hung", "hung, hanging, hanging weight, hanging weights, hung weight, hung weights, carcass weights, carcass, carcasses, on the rail, rail weights, dressed weights, hanging wt, hanging wts, hot weights, hot carcass weights, carcass weight, carcase weights, hook weight, hook weights, hook wts, on the hook, deadweights, dead weights, weights from the butcher, weights from the processor, weights from the locker, weights from the abattoir, weights off the slip, butcher weights, butchers weights, butcher's weights, processor weights, locker weights, weights off the butcher slip, weights off the butcher's slip")
	lend(headHung, "butchered", "butchered, slaughtered, killed, processed, butcher day, kill day, slaughter day, slaughter, went to butcher")
	lend(headDied, "died", "died, dead, deaths, losses, lost")
	lend(headDrug, "wormed", "wormed, dewormed, worming, worm, deworming, wormer given, wormed today")
	lend(headDrug, "gave", "gave, treated, treatments, treatment, shots, shot, injections, injected, medicated, meds, meds given, medicine")
	lend(headPour, "mixed", "mixed, batches mixed, batches made")
	lend(headPour, "poured", "poured, fed, poured in, put in, dumped, dumped in, fed out, feed in, feed poured, feed put in, in the feeder, into the feeder, feed given, topped feeder")
	lend(headFill, "filled", "filled, topped, topped off, topped up, filled up, watered, refilled")
	lend(headMove, "moved", "moved, moves, move, moved pens, pen moves, shifted, rotated")
	lend(headSick, "sick", "sick, ill, unwell, poorly, sick list, health, sick pigs, sickbay, health check, ailing")
	lend(headWater, "water", "water, the water, waters, watering")
	lend(headBarrels, "barrel", "barrels, drums, tanks, water barrels, water tanks, waterers, drinkers, tubs, totes, barrel setup, water setup")
	lend(headFeeders, "feeder", "feeders, hoppers, troughs")
	lend(headPens, "pen", "pens, paddocks, pastures, fields, lots")
	return m
}()

// headSmall are words that a heading may have besides.
var headSmall = setOfWords(split("the, a, my, our, for, on, of, list, and, this, these, from, at, in, new, so far, round, all, just, ok, stuff, things, am, pm, week, pigs, hogs, day, last, next"))

// recipeSmall are the words of a heading over what a batch holds.
var recipeSmall = setOfWords(split("new, per, one, a, the, each, now, our, my, is, feed, batch, that's, thats, this, from, on, for, goes, in, what, are, today, current, makes, that, go, every, into, put, we, i, gets, recipe, mix, ration, blend, of, mixture, it, changed, to"))

var recipeWords = setOfWords(split("batch, mixer, recipe, mix, ration, blend, mixture"))

// headingOf says what the line is as a heading.
func (r *reader) headingOf(l listLine) heading {
	none := heading{line: l}
	if l.empty() || l.j-l.i > longestHead {
		return none
	}
	var core []string
	h := heading{dayFrom: -1, line: l}
	recipe, onlyRecipe := false, true
	for k := l.i; k < l.j; k++ {
		t := &token{kind: r.toks[k].kind, s: r.headSpelling(k)}
		day := t.kind == tokISO || t.kind == tokSlash || r.dayWord(k) || r.isDay(t.s) || t.kind == tokNum && (k > l.i && r.dayWord(k-1) || k+1 < l.j && r.dayWord(k+1))
		recipe = recipe || recipeWords[t.s]
		onlyRecipe = onlyRecipe && (recipeSmall[t.s] || t.kind == tokMark)
		switch {
		case day && !(t.kind == tokWord && len(core) > 0 && headWords[strings.Join(core, " ")+" "+t.s].kind != headNone):
			if h.dayFrom < 0 {
				h.dayFrom = k
			}
			h.dayTo = k + 1
		case t.kind == tokWord:
			core = append(core, t.s)
		case t.kind == tokMark && (t.s == "-" || t.s == "," || t.s == "'" || t.s == "="):
		default:
			return none
		}
	}
	if recipe && onlyRecipe {
		h.kind, h.verb = headRecipe, r.text[r.toks[l.i].from:r.toks[l.j-1].to]
		return h
	}
	lo, hi := 0, len(core)
	for ; lo < hi; lo++ { // the longest run of words that is one
		for to := hi; to > lo; to-- {
			w := strings.Join(core[lo:to], " ")
			found, ok := headWords[w]
			if !ok {
				if m := r.lex.of[w]; m != nil && m.drug != "" {
					found, ok = heading{kind: headDrug, verb: "gave " + w + " to"}, true
				}
			}
			if !ok || !smallBeside(found, core[:lo]) || !smallBeside(found, core[to:]) {
				continue
			}
			h.kind, h.verb = found.kind, found.verb
			return h
		}
	}
	if len(core) == 1 && r.lex.of[core[0]] != nil && r.lex.of[core[0]].sense.has(sSick) {
		h.kind, h.verb = headSick, core[0]
		return h
	}
	if planHead(core) {
		h.kind, h.verb = headPlan, "plan"
		return h
	}
	if h.dayFrom >= 0 && smallWords(core) {
		h.kind = headDay
		if r.toks[l.i].s == "for" {
			h.kind = headPlan // "for saturday"
		}
		return h
	}
	return none
}

// planHead says that a heading is over what is yet to be done: "to do before it gets
// cold", "still need to do", "jobs for".
func planHead(core []string) bool {
	said := " " + strings.Join(core, " ") + " "
	return saysAny(said, toBeDone) && !saysAny(said, wasDone) || len(core) > 1 && (core[0] == "jobs" || core[0] == "tasks" || core[0] == "list") && core[1] == "for"
}

var (
	toBeDone = phrasesOf("to do, todo, to-do, need to, needs doing, need doing, left to do, still to, list for the, jobs for, tasks for, chores for, before it gets, before winter, before the frost, before the freeze, before we go, before we leave, have to, got to, gotta")
	wasDone  = phrasesOf("did, done, finished, got done, i've done, what's, whats, to do list done, nothing, what")
)

// hungSmall are what a heading over carcasses may have besides: where they were weighed
// and what tells it.
var hungSmall = setOfWords(split("off, butcher, butchers, butcher's, slip, sheet, ticket, receipt, paper, locker, processor, processors, processor's, abattoir, slaughterhouse, back, came, got, per, as, with, called"))

func smallBeside(h heading, ws []string) bool {
	for _, w := range ws {
		if !headSmall[w] && (h.kind != headHung || !hungSmall[w]) {
			return false
		}
	}
	return true
}

func smallWords(ws []string) bool {
	for _, w := range ws {
		if !headSmall[w] {
			return false
		}
	}
	return true
}

// headSpelling is the word at token k, or the one that it is a slip for.
func (r *reader) headSpelling(k int) string {
	w := r.toks[k].s
	if r.toks[k].kind != tokWord || r.lex.of[w] != nil || headWords[w].kind != headNone || headSmall[w] || recipeSmall[w] || recipeWords[w] {
		return w
	}
	if _, n := r.listName(k, k+1); n > 0 {
		return w
	}
	if right, ok := r.correct(w); ok {
		return right
	}
	return w
}

// longestHead is how many words a heading may have.
const longestHead = 8
