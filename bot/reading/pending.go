package reading

import (
	"strings"

	"troughbell/model"
)

// answer reads the text as the answer to the open question, if it is one: one
// of its labels, its number, or a value that fits what is wanted.
func (r *reader) answer() (Reading, bool) {
	p := r.c.Pending
	if p == nil {
		return Reading{}, false
	}
	text := r.plain
	for k, label := range p.Labels {
		if k < len(p.Clarify.Choices) && plain(label) == text {
			return r.chosen(p.Clarify.Choices[k])
		}
	}
	if len(r.items) == 1 && r.items[0].kind == itNum && !r.wantsNumber(p.Clarify) {
		if n := int(r.items[0].v); n >= 1 && n <= len(p.Clarify.Choices) && float64(n) == r.items[0].v {
			return r.chosen(p.Clarify.Choices[n-1])
		}
	}
	if c, ok := r.choiceByWord(p); ok {
		return r.chosen(c)
	}
	if r.waves() {
		return r.chosen(Choice{})
	}
	if len(r.items) > 1 && asksFirst[r.items[0].s] { // "is 85 ok" answers nothing
		return Reading{}, false
	}
	if r.saysBagSize(0) && p.Clarify.Want != "size" {
		return Reading{}, false // "bag is 50" is no barrel of 50 gallons
	}
	if p.Clarify.Want == "target_kg" && saysAny(r.said(span{0, 0, len(r.items)}), pricedWords) {
		return Reading{}, false // "200 for the lot" is what they cost
	}
	if got, ok := r.unitAnswer(p); ok {
		r.answered = true
		return got, true
	}
	if r.awayDays(p.Clarify) {
		r.answered = true
		return Reading{Entries: append([]Entry(nil), r.out...), Answers: true}, true
	}
	if es, ok := r.completed(p.Clarify); ok {
		r.answered = true
		return Reading{Entries: es, Answers: true}, true
	}
	if len(r.items) == 1 && r.items[0].kind == itNum {
		if n := int(r.items[0].v); n >= 1 && n <= len(p.Clarify.Choices) && float64(n) == r.items[0].v {
			return r.chosen(p.Clarify.Choices[n-1])
		}
	}
	return Reading{}, false
}

// pricedWords make of a number a price.
var pricedWords = phrasesOf("for the lot, for all, for all of them, for everything, apiece, a piece, each, a head, per head, per pig, a pig, bucks, dollars, quid, paid, cost, cost us, cost me")

// asksFirst are words that a question begins with and no answer does.
var asksFirst = setOfWords(split("is, are, does, isn't, isnt, aren't, arent, can, should"))

// waves says that the text waves the question aside: "nothing, that was a
// mistake", "never mind, wrong pig".
func (r *reader) waves() bool {
	switch r.items[0].s {
	case "nothing", "none", "neither", "never mind", "nevermind", "forget it", "never mind that", "nevermind that", "skip it", "ignore that", "ignore it":
	default:
		return false
	}
	for k := range r.items[1:] {
		if it := &r.items[k+1]; it.number() || it.kind != itWord && it.kind != itName {
			return false
		}
	}
	return len(r.items) <= 8
}

// plain is a label as it is compared: lower case, without signs at its ends.
func plain(s string) string {
	return strings.Trim(strings.ToLower(strings.TrimSpace(s)), ".,;:'\"“”[]()")
}

func (r *reader) chosen(c Choice) (Reading, bool) {
	if len(c.Entries) == 0 {
		got := r.just(None{Reason: NoneNegation})
		got.Answers = true
		return got, true
	}
	return Reading{Entries: append([]Entry(nil), c.Entries...), Answers: true, Choice: c.Code}, true
}

// wantsNumber says that a bare number answers with its value and not with the
// place of a choice.
func (r *reader) wantsNumber(c Clarify) bool {
	switch c.Want {
	case "size", "feed_kg", "litres", "weight_kg", "kv", "target_kg", "withdrawal_days", "weigh":
		return r.items[0].v > float64(len(c.Choices)) || c.Want == "kv" || c.Want == "withdrawal_days"
	}
	return false
}

// choiceWords are what people say for a choice instead of its label.
var choiceWords = []struct{ code, words string }{
	{"yes", "yes, yep, yeah, yup, y, right, correct, ja, sure, that's right, thats right, aye, it is, affirmative, ok"},
	{"no", "no, nope, nah, n, nein, wrong, neither, none"},
	{"undo_yes", "yes, yep, yeah, yup, y, right, correct, ja, sure, ok, okay, do it, yes undo it, yes undo, go ahead"},
	{"import_yes", "yes, yep, yeah, yup, y, right, correct, ja, sure, ok, okay, do it, go ahead, import it, import them, yes import, yes please, take it in"},
	{"import_no", "no, nope, nah, n, nein, leave, leave that, don't, dont, don't import, no thanks, never mind, nevermind, cancel"},
	{"undo_no", "no, nope, nah, n, nein, keep, keep that, leave it, don't, dont, no keep it, never mind, nevermind, cancel"},
	{"died", "died, dead, it died, she died, he died, death, passed, found dead"},
	{"out", "out, escaped, got out, it got out, loose, ran off, run off, escape"},
	{"nothing", "nothing, neither, none, never mind, nevermind, forget it, no, ignore, nope, skip"},
	{"feed", "feed, the feeder, feeder, grain, food, hopper, the hopper"},
	{"water", "water, the water, drinker"},
	{"as_weight", "weight, the weight, pounds, lb, lbs, kilos, kg, a weight, scale"},
	{"as_girth", "girth, the girth, inches, in, tape, cm, a girth, around, taped"},
	{"all_pigs", "all, all of them, everyone, everybody, every one, all pigs, the lot, the whole herd"},
	{"all", "all, all of them, every one, both"},
	{"both", "both, both of them, all"},
	{"full", "full, filled, it's full, filled it, yes"},
	{"empty", "empty, dry, ran dry, it's empty"},
	{"as_said", "as i said, it is right, it's right, that is right, that's right, right, correct, yes, yep, really"},
	{"swapped", "swapped, other way round, other way around, the other way"},
	{"just_full", "full, just full, it was full, filled it"},
	{"odd_spilled", "spilled, spilt, spill, a spill, it spilled, wasted, waste, tipped, tipped over, it tipped, spoiled, spoilt, mouldy, moldy, rained in"},
	{"odd_others", "others, other animals, another animal, raccoons, racoons, coons, rats, mice, birds, crows, deer, a bear, bear, dogs, the dog, chickens, hens, goats, cows, wild pigs, wild boar, boars"},
	{"odd_ate", "ate it, eaten, they ate it, they just ate it, they ate it all, hungry, they are hungry, growth spurt, all fine, fine, all good"},
	{"odd_not_full", "not full, wasn't full, it wasn't full, was not full, it was not full, not full before"},
	{"odd_drinkers", "drinkers, water slow, slow water, nipple clogged, clogged, drinkers clogged, water"},
	{"odd_pig_off", "pig off, off feed, one is off feed, sick, a sick pig, sick pig, one is sick"},
	{"odd_stuck", "stuck, bridged, it bridged, feed bridged, gate stuck, gate shut, shut too far, blocked, it was stuck"},
	{"odd_ate_less", "ate less, they ate less, less hungry, the heat, heat, hot, all fine, fine, all good, windfalls, grass"},
	{"odd_trough", "trough, the trough, trough only, just the trough, trough empty, bridged, it bridged, stuck"},
	{"odd_leak", "leak, a leak, leaked, it leaks, leaking, it leaked, tipped, tipped over, spilled, nipple stuck, nipple stuck open, dripping"},
	{"odd_drank", "drank it, drunk, they drank it, they just drank it, thirsty, hot, the heat, heat, all fine, fine"},
	{"odd_clogged", "clogged, frozen, froze, ice, stuck, blocked, nipple clogged, nipple frozen, yes"},
	{"odd_rain", "rain, it rained, filled, i filled it, topped up, a fill"},
	{"odd_drank_less", "drank less, they drank less, cool, cool weather, all fine, fine"},
	{"odd_ill", "worms, wormy, ill, sick, cough, scours"},
	{"odd_short", "short, feed, water, feed short, water short, short of feed, short of water"},
	{"odd_bullied", "bullied, pushed off, kept off, bully"},
	{"odd_misread", "wrong, weighed wrong, misread, typo, tape off, tape was off, the tape was off, wrong pig"},
	{"went_all", "yes, yep, yeah, yup, y, they went, they did, went, they all went, all went, gone, all gone, they're gone, they are gone, yes all, yes they went, yes they did, all of them, all"},
	{"went_some", "some, some of them, a few, not all, part, only some"},
	{"went_not", "no, nope, nah, n, not yet, they did not, they didn't, didnt go, didn't go, still here, they're still here, postponed, put off, cancelled, canceled"},
	{"poured", "poured, fed, feed, yes, filled, put in"},
}

func (r *reader) choiceByWord(p *Pending) (Choice, bool) {
	text := r.plain
	for _, w := range choiceWords {
		for _, s := range split(w.words) {
			if s != text {
				continue
			}
			for _, c := range p.Clarify.Choices {
				if c.Code == w.code {
					return c, true
				}
			}
		}
	}
	// A thing's name, with or without the word for its kind; a pig by a near
	// miss only where no drug, death or sale rests on it.
	if len(r.items) <= 3 || r.nameThenTalk() {
		for _, c := range p.Clarify.Choices {
			if c.Label == "" {
				continue
			}
			for k := range r.items {
				it := &r.items[k]
				if it.pig >= 0 && strings.EqualFold(r.pigs[it.pig].Name, c.Label) && (!it.near || !dear(p.Clarify.About)) && r.onlyName() ||
					it.feeder >= 0 && r.c.Herd.Feeders[it.feeder].Name == c.Label && r.onlyName() ||
					it.barrel >= 0 && r.c.Herd.Barrels[it.barrel].Name == c.Label && r.onlyName() ||
					it.pen >= 0 && r.c.Herd.Pens[it.pen].Name == c.Label && r.onlyName() {
					return c, true
				}
			}
		}
	}
	return Choice{}, false
}

// nameThenTalk says that a name comes first and small talk behind a comma: "in
// the small hopper, sorry for my english", "north. sorry. north".
func (r *reader) nameThenTalk() bool {
	end, named := r.clauseEnd(0), false
	if end > 4 || len(r.items) > 9 {
		return false
	}
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itName || it.kind == itThing:
			named = named || k < end
		case it.kind != itWord, k >= end && it.isAny(tradeSenses) && !it.is(sFiller):
			return false
		}
	}
	return named && r.onlyName()
}

// onlyName says that the text names one thing and nothing else.
func (r *reader) onlyName() bool {
	n, end, first := 0, r.clauseEnd(0), ""
	for k := range r.items {
		it := &r.items[k]
		if it.kind == itName || it.kind == itThing {
			if n > 0 && it.s == first {
				continue // said twice
			}
			first = it.s
			n++
		} else if k >= end && it.kind == itWord && !it.isAny(tradeSenses) {
			continue // small talk
		} else if !it.isAny(setOf(sFiller, sYes, sIs, sBarrel, sFeeder, sPen, sPronoun)) || it.isAny(setOf(sGave, sArrive, sBuy, sBackIn, sOut, sDown, sNoWater, sNoFeed, sDied, sLost, sSold, sSick, sWell, sMove)) || it.s == "back" {
			return false
		}
	}
	return n == 1
}

// dear says that a wrong record of the kind costs most.
func dear(about string) bool { return about == "worm" || about == "treat" || about == "gone" }

// tapeAnswer fills in a girth and a length that are told by their labels, "39
// girth 48 long", for the pig that was asked about.
func (r *reader) tapeAnswer(c Clarify) (Entry, bool) {
	d := c.Draft[0]
	f, ok := d.Act.(Fact)
	if !ok || len(r.items) > 8 {
		return d, false
	}
	w, ok := f.Fact.(model.Weigh)
	if !ok {
		return d, false
	}
	for k := range r.items {
		it := &r.items[k]
		if it.pig >= 0 || it.kind != itNum && !it.qty(length) && !it.isAny(setOf(sGirth, sLength, sTape, sFiller, sIs, sYes, sNo, sAnd)) {
			return d, false
		}
	}
	ms := joinTape(r, r.measures(span{fWeigh, 0, len(r.items)}))
	if len(ms) != 1 || ms[0].role != rolePair {
		return d, false
	}
	opts := r.options(&ms[0])
	if len(opts) != 1 {
		return d, false
	}
	opts[0].Animals = w.Animals
	d.Act = Fact{opts[0]}
	return d, opts[0].Check() == nil
}
