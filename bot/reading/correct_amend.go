package reading

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"troughbell/model"
)

// What a person puts right some texts later names the record that it means: by the
// wrong value, "juno not brick", by the right one, "the 75 was juno", by what it is of,
// "the fence was 5.7 i mean", or but by the kind of value: "small hopper i meant" is of
// feed, whatever was told last.

// amendWords say that what stands beside them puts something right.
var amendWords = setOfWords(split(`i mean, i meant, mean, meant, maen, ment, menat, mena, should be, should have been, that should be, it should be, should read, should say, make that, make it,
	correction, typo, wrong, rather, pala, actually, no, nope, nae, oops, whoops, woops, sorry, sry, soz, sori, my mistake, my bad, pardon, pardon me, excuse me, i misspoke, misspoke, scratch that, no wait, wait, oh wait,
	sorry that, no sorry, sorry meant, was meant to be, should've been, shouldve been, wait no, oops no, oh sorry, instead, mixed up, mistake, sorrow, correct that, change that, change, fix that, err, swap, not that, that was wrong, rectification, erratum, ay sorry`))

// amendSmall are the small words of such a text that stand in no lexicon as such.
var amendSmall = setOfWords(split(`ay, po, ho, opo, kasi, yun, yung, na, ah, aw, och, aye, eh, er, uhm, hm, hmm, ugh, argh, sir, maam, ma'am, boss, that was, it was, that's, thats, that is, it is, it's, its, was, were, those were, these are, these were, those are, they were, ones, one, number,
	tag, pig, pigs, lb, lbs, kg, record, reading, figure, weight, weighed, weighs, scale, said, says, had, put, wrote, told, typed, entered, told you, i said, i had, i put, i wrote, i told you, the last one, the last, last one, last, first, that one, this one, the one, you, by the way, way, btw, anyway, tho, though, for, of, in, on, at, to, and, but, from, it to, change, please, again, si, name, gave, i gave, entry, this is, i was, i am, afraid, forgive, forgive me, have, read, write, to write, not today, put in, lang, lng, only, just, straight, place, already, more like, like, tho, though, really, please`))

// excuseWords tell why the wrong value was told, and nothing else.
var excuseWords = setOfWords(split(`thumb, thumbs, finger, fingers, fat, slipped, slip, typo, typos, mistake, mistakes, misread, mistyped, forgot, i forgot, forgot to, glasses, specs, keyboard, key, keys, button, phone, autocorrect, auto correct, autocomplete, mixed up, mixed them up, mixed em up,
	confused, muddled, error, eyes, hands, gloves, apologies, pardon, beg, misspoke, i misspoke, mistaken, mishit, typing, wrong, miscounted, i miscounted, mismeasured, late, tired, head, brain, dark, handwriting, writing, notebook, notes, sevens, blame, duh, dumb, stupid, silly, daft, mind, excuse, my fault, my error, my bad, my mistake, wrong one, wrong pig, wrong number, i misread, spelling, smudged, upside, forgive, in error, afraid`))

// saidOfRecord are words for what was told last.
var saidOfRecord = setOfWords(split(`that, those, it, these, they, this, feed, refill, fill, weights, weighing, numbers, readings`))

// standsWords say of a value that it was right.
var standsWords = setOfWords(split(`stands, is right, is correct, right, correct, is ok, ok, is fine, fine, is good, good, unchanged, stays, stay, still stands, same, was right, was correct, was ok, was fine, are right, are fine, ok as is`))

// amendWithin is how many records back such a text may reach.
const amendWithin = 12

// longestAmend is how many items such a text has at most.
const longestAmend = 16

// amends is what such a text tells.
type amends struct {
	cue, excused, day bool
	led               bool // a word of correcting opens it or closes it
	was               bool // "that was yesterday"
	pigWas            bool // "winnie was yesterday"
	on                *model.Day
	minute            *int
	now               []item // what is right
	pigs, notPigs     []int16
	num, notNum       *item
	stays             []float64 // numbers that were right
	thing, notThing   *item
	level             bool // a part, full or empty
	notLevel          bool // "it wasn't full"
	product           string
	notProduct        bool
	kind              string
	words             []string // what else the record was told by
}

// amended reads a short text that puts one of the last records right.
func (r *reader) amended(reply bool) (Reading, bool) {
	if reply || len(r.c.Before) == 0 || len(r.items) > longestAmend || !r.mayAmend() {
		return Reading{}, false
	}
	a, ok := r.amends()
	if !ok || !a.cue && !a.excused && !a.was && !(a.pigWas && a.on != nil) && a.notNum == nil && len(a.notPigs) == 0 && a.notThing == nil && !a.notProduct && !a.theWas(r) {
		return Reading{}, false
	}
	if a.on != nil || a.minute != nil {
		if len(a.pigs) > 1 || a.num != nil || a.level || a.product != "" || !a.was && !a.led && !a.cue && !a.pigWas {
			return Reading{}, false
		}
		return r.amendedDay(a)
	}
	return r.amendedValue(a)
}

// mayAmend says that a word stands in the text without which none puts anything right.
func (r *reader) mayAmend() bool {
	for k := range r.items {
		if it := &r.items[k]; it.isAny(setOf(sNo, sNot)) || amendSigns[it.s] {
			return true
		}
	}
	return false
}

// amendSigns are all the words that may put something right.
var amendSigns = func() map[string]bool {
	all := setOfWords(split(`was, were, that was, it was, those were, these were, they were, these are, those are, took place, took, happened, yesterday's, yesterdays, instead of, rather than, hindi, di`))
	for _, words := range []map[string]bool{amendWords, excuseWords, standsWords} {
		for w := range words {
			all[w] = true
		}
	}
	return all
}()

// amends takes such a text apart; false where it says anything else.
func (r *reader) amends() (amends, bool) {
	var a amends
	denied := false
	for from := 0; from < len(r.items); {
		to := from + 1
		for to < len(r.items) && r.items[to].gap < gapComma && r.items[to].s != "but" && !r.dashBefore(to) {
			to++
		}
		if (from > 0 || to < len(r.items)) && r.excuse(from, to) && (from == 0 && !r.items[0].is(sNot) || from > 0 && !r.namesPig(from, to)) {
			a.excused = a.excused || r.plainExcuse(from, to)
			if from == 0 {
				a.cue, a.led = true, true
			}
			for k := from; k < to; k++ { // "i gave you winnie's name in error"
				if p := r.items[k].pig; p >= 0 {
					a.notPigs = append(a.notPigs, p)
				}
			}
			from = to
			continue
		}
		if from > 0 && r.tellsUndone(&a, from, to) {
			from = to
			continue
		}
		if r.saysItStands(&a, from, to) {
			from = to
			continue
		}
		if r.items[from].gap >= gapComma {
			denied = denied && !r.anyValue(from-1, from)
		}
		for k := from; k < to; k++ {
			it := &r.items[k]
			if it.quest {
				return a, false
			}
			s := it.s
			switch {
			case it.kind == itDay && a.notLevel:
				part, ok := r.slashPart(it)
				if !ok {
					return a, false
				}
				a.level, denied = true, false
				a.now = append(a.now, part)
			case it.kind == itDay && !it.day.every:
				if d, found := it.day.on(r.today, lookBack, r.dayFirst); found && !denied {
					a.on, a.day = &d, true
				} else if !denied {
					return a, false
				}
				denied = false
			case it.kind == itClock:
				today := a.on == nil || *a.on == r.today
				a.minute = model.Int(settleClock(it.clock, it.ampm, partNone, today, r.nowMin, lookBack))
			case it.pig >= 0:
				if denied {
					a.notPigs = append(a.notPigs, it.pig)
					denied = false
				} else if !slices.Contains(a.pigs, it.pig) {
					a.pigs = append(a.pigs, it.pig)
					a.now = append(a.now, *it)
				}
			case it.number() && !it.soft:
				if it.ord || it.rng || it.plus || it.minus {
					return a, false
				}
				switch {
				case denied && a.notNum == nil:
					a.notNum, denied = r.inUnit(it, a.num), false
				case a.num == nil && a.notNum == nil && k+2 < to && (r.items[k+1].s == "to" || r.items[k+1].s == "into") && r.items[k+2].number() && a.cue:
					a.notNum = it // "change the 75 to 71"
				case a.num == nil:
					a.num = it
					a.now = append(a.now, *it)
				case a.num.v == it.v && a.num.unit == it.unit:
				default:
					return a, false
				}
			case it.kind == itThing:
				switch {
				case denied:
					a.notThing, denied = it, false
				case a.thing == nil:
					a.thing = it
					a.now = append(a.now, *it)
				case a.thing.feeder == it.feeder && a.thing.barrel == it.barrel && a.thing.pen == it.pen:
				default:
					return a, false
				}
			case it.kind == itFrac:
				if !denied {
					a.level = true
					a.now = append(a.now, *it)
				}
				denied = false
			case it.kind != itWord && !it.soft:
				return a, false
			case s == "not" || s == "instead of" || s == "rather than" || s == "hindi" || s == "di":
				denied = true
			case s == "no" && a.notNum == nil && k+1 < len(r.items) && (a.num != nil && r.items[k+1].number() && r.heldBefore(r.inUnit(&r.items[k+1], a.num)) && !r.heldBefore(a.num) ||
				len(a.pigs) > 0 && r.items[k+1].pig >= 0 && r.heldBefore(&r.items[k+1]) && !r.heldBefore(&item{pig: a.pigs[0]})):
				denied, a.cue = true, true // "two bags, no one an a half"
			case amendWords[s] || it.is(sNo):
				a.cue = true
				a.led = a.led || k == 0 || k == len(r.items)-1 || k == to-1
			case s == "yesterday's" || s == "yesterdays":
				d := r.today - 1
				a.on, a.day, a.was = &d, true, true
			case s == "took place" || s == "happened" || s == "took" && k+1 < to && r.items[k+1].s == "place":
				a.was = true
			case s == "that was" || s == "those were" || s == "these are" || s == "these were" || s == "those are" || s == "they were" || s == "it was":
				a.was = true
			case (s == "wasn't" || s == "wasnt" || s == "isn't" || s == "isnt" || s == "was not" || s == "is not") && k+1 < to && r.items[k+1].isAny(setOf(sFull, sEmpty)):
				denied, a.cue, a.notLevel = true, true, true
			case it.isAny(setOf(sFull, sEmpty)) && !it.is(sFill):
				if denied && a.notLevel {
					denied = false
				}
				if !denied && !(a.notLevel && k > 0 && r.items[k-1].is(sNot)) {
					a.level = true
					a.now = append(a.now, *it)
				}
			case it.is(sProduct) && r.lex.of[s] != nil && r.lex.of[s].drug != "":
				if denied {
					denied, a.notProduct = false, true
				} else if a.product == "" {
					a.product = r.lex.of[s].drug
					a.now = append(a.now, *it)
				}
			case s != "put" && r.amendKind(&a, k):
				if a.kind == "girth" || a.kind == "sick" {
					a.now = append(a.now, *it)
				}
			case s == "was" || s == "were" || s == "are" || s == "is":
				a.cue = a.cue || k > 0 && k == len(r.items)-1 && saidOfRecord[r.items[k-1].s] // "hill barrel that was"
				a.pigWas = a.pigWas || k > 0 && r.items[k-1].pig >= 0
				a.was = a.was || k == 0 && s == "was" || k > 0 && (saidOfRecord[r.items[k-1].s] || r.items[k-1].isAny(setOf(sFeed, sWater, sBarrel, sFeeder, sMove, sWeigh)))
			case it.unit != 0 && it.unit.dim() == vessel, it.unit != 0 && it.unit.dim() == mass:
			case (s == "that" || s == "who" || s == "what" || s == "which") && k > 1 && k < 5 && r.items[k-1].pig >= 0 && a.was:
				a.cue = true // "it was otis that got wormed"
			case amendSmall[s], it.soft, it.isAny(setOf(sPronoun, sFiller, sIs)) && !it.isAny(setOf(sPlan, sIf, sHearsay, sForeign, sAskSure, sNot)):
			case len(s) > 3 && len(a.words) < 2 && r.toldLately(s):
				a.words = append(a.words, s)
			default:
				return a, false
			}
		}
		from = to
	}
	return a, len(a.now) > 0 || a.day || a.minute != nil
}

// slashPart reads as a part what looks like a date: "wasn't full, more like 3/4".
func (r *reader) slashPart(it *item) (item, bool) {
	over, under, ok := strings.Cut(r.text[it.from:it.to], "/")
	n, err1 := strconv.Atoi(over)
	d, err2 := strconv.Atoi(under)
	if !ok || err1 != nil || err2 != nil || n >= d || n <= 0 {
		return item{}, false
	}
	part := *it
	part.kind, part.v = itFrac, float64(n)/float64(d)
	return part, true
}

// toldLately says that one of the last texts has a word, or a longer one that begins
// so.
func (r *reader) toldLately(w string) bool {
	for n := range r.c.Before {
		if _, ok := r.recent(n); ok && r.toldWith(n, w) {
			return true
		}
	}
	return false
}

// toldWith says that the text of the n-th record has the word.
func (r *reader) toldWith(n int, w string) bool {
	return strings.Contains(strings.ToLower(r.c.Before[n].Text), w)
}

// dashBefore says that a dash parts item k from the one before.
func (r *reader) dashBefore(k int) bool {
	from, to := r.items[k-1].to, r.items[k].from
	return from < to && strings.HasPrefix(r.text[from:to], " -")
}

// anyValue says that a value stands in items[i:j].
func (r *reader) anyValue(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.pig >= 0 || it.kind == itThing || it.kind == itFrac || it.kind == itDay {
			return true
		}
	}
	return false
}

// excuse says that the clause items[i:j] but tells why a wrong value was told: "thumb
// slipped", "i forgot to send".
func (r *reader) excuse(i, j int) bool {
	if j-i > 12 {
		return false
	}
	told := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.quest || it.kind != itWord && !it.soft && it.pig < 0 || it.isAny(setOf(sSick, sFeed, sFill, sWater, sMove, sWorm, sTreat, sDied, sRemind)) && !it.is(sFiller) {
			return false
		}
		told = told || excuseWords[it.s] || excuseWords[firstWord(it.s)]
	}
	return told
}

// plainExcuse says that the clause items[i:j] tells of a slip, and not but of being tired.
func (r *reader) plainExcuse(i, j int) bool {
	for k := i; k < j; k++ {
		if w := r.items[k].s; (excuseWords[w] || excuseWords[firstWord(w)]) && !vagueExcuses[w] && !vagueExcuses[firstWord(w)] {
			return true
		}
	}
	return false
}

// vagueExcuses tell that something may have gone wrong, and of no slip.
var vagueExcuses = setOfWords(split(`tired, dark, late, head, brain, eyes, hands, mind, forgot, i forgot, forgot to, phone, writing, notes, notebook, gloves, glasses`))

// tellsUndone takes the clause items[i:j] that says of a pig that it was not done: "haven't
// done pearl" behind "that was gus".
func (r *reader) tellsUndone(a *amends, i, j int) bool {
	not, pig := false, int16(-1)
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && pig < 0:
			pig = it.pig
		case it.is(sNot) && it.s != "not":
			not = true
		case it.kind != itWord && !it.soft || it.pig >= 0 || it.quest || !it.isAny(setOf(sFiller, sPronoun, sWeigh, sDone, sUndone, sGirth, sNow)):
			return false
		}
	}
	if !not || pig < 0 {
		return false
	}
	a.notPigs = append(a.notPigs, pig)
	return true
}

// saysItStands takes the clause items[i:j] where it says that a value was right: "83 is
// right", "203 stands".
func (r *reader) saysItStands(a *amends, i, j int) bool {
	if !standsWords[r.items[j-1].s] {
		return false
	}
	var values []float64
	pig := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0:
			pig = true
		case it.kind == itNum && !it.soft:
			values = append(values, it.v)
		case it.kind == itQty:
			values = append(values, it.v)
		case it.kind == itWord && (standsWords[it.s] || amendSmall[it.s] || it.isAny(setOf(sFiller, sIs))):
		default:
			return false
		}
	}
	if !pig && len(values) == 0 {
		return false
	}
	a.cue, a.stays = true, append(a.stays, values...)
	return true
}

// amendKind notes which kind of record item k is a word of.
func (r *reader) amendKind(a *amends, k int) bool {
	it := &r.items[k]
	kind := ""
	switch {
	case it.is(sGirth) || it.is(sTape) || it.s == "around" && k > 0 && r.items[k-1].kind == itNum:
		kind = "girth"
	case it.is(sFence) && it.pig < 0:
		kind = "fence"
	case it.is(sSick) && it.pig < 0:
		kind = "sick"
	case it.is(sFeed) && !it.is(sFiller) || it.is(sFeeder) && !it.is(sBarrel):
		kind = "refill"
	case it.is(sBarrel) && !it.is(sFeeder) || it.is(sWater):
		kind = "water"
	case it.is(sWallow):
		kind = "wallow"
	case it.is(sWorm):
		kind = "worm"
	case it.isAny(setOf(sMove, sInUse)) && it.pen < 0:
		kind = "move"
	case it.is(sFill) && !it.is(sFull) || it.is(sPour):
		kind = "refill"
	case it.is(sMixed):
		kind = "mixed"
	case it.is(sPay):
		kind = "spend"
	case it.s == "temp" || it.s == "temperature" || it.is(sHigh):
		kind = "weather"
	case it.s == "weight" || it.s == "weighed" || it.s == "weighs" || it.s == "weigh":
		kind = "weigh"
	}
	if kind == "" {
		return false
	}
	if a.kind == "" || a.kind == kind {
		a.kind = kind
	}
	return true
}

// inUnit is a bare number in the unit of another amount.
func (r *reader) inUnit(it, as *item) *item {
	if as == nil || it.kind != itNum || as.kind != itQty {
		return it
	}
	in := *it
	in.kind, in.unit = itQty, as.unit
	return &in
}

// heldBefore says that a number or a pig was told lately.
func (r *reader) heldBefore(it *item) bool {
	for n := range r.c.Before {
		f, ok := r.recent(n)
		if ok && (it.pig >= 0 && slices.Contains(AnimalsOf(f), r.pigs[it.pig].Name) || it.number() && !it.soft && r.holdsAmount(n, it)) {
			return true
		}
	}
	return false
}

// recent is the fact of the n-th record before, where a text may still speak of it.
func (r *reader) recent(n int) (model.Fact, bool) {
	if n >= amendWithin || r.c.Now.Sub(r.c.Before[n].At) > 48*time.Hour {
		return nil, false
	}
	f, ok := r.c.Before[n].Entry.Act.(Fact)
	return f.Fact, ok
}

// holdsAmount says that the n-th record has the amount of an item, bare numbers being of
// the unit that its own text has.
func (r *reader) holdsAmount(n int, it *item) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	if it.kind == itNum && r.holdsNumber(f, it.v) {
		return true
	}
	in := r.inUnitOf(it, r.c.Before[n].Text)
	old, ok := r.amountOf(f, in)
	now, is := r.asAmount(f, in)
	return ok && is && math.Abs(old-now) < 0.006*math.Abs(old)
}

// amountOf is the amount of a record that one of the item's kind could take the place of.
func (r *reader) amountOf(f model.Fact, it *item) (float64, bool) {
	of := func(v *float64) (float64, bool) {
		if v == nil {
			return 0, false
		}
		return *v, true
	}
	switch v := f.(type) {
	case model.Weigh:
		switch {
		case it.qty(length):
			return v.GirthCm, v.GirthCm > 0
		case it.qty(mass), it.kind == itNum && v.GirthCm == 0:
			return v.WeightKg, v.WeightKg > 0
		case it.kind == itNum:
			return v.GirthCm, true
		}
	case model.Refill:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
	case model.FeedLevel:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
	case model.Stock:
		if it.qty(mass) || it.qty(vessel) || it.kind == itNum {
			return of(v.FeedKg)
		}
		if it.qty(money) {
			return of(v.Amount)
		}
	case model.Water:
		if it.qty(volume) || it.kind == itNum {
			return of(v.Litres)
		}
	case model.WallowFill:
		if it.qty(volume) {
			return of(v.Litres)
		}
	case model.Fence:
		if it.kind == itNum || it.qty(voltage) {
			return v.Kv, true
		}
	case model.Spend:
		if it.kind == itNum || it.qty(money) {
			return v.Amount, true
		}
	case model.Mixed:
		if it.kind == itNum || it.unit == unitBatch {
			return of(v.Batches)
		}
	case model.Weather:
		if it.kind == itNum || it.qty(temperature) {
			return of(v.HighC)
		}
	}
	return 0, false
}

// asAmount is what an item is in the unit that amountOf gives a record's amount in.
func (r *reader) asAmount(f model.Fact, it *item) (float64, bool) {
	switch v := f.(type) {
	case model.Weigh:
		switch {
		case it.qty(length):
			return it.si() * 100, true
		case it.qty(mass):
			return it.si(), true
		case v.GirthCm > 0:
			return r.lengthUnit().si(it.v) * 100, true
		}
		return r.massUnit().si(it.v), true
	case model.Refill, model.FeedLevel, model.Stock:
		if it.qty(money) {
			return it.v, true
		}
		return r.feedAmount(it)
	case model.Water, model.WallowFill:
		if it.kind == itNum {
			return r.volumeUnit().si(it.v), true
		}
		return it.si(), true
	case model.Fence:
		if it.v >= 500 {
			return it.v / 1000, true
		}
		return it.v, true
	case model.Weather:
		if it.kind == itQty {
			return it.si(), true
		}
		if r.units == model.Metric {
			return it.v, true
		}
		return unitF.si(it.v), true
	}
	return it.v, true
}

// couldPut says that the amount may have been meant where the n-th record has another:
// one not far from it, or with the same digits.
func (r *reader) couldPut(n int, it *item) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	in := r.inUnitOf(it, r.c.Before[n].Text)
	old, ok := r.amountOf(f, in)
	now, is := r.asAmount(f, in)
	if !ok || !is || now <= 0 || old <= 0 || now == old {
		return false
	}
	if _, weighed := f.(model.Weigh); weighed {
		return now > old/1.6 && now < old*1.6
	}
	return now > old/11 && now < old*11
}

// amendedDay puts the day or the hour of the latest text right, or of the latest record of
// the kind that is named.
func (r *reader) amendedDay(a amends) (Reading, bool) {
	var got Reading
	at := -1
	for n := range r.c.Before {
		f, ok := r.recent(n)
		if !ok || !backward(f) || at >= 0 && (r.c.Before[n].Text != r.c.Before[at].Text || !r.c.Before[n].At.Equal(r.c.Before[at].At)) {
			if at >= 0 || !a.names() {
				break
			}
			continue
		}
		if !r.speaksOf(&a, n) {
			continue
		}
		at = n
		rec := &r.c.Before[n]
		e := rec.Entry
		if a.on != nil {
			if *a.on > r.today {
				return Reading{}, false
			}
			e.On, e.Dated = *a.on, true
		}
		if a.minute != nil {
			e.Minute = a.minute
		}
		e = r.replaced(rec, e).Entries[0]
		e.From = rec.Entry.From // in the order they were told in
		got.Entries = append(got.Entries, e)
	}
	slices.SortStableFunc(got.Entries, func(x, y Entry) int { return x.From - y.From })
	for k := range got.Entries {
		got.Entries[k].From = 0
	}
	return got, at >= 0
}

// names says that the text names the record by its kind, a pig, a thing or a word.
func (a *amends) names() bool {
	return a.kind != "" || len(a.pigs) > 0 || a.thing != nil || len(a.words) > 0
}

// speaksOf says that the n-th record has all that the text names it by.
func (r *reader) speaksOf(a *amends, n int) bool {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	if a.kind != "" && !kindNamed(f, a.kind) || a.thing != nil && !holdsThing(r, f, a.thing) || len(a.pigs) > 0 && !slices.Contains(AnimalsOf(f), r.pigs[a.pigs[0]].Name) {
		return false
	}
	for _, w := range a.words {
		if !r.toldWith(n, w) {
			return false
		}
	}
	return true
}

// kindNamed says that a record is of the kind that a text names it by.
func kindNamed(f model.Fact, kind string) bool {
	is := string(f.Kind())
	switch kind {
	case "girth":
		return is == "weigh"
	case "refill":
		return is == "refill" || is == "feed_level" || is == "stock"
	case "worm":
		return is == "worm" || is == "treat"
	}
	return is == kind
}

// amendedValue puts a value of the record right that the text means, or asks where it
// may mean two of one text.
func (r *reader) amendedValue(a amends) (Reading, bool) {
	if len(a.now) == 0 || len(a.pigs) > 1 || a.num == nil && len(a.pigs) == 0 && a.thing == nil && !a.level && a.product == "" {
		return Reading{}, false
	}
	r.tagsMeant(&a)
	best, score, tied := -1, 0, []int(nil)
	for n := range r.c.Before {
		if _, ok := r.recent(n); !ok {
			continue
		}
		s := r.meansRecord(&a, n)
		switch {
		case s > score:
			best, score, tied = n, s, nil
		case s > 0 && s == score && r.c.Before[n].Text == r.c.Before[best].Text && r.c.Before[n].At.Equal(r.c.Before[best].At):
			tied = append(tied, n)
		}
	}
	sure := a.cue || a.excused || a.notProduct || score > couldBe && a.theWas(r)
	if best >= 0 && a.was && a.num != nil && (a.num.kind == itQty || a.num.v > hotterThanAnyDay || r.units == model.Metric && a.num.v > hotterThanAnyDayC) && r.c.Now.Sub(r.c.Before[best].At) < justTold {
		a.cue, sure = true, true // "it was 3 bags"
	}
	if best < 0 || score < held && !sure || score == couldBe && !a.cue && !a.excused {
		return Reading{}, false
	}
	if len(tied) > 0 {
		return r.askAmended(&a, append(tied, best))
	}
	e, ok := r.amend(&a, best)
	if !ok {
		return Reading{}, false
	}
	got := r.replaced(&r.c.Before[best], e)
	if other, also := r.amendedNumber(&a, best); also {
		return r.askAmends(other.Act.Intent(), "tag_or_weight", append(got.Entries, other))
	}
	return got, true
}

// askAmended asks which of several records of one text is meant.
func (r *reader) askAmended(a *amends, at []int) (Reading, bool) {
	slices.Sort(at)
	var es []Entry
	for _, n := range at {
		e, ok := r.amend(a, n)
		if !ok {
			return Reading{}, false
		}
		es = append(es, r.replaced(&r.c.Before[n], e).Entries[0])
	}
	f := es[0].Act.(Fact)
	if len(AnimalsOf(f.Fact)) == 0 {
		return Reading{}, false
	}
	c := Clarify{About: f.Intent(), Code: "which_animal"}
	for k, e := range es {
		old := AnimalsOf(r.c.Before[at[k]].Entry.Act.(Fact).Fact)
		if len(old) != 1 || len(c.Choices) == 4 {
			return Reading{}, false
		}
		c.Choices = append(c.Choices, Choice{Label: old[0], Entries: []Entry{e}})
	}
	return r.just(c), true
}

// askAmends asks which of several ways to put a record right is meant.
func (r *reader) askAmends(about, code string, es []Entry) (Reading, bool) {
	c := Clarify{About: about, Code: code}
	for _, e := range es {
		c.Choices = append(c.Choices, Choice{Entries: []Entry{e}})
	}
	return r.just(c), true
}

// amendedNumber is the weighing of the best record with the pig's own number as what it
// weighs, where a pig is named alone whose number may be a weight: "207, thumb slipped"
// behind "204 weighs 206".
func (r *reader) amendedNumber(a *amends, n int) (Entry, bool) {
	if a.num != nil || len(a.pigs) != 1 || len(a.notPigs) > 0 || len(a.stays) > 0 {
		return Entry{}, false
	}
	v, err := strconv.ParseFloat(r.pigs[a.pigs[0]].Name, 64)
	num := item{kind: itNum, v: v, pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1}
	if w, weighs := r.c.Before[n].Entry.Act.(Fact).Fact.(model.Weigh); err != nil || !weighs || len(w.Animals) != 1 || !r.couldPut(n, &num) {
		return Entry{}, false
	}
	with := amends{now: []item{num}}
	e, ok := r.amend(&with, n)
	if !ok {
		return e, false
	}
	return r.replaced(&r.c.Before[n], e).Entries[0], true
}

// tagsMeant takes small numbers for the pigs that are called by them where no record
// could have held them: "that was 4", "4 not 3".
func (r *reader) tagsMeant(a *amends) {
	if a.num == nil || a.num.kind != itNum || len(a.pigs) > 0 || a.notNum == nil && len(a.notPigs) == 0 && !a.cue && !a.was {
		return
	}
	for n := range r.c.Before {
		if _, ok := r.recent(n); ok && r.couldPut(n, a.num) {
			return
		}
	}
	pig := r.pigTagged(a.num.v)
	if pig < 0 {
		return
	}
	if a.notNum != nil {
		not := r.pigTagged(a.notNum.v)
		if not < 0 {
			return
		}
		a.notPigs, a.notNum = append(a.notPigs, not), nil
	}
	for k := range a.now {
		if a.now[k].from == a.num.from {
			it := &a.now[k]
			it.kind, it.pig = itName, pig
		}
	}
	a.pigs, a.num, a.cue = append(a.pigs, pig), nil, true
}

// pigTagged is the living pig that is called by a number, or the only one whose name ends
// in it; -1 if none.
func (r *reader) pigTagged(v float64) int16 {
	found := int16(-1)
	for p := range r.alive {
		name := r.pigs[p].Name
		if t, err := strconv.ParseFloat(lastWord(name), 64); err != nil || t != v {
			continue
		}
		if lastWord(name) == name {
			return int16(p)
		}
		if found >= 0 {
			return -1 // "red 3" or "blue 3"
		}
		found = int16(p)
	}
	return found
}

// hotterThanAnyDayC is a number that is no day's heat in degrees Celsius.
const hotterThanAnyDayC = 50

// theWas says that the text speaks of a value or a pig as told before: "the 75 was juno",
// "that brick weight was 71".
func (a *amends) theWas(r *reader) bool {
	return len(r.items) > 2 && (r.items[0].s == "the" && r.items[1].number() || r.items[0].s == "that" && r.items[1].pig >= 0 && a.was)
}

// How well a record is what a text means: it could be, it is told by its kind or by its
// pig, or it has the very value that was wrong or right.
const (
	couldBe = 1
	named   = 2
	held    = 3
)

// meansRecord says how well the n-th record is the one that the text puts right; 0 not at
// all.
func (r *reader) meansRecord(a *amends, n int) int {
	f := r.c.Before[n].Entry.Act.(Fact).Fact
	animals := AnimalsOf(f)
	score := 0
	if a.kind != "" {
		if !kindNamed(f, a.kind) {
			return 0
		}
		score = named
	}
	for _, w := range a.words {
		if !r.toldWith(n, w) {
			return 0
		}
		score = named
	}
	if a.product != "" {
		t, ok := treatmentOf(f)
		if !ok || t.Product == a.product || a.num != nil {
			return 0
		}
		score = max(score, couldBe)
		if a.notProduct {
			score = held
		}
	}
	for _, v := range a.stays {
		if !r.holdsNumber(f, v) {
			return 0
		}
		score = held
	}
	if a.notNum != nil {
		if !r.holdsAmount(n, a.notNum) {
			return 0
		}
		score = held
	}
	for _, p := range a.notPigs {
		if r.tagAsNumber(a, p, n) {
			score = held
			continue
		}
		if !slices.Contains(animals, r.pigs[p].Name) {
			return 0
		}
		score = held
	}
	if a.notThing != nil {
		if !holdsThing(r, f, a.notThing) {
			return 0
		}
		score = held
	}
	if a.thing != nil {
		switch {
		case !takesThing(f, a.thing):
			return 0
		case holdsThing(r, f, a.thing) && a.num == nil && !a.level:
			return 0 // it is there already
		case holdsThing(r, f, a.thing):
			score = max(score, named)
		case a.num != nil && !r.holdsAmount(n, a.num), a.level:
			return 0 // another thing with an amount of its own
		}
		score = max(score, couldBe)
	}
	if a.level {
		switch v := f.(type) {
		case model.Water, model.FeedLevel:
		case model.Refill:
			if a.thing == nil && !(a.notLevel && v.Full) {
				return 0
			}
		default:
			return 0
		}
		score = max(score, couldBe)
	}
	switch {
	case len(a.pigs) == 0 && a.num != nil:
		switch {
		case r.holdsAmount(n, a.num) && a.thing == nil:
			return 0
		case !r.couldPut(n, a.num) && score < held && a.thing == nil:
			return 0
		}
		return max(score, couldBe)
	case len(a.pigs) == 0:
		return score
	}
	name := r.pigs[a.pigs[0]].Name
	if len(animals) == 0 || animals[0] == model.All {
		return 0
	}
	has := slices.Contains(animals, name)
	switch {
	case a.num == nil && has:
		return 0
	case a.num == nil:
		if len(animals) > 1 && len(a.notPigs) == 0 {
			return 0
		}
		return max(score, couldBe)
	case r.holdsAmount(n, a.num) && !has && len(animals) == 1:
		return held // the 75 was juno's
	case has && len(animals) == 1 && !r.holdsAmount(n, a.num) && (score == held || r.couldPut(n, a.num)):
		return max(score, named)
	}
	return 0
}

// treatmentOf is what a worming or a treatment was with.
func treatmentOf(f model.Fact) (model.Treatment, bool) {
	switch v := f.(type) {
	case model.Worm:
		return v.Treatment, true
	case model.Treat:
		return v.Treatment, true
	}
	return model.Treatment{}, false
}

// tagAsNumber says that a pig that is denied is but a number that the n-th record has:
// "207 was 210 not 201".
func (r *reader) tagAsNumber(a *amends, p int16, n int) bool {
	v, err := strconv.ParseFloat(r.pigs[p].Name, 64)
	return err == nil && a.num != nil && r.holdsNumber(r.c.Before[n].Entry.Act.(Fact).Fact, v)
}

// holdsThing says that a record is of the feeder, the barrel or the pen of an item.
func holdsThing(r *reader, f model.Fact, it *item) bool {
	h := r.c.Herd
	switch v := f.(type) {
	case model.Refill:
		return it.feeder >= 0 && h.Feeders[it.feeder].Name == v.Feeder
	case model.FeedLevel:
		return it.feeder >= 0 && h.Feeders[it.feeder].Name == v.Feeder
	case model.Water:
		return it.barrel >= 0 && h.Barrels[it.barrel].Name == v.Barrel
	case model.Move:
		return it.pen >= 0 && h.Pens[it.pen].Name == v.Pen
	}
	return false
}

// takesThing says that a record is of a thing of the item's kind.
func takesThing(f model.Fact, it *item) bool {
	switch f.(type) {
	case model.Refill, model.FeedLevel:
		return it.feeder >= 0
	case model.Water:
		return it.barrel >= 0
	case model.Move:
		return it.pen >= 0
	}
	return false
}

// amend is the n-th record with what is right put in.
func (r *reader) amend(a *amends, n int) (Entry, bool) {
	rec := &r.c.Before[n]
	f := rec.Entry.Act.(Fact).Fact
	now := slices.Clone(a.now)
	if a.kind == "girth" {
		for k := range now {
			if now[k].kind == itNum {
				now[k].kind, now[k].unit = itQty, r.lengthUnit()
			}
		}
	}
	all := r.items
	r.items = now
	e, ok := r.patched(rec, f, 0, true)
	r.items = all
	if !ok {
		return e, false
	}
	if old := AnimalsOf(f); len(old) > 1 && len(a.pigs) == 1 && len(a.notPigs) == 1 {
		names := slices.Clone(old)
		for k := range names {
			if names[k] == r.pigs[a.notPigs[0]].Name {
				names[k] = r.pigs[a.pigs[0]].Name
			}
		}
		if with, is := withAnimals(e.Act.(Fact).Fact, names); is {
			e.Act = Fact{with}
		}
	}
	return e, true
}
