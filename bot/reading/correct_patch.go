package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

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
		if r.valueBetween(s.i, k) {
			cut.j = k
		} else if r.otherThan(k) {
			for cut.i = k + 1; r.items[cut.i].kind != itThing; {
				cut.i++
			}
			cut.i++
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
	num := r.inUnitOf(r.firstNumber(cut), rec.Text)
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
			if opts := r.options(&m); len(opts) > 0 && !num.qty(vessel) && !num.qty(volume) && !num.qty(money) {
				w := opts[0]
				if !has && farFrom(w, v) {
					return e, false
				}
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
		} else if part := r.fractionOf(cut); part != nil && v.Full {
			v.Full, v.Fraction, changed = false, part, true // "it wasn't full, more like 3/4"
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
		if otherBarrel(r, cut, v.Barrel) && (r.fractionOf(cut) != nil || r.has(cut, sEmpty) || r.has(cut, sFull)) {
			return e, false // another one with a level of its own
		}
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
		if num != nil && (num.kind == itNum || num.qty(voltage)) {
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
					if v.Count != nil { // bags are counted anew, or no more
						v.Count = nil
						if num.qty(vessel) {
							v.Count = model.Float(num.v)
						}
					}
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
		if old, has := r.oldNumber(); num != nil && num.kind == itNum && v.Count > 0 && num.v == float64(int(num.v)) && num.v <= mostPigs && (has && old == float64(v.Count) || r.has(cut, sPigs)) {
			v.Count, changed = int(num.v), true // "3 pigs, not 2"
		} else if num != nil && v.Amount != nil && num.v > 15 {
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
		if d := r.bookedDay(cut.i, v.Day); d != nil {
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

// otherBarrel says that the span names another barrel than the one given.
func otherBarrel(r *reader, s span, name string) bool {
	for k := s.i; k < s.j; k++ {
		if b := r.items[k].barrel; b >= 0 && r.c.Herd.Barrels[b].Name != name {
			return true
		}
	}
	return false
}

// farFrom says that a weighing is nowhere near the one that it would take the place of,
// and no slip of a digit too many or too few.
func farFrom(w, was model.Weigh) bool {
	now, old := w.WeightKg, was.WeightKg
	if now == 0 || old == 0 {
		now, old = w.GirthCm, was.GirthCm
	}
	if now == 0 || old == 0 {
		return false
	}
	times := max(now/old, old/now)
	return times > 2.6 && (times < 8 || times > 12)
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

// valueBetween says that a number, a pig or a thing stands in items[i:j].
func (r *reader) valueBetween(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.number() && !it.soft || it.pig >= 0 || it.kind == itThing {
			return true
		}
	}
	return false
}

// inUnitOf gives a bare number the unit that the first amount of an earlier text
// has: "6 not 5" behind "5 bags in the feeder".
func (r *reader) inUnitOf(num *item, text string) *item {
	if num == nil || num.kind != itNum {
		return num
	}
	toks := scan(nil, strings.ToLower(text), r.dayFirst)
	for k := 0; k+1 < len(toks); k++ {
		if toks[k].kind != tokNum || toks[k+1].kind != tokWord || toks[k+1].s == "in" {
			continue
		}
		m := r.lex.of[toks[k+1].s]
		if m == nil || m.unit == 0 {
			continue
		}
		switch m.unit.dim() {
		case mass, volume, length, vessel, money:
			in := *num
			in.kind, in.unit = itQty, m.unit
			return &in
		}
		return num
	}
	return num
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
		switch it := &r.items[k]; {
		case it.kind == itFrac:
			return model.Float(it.v)
		case it.qty(percent) && it.v >= 0 && it.v <= 100:
			return model.Float(it.v / 100)
		}
	}
	return nil
}
