package reading

import (
	"math"

	"troughbell/model"
)

func (r *reader) set(s span, st model.Setting) *Entry {
	return r.emitOn(Fact{st}, s, r.today, nil, false)
}

func (r *reader) fillSetFeeder(s span) { r.setThings(s, feederKind) }

func (r *reader) fillSetBarrel(s span) { r.setThings(s, barrelKind) }

func (r *reader) setThings(s span, kind thingKind) {
	if r.fillAdded(s) {
		return
	}
	for s.i > 0 && r.items[s.i].gap == gapNone && !r.items[s.i-1].used && r.idleAt(s.i-1) && r.items[s.i-1].kind == itWord && r.nameLike(s.i-1) && !newWords[r.items[s.i-1].s] {
		s.i-- // "a red barrel 55 gallons"
	}
	ts := r.thingsIn(s, kind)
	if len(ts) == 0 {
		r.idleSpan(s)
		return
	}
	for _, t := range ts {
		r.set(s, model.Setting{Key: kind.key, Thing: &model.Thing{Name: t.name, CapacityKg: t.kg, CapacityL: t.l, Nipples: t.nipples}})
	}
}

// fillSetWallow reads the wallow's size.
func (r *reader) fillSetWallow(s span) {
	t := &model.Thing{}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDim || it.qty(area):
			if m2, ok := r.areaOf(it); ok {
				t.AreaM2 = model.Float(m2)
			}
			if it.v3 > 0 && it.unit == unitIn && it.v < mostFeet { // "6 ft by 8 ft by 6 in": the inches are the depth's
				t.AreaM2 = model.Float(unitFt.si(it.v) * unitFt.si(it.v2))
			}
			if it.v3 > 0 {
				u := it.unit
				if u.dim() != length {
					u = unitFt
				}
				t.DepthM = model.Float(u.si(it.v3))
			}
		case it.qty(length) && k+1 < s.j && (r.items[k+1].s == "across" || r.items[k+1].s == "diameter" || r.items[k+1].s == "in diameter" || r.items[k+1].s == "round"):
			half := it.si() / 2
			t.AreaM2 = model.Float(math.Pi * half * half)
		case it.qty(length):
			t.DepthM = model.Float(it.si())
		case it.kind == itWord && it.unit == unitFt && k > s.i && r.items[k-1].s == "a": // "and a foot deep"
			t.DepthM = model.Float(unitFt.si(1))
		case it.kind == itFrac && r.quoteHas(s, "foot", "ft"):
			t.DepthM = model.Float(unitFt.si(it.v))
			for n := k + 1; n < s.j && n <= k+2 && (r.items[n].s == "a" || r.items[n].s == "foot" || r.items[n].s == "ft"); n++ {
				r.items[n].used = true
			}
		case it.kind == itNum && !it.soft && k+1 < s.j && r.items[k+1].is(sDeep):
			u := unitIn
			if r.units == model.Metric {
				u = unitCm
			}
			t.DepthM = model.Float(u.si(it.v))
		case it.is(sWallow), it.is(sDeep):
		default:
			continue
		}
		it.used = true
	}
	if t.AreaM2 == nil && t.DepthM == nil {
		r.idleSpan(s)
		return
	}
	r.set(s, model.Setting{Key: model.SetWallow, Thing: t})
}

// fillTarget reads the weight aimed at.
func (r *reader) fillTarget(s span) {
	for k := s.j - 1; k >= s.i; k-- {
		it := &r.items[k]
		u := it.unit
		switch {
		case it.qty(mass):
		case it.kind == itNum && !it.soft && !it.ord && it.v >= 30:
			u = r.massUnit()
		default:
			continue
		}
		kg := u.si(it.v)
		st := model.Setting{Key: model.SetTarget, Number: model.Float(kg)}
		for n := s.i; n < s.j; n++ {
			if r.items[n].is(sTarget) {
				r.items[n].used = true
			}
		}
		it.used = true
		if st.Check() != nil {
			r.clarify(Clarify{
				About: "settings", Code: "implausible_target", Want: "target_kg", Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}},
				Draft: []Entry{r.draft(Fact{st}, s)},
			}, s)
			return
		}
		r.set(s, st)
		return
	}
	r.idleSpan(s)
}

// fillChore reads the chore days and the hour of the nudges.
func (r *reader) fillChore(s span) {
	var days []string
	part := partNone
	clock := -1
	said := false
	if k := r.insteadAt(s.i, s.j); k > s.i {
		r.useAll(span{s.frame, k, s.j})
		s.j = k
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && it.day.form == dayWeekday:
			code := model.WeekdayCode(weekdayOf(it.day.a))
			dup := false
			for _, d := range days {
				dup = dup || d == code
			}
			if !dup {
				days = append(days, code)
			}
			if it.day.part != partNone {
				part = it.day.part
			}
		case it.kind == itClock:
			clock, said = it.clock, it.ampm
		case it.kind == itNum && !it.soft && it.v >= 1 && it.v < 24 && it.v == float64(int(it.v)) && clock < 0 && !it.ord:
			clock, said = int(it.v)*60, it.v > 12
		case it.kind == itDay && it.day.part != partNone:
			part = it.day.part
		case it.s == "evening" || it.s == "evenings" || it.s == "night" || it.s == "afternoon" || it.s == "afternoons" || it.s == "after work" || it.s == "after lunch" || it.s == "after supper" || it.s == "work" && k > s.i && r.items[k-1].s == "after":
			part = partEvening
		case it.s == "morning" || it.s == "mornings":
			part = partMorning
		case it.isAny(setOf(sChore, sTell)):
		case it.s == "weekends" || it.s == "weekend":
			days = append(days, "sat", "sun")
		case it.s == "every day" || it.s == "daily" || it.s == "everyday":
			days = append(days[:0], "mon", "tue", "wed", "thu", "fri", "sat", "sun")
		default:
			continue
		}
		it.used = true
	}
	if len(days) == 0 && clock < 0 {
		r.idleSpan(s)
		return
	}
	if len(days) > 0 {
		r.set(s, model.Setting{Key: model.SetChore, List: days})
	}
	if clock >= 0 {
		m := settleClock(clock, said, part, false, r.nowMin, lookForward)
		if !said && part == partNone && clock < 720 && clock >= 300 {
			m = clock // "chores at 5" is early in the day
		}
		r.set(s, model.Setting{Key: model.SetHour, List: []string{model.FormatClock(m % 1440)}})
	}
}

// fillQuiet reads the hours in which nothing routine is told.
func (r *reader) fillQuiet(s span) {
	var clocks []int
	var halves []bool // whether each hour was told with its half of the day
	turned := r.beforeThenAfter(s)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itClock:
			m := it.clock
			if !it.ampm && m < 720 && len(clocks) == 0 && !turned {
				m += 720
			}
			clocks, halves = append(clocks, m), append(halves, it.ampm)
		case it.kind == itNum && !it.soft && it.v >= 0 && it.v <= 24:
			add := func(v float64) {
				m := int(v) * 60
				if (len(clocks) == 0) != turned && v < 12 && v >= 5 {
					m += 720
				}
				clocks, halves = append(clocks, m%1440), append(halves, false)
			}
			add(it.v)
			if it.rng {
				add(it.v2)
			}
		default:
			continue
		}
		it.used = true
	}
	if len(clocks) < 2 {
		if len(clocks) == 1 && (r.quoteHas(s, "after") || r.quoteHas(s, "before")) {
			q := r.c.Herd.Quiet
			from, to := clocks[0], q.To
			if r.quoteHas(s, "before") {
				from, to = q.From, clocks[0]%720
			}
			r.set(s, model.Setting{Key: model.SetQuiet, List: []string{model.FormatClock(from), model.FormatClock(to)}})
			return
		}
		r.idleSpan(s)
		return
	}
	if !turned && clocks[0] < 720 && clocks[0] > clocks[1] && halves[0] && !halves[len(halves)-1] {
		clocks[1] += 720 // "from 8 in the morning til 3"
	}
	if turned {
		clocks[0], clocks[1] = clocks[1], clocks[0]
		if clocks[0] < 720 && clocks[0] < clocks[1]+720 && clocks[0] >= 300 && !r.quoteHas(s, "am", "a.m.") {
			clocks[0] += 720 // "not before 8:00 and not after 9:00"
		}
	}
	r.set(s, model.Setting{Key: model.SetQuiet, List: []string{model.FormatClock(clocks[0]), model.FormatClock(clocks[1])}})
}

// beforeThenAfter says that the morning's end of the quiet hours is told first: "not
// before 8 and not after 9".
func (r *reader) beforeThenAfter(s span) bool {
	before, after := -1, -1
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "before":
			before = k
		case "after":
			after = k
		}
	}
	return before >= 0 && before < after
}

// unitTalk says that the clause around the span speaks of nothing but the name
// of a unit: "we use kg", "in pounds please".
func (r *reader) unitTalk(s span) bool {
	for k := r.clauseFrom(s.i); k < r.clauseEnd(s.j-1); k++ {
		it := &r.items[k]
		switch it.s {
		case "use", "using", "in", "we", "i", "switch", "change", "prefer", "everything", "go", "with", "show", "work", "like", "think", "always", "do", "here", "not", "only", "instead of", "rather than", "count", "weigh", "talk", "deal", "never":
			continue
		}
		if it.kind != itWord || it.label || it.unit == 0 && !it.isAny(setOf(sFiller, sPronoun, sIs, sThanks, sYes, sWeigh, sTo, sAll, sAnd)) {
			return false
		}
	}
	return true
}

// newWords say that a thing is one more, and are no part of its name.
var newWords = map[string]bool{"new": true, "another": true, "extra": true, "additional": true, "more": true, "second": true, "third": true, "old": true, "used": true, "also": true}

// mostFeet is the longest side of a wallow in feet that inches behind three numbers
// are not taken for. Common practice, no source.
const mostFeet = 40
