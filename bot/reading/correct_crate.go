package reading

import (
	"strings"

	"troughbell/model"
)

// crateOff reads a text that takes what the crate weighs off the weights told right
// before: "minus 5.5 for the crate", "that was with the crate, 5.5".
func (r *reader) crateOff() (Reading, bool) {
	defer r.repliedTo()()
	if len(r.c.Before) == 0 || len(r.items) < 2 || len(r.items) > 12 || len(r.c.ReplyTo) == 0 && r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return Reading{}, false
	}
	crate, off := -1, false
	boxed := false
	for k := range r.items {
		it := &r.items[k]
		switch s := it.s; {
		case it.quest || it.pig >= 0 || it.kind == itThing:
			return Reading{}, false
		case tareThings[s]:
			boxed = true
		case it.number() && !it.soft:
			if crate >= 0 || it.kind == itQty && !it.qty(mass) || it.ord {
				return Reading{}, false
			}
			crate, off = k, off || it.minus
		case it.isAny(setOf(sCrate, sEmptyCrate)):
			boxed = true
			off = off || strings.Contains(s, "with") || strings.Contains(s, "incl") || strings.Contains(s, "minus") || strings.Contains(s, "less")
		case crateOffWords[s]:
			off = true
		case it.kind == itWord && it.isAny(setOf(sFewer, sBut)):
			off = true
		case crateSmall[s] || amendSmall[s] || amendWords[s], it.soft, it.kind == itWord && it.isAny(setOf(sFiller, sIs, sPronoun, sAnd, sWeigh, sNo)) && !it.isAny(setOf(sPlan, sIf)):
		default:
			return Reading{}, false
		}
	}
	if crate < 0 || !boxed || !off {
		return Reading{}, false
	}
	it := &r.items[crate]
	kg := r.massUnit().si(it.v)
	if it.kind == itQty {
		kg = it.si()
	}
	var got Reading
	for k := range r.c.Before {
		rec := &r.c.Before[k]
		f, ok := rec.Entry.Act.(Fact)
		if rec.Text != r.c.Before[0].Text {
			break
		}
		w, is := f.Fact.(model.Weigh)
		if !ok || !is || w.WeightKg <= 0 {
			continue
		}
		if w.WeightKg-kg < w.WeightKg*0.2 || strings.Contains(strings.ToLower(rec.Text), "crate") {
			return Reading{}, false // it was taken off already
		}
		e := rec.Entry
		w.WeightKg -= kg
		e.Act = Fact{w}
		got.Entries = append(got.Entries, r.replaced(rec, e).Entries[0])
	}
	return got, len(got.Entries) > 0
}

// crateOffWords say that the crate is in the weight, or is to be taken off it.
var crateOffWords = setOfWords(split(`minus, less, take off, take away, subtract, deduct, knock off, takes off, off, with, with the, incl, including, includes, included, incl., i forgot, forgot, forgot to, didn't, didnt, not, haven't, hasn't, gross, still, without`))

// crateSmall may stand beside them.
var crateSmall = setOfWords(split(`includes, which, that, take, need to, tare, should, have to, you, account, subtracted, deducted, taken, weighs, counted, in it, of that, knock, subtract, deduct`))
