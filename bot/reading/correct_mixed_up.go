package reading

import (
	"slices"

	"troughbell/model"
)

// Who tells a weight again and says that she had it the wrong way round puts the first one
// right: "juno i flipped the digits, 141", "noodle was 68 and gus 71, i had them swapped".

// replaceMixedUp puts weights in the place of those that were told of the same pigs on the
// same day, where the text says that something was mixed up.
func (r *reader) replaceMixedUp(es []Entry) {
	if len(r.c.Before) == 0 || !r.saysMixedUp() {
		return
	}
	for k := range es {
		f, ok := es[k].Act.(Fact)
		w, is := f.Fact.(model.Weigh)
		if !ok || !is || es[k].Replace != "" {
			continue
		}
		for n := range r.c.Before {
			old, ok := r.recent(n)
			rec := &r.c.Before[n]
			o, is := old.(model.Weigh)
			if !ok || !is || rec.ID == "" || rec.Entry.On != es[k].On || !slices.Equal(o.Animals, w.Animals) {
				continue
			}
			es[k].Replace = rec.ID
			break
		}
	}
}

// saysMixedUp says that the text tells of having got something the wrong way round.
func (r *reader) saysMixedUp() bool {
	for i := range r.toks {
		switch s := r.toks[i].s; {
		case mixedUpWords[s]:
			return true
		case s == "mixed" || s == "mix":
			for n := i + 1; n < len(r.toks) && n <= i+3; n++ {
				if r.toks[n].s == "up" {
					return true
				}
			}
		case (s == "looks" || s == "looked") && i > 0 && r.toks[i-1].kind == tokNum && i+2 < len(r.toks) && r.toks[i+1].s == "like": // "my 3 looks like an 8"
			return true
		case (s == "wrong" || s == "other") && i+1 < len(r.toks) && (r.toks[i+1].s == "way" || r.toks[i+1].s == "order"):
			return true
		}
	}
	return false
}

var mixedUpWords = listed("digits, digit, flipped, flippd, fliped, flip, swapped, swaped, switched, transposed, backwards, backward, reversed, misread, mistyped, fat-fingered, confused, muddled")

// deniedThing puts a filling in the place of the latest record where the text says that it
// was not what that one is of: "that was the feeder i topped up, not the tank".
func (r *reader) deniedThing(es []Entry) {
	if len(r.c.Before) == 0 || len(es) != 1 || es[0].Replace != "" || r.c.Now.Sub(r.c.Before[0].At) > justTold {
		return
	}
	f, ok := es[0].Act.(Fact)
	old, was := r.recent(0)
	if !ok || !was || r.c.Before[0].ID == "" {
		return
	}
	for k := 1; k < len(r.items); k++ {
		it, p := &r.items[k], &r.items[k-1]
		if p.s == "the" && k > 1 {
			p = &r.items[k-2]
		}
		if !p.is(sNot) || p.pig >= 0 {
			continue
		}
		_, feed := f.Fact.(model.Refill)
		_, water := f.Fact.(model.Water)
		_, wasFeed := old.(model.Refill)
		_, wasWater := old.(model.Water)
		switch {
		case feed && wasWater && (it.barrel >= 0 || it.isAny(setOf(sBarrel, sWater)) && it.feeder < 0), water && wasFeed && (it.feeder >= 0 || it.isAny(setOf(sFeeder, sFeed)) && it.barrel < 0):
			es[0].Replace, es[0].On, es[0].Dated = r.c.Before[0].ID, r.c.Before[0].Entry.On, r.c.Before[0].Entry.Dated
			return
		}
	}
}
