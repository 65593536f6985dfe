package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// longestAgain is how many items a text has at most that tells the same once more.
const longestAgain = 14

// again is what such a text says.
type again struct {
	same, too bool // "the same again", "brick too"
	once      bool // "again", a day: it was done anew
	as        *model.Day
	pigs      []int16
	near      bool
	things    []item
	on        model.Day
	minute    *int
	dated     bool
}

// toldAgain reads a text that tells once more what was told before: of today, "same again
// tonight", of another feeder or barrel, "the same in the gray one", or of another pig,
// "and brick too".
func (r *reader) toldAgain() (Reading, bool) {
	if r.part || r.c.Pending != nil || len(r.c.Before) == 0 || len(r.items) < 2 && !r.andAhead() {
		return Reading{}, false
	}
	a, ok := r.saysAgain()
	if !ok {
		return Reading{}, false
	}
	lately := r.c.Now.Sub(r.c.Before[0].At) <= justTold
	switch {
	case len(a.pigs) > 0 && len(a.things) == 0 && lately:
		return r.pigsToo(&a)
	case len(a.things) == 1 && len(a.pigs) == 0 && lately:
		return r.thingToo(&a)
	case len(a.pigs) == 0 && len(a.things) == 0 && a.same && (a.once || a.as != nil):
		return r.sameOnceMore(&a)
	}
	return Reading{}, false
}

// saysAgain takes such a text apart; false where it says anything else.
func (r *reader) saysAgain() (again, bool) {
	a := again{on: r.today}
	day, minute, dated := r.when(span{0, 0, len(r.items)}, lookBack)
	a.minute = minute
	said := r.said(span{0, 0, len(r.items)})
	a.too = saysAny(said, tooPhrases) || r.andAhead()
	a.same = saysAny(said, asMuchPhrases)
	end := 0
	for end < len(r.items) && (end == 0 || r.items[end].gap < gapComma || onceMoreWords[r.items[end].s] || r.items[end].isAny(setOf(sDitto, sAnd))) {
		end++
	}
	if end > longestAgain || end < len(r.items) && !r.idleTail(end) && !r.onlyAgain(end) {
		return a, false
	}
	for k := 0; k < end; k++ {
		it := &r.items[k]
		switch s := it.s; {
		case it.quest:
			return a, false
		case it.pig >= 0:
			a.pigs, a.near = append(a.pigs, it.pig), a.near || it.near
		case it.kind == itThing && it.pen < 0:
			a.things = append(a.things, *it)
		case it.kind == itDay && !it.day.every:
			if k > 0 && (r.items[k-1].s == "as" || strings.HasSuffix(r.items[k-1].s, " as") || r.items[k-1].s == "like") {
				a.as = &day
				continue
			}
			a.once, a.dated, a.on = true, dated, day
		case it.kind == itClock:
		case it.is(sDitto) || s == "likewise":
			a.same = true
		case onceMoreWords[s]:
			a.once = a.once || s == "again"
		case it.isAny(setOf(sNot, sPlan, sIf, sHearsay, sForeign, sAskSure)):
			return a, false
		case it.soft, onceMoreSmall[s], it.kind == itWord && it.isAny(setOf(sFiller, sPronoun, sGave, sReceived, sDone, sFeeder, sBarrel, sAnd)):
		default:
			return a, false
		}
	}
	return a, a.same || a.too
}

// idleTail says that the text from item k on names no value and nothing of the trade.
func (r *reader) idleTail(k int) bool {
	for ; k < len(r.items); k++ {
		it := &r.items[k]
		if it.quest || it.kind != itWord && !it.soft || it.pig >= 0 || it.isAny(tradeSenses) && !it.is(sFiller) {
			return false
		}
	}
	return true
}

// onlyAgain says that what stands behind the first clause but says it once more: "same day
// same product".
func (r *reader) onlyAgain(k int) bool {
	for ; k < len(r.items); k++ {
		if it := &r.items[k]; !it.is(sDitto) && !it.is(sFiller) && it.s != "product" && it.s != "dose" && it.s != "stuff" && it.kind != itDay {
			return false
		}
	}
	return true
}

// toldLast are the facts of the message before.
func (r *reader) toldLast() []*Recorded {
	var out []*Recorded
	for k := range r.c.Before {
		if r.c.Before[k].Text != r.c.Before[0].Text || !r.c.Before[k].At.Equal(r.c.Before[0].At) {
			break
		}
		if _, ok := r.c.Before[k].Entry.Act.(Fact); ok {
			out = append(out, &r.c.Before[k])
		}
	}
	return out
}

// pigsToo tells of other pigs what the message before told of some.
func (r *reader) pigsToo(a *again) (Reading, bool) {
	last := r.toldLast()
	if len(last) != 1 {
		return Reading{}, false
	}
	e := last[0].Entry
	f := e.Act.(Fact).Fact
	var names []string
	for _, p := range a.pigs {
		if n := r.pigs[p].Name; !slices.Contains(names, n) && !slices.Contains(AnimalsOf(f), n) && int(p) < r.alive {
			names = append(names, n)
		}
	}
	if len(names) == 0 || len(AnimalsOf(f)) == 0 || AnimalsOf(f)[0] == model.All {
		return Reading{}, false
	}
	switch v := f.(type) {
	case model.Weigh:
		if !a.same {
			return Reading{}, false // too heavy, or as heavy
		}
	case model.Worm, model.Treat, model.Sick:
	case model.Move:
		if v.Pen == "" {
			return Reading{}, false
		}
	case model.Alarm:
		if v.What != model.AlarmOut && v.What != model.AlarmDown {
			return Reading{}, false
		}
	default:
		return Reading{}, false
	}
	with, ok := withAnimals(f, names)
	if !ok {
		return Reading{}, false
	}
	e.Act, e.Replace, e.From, e.To = Fact{with}, "", 0, len(r.text)
	if a.dated {
		e.On, e.Dated = a.on, true
	}
	e.Minute = a.minute
	if about := string(f.Kind()); a.near && dear(about) { // a drug never rests on a near-miss name
		return r.just(Clarify{About: about, Code: "near_name", Names: names, Draft: []Entry{e}, Choices: []Choice{{Code: "yes", Entries: []Entry{e}}, {Code: "no"}}}), true
	}
	return Reading{Entries: []Entry{e}}, true
}

// thingToo tells of another feeder or barrel what the message before told of one.
func (r *reader) thingToo(a *again) (Reading, bool) {
	last := r.toldLast()
	it := &a.things[0]
	if len(last) != 1 {
		return Reading{}, false
	}
	e := last[0].Entry
	f := e.Act.(Fact).Fact
	if !takesThing(f, it) || holdsThing(r, f, it) {
		return Reading{}, false
	}
	h := r.c.Herd
	switch v := f.(type) {
	case model.Refill:
		v.Feeder = h.Feeders[it.feeder].Name
		e.Act = Fact{v}
	case model.FeedLevel:
		v.Feeder = h.Feeders[it.feeder].Name
		e.Act = Fact{v}
	case model.Water:
		v.Barrel = h.Barrels[it.barrel].Name
		e.Act = Fact{v}
	}
	e.Replace, e.From, e.To, e.Minute = "", 0, len(r.text), a.minute
	if a.dated {
		e.On, e.Dated = a.on, true
	}
	return Reading{Entries: []Entry{e}}, true
}

// sameOnceMore tells once more what was poured, filled or mixed last.
func (r *reader) sameOnceMore(a *again) (Reading, bool) {
	var got Reading
	at := -1
	for n := range r.c.Before {
		f, ok := r.recent(n)
		rec := &r.c.Before[n]
		if at >= 0 && (rec.Text != r.c.Before[at].Text || !rec.At.Equal(r.c.Before[at].At)) {
			break
		}
		if !ok || a.as != nil && rec.Entry.On != *a.as {
			continue
		}
		switch v := f.(type) {
		case model.Refill, model.WallowFill, model.Mixed:
		case model.Water:
			if v.Seen {
				continue
			}
		default:
			continue
		}
		at = n
		e := rec.Entry
		e.On, e.Dated, e.Minute, e.Replace = a.on, a.dated, a.minute, ""
		if a.as != nil {
			e.On, e.Dated = r.today, false
		}
		got.Entries = append(got.Entries, e)
	}
	slices.SortStableFunc(got.Entries, func(x, y Entry) int { return x.From - y.From })
	for k := range got.Entries {
		got.Entries[k].From, got.Entries[k].To = 0, len(r.text)
	}
	return got, at >= 0
}

// onceMoreWords say that something was done once more, or of another one too.
var onceMoreWords = setOfWords(split("again, too, also, as well, aswell, so did, so has, so is, and also, also the, plus, and"))

// Of another one too, and as much as before.
var (
	tooPhrases    = phrasesOf("too, also, as well, aswell, so did, so has, so is, so does")
	asMuchPhrases = phrasesOf("as much again, as much")
)

// onceMoreSmall may stand beside them.
var onceMoreSmall = setOfWords(split("so, is, did, has, got, had, received, has received, got it, had it, it, that, amount, thing, stuff, product, dose, as, well, like, much, for, with, in, into, done, oh, ah, yes, please, dinner, supper, feed, feeding, breakfast, tonight, did the, got some, now, one, won, gave them, gave em, gave"))
