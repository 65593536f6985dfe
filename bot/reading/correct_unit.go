package reading

import (
	"math"

	"troughbell/model"
)

// longestUnit is how many items a text has at most that puts but a unit right.
const longestUnit = 8

// unitInstead reads a text that gives the number of one of the last records another unit:
// "buckets not bags", "thats cm".
func (r *reader) unitInstead() (Reading, bool) {
	defer r.repliedTo()()
	now, not, ok := r.unitMeant()
	if !ok {
		return Reading{}, false
	}
	for n := range r.c.Before {
		f, ok := r.recent(n)
		if !ok || not == 0 && r.c.Before[n].Text != r.c.Before[0].Text {
			continue
		}
		count, ok := r.countIn(n, f, now, not)
		if !ok {
			continue
		}
		of := item{kind: itQty, v: count, unit: now, pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1}
		if pour, is := f.(model.Refill); is && now.dim() == vessel {
			if _, known := r.sizeOf(now); !known {
				return r.askSizeInstead(&r.c.Before[n], pour, now, count), true
			}
		}
		if e, ok := r.amend(&amends{now: []item{of}}, n); ok {
			return r.replaced(&r.c.Before[n], e), true
		}
	}
	return Reading{}, false
}

// unitMeant is the unit that the text says was meant, and the one that it denies.
func (r *reader) unitMeant() (now, not unitID, ok bool) {
	if len(r.c.Before) == 0 || len(r.items) < 2 || len(r.items) > longestUnit || r.items[0].s == "no" && r.items[1].gap == gapNone {
		return 0, 0, false
	}
	cue, denied := false, false
	for k := range r.items {
		it := &r.items[k]
		switch s := it.s; {
		case it.quest || it.pig >= 0 || it.kind != itWord && !it.soft:
			return 0, 0, false
		case s == "not" || s == "instead of" || s == "rather than":
			cue, denied = true, true
		case it.unit != 0 && len(s) > 1 && s != "in" && !it.is(sFiller):
			switch {
			case denied && not == 0:
				not = it.unit
			case now == 0:
				now = it.unit
			case now != it.unit:
				return 0, 0, false
			}
		case amendWords[s] || it.is(sNo) || s == "that was" || s == "thats" || s == "that's" || s == "it was" || s == "that is" || s == "was" || s == "were" || s == "those were" || s == "those are" || s == "its" || s == "it's" || s == "it is":
			cue = true
		case amendSmall[s], it.soft, it.isAny(setOf(sFiller, sPronoun, sIs)) && !it.isAny(setOf(sPlan, sIf, sHearsay, sNot)):
		default:
			return 0, 0, false
		}
	}
	return now, not, cue && now != 0 && now != not
}

// countIn is how many of its own units the n-th record was told to have, where another
// unit could be put in their place; not is the one that is denied, 0 if none is.
func (r *reader) countIn(n int, f model.Fact, now, not unitID) (float64, bool) {
	told := r.inUnitOf(&item{kind: itNum}, r.c.Before[n].Text)
	if told.unit != 0 && told.unit.dim() == money {
		return 0, false
	}
	if not != 0 && told.kind == itQty && told.unit != not && !sameMeasure(told.unit, not) || told.kind == itQty && told.unit == now {
		return 0, false
	}
	one := *told
	one.v = 1
	if one.kind == itNum && not != 0 {
		one.kind, one.unit = itQty, not
	}
	as := item{kind: itQty, unit: now}
	if _, could := r.amountOf(f, &as); !could {
		return 0, false
	}
	had, ok := r.amountOf(f, &one)
	each, is := r.asAmount(f, &one)
	if !ok || !is || had <= 0 || each <= 0 {
		return 0, false
	}
	count := math.Round(had/each*100) / 100
	as.v = count
	if same, is := r.asAmount(f, &as); is && math.Abs(same-had) < 0.006*had {
		return 0, false // it was told in that unit
	}
	return count, true
}

// sameMeasure says that two words are said for one measure, as bag and sack are.
func sameMeasure(a, b unitID) bool {
	names := sizeNames(a.name())
	return a.dim() == vessel && b.dim() == vessel && len(names) > 1 && (names[0] == b.name() || names[1] == b.name())
}

// askSizeInstead asks what a measure holds before the pour is told in it anew.
func (r *reader) askSizeInstead(rec *Recorded, pour model.Refill, u unitID, count float64) Reading {
	s := span{fFeed, 0, len(r.items)}
	r.askSize(s, pour.Feeder, contents{vessel: u.name(), vessels: count, full: pour.Full})
	got := Reading{Entries: append([]Entry(nil), r.out...)}
	c := got.Entries[len(got.Entries)-1].Act.(Clarify)
	anew := func(e *Entry) {
		if fact, ok := e.Act.(Fact); ok && fact.Kind() == "refill" {
			e.On, e.Minute, e.Dated, e.Replace = rec.Entry.On, rec.Entry.Minute, rec.Entry.Dated, rec.ID
		}
	}
	for k := range c.Draft {
		anew(&c.Draft[k])
	}
	for k := range c.Choices {
		for n := range c.Choices[k].Entries {
			anew(&c.Choices[k].Entries[n])
		}
	}
	return got
}
