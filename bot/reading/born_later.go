package reading

import (
	"slices"
	"strconv"
	"strings"

	"troughbell/model"
)

// When pigs were born is told by some only after they came: "they were born around march
// 8", "nine weeks old the man said". It completes or corrects the arrival, and never moves
// the day of it.

// bornLater reads such a text.
func (r *reader) bornLater() (Reading, bool) {
	if r.alive == 0 || len(r.items) > bornWords || !r.onlyBirth() {
		return Reading{}, false
	}
	rec, a, ok := r.arrivalOfBirth()
	if !ok {
		return Reading{}, false
	}
	on, ok := r.birthTold(rec.Entry.On)
	if !ok || on > rec.Entry.On {
		return Reading{}, false
	}
	a.Born = &on
	if a.Check() != nil {
		return Reading{}, false
	}
	e := rec.Entry
	e.Act = Fact{a}
	return r.replaced(rec, e), true
}

// bornWords is how many words such a text has at most. Common practice, no source.
const bornWords = 14

// onlyBirth says that the text tells a birth or an age and nothing else that is kept.
func (r *reader) onlyBirth() bool {
	birth := false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.quest && !it.is(sBorn) && it.kind == itWord && it.isAny(setOf(sAsk, sAskSure)):
			return false
		case it.is(sBorn) && it.pig < 0, it.kind == itQty && it.unit.dim() == days && r.oldBehind(k):
			birth = true
		case it.pig >= 0, it.kind == itDay, it.kind == itFrac, it.kind == itWord && it.isAny(setOf(sFiller, sAll, sBoth, sPigs, sPronoun, sAbout, sIs, sHearsay, sForeign, sAge, sOn, sAt, sAnd, sGave, sYoung, sBarrow, sGilt)):
		case it.kind == itQty && it.unit.dim() == days, it.kind == itNum && int(it.v) == r.alive && k > 0 && r.items[k-1].is(sAll):
		case it.kind == itWord && it.sense.empty() && it.unit == 0:
		default:
			return false
		}
		if it.pig < 0 && it.isAny(setOf(sNot, sPlan, sIf, sSick, sWorm, sTreat, sNo)) && !it.isAny(setOf(sFiller, sBorn)) {
			return false
		}
	}
	return birth
}

// oldBehind says that the weeks at item k are an age: "9 weeks old".
func (r *reader) oldBehind(k int) bool {
	return k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].is(sAge) || firstWord(r.items[k+1].s) == "old")
}

// arrivalOfBirth is the arrival that a birth belongs to: of the pigs named, else the one
// whose birth is not known, else the only one.
func (r *reader) arrivalOfBirth() (*Recorded, model.Arrive, bool) {
	var named []string
	for k := range r.items {
		if p := r.items[k].pig; p >= 0 {
			named = append(named, r.pigs[p].Name)
		}
	}
	var found *Recorded
	var of model.Arrive
	arrivals, unborn := 0, 0
	for rec, a := range r.arrivalsBefore() {
		arrivals++
		switch {
		case len(named) > 0:
			if len(named) != a.Count || slices.ContainsFunc(named, func(n string) bool { return !slices.Contains(a.Animals, n) }) {
				continue
			}
			return rec, a, true
		case a.Born == nil:
			if unborn++; unborn == 1 {
				found, of = rec, a
			}
		case found == nil && unborn == 0:
			found, of = rec, a
		}
	}
	return found, of, found != nil && (unborn == 1 || unborn == 0 && arrivals == 1)
}

// birthTold is the day of birth that the text tells, of pigs that came on a day.
func (r *reader) birthTold(came model.Day) (model.Day, bool) {
	var day model.Day
	told := 0
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itDay && !it.day.every:
			if d, ok := it.day.on(came, lookBack, r.dayFirst); ok {
				day = d
				told++
			}
		case it.kind == itFrac:
			if d, ok := r.slashedDay(k, came); ok {
				day = d
				told++
			}
		case it.kind == itQty && it.unit.dim() == days && r.oldBehind(k) && !it.rng:
			base := r.today
			if r.quoteHas(span{fArrive, 0, len(r.items)}, "when we got", "when they came", "when i got", "when they arrived") {
				base = came
			}
			day = base - model.Day(it.si()+0.5)
			told++
		}
	}
	return day, told == 1
}

// slashedDay reads "3/8", which looks like a part of something, as the latest such day.
func (r *reader) slashedDay(k int, came model.Day) (model.Day, bool) {
	a, b, ok := strings.Cut(r.quote(k, k+1), "/")
	if !ok {
		return 0, false
	}
	m, err1 := strconv.Atoi(a)
	d, err2 := strconv.Atoi(b)
	if err1 != nil || err2 != nil {
		return 0, false
	}
	return (&dayExpr{form: daySlash, a: m, b: d}).on(came, lookBack, r.dayFirst)
}
