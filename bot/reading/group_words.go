package reading

import (
	"slices"
	"strings"
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
		if len(pigs) < 2 {
			continue
		}
		at, to := t.from, r.toks[i+n-1].to
		var in []token
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
	for k := range r.names {
		h := &r.names[k]
		if h.pig >= 0 && int(h.pig) < r.alive && !h.part && len(h.words) == 2 && h.words[0] == word && h.words[1][0] >= '0' && h.words[1][0] <= '9' {
			pigs = append(pigs, h.words)
		}
		if (h.barrel >= 0 || h.feeder >= 0 || h.pen >= 0) && h.words[0] == word {
			return nil, 0
		}
	}
	return pigs, n
}
