package reading

import (
	"iter"
	"slices"

	"troughbell/model"
)

// sexesTold reads a text that only says which of the pigs that came are of which
// sex: "Sage and Apple are boars, the rest gilts". It completes their arrival.
func (r *reader) sexesTold() (*Recorded, Entry, bool) {
	named, sexed := false, false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && !it.near:
			named = true
		case it.isAny(setOf(sBarrow, sGilt, sBoar, sSow)):
			sexed = true
		case it.kind == itWord && it.isAny(setOf(sRest, sIs, sFiller, sAnd, sAll, sBoth, sPronoun, sYes)), it.soft:
		default:
			return nil, Entry{}, false
		}
	}
	if !sexed || !named && !r.has(span{0, 0, len(r.items)}, sAll) {
		return nil, Entry{}, false
	}
	for rec, a := range r.arrivalsBefore() {
		names := make([]newPig, len(a.Animals))
		for n, name := range a.Animals {
			names[n] = newPig{name: name, k: -1}
		}
		for k := range r.items { // all that are named must have come then
			if it := &r.items[k]; it.pig >= 0 && !slices.Contains(a.Animals, r.pigs[it.pig].Name) {
				return nil, Entry{}, false
			}
		}
		a.Sexes = r.arrivalSexes(span{fArrive, 0, len(r.items)}, names, a.Count)
		e := rec.Entry
		e.Act = Fact{a}
		return rec, e, len(a.Sexes) > 0 && a.Check() == nil
	}
	return nil, Entry{}, false
}

// arrivalsBefore yields the arrivals among the person's latest records, the last first.
func (r *reader) arrivalsBefore() iter.Seq2[*Recorded, model.Arrive] {
	return func(yield func(*Recorded, model.Arrive) bool) {
		for x := range r.c.Before {
			rec := &r.c.Before[x]
			f, ok := rec.Entry.Act.(Fact)
			if !ok {
				continue
			}
			if a, ok := f.Fact.(model.Arrive); ok && !yield(rec, a) {
				return
			}
		}
	}
}
