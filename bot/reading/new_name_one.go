package reading

// oneNewName reads the name of the one pig that is told to come behind a comma as if it were
// said to be one: "adopted a piglet, Otis, 20 lb" is no feed.
func (r *reader) oneNewName() {
	cased := r.cased()
	for i := 3; i < len(r.toks); i++ {
		if r.toks[i].kind == tokWord && r.onePigAhead(i) && r.canName(i, cased) && r.endsName(i+1, cased, i) {
			r.toks[i-1].kind, r.toks[i-1].s = tokWord, "named"
			r.toks[i].tag = tagNew
			return
		}
	}
}

// onePigAhead says that one pig that comes is told right before the mark ahead of token i:
// "adopted a piglet, Otis, 20 lb", "got a gilt today, Bertha".
func (r *reader) onePigAhead(i int) bool {
	if i < 3 || r.toks[i-1].s != "," {
		return false
	}
	k := i - 2
	for k > 1 && (r.toks[k].s == "today" || r.toks[k].s == "yesterday" || r.toks[k].s == "more") {
		k--
	}
	switch r.toks[k].s {
	case "piglet", "pig", "gilt", "barrow", "weaner", "runt", "shoat":
	default:
		return false
	}
	for n := k - 1; n >= 0 && n >= k-3; n-- {
		switch r.toks[n].s {
		case "a", "one", "another", "new":
			for m := 0; m < n; m++ {
				if pigComing[r.toks[m].s] {
					return true
				}
			}
			return false
		}
		if r.toks[n].kind != tokWord {
			return false
		}
	}
	return false
}

// endsName says that a name of one word ends before token k: at a mark, a number or the end.
// Without capitals it must be no word of English.
func (r *reader) endsName(k int, cased bool, name int) bool {
	w := r.toks[name].s
	if m := r.lex.of[w]; m != nil && (m.isDay || m.month > 0) {
		return false // "got a pig, Monday"
	}
	if !cased && (r.lex.of[w] != nil || r.lex.plain[w] || commonEnglish().has(w) || rarerEnglish().has(w)) {
		return false
	}
	return k >= len(r.toks) || r.toks[k].kind == tokMark || r.toks[k].kind == tokBreak || r.toks[k].kind == tokNum
}

// pigComing are the verbs of a pig's coming.
var pigComing = setOfWords(split("got, adopted, bought, brought, took in, picked, have, fetched, collected, rescued, purchased, welcomed"))
