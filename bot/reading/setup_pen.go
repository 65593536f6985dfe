package reading

import (
	"strings"

	"troughbell/model"
)

// fillSetPen reads pens with their sizes and which one is in use.
func (r *reader) fillSetPen(s span) {
	if r.fillAdded(s) {
		return
	}
	if r.alive > 0 && r.has(span{s.frame, r.sentenceStart(s.i), r.sentenceEnd(s.j - 1)}, sSick) && r.sizeless(s) { // "half the pigs in the village have the flu"
		r.useAll(s)
		r.none(NoneForeign, s)
		return
	}
	if r.inKnownPen(s) {
		r.fillMove(span{fMove, r.clauseFrom(s.i), s.j})
		return
	}
	// Where the pigs are is said behind the sizes: read it first.
	in, cut := r.penInUse(s)
	if r.nowThere(s, in) {
		r.fillMove(span{fMove, r.clauseFrom(s.i), s.j})
		return
	}
	var ts []newThing
	if cut > s.i {
		ts = r.thingsIn(span{s.frame, s.i, cut}, penKind)
	}
	// Pens without a size are set up only where nothing but names was said.
	kept := ts[:0]
	for _, t := range ts {
		if t.said || t.name != "" {
			kept = append(kept, t)
		}
	}
	ts = kept
	if len(ts) > 1 && r.quoteHas(s, "split", "divided", "split into", "divided into", "in all", "altogether", "total") {
		for x := range ts { // "1 acre split in 4 paddocks"
			if ts[x].m2 != nil {
				ts[x].m2 = model.Float(*ts[x].m2 / float64(len(ts)))
			}
		}
	}
	found := false
	for x := range ts {
		if in != "" && samePen(ts[x].name, in) || in == "*" && x == len(ts)-1 {
			ts[x].inUse, found = true, true
		}
	}
	if len(ts) == 1 && r.setUp.inIt {
		ts[0].inUse = true
	}
	for _, t := range ts {
		th := &model.Thing{Name: t.name, AreaM2: t.m2}
		if t.inUse {
			yes := true
			th.InUse = &yes
		}
		r.setUp.pens = append(r.setUp.pens, t.name)
		r.set(s, model.Setting{Key: model.SetPen, Thing: th})
	}
	if in != "" && in != "*" && !found {
		r.penNowInUse(s, in)
	}
	if len(ts) == 0 && in == "" {
		r.idleSpan(s)
	}
}

// inKnownPen says that a running herd's pigs are told to be in the one pen of the herd that
// the span names: "they're in pen three as of this evening".
func (r *reader) inKnownPen(s span) bool {
	if r.alive == 0 || !r.has(s, sInUse) || !r.sizeless(s) {
		return false
	}
	pens := 0
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pen >= 0 && it.pig < 0 {
			pens++
		}
	}
	return pens == 1
}

// nowThere says that a running herd's pigs are told to be in a pen that is known,
// which is a move: "the three small ones are in apple now".
func (r *reader) nowThere(s span, in string) bool {
	if r.alive == 0 || in == "" || in == "*" || !r.sizeless(s) {
		return false
	}
	for _, p := range r.c.Herd.Pens {
		if samePen(p.Name, in) {
			return true
		}
	}
	return false
}

// penNowInUse marks a pen of this text or of the herd as the one in use.
func (r *reader) penNowInUse(s span, name string) {
	yes := true
	for x := range r.out {
		if f, ok := r.out[x].Act.(Fact); ok {
			if st, ok := f.Fact.(model.Setting); ok && st.Key == model.SetPen && samePen(st.Thing.Name, name) {
				th := *st.Thing
				th.InUse = &yes
				st.Thing = &th
				r.out[x].Act = Fact{st}
				return
			}
		}
	}
	if r.noPenOfOurs(name) {
		r.idleSpan(s)
		return
	}
	for _, p := range r.c.Herd.Pens {
		if samePen(p.Name, name) {
			name = p.Name
		}
	}
	th := &model.Thing{Name: name, InUse: &yes}
	for k := s.i; k < s.j; k++ { // "they're in the lower pen, 40 by 60"
		if m2, ok := r.areaOf(&r.items[k]); ok && m2 > 0 && !r.items[k].used {
			r.items[k].used, th.AreaM2 = true, &m2
			break
		}
	}
	switch strings.ToLower(name) {
	case "a pen", "pen", "a", "one pen", "a paddock", "paddock", "a field", "a lot":
		th.Name = "pen 1"
		r.setUp.pens = append(r.setUp.pens, th.Name)
	}
	r.set(s, model.Setting{Key: model.SetPen, Thing: th})
}

// noPenOfOurs says that the words for where the pigs are name no pen: another's land, a
// place where no pig should be, or, where the pens have names, only "the pen".
func (r *reader) noPenOfOurs(name string) bool {
	words := strings.Fields(strings.ToLower(name))
	if len(words) == 0 || len(r.c.Herd.Pens) == 0 {
		return false
	}
	switch words[0] {
	case "his", "her", "their", "someone's", "somebody's", "next":
		return true
	}
	return len(words) == 1 && (words[0] == "pen" || strayPlaces[words[0]] && genericThing[words[0]] == 0)
}

func samePen(a, b string) bool {
	strip := func(s string) string {
		s = strings.ToLower(s)
		s = strings.TrimPrefix(s, "the ")
		if kind, rest, ok := strings.Cut(s, " "); ok && genericThing[kind] == sPen {
			return rest
		}
		return strings.TrimSuffix(s, " pen")
	}
	return strip(a) == strip(b)
}

// penInUse finds which pen the pigs are in and where the words about it begin.
// "*" means the pen said right before.
func (r *reader) penInUse(s span) (name string, cut int) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sInUse) || it.capital && it.gap < gapStop && !strings.Contains(it.s, " ") {
			continue
		}
		it.used = true
		ends := it.s == "in use" || it.s == "current" || it.s == "active" || it.s == "in now" || it.s == "using now" || it.s == "being used" || it.s == "is in use" || strings.HasPrefix(it.s, "is where") || strings.HasPrefix(it.s, "where") || it.s == "in it now" || it.s == "is the current one" || it.s == "occupied" || it.s == "is current"
		if ends {
			// "north 4000 sq ft in use, south 5000": the one before, and the
			// rest goes on.
			if n := r.penNameBefore(k, s); n != "" {
				return n, s.j
			}
			return "*", k
		}
		from := k + 1
		if from < s.j && r.items[from].pen >= 0 && r.items[from].pig < 0 { // "they're in pen 3", which is one item
			r.items[from].used = true
			return r.c.Herd.Pens[r.items[from].pen].Name, r.clauseStart(k, s)
		}
		if from < s.j && (r.items[from].s == "in" || r.items[from].s == "the" || r.items[from].s == "pen" || r.items[from].is(sNow) && !r.items[from].capital) {
			r.items[from].used = true
			if r.items[from].s == "pen" && from+1 < s.j && r.items[from+1].kind == itNum {
				r.items[from+1].used = true
				return "pen " + r.items[from+1].s, k
			}
			from++
		}
		if from < s.j && r.items[from].s == "the" {
			from++
		}
		if from+1 < s.j && (r.items[from].s == "number" || r.items[from].s == "no" || r.items[from].s == "nr") && r.items[from+1].kind == itNum { // "currently in number 2"
			r.items[from].used = true
			from++
		}
		if from+1 < s.j && r.items[from].is(sPen) && r.items[from+1].kind == itNum && r.items[from+1].gap == gapNone { // "they're on pasture 1"
			r.items[from].used, r.items[from+1].used = true, true
			return r.items[from].s + " " + r.items[from+1].s, r.clauseStart(k, s)
		}
		if from < s.j {
			f := &r.items[from]
			f.used = true
			if f.pen >= 0 {
				return r.c.Herd.Pens[f.pen].Name, r.clauseStart(k, s)
			}
			if f.kind == itNum {
				return "pen " + f.s, r.clauseStart(k, s)
			}
			to := from
			for to+1 < s.j && r.items[to+1].gap == gapNone && (r.nameLike(to+1) || r.items[to+1].is(sPen) || r.items[to+1].kind == itNum && r.items[to+1].from == r.items[to].to) {
				to++
				r.items[to].used = true
			}
			return strings.TrimSpace(r.text[f.from:r.items[to].to]), r.clauseStart(k, s)
		}
	}
	return "", s.j
}

// clauseStart is where the clause with item k begins, if nothing of size stands
// in it before k.
func (r *reader) clauseStart(k int, s span) int {
	n := k
	for n > s.i && r.items[n].gap < gapComma {
		p := &r.items[n-1]
		if p.kind == itQty || p.kind == itDim {
			return n
		}
		n--
	}
	return n
}

// penNameBefore is the name said last before item k.
func (r *reader) penNameBefore(k int, s span) string {
	for n := k - 1; n >= s.i; n-- {
		it := &r.items[n]
		if it.pen >= 0 {
			return r.c.Herd.Pens[it.pen].Name
		}
		if it.kind == itNum && n > s.i && r.items[n-1].is(sPen) {
			return "pen " + it.s
		}
		if it.kind == itWord && r.nameLike(n) && !it.is(sPen) {
			from := n
			for from > s.i && r.items[from].gap == gapNone && r.nameLike(from-1) && !r.items[from-1].is(sPen) {
				from--
			}
			return strings.TrimSpace(r.text[r.items[from].from:it.to])
		}
	}
	return ""
}
