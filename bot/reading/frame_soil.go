package reading

import "troughbell/model"

// soilOf is the soil that a word names; empty for any other word.
func soilOf(word string) model.Soil {
	switch word {
	case "sand", "sandy", "sandy soil", "sandy loam":
		return model.Sand
	case "loam", "loamy", "silt", "silty":
		return model.Loam
	case "clay", "heavy clay", "clayey", "clay soil", "gumbo":
		return model.Clay
	}
	return ""
}

var groundWords = phrasesOf("soil, ground, dirt, pen, pens, paddock, paddocks, pasture, pastures, lot, field")

// tellsSoil says that a clause tells what soil the pens have.
func (r *reader) tellsSoil(s span) bool {
	ground := len(r.c.Herd.Pens) > 0 && saysAny(r.said(s), groundWords) || r.numberedPen(s) != ""
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.quest || it.pig >= 0 || it.number() && !it.soft && it.pen < 0 && !(k > s.i && r.items[k-1].is(sPen)) || it.kind == itDim || it.isAny(setOf(sBuy, sFill, sPour, sMove, sPay, sFeeder, sWallow)) {
			return false
		}
		ground = ground || it.pen >= 0
	}
	return ground && !saysAny(r.said(s), denied)
}

// fillSoil reads the soil of the pens named, of all where none is.
func (r *reader) fillSoil(s span) {
	var soil model.Soil
	var names []string
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if x := soilOf(it.s); x != "" {
			soil = x
		}
		if it.pen >= 0 {
			names = append(names, r.c.Herd.Pens[it.pen].Name)
		}
	}
	if n := r.numberedPen(s); n != "" && len(names) == 0 {
		names = append(names, n)
	}
	if len(names) == 0 {
		for _, p := range r.c.Herd.Pens {
			names = append(names, p.Name)
		}
	}
	r.useAll(s)
	for _, n := range names {
		r.set(s, model.Setting{Key: model.SetPen, Thing: &model.Thing{Name: n, Soil: soil}})
	}
}

// numberedPen is a pen named by its number that the herd may not have yet: "pen 1".
func (r *reader) numberedPen(s span) string {
	for k := s.i; k+1 < s.j; k++ {
		if n := &r.items[k+1]; r.items[k].is(sPen) && r.items[k].pen < 0 && n.kind == itNum && n.gap == gapNone && n.pen < 0 {
			return r.items[k].s + " " + n.s
		}
	}
	return ""
}
