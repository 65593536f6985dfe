package reading

import "slices"

// Pigs called by small numbers are said in words too, and a row of them with what
// each weighs is known by its row: "one is two oh seven two is two hundred even
// three I couldn't get".

// leastSaid is the least number that a spoken row takes for what a pig weighs.
const leastSaid = 20

// spokenRows makes names of the number words that open two and more pairs of a pig
// and its weight, in a herd whose pigs are called by small numbers.
func (r *reader) spokenRows() {
	if r.longestTag != 1 {
		return
	}
	var room [8]int
	heads := room[:0]
	taken := 0
	for i := 0; i < len(r.toks); {
		v, n := r.numberAt(i)
		if n == 0 {
			i++
			continue
		}
		if v < 1 || v > 9 || !r.isLiving(itoa(int(v))) {
			i += n
			continue
		}
		k := i + n
		for k < len(r.toks) && k < i+n+2 && (tellsWeight[r.toks[k].s] || r.toks[k].s == "si" || r.toks[k].s == ":" || r.toks[k].s == "=" || r.toks[k].s == "-" || r.toks[k].s == "weighs") {
			k++
		}
		w, m := r.numberAt(k)
		if m > 0 && w >= leastSaid && w < 1000 {
			heads, taken = append(heads, i), taken+1
			i = k + m
			continue
		}
		if k < len(r.toks) && (r.toks[k].s == "i" || r.toks[k].s == "we" || r.toks[k].s == "wouldn't" || r.toks[k].s == "wouldnt") && taken > 0 {
			heads = append(heads, i) // "three I couldn't get into the chute"
		}
		i += n
	}
	if taken < 2 {
		return
	}
	for x := len(heads) - 1; x >= 0; x-- {
		i := heads[x]
		v, n := r.numberAt(i)
		t := &r.toks[i]
		t.kind, t.v, t.s, t.to, t.tag = tokNum, v, itoa(int(v)), r.toks[i+n-1].to, tagPig
		if i+n < len(r.toks) && r.toks[i+n].s == "si" {
			r.toks[i+n].s = "is"
		}
		r.toks = slices.Delete(r.toks, i+1, i+n)
	}
}

// spokenPairs puts a comma between the pairs of a row that is said without one: "two oh one
// is two ten two oh four is two oh six", so that the next number is a tag again.
func (r *reader) spokenPairs() {
	if r.longestTag < 2 {
		return
	}
	for i := 0; i < len(r.toks); i++ {
		_, n := r.numberAt(i)
		if n < 2 || i+n >= len(r.toks) { // in words: digits stand in rows of their own
			continue
		}
		is := 0
		if tellsWeight[r.toks[i+n].s] {
			is = 1
		}
		w, m := r.numberAt(i + n + is)
		k := i + n + is + m
		if m == 0 || w < leastSaid || k >= len(r.toks) || is == 0 && r.isLiving(itoa(int(w))) {
			continue
		}
		tag, l := r.numberAt(k)
		if l < 2 || !r.isLiving(itoa(int(tag))) || k+l >= len(r.toks) {
			i = k - 1
			continue
		}
		if _, next := r.numberAt(k + l); !tellsWeight[r.toks[k+l].s] && (is == 1 || next == 0) {
			i = k - 1
			continue
		}
		r.toks = slices.Insert(r.toks, k, token{kind: tokMark, s: ",", from: r.toks[k].from, to: r.toks[k].from})
		i = k
	}
}

// numberAt is the whole number in digits or words at token i, and how many tokens
// it takes, 0 where none stands there.
func (r *reader) numberAt(i int) (float64, int) {
	if i >= len(r.toks) {
		return 0, 0
	}
	t := &r.toks[i]
	if t.kind == tokNum {
		if t.ordinal || t.decimals > 0 && t.v < leastSaid {
			return 0, 0
		}
		return t.v, 1
	}
	if t.kind != tokWord || !r.numberWord(i) {
		return 0, 0
	}
	v, n := r.lex.spoken(r.toks[i:])
	if n == 0 || v != float64(int(v)) {
		return 0, 0
	}
	return v, n
}

// gluedIs says that the number at token i has an "s" written to it, as of one who
// is or has something: "207s 212", "208s not in there".
func (r *reader) gluedIs(i int) bool {
	if i+1 >= len(r.toks) || r.toks[i+1].s != "s" || r.toks[i+1].spaced {
		return false
	}
	if i > 0 {
		switch r.toks[i-1].s {
		case "the", "low", "mid", "high", "upper", "lower":
			return false // "in the 200s"
		}
	}
	r.toks[i].to = r.toks[i+1].to
	r.toks = slices.Delete(r.toks, i+1, i+2)
	return true
}

// oddRun says that the number at token i stands in a run of three or more tags, odd
// in number, so that they are no pairs of a pig and its weight: "411 413 and 415".
func (r *reader) oddRun(i int) bool {
	a, b := i, i
	for a > 0 && (r.bigTagAt(a-1) || tagJoin(r.toks[a-1].s)) {
		a--
	}
	for b+1 < len(r.toks) && (r.bigTagAt(b+1) || tagJoin(r.toks[b+1].s)) {
		b++
	}
	n := 0
	for k := a; k <= b; k++ {
		if r.toks[k].kind == tokNum {
			n++
			for m := a; m < k; m++ {
				if r.toks[m].s == r.toks[k].s {
					return false
				}
			}
		}
	}
	return n >= 3 && n <= widestTags && n%2 == 1 && (b+1 >= len(r.toks) || r.toks[b+1].kind != tokNum)
}
