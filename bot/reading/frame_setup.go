package reading

import (
	"strings"

	"troughbell/model"
)

func (r *reader) set(s span, st model.Setting) *Entry {
	return r.emitOn(Fact{st}, s, r.today, nil, false)
}

func (r *reader) fillSetFeeder(s span) { r.setThings(s, feederKind) }
func (r *reader) fillSetBarrel(s span) { r.setThings(s, barrelKind) }

func (r *reader) setThings(s span, kind thingKind) {
	ts := r.thingsIn(s, kind)
	if len(ts) == 0 {
		r.idleSpan(s)
		return
	}
	for _, t := range ts {
		r.set(s, model.Setting{Key: kind.key, Thing: &model.Thing{Name: t.name, CapacityKg: t.kg, CapacityL: t.l, Nipples: t.nipples}})
	}
}

// fillSetPen reads pens with their sizes and which one is in use.
func (r *reader) fillSetPen(s span) {
	// Where the pigs are is said behind the sizes: read it first.
	in, cut := r.penInUse(s)
	var ts []newThing
	if cut > s.i {
		ts = r.thingsIn(span{s.frame, s.i, cut}, penKind)
	}
	// Pens without a size are set up only where nothing but names was said.
	kept := ts[:0]
	for _, t := range ts {
		if t.said || t.name != "" {
			kept = append(kept, t)
		}
	}
	ts = kept
	found := false
	for x := range ts {
		if in != "" && samePen(ts[x].name, in) || in == "*" && x == len(ts)-1 {
			ts[x].inUse, found = true, true
		}
	}
	for _, t := range ts {
		th := &model.Thing{Name: t.name, AreaM2: t.m2}
		if t.inUse {
			yes := true
			th.InUse = &yes
		}
		r.setUp.pens = append(r.setUp.pens, t.name)
		r.set(s, model.Setting{Key: model.SetPen, Thing: th})
	}
	if in != "" && in != "*" && !found {
		r.penNowInUse(s, in)
	}
	if len(ts) == 0 && in == "" {
		r.idleSpan(s)
	}
}

// penNowInUse marks a pen of this text or of the herd as the one in use.
func (r *reader) penNowInUse(s span, name string) {
	yes := true
	for x := range r.out {
		if f, ok := r.out[x].Act.(Fact); ok {
			if st, ok := f.Fact.(model.Setting); ok && st.Key == model.SetPen && samePen(st.Thing.Name, name) {
				th := *st.Thing
				th.InUse = &yes
				st.Thing = &th
				r.out[x].Act = Fact{st}
				return
			}
		}
	}
	for _, p := range r.c.Herd.Pens {
		if samePen(p.Name, name) {
			name = p.Name
		}
	}
	r.set(s, model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: name, InUse: &yes}})
}

func samePen(a, b string) bool {
	strip := func(s string) string {
		s = strings.ToLower(s)
		s = strings.TrimPrefix(s, "the ")
		if rest, ok := strings.CutPrefix(s, "pen "); ok {
			return rest
		}
		return strings.TrimSuffix(s, " pen")
	}
	return strip(a) == strip(b)
}

// penInUse finds which pen the pigs are in and where the words about it begin.
// "*" means the pen said right before.
func (r *reader) penInUse(s span) (name string, cut int) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sInUse) || it.capital && it.gap < gapStop && !strings.Contains(it.s, " ") {
			continue
		}
		it.used = true
		ends := it.s == "in use" || it.s == "current" || it.s == "active" || it.s == "in now" || it.s == "using now" || it.s == "being used" || it.s == "is in use" || strings.HasPrefix(it.s, "is where") || strings.HasPrefix(it.s, "where") || it.s == "in it now" || it.s == "is the current one" || it.s == "occupied" || it.s == "is current"
		if ends {
			// "north 4000 sq ft in use, south 5000": the one before, and the
			// rest goes on.
			if n := r.penNameBefore(k, s); n != "" {
				return n, s.j
			}
			return "*", k
		}
		from := k + 1
		if from < s.j && (r.items[from].s == "in" || r.items[from].s == "the" || r.items[from].s == "pen" || r.items[from].is(sNow) && !r.items[from].capital) {
			r.items[from].used = true
			if r.items[from].s == "pen" && from+1 < s.j && r.items[from+1].kind == itNum {
				r.items[from+1].used = true
				return "pen " + r.items[from+1].s, k
			}
			from++
		}
		if from < s.j && r.items[from].s == "the" {
			from++
		}
		if from < s.j {
			f := &r.items[from]
			f.used = true
			if f.pen >= 0 {
				return r.c.Herd.Pens[f.pen].Name, r.clauseStart(k, s)
			}
			if f.kind == itNum {
				return "pen " + f.s, r.clauseStart(k, s)
			}
			to := from
			for to+1 < s.j && r.items[to+1].gap == gapNone && (r.nameLike(to+1) || r.items[to+1].is(sPen)) {
				to++
				r.items[to].used = true
			}
			return strings.TrimSpace(r.text[f.from:r.items[to].to]), r.clauseStart(k, s)
		}
	}
	return "", s.j
}

// clauseStart is where the clause with item k begins, if nothing of size stands
// in it before k.
func (r *reader) clauseStart(k int, s span) int {
	n := k
	for n > s.i && r.items[n].gap < gapComma {
		p := &r.items[n-1]
		if p.kind == itQty || p.kind == itDim {
			return n
		}
		n--
	}
	return n
}

// penNameBefore is the name said last before item k.
func (r *reader) penNameBefore(k int, s span) string {
	for n := k - 1; n >= s.i; n-- {
		it := &r.items[n]
		if it.pen >= 0 {
			return r.c.Herd.Pens[it.pen].Name
		}
		if it.kind == itNum && n > s.i && r.items[n-1].is(sPen) {
			return "pen " + it.s
		}
		if it.kind == itWord && r.nameLike(n) && !it.is(sPen) {
			from := n
			for from > s.i && r.items[from].gap == gapNone && r.nameLike(from-1) && !r.items[from-1].is(sPen) {
				from--
			}
			return strings.TrimSpace(r.text[r.items[from].from:it.to])
		}
	}
	return ""
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
			if it.v3 > 0 {
				u := it.unit
				if u.dim() != length {
					u = unitFt
				}
				t.DepthM = model.Float(u.si(it.v3))
			}
		case it.qty(length):
			t.DepthM = model.Float(it.si())
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
			r.clarify(Clarify{About: "settings", Code: "implausible_target", Want: "target_kg", Q: []model.Quantity{{Value: kg, Unit: model.Kilograms}},
				Draft: []Entry{r.draft(Fact{st}, s)}}, s)
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
		case it.s == "evening" || it.s == "evenings" || it.s == "night" || it.s == "afternoon":
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
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itClock:
			m := it.clock
			if !it.ampm && m < 720 && len(clocks) == 0 {
				m += 720
			}
			clocks = append(clocks, m)
		case it.kind == itNum && !it.soft && it.v >= 0 && it.v <= 24:
			add := func(v float64) {
				m := int(v) * 60
				if len(clocks) == 0 && v < 12 && v >= 5 {
					m += 720
				}
				clocks = append(clocks, m%1440)
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
	r.set(s, model.Setting{Key: model.SetQuiet, List: []string{model.FormatClock(clocks[0]), model.FormatClock(clocks[1])}})
}

// fillZone reads the time zone by name, by place, or by the clock on the wall.
func (r *reader) fillZone(s span) {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.canon == zoneCanon {
			r.useAll(s)
			r.set(s, model.Setting{Key: model.SetZone, Text: it.s})
			return
		}
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

// unitTalk is how many words a text about the units may have where nothing but
// the name of a unit says so.
const unitTalk = 6

func (r *reader) fillUnits(s span) {
	units := ""
	for k := s.i; k < s.j; k++ {
		switch it := &r.items[k]; {
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
	if units == "" || !r.has(s, sUS) && !r.has(s, sMetric) && !r.has(s, sUnits) && len(r.items) > unitTalk && r.c.Herd.Units != "" {
		r.idleSpan(s)
		return
	}
	r.useAll(s)
	r.set(s, model.Setting{Key: model.SetUnits, Text: units})
	r.unitsSaid(units)
}

// unitsSaid lets units hold for the rest of the text.
func (r *reader) unitsSaid(units string) { r.units = units }

// fillHerd reads the herd's name: the words behind "herd", "called", "name".
func (r *reader) fillHerd(s span) {
	from := -1
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
		if to > from && r.items[to].gap == gapAnd && !r.items[to].capital {
			break
		}
		r.items[to].used = true
		to++
	}
	name := strings.Trim(strings.TrimSpace(r.text[r.items[from].from:r.items[to-1].to]), `"'“”.,`)
	if name == "" {
		r.idleSpan(s)
		return
	}
	r.set(s, model.Setting{Key: model.SetHerd, Text: name})
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
		if it.unit != 0 && it.unit.dim() == vessel && it.unit != unitBale {
			name = it.unit.name()
			it.used = true
		}
		if it.qty(mass) && name != "" {
			it.used = true
			r.setUp.sizes = setSize(r.setUp.sizes, name, it.si())
			r.set(s, model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: name, FeedKg: model.Float(it.si())}})
			name = ""
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

func (r *reader) fillMute(s span) {
	about := r.aboutIn(s)
	r.useAll(s)
	if len(about) == 0 {
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
