package reading

import (
	"strings"

	"troughbell/model"
)

// swapWords say that two things told were told the wrong way round.
var swapWords = setOfWords(split(`swapped, swap, switched, switch, mixed up, mix up, mixed, wrong way round, wrong way around, other way round,
	other way around, backwards, the wrong way round, the other way round, them swapped, transposed, crossed`))

// swap reads "swapped ivy and ned": the latest weighings of the two change
// their pigs. Where they cannot be found nothing is taken for anything else.
func (r *reader) swap() (got Reading, said bool) {
	var pigs []int16
	told := false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0:
			pigs = append(pigs, it.pig)
		case it.number() && !it.soft, it.quest:
			return Reading{}, false
		case swapWords[it.s]:
			told = true
		}
	}
	if !told || len(pigs) != 2 || pigs[0] == pigs[1] {
		return Reading{}, false
	}
	a, b := r.lastWeighed(r.pigs[pigs[0]].Name), r.lastWeighed(r.pigs[pigs[1]].Name)
	if a == nil || b == nil {
		got = r.just(None{Reason: NoneUnknown})
		got.Left = []string{strings.TrimSpace(r.text)}
		return got, true
	}
	return Reading{Entries: []Entry{r.withFiguresOf(a, b), r.withFiguresOf(b, a)}}, true
}

// lastWeighed is the latest weighing of the pig by itself among what the person
// said lately.
func (r *reader) lastWeighed(name string) *Recorded {
	for k := range r.c.Before {
		f, ok := r.c.Before[k].Entry.Act.(Fact)
		if !ok {
			continue
		}
		if w, is := f.Fact.(model.Weigh); is && len(w.Animals) == 1 && w.Animals[0] == name {
			return &r.c.Before[k]
		}
	}
	return nil
}

// withFiguresOf is the weighing of one record with the figures of another.
func (r *reader) withFiguresOf(rec, as *Recorded) Entry {
	w := as.Entry.Act.(Fact).Fact.(model.Weigh)
	w.Animals = rec.Entry.Act.(Fact).Fact.(model.Weigh).Animals
	e := rec.Entry
	e.Act = Fact{w}
	return r.replaced(rec, e).Entries[0]
}
