package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// A stretch that asks may ask several things in one breath: "how long is the feed
// good for and does the wallow need topping". Each is answered by itself; a day or
// what is supposed holds for all of them.

// fillAsk reads the questions of a span.
func (r *reader) fillAsk(s span) {
	clause, as := r.supposition(s)
	rest := []span{s}
	if as != nil {
		rest = rest[:0]
		for _, p := range []span{{fAsk, s.i, clause.i}, {fAsk, clause.j, s.j}} {
			if p.i < p.j && !r.onlyOpening(p.i, p.j) {
				rest = append(rest, p)
			}
		}
		r.useAll(s)
	}
	var parts []span
	for _, p := range rest {
		parts = append(parts, r.questionsIn(p)...)
	}
	if len(parts) == 0 {
		r.fillWhatIf(s, as)
		return
	}
	from := len(r.out)
	if from > 0 && as == nil {
		if before, ok := r.out[from-1].Act.(Ask); ok { // "how often do you worm pigs? and when do mine need it"
			if topic, _ := r.topicOf(parts[0]); r.asksTheSame(topic, before.Topic, parts[0]) {
				r.useAll(parts[0])
				parts = parts[1:]
			}
		}
	}
	for _, p := range parts {
		r.fillQuestion(p, as)
		r.thingsAsked(p)
	}
	r.supposedOf(clause, as, from)
	r.carryDay(parts, from)
	r.carryDeed(from)
	r.askOnce(from)
}

// supposedOf lets a question be of the pigs whose target weight is supposed: "if the
// gilts go at 240 what day is that".
func (r *reader) supposedOf(c span, as *model.Assumption, from int) {
	if as == nil || as.TargetKg == nil {
		return
	}
	if r.has(c, sPronoun) && !r.namesIn(c) {
		return
	}
	sel := r.selectPigs(c.i, c.j)
	n, at := r.pigsCounted(c, true)
	if !sel.any || sel.all || sel.lost || sel.stray || len(sel.pigs) == 0 || at >= 0 && n != len(sel.pigs) {
		return
	}
	for n := from; n < len(r.out); n++ {
		if a, ok := r.out[n].Act.(Ask); ok && len(a.Animals) == 0 {
			a.Animals = sel.names(r)
			r.out[n].Act = a
		}
	}
}

// fillWhatIf reads a question that says no more than what it supposes.
func (r *reader) fillWhatIf(s span, as *model.Assumption) {
	a := Ask{Assume: as, Topic: supposedTopic(as)}
	r.useAll(s)
	r.emitOn(a, s, r.today, nil, false)
}

// supposedTopic is what is asked of a supposition alone.
func supposedTopic(as *model.Assumption) string {
	switch {
	case as.TargetKg != nil:
		return "butcher_date"
	case as.SkipDays > 0:
		return "feed_left"
	}
	return "feed_need"
}

// questionsIn parts a span where another question is joined to it.
func (r *reader) questionsIn(s span) []span {
	var out []span
	from := s.i
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if it.gap == gapNone || it.pig >= 0 || !r.questionJoined(k, s) {
			continue
		}
		one, other := span{fAsk, from, k}, span{fAsk, k, s.j}
		topic, score := r.topicOf(one)
		is := r.askedOf(one)
		if score < topicLeast || !r.asksItself(from, k) || topic == topicHelp || topic == "plan" && r.alive == 0 || is&topicThings == 0 && topic != "today" {
			continue
		}
		if whole, _ := r.topicOf(span{fAsk, from, s.j}); whole == "plan" && is&(qHowLong|qWhen) == 0 { // its answer holds all that is asked of it
			continue
		}
		next, weight := r.topicOf(other)
		if next == topicHelp || weight < topicLeast {
			continue
		}
		out = append(out, one)
		if r.asksTheSame(next, topic, other) {
			return out
		}
		from = k
	}
	return append(out, span{fAsk, from, s.j})
}

// topicThings are what a question can be about; one that names none of them is but the
// beginning of what follows.
const topicThings = qFeed | qWater | qWallow | qPen | qVessel | qEat | qLast | qEnd | qHowBig | qHold | qEnough | qGrow | qMoney | qMeat | qUse | qClear | qDrug | qDeed | qRecall | qDo | qThing | qGoal | qHeat | qBad | qMix | qWeight | qPigs | qNamed | qMove | qStay | qWorm

// asksTheSame says that a further question names nothing of its own and asks for what
// is normal, or for one's own, of what was asked before: "how often do pigs need
// worming and when are mine due".
func (r *reader) asksTheSame(next, topic string, s span) bool {
	switch next {
	case "today", "feed_need", "butcher_date":
	default:
		return false
	}
	if topic != "worming" && topic != "ration_check" && topic != "growth" && topic != "move" {
		return false
	}
	own := qHow | qUnit | qPigs | qNamed | qNumber | qCount | qBuy | qHowMuch | qHowLong | qWhen | qMore | qAny | qRight | qMay | qAgain | qDo
	return r.askedOf(s)&^own == 0 && (r.quoteHas(s, "mine", "ours") || saysAny(r.said(s), sameForUs))
}

var sameForUs = phrasesOf("mine, ours, need, needs, should")

// asksItself says that a word which asks, or a topic's noun, stands in the items from
// i to j.
func (r *reader) asksItself(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0:
		case it.isAny(setOf(sAskSure, sTopic)), askWords[firstWord(it.s)]:
			return true
		case k == j-1 && it.quest && strings.HasPrefix(r.text[it.to:], "?"):
			return true
		case helpVerbs[firstWord(it.s)] && (k == i || it.gap >= gapAnd || r.onlyOpening(i, k)):
			return true
		}
	}
	return false
}

// topicLeast is what the words of a further question, and of the one before it must weigh.
const topicLeast = 1

// questionJoined says that item k begins a further question of the span: by a word
// that asks and its verb, or as a thing that is asked about as well.
func (r *reader) questionJoined(k int, s span) bool {
	it := &r.items[k]
	next := &item{}
	if k+1 < s.j {
		next = &r.items[k+1]
	}
	w := firstWord(it.s)
	switch {
	case it.gap >= gapStop:
		return true
	case r.strongAsk(it.s) && it.is(sAskSure):
		return true
	case (w == "on" || w == "by" || w == "in" || w == "at") && next.is(sAskSure) && next.gap == gapNone:
		return true // "..., and on what day shall they be ready"
	case askWords[w]:
		second := secondWord(it.s)
		if second == "" {
			second = firstWord(next.s)
		}
		return w != "when" || helpVerbs[second] || second == "to" || it.gap >= gapComma && r.items[s.j-1].quest
	case it.is(sAskSure) && (determiners[firstWord(next.s)] || next.is(sPronoun) || strings.Contains(it.s, " ")):
		return true
	case helpVerbs[w]:
		return next.isAny(setOf(sPronoun, sPigs)) || next.pig >= 0 || next.kind == itThing || determiners[firstWord(next.s)] || plainSubjects[firstWord(next.s)]
	}
	return r.thingAlone(k, s.j)
}

// thingAlone says that the items from k to j are but feed or water that is asked
// about as well: "... and the water", "water too".
func (r *reader) thingAlone(k, j int) bool {
	if !r.namesStore(k, j) {
		return false
	}
	for n := k; n < j; n++ {
		it := &r.items[n]
		if it.pig >= 0 || !it.isAny(setOf(sFeed, sWater, sBarrel, sFeeder, sFiller)) && it.kind != itThing && !thingTails[it.s] {
			return false
		}
	}
	return true
}

var thingTails = setOfWords(split("enough, enough water, enough feed, ok, left, what about, how about, same for, as well, also"))

func (r *reader) namesStore(k, j int) bool {
	for n := k; n < j; n++ {
		if r.ofFeed(n) || r.ofWater(n) {
			return true
		}
	}
	return false
}

// ofFeed says that item k is feed or what holds it, ofWater that it is water or what
// holds that.
func (r *reader) ofFeed(k int) bool {
	return r.items[k].isAny(setOf(sFeed, sFeeder)) || r.items[k].feeder >= 0
}

func (r *reader) ofWater(k int) bool {
	return r.items[k].isAny(setOf(sWater, sBarrel)) || r.items[k].barrel >= 0
}

// thingsAsked asks of water as well where one question names both it and the feed:
// "what runs out first, feed or water".
func (r *reader) thingsAsked(s span) {
	if len(r.out) == 0 {
		return
	}
	a, ok := r.out[len(r.out)-1].Act.(Ask)
	if !ok || a.About != "" || a.Topic != "feed_left" && a.Topic != "water_left" {
		return
	}
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if it.gap < gapAnd && !(k > s.i && r.items[k-1].s == "or") && !(k > s.i+1 && r.items[k-2].s == "or") {
			continue
		}
		left, right := [2]bool{}, [2]bool{}
		for n := max(s.i, k-3); n < k; n++ {
			left[0], left[1] = left[0] || r.ofFeed(n), left[1] || r.ofWater(n)
		}
		for n := k; n < min(s.j, k+2); n++ {
			right[0], right[1] = right[0] || r.ofFeed(n), right[1] || r.ofWater(n)
		}
		if left[0] && right[1] && !left[1] || left[1] && right[0] && !left[0] {
			a.Topic = "feed_left"
			r.out[len(r.out)-1].Act = a
			a.Topic = "water_left"
			r.emitOn(a, s, r.today, nil, false)
			return
		}
	}
}

// carryDay lets the day of one question hold for a later one that points to it or
// says no more than a thing: "what will they weigh oct 23 and how much feed til
// then".
func (r *reader) carryDay(parts []span, from int) {
	for n := from + 1; n < len(r.out); n++ {
		a, ok := r.out[n].Act.(Ask)
		b, before := r.out[n-1].Act.(Ask)
		if !ok || !before || a.On != nil || b.On == nil {
			continue
		}
		for _, p := range parts {
			if at := r.items[p.i].from; at == r.out[n].From && (r.thingAlone(p.i, p.j) || saysAny(r.saidAround(p), thenWords)) {
				a.On = b.On
				r.out[n].Act = a
			}
		}
	}
}

// deedsDue is the topic that asks when a deed that was asked about is due again.
var deedsDue = map[string]string{"worm": "worming", "move": "move", "refill": "feed_left", "water": "water_left", "wallow": "wallow"}

// carryDeed lets a question when "it" is due again be one of the deed asked about
// before it: "when did i worm them last and when is it due again".
func (r *reader) carryDeed(from int) {
	for n := max(1, from); n < len(r.out); n++ {
		a, ok := r.out[n].Act.(Ask)
		b, before := r.out[n-1].Act.(Ask)
		if !ok || !before || b.Topic != "history" || deedsDue[b.About] == "" || a.Topic != "today" && a.Topic != "" || a.On != nil {
			continue
		}
		if saysAny(" "+strings.ToLower(r.text[r.out[n].From:r.out[n].To])+" ", againDue) {
			a.Topic = deedsDue[b.About]
			r.out[n].Act = a
		}
	}
}

var againDue = phrasesOf("again, next, due")

var thenWords = phrasesOf("then, by that day, that day, by that date, that date, til that, by that time")

// saidAround is what a span says, with the small words behind its last item.
func (r *reader) saidAround(s span) string {
	end := len(r.text)
	if s.j < len(r.items) {
		end = r.items[s.j].from
	}
	return " " + strings.Join(strings.FieldsFunc(strings.ToLower(r.text[r.items[s.i].from:end]), func(c rune) bool {
		return strings.ContainsRune(" ,.;:?!\n", c)
	}), " ") + " "
}

// askOnce drops a question that asks what one before it did.
func (r *reader) askOnce(from int) {
	out := r.out[:from]
	for _, e := range r.out[from:] {
		a, ok := e.Act.(Ask)
		if ok && slices.ContainsFunc(out[max(0, from-1):], func(o Entry) bool {
			b, is := o.Act.(Ask)
			return is && a.Topic == b.Topic && sameAsked(a, b)
		}) {
			continue
		}
		out = append(out, e)
	}
	r.out = out
}

// sameAsked says that a question adds nothing to another one of its topic.
func sameAsked(a, b Ask) bool {
	animals := len(a.Animals) == 0 || slices.Equal(a.Animals, b.Animals)
	on := a.On == nil || b.On != nil && *a.On == *b.On
	return animals && on && a.TargetKg == nil && a.Topic != "history" && a.Topic != "sizes" && a.Topic != "why"
}
