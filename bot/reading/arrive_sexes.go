package reading

import (
	"strings"

	"troughbell/model"
)

func sexOf(it *item) model.Sex {
	switch {
	case it.is(sBarrow):
		return model.Barrow
	case it.is(sGilt):
		return model.Gilt
	case it.is(sBoar):
		return model.Boar
	case it.is(sSow):
		return model.Sow
	}
	return ""
}

// arrivalSexes gives one sex for each pig, in the order of the names or else in
// the order said; nil where nothing was said of sexes.
func (r *reader) arrivalSexes(s span, names []newPig, count int) []model.Sex {
	type word struct {
		k, n int
		sex  model.Sex
		all  bool
	}
	var ws []word
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		sex := sexOf(it)
		if it.s == "m" || it.s == "f" {
			if k > s.i && isName(names, k-1) {
				sex = map[string]model.Sex{"m": model.Barrow, "f": model.Gilt}[it.s]
			}
		}
		if sex == "" || isName(names, k) {
			continue
		}
		w := word{k: k, n: 0, sex: sex}
		if k > s.i {
			p := &r.items[k-1]
			switch {
			case p.kind == itNum:
				w.n = int(p.v)
			case p.is(sAll) || p.is(sBoth):
				w.all = true
			}
		}
		if it.is(sAll) && !it.is(sPigs) {
			w.all = true
		}
		ws = append(ws, w)
	}
	if len(ws) == 0 {
		return r.sexesAlike(s, names, count)
	}
	sexes := make([]model.Sex, count)
	if len(ws) == count && count > 1 && ws[count-1].k == ws[0].k+count-1 { // "barrow gilt gilt barrow"
		for i := range sexes {
			sexes[i] = ws[i].sex
		}
		return sexes
	}
	if len(ws) == 1 && (ws[0].all || ws[0].n == 0 && !r.namesNear(ws[0].k, s, names) || ws[0].n == count) {
		for i := range sexes {
			sexes[i] = ws[0].sex
		}
		return sexes
	}
	if len(names) == 0 {
		i := 0
		for _, w := range ws {
			n := w.n
			if n == 0 {
				n = 1
			}
			for ; n > 0 && i < count; n-- {
				sexes[i] = w.sex
				i++
			}
		}
		if len(ws) == 2 && ws[1].n == 0 && i < count { // "3 barrows, the rest gilts"
			for ; i < count; i++ {
				sexes[i] = ws[1].sex
			}
		}
		return trimSexes(sexes)
	}
	// Names stand before their sex ("Hazel and Clover are gilts") or behind it.
	before := false
	for k := ws[0].k - 1; k >= s.i && r.items[k+1].gap < gapStop; k-- {
		for x := range names {
			if it := &r.items[k]; it.kind == itWord || it.kind == itName || it.kind == itThing {
				before = before || strings.EqualFold(names[x].name, r.nameText(k))
			}
		}
	}
	index := func(k int) int {
		for x := range names {
			if names[x].k == k || strings.EqualFold(names[x].name, r.nameText(k)) {
				return x
			}
		}
		return -1
	}
	for n, w := range ws {
		if w.k+2 < s.j && r.items[w.k+1].is(sNamed) {
			if x := index(w.k + 2); x >= 0 && x < count && w.n <= 1 { // "and a boar called Dock": of that one
				sexes[x] = w.sex
				continue
			}
		}
		lo, hi := w.k+1, s.j
		if before {
			lo, hi = s.i, w.k
			if n > 0 {
				lo = ws[n-1].k + 1
			}
			for k := hi - 1; k >= lo; k-- { // only the sentence it stands in
				if r.items[k+1].gap >= gapStop && k+1 <= w.k {
					lo = k + 1
					break
				}
			}
		} else if n+1 < len(ws) {
			hi = ws[n+1].k
		}
		if it := &r.items[w.k]; before && w.n == 0 && !w.all && !strings.HasSuffix(it.s, "s") && w.k-1 >= lo && index(w.k-1) >= 0 && it.gap >= gapComma {
			lo = w.k - 1 // "Ethel (gilt)": of one only
		}
		left := w.n
		again := false // "Ash, Bay and Elm came, Ash and Elm are gilts"
		for k := lo; k < hi && before; k++ {
			x := index(k)
			again = again || x >= 0 && names[x].k != k
		}
		for k := lo; k < hi; k++ {
			if r.items[k].kind != itWord && r.items[k].kind != itName && r.items[k].kind != itThing {
				continue
			}
			if x := index(k); x >= 0 && x < count && (w.n == 0 || left > 0) && !(again && names[x].k == k) {
				sexes[x] = w.sex
				left--
			}
		}
	}
	missing := false
	for _, x := range sexes {
		missing = missing || x == ""
	}
	if missing { // counts only: "Dot, Moss, Fig: 2 gilts 1 barrow"
		sum := 0
		for _, w := range ws {
			sum += w.n
		}
		if sum == count {
			i := 0
			for _, w := range ws {
				for n := w.n; n > 0; n-- {
					sexes[i] = w.sex
					i++
				}
			}
			return sexes
		}
		if last := len(ws) - 1; last > 0 && ws[last].n == 0 && r.has(span{0, ws[last-1].k, ws[last].k + 1}, sRest) {
			for i := range sexes {
				if sexes[i] == "" {
					sexes[i] = ws[last].sex
				}
			}
		}
	}
	return trimSexes(sexes)
}

// sexesAlike are the sexes of pigs of which there are as many of the one as of the
// other, "two of each"; which is which is not told where they have names.
func (r *reader) sexesAlike(s span, names []newPig, count int) []model.Sex {
	if len(names) > 0 || count < 2 || count%2 != 0 {
		return nil
	}
	for k := s.i; k+2 < len(r.items) && k < s.j; k++ {
		it, of, each := &r.items[k], &r.items[k+1], &r.items[k+2]
		if it.kind != itNum || it.v != float64(count/2) || of.s != "of" || of.gap != gapNone || !each.is(sEach) && each.s != "each sex" {
			continue
		}
		if n := k + 3; n < len(r.items) && r.items[n].gap == gapNone && r.items[n].s != "sex" && r.items[n].s != "kind" && r.items[n].s != "gender" {
			continue
		}
		r.useAll(span{s.frame, k, min(k+4, s.j)})
		sexes := make([]model.Sex, count)
		for i := range sexes {
			sexes[i] = model.Barrow
			if i >= count/2 {
				sexes[i] = model.Gilt
			}
		}
		return sexes
	}
	return nil
}

func trimSexes(s []model.Sex) []model.Sex {
	for _, x := range s {
		if x == "" {
			n := 0
			for n < len(s) && s[n] != "" {
				n++
			}
			rest := false
			for _, y := range s[n:] {
				rest = rest || y != ""
			}
			if rest {
				return s
			}
			return s[:n]
		}
	}
	return s
}
