package reading

import (
	"slices"
	"strconv"

	"troughbell/model"
)

// What a person puts right some texts later names the record that it means: by the
// wrong value, "juno not brick", by the right one, "the 75 was juno", by what it is of,
// "the fence was 5.7 i mean", or but by the kind of value: "small hopper i meant" is of
// feed, whatever was told last.

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
	byTag             bool     // "cant read these tags"
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
	if got, ok := r.amendedBoth(&a); ok {
		return got, true
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

// amends takes such a text apart; false where it says anything else.
func (r *reader) amends() (amends, bool) {
	var a amends
	denied := false
	for from := 0; from < len(r.items); {
		to := from + 1
		for to < len(r.items) && r.items[to].gap < gapComma && r.items[to].s != "but" && !r.dashBefore(to) && !r.cannotRead(from, to) {
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
		if from > 0 && len(a.now) > 0 && (a.led || sorryWords[r.items[from].s]) && r.mereReason(from, to) {
			a.byTag = a.byTag || saysAny(r.said(span{0, from, to}), earTagWords)
			a.cue, a.led = true, true // "make that four, one was hiding under the tarp", "sixteen, sorry my english"
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
			case s == "not" && k+1 < to && r.items[k+1].isAny(setOf(sFull, sEmpty)) && !r.items[k+1].is(sFill):
				denied, a.cue, a.notLevel = true, true, true // "not full, a third"
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
			case (s == "came to" || s == "cost" || s == "it cost" || it.isAny(setOf(sBuy, sPay))) && r.spentLast():
				a.kind = "spend"
				a.cue = a.cue || s == "came to"
			case s == "only" && a.was: // "it was only 100"
				a.cue = true
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

// amendedBoth puts a value right and the day of the record with it: "the straw came to $27,
// and it was purchased on Friday".
func (r *reader) amendedBoth(a *amends) (Reading, bool) {
	if a.on == nil || a.num == nil || !a.cue || *a.on > r.today || a.minute != nil {
		return Reading{}, false
	}
	got, ok := r.amendedValue(*a)
	if !ok || len(got.Entries) != 1 {
		return Reading{}, false
	}
	if f, is := got.Entries[0].Act.(Fact); !is || !backward(f.Fact) {
		return Reading{}, false
	}
	got.Entries[0].On, got.Entries[0].Dated = *a.on, true
	return got, true
}

// amendedValue puts a value of the record right that the text means, or asks where it
// may mean two of one text.
func (r *reader) amendedValue(a amends) (Reading, bool) {
	if len(a.now) == 0 || len(a.pigs) > 1 || a.num == nil && len(a.pigs) == 0 && a.thing == nil && !a.level && a.product == "" {
		return Reading{}, false
	}
	r.pensMeant(&a)
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
	if a.byTag || a.num != nil || len(a.pigs) != 1 || len(a.notPigs) > 0 || len(a.stays) > 0 {
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

// theWas says that the text speaks of a value or a pig as told before: "the 75 was juno",
// "that brick weight was 71".
func (a *amends) theWas(r *reader) bool {
	return len(r.items) > 2 && (r.items[0].s == "the" && r.items[1].number() || r.items[0].s == "that" && r.items[1].pig >= 0 && a.was)
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
