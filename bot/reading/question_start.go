package reading

import (
	"strings"
)

func (r *reader) isQuestion(k int) bool { return r.items[k].quest && r.questionStart(k) }

// questionStart says that a question begins at item k.
func (r *reader) questionStart(k int) bool {
	it := &r.items[k]
	clause := k == 0 || it.gap >= gapComma || r.fillersBefore(k) || it.gap == gapAnd && it.is(sAskSure)
	switch {
	case it.pig >= 0 || it.feeder >= 0 || it.barrel >= 0:
		return it.quest && clause && it.gap >= gapStop && !r.measured(k) || it.quest && k == 0 && !r.measured(k)
	case it.is(sWhatIf) && clause && (it.s == "what if" || it.s == "what would happen if" || it.s == "what happens if" || it.s == "what happens when" || it.quest && it.s != "with" || it.s == "how about if" || it.s == "suppose" || it.s == "say we" || it.s == "say i"):
		return true
	case firstWord(it.s) == "if" && clause && r.asksLater(k):
		return true
	case it.is(sAskSure) && clause && !r.relative(k) && !r.afterSubject(k):
		return true
	case it.is(sAskSure) && strings.Contains(it.s, " ") && !r.relative(k) && r.strongAsk(it.s):
		return true
	case it.s == "you" && clause && r.youThink(k):
		return true
	case it.is(sAsk) && clause && it.quest:
		return true
	case clause && (it.s == "is" || it.s == "are") && r.quoteHas(span{0, k, r.sentenceEnd(k)}, "safe", "poisonous", "toxic", "bad for", "good for"):
		return true
	case it.is(sAsk) && (k == 0 || it.gap >= gapStop || r.fillersBefore(k) && r.sentenceStart(k) < k && r.items[k-1].is(sNo)) && r.inverted(k):
		return true
	case it.is(sAsk) && it.gap == gapAnd && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.asksOfPigs(k):
		return true
	case it.quest && k == r.sentenceStart(k) && !r.measured(k):
		return true
	case it.s == "plan" && clause && k+1 < len(r.items) && (r.items[k+1].kind == itNum || r.items[k+1].s == "for"):
		return true
	case (clause || k == r.sentenceStart(k)+1 && (r.isI(k-1) || r.items[k-1].is(sPronoun))) && r.plansPigs(k):
		return true
	}
	return false
}

// youThink says that item k begins "you think it will ...", which asks where the weather
// or the feed is what is thought of: "you think its gonna be too hot tomorrow".
func (r *reader) youThink(k int) bool {
	if k+2 >= len(r.items) || r.items[k+1].gap != gapNone {
		return false
	}
	switch r.items[k+1].s {
	case "think", "reckon", "figure", "suppose":
		n := &r.items[k+2]
		return n.gap == gapNone && (n.is(sPronoun) || n.is(sPigs) || n.pig >= 0 || n.s == "the" || n.s == "it'll" || n.s == "we")
	}
	return false
}

// plansPigs says that item k begins a plan to keep so many pigs, which asks for what
// they will need: "planning on 4 pigs from may 2". Of one that has pigs only the
// words of a plan from a day on ask for it; to fetch some is a plan like others.
func (r *reader) plansPigs(k int) bool {
	switch r.items[k].s {
	case "plan on", "plan", "planning", "planning on", "planning for", "planning to", "plan to", "we are planning", "i am planning", "we're planning", "i'm planning":
	default:
		return false
	}
	n, end := k+1, r.sentenceEnd(k)
	fetch := false
	for ; n < end && r.items[n].gap == gapNone; n++ {
		switch r.items[n].s {
		case "on", "for", "to", "with", "about":
			continue
		case "getting", "get", "having", "have", "raising", "raise", "keeping", "keep", "starting", "start":
			fetch = true
			continue
		}
		break
	}
	if n+1 >= end || r.items[n].kind != itNum || !r.items[n+1].is(sPigs) || r.items[n+1].pig >= 0 {
		return false
	}
	from := false
	for n += 2; n < end; n++ {
		it := &r.items[n]
		switch {
		case it.s == "from":
			from = true
		case it.kind == itDay, it.s == "next year", it.isAny(setOf(sFiller)), r.lex.of[it.s] != nil && r.lex.of[it.s].month != 0, it.number(), it.gap >= gapComma:
		default:
			return false
		}
	}
	return r.alive == 0 || from && !fetch
}

// asksOfPigs says that a verb or a "when" and the pigs it asks of begin at item k:
// "... and is clover ready", "... and when will they go".
func (r *reader) asksOfPigs(k int) bool {
	n := &r.items[k+1]
	switch r.items[k].s {
	case "is", "are", "do", "does", "will", "can", "should", "when", "would", "could", "did":
		return n.pig >= 0 || n.is(sPigs) && n.pig < 0 || n.s == "they" || n.s == "she" || n.s == "he"
	}
	return false
}

// strongAsk are phrases that ask wherever they stand.
func (r *reader) strongAsk(s string) bool {
	switch firstWord(s) {
	case "how", "when", "what":
		return s != "what was" && s != "what is" && s != "what are" && s != "how are" && s != "what about" && s != "how about" && s != "when was" && s != "what did"
	}
	return s == "will it last" || s == "do i need" || s == "is it time" || s == "any idea" || s == "tell me when" || s == "tell me how" || s == "tell me what" || s == "want to know" || s == "need to know" || s == "i would like to know" || s == "i'd like to know"
}

// relative says that a question's word is no question here: "what was left in
// the open bag plus one", "the pig which coughs".
func (r *reader) relative(k int) bool {
	it := &r.items[k]
	if it.quest {
		return false
	}
	switch it.s {
	case "when":
		return r.whileWhen(k)
	case "what was", "what's", "whats", "what is", "what":
		if k > 0 && it.gap == gapNone && r.items[k-1].pig < 0 && r.items[k-1].isAny(setOf(sPour, sFill, sGave)) && !r.items[k-1].is(sIs) {
			return true // "put what was left of the bag in north"
		}
	}
	switch it.s {
	case "what was", "which", "who", "where", "what is", "whats", "how", "what", "where is":
		for n := k + 1; n < r.sentenceEnd(k); n++ {
			if x := &r.items[n]; x.number() && !x.soft && x.kind != itClock && !r.askedNumber(n) {
				return true
			}
		}
		return it.s == "who" && k > 0 && !r.onlyOpening(r.sentenceStart(k), k) || it.s == "which" && k > 0 && it.gap < gapStop
	}
	return false
}

func (r *reader) askedNumber(n int) bool {
	it := &r.items[n]
	return it.v >= 100 || it.qty(mass) || n+1 < len(r.items) && (r.items[n+1].is(sPigs) || r.items[n+1].is(sMore))
}

// inverted says that the first words are in a question's order: "is it", "do
// the", "will they".
func (r *reader) inverted(k int) bool {
	if k+1 >= len(r.items) {
		return false
	}
	n := &r.items[k+1]
	switch r.items[k].s {
	case "show", "list", "tell", "give", "explain", "calculate", "estimate", "forecast", "predict", "compute":
		return !r.measured(k)
	case "is", "are", "do", "does", "will", "can", "should", "am", "shall", "would", "could", "did":
		if r.didChore(k) {
			return false
		}
		return r.askedNumberFirst(k) || n.is(sPronoun) || n.is(sPigs) || n.pig >= 0 || determiners[firstWord(n.s)] || n.feeder >= 0 || n.barrel >= 0 || r.items[k].s == "is" && n.isAny(setOf(sFeeder, sBarrel, sWater, sFeed, sWallow, sRecipe)) && !r.measured(k) && !r.has(span{0, k, r.clauseEnd(k)}, sFull) && !r.has(span{0, k, r.clauseEnd(k)}, sEmpty)
	}
	return false
}

// didChore says that item k begins what was done by a noun: "did the worming today".
func (r *reader) didChore(k int) bool {
	if it := &r.items[k]; it.s != "did" || it.quest || k+2 >= len(r.items) || !determiners[r.items[k+1].s] {
		return false
	}
	n := &r.items[k+2]
	return n.kind == itWord && n.isAny(setOf(sWorm, sWeigh, sTape, sWatered, sFill, sChore)) && (strings.HasSuffix(n.s, "ing") || n.is(sChore)) && (k+3 >= len(r.items) || r.items[k+3].kind == itDay || r.items[k+3].gap >= gapAnd)
}

// measured says that the sentence of item k states amounts, as a fact does.
func (r *reader) measured(k int) bool {
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		if it := &r.items[n]; (it.kind == itNum && !it.soft && !(n > 0 && r.items[n-1].kind == itDay) || it.kind == itDim || it.kind == itQty && it.unit.dim() != days) && !r.has(span{0, r.sentenceStart(k), r.sentenceEnd(k)}, sTopic) {
			return true
		}
	}
	return false
}

// afterSubject says that a verb at k follows its subject, as in a statement:
// "we are the ...", "they have ...".
func (r *reader) afterSubject(k int) bool {
	if k == 0 || r.items[k].gap >= gapComma {
		return false
	}
	switch firstWord(r.items[k].s) {
	case "is", "are", "am", "do", "does", "did", "will", "can", "have", "has", "should", "could", "would":
	default:
		return false
	}
	p := &r.items[k-1]
	return p.is(sPronoun) || p.s == "we" || p.s == "i" || p.s == "there" || p.s == "that" || p.s == "this"
}

// asksLater says that the sentence of an "if" goes on to ask: "if I skip a week
// will the feed last".
func (r *reader) asksLater(k int) bool {
	for n := k + 1; n < r.sentenceEnd(k); n++ {
		it := &r.items[n]
		if it.quest || it.is(sAskSure) && !it.is(sFiller) || it.s == "happens" || it.s == "what then" || it.s == "will the" || it.s == "how much" || it.s == "when will" {
			return true
		}
	}
	return false
}

// reminderAhead finds the word for a reminder right behind a polite opening:
// "could you remind me ..."; -1 if there is none.
func (r *reader) reminderAhead(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap < gapComma; n++ {
		if r.items[n].is(sRemind) {
			return n
		}
		if strings.HasSuffix(r.items[n-1].s, "you") && r.dayToDo(n) { // "can you poke me sunday to look at her hooves"
			r.items[n].sense = setOf(sRemind)
			return n
		}
	}
	return -1
}

// determiners are what a question's verb is followed by.
var determiners = map[string]bool{"the": true, "i": true, "we": true, "you": true, "my": true, "our": true, "there": true, "this": true, "that": true, "these": true, "anything": true, "anyone": true, "anybody": true, "everything": true, "all": true, "both": true}

// askedNumberFirst says that a verb and a number begin a question that goes on to
// judge the number: "is 95 too hot for pigs".
func (r *reader) askedNumberFirst(k int) bool {
	if !r.items[k+1].number() || r.items[k+1].soft || k+2 >= len(r.items) || r.items[k+2].gap >= gapComma {
		return false
	}
	for n := k + 2; n < len(r.items) && n <= k+4; n++ {
		switch r.items[n].s {
		case "too", "enough", "ok", "okay", "good", "bad", "normal", "safe", "a lot", "be", "right", "hot", "degrees":
			return true
		}
	}
	return false
}

// askedNouns are what can be asked of a pig by its name and one word.
var askedNouns = map[string]bool{"weight": true, "growth": true, "withdrawal": true, "target": true, "gain": true, "yield": true, "butcher date": true, "adg": true, "daily gain": true, "date": true}

// nounAsked says that the sentence from item k on is but a pig, what is asked of it
// and perhaps a day: "hazel weight sep 1".
func (r *reader) nounAsked(k int) bool {
	end := r.sentenceEnd(k)
	noun := false
	for n := k + 1; n < end; n++ {
		switch it := &r.items[n]; {
		case askedNouns[it.s]:
			noun = true
		case it.kind == itDay && noun && n == end-1, it.pig >= 0 && !noun, it.s == "on" && noun, it.s == "by" && noun, it.s == "for" && noun, it.s == "now" && noun:
		default:
			return false
		}
	}
	return noun
}

// whileWhen says that a "when" in the middle of a sentence tells at what time
// something is so, and asks nothing: "juno is so cute when she sleeps".
func (r *reader) whileWhen(k int) bool {
	if k == 0 || r.items[k].gap >= gapComma {
		return false
	}
	for n := r.sentenceStart(k); n < k; n++ {
		switch r.items[n].s {
		case "know", "tell", "tell me", "wonder", "wondering", "idea", "any idea", "say", "remember", "figure", "guess", "sure", "ask", "asking", "let me know", "advise":
			return false
		}
	}
	n := k + 1
	return n < len(r.items) && (r.items[n].is(sPronoun) || r.items[n].s == "i" || r.items[n].s == "we" || r.items[n].s == "the" || r.items[n].pig >= 0) && k-r.sentenceStart(k) > 1
}
