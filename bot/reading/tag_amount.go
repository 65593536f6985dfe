package reading

// What makes a number an amount although a pig is called by it.

// amountAt says that the number at token i has a unit, a currency or a word of a
// day beside it, or is a side of something. told says that a word for a pig's
// number stands before it.
func (r *reader) amountAt(i int, told bool) bool {
	t := &r.toks[i]
	if i > 0 {
		switch p := &r.toks[i-1]; {
		case p.s == "$" || p.s == "€" || p.s == "£" || p.s == "+" && !t.spaced:
			return true
		case (p.s == "x" || p.s == "×" || p.s == "*" || p.s == "by") && i > 1 && r.toks[i-2].kind == tokNum && r.toks[i-2].tag == noTag:
			return true
		case (p.s == "/" || p.s == ":") && i > 1 && r.toks[i-2].kind == tokNum && r.toks[i-2].tag == noTag && !t.spaced && !p.spaced:
			return true
		}
	}
	return r.countBehind(i) || t.v <= 31 && !told && r.dateAt(i) || r.sidesBehind(i)
}

// countBehind says that a unit, or the word for what is counted, follows the number
// at token i.
func (r *reader) countBehind(i int) bool {
	if i+1 >= len(r.toks) {
		return false
	}
	t, n := &r.toks[i], &r.toks[i+1]
	if n.kind == tokMark {
		switch n.s {
		case "#":
			return !n.spaced && (i+2 >= len(r.toks) || r.toks[i+2].kind != tokNum || r.toks[i+2].spaced)
		case "\"", "”", "″", "%", "°", "º":
			return true
		case "'", "’", "′":
			return !n.spaced && (i+2 >= len(r.toks) || r.toks[i+2].s != "s")
		case "$", "€", "£":
			return i+2 >= len(r.toks) || r.toks[i+2].kind != tokNum
		case "-": // "50-lb"
			return !n.spaced && i+2 < len(r.toks) && !r.toks[i+2].spaced && r.unitAt(i+2) != 0 && len(r.toks[i+2].s) > 1
		}
		return false
	}
	if n.kind != tokWord {
		return false
	}
	u, k := r.unitPhrase(i + 1)
	switch n.s {
	case "in":
		if n.spaced && (t.v > 72 || i+2 < len(r.toks) && r.toks[i+2].kind == tokWord) {
			return false
		}
		return true
	case "m", "f", "c", "d", "w", "h", "b", "s":
		return !n.spaced
	case "am", "pm", "hundred", "thousand", "o'clock":
		return true
	case "left", "use", "can":
		return false
	}
	if u != 0 && k > 0 {
		return u.dim() != head || t.v < bigTag
	}
	m := r.lex.of[n.s]
	if m == nil {
		return false
	}
	if m.sense.any(setOf(sFeeder, sBarrel)) && !m.sense.any(setOf(sWeigh)) {
		return true // "2 feeders", "number 3 barrel"
	}
	return t.v < bigTag && m.sense.any(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sPen, sMore, sFewer)) && !r.singularSex(n.s)
}

// singularSex are the words for one pig's sex, which stand behind its name.
func (r *reader) singularSex(s string) bool {
	return s == "barrow" || s == "gilt" || s == "boar" || s == "sow"
}

// dateAt says that the number at token i is a day of a month.
func (r *reader) dateAt(i int) bool {
	d := dayReader{lex: r.lex, toks: r.toks, metric: r.dayFirst}
	if d.month(i-1) > 0 {
		return true
	}
	j := i + 1
	if j < len(r.toks) && (r.toks[j].s == "." || r.toks[j].s == "of") {
		j++
	}
	return d.month(j) > 0 && (r.toks[j].s != "may" || j > i+1 || r.toks[j].capital)
}

// sidesBehind says that the number at token i is the first side of something:
// "41 x 46".
func (r *reader) sidesBehind(i int) bool {
	if i+2 >= len(r.toks) {
		return false
	}
	switch r.toks[i+1].s {
	case "x", "×", "*", "by":
		return r.toks[i+2].kind == tokNum
	}
	return false
}
