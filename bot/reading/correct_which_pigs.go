package reading

import (
	"slices"

	"troughbell/model"
)

// Which pigs it was is put right by some only by who it was: "turns out that was only gus and
// pearl", "204 got none, just 205", "it was just the girls that went".

// whichPigs reads such a text as the latest worming, treatment or move with other pigs.
func (r *reader) whichPigs() (Reading, bool) {
	if r.part || len(r.items) > whichWords || len(r.c.Before) == 0 || r.items[len(r.items)-1].quest || !r.someNamed() {
		return Reading{}, false
	}
	rec := &r.c.Before[0]
	fact, ok := r.recent(0)
	if !ok || rec.ID == "" {
		return Reading{}, false
	}
	had, pen := r.pigsOf(fact)
	if len(had) < 2 {
		return Reading{}, false
	}
	var now []string
	if named := r.onlyThese(pen); len(named) > 0 {
		now = named
	} else if named := r.gotNone(); len(named) > 0 {
		for _, n := range had {
			if !slices.Contains(named, n) {
				now = append(now, n)
			}
		}
		if len(had)-len(now) != len(named) {
			return Reading{}, false
		}
	}
	if len(now) == 0 || len(now) >= len(had) || slices.ContainsFunc(now, func(n string) bool { return !slices.Contains(had, n) }) {
		return Reading{}, false
	}
	e := rec.Entry
	f, ok := withAnimals(fact, now)
	if !ok {
		return Reading{}, false
	}
	e.Act = Fact{f}
	return r.replaced(rec, e), true
}

// whichWords is how many words such a text has at most. Common practice, no source.
const whichWords = 20

func (r *reader) someNamed() bool {
	return slices.ContainsFunc(r.items, func(it item) bool { return it.pig >= 0 || it.group >= 0 || it.isAny(whoWords) })
}

// pigsOf is which pigs a record of a deed is about, by name, and the pen they went to.
func (r *reader) pigsOf(f model.Fact) (names []string, pen string) {
	switch f := f.(type) {
	case model.Worm:
		names = f.Animals
	case model.Treat:
		names = f.Animals
	case model.Move:
		names, pen = f.Animals, f.Pen
		if len(names) == 0 {
			names = []string{"all"}
		}
	}
	if len(names) != 1 || names[0] != "all" {
		return names, pen
	}
	names = nil
	for _, a := range r.pigs[:r.alive] {
		if a.Name == "" {
			return nil, pen
		}
		names = append(names, a.Name)
	}
	return names, pen
}

// onlyThese are the pigs that an "only" says it was; none where the clause says more.
func (r *reader) onlyThese(pen string) []string {
	for k := range r.items {
		w := lastWord(r.items[k].s)
		if r.items[k].pig >= 0 || w != "only" && w != "just" || k+1 >= len(r.items) {
			continue
		}
		j := k + 1
		for ; j < len(r.items) && (j == k+1 || r.items[j].gap < gapComma || r.items[j].pig >= 0); j++ {
			it := &r.items[j]
			switch {
			case it.pig >= 0, it.group >= 0, it.pig < 0 && it.isAny(whoWords):
			case it.pen >= 0 && pen != "" && samePen(r.c.Herd.Pens[it.pen].Name, pen), it.kind == itDay:
			case it.s == "the" && j > k+1 && j+1 < len(r.items) && r.items[j+1].pig < 0 && r.items[j+1].isAny(whoWords):
				return r.selectPigs(k+1, j).names(r) // "just the big four that went | the babies stayed"
			case it.kind == itWord && (gotWhat[it.s] || it.is(sAnd)):
			default:
				return nil
			}
		}
		for n := range k {
			if it := &r.items[n]; !it.isAny(setOf(sFiller, sIs, sPronoun, sNo, sNot, sAnd, sYes, sThanks)) && it.pig < 0 && !gotWhat[it.s] {
				return nil
			}
		}
		if sel := r.selectPigs(k+1, j); sel.any && !sel.all {
			return sel.names(r)
		}
		return nil
	}
	return nil
}

// gotNone are the pigs that a short text says it was not.
func (r *reader) gotNone() []string {
	not, named := -1, false
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.group >= 0:
			named = true
		case it.pig < 0 && it.is(sNot), it.s == "got none", it.s == "none", it.s == "skipped", it.s == "missed":
			if not >= 0 {
				return nil
			}
			not = k
		case it.kind == itWord && (gotWhat[it.s] || it.isAny(setOf(sAnd, sPronoun, sIs, sNo))):
		default:
			return nil
		}
	}
	if not < 0 || !named {
		return nil
	}
	if sel := r.selectPigs(0, len(r.items)); sel.any && !sel.all {
		return sel.names(r)
	}
	return nil
}

// gotWhat are the words beside pigs that tell of having got it or of having gone.
var gotWhat = listed("got, get, got it, got any, any, it, that, who, which, went, go, gone, had, have, took, take, taken, the, to, in, were, was, did, done, them, none, one, ones, all, of, for, sorry, turns out, it turns out, oops, so, ok, actually, i, we, there, over, received, given, him, her, moved, wormed, treated, dosed")
