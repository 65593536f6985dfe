package reading

import "troughbell/model"

// Lengths in cm that a pig of any age has.
const (
	shortestPigCm = 30
	longestPigCm  = 250
)

// lengthToo reads a text that gives the length of the pig that was taped last, by itself
// or beside what it puts right: "and 119 long", "should read 107, and she was 119 long".
func (r *reader) lengthToo() (Reading, bool) {
	defer r.repliedTo()()
	if len(r.c.Before) == 0 || len(r.items) < 2 || len(r.items) > 12 || r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return Reading{}, false
	}
	at := r.lengthAt()
	rec := &r.c.Before[0]
	f, ok := rec.Entry.Act.(Fact)
	w, is := f.Fact.(model.Weigh)
	if at < 0 || !ok || !is || w.GirthCm <= 0 || len(r.c.Before) > 1 && r.c.Before[1].Text == rec.Text {
		return Reading{}, false
	}
	unit := r.lengthUnit()
	if said := r.inUnitOf(&item{kind: itNum}, rec.Text); said.unit.dim() == length {
		unit = said.unit // "gus girth 91 cm", "and length 96"
	}
	if k := r.firstUnit(length); k != 0 {
		unit = k
	}
	with := rec.Entry
	if !r.addLength(&with, at, unit) {
		return Reading{}, false
	}
	var rest []item
	told := false
	for k := range r.items {
		x := &r.items[k]
		if k == at || x.is(sLength) && !x.is(sFiller) && (k == at+1 || k < at && k >= at-2) {
			continue
		}
		if x.quest || x.pig >= 0 && r.pigs[x.pig].Name != w.Animals[0] {
			return Reading{}, false
		}
		told = told || x.number() && !x.soft || x.kind == itWord && x.unit.dim() == length && x.s != "in"
		if !(x.kind == itWord && (x.isAny(setOf(sFiller, sIs, sPronoun, sAnd)) || amendSmall[x.s]) || x.soft || x.pig >= 0 || x.number() || amendWords[x.s] || x.is(sNo) || x.is(sGirth) || x.unit != 0) {
			return Reading{}, false
		}
		rest = append(rest, *x)
	}
	if !told {
		return r.replaced(rec, with), true
	}
	for len(rest) > 0 && rest[len(rest)-1].kind == itWord && rest[len(rest)-1].isAny(setOf(sFiller, sIs, sPronoun, sAnd)) && rest[len(rest)-1].unit == 0 {
		rest = rest[:len(rest)-1] // "and she was"
	}
	all := r.items
	r.items = rest
	got, ok := r.correction()
	r.items = all
	if !ok || len(got.Entries) != 1 || got.Entries[0].Replace == "" {
		return Reading{}, false
	}
	return got, r.addLength(&got.Entries[0], at, unit)
}

// addLength gives a pig that was taped the length at item k, in the unit unless it has one
// of its own.
func (r *reader) addLength(e *Entry, k int, unit unitID) bool {
	f, ok := e.Act.(Fact)
	w, is := f.Fact.(model.Weigh)
	it := &r.items[k]
	if it.kind == itQty {
		unit = it.unit
	}
	cm := unit.si(it.v) * 100
	if !ok || !is || w.GirthCm <= 0 || unit.dim() != length || cm < shortestPigCm || cm > longestPigCm {
		return false
	}
	w.LengthCm = cm
	e.Act = Fact{w}
	return w.Check() == nil
}

// lengthAt is the item of a number that is called a length, -1 if there is none.
func (r *reader) lengthAt() int {
	for k := range r.items {
		it := &r.items[k]
		if !it.number() || it.soft || it.kind == itQty && !it.qty(length) {
			continue
		}
		if k+1 < len(r.items) && r.items[k+1].is(sLength) && r.items[k+1].gap == gapNone || k > 0 && r.items[k-1].is(sLength) || k > 1 && r.items[k-2].is(sLength) && r.items[k-1].isAny(setOf(sIs, sFiller)) {
			return k
		}
	}
	return -1
}

// firstUnit is the first unit of the dimension that the text names, 0 if none.
func (r *reader) firstUnit(d dimension) unitID {
	for k := range r.items {
		if it := &r.items[k]; it.unit != 0 && it.unit.dim() == d && it.s != "in" {
			return it.unit
		}
	}
	return 0
}
