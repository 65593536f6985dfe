package reading

import (
	"strings"

	"troughbell/model"
)

// fillArrive reads pigs that came: how many, their names, sexes, weight, birth,
// in one group or several.
func (r *reader) fillArrive(s span) {
	s.i = r.namesBefore(s)
	groups := r.arrivalGroups(s)
	for _, g := range groups {
		r.arrival(g, s)
	}
}

// namesBefore is where the names begin that stand before the word of their
// coming: "June, Olga and Bert came".
func (r *reader) namesBefore(s span) int {
	at := s.i
	if s.i >= s.j || !r.items[s.i].is(sArrive) || r.items[s.i].gap >= gapStop {
		return s.i
	}
	for k := s.i - 1; k >= 0 && r.items[k+1].gap < gapStop; k-- {
		it := &r.items[k]
		if it.used || it.kind != itWord && it.kind != itName || it.kind == itWord && stopWords[it.s] || !r.idleAt(k) {
			break
		}
		at = k
	}
	return at
}

// headCount is a count of pigs that may begin a group.
type headCount struct {
	k, n  int
	sexed bool
}

// heads lists the counts of pigs in the span.
func (r *reader) heads(s span) []headCount {
	var out []headCount
	sexes := setOf(sBarrow, sGilt, sBoar, sSow)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.ord || it.v < 1 || it.v > 200 || it.v != float64(int(it.v)) || it.plus || it.minus {
			continue
		}
		for n := k + 1; n < s.j && n <= k+4; n++ {
			x := &r.items[n]
			if x.gap > gapNone && n > k+1 || x.number() && !(x.kind == itQty && x.unit.dim() != head) {
				break
			}
			if x.isAny(sexes) || x.is(sPigs) || x.is(sYoung) && !x.is(sFiller) || (x.is(sArrive) || x.is(sMore)) && n == k+1 && !it.soft && x.s != "have" {
				out = append(out, headCount{k, int(it.v), x.isAny(sexes)})
				break
			}
			if x.gap >= gapComma {
				break
			}
		}
	}
	if len(out) == 0 { // "pigs: 4 at 30 kg", "there are four"
		for k := s.i; k < s.j; k++ {
			it := &r.items[k]
			if it.kind == itNum && !it.soft && !it.ord && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)) {
				out = append(out, headCount{k, int(it.v), false})
				break
			}
		}
	}
	return out
}

// arrivalGroups cuts the span into groups: where each count has a weight, a day
// or a birth of its own, each is a group.
func (r *reader) arrivalGroups(s span) []span {
	hs := r.heads(s)
	if parts := r.comings(s, hs); len(parts) > 1 {
		return parts
	}
	if len(hs) < 2 {
		return []span{s}
	}
	// A count followed by its parts ("6 pigs, 3 barrows and 3 gilts") is one.
	var starts []int
	for n := 0; n < len(hs); n++ {
		sum, m := 0, n+1
		for m < len(hs) && hs[m].sexed && sum+hs[m].n <= hs[n].n {
			sum += hs[m].n
			m++
		}
		starts = append(starts, hs[n].k)
		if !hs[n].sexed && sum == hs[n].n && m > n+1 || !hs[n].sexed && m > n+1 && sum < hs[n].n {
			n = m - 1
		}
	}
	var out []span
	from := s.i
	// Each head's stretch must tell a weight or a day of its own.
	own := true
	for n, k := range starts {
		end := s.j
		if n+1 < len(starts) {
			end = starts[n+1]
		}
		own = own && r.ownFact(k, end)
	}
	if !own || len(starts) < 2 {
		return []span{s}
	}
	for n, k := range starts {
		end := s.j
		if n+1 < len(starts) {
			end = starts[n+1]
		}
		if n > 0 {
			from = k
		}
		out = append(out, span{s.frame, from, end})
	}
	return out
}

// comings cuts the span at the sentences that tell of another coming: each has
// its own word for it, and its own count or names.
func (r *reader) comings(s span, hs []headCount) []span {
	var out []span
	from, told := s.i, false
	for k := s.i; k < s.j; {
		end := min(r.sentenceEnd(k), s.j)
		here := false
		for n := k; n < end && !here; n++ {
			here = r.items[n].is(sArrive) && !r.items[n].is(sNamed)
		}
		if here {
			counted := r.has(span{s.frame, k, end}, sMore) || r.quoteHas(span{s.frame, k, end}, "another", "other")
			for _, h := range hs {
				counted = counted || h.k >= k && h.k < end
			}
			if told && counted {
				out = append(out, span{s.frame, from, k})
				from = k
			}
			told = true
		}
		k = end
	}
	return append(out, span{s.frame, from, s.j})
}

// ownFact says that items[i:j] tell a weight, an age or a birth.
func (r *reader) ownFact(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.qty(mass) || it.is(sBorn) || it.kind == itNum && k > i && !it.soft && it.v >= 12 && (r.items[k-1].s == "at" || r.items[k-1].is(sAbout) || r.items[k-1].is(sWeigh)) {
			return true
		}
	}
	return false
}

func (r *reader) arrival(s, whole span) {
	a := model.Arrive{}
	hs := r.heads(s)
	total := 0
	used := map[int]bool{}
	for n, h := range hs {
		used[h.k] = true
		r.items[h.k].used = true
		if h.sexed || total == 0 {
			if h.sexed && n > 0 && !hs[0].sexed {
				continue // a part of the whole that was counted first
			}
			total += h.n
		} else if n > 0 && !h.sexed && !r.ofWhole(h.k) {
			total = max(total, h.n)
		}
	}
	names := r.arrivalNames(s, total)
	a.Count = total
	if a.Count == 0 {
		a.Count = len(names)
	}
	if a.Count == 0 && r.quoteHas(s, "a", "another") && r.has(s, sPigs) {
		a.Count = 1
	}
	if len(names) > a.Count {
		if total > 0 {
			names = names[:a.Count]
		} else {
			a.Count = len(names)
		}
	}
	if a.Count == 0 {
		r.idleSpan(whole)
		return
	}
	if total == 0 && r.items[s.i].is(sNamed) && !r.has(s, sPigs) && len(r.c.Herd.Animals) == 0 && len(names) > 0 && len(names) == names[len(names)-1].k-names[0].k+1 && r.noGaps(names) {
		r.fillHerd(whole) // "name: Willow Bend"
		return
	}
	on, minute, dated := r.arrivalDay(s)
	own := r.ownWeights(s, names, used)
	r.arrivalNumbers(&a, s, used, on)
	if len(own) > 1 {
		a.WeightKg = nil // each has its own
	}
	a.Sexes = r.arrivalSexes(s, names, a.Count)
	for _, n := range names {
		a.Animals = append(a.Animals, n.name)
	}
	for k := s.i; k < s.j; k++ {
		if r.items[k].isAny(setOf(sArrive, sPigs, sNamed, sBorn, sAge, sBarrow, sGilt, sBoar, sSow, sEach, sYoung)) {
			r.items[k].used = true
		}
	}
	if a.Check() != nil {
		r.idleSpan(whole)
		return
	}
	r.emitOn(Fact{a}, s, on, minute, dated)
	for _, w := range own {
		if len(own) > 1 && w.Check() == nil {
			r.emitOn(Fact{w}, s, on, nil, dated)
		}
	}
}

// ownWeights reads a weight said right behind a pig's name: "Hank 205 lb, Ivy
// 195". The items it takes are marked.
func (r *reader) ownWeights(s span, names []newPig, taken map[int]bool) []model.Weigh {
	var out []model.Weigh
	var at []int
	unit := unitID(0)
	for k := s.i; k+1 < s.j; k++ {
		it, n := &r.items[k], &r.items[k+1]
		if it.kind != itWord && it.kind != itName && it.kind != itThing || n.gap > gapNone && !(it.label && n.gap == gapComma) || n.kind != itNum && !n.qty(mass) || n.soft || n.ord || n.v < 3 {
			continue
		}
		for _, p := range names {
			if !strings.EqualFold(p.name, r.nameText(k)) {
				continue
			}
			if n.qty(mass) {
				unit = n.unit
			}
			u := unit
			if u == 0 {
				u = r.massUnit()
			}
			out = append(out, model.Weigh{Animals: []string{p.name}, WeightKg: u.si(n.v), By: model.ByScale})
			at = append(at, k+1)
			break
		}
	}
	if len(out) > 1 {
		for _, k := range at {
			r.items[k].used, taken[k] = true, true
		}
	}
	return out
}

func (r *reader) ofWhole(k int) bool { return k > 0 && r.items[k-1].s == "of" }

// arrivalDay is the day they came: a day that is not a birth.
func (r *reader) arrivalDay(s span) (model.Day, *int, bool) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every || r.bornBefore(k, s) {
			continue
		}
		if d, ok := it.day.on(r.today, lookBack, r.dayFirst); ok {
			it.used = true
			return d, nil, true
		}
	}
	if r.day.ok {
		return r.day.day, nil, r.day.dated
	}
	return r.today, nil, false
}

// bornBefore says that the day at k is a birth.
func (r *reader) bornBefore(k int, s span) bool {
	for n := k - 1; n >= s.i && n >= k-8; n-- {
		it := &r.items[n]
		if it.is(sBorn) {
			return true
		}
		if it.gap >= gapStop && n < k-1 || it.is(sArrive) && !it.is(sFiller) {
			return false
		}
	}
	return k+1 < s.j && r.items[k+1].is(sBorn) && r.items[k+1].gap == gapNone
}

// arrivalNumbers reads the weight each and the birth or age.
func (r *reader) arrivalNumbers(a *model.Arrive, s span, used map[int]bool, on model.Day) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		prev := &item{}
		if k > s.i {
			prev = &r.items[k-1]
		}
		switch {
		case it.kind == itDay && r.bornBefore(k, s):
			if d, ok := it.day.on(on, lookBack, r.dayFirst); ok {
				if d > on {
					if y, m, dd := d.Date(); it.day.c == 0 {
						d = model.DateDay(y-1, m, dd)
					}
				}
				a.Born = &d
			}
		case it.qty(days) && (k+1 < s.j && r.items[k+1].is(sAge) || k+1 < s.j && r.items[k+1].s == "old" || prev.s == "age" || prev.is(sAge) || r.has(s, sAge) && r.items[k].unit != unitDay):
			w := it.v
			if it.rng {
				w = (it.v + it.v2) / 2
			}
			perUnit := it.unit.si(1)
			if it.unit == unitMonth {
				perUnit = 30.4
			}
			d := on - model.Day(w*perUnit+0.5)
			a.Born = &d
		case it.qty(mass) && a.WeightKg == nil && !used[k]:
			v := it.v
			if it.rng {
				v = (it.v + it.v2) / 2
			}
			kg := it.unit.si(v)
			if (prev.is(sGain) || r.quoteHas(s, "total", "together", "altogether")) && a.Count > 1 {
				kg /= float64(a.Count)
			}
			a.WeightKg = model.Float(kg)
		case it.kind == itNum && !it.soft && !it.ord && !used[k] && a.WeightKg == nil && it.v >= 10 && (prev.s == "at" || prev.is(sWeigh) || prev.is(sAbout) || prev.s == "@" || k+1 < s.j && r.items[k+1].is(sEach) || it.v >= 25):
			v := it.v
			if it.rng {
				v = (it.v + it.v2) / 2
			}
			a.WeightKg = model.Float(r.massUnit().si(v))
		default:
			continue
		}
		it.used = true
	}
}

// newPig is a name that an arrival gives, with its item.
type newPig struct {
	name string
	k    int
}

// arrivalNames finds the names of new pigs: unknown words, capitalised words,
// and plain words where names are told.
func (r *reader) arrivalNames(s span, count int) []newPig {
	var out []newPig
	naming := false
	sure := func(k int) bool { // what stands in a list of names
		it := &r.items[k]
		return it.capital && (it.gap < gapStop || naming || k+1 < s.j && r.items[k+1].capital && r.items[k+1].gap >= gapAnd && r.items[k+1].gap <= gapComma)
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.gap >= gapStop && k > s.i {
			naming = false
		}
		if it.is(sNamed) && !it.capital || it.s == "names are" || it.s == "their names are" || it.is(sNamed) && it.gap >= gapStop {
			naming = true
			continue
		}
		if it.is(sPigs) && it.label || it.isAny(setOf(sBarrow, sGilt)) && it.label {
			naming = true
			continue
		}
		if it.kind != itWord && it.kind != itName && it.kind != itThing || it.is(sBorn) || it.is(sAge) {
			if it.number() && !it.soft {
				naming = naming && it.kind == itNum
			}
			continue
		}
		lower := strings.TrimSuffix(it.s, "'s")
		if stopWords[lower] || len(lower) < 2 || sexOf(it) != "" {
			continue
		}
		switch {
		case it.kind == itName && it.pig >= 0 && !it.init: // a name of the past is given again
		case !it.known && it.unit == 0:
		case sure(k) && !it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sArrive, sAbout, sEach, sAll, sBoth, sNamed, sZone, sHerd)) && (count > 0 || naming || len(out) > 0 || it.gap >= gapStop):
		case naming && (r.lex.plain[lower] || it.sense.empty() || !it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sArrive, sAbout, sEach, sAll, sBoth, sIs, sAnd, sFiller))):
		case len(out) > 0 && k > 0 && out[len(out)-1].k == k-1 && it.gap <= gapComma && it.gap >= gapAnd && r.lex.plain[lower] && it.sense.empty(), r.listAhead(k, s) && it.sense.empty() && r.lex.plain[lower] && len(out) < count && r.afterHead(k, s):
		default:
			continue
		}
		dup := false
		for _, p := range out {
			dup = dup || strings.EqualFold(p.name, r.nameText(k))
		}
		it.used = true
		if !dup {
			out = append(out, newPig{r.nameText(k), k})
		}
	}
	// "Big Red and Blue": two words make one name where there are too many.
	for count > 0 && len(out) > count {
		joined := false
		for x := 0; x+1 < len(out); x++ {
			if out[x+1].k == out[x].k+1 && r.items[out[x+1].k].gap == gapNone {
				out[x] = newPig{out[x].name + " " + out[x+1].name, out[x+1].k}
				out = append(out[:x+1], out[x+2:]...)
				joined = true
				break
			}
		}
		if !joined {
			break
		}
	}
	if count > 0 && len(out) > 0 && len(out) < count && !naming && len(out) == 1 && !r.items[out[0].k].capital && !r.has(s, sNamed) {
		r.items[out[0].k].used = false
		return nil // one stray word is no name
	}
	return out
}

// listAhead says that item k is one of several words set apart by commas.
func (r *reader) listAhead(k int, s span) bool {
	return k+1 < s.j && (r.items[k+1].gap == gapComma || r.items[k+1].gap == gapAnd) || r.items[k].gap == gapComma || r.items[k].gap == gapAnd
}

// afterHead says that a count of pigs stands before item k.
func (r *reader) afterHead(k int, s span) bool {
	for n := s.i; n < k; n++ {
		if r.items[n].is(sPigs) || r.items[n].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return false
}

// nameText is a new name as written, with a capital.
func (r *reader) nameText(k int) string {
	it := &r.items[k]
	t := r.text[it.from:it.to]
	if low := strings.ToLower(t); strings.HasSuffix(low, "'s") || strings.HasSuffix(low, "’s") {
		t = t[:strings.LastIndexAny(t, "'’")]
		t = strings.TrimSuffix(t, "\xe2\x80")
	}
	return capitalize(t)
}

func capitalize(s string) string {
	for i, c := range s {
		if i == 0 {
			return strings.ToUpper(string(c)) + s[len(string(c)):]
		}
	}
	return s
}

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
		return nil
	}
	sexes := make([]model.Sex, count)
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
		left := w.n
		for k := lo; k < hi; k++ {
			if r.items[k].kind != itWord && r.items[k].kind != itName && r.items[k].kind != itThing {
				continue
			}
			if x := index(k); x >= 0 && x < count && (w.n == 0 || left > 0) {
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
		if len(ws) == 2 && ws[1].n == 0 && r.has(span{0, ws[0].k, ws[1].k + 1}, sRest) {
			for i := range sexes {
				if sexes[i] == "" {
					sexes[i] = ws[1].sex
				}
			}
		}
	}
	return trimSexes(sexes)
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

func isName(names []newPig, k int) bool {
	for _, n := range names {
		if n.k == k {
			return true
		}
	}
	return false
}

// namesNear says that names stand beside the sex word in its clause.
func (r *reader) namesNear(k int, s span, names []newPig) bool {
	for n := k - 1; n >= s.i && r.items[n+1].gap < gapComma; n-- {
		if isName(names, n) {
			return true
		}
		for _, p := range names {
			if r.items[n].kind == itWord && strings.EqualFold(p.name, r.nameText(n)) {
				return true
			}
		}
	}
	for n := k + 1; n < s.j && r.items[n].gap < gapComma; n++ {
		if isName(names, n) {
			return true
		}
	}
	return false
}

// bareArrival reads "4 48lb", said before there are any pigs, as so many pigs of
// that weight.
func (r *reader) bareArrival() {
	count, kg := 0, 0.0
	for k := range r.items {
		it := &r.items[k]
		switch {
		case it.kind == itNum && count == 0 && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)):
			count = int(it.v)
		case it.qty(mass) && kg == 0:
			kg = it.si()
		case it.kind == itNum && kg == 0 && it.v >= 10:
			kg = r.massUnit().si(it.v)
		case it.isAny(setOf(sFiller, sEach, sAbout, sPigs)):
		default:
			return
		}
	}
	if count > 0 && kg > 5 {
		s := span{fArrive, 0, len(r.items)}
		r.useAll(s)
		r.emit(Fact{model.Arrive{Count: count, WeightKg: &kg}}, s)
	}
}

// noGaps says that the words of the names stand side by side, as in one name.
func (r *reader) noGaps(names []newPig) bool {
	for _, n := range names[1:] {
		if r.items[n.k].gap > gapNone {
			return false
		}
	}
	return true
}
