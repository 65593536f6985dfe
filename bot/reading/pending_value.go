package reading

import (
	"strings"

	"troughbell/model"
)

// completed fills the slot that a question wanted from a typed value.
func (r *reader) completed(c Clarify) ([]Entry, bool) {
	if c.Want == "" || len(c.Draft) == 0 || len(r.items) > 8 {
		return nil, false
	}
	switch c.Want {
	case "size":
		return r.sizeAnswer(c)
	case "animals":
		return r.animalsAnswer(c)
	case "feeder", "barrel", "pen":
		return r.thingAnswer(c)
	case "date":
		return r.dateAnswer(c)
	case "what":
		return r.wordsAnswer(c)
	case "name":
		return r.nameAnswer(c)
	case "zone":
		for k := range r.items {
			if r.items[k].canon == zoneCanon && r.items[k].s != zoneUnsure {
				e := c.Draft[0]
				e.Act = Fact{model.Setting{Key: model.SetZone, Text: r.items[k].s}}
				return []Entry{e}, true
			}
		}
		if z, n := r.zoneOfSide(0); n > 0 && z == zoneUnsure {
			return nil, false
		}
		if z, n := r.zoneAt(0); n > 0 {
			e := c.Draft[0]
			e.Act = Fact{model.Setting{Key: model.SetZone, Text: z}}
			return []Entry{e}, true
		}
		return nil, false
	}
	return r.amountAnswer(c)
}

// onlyAmount finds the one number of a short text that says nothing else.
func (r *reader) onlyAmount() (*item, bool) {
	var found *item
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.qty(vessel) && it.v == 1 && found != nil && found.qty(mass) && !startsWithDigit(it.s): // "25 lb a bucket"
		case it.kind == itNum && !it.soft || it.kind == itQty || it.kind == itDim || it.kind == itFrac:
			if found != nil {
				return nil, false
			}
			found = it
		case it.isAny(setOf(sFiller, sYes, sNo, sIs, sAbout, sHolds, sEach, sPronoun, sGirth, sWeigh, sWithdraw, sNot, sOf, sPer)) || it.unit != 0 && it.unit.dim() == vessel:
		default:
			return nil, false
		}
	}
	return found, found != nil
}

func startsWithDigit(s string) bool { return s != "" && s[0] >= '0' && s[0] <= '9' }

func (r *reader) sizeAnswer(c Clarify) ([]Entry, bool) {
	it, ok := r.onlyAmount()
	if !ok || it.kind == itQty && it.unit.dim() != mass || it.kind == itDim || len(c.Names) == 0 {
		return nil, false
	}
	u := it.unit
	if it.kind == itNum {
		u = r.massUnit()
	}
	kg := u.si(it.v)
	if kg <= 0 || kg > 2000 {
		return nil, false
	}
	count := 1.0
	if len(c.Q) > 0 {
		count = c.Q[0].Value
	}
	set := Entry{Act: Fact{model.Setting{Key: model.SetSize, Thing: &model.Thing{Name: c.Names[0], FeedKg: &kg}}}, On: c.Draft[0].On}
	es := []Entry{set}
	for _, d := range c.Draft {
		f, ok := d.Act.(Fact)
		if !ok {
			continue
		}
		switch v := f.Fact.(type) {
		case model.Refill:
			v.FeedKg = model.Float(kg*count + valueOf(v.FeedKg))
			d.Act = Fact{v}
		case model.Stock:
			v.FeedKg = model.Float(kg * count)
			d.Act = Fact{v}
		}
		es = append(es, d)
	}
	return es, true
}

func (r *reader) animalsAnswer(c Clarify) ([]Entry, bool) {
	if len(r.items) > 6 {
		return nil, false
	}
	for k := range r.items {
		it := &r.items[k]
		if it.isAny(setOf(sOut, sDown, sNoWater, sNoFeed, sBackIn, sSick, sDied, sLost)) && it.pig < 0 { // "PIGS OUT" answers nothing
			return nil, false
		}
		if it.number() && !it.soft || !(it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) || it.isAny(setOf(sFiller, sYes, sIs, sBut, sPronoun, sAnd))) {
			return nil, false
		}
	}
	sel := r.selectPigs(0, len(r.items))
	if !sel.any || sel.lost || sel.near && dear(c.About) || len(r.eitherNames(0, len(r.items))) > 0 {
		return nil, false
	}
	var es []Entry
	for _, d := range c.Draft {
		f, ok := d.Act.(Fact)
		if !ok {
			return nil, false
		}
		v, ok := withAnimals(f.Fact, sel.names(r))
		if !ok {
			return nil, false
		}
		d.Act = Fact{v}
		es = append(es, d)
	}
	return es, true
}

func (r *reader) thingAnswer(c Clarify) ([]Entry, bool) {
	if !r.onlyName() {
		return nil, false
	}
	d := c.Draft[0]
	f, ok := d.Act.(Fact)
	if !ok {
		return nil, false
	}
	for k := range r.items {
		it := &r.items[k]
		switch v := f.Fact.(type) {
		case model.Refill:
			if it.feeder >= 0 {
				v.Feeder = r.c.Herd.Feeders[it.feeder].Name
				d.Act = Fact{v}
				return []Entry{d}, true
			}
		case model.FeedLevel:
			if it.feeder >= 0 {
				v.Feeder = r.c.Herd.Feeders[it.feeder].Name
				d.Act = Fact{v}
				return []Entry{d}, true
			}
		case model.Water:
			if it.barrel >= 0 {
				v.Barrel = r.c.Herd.Barrels[it.barrel].Name
				d.Act = Fact{v}
				return []Entry{d}, true
			}
		case model.Move:
			if it.pen >= 0 {
				v.Pen = r.c.Herd.Pens[it.pen].Name
				d.Act = Fact{v}
				return []Entry{d}, true
			}
		}
	}
	return nil, false
}

func (r *reader) dateAnswer(c Clarify) ([]Entry, bool) {
	if !r.onlyDate() {
		return nil, false
	}
	for k := range r.items {
		it := &r.items[k]
		day, ok := r.offeredDay(c, it)
		if !ok && it.kind == itDay && !it.day.coarse {
			day, ok = it.day.on(r.today, lookForward, r.dayFirst)
		}
		if !ok {
			continue
		}
		d := c.Draft[0]
		if f, ok := d.Act.(Fact); ok {
			if b, ok := f.Fact.(model.Booked); ok {
				b.Day = day
				d.Act = Fact{b}
				return []Entry{d}, true
			}
		}
	}
	return nil, false
}

func (r *reader) wordsAnswer(c Clarify) ([]Entry, bool) {
	d := c.Draft[0]
	f, ok := d.Act.(Fact)
	if !ok {
		return nil, false
	}
	what := strings.TrimSpace(r.text)
	switch v := f.Fact.(type) {
	case model.Note:
		v.What = what
		d.Act = Fact{v}
	case model.Remind:
		v.What = what
		d.Act = Fact{v}
	default:
		return nil, false
	}
	return []Entry{d}, true
}

// amountAnswer fills a weight, a pour, a level of water, volts or days.
func (r *reader) amountAnswer(c Clarify) ([]Entry, bool) {
	if e, ok := r.tapeAnswer(c); ok {
		return []Entry{e}, true
	}
	it, ok := r.onlyAmount()
	if !ok {
		return nil, false
	}
	d := c.Draft[0]
	f, ok := d.Act.(Fact)
	if !ok {
		return nil, false
	}
	dim := it.dim()
	if it.kind == itFrac || dim == percent {
		return levelAnswer(d, it)
	}
	switch v := f.Fact.(type) {
	case model.FeedLevel:
		if c.Names == nil || dim != noDimension && dim != mass {
			return nil, false
		}
		kg := it.si()
		if dim == noDimension {
			kg = r.massUnit().si(it.v)
		}
		v.FeedKg, v.Fraction = &kg, nil
		d.Act = Fact{v}
	case model.Weigh:
		m := measure{v: it.v, v2: it.v2, unit: it.unit}
		switch {
		case it.kind == itDim:
			m.role = rolePair
		case dim == mass || c.Want == "weight_kg" || v.GirthCm == 0 && dim == noDimension:
			m.role = roleWeight
		case dim == length || dim == noDimension:
			m.role = roleGirth
			if v.LengthCm > 0 { // "38" for a girth of "28 x 43"
				m.role, m.v2 = rolePair, v.LengthCm/100/units[r.lengthUnit()].factor
				m.unit = r.lengthUnit()
			}
		default:
			return nil, false
		}
		opts := r.options(&m)
		if len(opts) == 0 {
			return nil, false
		}
		w := opts[0]
		w.Animals = v.Animals
		d.Act = Fact{w}
	case model.Arrive:
		if dim != noDimension && dim != mass {
			return nil, false
		}
		kg := it.si()
		if dim == noDimension {
			kg = r.massUnit().si(it.v)
		}
		if kg < lightestKg || kg > heaviestKg {
			return nil, false
		}
		v.WeightKg = &kg
		d.Act = Fact{v}
	case model.Refill:
		kg := it.v
		switch dim {
		case noDimension:
			kg = r.massUnit().si(it.v)
		case mass:
			kg = it.si()
		case vessel:
			size, ok := r.sizeOf(it.unit)
			if !ok {
				return nil, false
			}
			kg = size * it.v
		default:
			return nil, false
		}
		v.FeedKg = &kg
		d.Act = Fact{v}
	case model.Water:
		l := it.v
		switch dim {
		case noDimension:
			l = r.volumeUnit().si(it.v)
		case volume:
			l = it.si()
		default:
			return nil, false
		}
		v.Litres = &l
		d.Act = Fact{v}
	case model.Fence:
		v.Kv = it.v
		if v.Kv > 100 {
			v.Kv /= 1000
		}
		d.Act = Fact{v}
	case model.Setting:
		if dim != noDimension && dim != mass {
			return nil, false
		}
		u := it.unit
		if dim == noDimension {
			u = r.massUnit()
		}
		v.Number = model.Float(u.si(it.v))
		d.Act = Fact{v}
	default:
		if days, ok := withDays(f.Fact, it, dim); ok {
			d.Act = Fact{days}
			break
		}
		return nil, false
	}
	if f := d.Act.(Fact).Fact; f.Check() != nil {
		return nil, false
	}
	return []Entry{d}, true
}

// levelAnswer fills a level told as a part of the whole.
func levelAnswer(d Entry, it *item) ([]Entry, bool) {
	part := it.v
	if it.kind == itQty {
		part /= 100
	}
	switch v := d.Act.(Fact).Fact.(type) {
	case model.FeedLevel:
		v.FeedKg, v.Fraction = nil, &part
		d.Act = Fact{v}
	case model.Water:
		v.Litres, v.Full, v.Fraction = nil, false, &part
		d.Act = Fact{v}
	default:
		return nil, false
	}
	if d.Act.(Fact).Check() != nil {
		return nil, false
	}
	return []Entry{d}, true
}

// withDays gives a treatment the withdrawal days of the answer.
func withDays(f model.Fact, it *item, dim dimension) (model.Fact, bool) {
	if dim != noDimension && dim != days || it.v != float64(int(it.v)) {
		return nil, false
	}
	n := int(it.v)
	if dim == days {
		n = int(it.si() + 0.5)
	}
	switch v := f.(type) {
	case model.Worm:
		v.WithdrawalDays = &n
		return v, true
	case model.Treat:
		v.WithdrawalDays = &n
		return v, true
	}
	return nil, false
}

// onlyDate says that the text tells a day and nothing else of the trade: "the 3rd, he
// said", where "that's it for today" and "fed them yesterday" answer nothing.
func (r *reader) onlyDate() bool {
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itDay && it.day.form == dayOffset && it.day.a <= 0:
			if len(r.items) > 2 {
				return false
			}
		case it.kind == itDay, it.kind == itClock:
		case it.pig >= 0, it.feeder >= 0, it.barrel >= 0, it.pen >= 0, it.unit != 0 && it.kind == itQty:
			return false
		case it.kind == itWord && it.isAny(answersNoDate):
			return false
		}
	}
	return true
}

var answersNoDate = setOf(sFill, sPour, sFull, sEmpty, sWorm, sTreat, sProduct, sGave, sMove, sSick, sDown, sOut, sDied, sSold, sWeigh, sTape, sMixed, sBuy, sPay, sThanks, sRemind, sUndo, sFence, sWallow, sHose)
