package reading

import (
	"maps"

	"troughbell/model"
)

// A change of the mix that names only what changes: "peas 20 instead of 15 and wheat
// only 25". The rest of the recipe stays as it was.

// changesMix are words that tell such a change.
var changesMix = setOfWords(split(`instead of, instead, rather than, change, changed, change the recipe, changing, only, up from, down from, from now, from now on, increase, increased, reduce, reduced, raise, raised, lower, lowered, cut, adjust, adjusted`))

// beforeOld stand between the new number and the old.
var beforeOld = setOfWords(split("instead of, rather than, up from, down from, not, from, was"))

// forceMixChange settles the sentences that tell of one.
func (r *reader) forceMixChange() {
	recipe, ok := r.c.Herd.Recipe()
	if !ok {
		return
	}
	for k := range r.items {
		it := &r.items[k]
		if !changesMix[it.s] || it.quest || r.force[k] != 0 {
			continue
		}
		s := span{fRecipe, r.sentenceStart(k), r.sentenceEnd(k)}
		if _, ok := r.mixChange(s, recipe); ok {
			r.forceRange(s.i, s.j, fRecipe)
		}
	}
}

// mixChange is the recipe with what a sentence changes of it; false where it tells of
// no change, or of anything else.
func (r *reader) mixChange(s span, recipe model.Recipe) (map[string]float64, bool) {
	out := maps.Clone(recipe.Ingredients)
	changes, named, told := 0, "", false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		told = told || changesMix[it.s]
		switch {
		case it.is(sIngredient) && it.canon != "":
			if named != "" {
				return nil, false
			}
			if named = it.canon; out[named] == 0 {
				return nil, false // what was not in it is told as a recipe
			}
			if k > s.i && r.items[k-1].kind == itNum && !r.items[k-1].soft && !beforeOld[r.wordAt(k-2, s.i)] || k > s.i && r.items[k-1].qty(mass) { // "45 peas"
				out[named], named = r.mixKg(&r.items[k-1]), ""
				changes++
			}
		case it.kind == itNum && !it.soft && !it.ord && !it.rng, it.qty(mass):
			switch {
			case k > s.i && beforeOld[r.items[k-1].s]: // the old one
			case named != "":
				out[named], named = r.mixKg(it), ""
				changes++
			case k+1 < s.j && r.items[k+1].is(sIngredient):
			default:
				return nil, false
			}
		case it.number() && !it.soft, it.kind == itDim, it.kind == itSlash, it.kind == itFrac, it.pig >= 0, it.feeder >= 0, it.barrel >= 0, it.quest,
			it.isAny(setOf(sBuy, sPay, sPour, sFill, sFull, sMixed, sPlan, sIf, sHearsay, sForeign, sWeigh)) && !it.isAny(setOf(sFiller, sRecipe)) && !changesMix[it.s]:
			return nil, false
		}
	}
	if !told || changes == 0 || named != "" || changes >= len(out) {
		return nil, false
	}
	return out, true
}

// wordAt is what item k says, where it does not stand before item from.
func (r *reader) wordAt(k, from int) string {
	if k < from {
		return ""
	}
	return r.items[k].s
}

// mixKg is the amount of an item, of which a bare number is in the herd's unit.
func (r *reader) mixKg(it *item) float64 {
	if it.kind == itNum {
		return r.massUnit().si(it.v)
	}
	return it.si()
}

// fillMixChange records such a change.
func (r *reader) fillMixChange(s span) bool {
	recipe, ok := r.c.Herd.Recipe()
	if !ok {
		return false
	}
	ing, ok := r.mixChange(s, recipe)
	if !ok {
		return false
	}
	r.useAll(s)
	r.emit(Fact{model.Recipe{Ingredients: ing}}, s)
	return true
}
