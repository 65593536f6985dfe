package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// Pigs whose names begin with the same word, as "red 14" and "red 15" of the colour
// of their ear tags, are called by that word all together: "reds dewormed", "the
// blue ones".

// sharedWords puts the names of such pigs in the place of the word for all of them.
func (r *reader) sharedWords() {
	for i := 0; i < len(r.toks); i++ {
		t := &r.toks[i]
		if t.kind != tokWord {
			continue
		}
		pigs, n := r.sharedAt(i)
		one := 0
		if len(pigs) < 2 || n == 2 && r.singleHis(i+2) {
			if pigs, one = r.oneOfShared(i); one == 0 {
				continue
			}
			n = one
		}
		at, to := t.from, r.toks[i+n-1].to
		var in []token
		if one > 0 { // "the red one" is one of them
			in = append(in, token{kind: tokWord, s: "one", from: at, to: to, spaced: true}, token{kind: tokWord, s: "of", from: at, to: to, spaced: true})
		}
		for x, p := range pigs {
			if x > 0 {
				in = append(in, token{kind: tokMark, s: "&", from: at, to: at})
			}
			for _, w := range p {
				one := token{kind: tokWord, s: w, from: at, to: to, spaced: true}
				if v, used := digits(w, 0); used == len(w) {
					one.kind, one.v = tokNum, v
				}
				in = append(in, one)
			}
		}
		r.toks = slices.Replace(r.toks, i, i+n, in...)
		i += len(in) - 1
	}
}

// numberAlone is the number of a pig called by a word and a number, where no other pig
// has it, so that the number does for the name: "14" of "red 14".
func numberAlone(words []string, pigs []*model.Animal, i int) ([]string, bool) {
	if len(words) != 2 || !isDigit(words[1][0]) || isDigit(words[0][0]) {
		return nil, false
	}
	for k, a := range pigs {
		if w := nameWords(a.Name); k != i && len(w) > 0 && w[len(w)-1] == words[1] {
			return nil, false
		}
	}
	return words[1:], true
}

// shortWords writes the word of such a pig's name out where only its first letters stand
// before the number: "r14", "bl 3".
func (r *reader) shortWords() {
	for i := 0; i+1 < len(r.toks); i++ {
		t, n := &r.toks[i], &r.toks[i+1]
		if t.kind != tokWord || n.kind != tokNum || n.decimals > 0 || len(t.s) > 3 || n.spaced && !t.capital && len(t.s) < 2 {
			continue
		}
		if word := r.wordFrom(t.s, n.s); word != "" {
			t.s = word
		}
	}
}

// wordFrom is the word that begins with the letters in the name of the one living pig
// that has the number behind it, empty where things may be meant.
func (r *reader) wordFrom(letters, number string) string {
	found := ""
	for k := range r.names {
		h := &r.names[k]
		switch w := h.words[0]; {
		case h.pig < 0 && w[0] == letters[0] && (len(h.words) > 1 && h.words[1] == number || h.number):
			return "" // "b1" may be a barrel
		case h.pig >= 0 && int(h.pig) < r.alive && len(h.words) == 2 && h.words[1] == number && strings.HasPrefix(w, letters):
			if found != "" && found != w {
				return ""
			}
			found = w
		}
	}
	return found
}

// afterItsWord says that the number at token i stands behind the word of its name: the
// "14" of "red 14".
func (r *reader) afterItsWord(i int) bool {
	if i == 0 || r.toks[i-1].kind != tokWord {
		return false
	}
	for k := range r.names {
		if w := r.names[k].words; r.names[k].pig >= 0 && len(w) == 2 && w[1] == r.toks[i].s && w[0] == r.toks[i-1].s {
			return true
		}
	}
	return false
}

// sharedAt gives the names of the living pigs that the word at token i stands for,
// and how many tokens it takes: "reds", "red ones", "red pigs".
func (r *reader) sharedAt(i int) (pigs [][]string, n int) {
	s := r.toks[i].s
	n = 1
	if i+1 < len(r.toks) && r.toks[i+1].kind == tokWord {
		switch r.toks[i+1].s {
		case "ones", "pigs", "tags", "lot", "tagged", "eared":
			n = 2
		}
	}
	word := s
	if n == 1 {
		if word = strings.TrimSuffix(s, "s"); word == s {
			return nil, 0
		}
	}
	if pigs = r.sharing(word); pigs == nil {
		return nil, 0
	}
	return pigs, n
}

// oneOfShared gives the names of those of which the words at token i name one, and how
// many tokens they take: "red one", "red one's", "a red".
func (r *reader) oneOfShared(i int) (pigs [][]string, n int) {
	next := ""
	if i+1 < len(r.toks) && r.toks[i+1].kind == tokWord {
		next = r.toks[i+1].s
	}
	switch {
	case next == "one", next == "one's", next == "ones" && r.singleHis(i+2), next == "pig" || next == "pig's":
		n = 2
	case i > 0 && (r.toks[i-1].s == "a" || r.toks[i-1].s == "another") && next != "" && aloneVerb[next]:
		n = 1
	default:
		return nil, 0
	}
	if pigs = r.sharing(r.toks[i].s); len(pigs) < 2 {
		return nil, 0
	}
	return pigs, n
}

// singleHis says that the next words from token i on speak of one: "off his food".
func (r *reader) singleHis(i int) bool {
	for k := i; k < len(r.toks) && k < i+3 && r.toks[k].kind == tokWord; k++ {
		switch r.toks[k].s {
		case "his", "her", "its":
			return true
		}
	}
	return false
}

// sharing are the names of the living pigs that begin with the word and go on with a
// number, none where a thing's name begins with it too.
func (r *reader) sharing(word string) (pigs [][]string) {
	for k := range r.names {
		h := &r.names[k]
		if h.pig >= 0 && int(h.pig) < r.alive && !h.part && len(h.words) == 2 && h.words[0] == word && h.words[1][0] >= '0' && h.words[1][0] <= '9' {
			pigs = append(pigs, h.words)
		}
		if (h.barrel >= 0 || h.feeder >= 0 || h.pen >= 0) && h.words[0] == word {
			return nil
		}
	}
	return pigs
}
