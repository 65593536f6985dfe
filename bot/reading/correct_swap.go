package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// swapWords say that two things told were told the wrong way round.
var swapWords = setOfWords(split(`swapped, swap, switched, switch, mixed up, mix up, mixed, wrong way round, wrong way around, other way round,
	other way around, backwards, the wrong way round, the other way round, them swapped, transposed, crossed`))

// otherThanWeights are what no swap of two weighings speaks of: "4 coughs since we
// switched the bedding, and 3 does not eat".
var otherThanWeights = setOf(sSick, sWell, sFeed, sFeeder, sWater, sBarrel, sWorm, sTreat, sProduct, sFence, sWallow)

// swap reads "swapped ivy and ned": the latest weighings of the two change
// their pigs. Where they cannot be found nothing is taken for anything else.
func (r *reader) swap() (got Reading, said bool) {
	var pigs []int16
	told := r.swapSaid()
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0:
			pigs = append(pigs, it.pig)
		case it.number() && !it.soft && !(told && it.v == 2), it.quest, it.pen >= 0, it.isAny(otherThanWeights):
			return Reading{}, false
		case swapWords[it.s]:
			told = true
		}
	}
	if told && len(pigs) == 0 {
		return r.swapLast()
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

// swapPhrases say by themselves, in a text of a few words, that two things told were
// told the wrong way round.
var swapPhrases = split(`swapped, swap them, swap those, swap those two, those two mixed up, swap the two, switched, switch them, switch those, mixed up, mixed them up, backwards, reversed, interchanged, vice versa,
	other way around, other way round, wrong way around, wrong way round, transposed`)

// swapSaid says that a short text is but such a phrase.
func (r *reader) swapSaid() bool {
	if len(r.items) > 8 {
		return false
	}
	for k := range r.items {
		it := &r.items[k]
		if it.number() && !it.soft && it.v != 2 || it.kind == itDay || it.quest || it.pen >= 0 && it.pig < 0 || it.feeder >= 0 || it.barrel >= 0 || it.isAny(setOf(sPen, sFeeder, sBarrel, sRecipe, sFeed, sPlan)) {
			return false
		}
	}
	text := " " + strings.ToLower(strings.Join(strings.Fields(strings.Trim(r.text, " .!")), " ")) + " "
	for _, p := range swapPhrases {
		if strings.Contains(text, " "+p+" ") {
			return true
		}
	}
	return false
}

// swapLast changes the pigs of the two weighings of the text before, where it told
// just two of single pigs: "I had them swapped".
func (r *reader) swapLast() (Reading, bool) {
	var two []*Recorded
	for k := range r.c.Before {
		rec := &r.c.Before[k]
		if len(two) > 0 && (rec.Text != two[0].Text || !rec.At.Equal(two[0].At)) {
			break
		}
		f, ok := rec.Entry.Act.(Fact)
		if !ok {
			return Reading{}, false
		}
		if w, is := f.Fact.(model.Weigh); !is || len(w.Animals) != 1 || w.Animals[0] == model.All {
			return Reading{}, false
		}
		two = append(two, rec)
	}
	if len(two) != 2 || r.c.Now.Sub(two[0].At) > swapsWithin {
		return Reading{}, false
	}
	a, b := two[1], two[0]
	return Reading{Entries: []Entry{r.withFiguresOf(a, b), r.withFiguresOf(b, a)}}, true
}

// swapsWithin is how long after two weighings a swap without names is about them.
// Common practice, no source.
const swapsWithin = 24 * time.Hour
