package reading

import "strings"

// Whether a stretch of a text asks is settled once, before anything of it is taken
// for a fact: by the order of its words, by a word that asks, by its mark, or by the
// words it ends with.

// askedClauses finds the stretches that ask and parts them from what is told
// before them.
func (r *reader) askedClauses() {
	r.asking = r.asking[:0]
	tries := headTries
	for from := 0; from < len(r.items); {
		to := r.sentenceEnd(from)
		if r.hoursTold(from, to) != fIdle { // "can you switch chores to sundays"
			for k := from; k < to; k++ {
				r.items[k].quest = false
			}
			from = to
			continue
		}
		p := r.asksWithin(from, to)
		if n := len(r.asking); from > 0 && (n == 0 || r.asking[n-1].j < from) {
			if before := r.sentenceStart(from - 1); r.forecastIn(before, from) && r.heatAsked(before, to) {
				from, p = before, before // "saturday 34 degrees. dangerous?"
			}
		}
		if p < 0 {
			if n := r.asksFirst(from, to, &tries); n > from {
				r.items[n].gap = gapStop
				p, to = from, n
			}
		}
		if p >= 0 {
			if !r.part && !r.items[to-1].quest && r.items[to-1].to-r.items[from].from <= headBytes {
				if n := r.tellsBehind(p, to, &tries); n > p {
					r.items[n].gap = gapStop
					to = n
				}
			}
			for k := from; k < p; k++ {
				r.items[k].quest = false
			}
			for k := p; k < to; k++ {
				r.items[k].quest = true
			}
			if p > from {
				r.items[p].gap = gapStop
			}
			r.asking = append(r.asking, span{fAsk, p, to})
		}
		from = to
	}
}

// asksFirst is where what a sentence tells begins behind a question that its last word
// makes one: "505 clear yet, also 503 hung 201"; 0 if it has none.
func (r *reader) asksFirst(from, to int, tries *int) int {
	if r.part || r.items[to-1].quest || r.items[to-1].to-r.items[from].from > headBytes {
		return 0
	}
	for n := from + 2; n < to && *tries > 0; n++ {
		topic := func() bool { // "growth of otis, also found clover dead"
			return r.find(span{fAsk, from, n}, sTopic) >= 0 && !r.items[from].isAny(setOf(sTook, sArrive, sGave)) && r.items[n].gap >= gapComma && r.amountless(from, n) && r.asksAlone(from, n)
		}
		if r.items[n].gap >= gapAnd && (r.asksAtEnd(from, n) || topic()) {
			*tries--
			if r.tellsAlone(n, to) {
				return n
			}
		}
	}
	return 0
}

// forceAsked holds what asks to be a question, whatever else its words could tell.
func (r *reader) forceAsked() {
	for _, s := range r.asking {
		if n := r.reminderAhead(s.i); n >= 0 || r.items[s.i].is(sRemind) {
			continue
		}
		f := fAsk
		for k := s.i; k < s.j; k++ {
			if it := &r.items[k]; it.is(sHelp) && helpHead[firstWord(it.s)] && strings.Contains(it.s, " ") {
				f = fHelp
			}
		}
		r.forceRange(s.i, s.j, f)
	}
}

// asksWithin is the item from which the sentence asks, -1 if none does so beyond
// doubt.
func (r *reader) asksWithin(from, to int) int {
	if to-from > longestAsked {
		return -1
	}
	if n := r.supposedHead(from, to); n >= 0 {
		return n
	}
	if r.heatAsked(from, to) || r.topicHeads(from, to) {
		return from
	}
	for n := from; n < to; n++ {
		if n > from && r.items[n].gap < gapAnd && !r.onlyOpening(from, n) && !r.heatAhead(from, n, to) && !r.runsOn(n, to) {
			continue
		}
		if !r.asksAt(n, to) {
			continue
		}
		if n > from && r.items[n].gap >= gapAnd && r.remindsFrom(from, n) { // "remind me friday to call the locker and when are they ready"
			return n
		}
		if n > from && (r.onlyTopic(from, n) || !r.tells(from, n) && !r.alarming(from, n) || r.items[from].isAny(setOf(sWhatIf, sIf))) {
			if n > from && r.namesIn(span{fAsk, from, n}) && !r.onlyTopic(from, n) && r.items[n].gap >= gapComma && !r.has(span{fAsk, n, to}, sPronoun) && !r.items[from].isAny(setOf(sWhatIf, sIf, sTopic, sAsk, sAskSure)) && !r.quoteHas(span{fAsk, n, to}, "that", "this", "is that", "is this") {
				return n // "munti is such a glutton, do you know if the feed will hold out"
			}
			return from // "the big hopper, is there anything left"
		}
		return n
	}
	if r.asksAtEnd(from, to) {
		return from
	}
	return -1
}

// remindsFrom says that the words from item i to j ask to be reminded of something.
func (r *reader) remindsFrom(i, j int) bool {
	for k := i; k < j && k < i+3; k++ {
		if it := &r.items[k]; it.is(sRemind) && it.pig < 0 {
			return j > k+2
		}
	}
	return false
}

// longestAsked is how many items a sentence has at most that is looked through for
// a question. Common practice, no source.
const longestAsked = 40

// onlyOpening says that nothing but small words of address stands between.
func (r *reader) onlyOpening(from, n int) bool {
	for k := from; k < n; k++ {
		if it := &r.items[k]; it.pig >= 0 || it.kind != itWord || !it.isAny(setOf(sThanks, sYes)) && !openers[it.s] {
			return false
		}
	}
	return true
}

var openers = setOfWords(split("roughly, about, so, ok, okay, and, but, hey, um, uh, hmm, also, oh, well, bot, now, then, please, pls, plz, kindly, dear, friend, sir, madam, quick, question, ask, just, say, lol, honestly, sorry, yo, bruh, bro, dude, man, anyway, ugh, uhh, umm, hm, hmmm, argh, aargh, gah, omg, wait, shoot, dang, damn, darn, crap, heck, gosh, jeez, geez, oof, whoa, wow, oops, whoops, woops, haha, guys, folks, y'all, yall, mom, dad, mum, hon, honey, babe, kids, team"))

// onlyTopic says that what stands before a question but names what it is about: a
// thing, a pig, a weight to reach, a day to come. What states an amount of a thing is
// a fact of its own.
func (r *reader) onlyTopic(from, n int) bool {
	named, amounts := 0, 0
	future := false
	for k := from; k < n; k++ {
		switch it := &r.items[k]; {
		case it.pig >= 0, it.feeder >= 0, it.barrel >= 0, it.pen >= 0, it.group >= 0, it.isAny(setOf(sFeeder, sBarrel, sPen, sRecipe, sWallow, sPigs, sFeed, sWater)):
			named++
		case it.qty(mass), it.kind == itNum && !it.soft, it.qty(temperature):
			amounts++
		case it.kind == itDay && it.day.form == dayOffset && it.day.a > 0:
			future = true
		case it.kind == itWord && (it.is(sFiller) || it.is(sPronoun) || openers[it.s]):
		case future && it.kind == itWord:
		default:
			return false
		}
	}
	return named+amounts > 0 && (named == 0 || amounts == 0 || future) && amounts <= 1
}

// alarming says that a stretch may tell of an emergency, which stands by itself.
func (r *reader) alarming(from, to int) bool {
	for k := from; k < to; k++ {
		if it := &r.items[k]; it.pig < 0 && it.isAny(setOf(sOut, sDown, sNoWater, sNoFeed, sEmpty, sSick, sDied)) && !it.is(sFiller) {
			return true
		}
	}
	return false
}

// asksAt says that a question begins at item n.
func (r *reader) asksAt(n, to int) bool {
	it := &r.items[n]
	if it.pig >= 0 || it.kind == itThing || it.kind == itDay || it.is(sRemind) {
		return false
	}
	i, end := r.tokenRange(span{fAsk, n, to})
	w := func(k int) string {
		if i+k < end && (r.toks[i+k].kind == tokWord || r.toks[i+k].kind == tokNum) {
			return r.toks[i+k].s
		}
		return ""
	}
	quest := it.quest
	at := 0
	if leadsAsked[w(0)] && (askWords[w(1)] && w(1) != "when" || w(0) == "until" && w(1) == "when") {
		at = 1 // "for how many days", "until when"
	}
	switch first := w(at); {
	case first == "what" && (w(at+1) == "a" || w(at+1) == "an"), first == "how" && !quest && !howWords[w(at+1)]:
		return false
	case first == "when" && at == 0 && w(1) == "to":
		return true
	case askWords[first] && at == 0 && !quest && (first == "when" || first == "where" || first == "which" || first == "while"):
		return helpVerbs[w(1)] && !quest && r.askedSubject(n, i+2) // "when the price goes down I take more" asks nothing
	case (first == "who" || first == "who's" || first == "whos") && !quest && !r.namesThing(span{fAsk, n, to}) && r.find(span{fAsk, n, to}, sPigs) < 0 && r.find(span{fAsk, n, to}, sFeeder) < 0 && r.find(span{fAsk, n, to}, sBarrel) < 0 && r.find(span{fAsk, n, to}, sWallow) < 0 && !r.compares(n, to):
		return false
	case askWords[first]:
		return !r.relative(n) && (quest || n == 0 || it.gap >= gapStop || first == "who" && r.onlyOpening(r.sentenceStart(n), n) || helpVerbs[w(at+1)] || askPhrase[first+" "+w(at+1)])
	case (first == "can" || first == "could" || first == "would" || first == "will") && (w(1) == "you" || w(1) == "u" || w(1) == "ya"):
		for k := 2; k <= politeReach; k++ {
			if tellVerbs[w(k)] {
				return true
			}
		}
		return false
	case (first == "must" || first == "need" || first == "might" || first == "shall") && (w(1) == "i" || w(1) == "we") && w(2) != "say":
		return true
	case first == "which" && (w(1) == "one" || w(1) == "ones" || w(1) == "pig" || w(1) == "pigs" || w(1) == "of") && r.compares(n, to):
		return true
	case first == "by" && w(1) == "when" && helpVerbs[w(2)]:
		return true
	case (first == "have" || first == "has") && !r.deedAsked(w, at):
		plain := !r.measured(n) || lastWord(r.items[to-1].s) == "yet"
		return plainSubjects[w(1)] && (quest || w(2) != "" && w(1) != "a" && plain) || first == "has" && r.askedSubject(n, i+1) && (quest || plain)
	case r.deedAsked(w, at):
		return true
	case first == "did" || first == "do" || first == "does":
		return plainSubjects[w(1)] && (quest || w(1) != "it") || quest && r.askedSubject(n, i+1) || first == "did" && r.asksDeed(i)
	case first == "will" && it.s != "will" && !quest, first == "might" && !quest, first == "must" && !quest:
		return false
	case helpVerbs[first] && n > 0 && it.gap < gapStop && !quest && !r.onlyOpening(r.sentenceStart(n), n): // "the girls, fern and juno, are both at 103"
		return plainSubjects[w(1)] && !r.measured(n)
	case helpVerbs[first]:
		return r.askedSubject(n, i+1) || r.askedValue(n, to)
	case first == "guess" || first == "estimate" || first == "predict":
		return r.namesThing(span{fAsk, n, to}) && r.has(span{fAsk, n, to}, sWeigh) && !r.measured(n)
	case first == "anything" || first == "anybody" || first == "anyone" || first == "any":
		return !r.denies(n, to) && (quest || first != "any" && r.amountless(n, r.clauseEnd(n)) && saysAny(r.said(span{fAsk, n, to}), anyAsked) || first == "anything" && r.amountless(n, to) && r.items[to-1].kind == itDay)
	}
	return saysAny(r.openingWordsAt(n, to), askOpenings) && (n == 0 || it.gap >= gapComma || quest)
}

// asksAtEnd says that a sentence asks by what it ends with: "hazel to 265 when",
// "505 clear yet", "good for another week you reckon".
func (r *reader) asksAtEnd(from, to int) bool {
	before, end := r.lastWords(from, to)
	if before == "or" && (end == "not" || end == "nah" || end == "no") {
		return to-from >= 3 && r.amountless(from, to) && (r.namesThing(span{fAsk, from, to}) || r.namesStore(from, to) || r.has(span{fAsk, from, to}, sPigs) || r.has(span{fAsk, from, to}, sPronoun)) && r.deedDone(from, to) < 0
	}
	if to-from < 2 || r.denies(from, to) || r.items[from].isAny(setOf(sRemind, sNote, sSnooze)) {
		return false
	}
	last := &r.items[to-1]
	if r.whichOfTwo(from, to) {
		return true
	}
	switch w := lastWord(last.s); {
	case (w == "when" || last.s == "how long" || last.s == "or what") && last.pig < 0:
		for k := from; k < to-1; k++ {
			if it := &r.items[k]; it.isAny(setOf(sSnooze, sFill, sWorm, sMove, sRemind, sTell)) && it.pig < 0 && !last.quest {
				return false
			}
		}
		return true
	case w == "yet" && last.pig < 0:
		named, state := false, false
		for k := from; k < to; k++ {
			it := &r.items[k]
			if it.kind == itDim || it.kind == itFrac {
				return false
			}
			if it.number() && it.pig < 0 && !it.soft { // "415 at 270 yet"
				if k == from || r.finishKg(k) == 0 || !reachWords[lastWord(r.items[k-1].s)] || k != to-2 {
					return false
				}
				state = true
			}
			named = named || it.pig >= 0 || it.kind == itThing || it.isAny(setOf(sPigs, sPronoun, sBarrel, sFeeder, sWallow, sAll))
			for _, one := range strings.Fields(it.s) {
				state = state || yetStates[one]
			}
		}
		return named && state
	}
	return saysAny(" "+before+" "+end+" ", thinkTails) && !r.measured(from)
}

// askedValue says that behind the verb at item n a day or an amount is asked about:
// "is monday going to be too hot", "is 23 lb of soy still right".
func (r *reader) askedValue(n, to int) bool {
	if n+2 >= to || r.items[n+1].gap != gapNone {
		return false
	}
	switch it := &r.items[n+1]; {
	case it.kind == itDay:
		return !r.measured(n)
	case it.number() && !it.soft && it.pig < 0:
		return saysAny(r.said(span{fAsk, n + 2, to}), valueJudged)
	}
	return false
}

// topicHeads says that a sentence begins with the noun of a topic and goes on with
// until when: "total feed from here to the butcher".
func (r *reader) topicHeads(from, to int) bool {
	it := &r.items[from]
	if to-from < 2 || it.pig >= 0 || !it.is(sTopic) || it.isAny(setOf(sTell, sAsk, sAskSure, sRemind)) || tellVerbs[firstWord(it.s)] || !r.amountless(from, to) || r.deedDone(from, to) >= 0 {
		return false
	}
	switch firstWord(r.items[from+1].s) {
	case "until", "till", "til", "to", "from", "through", "by", "for", "before":
		return !strings.Contains(it.s, "plan") && !r.tells(from, to)
	}
	return false
}

// lastWords are the last two words before item to, empty where there are fewer.
func (r *reader) lastWords(from, to int) (before, last string) {
	i, end := r.tokenRange(span{fAsk, from, to})
	for k := end - 1; k >= i; k-- {
		if r.toks[k].kind != tokWord {
			continue
		}
		if last != "" {
			return r.toks[k].s, last
		}
		last = r.toks[k].s
	}
	return "", last
}

// openingWordsAt is the first words from item n on, blanks around each.
func (r *reader) openingWordsAt(n, to int) string {
	return r.said(span{fAsk, n, min(to, n+openingReach)})
}

const openingReach = 7

// politeReach is how far behind "would you" the verb of telling stands: "would you be
// so good as to tell me".
const politeReach = 7

// denies says that a stretch holds a word of denial.
func (r *reader) denies(from, to int) bool {
	for k := from; k < to; k++ {
		if it := &r.items[k]; it.pig < 0 && (it.is(sNot) || it.s == "no" || it.s == "nothing" || it.s == "none") {
			return true
		}
	}
	return false
}

// askedSubject says that token i can be the subject behind the verb that begins a
// question at item n.
func (r *reader) askedSubject(n, i int) bool {
	if i >= len(r.toks) {
		return false
	}
	if t := &r.toks[i]; t.kind == tokWord && (plainSubjects[t.s] || askedSubjects[t.s]) {
		return true
	}
	for k := n; k < len(r.items) && k <= n+2 && (k == n || r.items[k].gap == gapNone); k++ {
		if it := &r.items[k]; it.from == r.toks[i].from && (it.pig >= 0 || it.kind == itThing || it.group >= 0 || it.kind == itWord && it.isAny(setOf(sFeed, sWater, sFeeder, sBarrel, sWallow))) {
			return true
		}
	}
	return false
}

var (
	comparing     = setOfWords(split("quicker, quickest, faster, fastest, slower, slowest, heavier, heaviest, lighter, lightest, bigger, biggest, smaller, smallest, fatter, fattest, better, best, worse, worst, closer, closest, first, ahead, behind, more, most, least, further, furthest, sooner, larger, largest"))
	reachWords    = setOfWords(split("at, to, hit, over, past, reach, reached, made, above, is, weigh"))
	helpHead      = setOfWords(split("how, what, can"))
	leadsAsked    = setOfWords(split("about, roughly, approximately, around, for, at, until, till, til, by, in, on, from, since, to, with, of"))
	askWords      = setOfWords(split("how, how's, hows, how'd, what, what's, whats, what'll, whatll, what'd, whatd, whut, wats, wut, when, when's, whens, when'll, where, where's, wheres, where'd, whered, who, who's, whos, who'd, who'll, whose, which, why, why's"))
	howWords      = setOfWords(split("much, many, long, far, heavy, big, fast, soon, old, is, are, do, does, did, will, would, can, could, should, often, well, hot, come, about, fat, large, deep, wide, high, tall, late, close, full, else, r, am, must, i, one, to, mcuh, mch"))
	helpVerbs     = setOfWords(split("is, are, am, was, were, do, does, did, will, would, can, could, should, shall, may, might, must, has, have, r, isn't, isnt, aren't, arent, wasn't"))
	plainSubjects = setOfWords(split("i, we, you, u, they, he, she, it, anyone, anybody, someone, somebody, everyone, everybody, ya"))
	askedSubjects = setOfWords(split("the, my, our, your, a, an, this, that, these, those, there, all, both, any, anything, everything, his, her, their, one, pigs, hogs, another, mine, ours, either, enough"))
	tellVerbs     = setOfWords(split("tell, say, show, explain, estimate, calculate, work, guess, advise, predict, instruct, teach, describe, remind, let"))
	askPhrase     = setOfWords(split("how much, how many, how long, how soon, how heavy, how big, how far, how often, how fast"))
	yetStates     = setOfWords(split("clear, ready, done, big, fat, finished, ok, due, over, empty, full, dry, out, safe, heavy, enough, time, cleared, good, low, hungry"))
	anyAsked      = phrasesOf("else, gotta, i gotta, i should, i need, i have, i must, to do, due, left, need, needs, left to, i forgot, we should, we need, be done, wrong, urgent, new, coming up, planned, up")
	valueJudged   = phrasesOf("too much, too little, too many, too few, enough, still right, right, ok, okay, normal, good, bad, safe, still ok, still good, too hot, too low, too high, about right, plenty, fine")
	thinkTails    = phrasesOf("you reckon, you think, you figure, you say, you guess, u think, u reckon")
	askOpenings   = phrasesOf(`says who, wonder if, wonder whether, wonder when, wonder how, wonder what, wondering if, wondering whether, wondering when, wondering how, wondering what, wondering which, want to know, wants to know, wanting to know, wanted to know, wanna know, like to know, need to know, curious if, curious how, curious when, curious what,
		pray advise, kindly advise, please advise, pray tell, pray inform, kindly inform me, please inform me, kindly tell me, please tell me, inform me when, inform me how, inform me what, inform me whether, inform me which, advise me when, advise me how, advise me whether, let me know how, let me know what, let me know whether,
		may i ask, may i inquire, may i enquire, might i ask, might i inquire, might i enquire, could i ask, i would ask, i'd ask, at a loss, no idea how to, dont know how to, don't know how to, not sure how to, unsure how to, no clue how to, show me how, teach me how, teach me to, explain how, explain to me how, instruct me,
		can't remember if, cant remember if, can't remember when, cant remember when, can't remember whether, cant remember whether, don't remember if, dont remember if, don't remember when, dont remember when, can't recall if, cant recall if, can't recall when, cant recall when, can't remember the last, cant remember the last, don't recall when, dont recall when, cannot remember when, cannot remember if, cannot recall when, cannot recall if, cannot recall whether, forget when, forgot when i, forget if i, forgot if i`)
)
