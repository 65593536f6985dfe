package reading

// thingHere says that the small word at token i stands where the name of a thing
// does: before the word for its kind, or behind "the", "in" or "to" at the end of
// its clause.
func (r *reader) thingHere(i int) bool {
	next := &token{kind: tokBreak}
	if i+1 < len(r.toks) {
		next = &r.toks[i+1]
	}
	if genericThing[next.s] != 0 || next.kind == tokNum {
		return true
	}
	m := r.lex.of[next.s]
	if m != nil && m.sense.any(setOf(sFull, sEmpty)) || m != nil && m.isFrac {
		return true
	}
	if m != nil && m.sense.has(sAbout) && i+2 < len(r.toks) && r.levelSoon(i+2) && (i == 0 || r.toks[i-1].kind != tokWord) { // "front full, back about half"
		return true
	}
	if next.s == "one" && (i == 0 || r.toks[i-1].kind != tokWord || r.toks[i-1].s == "the") { // "the back one is full"
		return !r.countsSomething(i + 1)
	}
	if (next.s == "is" || next.s == "was" || next.s == "has" || next.s == "still" || next.s == "at") && i > 0 && r.toks[i-1].s == "the" && r.levelSoon(i+2) { // "the back is still half"
		return true
	}
	if levelLeads[next.s] && r.headsClause(i) && r.levelSoon(i+1) { // "front full, back about half"
		return true
	}
	if next.s == "not" && i+2 < len(r.toks) && r.nameOfThing(i+2) { // "back not front"
		return true
	}
	if i == 0 {
		return next.kind != tokWord
	}
	switch r.toks[i-1].s {
	case "the", "in", "to", "into", "and", "&", "+":
		return next.kind != tokWord || next.s == "and"
	case "not":
		return next.kind != tokWord && i > 1 && r.nameOfThing(i-2)
	case ",":
		return next.kind != tokWord && i > 2 && r.toks[i-3].s == "not" && r.nameOfThing(i-2) // "not front, back"
	}
	return r.toks[i].capital && i > 0 && r.toks[i-1].kind == tokWord
}

// levelLeads lead up to a level told right behind a name.
var levelLeads = setOfWords(split("about, around, maybe, like, only, roughly, nearly, almost, at, is, still, a, one, just, down"))

// headsClause says that the token at i begins a clause, or stands behind a "the" that does.
func (r *reader) headsClause(i int) bool {
	if i > 0 && r.toks[i-1].s == "the" {
		i--
	}
	return i == 0 || r.toks[i-1].kind == tokBreak || r.toks[i-1].s == "and" || r.toks[i-1].kind == tokMark && r.toks[i-1].s != "'" && r.toks[i-1].s != "’"
}

// countsSomething says that the "one" at token i counts what stands behind it: "back one
// bag".
func (r *reader) countsSomething(i int) bool {
	if i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord {
		return false
	}
	m := r.lex.of[r.toks[i+1].s]
	return m != nil && m.unit != 0 && !m.isFrac
}

// nameOfThing says that the word at token i is the name of a feeder, a barrel or a pen, or
// of what singles one out, whatever else it means.
func (r *reader) nameOfThing(i int) bool {
	for k := range r.names {
		if h := &r.names[k]; h.pig < 0 && h.group < 0 && len(h.words) == 1 && h.words[0] == r.toks[i].s {
			return true
		}
	}
	return false
}

// levelSoon says that a level is told a few words on, before the clause ends.
func (r *reader) levelSoon(i int) bool {
	for n := i; n < len(r.toks) && n < i+5 && r.toks[n].kind != tokMark && r.toks[n].kind != tokBreak; n++ {
		if m := r.lex.of[r.toks[n].s]; m != nil && (m.isFrac || m.sense.any(setOf(sFull, sEmpty))) {
			return true
		}
	}
	return false
}
