package reading

import "slices"

// replaceDenied puts an entry in the place of the record that holds the number
// denied beside it: "I gave you the wrong figure. Clover weighs 189 pounds, not
// 198."
func (r *reader) replaceDenied(es []Entry) {
	if r.denied == 0 {
		return
	}
	for k := range es {
		f, ok := es[k].Act.(Fact)
		if !ok || es[k].Replace != "" {
			continue
		}
		for n := range r.c.Before {
			rec := &r.c.Before[n]
			old, ok := rec.Entry.Act.(Fact)
			if !ok || rec.ID == "" || r.c.Now.Sub(rec.At) > 48*3600*1e9 || old.Kind() != f.Kind() || !r.holdsNumber(old.Fact, r.denied) || !slices.Equal(AnimalsOf(old.Fact), AnimalsOf(f.Fact)) {
				continue
			}
			es[k].Replace, es[k].On, es[k].Dated = rec.ID, rec.Entry.On, rec.Entry.Dated
			break
		}
	}
}

// wasThat is the item of the pig, the thing or the number that a short text says the
// latest record was about, "that was pepper", "it was the big hopper", 0 if it does
// not. A small number may be the heat of the day.
func (r *reader) wasThat() int {
	if len(r.items) > 5 || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > 15*60*1e9 {
		return 0
	}
	k, led := 0, false
	for ; k < len(r.items); k++ {
		it := &r.items[k]
		if it.quest {
			return 0
		}
		switch it.s {
		case "that was", "it was", "that's", "thats", "that is", "it's", "its", "was", "i meant", "meant", "should be", "should have been", "that should be", "it should be", "instead of":
			led = true
			continue
		}
		if it.pig >= 0 || it.kind == itThing || it.number() && !it.soft {
			break
		}
		if it.kind != itWord || !it.isAny(setOf(sFiller, sIs, sNo, sPronoun)) {
			return 0
		}
	}
	if !led || k == 0 || k >= len(r.items) {
		return 0
	}
	if it := &r.items[k]; it.pig < 0 && it.kind != itThing && (it.kind != itNum || it.v < hotterThanAnyDay) || k+1 < len(r.items) && r.items[k+1].gap < gapComma && r.items[k+1].s != "not" && r.items[k+1].s != "one" && !r.items[k+1].isAny(setOf(sBarrel, sFeeder, sPen)) {
		return 0
	}
	return k
}

// hotterThanAnyDay is a number that is no day's heat in either unit.
const hotterThanAnyDay = 130

// theOtherOne says that the text tells which pig it was after all, and that it was
// mixed up with the one told before: "its 504 thats limping. i mixed em up". It gives
// the item of that pig; what stands behind it but tells it again.
func (r *reader) theOtherOne() int {
	at, mixed := -1, false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0 && at < 0 && k > 0 && k <= 3 && firstWord(r.items[0].s) != "if":
			at = k
		case it.pig >= 0, it.quest, it.number() && !it.soft:
			return 0
		case it.unit == unitBatch:
			return 0
		case it.s == "mixed up", it.s == "mixed them up", it.s == "up" && (r.items[max(k-1, 0)].s == "mixed" || r.items[max(k-2, 0)].s == "mixed"):
			mixed = true
		}
	}
	if at < 0 || !mixed || len(r.c.Before) == 0 || r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return 0
	}
	switch r.items[at-1].s {
	case "its", "it's", "it is", "it was", "thats", "that's", "that was":
	default:
		return 0
	}
	return at
}
