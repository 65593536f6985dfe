package reading

// The lines of a list, as tokens, before any meaning.

// listLine is a line of the text, or a piece of one behind a heading: toks[i:j]
// without what marks it as a piece of a list.
type listLine struct {
	i, j   int
	bullet bool
	label  bool // a colon or an equals sign ends it
}

func (l listLine) empty() bool { return l.i >= l.j }

// listLines cuts the tokens into lines.
func (r *reader) listLines() []listLine {
	var out []listLine
	from := 0
	for i := 0; i <= len(r.toks); i++ {
		if i < len(r.toks) && r.toks[i].kind != tokBreak {
			continue
		}
		out = append(out, r.listLine(from, i))
		from = i + 1
	}
	return out
}

// listLine is the line toks[i:j] without its bullet, "- ", "2) ", and its label.
func (r *reader) listLine(i, j int) listLine {
	l := listLine{i: i, j: j}
	if n := r.bulletAt(i, j); n > 0 {
		l.i, l.bullet = i+n, true
	}
	for l.j > l.i && (r.toks[l.j-1].s == ":" || r.toks[l.j-1].s == "=") {
		l.j, l.label = l.j-1, true
	}
	return l
}

// bulletAt is how many tokens from i on mark a piece of a list.
func (r *reader) bulletAt(i, j int) int {
	if i+1 >= j {
		return 0
	}
	t, n := &r.toks[i], &r.toks[i+1]
	switch t.s {
	case "-", "*", "•", "–", "·", "—", ">":
		if t.s != "-" || n.spaced || n.kind == tokWord {
			return 1
		}
	}
	if i+2 >= j || n.spaced || !r.toks[i+2].spaced || n.s != ")" && n.s != "." {
		return 0
	}
	if t.kind == tokNum && t.decimals == 0 && t.v >= 1 && t.v <= 30 || t.kind == tokWord && len(t.s) == 1 && n.s == ")" {
		return 2
	}
	return 0
}

// listPieces cuts toks[i:j] at commas, semicolons and slashes that stand alone.
func (r *reader) listPieces(i, j int, marks string) []listLine {
	var out []listLine
	from := i
	for k := i; k <= j; k++ {
		if k < j && !(r.toks[k].kind == tokMark && len(r.toks[k].s) == 1 && containsByte(marks, r.toks[k].s[0])) {
			continue
		}
		if k > from {
			out = append(out, listLine{i: from, j: k})
		}
		from = k + 1
	}
	return out
}

func containsByte(s string, b byte) bool {
	for k := range len(s) {
		if s[k] == b {
			return true
		}
	}
	return false
}

// lineShape is what a line shows before it is read.
type lineShape struct {
	pigs, barrels, feeders, pens int // names of this herd
	all                          bool
	nums, words, days            int
	money, labelled              bool
	lastNum, firstNum            int // tokens, -1 none
	ingredient, product, hung    bool
	dims                         [numDimensions]bool
}

// shapeOf looks at the tokens of a line.
func (r *reader) shapeOf(l listLine) lineShape {
	s := lineShape{lastNum: -1, firstNum: -1}
	for k := l.i; k < l.j; k++ {
		if h, n := r.listName(k, l.j); n > 0 {
			switch {
			case h.pig >= 0:
				s.pigs++
			case h.barrel >= 0:
				s.barrels++
			case h.feeder >= 0:
				s.feeders++
			case h.pen >= 0:
				s.pens++
			}
			k += n - 1
			continue
		}
		t := &r.toks[k]
		switch {
		case t.kind == tokNum:
			if s.firstNum < 0 {
				s.firstNum = k
			}
			s.nums, s.lastNum = s.nums+1, k
		case t.kind == tokISO, t.kind == tokSlash && t.v2 >= 1 && t.v <= 31 && t.v2 <= 31 && t.v >= 1 && k == l.i, r.dayWord(k):
			s.days++
		case t.kind == tokMark && moneySign(t.s):
			s.money = true
		case t.s == ":":
			s.labelled = true
		case t.kind == tokWord:
			s.words++
			m := r.lex.of[t.s]
			if m == nil {
				continue
			}
			s.ingredient = s.ingredient || m.canon != "" && m.sense.has(sIngredient)
			s.product = s.product || m.drug != ""
			s.hung = s.hung || m.sense.has(sHung)
			s.all = s.all || m.sense.has(sAll) || m.sense.has(sBoth)
			if m.unit != 0 {
				s.dims[m.unit.dim()] = true
				s.money = s.money || m.unit.dim() == money
			}
		}
	}
	return s
}

// dayWord says that token k is a word for a day, or a month with its number.
func (r *reader) dayWord(k int) bool {
	t := &r.toks[k]
	if t.kind != tokWord {
		return false
	}
	m := r.lex.of[t.s]
	return m != nil && (m.isDay || m.month > 0 && (k+1 < len(r.toks) && r.toks[k+1].kind == tokNum || k > 0 && r.toks[k-1].kind == tokNum))
}

func (r *reader) isDay(w string) bool {
	m := r.lex.of[w]
	return m != nil && m.isDay
}

// listName is the longest name of the herd at token k, tags too.
func (r *reader) listName(k, end int) (herdName, int) {
	best, n := herdName{}, 0
	for x := range r.names {
		h := &r.names[x]
		if h.number || h.part && h.pig >= 0 || len(h.words) == 1 && len(h.words[0]) == 1 && !h.tag {
			continue
		}
		if m := matchName(h.words, r.toks[k:end]); m > n {
			best, n = *h, m
		}
	}
	return best, n
}
