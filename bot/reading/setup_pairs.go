package reading

import "troughbell/model"

// paired puts the sizes that were said together with the names.
func (w *setUpSaid) paired(r *reader) []newThing {
	sizes, names := w.sizes, w.names
	switch {
	case len(sizes) > 1 && len(sizes) == len(names) && names[len(names)-1].k < sizes[0].k: // "A, B and C: 400, 500 and 450 m2"
		var out []newThing
		for n, z := range sizes {
			t := z.newThing
			t.at, t.said, t.name = z.k, true, names[n].name
			out = append(out, t)
		}
		return out
	case len(sizes) > 1 && (len(sizes) >= len(names) || !w.each):
		return w.nearest(r)
	}
	return w.oneSize()
}

// nearest gives each size the name said nearest to it.
func (w *setUpSaid) nearest(r *reader) []newThing {
	sizes, names := w.sizes, w.names
	nameFirst := len(names) == 0 || names[0].k < sizes[0].k
	var out []newThing
	for n, z := range sizes {
		t := z.newThing
		t.at, t.said = z.k, true
		lo, hi := w.s.i-1, z.k
		if n > 0 {
			lo = sizes[n-1].k
		}
		if !nameFirst {
			lo, hi = z.k, w.s.j
			if n+1 < len(sizes) {
				hi = sizes[n+1].k
			}
		}
		for _, x := range names {
			if x.k > lo && x.k < hi {
				t.name = x.name
				if nameFirst {
					continue // the nearest name counts
				}
				break
			}
		}
		out = append(out, t)
	}
	if len(out) != 2 {
		return out
	}
	if len(names) <= 1 && len(w.generic) == 1 && w.count <= 1 && out[0].l != nil && out[1].kg != nil && r.has(w.s, sHolds) { // "a 30 gallon feeder, holds 180 lb"
		out[0].kg = out[1].kg
		return out[:1]
	}
	if len(names) == 1 && out[0].kg != nil && out[1].l != nil { // "hopper 300 lb, 55 gal"
		out[0].l = out[1].l
		return out[:1]
	}
	return out
}

// oneSize gives all that were counted or named the one size said, if any.
func (w *setUpSaid) oneSize() []newThing {
	if len(w.sizes) == 0 && len(w.nipples) == 0 && w.kind.key != model.SetPen {
		return nil
	}
	names := w.names
	n := max(w.count, len(names), 1)
	if w.count > 1 && w.count < len(names) {
		names = names[:w.count]
		n = w.count
	}
	var out []newThing
	for x := range n {
		t := newThing{at: w.s.i}
		if len(w.sizes) > 0 {
			t = w.sizes[0].newThing
			t.at, t.said = w.sizes[0].k, true
		}
		if x < len(names) {
			t.name = names[x].name
			t.at = names[x].k
		}
		out = append(out, t)
	}
	return out
}

// giveNipples gives nipples to the thing before them, one number to all.
func (w *setUpSaid) giveNipples(out []newThing) {
	for x := range out {
		if len(w.nipples) == 1 && (len(out) == 1 || w.each || len(w.sizes) <= 1) {
			out[x].nipples = w.nipples[0].nipples
			continue
		}
		for _, p := range w.nipples {
			if p.k > out[x].at && (x+1 == len(out) || p.k < out[x+1].at) {
				out[x].nipples = p.nipples
			}
		}
	}
}

// callByWord names things without a name by the words for them, where these tell
// them apart: "a tank of 600 l and a tub of 200 l", "creek 55 gal, tote 275 gal".
func (w *setUpSaid) callByWord(out []newThing) {
	if len(w.names) == 0 && len(out) > 1 && w.count == 0 {
		own := map[string]bool{}
		called := make([]string, len(out))
		for x := range out {
			for _, g := range w.generic {
				if g.k < out[x].at && (x == 0 || g.k > out[x-1].at) {
					called[x] = g.name
				}
			}
			if called[x] != "" {
				own[called[x]] = true
			}
		}
		if len(own) == len(out) {
			for x := range out {
				out[x].name = called[x]
			}
		}
	}
	if len(w.names) == 0 || len(w.generic) < 2 {
		return
	}
	for x := 1; x < len(out); x++ {
		for _, g := range w.generic[1:] {
			if out[x].name == "" && g.k < out[x].at && g.k > out[x-1].at && g.name != w.generic[0].name && g.name != "barrel" && g.name != "feeder" && g.name != "pen" {
				out[x].name = g.name
			}
		}
	}
}
