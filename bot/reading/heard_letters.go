package reading

import "strings"

// thingLetters writes the first letters of barrels or feeders out, where a line
// that speaks of them tells a level or an amount of each: "barrels: s full h half".
func (r *reader) thingLetters() {
	kind := sense(0)
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind == tokBreak {
			kind = 0
			continue
		}
		if g := genericThing[strings.TrimSuffix(t.s, "s")]; g == sBarrel || g == sWater {
			kind = sBarrel
		} else if g == sFeeder || g == sFeed {
			kind = sFeeder
		}
		if t.kind != tokWord || len(t.s) != 1 || t.s == "a" || t.s == "i" || t.s == "x" {
			continue
		}
		if kind == 0 {
			if w := r.loneLetter(i); w != "" {
				t.s = w
			}
			continue
		}
		if i+1 >= len(r.toks) || !r.levelAt(i+1) && !r.lettersOn(i+1) {
			continue
		}
		if w := r.thingOf(t.s[0], kind); w != "" {
			t.s = w
		}
	}
}

// loneLetter is the word for the one barrel or feeder that the letter at token i can
// stand for where no word says which kind the list is of: "E 50 gal W 70 gal", "N 200
// S 150", "200 N 150 S", "filled e and w". It is "" for the initial of a pig and for
// letters that are a unit or a word there.
func (r *reader) loneLetter(i int) string {
	t := &r.toks[i]
	w := r.thingOf(t.s[0], sFeeder)
	if b := r.thingOf(t.s[0], sBarrel); w == "" {
		w = b
	} else if b != "" {
		return ""
	}
	if w == "" || !r.compass(t.s) && !t.upper && !t.capital || r.namesakes(t.s[0]) || t.s == "n" && !t.capital && !r.beginsPiece(i) {
		return ""
	}
	behind := i > 0 && r.toks[i-1].kind == tokNum && (i+1 == len(r.toks) || r.toks[i+1].kind != tokWord)
	switch {
	case i > 0 && !t.spaced && r.toks[i-1].kind != tokBreak && (r.toks[i-1].kind != tokMark || r.toks[i-1].s == "'" || r.toks[i-1].s == "’"):
		return "" // "50s", "5n"
	case i > 0 && r.filledAt(i-1):
		return w
	case i > 1 && r.joins(i-1) && r.toks[i-2].s == r.thingOf(r.toks[i-2].s[0], sBarrel):
		return w // "e and w full"
	case i+1 < len(r.toks) && (r.levelAt(i+1) || r.lettersOn(i+1)) && (i == 0 || r.toks[i-1].kind != tokNum || !r.numberFirst(i)):
		return w
	case behind && r.numberFirst(i):
		return w
	}
	return ""
}

// compass says that a letter is a side of the compass, which barrels and feeders are
// called by more often than by anything else.
func (r *reader) compass(s string) bool { return s == "n" || s == "s" || s == "e" || s == "w" }

// namesakes says that pigs too begin with the letter.
func (r *reader) namesakes(letter byte) bool {
	_, ok := r.initial(letter)
	return ok
}

// filledAt says that token i is a verb of filling.
func (r *reader) filledAt(i int) bool {
	m := r.lex.of[r.toks[i].s]
	return m != nil && m.sense.has(sFill)
}

// joins says that token i joins two things.
func (r *reader) joins(i int) bool {
	switch r.toks[i].s {
	case "+", "&", "and", ",", "/":
		return true
	}
	return false
}

// numberFirst says that in the list around token i the numbers stand before their
// letters: it begins with one.
func (r *reader) numberFirst(i int) bool {
	k := i
	for k > 0 && r.toks[k-1].kind != tokBreak && r.toks[k-1].s != "." && r.toks[k-1].s != ":" {
		k--
	}
	return r.toks[k].kind == tokNum
}

// lettersOn says that another letter of a list follows at token i: "e+w full".
func (r *reader) lettersOn(i int) bool {
	switch r.toks[i].s {
	case "+", "&", "and", ",", "/", "n":
	default:
		return false
	}
	return i+2 < len(r.toks) && r.toks[i+1].kind == tokWord && len(r.toks[i+1].s) == 1 && (r.levelAt(i+2) || r.lettersOn(i+2))
}

// levelAt says that a level or an amount stands at token i, or behind a colon.
func (r *reader) levelAt(i int) bool {
	if (r.toks[i].s == ":" || r.toks[i].s == "=") && i+1 < len(r.toks) {
		i++
	}
	t := &r.toks[i]
	if t.kind == tokNum || t.kind == tokSlash {
		return true
	}
	m := r.lex.of[t.s]
	return m != nil && (m.isFrac || m.sense.any(setOf(sFull, sEmpty)))
}

// thingOf is the first word of the one thing of a kind that begins with a letter.
func (r *reader) thingOf(letter byte, kind sense) string {
	found := ""
	for k := range r.names {
		h := &r.names[k]
		if !r.ofKind(h, kind) || len(h.words) == 0 || h.words[0][0] != letter || genericThing[h.words[0]] != 0 {
			continue
		}
		if found != "" && found != h.words[0] {
			return ""
		}
		found = h.words[0]
	}
	return found
}
