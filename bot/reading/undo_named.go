package reading

import (
	"slices"

	"troughbell/model"
)

// What a person takes back by naming what it was of: "scrap the tank one, hose had come
// off", "strike what I wrote about the fence", or says right after it not to have been
// done: "not the barrel yet".

// longestTakeBack is how many items such a text has at most.
const longestTakeBack = 24

// namedUndo reads such a text. What it names stands in one of the last texts, else
// nothing is taken back here.
func (r *reader) namedUndo() (Reading, bool) {
	defer r.repliedTo()()
	if len(r.c.Before) == 0 || r.part || len(r.items) == 0 || len(r.items) > longestTakeBack {
		return Reading{}, false
	}
	if i, j, ok := r.takenBack(); ok {
		a, named := r.namedThere(i, j)
		if !named || r.anyValueToldAnew(&a, j) {
			return Reading{}, false
		}
		return r.undoOf(&a, amendWithin)
	}
	if i, j, ok := r.calledWrong(); ok {
		if a, named := r.namedThere(i, j); named && !r.anyValueToldAnew(&a, j) {
			return r.undoOf(&a, amendWithin)
		}
		return Reading{}, false
	}
	if a, ok := r.notDoneAfterAll(); ok && r.c.Now.Sub(r.c.Before[0].At) <= justTold {
		if got, ok := r.undoOf(&a, 1); ok {
			return got, true
		}
		return r.allButOne(&a)
	}
	return Reading{}, false
}

// calledWrong are the items of which the text says that they are no true record: "the
// fence reading was wrong, take it off please".
func (r *reader) calledWrong() (i, j int, ok bool) {
	for i < len(r.items) && r.items[i].kind == itWord && (takeBackOpeners[r.items[i].s] || r.items[i].is(sNo)) {
		i++
	}
	for j = i; j < len(r.items) && j < i+6; j++ {
		it := &r.items[j]
		if j > i && it.gap >= gapComma {
			return 0, 0, false
		}
		if calledWrongWords[it.s] {
			return i, j, j > i
		}
		if j > i && (it.s == "was" || it.s == "is" || it.s == "were") && j+1 < len(r.items) && r.items[j+1].gap == gapNone {
			n := j + 1
			for n+1 < len(r.items) && (r.items[n].s == "a" || r.items[n].s == "an" || r.items[n].s == "all" || r.items[n].soft) {
				n++
			}
			return i, j, wrongWords[r.items[n].s] && (n+1 == len(r.items) || r.items[n+1].gap >= gapAnd || takeBackOpeners[r.items[n+1].s])
		}
	}
	return 0, 0, false
}

// takenBack are the items that name what the text takes back by a verb at its head.
func (r *reader) takenBack() (i, j int, ok bool) {
	t := r.toks
	k, self := 0, false
	for k < len(t) && k < 9 && (t[k].kind == tokMark || t[k].kind == tokWord && (takeBackOpeners[t[k].s] || t[k].s == "i" || t[k].s == "we")) {
		self = self || t[k].s == "i" || t[k].s == "we"
		k++
	}
	if k >= len(t) || t[k].kind != tokWord {
		return 0, 0, false
	}
	verb := t[k].s
	behind := takeBackParted[verb] // "take the straw off"
	switch {
	case takeBackVerbs[verb] && !(self && !takeBackFormal[verb]), behind:
	case k > 0 && (t[k-1].s == "nvm" || t[k-1].s == "nevermind"): // "nvm the fence"
		k--
	case verb == "never" && k+1 < len(t) && t[k+1].s == "mind":
		k++
	default:
		return 0, 0, false
	}
	k++
	for k < len(t) && (takeBackParts[t[k].s] || t[k].s == "about") {
		behind = false
		k++
	}
	from := k
	for k < len(t) && t[k].kind != tokBreak && !(t[k].kind == tokMark && t[k].s != "'" && t[k].s != "$") && !(k > from && takeBackEnds[t[k].s] && !r.saidVerbNext(k)) {
		if behind && takeBackParts[t[k].s] {
			behind = false
			break
		}
		k++
	}
	if behind || k == from {
		return 0, 0, false
	}
	first, last := t[from].from, t[k-1].to
	for i < len(r.items) && r.items[i].from < first {
		i++
	}
	for j = i; j < len(r.items) && r.items[j].to <= last; j++ {
		if r.items[j].quest {
			return 0, 0, false
		}
	}
	return i, j, j > i
}

// saidVerbNext says that a word of telling stands behind token k: "what i said about".
func (r *reader) saidVerbNext(k int) bool {
	for n := k + 1; n < len(r.toks) && n < k+4; n++ {
		if toldVerbs[r.toks[n].s] {
			return true
		}
	}
	return false
}

// namedThere is what items[i:j] name a record by; false where they say anything else.
func (r *reader) namedThere(i, j int) (amends, bool) {
	var a amends
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && !it.near:
			a.pigs = append(a.pigs, it.pig)
		case it.kind == itThing && a.thing == nil:
			a.thing = it
		case it.kind == itDay, it.kind == itClock, it.soft:
		case it.number() && a.num == nil && !it.ord && !it.rng:
			a.num = it
		case it.kind != itWord:
			return a, false
		case it.is(sBoth) && k+1 < j && r.items[k+1].unit != 0 && r.items[k+1].unit.dim() == vessel: // "the two bags"
			two := r.items[k+1]
			two.kind, two.v = itQty, 2
			a.num = &two
		case toldVerbs[it.s], recordWords[it.s], r.kindByWord(&a, k):
		case it.unit != 0 && it.unit.dim() == vessel:
			a.kind = "refill"
		case len(it.s) > 3 && !it.is(sFiller) && r.toldLately(it.s) && len(a.words) < 2:
			a.words = append(a.words, it.s)
		case it.isAny(setOf(sFiller, sPronoun, sIs, sOf, sOn, sAbout, sHearsay, sUndo, sNote)):
		default:
			return a, false
		}
	}
	r.onlyOfItsKind(&a)
	return a, len(a.pigs) > 0 || a.thing != nil || a.num != nil || a.kind != "" || len(a.words) > 0
}

// onlyOfItsKind takes the herd's only feeder or barrel for its kind: its records need not
// bear its name.
func (r *reader) onlyOfItsKind(a *amends) {
	switch {
	case a.thing == nil:
	case a.thing.feeder >= 0 && len(r.c.Herd.Feeders) == 1:
		a.thing, a.kind = nil, "refill"
	case a.thing.barrel >= 0 && len(r.c.Herd.Barrels) == 1:
		a.thing, a.kind = nil, "water"
	}
}

// anyValueToldAnew says that the text from item j on tells a value, a pig or a thing
// that what it takes back is not named by.
func (r *reader) anyValueToldAnew(a *amends, j int) bool {
	for k := j; k < len(r.items); k++ {
		it := &r.items[k]
		if it.quest || it.is(sAskSure) || it.number() && !it.soft || it.kind == itFrac || it.pig >= 0 && !slices.Contains(a.pigs, it.pig) ||
			it.kind == itThing && it.pen < 0 && (a.thing == nil || a.thing.feeder != it.feeder || a.thing.barrel != it.barrel) {
			return true
		}
	}
	return false
}

// undoOf takes back the records of the newest text that has what is named, among the last
// so many texts.
func (r *reader) undoOf(a *amends, texts int) (Reading, bool) {
	var got Reading
	at := -1
	for n := range r.c.Before {
		f, ok := r.recent(n)
		if n > 0 && r.c.Before[n].Text != r.c.Before[n-1].Text {
			if texts--; texts == 0 {
				break
			}
		}
		if at >= 0 && r.c.Before[n].Text != r.c.Before[at].Text {
			break
		}
		if !ok || !r.speaksOf(a, n) || a.num != nil && !r.holdsAmount(n, a.num) || !takenBackKinds[f.Kind()] {
			continue
		}
		at = n
		u := Undo{Of: string(f.Kind()), Named: r.c.Before[n].ID}
		got.Entries = append(got.Entries, Entry{Act: u, On: r.today, To: len(r.text)})
	}
	return got, at >= 0
}

// kindByWord notes which kind of record item k is a word of. A second kind is no name of
// one record.
func (r *reader) kindByWord(a *amends, k int) bool {
	one := amends{}
	if !r.amendKind(&one, k) {
		for _, w := range undoWords {
			if slices.Contains(split(w.words), r.items[k].s) {
				one.kind = w.of
			}
		}
	}
	switch {
	case one.kind == "", a.kind != "" && a.kind != one.kind:
		return false
	}
	a.kind = one.kind
	return true
}

// notDoneAfterAll is what the text says not to have been done after all, where it says
// nothing else: "not the tank yet", "actually didn't do the barrel", "juno isn't wormed".
func (r *reader) notDoneAfterAll() (amends, bool) {
	var a amends
	not, k := -1, 0
	for ; k < len(r.items); k++ {
		it := &r.items[k]
		named := len(a.pigs) > 0 || a.thing != nil || a.kind != ""
		switch {
		case it.quest, it.isAny(setOf(sFull, sEmpty, sPlan, sIf)) && !it.isAny(setOf(sFill, sFiller, sNot)):
			return a, false
		case k > 0 && it.gap >= gapComma && not >= 0 && named:
			for n := k; n < len(r.items); n++ {
				if r.items[n].kind == itThing {
					return a, false // "not pear, apple"
				}
			}
			r.onlyOfItsKind(&a)
			return a, len(a.pigs) < 2 && !r.anyValueToldAnew(&a, k)
		case it.is(sNot) && not < 0 && k < 5 && notDoneWords[it.s]:
			not = k
		case it.pig >= 0 && !it.near:
			a.pigs = append(a.pigs, it.pig)
		case it.kind == itThing && a.thing == nil:
			a.thing = it
		case it.kind == itDay && it.day.form == dayOffset && it.day.a == 0, it.soft, it.s == "do the", it.s == "do it":
		case it.kind != itWord:
			return a, false
		case it.isAny(setOf(sFill, sPour, sDone, sUndone)) && not >= 0 && k <= not+2, it.s == "i have", it.s == "we have":
		case it.isAny(setOf(sWorm, sMove, sWeigh, sTape)) && not >= 0 && k <= not+2, it.isAny(setOf(sBarrel, sFeeder, sWater, sWallow)) && !it.is(sFiller):
			if !r.kindByWord(&a, k) {
				return a, false
			}
		case it.isAny(setOf(sFiller, sNo, sPronoun, sUndone, sDone, sNow)), amendSmall[it.s]:
		default:
			return a, false
		}
	}
	named := len(a.pigs) > 0 || a.thing != nil || a.kind != ""
	r.onlyOfItsKind(&a)
	return a, not >= 0 && named && len(a.pigs) < 2
}

// takenBackKinds are the records that a text takes back by naming what they are of. An
// appointment is cancelled, and days away are changed, in words of their own.
var takenBackKinds = map[model.Kind]bool{
	"weigh": true, "refill": true, "feed_level": true, "water": true, "wallow": true, "worm": true, "treat": true, "move": true, "sick": true, "fence": true,
	"weather": true, "spend": true, "stock": true, "mixed": true, "gone": true, "note": true, "alarm": true, "recipe": true,
}

// takeBackOpeners may stand before the verb.
var takeBackOpeners = setOfWords(split(`oh, ah, ok, okay, no, nope, nah, sorry, oops, whoops, ugh, argh, haha, lol, hey, wait, actually, please, pls, plz, kindly, pray, could, would, can, you, just, and, so, well, um, uh, er, nvm, hang, on, like, to, should, wish, must, want, have, need, better, if, be, kind, enough,
	i'd, id, we'd, let, me, us, let's, lets, damn, shoot, dang, hi, hello, bot, good, day, sir, my, bad, beg, pardon, but, forgive, afraid, am, i'm, im`))

// takeBackVerbs take back what is named behind them; takeBackFormal also of somebody who
// says "I", as none who strikes or scratches pigs would; of takeBackParted the second part
// may stand behind what is named.
var (
	takeBackVerbs  = setOfWords(split(`strike, scratch, scrap, delete, erase, undo, forget, ignore, disregard, withdraw, void, nix, retract, rescind, annul, revoke, discard, remove, wipe, drop, bin, ditch, nevermind, nvm`))
	takeBackFormal = setOfWords(split(`withdraw, retract, rescind, revoke, disregard, delete, erase, undo, strike, ignore`))
	takeBackParted = setOfWords(split(`take, cross, rub, pull`))
	takeBackParts  = setOfWords(split(`out, off, back, away`))
)

// takeBackEnds begin why it is taken back.
var takeBackEnds = setOfWords(split(`because, cause, cos, coz, cuz, since, that, it, its, it's, i, we, they, he, she, was, were, is, wasn't, wasnt, didn't, didnt, never, but, wrong, who, which, hose, as, again, please, pls, i'm, thats, that's, lol, haha`))

// toldVerbs tell that something was told.
var toldVerbs = setOfWords(split(`said, say, saying, told, tell, wrote, write, written, sent, send, reported, report, typed, put, entered, logged, noted, recorded, mentioned, gave, give, texted, put in, told you, i said, i told you, i wrote, i put, i gave, i sent, what i said, what i told you, what i wrote, what i say, what i put, i say, said about`))

// recordWords are what a record is called by.
var recordWords = setOfWords(split(`one, ones, thing, things, bit, part, entry, entries, record, records, message, messages, text, remark, remarks, note, report, line, figure, figures, number, statement, comment, info, reading, readings, value, amount, numbers, pour, stuff, yin, wan, last, latest, earlier, previous, concerning, regarding, about, for, re, on, of, what, whatever, everything, all, my, from before, before, just now, morning, this morning, in the morning, lot, again, too, fill, filling`))

// notDoneWords deny that a thing was done.
var notDoneWords = setOfWords(split(`not, didn't, didnt, did not, haven't, havent, have not, hasn't, hasnt, has not, wasn't, wasnt, was not, weren't, werent, isn't, isnt, never, not yet, still haven't, never got to, i never got to, never got round to, never got around to, yet to`))

// wrongWords say behind "was" that something told was not so; calledWrongWords by
// themselves.
var (
	wrongWords       = setOfWords(split(`wrong, mistake, error, typo, lie, joke, false, bogus, rubbish, nonsense, incorrect, mistaken, erroneous, not right, accident, fib, was wrong, dream`))
	calledWrongWords = setOfWords(split(`was wrong, was a mistake, never happened, didn't happen, didnt happen, was an error, was mistaken, is wrong`))
)
