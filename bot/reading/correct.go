package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// correction reads a text that puts an earlier record right: "no, moss", "37
// not 38", "that was yesterday", or a reply to a message. It yields the full
// new entry with the record that it replaces.
func (r *reader) correction() (Reading, bool) {
	target, reply := r.corrected()
	if target == nil || len(r.items) > 14 {
		return Reading{}, false
	}
	if rec, e, ok := r.treatmentCompleted(); ok {
		return r.replaced(rec, e), true
	}
	lead, rest := r.correctionLead()
	fact, ok := target.Entry.Act.(Fact)
	if !ok {
		return Reading{}, false
	}
	if was, day, minute, ok := r.dayOnly(rest); ok && (lead || reply || was) {
		e := target.Entry
		if day != nil {
			if *day > r.today && backward(fact.Fact) {
				return Reading{}, false
			}
			if b, is := fact.Fact.(model.Booked); is {
				d := r.bookedDay(rest)
				if d == nil {
					return Reading{}, false
				}
				b.Day = *d
				e.Act = Fact{b}
			} else {
				e.On, e.Dated = *day, true
			}
		}
		if minute != nil {
			e.Minute = minute
			if b, is := e.Act.(Fact).Fact.(model.Booked); is {
				b.Minute = minute
				e.Act = Fact{b}
			}
		}
		return r.replaced(target, e), true
	}
	if !lead && !reply && !r.followsUp(fact.Fact, rest) {
		return Reading{}, false
	}
	if es, ok := r.patched(target, fact.Fact, rest, lead || reply); ok {
		return r.replaced(target, es), true
	}
	return Reading{}, false
}

// corrected is the record that the text may correct: what it replies to, else
// the latest fact of this person.
func (r *reader) corrected() (rec *Recorded, reply bool) {
	for k := range r.c.ReplyTo {
		if _, ok := r.c.ReplyTo[k].Entry.Act.(Fact); ok {
			return r.bestOf(r.c.ReplyTo), true
		}
	}
	return r.bestOf(r.c.Before), false
}

// bestOf picks the record that the numbers of the text speak of: the one said
// to be "not", else the newest.
func (r *reader) bestOf(rs []Recorded) *Recorded {
	var first *Recorded
	old, hasOld := r.oldNumber()
	for k := range rs {
		f, ok := rs[k].Entry.Act.(Fact)
		if !ok || r.c.Now.Sub(rs[k].At) > 48*3600*1e9 && !hasOld {
			continue
		}
		if first == nil {
			first = &rs[k]
		}
		if hasOld && r.holdsNumber(f.Fact, old) {
			return &rs[k]
		}
		if !hasOld && k > 0 && rs[k].Text != rs[0].Text {
			break
		}
	}
	if first != nil && !hasOld { // among the records of one message, that of the pig named
		for k := range rs {
			f, ok := rs[k].Entry.Act.(Fact)
			if !ok || rs[k].Text != first.Text {
				continue
			}
			for n := range r.items {
				it := &r.items[n]
				if it.pig >= 0 && slices.Contains(animalsOf(f.Fact), r.pigs[it.pig].Name) && len(r.items) > 1 {
					return &rs[k]
				}
				if it.feeder >= 0 {
					if p, is := f.Fact.(model.Refill); is && p.Feeder == r.c.Herd.Feeders[it.feeder].Name {
						return &rs[k]
					}
				}
			}
		}
	}
	return first
}

func animalsOf(f model.Fact) []string {
	switch v := f.(type) {
	case model.Weigh:
		return v.Animals
	case model.Worm:
		return v.Animals
	case model.Treat:
		return v.Animals
	case model.Sick:
		return v.Animals
	case model.Gone:
		return v.Animals
	case model.Move:
		return v.Animals
	}
	return nil
}

// oldNumber is the number that the text says was wrong: "37 not 38", "not 450,
// 405".
func (r *reader) oldNumber() (float64, bool) {
	for k := range r.items {
		if r.items[k].s == "not" && k+1 < len(r.items) && r.items[k+1].number() {
			return r.items[k+1].v, true
		}
	}
	return 0, false
}

// holdsNumber says that a fact has the number, in the person's units.
func (r *reader) holdsNumber(f model.Fact, v float64) bool {
	near := func(si, said float64) bool { return si > said*0.995 && si < said*1.005 }
	kg, cm, l := r.massUnit().si(v), r.lengthUnit().si(v)*100, r.volumeUnit().si(v)
	switch x := f.(type) {
	case model.Weigh:
		return near(x.WeightKg, kg) || near(x.GirthCm, cm) || near(x.LengthCm, cm)
	case model.Refill:
		return x.FeedKg != nil && near(*x.FeedKg, kg)
	case model.Water:
		return x.Litres != nil && near(*x.Litres, l)
	case model.Fence:
		return near(x.Kv, v)
	case model.Stock:
		return x.FeedKg != nil && near(*x.FeedKg, kg) || x.Amount != nil && near(*x.Amount, v)
	case model.Spend:
		return near(x.Amount, v)
	case model.Mixed:
		return x.Batches != nil && near(*x.Batches, v)
	}
	return false
}

// correctionLead says whether the text opens as a correction, and where what
// is right begins.
func (r *reader) correctionLead() (lead bool, rest int) {
	if r.notThen(0) {
		lead = true
	}
	if strings.HasPrefix(strings.TrimSpace(r.text), "*") { // the messenger's own way
		lead = true
	}
	for rest < len(r.items) {
		it := &r.items[rest]
		switch {
		case it.pig >= 0 || it.kind == itThing:
			return lead, rest
		case it.is(sNo):
			lead = true
		case lead && it.is(sFiller) && !it.isAny(setOf(sNot)), lead && it.is(sPronoun), !lead && it.s == "sorry":
		default:
			if k := r.notThen(rest); k {
				return true, rest
			}
			return lead, rest
		}
		rest++
	}
	return lead, rest
}

// notThen says that a new and an old number stand beside "not": "37 not 38".
func (r *reader) notThen(k int) bool {
	n := len(r.items)
	num := func(i int) bool { return i < n && r.items[i].number() && !r.items[i].soft }
	for i := k; i < n; i++ {
		if r.items[i].s == "not" && (num(i+1) && (i > 0 && num(i-1) || num(i+2)) || i+1 < n && r.items[i+1].pig >= 0 && (i > 0 && r.items[i-1].pig >= 0 || i+2 < n && r.items[i+2].pig >= 0 && n <= 4)) {
			return true
		}
	}
	return false
}

// dayOnly says that all the text tells is a day or a time: "that was
// yesterday", "at 6pm". was is true where it plainly speaks of a record.
func (r *reader) dayOnly(from int) (was bool, day *model.Day, minute *int, ok bool) {
	part := partNone
	for k := from; k < len(r.items); k++ {
		it := &r.items[k]
		switch {
		case it.kind == itDay && !it.day.every:
			if d, found := it.day.on(r.today, lookBack, r.dayFirst); found {
				day, part = &d, it.day.part
			}
		case it.kind == itClock:
			today := day == nil || *day == r.today
			minute = model.Int(settleClock(it.clock, it.ampm, part, today, r.nowMin, lookBack))
		case it.s == "that" || it.s == "it" || it.s == "this" || it.s == "those" || it.s == "was" || it.s == "from" || it.s == "were" || it.s == "for" || it.is(sPronoun):
			was = was || it.s == "was" || it.s == "were"
		case it.is(sFiller) || it.is(sNo) || it.is(sIs):
		default:
			return false, nil, nil, false
		}
	}
	if day == nil && minute == nil {
		return false, nil, nil, false
	}
	if !was && minute != nil && day == nil { // a bare time completes a treatment without one
		was = r.latestTreatment()
	}
	return was, day, minute, true
}

func (r *reader) latestTreatment() bool {
	if len(r.c.Before) == 0 {
		return false
	}
	switch f := r.c.Before[0].Entry.Act.(type) {
	case Fact:
		switch f.Fact.(type) {
		case model.Treat, model.Worm:
			return r.c.Before[0].Entry.Minute == nil
		}
	}
	return false
}

func (r *reader) bookedDay(from int) *model.Day {
	for k := from; k < len(r.items); k++ {
		if it := &r.items[k]; it.kind == itDay {
			if d, ok := it.day.on(r.today, lookForward, r.dayFirst); ok {
				return &d
			}
		}
	}
	return nil
}

func backward(f model.Fact) bool {
	_, booked := f.(model.Booked)
	return !booked
}

// followsUp says that a short text without any lead completes the record just
// made: a bare number right after a pour, the days of a treatment.
func (r *reader) followsUp(f model.Fact, from int) bool {
	if r.c.Pending != nil || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > 15*60*1e9 {
		return false
	}
	if from != 0 {
		return false
	}
	switch v := f.(type) {
	case model.Weigh:
		return r.swappedDigits(v)
	case model.Refill:
		return r.swappedDigits(v)
	case model.Treat:
		return v.WithdrawalDays == nil && r.onlyDays()
	case model.Worm:
		return v.WithdrawalDays == nil && r.onlyDays()
	case model.Booked:
		return r.quoteHas(span{0, 0, len(r.items)}, "moved to", "moved us to", "changed to", "rescheduled") && r.has(span{0, 0, len(r.items)}, sButcher)
	}
	return false
}

// swappedDigits says that the text is but a number with the digits of the one
// just recorded, in another order: "163" behind "136".
func (r *reader) swappedDigits(f model.Fact) bool {
	if len(r.items) != 1 || !r.items[0].number() {
		return false
	}
	now := []byte(itoa(int(r.items[0].v)))
	if r.items[0].v < 10 {
		return false
	}
	for a := range now {
		for b := a + 1; b < len(now); b++ {
			now[a], now[b] = now[b], now[a]
			v := 0.0
			for _, d := range now {
				v = v*10 + float64(d-'0')
			}
			now[a], now[b] = now[b], now[a]
			if v != r.items[0].v && r.holdsNumber(f, v) {
				return true
			}
		}
	}
	return false
}

// treatmentCompleted reads a text that is but what a treatment of the last days
// lacked: its product, its withdrawal days, with or without the pig's name:
// "oxytetracycline", "hank 28 days".
func (r *reader) treatmentCompleted() (*Recorded, Entry, bool) {
	product, pigs := "", 0
	var withdrawal *int
	for k := range r.items {
		it := &r.items[k]
		m := r.lex.of[it.s]
		switch {
		case it.pig >= 0 && !it.near:
			pigs++
		case it.qty(days) && withdrawal == nil:
			withdrawal = model.Int(int(it.si() + 0.5))
		case it.is(sProduct) && m != nil && m.drug != "" && product == "":
			product = m.drug
		case it.kind == itNum && it.soft, it.number(), it.isAny(setOf(sWorm, sTreat, sAgo)) && product == "":
			return nil, Entry{}, false
		case it.isAny(setOf(sWithdraw, sFiller, sIs, sPronoun, sYes, sAnd, sNo)) && it.kind == itWord || it.isAny(setOf(sAbout, sGave)):
		default:
			return nil, Entry{}, false
		}
	}
	if product == "" && withdrawal == nil || pigs > 1 || len(r.items) > 7 {
		return nil, Entry{}, false
	}
	sel := r.selectPigs(0, len(r.items))
	for k := range r.c.Before {
		rec := &r.c.Before[k]
		f, ok := rec.Entry.Act.(Fact)
		if !ok || r.c.Now.Sub(rec.At) > 7*24*3600*1e9 {
			continue
		}
		var t model.Treatment
		switch v := f.Fact.(type) {
		case model.Treat:
			t = v.Treatment
		case model.Worm:
			t = v.Treatment
		default:
			if pigs == 0 && k > 3 {
				return nil, Entry{}, false
			}
			continue
		}
		if pigs == 1 && !slices.Equal(t.Animals, sel.names(r)) || product != "" && t.Product != "" && t.Product != product || withdrawal != nil && t.WithdrawalDays != nil || withdrawal == nil && t.Product != "" {
			continue
		}
		if product != "" {
			t.Product = product
		}
		if withdrawal != nil {
			t.WithdrawalDays = withdrawal
		}
		e := rec.Entry
		switch f.Fact.(type) {
		case model.Treat:
			e.Act = Fact{model.Treat{Treatment: t}}
		default:
			e.Act = Fact{model.Worm{Treatment: t}}
		}
		return rec, e, e.Act.(Fact).Check() == nil
	}
	return nil, Entry{}, false
}

// replaced is the reading that puts e in the place of a record.
func (r *reader) replaced(rec *Recorded, e Entry) Reading {
	e.Replace = rec.ID
	if e.Replace == "" {
		e.Replace = "latest"
	}
	e.From, e.To = 0, len(r.text)
	e = r.judgeDay(e)
	return Reading{Entries: []Entry{e}}
}

// patched gives the record with what the text says put in: another pig, thing,
// number, product, or a new reading of the same kind.
func (r *reader) patched(rec *Recorded, f model.Fact, from int, sure bool) (Entry, bool) {
	e := rec.Entry
	s := span{0, from, len(r.items)}
	if s.i >= s.j {
		return e, false
	}
	cut := s
	for k := s.i; k < s.j; k++ { // what stands behind "not" was wrong
		if r.items[k].s != "not" {
			continue
		}
		if k > s.i && (r.items[k-1].number() || r.items[k-1].pig >= 0 || r.items[k-1].kind == itThing) {
			cut.j = k
		} else if k+2 < s.j {
			cut.i = k + 2
		}
		break
	}
	for cut.i < cut.j && r.items[cut.i].isAny(setOf(sNo, sFiller)) && r.items[cut.i].pig < 0 && r.items[cut.i].kind == itWord {
		cut.i++
	}
	if cut.i >= cut.j || cut.j-cut.i > 6 {
		return e, false
	}
	sel := r.selectPigs(cut.i, cut.j)
	num := r.firstNumber(cut)
	day, minute, dated := r.when(cut, lookBack)
	if dated {
		e.On, e.Dated = day, true
	}
	if minute != nil {
		e.Minute = minute
	}
	changed := dated || minute != nil
	who := func(old []string) []string {
		if sel.any && !sel.lost && !(sel.near && dear(string(f.Kind()))) {
			changed = true
			return sel.names(r)
		}
		return old
	}
	switch v := f.(type) {
	case model.Weigh:
		v.Animals = who(v.Animals)
		if num != nil {
			m := measure{v: num.v, v2: num.v2, unit: num.unit}
			switch {
			case num.kind == itDim:
				m.role = rolePair
			case num.qty(mass) || v.GirthCm == 0 && num.kind == itNum:
				m.role = roleWeight
			default:
				m.role = roleGirth
			}
			old, has := r.oldNumber()
			if opts := r.options(&m); len(opts) > 0 {
				w := opts[0]
				if v.LengthCm > 0 && m.role == roleGirth {
					w.LengthCm = v.LengthCm
					if has && r.holdsLength(v, old) || r.has(s, sLength) {
						w.LengthCm, w.GirthCm = w.GirthCm, v.GirthCm
					}
				}
				w.Animals = v.Animals
				if w.WeightKg > 0 && v.By != "" && !num.approx {
					w.By = v.By
				}
				v, changed = w, true
			}
		}
		e.Act = Fact{v}
	case model.Refill:
		if num != nil {
			if kg, ok := r.feedAmount(num); ok {
				v.FeedKg, changed = &kg, true
			}
		}
		if r.has(cut, sFull) {
			v.Full, v.Fraction, changed = true, nil, true
		}
		if n := r.feederOf(cut); n != "" {
			v.Feeder, changed = n, true
		}
		e.Act = Fact{v}
	case model.FeedLevel:
		if k := r.fractionOf(cut); k != nil {
			v.Fraction, changed = k, true
		} else if num != nil {
			if kg, ok := r.feedAmount(num); ok {
				v.FeedKg, v.Fraction, changed = &kg, nil, true
			}
		}
		if n := r.feederOf(cut); n != "" {
			v.Feeder, changed = n, true
		}
		e.Act = Fact{v}
	case model.Water:
		if num != nil && (num.kind == itNum || num.qty(volume)) {
			l := num.si()
			if num.kind == itNum {
				l = r.volumeUnit().si(num.v)
			}
			v.Litres, changed = &l, true
		}
		for k := cut.i; k < cut.j; k++ {
			if b := r.items[k].barrel; b >= 0 {
				v.Barrel, changed = r.c.Herd.Barrels[b].Name, true
			}
		}
		if k := r.fractionOf(cut); k != nil {
			v.Fraction, v.Full, changed = k, false, true
		} else if r.has(cut, sEmpty) {
			v.Fraction, v.Full, v.Seen, changed = model.Float(0), false, true, true
		} else if r.has(cut, sFull) {
			v.Full, v.Fraction, v.Seen, changed = true, nil, false, true
		}
		e.Act = Fact{v}
	case model.Fence:
		if num != nil {
			v.Kv, changed = num.v, true
			if v.Kv >= 500 {
				v.Kv /= 1000
			}
		}
		e.Act = Fact{v}
	case model.Spend:
		if num != nil {
			v.Amount, changed = num.v, true
		}
		e.Act = Fact{v}
	case model.Stock:
		if num != nil {
			switch {
			case num.qty(money):
				v.Amount, changed = model.Float(num.v), true
			default:
				if kg, ok := r.feedAmount(num); ok {
					v.FeedKg, changed = &kg, true
				}
			}
		}
		if k := r.find(cut, sIngredient); k >= 0 && r.items[k].canon != "" {
			v.Ingredient, changed = r.items[k].canon, true
		}
		e.Act = Fact{v}
	case model.Mixed:
		if num != nil && num.v <= 30 {
			v.Batches, v.FeedKg, changed = model.Float(num.v), nil, true
		}
		e.Act = Fact{v}
	case model.Worm:
		v.Treatment, changed = r.patchTreatment(v.Treatment, cut, who, changed, num)
		e.Act = Fact{v}
	case model.Treat:
		v.Treatment, changed = r.patchTreatment(v.Treatment, cut, who, changed, num)
		e.Act = Fact{v}
	case model.Sick:
		v.Animals = who(v.Animals)
		e.Act = Fact{v}
	case model.Gone:
		v.Animals = who(v.Animals)
		if num != nil && v.Amount != nil && num.v > 15 {
			v.Amount, changed = model.Float(num.v), true
		}
		e.Act = Fact{v}
	case model.Move:
		for k := cut.i; k < cut.j; k++ {
			if p := r.items[k].pen; p >= 0 {
				v.Pen, changed = r.c.Herd.Pens[p].Name, true
			}
		}
		if sel.any && !sel.all && len(sel.pigs) > 0 {
			v.Animals, changed = sel.names(r), true
		}
		e.Act = Fact{v}
	case model.WallowFill:
		if num != nil {
			changed = true
			switch {
			case num.qty(volume):
				v.Litres, v.Minutes = model.Float(num.si()), nil
			case num.qty(hours):
				v.Minutes, v.Litres = model.Float(num.si()*60), nil
			case v.Litres != nil:
				v.Litres = model.Float(r.volumeUnit().si(num.v))
			default:
				v.Minutes = model.Float(num.v)
			}
		}
		e.Act = Fact{v}
	case model.Booked:
		if d := r.bookedDay(cut.i); d != nil {
			v.Day, changed = *d, true
			e.On, e.Dated = rec.Entry.On, rec.Entry.Dated
		}
		if num != nil && num.v <= 60 {
			v.Count, changed = int(num.v), true
		}
		if minute != nil {
			v.Minute = minute
		}
		e.Act = Fact{v}
	case model.Weather:
		if num != nil {
			u := unitF
			if r.units == model.Metric {
				u = unitC
			}
			if num.unit == unitF || num.unit == unitC {
				u = num.unit
			}
			v.HighC, changed = model.Float(u.si(num.v)), true
		}
		e.Act = Fact{v}
	default:
		return e, false
	}
	if !changed || e.Act.(Fact).Fact.Check() != nil {
		return e, false
	}
	return e, sure || changed
}

func (r *reader) holdsLength(w model.Weigh, v float64) bool {
	cm := r.lengthUnit().si(v) * 100
	return w.LengthCm > cm*0.995 && w.LengthCm < cm*1.005
}

func (r *reader) patchTreatment(t model.Treatment, s span, who func([]string) []string, changed bool, num *item) (model.Treatment, bool) {
	if n := who(t.Animals); !slices.Equal(n, t.Animals) {
		t.Animals, changed = n, true
	}
	if num != nil && (num.qty(days) || num.kind == itNum && num.v <= 120 && num.v == float64(int(num.v))) {
		d := int(num.v + 0.5)
		if num.qty(days) {
			d = int(num.si() + 0.5)
		}
		t.WithdrawalDays, changed = &d, true
	}
	if k := r.find(s, sProduct); k >= 0 {
		if m := r.lex.of[r.items[k].s]; m != nil && m.drug != "" {
			t.Product, changed = m.drug, true
		}
	}
	return t, changed
}

// firstNumber is the first amount of the span.
func (r *reader) firstNumber(s span) *item {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind == itNum && !it.soft || it.kind == itQty || it.kind == itDim {
			return it
		}
	}
	return nil
}

func (r *reader) feedAmount(it *item) (float64, bool) {
	switch {
	case it.kind == itNum:
		return r.massUnit().si(it.v), true
	case it.qty(mass):
		return it.si(), true
	case it.qty(vessel):
		size, ok := r.sizeOf(it.unit)
		return size * it.v, ok
	}
	return 0, false
}

func (r *reader) feederOf(s span) string {
	for k := s.i; k < s.j; k++ {
		if f := r.items[k].feeder; f >= 0 {
			return r.c.Herd.Feeders[f].Name
		}
	}
	return ""
}

func (r *reader) fractionOf(s span) *float64 {
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itFrac {
			return model.Float(r.items[k].v)
		}
	}
	return nil
}

// onlyDays says that the text is a number of days and nothing else.
func (r *reader) onlyDays() bool {
	it, ok := r.onlyAmount()
	return ok && (it.qty(days) || it.kind == itNum && it.v <= 120 && it.v == float64(int(it.v)))
}
