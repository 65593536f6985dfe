package reading

import (
	"slices"
	"strings"
)

// newPig is a name that an arrival gives, with its item.
type newPig struct {
	name string
	k    int
}

// arrivalNames finds the names of new pigs: unknown words, capitalised words,
// and plain words where names are told.
func (r *reader) arrivalNames(s span, count int) []newPig {
	var out []newPig
	naming, cased := false, r.cased()
	sure := func(k int) bool { // what stands in a list of names
		it := &r.items[k]
		return it.capital && (it.gap < gapStop || naming || k+1 < s.j && r.items[k+1].capital && r.items[k+1].gap >= gapAnd && r.items[k+1].gap <= gapComma)
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.gap >= gapStop && k > s.i {
			naming = false
		}
		if it.is(sNamed) && !it.capital || it.s == "names are" || it.s == "their names are" || it.is(sNamed) && it.gap >= gapStop {
			naming = true
			continue
		}
		if naming && !it.capital && (it.is(sPronoun) || it.is(sWeigh)) && len(out) > 0 {
			naming = false // "named willow thistle and sorrel they weigh ..."
			continue
		}
		if it.is(sPigs) && it.label || it.isAny(setOf(sBarrow, sGilt)) && it.label {
			naming = true
			continue
		}
		if it.kind != itWord && it.kind != itName && it.kind != itThing || it.is(sBorn) || it.is(sAge) {
			if it.number() && !it.soft {
				naming = naming && it.kind == itNum
			}
			continue
		}
		lower := strings.TrimSuffix(it.s, "'s")
		if stopWords[lower] || len(lower) < 2 && !it.tag || sexOf(it) != "" {
			continue
		}
		if it.is(sButcher) && !it.capital {
			continue
		}
		switch {
		case it.kind == itName && it.pig >= 0 && !it.init: // a name of the past is given again
		case !it.known && it.unit == 0 && (it.capital || naming || it.tag || slices.ContainsFunc(out, func(p newPig) bool { return strings.EqualFold(p.name, it.s) }) || !r.plainNoun(k, cased)):
		case sure(k) && !it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sArrive, sAbout, sEach, sAll, sBoth, sNamed, sZone, sHerd)) && (count > 0 || naming || len(out) > 0 || it.gap >= gapStop):
		case naming && (r.lex.plain[lower] || it.sense.empty() || !it.isAny(setOf(sPigs, sBarrow, sGilt, sBoar, sSow, sArrive, sAbout, sEach, sAll, sBoth, sIs, sAnd, sFiller))):
		case len(out) > 0 && k > 0 && out[len(out)-1].k == k-1 && it.gap <= gapComma && it.gap >= gapAnd && r.lex.plain[lower] && it.sense.empty(), r.listAhead(k, s) && it.sense.empty() && r.lex.plain[lower] && len(out) < count && r.afterHead(k, s):
		default:
			continue
		}
		dup := false
		for _, p := range out {
			dup = dup || strings.EqualFold(p.name, r.nameText(k))
		}
		it.used = true
		if !dup {
			out = append(out, newPig{r.nameText(k), k})
		}
	}
	// "Big Red and Blue": two words make one name where there are too many.
	for count > 0 && len(out) > count {
		joined := false
		for x := 0; x+1 < len(out); x++ {
			if out[x+1].k == out[x].k+1 && r.items[out[x+1].k].gap == gapNone {
				out[x] = newPig{out[x].name + " " + out[x+1].name, out[x+1].k}
				out = append(out[:x+1], out[x+2:]...)
				joined = true
				break
			}
		}
		if !joined {
			break
		}
	}
	if count > 0 && len(out) > 0 && len(out) < count && !naming && len(out) == 1 && !r.items[out[0].k].capital && !r.has(s, sNamed) {
		r.items[out[0].k].used = false
		return nil // one stray word is no name
	}
	return out
}

// listAhead says that item k is one of several words set apart by commas.
func (r *reader) listAhead(k int, s span) bool {
	return k+1 < s.j && (r.items[k+1].gap == gapComma || r.items[k+1].gap == gapAnd) || r.items[k].gap == gapComma || r.items[k].gap == gapAnd
}

// afterHead says that a count of pigs stands before item k.
func (r *reader) afterHead(k int, s span) bool {
	for n := s.i; n < k; n++ {
		if r.items[n].is(sPigs) || r.items[n].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return false
}

// nameText is a new name as written, with a capital.
func (r *reader) nameText(k int) string {
	it := &r.items[k]
	if it.tag && strings.ContainsAny(it.s, "0123456789") {
		return capitalize(it.s)
	}
	t := r.text[it.from:it.to]
	if low := strings.ToLower(t); strings.HasSuffix(low, "'s") || strings.HasSuffix(low, "’s") {
		t = t[:strings.LastIndexAny(t, "'’")]
		t = strings.TrimSuffix(t, "\xe2\x80")
	}
	return capitalize(t)
}

func capitalize(s string) string {
	for i, c := range s {
		if i == 0 {
			return strings.ToUpper(string(c)) + s[len(string(c)):]
		}
	}
	return s
}

func isName(names []newPig, k int) bool {
	for _, n := range names {
		if n.k == k {
			return true
		}
	}
	return false
}

// namesNear says that names stand beside the sex word in its clause.
func (r *reader) namesNear(k int, s span, names []newPig) bool {
	for n := k - 1; n >= s.i && r.items[n+1].gap < gapComma; n-- {
		if isName(names, n) {
			return true
		}
		for _, p := range names {
			if r.items[n].kind == itWord && strings.EqualFold(p.name, r.nameText(n)) {
				return true
			}
		}
	}
	for n := k + 1; n < s.j && r.items[n].gap < gapComma; n++ {
		if isName(names, n) {
			return true
		}
	}
	return false
}

// noGaps says that the words of the names stand side by side, as in one name.
func (r *reader) noGaps(names []newPig) bool {
	for _, n := range names[1:] {
		if r.items[n.k].gap > gapNone {
			return false
		}
	}
	return true
}

// plainNoun says that the word at item k, written small, is one of everyday English that
// is no name where names would have a capital, behind an article, or as what somebody
// does: "a headache and a pig", "all of them screaming".
func (r *reader) plainNoun(k int, cased bool) bool {
	it := &r.items[k]
	if !commonEnglish().has(it.s) && !rarerEnglish().has(it.s) {
		return false
	}
	return cased || strings.HasSuffix(it.s, "ing") || k > 0 && it.gap == gapNone && (r.items[k-1].s == "a" || r.items[k-1].s == "an")
}
