package reading

// Words that this text gives to pigs as names: "4 pigs came, Will, Sunday, Corn and
// Rose". Written as a list of names, a word is a name whatever else it means.

// newNames marks the words of such a list, and where they are said again.
func (r *reader) newNames() {
	if !r.comesHere() {
		return
	}
	cased := r.cased()
	for i := 0; i < len(r.toks); i++ {
		if !r.nameListBegins(i) {
			continue
		}
		elems, end := r.nameRun(i, cased)
		if len(elems) < 2 || !r.namingBefore(i) && len(elems) != r.countBefore(i) {
			continue
		}
		for _, k := range elems {
			r.toks[k].tag = tagNew
		}
		for k := end; k < len(r.toks); k++ {
			for _, e := range elems {
				if t := &r.toks[k]; t.kind == tokWord && t.s == r.toks[e].s && (t.capital && cased || !cased && r.subjectAt(k)) {
					t.tag = tagNew
				}
			}
		}
		return
	}
}

// cased says that the text has both capital and small letters, so that a capital
// tells something.
func (r *reader) cased() bool {
	upper, lower := false, false
	for i := range r.toks {
		if t := &r.toks[i]; t.kind == tokWord && len(t.s) > 1 {
			upper = upper || t.capital && !t.upper
			lower = lower || !t.capital
		}
	}
	return upper && lower
}

// nameListBegins says that a list of names can begin at token i: behind a comma, a
// colon, "pigs" or a word for naming.
func (r *reader) nameListBegins(i int) bool {
	if i == 0 || r.toks[i].kind != tokWord {
		return false
	}
	switch r.toks[i-1].s {
	case ",":
		if i < 2 {
			return false
		}
		m := r.lex.of[r.toks[i-2].s]
		return m == nil || !m.isDay || m.text == "today" || m.text == "yesterday" || m.text == "now" // no "tue, thu & sat"
	case ":", "(", "-", "–", "\n", "pigs", "piglets", "are":
		return true
	}
	return r.namingBefore(i)
}

// namingBefore says that a word for naming stands right before token i.
func (r *reader) namingBefore(i int) bool {
	for k := i - 1; k >= 0 && i-k < 4; k-- {
		switch r.toks[k].s {
		case "named", "names", "called":
			return true
		case "are", ":", "them":
		default:
			return false
		}
	}
	return false
}

// nameRun lists the words that stand in one list from token i on, one word between
// commas or an "and", and where it ends.
func (r *reader) nameRun(i int, cased bool) ([]int, int) {
	var elems []int
	k := i
	for k < len(r.toks) && r.canName(k, cased) {
		elems = append(elems, k)
		n := k + 1
		for n < len(r.toks) && (r.toks[n].s == "," || r.toks[n].s == "and" || r.toks[n].s == "&") {
			n++
		}
		if n == k+1 {
			return elems, n
		}
		k = n
	}
	return elems, k
}

// canName says that the word at token k can be a name of a pig.
func (r *reader) canName(k int, cased bool) bool {
	t := &r.toks[k]
	if t.kind != tokWord || len(t.s) < 2 || stopWords[t.s] || cased && !t.capital {
		return false
	}
	m := r.lex.of[t.s]
	return m == nil || (cased || !m.isDay) && !m.isNum && m.unit == 0 && !m.sense.any(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sYoung, sArrive, sAbout, sEach, sAll, sBoth, sNamed, sZone, sHerd, sWeigh, sBorn, sAge, sSick, sFull, sEmpty, sPronoun))
}

// subjectAt says that the word at token k stands where a name does that something
// is told of: before "is", "are" or an "and" of a list.
func (r *reader) subjectAt(k int) bool {
	if k+1 >= len(r.toks) {
		return false
	}
	switch r.toks[k+1].s {
	case "is", "are", "and", "&", ",":
		return true
	}
	return false
}
