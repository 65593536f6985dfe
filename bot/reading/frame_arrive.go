package reading

import (
	"strings"

	"troughbell/model"
)

// fillArrive reads pigs that came: how many, their names, sexes, weight, birth,
// in one group or several.
func (r *reader) fillArrive(s span) {
	if r.onlyMeasured(s) {
		r.useAll(s)
		r.none(NoneNoPigs, s)
		return
	}
	s.i = r.namesBefore(s)
	groups := r.arrivalGroups(s)
	for _, g := range groups {
		r.arrival(g, s)
	}
}

// namesBefore is where the names begin that stand before the word of their
// coming: "June, Olga and Bert came".
func (r *reader) namesBefore(s span) int {
	at := s.i
	if s.i >= s.j || !r.items[s.i].is(sArrive) || r.items[s.i].gap >= gapStop {
		return s.i
	}
	for k := s.i - 1; k >= 0 && r.items[k+1].gap < gapStop; k-- {
		it := &r.items[k]
		if it.used || it.kind != itWord && it.kind != itName || it.kind == itWord && stopWords[it.s] || !r.idleAt(k) {
			break
		}
		at = k
	}
	return at
}

func (r *reader) arrival(s, whole span) {
	a := model.Arrive{}
	hs := r.heads(s)
	total := 0
	used := map[int]bool{}
	for n, h := range hs {
		used[h.k] = true
		r.items[h.k].used = true
		if h.sexed || total == 0 {
			if h.sexed && n > 0 && !hs[0].sexed {
				continue // a part of the whole that was counted first
			}
			total += h.n
		} else if n > 0 && !h.sexed && !r.ofWhole(h.k) {
			total = max(total, h.n)
		}
	}
	names := r.arrivalNames(s, total)
	a.Count = total
	if a.Count == 0 {
		a.Count = len(names)
	}
	if a.Count == 0 && r.quoteHas(s, "a", "another") && r.has(s, sPigs) {
		a.Count = 1
	}
	if len(names) > a.Count {
		if total > 0 {
			names = names[:a.Count]
		} else {
			a.Count = len(names)
		}
	}
	if a.Count == 0 {
		r.idleSpan(whole)
		return
	}
	if total == 0 && r.items[s.i].is(sNamed) && !r.has(s, sPigs) && len(r.c.Herd.Animals) == 0 && len(names) > 0 && len(names) == names[len(names)-1].k-names[0].k+1 && r.noGaps(names) {
		r.fillHerd(whole) // "name: Willow Bend"
		return
	}
	on, minute, dated := r.arrivalDay(s)
	own := r.ownWeights(s, names, used)
	r.arrivalNumbers(&a, s, used, on)
	if len(own) > 1 {
		a.WeightKg = nil // each has its own
	}
	a.Sexes = r.arrivalSexes(s, names, a.Count)
	for _, n := range names {
		a.Animals = append(a.Animals, n.name)
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itNum && it.v == float64(a.Count) {
			it.used = true
		}
		if r.items[k].isAny(setOf(sArrive, sPigs, sNamed, sBorn, sAge, sBarrow, sGilt, sBoar, sSow, sEach, sYoung, sWeigh, sAbout, sRest, sMore)) {
			r.items[k].used = true
		}
	}
	if a.Check() != nil {
		r.idleSpan(whole)
		return
	}
	if day, coming := r.stillComing(s); coming {
		r.emitOn(None{Reason: NoneFuture, Coming: &model.Expected{Day: day, Count: a.Count}}, s, r.today, nil, false)
		return
	}
	if r.nameTaken(a, own, Entry{On: on, Minute: minute, Dated: dated}, s) {
		return
	}
	if e := r.emitOn(Fact{a}, s, on, minute, dated); a.WeightKg != nil {
		told := *e
		r.out = r.out[:len(r.out)-1]
		if !r.doubtWeight(told, a) {
			r.out = append(r.out, told)
		}
	}
	for k := s.i; k < s.j; k++ { // "3 pigs, 50 lb each, 240 bucks"
		if it := &r.items[k]; it.qty(money) && !it.used {
			it.used = true
			r.emitOn(Fact{model.Spend{Amount: it.v, Currency: it.unit.name(), What: "pigs"}}, s, on, nil, dated)
		}
	}
	for _, w := range own {
		if len(own) < 2 || w.Check() != nil {
			continue
		}
		if fits, _ := r.fitsArrival(&a, w.WeightKg, on); !fits {
			e := Entry{Act: Fact{w}, On: on, Dated: dated}
			q := []model.Quantity{{Value: w.WeightKg, Unit: model.Kilograms}}
			r.emitOn(Clarify{
				About: "weigh", Code: "implausible_weight", Names: w.Animals, Q: q, Want: "weight_kg", Draft: []Entry{e},
				Choices: []Choice{{Code: "as_said", Q: q, Entries: []Entry{e}}, {Code: "nothing"}},
			}, s, on, nil, dated)
			continue
		}
		r.emitOn(Fact{w}, s, on, nil, dated)
	}
}

// weightsInOrder reads as many weights in a row as there are names: "Ruby, Pearl
// and Opal, weighing 19.5, 21 and 20 kg".
func (r *reader) weightsInOrder(s span, names []newPig) ([]model.Weigh, []int) {
	n := len(names)
	for k := s.i; k+n <= s.j && n > 1; k++ {
		unit := r.massUnit()
		fits := true
		for x := k; x < k+n && fits; x++ {
			it := &r.items[x]
			fits = (it.kind == itNum && !it.soft && !it.ord || it.qty(mass)) && it.v >= 3 && (x == k || it.gap >= gapAnd && it.gap <= gapComma)
			if it.qty(mass) {
				unit = it.unit
			}
		}
		if !fits || k+n < s.j && r.items[k+n].number() && r.items[k+n].gap < gapStop {
			continue
		}
		var out []model.Weigh
		var at []int
		for x := range n {
			out = append(out, model.Weigh{Animals: []string{names[x].name}, WeightKg: unit.si(r.items[k+x].v), By: model.ByScale})
			at = append(at, k+x)
		}
		return out, at
	}
	return nil, nil
}

// ownWeights reads a weight said right behind a pig's name: "Hank 205 lb, Ivy
// 195". The items it takes are marked.
func (r *reader) ownWeights(s span, names []newPig, taken map[int]bool) []model.Weigh {
	var out []model.Weigh
	var at []int
	unit := unitID(0)
	for k := s.i; k+1 < s.j; k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.kind != itWord && it.kind != itName && it.kind != itThing || n.gap > gapNone && !(it.label && n.gap == gapComma) || n.kind != itNum && !n.qty(mass) || n.soft || n.ord || n.v < 3 {
			continue
		}
		for _, p := range names {
			if !strings.EqualFold(p.name, r.nameText(k)) {
				continue
			}
			if n.qty(mass) {
				unit = n.unit
			}
			u := unit
			if u == 0 {
				u = r.massUnit()
			}
			out = append(out, model.Weigh{Animals: []string{p.name}, WeightKg: u.si(n.v), By: model.ByScale})
			at = append(at, k+1)
			break
		}
	}
	if len(out) == 0 {
		out, at = r.weightsInOrder(s, names)
	}
	if len(out) > 1 {
		for _, k := range at {
			r.items[k].used, taken[k] = true, true
		}
	}
	return out
}

// arrivalDay is the day they came: a day that is not a birth.
func (r *reader) arrivalDay(s span) (model.Day, *int, bool) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every || r.bornBefore(k, s) {
			continue
		}
		if d, ok := it.day.on(r.today, lookBack, r.dayFirst); ok {
			it.used = true
			return d, nil, true
		}
	}
	if r.day.ok {
		return r.day.day, nil, r.day.dated
	}
	return r.today, nil, false
}

// bornBefore says that the day at k is a birth.
func (r *reader) bornBefore(k int, s span) bool {
	for n := k - 1; n >= s.i && n >= k-8; n-- {
		it := &r.items[n]
		if it.is(sBorn) {
			return true
		}
		if it.gap >= gapStop && n < k-1 || it.is(sArrive) && (!it.is(sFiller) || n == k-1) {
			return false
		}
	}
	return k+1 < s.j && r.items[k+1].is(sBorn) && r.items[k+1].gap == gapNone
}

// arrivalNumbers reads the weight each and the birth or age.
func (r *reader) arrivalNumbers(a *model.Arrive, s span, used map[int]bool, on model.Day) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		prev := &item{}
		if k > s.i {
			prev = &r.items[k-1]
		}
		switch {
		case it.kind == itDay && r.bornBefore(k, s):
			if d, ok := it.day.on(on, lookBack, r.dayFirst); ok {
				if d > on {
					if y, m, dd := d.Date(); it.day.c == 0 {
						d = model.DateDay(y-1, m, dd)
					}
				}
				a.Born = &d
			}
		case it.qty(days) && (k+1 < s.j && r.items[k+1].is(sAge) || k+1 < s.j && r.items[k+1].s == "old" || prev.s == "age" || prev.s == "at" || prev.is(sAge) || r.has(s, sAge) && r.items[k].unit != unitDay || r.ageOfYoung(k, s)):
			w := it.v
			if it.rng {
				w = (it.v + it.v2) / 2
			}
			perUnit := it.unit.si(1)
			if it.unit == unitMonth {
				perUnit = 30.4
			}
			d := on - model.Day(w*perUnit+0.5)
			a.Born = &d
		case it.qty(mass) && a.WeightKg == nil && !used[k]:
			v := it.v
			if it.rng {
				v = (it.v + it.v2) / 2
			}
			kg := it.unit.si(v)
			if (prev.is(sGain) || r.quoteHas(span{s.frame, r.clauseFrom(k), r.clauseEnd(k)}, "total", "together", "altogether") && !r.paidIn(k)) && a.Count > 1 {
				kg /= float64(a.Count)
			}
			a.WeightKg = model.Float(kg)
		case it.kind == itNum && !it.soft && !it.ord && !used[k] && a.WeightKg == nil && it.v >= 10 && (prev.s == "at" || prev.is(sWeigh) || prev.is(sAbout) || prev.s == "@" || k+1 < s.j && r.items[k+1].is(sEach) || it.v >= 25):
			v := it.v
			if it.rng {
				v = (it.v + it.v2) / 2
			}
			a.WeightKg = model.Float(r.massUnit().si(v))
		default:
			continue
		}
		it.used = true
	}
}

// stillComing is the day on which pigs are to come that are told to be on their way, in
// a month that may have begun: "3 pigs coming in May".
func (r *reader) stillComing(s span) (model.Day, bool) {
	if !r.quoteHas(s, "coming", "arriving") {
		return 0, false
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.kind == itDay && !it.day.every {
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok && d > r.today {
				return d, true
			}
		}
	}
	return 0, false
}

// Ages in weeks at which pigs come to those who fatten them. Common practice, no source.
const youngestWeeks, oldestWeeks = 4, 20

// ageOfYoung says that the weeks at item k are the pigs' age, though nothing says so:
// "got 3 weaners, 9 weeks, 22 kg". It must stand between marks, as a detail does.
func (r *reader) ageOfYoung(k int, s span) bool {
	it := &r.items[k]
	return it.unit == unitWeek && it.v >= youngestWeeks && it.v <= oldestWeeks && k > s.i && it.gap >= gapComma && (k+1 >= len(r.items) || r.items[k+1].gap >= gapComma)
}

// bareArrival reads "4 48lb", said before there are any pigs, as so many pigs of
// that weight.
func (r *reader) bareArrival() {
	count, kg := 0, 0.0
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itNum && count == 0 && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)):
			count = int(it.v)
		case it.qty(mass) && kg == 0:
			kg = it.si()
		case it.kind == itNum && kg == 0 && it.v >= 10:
			kg = r.massUnit().si(it.v)
		case it.isAny(setOf(sFiller, sEach, sAbout, sPigs)):
		default:
			return
		}
	}
	if count > 0 && kg > 5 {
		s := span{fArrive, 0, len(r.items)}
		r.useAll(s)
		r.left = nil
		r.emit(Fact{model.Arrive{Count: count, WeightKg: &kg}}, s)
	}
}

// newOnes gives the sense of coming to new pigs that are counted: "3 new ones today,
// 40 lb each".
func (r *reader) newOnes() {
	r.oneBesideOthers()
	for k := 1; k < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k-1]
		if (it.s == "new ones" || it.s == "new pigs") && it.gap == gapNone && n.kind == itNum && !n.soft && n.v >= 1 && n.v <= 60 && r.firstQty(span{fArrive, k, r.sentenceEnd(k)}, mass) >= 0 {
			it.sense = setOf(sPigs, sArrive)
		}
		if it.s == "new" && it.gap == gapNone && n.kind == itNum && !n.soft && n.v >= 1 && n.v <= 60 && k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.items[k+1].is(sPigs) && r.items[k+1].pig < 0 && r.firstQty(span{fArrive, k, r.sentenceEnd(k)}, mass) >= 0 {
			r.items[k+1].sense = setOf(sPigs, sArrive) // "3 new shoats 38 lb each"
		}
	}
}

// oneBesideOthers counts "a barrow" as one where others are counted beside it: "two
// gilts and a barrow".
func (r *reader) oneBesideOthers() {
	sexes := setOf(sBarrow, sGilt, sBoar, sSow)
	for k := 0; k+1 < len(r.items); k++ {
		it := &r.items[k]
		if it.s != "a" && it.s != "an" || it.kind != itWord || r.items[k+1].gap != gapNone || r.items[k+1].pig >= 0 || !r.items[k+1].isAny(sexes) {
			continue
		}
		for n := r.sentenceStart(k); n+1 < r.sentenceEnd(k); n++ {
			if x := &r.items[n]; x.kind == itNum && !x.soft && x.v >= 1 && x.v <= 60 && r.items[n+1].isAny(sexes) && r.items[n+1].gap == gapNone {
				it.kind, it.v, it.sense, it.known = itNum, 1, senses{}, true
				break
			}
		}
	}
}

// onlyMeasured says that pigs are weighed in a span before any came, and that none are
// said to have come: "taped dixie 23, duke 24".
func (r *reader) onlyMeasured(s span) bool {
	if r.alive > 0 {
		return false
	}
	measured := false
	for k := r.sentenceStart(s.i); k < r.sentenceEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.isAny(setOf(sArrive, sNamed, sBarrow, sGilt)) || it.s == "pigs" || it.s == "piglets" {
			return false
		}
		measured = measured || measuring[it.s] || it.is(sGirth)
	}
	return measured
}
