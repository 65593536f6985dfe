package reading

import (
	"strings"

	"troughbell/model"
)

// fillMove reads pigs put into a pen.
func (r *reader) fillMove(s span) {
	h := r.c.Herd
	if parts := r.byPen(s); len(parts) > 1 {
		for _, p := range parts {
			r.fillMove(p)
		}
		return
	}
	s = r.withoutStaying(s)
	pen, into := "", false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.pen < 0 || it.pig >= 0 {
			continue
		}
		if r.quoteBefore(k, "from") || r.quoteBefore(k, "out of") || r.quoteBefore(k, "off") {
			it.used = true
			continue
		}
		if pen == "" || !into && r.intoBefore(k) {
			pen, into = h.Pens[it.pen].Name, r.intoBefore(k)
		}
		it.used = true
	}
	if pen == "" {
		pen = r.newPen(s)
	}
	if pen == "" {
		if !r.movedOutright(s) || !r.has(s, sPen) && !r.hasWho(s) && !r.quoteHas(s, "them", "em") {
			r.idleSpan(s)
			return
		}
		r.whichPen(s)
		return
	}
	if !r.hasWho(s) && !r.eachNamed(s.i, s.j) { // "the three little ones moved to apple"
		for k := s.i - 1; k >= r.clauseFrom(s.i); k-- {
			if it := &r.items[k]; it.isAny(setOf(sYoung, sOld, sBarrow, sGilt)) && !it.used && it.s != "old" {
				s.i = k
			}
		}
	}
	sel := r.selectPigs(s.i, s.j)
	if !sel.any {
		sel = r.tagsBefore(s)
	}
	if sel.any && len(sel.pigs) == 1 && r.alive > 1 && !r.anyPigIn(s) && r.quoteHas(s, "them", "em", "'em", "they", "moved them", "moved em") {
		sel = selection{all: true, any: true} // several were moved, not the one that was spoken of before
	}
	m := model.Move{Pen: pen}
	if r.runsThere(s) {
		r.useAll(s)
		return
	}
	unsaid := !sel.any && r.anyNamed() && r.alive > 1 && len(r.subject) == 0 && r.ofOnePig(s) // "put her in willow"
	if unsaid || sel.stray || sel.some || r.movesSome(s, sel) || r.movesStranger(s) {
		r.useAll(s)
		r.whichPig("move", s, r.draft(Fact{m}, s), func(n []string) Act { return Fact{model.Move{Pen: pen, Animals: n}} })
		return
	}
	if sel.any && !sel.all && len(sel.pigs) > 0 {
		m.Animals = sel.names(r)
	}
	if r.staysThere(s, m) {
		r.useAll(s)
		return
	}
	r.remember(sel)
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sMove, sPen)) || it.kind == itNum && k+1 < s.j && it.v == float64(max(len(sel.pigs), sel.count)) && r.items[k+1].isAny(whoWords) {
			it.used = true
		}
	}
	r.emit(Fact{m}, s)
}

// movesStranger says that what moved is called by a word that no pig here bears:
// "moved bob to pen 2".
func (r *reader) movesStranger(s span) bool {
	for k := s.i; k+1 < s.j; k++ {
		if !r.items[k].is(sMove) {
			continue
		}
		n := k + 1
		if n+1 < s.j && r.items[n].is(sFiller) && runts[r.items[n+1].s] {
			return true // "moved the runt to pear"
		}
		if it := &r.items[n]; it.kind != itWord || it.gap > gapNone || !it.sense.empty() || it.pig >= 0 || it.pen >= 0 || it.group >= 0 {
			continue
		}
		for n++; n < s.j && (r.items[n].pig >= 0 || r.items[n].is(sAnd) || r.items[n].gap == gapAnd); n++ { // "bob and olive"
		}
		if n < s.j && r.items[n].pen < 0 && (r.items[n].s == "to" || r.items[n].s == "into" || r.items[n].s == "in") {
			return true
		}
	}
	return false
}

// movesSome says that but some of the pigs moved, and not which: "moved 2 to the
// creek pen" where the pigs have names.
func (r *reader) movesSome(s span, sel selection) bool {
	if len(sel.pigs) > 0 || !r.anyNamed() {
		return false
	}
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.soft || it.ord || it.used || it.v < 1 || it.v >= float64(r.alive) || it.v != float64(int(it.v)) || !r.items[k-1].is(sMove) || it.gap > gapNone {
			continue
		}
		if k+1 < s.j && r.items[k+1].gap == gapNone && (r.items[k+1].is(sPigs) || r.items[k+1].s == "to" || r.items[k+1].is(sMove) || r.items[k+1].s == "of") {
			return true
		}
	}
	return false
}

// intoBefore says that the pen at item k is where something goes.
func (r *reader) intoBefore(k int) bool {
	if k > 0 && strings.ContainsAny(r.text[r.items[k-1].to:r.items[k].from], ">→") {
		return true // "cherry -> pear"
	}
	for n := k - 1; n >= 0 && n >= k-2; n-- {
		switch r.items[n].s {
		case "to", "into", "onto", "for", "over to", "over into", "back to", "back into", "moved to":
			return true
		}
		if !r.items[n].is(sFiller) {
			break
		}
	}
	return false
}

// saysOther says that words of no meaning here stand in a move without a verb of
// moving: "shade cloth up in cherry".
func (r *reader) saysOther(s span) bool {
	if r.has(s, sMove) || r.has(s, sInUse) {
		return false
	}
	for k := r.clauseFrom(s.i); k < r.clauseEnd(s.j-1); k++ {
		it := &r.items[k]
		if it.kind == itWord && it.pig < 0 && it.pen < 0 && it.unit == 0 && (it.sense.empty() || it.isAny(setOf(sSick, sWell)) && !it.is(sFiller)) && len(it.s) > 2 && !(it.known && r.lex.plain[it.s] && k < s.i) {
			switch it.s {
			case "over", "side", "now", "crew", "staying", "stay", "stays":
				continue
			}
			return true
		}
	}
	return false
}

// hasWho says that a word for pigs stands in the span.
func (r *reader) hasWho(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.items[k].isAny(whoWords) {
			return true
		}
	}
	return false
}

func (r *reader) quoteBefore(k int, word string) bool {
	for n := k - 1; n >= 0 && n >= k-3; n-- {
		if r.items[n].s == word {
			return true
		}
		if !r.items[n].is(sFiller) && r.items[n].s != "the" {
			return false
		}
	}
	return false
}

// withoutStaying takes a clause about pigs that stay where they are off a move:
// "moved hazel to pear, everyone else stays put".
func (r *reader) withoutStaying(s span) span {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "stay", "stays", "stayed", "staying", "remain", "remains", "left", "kept":
			if w := r.items[k].s; (w == "left" || w == "kept") && (k+1 >= s.j || !r.items[k+1].isAny(setOf(sFiller, sAll, sRest, sYoung, sOld, sBarrow, sGilt)) && r.items[k+1].pig < 0) {
				continue
			}
		default:
			continue
		}
		from, to := k, k+1
		for from > s.i && r.items[from].gap < gapAnd {
			from--
		}
		for to < s.j && r.items[to].gap < gapAnd {
			to++
		}
		switch {
		case from > s.i:
			r.useAll(span{s.frame, from, s.j})
			s.j = from
			return s
		case from == s.i && to < s.j:
			r.useAll(span{s.frame, from, to})
			s.i = to
			return s
		}
	}
	return s
}

// newPen is a pen that set-up did not name: "pen 7", "moved to the far lot".
func (r *reader) newPen(s span) string {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if !it.is(sPen) || it.is(sMove) {
			continue
		}
		if k+1 < s.j && r.items[k+1].kind == itNum && r.items[k+1].gap == gapNone {
			r.items[k+1].used = true
			name := "pen " + itoa(int(r.items[k+1].v))
			if p := r.c.Herd.Pen(name); p != nil {
				return p.Name
			}
			if p := r.c.Herd.Pen(itoa(int(r.items[k+1].v))); p != nil {
				return p.Name
			}
			return name
		}
		if k > s.i {
			p := &r.items[k-1]
			switch p.s {
			case "new", "next", "other", "another", "same", "fresh", "bigger", "second", "third":
				continue // which one is not said
			}
			if p.kind == itWord && (!p.known || r.lex.plain[p.s]) && !p.is(sFiller) && p.gap == gapNone {
				p.used = true
				return r.text[p.from:p.to]
			}
		}
	}
	for k := s.i; k+1 < s.j; k++ { // "moved to 3"
		if (r.items[k].s == "to" || r.items[k].is(sMove)) && r.items[k+1].kind == itNum && r.items[k+1].v < 30 && r.has(s, sMove) {
			if p := r.c.Herd.Pen("pen " + itoa(int(r.items[k+1].v))); p != nil {
				return p.Name
			}
		}
	}
	return ""
}

func (r *reader) whichPen(s span) {
	c := Clarify{About: "move", Code: "which_pen", Want: "pen", Draft: []Entry{r.draft(Fact{model.Move{}}, s)}}
	for _, p := range r.c.Herd.Pens {
		if !p.InUse {
			c.Choices = append(c.Choices, Choice{Label: p.Name, Entries: []Entry{r.draft(Fact{model.Move{Pen: p.Name}}, s)}})
		}
	}
	r.clarify(c, s)
}

// byPen cuts a move to several pens, each with its own pigs before it: "hazel
// and clover to the oak pen, rest to the creek".
func (r *reader) byPen(s span) []span {
	var out []span
	from := s.i
	who := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		who = who || it.pig >= 0 || it.isAny(whoWords)
		if it.pen >= 0 && it.pig < 0 && !r.quoteBefore(k, "from") {
			if !who {
				return nil
			}
			out = append(out, span{s.frame, from, k + 1})
			from, who = k+1, false
		}
	}
	if len(out) > 0 {
		out[len(out)-1].j = s.j
	}
	return out
}

// movedOutright says that a verb of moving stands in the span, not only a word
// for a direction.
func (r *reader) movedOutright(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.is(sMove) {
			switch firstWord(it.s) {
			case "into", "over", "onto", "in", "put", "walked", "opened", "went", "let", "new", "to":
			default:
				return true
			}
		}
	}
	return false
}

// runsThere says that pigs that are out run towards a pen, which moves none of them:
// "Munti escaped, going to the river".
func (r *reader) runsThere(s span) bool {
	return r.saidAlarm(model.AlarmOut) && saysAny(r.said(span{0, r.clauseFrom(s.i), s.j}), runsWords)
}

var runsWords = phrasesOf("going to, going to the, going toward, going towards, headed to, headed for, headed toward, headed towards, heading to, heading for, heading toward, heading towards, running to, running for, running toward, running towards, toward, towards, ran to, ran for, took off for, took off to, off to, making for, by the, near the")

// tagsBefore are the pigs whose tags stand as bare numbers right before a move: "3 & 4
// to hill".
func (r *reader) tagsBefore(s span) selection {
	var sel selection
	for k := s.i; k < s.j; k++ { // what stands behind the pen is no tag
		if r.items[k].pen >= 0 && r.items[k].pig < 0 {
			s.j = k
		}
	}
	for k := r.clauseFrom(s.i); k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itNum || it.used || it.soft || it.ord || k+1 < len(r.items) && r.items[k+1].gap == gapNone && (r.items[k+1].isAny(whoWords) || r.items[k+1].s == "of" || r.items[k+1].s == "of them") {
			continue
		}
		found := false
		for p := range r.alive {
			if r.pigs[p].Name == r.text[it.from:it.to] {
				sel.pigs, sel.any, found = append(sel.pigs, int16(p)), true, true
			}
		}
		if !found {
			return selection{}
		}
	}
	if len(sel.pigs) < 2 {
		return selection{} // "2 to Hill" may be a count
	}
	for k := r.clauseFrom(s.i); k < s.j; k++ {
		if r.items[k].kind == itNum {
			r.items[k].used = true
		}
	}
	return sel
}

// anyPigIn says that a span names a pig or a kind of them.
func (r *reader) anyPigIn(s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 || it.group >= 0 || it.isAny(setOf(sGilt, sBarrow, sYoung, sOld, sBoth)) {
			return true
		}
	}
	return false
}
