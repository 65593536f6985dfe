package reading

import "strings"

// What heads a list of things that are still to be done, so that nothing in it was.

// todoHead is the item behind a label that opens a list of things to do at the
// head of a text, "to do Sunday:", "this week: worm the pigs, order straw", 0 if none
// does.
func (r *reader) todoHead() int {
	n := 1
	for n < len(r.items) && n < 6 && !r.items[n-1].label {
		n++
	}
	if n >= len(r.items) || !r.items[n-1].label {
		return r.todoLine()
	}
	weak := saysAny(r.said(span{0, 0, n}), todoHeads) && !r.has(span{0, 0, n}, sNote) && !r.has(span{0, 0, n}, sRemind)
	for k := range n {
		it := &r.items[k]
		if it.number() && !it.soft {
			return 0
		}
		if it.is(sPlan) || strings.HasPrefix(it.s, "to do") || it.s == "todo" || it.kind == itDay && (it.day.form == dayOffset && it.day.a > 0 || it.day.mod > 0) {
			return n
		}
	}
	if weak && r.bareDeeds(n) || saysAny(r.said(span{0, 0, n}), buyHeads) {
		return n
	}
	return 0
}

// buyHeads head what is to be bought.
var buyHeads = phrasesOf("shopping list, list for the store, list for the feed store, to pick up, need to get, need to buy")

// todoLine is the item behind words without a colon that open such a list at the head of
// a text: "To do before it gets cold", and on the next lines what; 0 if none do.
func (r *reader) todoLine() int {
	n := 1
	for n < len(r.items) && n < longestTodo && r.items[n].gap < gapComma {
		n++
	}
	if n >= len(r.items) || n >= longestTodo || r.has(span{0, 0, n}, sRemind) || !saysFirst(r.said(span{0, 0, n}), todoLeads...) || r.items[n-1].quest || r.tellsPast(n) {
		return 0
	}
	if saysFirst(r.said(span{0, 0, n}), todoOrDone...) && !r.bareDeeds(n) {
		return 0
	}
	if r.items[n].gap >= gapStop && !strings.Contains(r.text[r.items[n-1].to:r.items[n].from], "\n") {
		return 0
	}
	return n
}

// longestTodo is how many words such a head has at most.
const longestTodo = 11

var todoLeads = split("to do, todo, things to do, things to get done, left to do, still to do, still left to do, stuff to do, stuff to get done, shopping list, list for, chores for, jobs for, jobs left, chores left, what's left, whats left, need to get, need to do, have to get, gotta get, gotta do")

// todoOrDone may lead what was done as well.
var todoOrDone = split("list for, chores for, jobs for, what's left, whats left")

// todoHeads may head what is to be done, or what was.
var todoHeads = phrasesOf(`this week, this weekend, week, weekend, jobs, job list, next up, next, chores left, left to do, left, still to do, still, remaining, list, to buy, shopping, for today, for tonight, for tomorrow, plan, plans, agenda,
	before winter, before it gets cold, before it gets real cold, before the cold, before the frost, before frost, before the freeze, before the butcher, before we leave,
	for sunday, for monday, for tuesday, for wednesday, for thursday, for friday, for saturday, for sun, for mon, for tue, for tues, for wed, for thu, for thurs, for fri, for sat, for the weekend, for this week`)

// bareDeeds says that what follows from item n on begins with a verb that tells what is
// to be done, and that no verb in it tells what was: "worm pigs sat, order straw".
func (r *reader) bareDeeds(n int) bool {
	if !bareVerbs[firstWord(r.items[n].s)] {
		return false
	}
	return !r.tellsPast(n)
}

// tellsPast says that a verb from item n on tells what was done.
func (r *reader) tellsPast(n int) bool {
	from, to := r.tokenRange(span{0, n, len(r.items)})
	for i := from; i < to; i++ {
		if t := &r.toks[i]; t.kind == tokWord && (pastTense(t.s) && t.s != "feed" && t.s != "need" && t.s != "shed" && t.s != "red" || t.s == "done" || t.s == "was" || t.s == "were" || t.s == "took" || t.s == "went") {
			return true
		}
	}
	return false
}

// bareVerbs are verbs of the chores in the form of an order, which no past shares.
var bareVerbs = setOfWords(split("worm, deworm, treat, fill, refill, top, move, shift, rotate, switch, weigh, tape, measure, order, fix, mend, repair, buy, get, pick, fetch, haul, call, phone, book, clean, scrub, check, mix, grind, mow, build, bring, take, sell, load, dose, hose, water, give, find, ask, haul, mark, tag, trim"))
