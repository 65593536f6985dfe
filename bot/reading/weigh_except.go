package reading

import (
	"slices"

	"troughbell/model"
)

// exceptWeighed takes a pig out of the many that one weight is told of where it is told
// as the exception, with a weight of its own: "everyone about 75 except kidlat, he is 80".
func (r *reader) exceptWeighed() {
	for k := 1; k < len(r.items); k++ {
		p := &r.items[k]
		if p.pig < 0 || !r.excepts(k) {
			continue
		}
		name, many, own := r.pigs[p.pig].Name, -1, false
		for n := range r.out {
			f, ok := r.out[n].Act.(Fact)
			if !ok {
				continue
			}
			w, ok := f.Fact.(model.Weigh)
			switch {
			case !ok:
			case len(w.Animals) == 1 && w.Animals[0] == name:
				own = true
			case len(w.Animals) > 0 && w.Animals[0] == model.All || slices.Contains(w.Animals, name):
				many = n
			}
		}
		if many < 0 || !own {
			continue
		}
		w := r.out[many].Act.(Fact).Fact.(model.Weigh)
		names := w.Animals
		if names[0] == model.All {
			names = nil
			for a := range r.alive {
				names = append(names, r.pigs[a].Name)
			}
		}
		w.Animals = slices.DeleteFunc(slices.Clone(names), func(n string) bool { return n == name || n == "" })
		if len(w.Animals) > 0 {
			r.out[many].Act = Fact{w}
			if r.oneStandsOut(w, r.selectionOf(w.Animals), r.out[many].On) { // "all 180" may be their mean
				r.out[many].Act = doubtful([]Entry{r.out[many]})
			}
		}
	}
}

// excepts says that a word of excepting stands right before the pig at item k.
func (r *reader) excepts(k int) bool {
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		it := &r.items[n]
		if it.is(sBut) || it.s == "save" || it.s == "save for" || it.s == "but" {
			return true
		}
		if it.kind != itWord || !it.is(sFiller) || r.items[n+1].gap >= gapStop {
			return false
		}
	}
	return false
}

// selectionOf is the living pigs of these names.
func (r *reader) selectionOf(names []string) selection {
	sel := selection{any: true}
	for p := range r.alive {
		if slices.Contains(names, r.pigs[p].Name) {
			sel.pigs = append(sel.pigs, int16(p))
		}
	}
	return sel
}
