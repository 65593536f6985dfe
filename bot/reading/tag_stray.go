package reading

// strayTag says that the number at token i stands where a pig's tag does, but is
// none of this herd's: "sold 420" where the tags are 411 to 419. Nothing is
// guessed from a number that is only close.
func (r *reader) strayTag(i int) bool {
	t := &r.toks[i]
	if t.v < 1 || r.amountAt(i, false) {
		return false
	}
	if i > 0 && r.tagWordBefore(i) {
		switch r.toks[i-1].s {
		case "no", "pigs", "hogs", "gilts", "barrows", ".":
		default:
			return true
		}
	}
	if t.v < bigTag || !r.likeTags(t) {
		return false
	}
	p := r.beforeTag(i)
	behind := r.pigVerbBehind(i) || r.tagIsListed(i) && r.pigsDo(i)
	if k, ok := r.tagListed(i, p); ok && k != noTag && r.toks[p].s != "," {
		return behind || r.listsPigs(i)
	}
	if p >= 0 && r.toks[p].kind == tokWord {
		m := r.lex.of[r.toks[p].s]
		switch r.toks[p].s {
		case "does", "is", "will", "did", "has":
			return i+1 < len(r.toks) && r.toks[i+1].kind == tokWord
		}
		return m != nil && m.sense.any(setOf(sSold, sDied, sSlaughtered, sWorm, sTreat, sGave, sMove, sLost)) && !m.sense.any(setOf(sPour, sPay))
	}
	if p >= 0 && r.toks[p].kind != tokBreak && r.toks[p].s != "," && r.toks[p].s != "." && r.toks[p].s != ";" {
		return false
	}
	if i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && r.weighedBehind(i) {
		return p < 0 || r.tagAhead(i) || r.toks[p].s != ","
	}
	return behind
}

// pigVerbBehind says that what follows token i is told of pigs only: "died",
// "limping", "weighs".
func (r *reader) pigVerbBehind(i int) bool {
	if i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord {
		return false
	}
	if aloneVerb[r.toks[i+1].s] {
		return true
	}
	m, _ := r.lex.phrase(r.toks[i+1:], func(m *meaning) bool { return !m.sense.empty() })
	return m != nil && m.sense.any(setOf(sSick, sWell, sDied, sSold, sDown, sSlaughtered, sProduct, sWorm, sTreat, sWeigh, sGirth, sHung))
}

// likeTags says that the number looks like the herd's tags: as many digits, and
// within a hundred of one of them.
func (r *reader) likeTags(t *token) bool {
	for k := range r.names {
		h := &r.names[k]
		if !h.tag || len(h.words[0]) != len(t.s) {
			continue
		}
		if v, _ := digits(h.words[0], 0); v-t.v < 100 && t.v-v < 100 {
			return true
		}
	}
	return false
}

// tagAhead says that a pig's tag stands before token i in the text.
func (r *reader) tagAhead(i int) bool {
	for k := range i {
		if r.toks[k].tag == tagPig {
			return true
		}
	}
	return false
}
