package reading

// A mix told in parts, "3 parts corn and 1 part soy", tells shares and no amounts.

// mixParts makes shares of such parts.
func (r *reader) mixParts() {
	for k := 0; k+1 < len(r.items); k++ {
		it, part := &r.items[k], &r.items[k+1]
		if it.kind != itNum || it.ord || it.rng || it.v <= 0 || part.gap != gapNone || part.s != "part" && part.s != "parts" {
			continue
		}
		if !r.ingredientNear(k) {
			continue
		}
		it.kind, it.unit, it.soft = itQty, unitPct, false
		it.to = part.to
		r.blank(k + 1)
	}
}

// ingredientNear says that an ingredient stands right behind the parts at item k, or
// before them.
func (r *reader) ingredientNear(k int) bool {
	for n := k + 2; n < len(r.items) && n <= k+4 && r.items[n].gap == gapNone; n++ {
		if it := &r.items[n]; it.is(sIngredient) && it.canon != "" {
			return true
		} else if !it.is(sFiller) && it.s != "of" {
			break
		}
	}
	return k > 0 && r.items[k].gap == gapNone && r.items[k-1].is(sIngredient) && r.items[k-1].canon != ""
}
