package reading

import "iter"

// phrase finds the longest phrase of the lexicon that begins the tokens and
// that the filter wants, and says how many tokens it takes. A hyphen between
// two words counts as a blank.
func (l *lexicon) phrase(toks []token, want func(*meaning) bool) (*meaning, int) {
	if len(toks) == 0 || toks[0].kind != tokWord && toks[0].kind != tokNum {
		return nil, 0
	}
	var best *meaning
	n := 0
	if m := l.of[toks[0].s]; m != nil && want(m) {
		best, n = m, 1
	}
	most := l.longest[toks[0].s]
	if most < 2 {
		return best, n
	}
	var store [96]byte
	key := append(store[:0], toks[0].s...)
	for k, parts := 1, 1; k < len(toks) && parts < most; k++ {
		t := &toks[k]
		if t.kind == tokMark && t.s == "-" && !t.spaced && k+1 < len(toks) && !toks[k+1].spaced {
			continue
		}
		if t.kind != tokWord && t.kind != tokNum || len(key)+1+len(t.s) > cap(store[:]) {
			break
		}
		key = append(append(key, ' '), t.s...)
		parts++
		if m := l.of[string(key)]; m != nil && want(m) {
			best, n = m, k+1
		}
	}
	return best, n
}

// phrasesAt yields the phrases of words and numbers that begin at token i and end
// before another, the shortest first, with how many tokens each takes. They are written
// into key, as far as it reaches.
func (r *reader) phrasesAt(key []byte, i, end int) iter.Seq2[int, []byte] {
	return func(yield func(int, []byte) bool) {
		for k := i; k < end; k++ {
			t := &r.toks[k]
			if t.kind != tokWord && t.kind != tokNum || len(key)+1+len(t.s) > cap(key) {
				return
			}
			if k > i {
				key = append(key, ' ')
			}
			key = append(key, t.s...)
			if !yield(k-i+1, key) {
				return
			}
		}
	}
}
