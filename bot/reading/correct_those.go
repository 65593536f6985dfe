package reading

import (
	"slices"
	"time"

	"troughbell/model"
)

// onlyThose reads a text that narrows a drug or a move told last to some of the pigs: "turns
// out that was only Gus and Pearl", "204 got none, just 205".
func (r *reader) onlyThose() (Reading, bool) {
	if len(r.c.Before) == 0 || r.part || len(r.items) > 24 || r.c.Now.Sub(r.c.Before[0].At) > narrowsWithin {
		return Reading{}, false
	}
	rec := &r.c.Before[0]
	f, ok := rec.Entry.Act.(Fact)
	if !ok || rec.ID == "" || len(r.c.Before) > 1 && r.c.Before[1].Text == rec.Text && r.c.Before[1].At.Equal(rec.At) {
		return Reading{}, false
	}
	var was []string
	pen := ""
	switch v := f.Fact.(type) {
	case model.Worm:
		was = v.Animals
	case model.Treat:
		was = v.Animals
	case model.Move:
		was, pen = v.Animals, v.Pen
	default:
		return Reading{}, false
	}
	at := -1
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.quest, it.qty(mass), it.qty(days), it.isAny(setOf(sProduct, sFeed, sFeeder, sBarrel, sWater, sWeigh, sTape, sDied, sSold, sIf, sPlan, sSick, sWell, sDown, sOut, sWallow, sFence)) && !it.is(sFiller), it.is(sMove) && !it.is(sFiller) && pen == "", it.pen >= 0 && it.pig < 0 && r.c.Herd.Pens[it.pen].Name != pen:
			return Reading{}, false
		case at < 0 && narrowing[it.s]:
			at = k
		}
	}
	if at < 0 {
		return Reading{}, false
	}
	end := at + 1
	for end < len(r.items) && (end == at+1 || r.items[end].gap < gapComma) {
		it := &r.items[end]
		if it.pig < 0 && it.group < 0 && !it.isAny(setOf(sBarrow, sGilt, sYoung, sOld, sAnd, sPigs)) && !(it.kind == itNum && it.v <= float64(r.alive)) && !(it.is(sFiller) && end+1 < len(r.items) && r.items[end+1].isAny(setOf(sBarrow, sGilt, sYoung, sOld)) || it.is(sFiller) && end == at+1) {
			break
		}
		end++
	}
	sel := r.selectPigs(at+1, end)
	names := sel.names(r)
	if !sel.any || sel.all || sel.near || sel.lost || sel.stray || sel.some || len(names) == 0 || len(names) >= r.alive || slices.Contains(names, "") {
		return Reading{}, false
	}
	everyone := len(was) == 0 || was[0] == model.All
	for _, n := range names {
		if !everyone && !slices.Contains(was, n) {
			return Reading{}, false
		}
	}
	if !everyone && len(names) >= len(was) {
		return Reading{}, false
	}
	e := rec.Entry
	some, ok := withAnimals(f.Fact, names)
	if !ok {
		return Reading{}, false
	}
	e.Act = Fact{some}
	return r.replaced(rec, e), true
}

// narrowsWithin is for how long what was told of many may be narrowed by an "only".
const narrowsWithin = 24 * time.Hour

// narrowing narrow what was told.
var narrowing = setOfWords(split("only, just, was only, was just, it was just, it was only, that was only, that was just, just the"))
