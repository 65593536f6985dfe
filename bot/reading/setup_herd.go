package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// settleHerdName takes a capital word behind "our herd is" for its name,
// whatever else it means: a herd may be called Dose.
func (r *reader) settleHerdName() {
	for k := range r.items {
		if !r.items[k].is(sHerd) {
			continue
		}
		n := k + 1
		for n < len(r.items) && r.items[n].gap < gapAnd && (r.items[n].is(sNamed) || r.items[n].s == "is" || r.items[n].s == "name") {
			n++
		}
		if n < len(r.items) && r.items[n].kind == itWord && r.items[n].capital && r.items[n].gap < gapAnd && r.items[n].pig < 0 {
			r.items[n].sense = setOf()
		}
	}
}

// fillZone reads the time zone by name, by place, or by the clock on the wall.
func (r *reader) fillZone(s span) {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.canon == zoneCanon {
			r.useAll(s)
			if it.s == zoneUnsure { // "western Kentucky"
				r.clarify(Clarify{About: "settings", Code: "zone_town", Want: "zone", Draft: []Entry{r.draft(Fact{model.Setting{Key: model.SetZone}}, s)}}, s)
				return
			}
			r.set(s, model.Setting{Key: model.SetZone, Text: it.s})
			return
		}
	}
	if !r.quoteHas(s, "it is", "it's", "its", "clock", "time", "now", "it", "says", "shows", "my time", "local time") {
		if r.hasDay(s) { // "I go out saturdays at 8"
			r.fillChore(s)
			return
		}
		r.idleSpan(s)
		return
	}
	if r.has(span{s.frame, r.clauseFrom(s.i), s.j}, sTell) || r.quoteHas(span{s.frame, r.clauseFrom(s.i), s.j}, "messages", "reminders", "nudges") {
		r.fillChore(s) // "send your messages at five in the afternoon from now on"
		return
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itClock {
			continue
		}
		guess := zoneForClock(r.c.Now, it.clock, r.units)
		if len(guess) == 0 && !it.ampm {
			guess = zoneForClock(r.c.Now, (it.clock+720)%1440, r.units)
		}
		r.useAll(s)
		if len(guess) == 0 {
			r.clarify(Clarify{About: "settings", Code: "zone_guess", Want: "zone", Draft: []Entry{r.draft(Fact{model.Setting{Key: model.SetZone}}, s)}}, s)
			return
		}
		r.set(s, model.Setting{Key: model.SetZone, Text: guess[0]})
		return
	}
	r.idleSpan(s)
}

func (r *reader) hasDay(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && it.day.form == dayWeekday {
			return true
		}
	}
	return false
}

func (r *reader) fillUnits(s span) {
	units := ""
	for k := s.i; k < s.j; k++ {
		switch it := &r.items[k]; {
		case it.unit != 0 && it.s == "in" && k+1 < len(r.items) && r.items[k+1].unit != 0: // "in kg"
			continue
		case it.kind == itWord && it.unit != 0 && k > s.i && deniers[r.items[k-1].s]: // "kg here, not pounds"
		case it.is(sUS):
			units = model.US
		case it.is(sMetric):
			units = model.Metric
		case it.kind == itWord && it.unit != 0 && units == "":
			units = model.US
			if it.unit.metric() {
				units = model.Metric
			}
		default:
			continue
		}
		r.items[k].used = true
	}
	if units == "" || !r.has(s, sUS) && !r.has(s, sMetric) && !r.has(s, sUnits) && !r.unitTalk(s) {
		r.idleSpan(s)
		return
	}
	r.useAll(s)
	r.set(s, model.Setting{Key: model.SetUnits, Text: units})
	r.unitsSaid(units)
}

// deniers stand before what is not used.
var deniers = setOfWords(split(`not, no, never, instead of, rather than`))

// unitsSaid lets units hold for the rest of the text.
func (r *reader) unitsSaid(units string) { r.units = units }

// fillHerd reads the herd's name: the words behind "herd", "called", "name".
func (r *reader) fillHerd(s span) {
	from := -1
	if h, n := r.find(s, sHerd), r.lastNaming(s); h >= 0 && n > h+1 && n+1 < s.j && r.onlySmall(h+1, n) { // "the herd is gonna be called rambler"
		r.useAll(span{s.frame, s.i, n + 1})
		s.i = n
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.is(sHerd) || it.is(sNamed) || from == k && (it.s == "is" || it.s == "the" || it.s == "to" || it.s == "it" || it.s == "will be" || it.s == "name" || it.s == "be") {
			if from >= 0 && from < k && it.capital {
				break
			}
			from = k + 1
			it.used = true
		} else if from < 0 && !it.is(sFiller) && !it.is(sPronoun) {
			break
		} else if from >= 0 {
			break
		}
	}
	if from < 0 || from >= s.j || !r.items[from].capital && r.find(s, sHerd) >= 0 {
		if name := r.nameBeforeHerd(s); name != "" {
			r.set(s, model.Setting{Key: model.SetHerd, Text: name})
			return
		}
	}
	if from < 0 || from >= s.j {
		r.idleSpan(s)
		return
	}
	to := from
	for to < s.j && (to == from || r.items[to].gap < gapComma) {
		if to > from && !r.items[to].capital && (r.items[to].s == "and" || r.items[to].is(sZone) && !r.items[to].is(sFiller) || r.items[to].gap == gapAnd && !r.items[to].capital || r.items[to].is(sPronoun) || r.items[to].s == "we" || r.items[to].s == "in") {
			break
		}
		if to > from && (r.items[to].gap == gapAnd && !r.items[to].capital || r.items[from].capital && r.nameOver(to)) {
			break
		}
		r.items[to].used = true
		to++
	}
	for to == s.j && to < len(r.items) && r.items[to].gap == gapNone && r.items[to].capital && r.items[to].kind == itWord && (to+1 >= len(r.items) || r.items[to+1].gap >= gapAnd) { // "Stony Run"
		r.items[to].used, r.skip = true, to
		to++
	}
	for n := from + 1; n < to; n++ { // "call the herd Burrow Bros from now on"
		if w := r.items[n].s; !r.items[n].capital && (w == "from" || w == "from now on" || w == "now" || w == "please" || w == "instead" || w == "thanks" || w == "for now" || w == "going forward") {
			to = n
		}
	}
	name := strings.Trim(strings.TrimSpace(r.text[r.items[from].from:r.items[to-1].to]), `"'“”.,`)
	if name == "" {
		r.idleSpan(s)
		return
	}
	r.set(s, model.Setting{Key: model.SetHerd, Text: name})
}

// lastNaming is the last word for naming of a span, -1 if there is none.
func (r *reader) lastNaming(s span) int {
	for k := s.j - 1; k >= s.i; k-- {
		if r.items[k].is(sNamed) && r.items[k].kind == itWord && !r.items[k].capital {
			return k
		}
	}
	return -1
}

// onlySmall says that items[i:j] are small words and ones of planning.
func (r *reader) onlySmall(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; !it.isAny(setOf(sFiller, sIs, sPlan, sTo)) && it.s != "be" {
			return false
		}
	}
	return true
}

func (r *reader) fillCurrency(s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.unit.dim() == money {
			r.useAll(s)
			r.set(s, model.Setting{Key: model.SetCurrency, Text: it.unit.name()})
			return
		}
	}
	for i := range r.toks {
		if t := &r.toks[i]; t.from >= r.items[s.i].from && (t.s == "€" || t.s == "$" || t.s == "£") {
			r.useAll(s)
			r.set(s, model.Setting{Key: model.SetCurrency, Text: units[r.currencySign(t.s)].name})
			return
		}
	}
	r.idleSpan(s)
}

// fillSize reads "a bag is 50 lb": what one measure holds.
func (r *reader) fillSize(s span) {
	name := ""
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.unit != 0 && it.unit.dim() == vessel && it.unit != unitBale:
			name = it.unit.name()
			it.used = true
		case it.s == "bag is", it.s == "bag weighs":
			name = unitBag.name()
			it.used = true
		}
		if it.qty(mass) && name != "" {
			it.used = true
			r.setUp.sizes = setSize(r.setUp.sizes, name, it.si())
			r.set(s, model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: name, FeedKg: model.Float(it.si())}})
			name = ""
		} else if it.kind == itNum && !it.soft && (name == unitBag.name() || name == "sack") && it.v < fewestInBag {
			r.idleSpan(s) // "the sacks were three" counts them
			return
		} else if it.kind == itNum && !it.soft && name != "" {
			kg := r.massUnit().si(it.v)
			it.used = true
			r.setUp.sizes = setSize(r.setUp.sizes, name, kg)
			r.set(s, model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: name, FeedKg: model.Float(kg)}})
			name = ""
		}
	}
	if name != "" { // "50 lb bags"
		if k := r.firstQty(s, mass); k >= 0 {
			kg := r.items[k].si()
			r.items[k].used = true
			r.setUp.sizes = setSize(r.setUp.sizes, name, kg)
			r.set(s, model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: name, FeedKg: model.Float(kg)}})
			return
		}
		r.idleSpan(s)
	}
}

// fewestInBag is the least bare number that may be what a bag holds, in either unit.
// Common practice, no source.
const fewestInBag = 10

func (r *reader) fillMute(s span) {
	about := r.aboutIn(s)
	if len(about) > 1 {
		about = slices.DeleteFunc(about, func(a string) bool { return a == "own" }) // "no more worming reminders"
	}
	r.useAll(s)
	if len(about) == 0 {
		if k := r.firstQty(s, hours); k >= 0 { // "dont bug me for like 3 hours"
			r.emit(Snooze{Hours: int(r.items[k].si() + 0.5)}, s)
			return
		}
		r.emit(Snooze{Stop: true}, s)
		return
	}
	for _, a := range about {
		r.set(s, model.Setting{Key: model.SetMute, Text: a})
	}
}

// nameBeforeHerd is the capitalised name right before the word for the herd:
// "the Larkspur herd".
func (r *reader) nameBeforeHerd(s span) string {
	k := r.find(s, sHerd)
	from := k
	for from > 0 && r.items[from].gap == gapNone && r.items[from-1].kind == itWord && r.items[from-1].capital && !stopWords[r.items[from-1].s] {
		from--
		r.items[from].used = true
	}
	return r.quote(from, k)
}
