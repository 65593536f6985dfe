package reading

import "strings"

// How the lines of a list are written out, by what its heading is.

// writeList writes a list out; false where its lines are no such list.
func (r *reader) writeList(f *folding, h heading, body []listLine) bool {
	if len(body) == 0 {
		return false
	}
	n, marks := len(f.buf), len(f.marks)
	f.endLine()
	ok := r.listBody(f, h, body)
	if !ok {
		f.buf, f.marks = f.buf[:n], f.marks[:marks]
		return false
	}
	f.endLine()
	f.changed = true
	return true
}

func (r *reader) listBody(f *folding, h heading, body []listLine) bool {
	shapes := make([]lineShape, len(body))
	for k, l := range body {
		shapes[k] = r.shapeOf(l)
	}
	each := func(fits func(s *lineShape) bool) bool {
		for k := range shapes {
			if !fits(&shapes[k]) {
				return false
			}
		}
		return true
	}
	switch h.kind {
	case headPlan:
		if r.c.LastNudge != nil || !h.line.label && !body[0].bullet && h.verb == "" {
			return false
		}
		f.plan = true
		return true
	case headQuestion:
		for _, l := range body {
			f.line(l)
			if r.toks[l.j-1].s != "?" {
				f.lend("?", r.toks[l.j-1].to)
			}
			f.endLine()
		}
		return true
	case headNote, headRemind:
		for _, l := range body {
			if m := r.lex.of[r.toks[l.i].s]; m == nil || !m.sense.any(setOf(sNote, sRemind)) {
				f.lend(h.verb+" ", r.toks[l.i].from)
			}
			f.line(l)
			f.endLine()
		}
		return true
	case headSpend:
		if !each(func(s *lineShape) bool {
			return s.nums >= 1 && s.words > 0 && (s.pigs+s.feeders+s.barrels == 0 || s.words > 2) && !s.labelled && (s.money || !s.dims[vessel])
		}) {
			return false
		}
		return r.writeSpending(f, h, body, shapes)
	case headRecipe:
		if !r.ingredientLines(body) {
			return false
		}
		return r.writeJoined(f, h, h.verb+": ", body)
	case headSold:
		if each(func(s *lineShape) bool { return s.pigs > 0 && s.nums > 0 }) {
			return r.writeSales(f, h, body, shapes)
		}
		if !each(func(s *lineShape) bool { return s.nums > 0 || s.pigs > 0 || s.days > 0 }) {
			return false
		}
		return r.writeJoined(f, h, "sold ", body)
	case headBooked:
		if !each(func(s *lineShape) bool { return s.nums > 0 || s.days > 0 || s.words > 0 && s.words < 4 }) {
			return false
		}
		days := 0
		for k := range shapes {
			days += shapes[k].days
		}
		if days > 1 {
			return r.writeEach(f, h, "booked ", body)
		}
		return r.writeJoined(f, h, "booked ", body)
	case headHung:
		n := len(body)
		for n > 0 && shapes[n-1].pigs+shapes[n-1].nums == 0 { // "no word on the others yet"
			n--
		}
		if n == 0 || !r.writeHung(f, h, body[:n], shapes[:n]) {
			return false
		}
		for _, l := range body[n:] {
			f.line(l)
			f.endLine()
		}
		return true
	case headDied:
		if !each(func(s *lineShape) bool { return s.pigs > 0 && s.nums == 0 && s.words == 0 }) {
			return false
		}
		return r.writeJoined(f, h, "died: ", body)
	case headDrug:
		if each(func(s *lineShape) bool { return (s.pigs > 0 || s.all) && s.words-btoi(s.all) <= 1 && !s.product }) {
			return r.writeJoined(f, h, h.verb+" ", body)
		}
		if r.writeDose(f, h, body, shapes) {
			return true
		}
		if h.verb != "gave" && h.verb != "wormed" || !each(func(s *lineShape) bool { return s.pigs > 0 && s.product }) {
			return false
		}
		return r.writeEach(f, h, h.verb+" ", body)
	case headPour:
		if !each(func(s *lineShape) bool {
			return s.nums == 1 && s.pigs+s.barrels == 0 && !s.money && !s.ingredient && (s.dims[vessel] || s.dims[mass] || s.words == 0) && s.words <= 3
		}) {
			return false
		}
		return r.writeEach(f, h, h.verb+" ", body)
	case headFill:
		if !each(func(s *lineShape) bool { return s.barrels+s.feeders > 0 && s.nums == 0 && s.words == 0 }) {
			return false
		}
		return r.writeJoined(f, h, "filled ", body)
	case headMove:
		if !each(func(s *lineShape) bool { return s.pens > 0 && s.nums == 0 }) {
			return false
		}
		return r.writeEach(f, h, "moved ", body)
	case headSick:
		if each(func(s *lineShape) bool { return s.pigs > 0 && s.words == 0 && s.nums == 0 }) {
			return r.writeJoined(f, h, h.verb+" - ", body)
		}
		if !each(func(s *lineShape) bool { return s.pigs > 0 && s.words > 0 }) {
			return false
		}
		return r.writeEach(f, h, "", body)
	case headWater:
		if !each(func(s *lineShape) bool { return s.barrels > 0 }) {
			return false
		}
		return r.writeEach(f, h, "", body)
	case headBarrels, headFeeders, headPens:
		return r.writeThings(f, h, body, shapes)
	}
	return false
}

// writeDose writes the parts of one treatment, each in a line of its own, as one: who
// had it, what, and for how many days.
func (r *reader) writeDose(f *folding, h heading, body []listLine, shapes []lineShape) bool {
	who, what, days := -1, -1, -1
	for k := range shapes {
		switch s := &shapes[k]; {
		case s.product && s.pigs == 0 && !s.all && s.nums == 0 && s.words <= 3 && what < 0:
			what = k
		case s.dims[mass] || s.dims[volume] || s.product || s.money || s.days > 0:
			return false
		case s.nums == 1 && s.pigs == 0 && !s.all && r.countsDays(body[k]) && days < 0:
			days = k
		case (s.pigs > 0 || s.all) && s.words-btoi(s.all) <= 2 && s.nums <= btoi(s.all) && who < 0:
			who = k
		default:
			return false
		}
	}
	if who < 0 || what < 0 && days < 0 {
		return false
	}
	f.dayOf(h, " ")
	f.lend(h.verb+" ", r.toks[body[who].i].from)
	f.line(body[who])
	if what >= 0 {
		f.lend(" with ", r.toks[body[what].i].from)
		f.line(body[what])
	}
	if days >= 0 {
		f.lend(", ", r.toks[body[days].i].from)
		f.line(body[days])
	}
	return true
}

// countsDays says that a line is a number of days, of a withdrawal or none.
func (r *reader) countsDays(l listLine) bool {
	day := false
	for k := l.i; k < l.j; k++ {
		switch t := &r.toks[k]; t.s {
		case "day", "days", "d":
			day = true
		case "withdrawal", "wait", "wd", "of", "withholding", "meat", ".", "-", ":":
		default:
			if t.kind != tokNum {
				return false
			}
		}
	}
	return day
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// dayOf writes the day that the heading names, as one of its own.
func (f *folding) dayOf(h heading, after string) {
	if h.dayFrom >= 0 && h.dayTo > h.dayFrom {
		f.line(listLine{i: h.dayFrom, j: h.dayTo})
		f.lend(after, f.r.toks[h.dayTo-1].to)
	}
}

// writeEach writes each line as a fact of its own.
func (r *reader) writeEach(f *folding, h heading, verb string, body []listLine) bool {
	f.dayOf(h, ":\n")
	for _, l := range body {
		if verb != "" {
			f.lend(verb, r.toks[l.i].from)
		}
		r.withoutLabel(f, l)
		f.endLine()
	}
	return true
}

// withoutLabel writes a line without the colon or dash behind its first words: "tues:
// 5 bags".
func (r *reader) withoutLabel(f *folding, l listLine) {
	for k := l.i + 1; k < l.j-1 && k <= l.i+3; k++ {
		if t := &r.toks[k]; t.s == ":" || t.s == "=" || t.s == "-" && r.toks[k+1].spaced {
			f.line(listLine{i: l.i, j: k})
			f.lend(" ", t.from)
			f.line(listLine{i: k + 1, j: l.j})
			return
		}
	}
	f.line(l)
}

// writeJoined writes the lines as the parts of one fact.
func (r *reader) writeJoined(f *folding, h heading, verb string, body []listLine) bool {
	if h.kind != headRecipe {
		f.dayOf(h, " ")
	}
	f.lend(verb, r.toks[body[0].i].from)
	for k, l := range body {
		if k > 0 {
			f.lend(", ", r.toks[l.i].from)
		}
		r.withoutLabel(f, l)
	}
	return true
}

// writeSpending writes what each thing cost: "straw 42" as "spent 42 on straw".
func (r *reader) writeSpending(f *folding, h heading, body []listLine, shapes []lineShape) bool {
	f.dayOf(h, ":\n")
	for k, l := range body {
		at := shapes[k].lastNum
		from, to := at, at+1
		if from > l.i && moneySign(r.toks[from-1].s) {
			from--
		}
		if to < l.j && (r.unitAt(to).dim() == money || moneySign(r.toks[to].s)) {
			to++
		}
		switch {
		case from > l.i && to == l.j, shapes[k].nums == 1 && from > l.i:
			f.lend("spent ", r.toks[from].from)
			f.line(listLine{i: from, j: to})
			f.lend(" on ", r.toks[l.i].from)
			what := listLine{i: l.i, j: from}
			for what.j > what.i && (r.toks[what.j-1].kind == tokMark || r.toks[what.j-1].s == "for") {
				what.j--
			}
			f.line(what)
			if to < l.j {
				f.lend(" ", r.toks[to].from)
				f.line(listLine{i: to, j: l.j})
			}
		default:
			f.lend("spent ", r.toks[l.i].from)
			f.line(l)
		}
		f.endLine()
	}
	return true
}

// writeSales writes the sale of each pig with its price: "fern 300".
func (r *reader) writeSales(f *folding, h heading, body []listLine, shapes []lineShape) bool {
	f.dayOf(h, ":\n")
	for k, l := range body {
		at := shapes[k].lastNum
		if at > l.i && moneySign(r.toks[at-1].s) {
			at--
		}
		f.lend("sold ", r.toks[l.i].from)
		name := listLine{i: l.i, j: at}
		for name.j > name.i && r.toks[name.j-1].kind == tokMark {
			name.j--
		}
		f.line(name)
		if at > l.i && r.toks[at-1].kind == tokWord && (r.toks[at-1].s == "for" || r.toks[at-1].s == "at") {
			f.lend(" ", r.toks[at].from)
		} else {
			f.lend(" for ", r.toks[at].from)
		}
		f.line(listLine{i: at, j: l.j})
		f.endLine()
	}
	return true
}

// writeHung writes what each carcass weighed, or who was butchered.
func (r *reader) writeHung(f *folding, h heading, body []listLine, shapes []lineShape) bool {
	names, weighed, hung := true, true, true
	for k := range shapes {
		s := &shapes[k]
		names = names && s.pigs > 0 && s.nums == 0 && s.words == 0
		weighed = weighed && s.pigs == 1 && s.nums == 1
		hung = hung && s.hung
	}
	switch {
	case names && h.verb == "butchered":
		return r.writeJoined(f, h, "butchered ", body)
	case weighed && hung:
		return r.writeEach(f, h, "", body)
	case !weighed || h.verb != "hung":
		return false
	}
	f.dayOf(h, ":\n")
	for k, l := range body {
		at := shapes[k].lastNum
		name := listLine{i: l.i, j: at}
		for name.j > name.i && r.toks[name.j-1].kind == tokMark {
			name.j--
		}
		if name.empty() {
			return false
		}
		f.line(name)
		f.lend(" hung ", r.toks[at].from)
		f.line(listLine{i: at, j: l.j})
		f.endLine()
	}
	return true
}

// writeThings writes what is set up with the word for its kind: "stone 55 gal" below
// "barrels:".
func (r *reader) writeThings(f *folding, h heading, body []listLine, shapes []lineShape) bool {
	for k, l := range body {
		s := &shapes[k]
		sized := h.kind == headBarrels && s.dims[volume] || h.kind == headFeeders && s.dims[mass] || h.kind == headPens && s.nums > 0
		if !sized || s.barrels+s.feeders+s.pens+s.pigs > 0 || s.firstNum <= l.i || s.firstNum > l.i+3 || r.toks[l.i].kind != tokWord {
			return false
		}
		for n := l.i; n < s.firstNum; n++ {
			if m := r.lex.of[r.toks[n].s]; m != nil && m.sense.any(setOf(sBarrel, sFeeder, sPen)) {
				return false
			}
		}
	}
	for _, l := range body {
		f.lend(h.verb+" ", r.toks[l.i].from)
		r.withoutLabel(f, l)
		f.endLine()
	}
	return true
}

// ingredientLines says that each line is an ingredient and how much of it.
func (r *reader) ingredientLines(body []listLine) bool {
	for _, l := range body {
		if s := r.shapeOf(l); s.nums != 1 || !s.ingredient || s.money || s.dims[vessel] || s.pigs > 0 {
			return false
		}
		if t := strings.ToLower(r.text[r.toks[l.i].from:r.toks[l.j-1].to]); strings.Contains(t, "bought") {
			return false
		}
	}
	return len(body) > 1
}

func moneySign(s string) bool { return s == "$" || s == "€" || s == "£" }
