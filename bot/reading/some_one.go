package reading

// ones are the words that are texted with a figure at the end: "no1", "every1".
var ones = map[string]string{"no": "nobody", "every": "everyone", "some": "someone", "any": "anyone"}

// someOnes reads "no1" and "every1" as words where no pig is number 1, and "no one" before
// a word as nobody where one is.
func (r *reader) someOnes() {
	for i := 0; i+1 < len(r.toks); i++ {
		t, n := &r.toks[i], &r.toks[i+1]
		w := ones[t.s]
		if w == "" || n.s != "1" && n.s != "one" {
			continue
		}
		behind := i+2 < len(r.toks) && r.toks[i+2].kind == tokWord
		switch numbered := r.numberedOne(); {
		case n.s == "1" && !n.spaced && !numbered:
		case n.s == "one" && t.s == "no" && numbered && behind && r.unitAt(i+2) == 0:
		default:
			continue
		}
		t.s, t.to = w, n.to
		r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
	}
}

// headsCounted reads the "heads" behind a number as pigs: "butcher october 5, four heads".
func (r *reader) headsCounted() {
	for i := 1; i < len(r.toks); i++ {
		if t := &r.toks[i]; t.s == "heads" && (r.toks[i-1].kind == tokNum || r.numbersWord(i-1)) {
			t.s = "head"
		}
	}
}

// numbersWord says that the word at token i is a number.
func (r *reader) numbersWord(i int) bool {
	m := r.lex.of[r.toks[i].s]
	return m != nil && m.isNum
}

// numberedOne says that a pig is called 1.
func (r *reader) numberedOne() bool {
	for _, a := range r.pigs {
		if a.Name == "1" {
			return true
		}
	}
	return false
}
