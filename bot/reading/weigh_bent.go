package reading

import (
	"slices"
	"strings"
)

// What a keyboard makes of a pig's name: a plain word close to it, "Clever 184
// lbs" for Clover, "Great limps" for Greta, in the place where a name stands.

// bentNames takes a word for the pig whose name it is closest to where its clause
// is but that word and a weight, or but that word and a sign of illness.
func (r *reader) bentNames() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.pig >= 0 || it.number() || k > 0 && it.gap < gapAnd && !r.items[k-1].number() || len(it.s) < 3 || strings.Contains(it.s, " ") {
			continue
		}
		n := r.behindName(k)
		if n < 0 {
			continue
		}
		weighs, sure := r.bentWeight(n)
		ill := n < len(r.items) && r.items[n].is(sSick) && it.capital && r.items[n].kind == itWord && len(r.items[n].s) > 3
		if !weighs && !ill || it.isAny(tradeSenses) || it.unit != 0 && !it.capital {
			continue
		}
		p, far, ok := r.bentName(it.s)
		if !ok || far > 2 && !sure || far > 1 && (ill || !sure && it.known) {
			continue
		}
		plain := it.sense
		plain.drop(sThanks)
		plain.drop(sFiller)
		steers := !plain.empty() || it.is(sFiller) && !it.is(sThanks) // "plus 160 lbs"
		if steers && !it.capital || far > 1 && len(it.s) < 4 {
			continue
		}
		it.kind, it.pig, it.sense, it.unit, it.canon = itName, p, senses{}, 0, ""
		it.bent = steers && r.namesWeighed() < 2 || far > 1 && !sure
	}
}

// namesWeighed counts the pigs of the text that stand right before a number.
func (r *reader) namesWeighed() int {
	n := 0
	for k := 0; k+1 < len(r.items); k++ {
		if it := &r.items[k]; it.kind == itName && int(it.pig) < r.alive && !it.bent && r.items[k+1].number() {
			n++
		}
	}
	return n
}

// behindName is the item that a name at k would be told of: the next one, or the
// one behind "is" or "at"; -1 if none follows in the clause.
func (r *reader) behindName(k int) int {
	for n := k + 1; n < len(r.items) && n <= k+2; n++ {
		if r.items[n].gap > gapNone && !(n == k+1 && r.items[k].label) {
			return -1
		}
		switch r.items[n].s {
		case "is", "was", "at", "has", "weighs", "weighed", "is at", "was at", "got", "about", "around":
			continue
		}
		return n
	}
	return -1
}

// bentWeight says that item n is a weight that ends its clause, and whether it is
// one for sure: with its unit, or where other pigs are named in the text.
func (r *reader) bentWeight(n int) (weighs, sure bool) {
	if n >= len(r.items) {
		return false, false
	}
	x := &r.items[n]
	if x.soft || x.ord || x.rng || x.unit == unitStone || x.kind != itNum && !x.qty(mass) || x.v < 5 {
		return false, false
	}
	if n+1 < len(r.items) && r.items[n+1].gap < gapAnd && r.items[n+1].kind != itDay && !r.items[n+1].isAny(setOf(sGirth, sLength, sNow)) {
		if n+2 >= len(r.items) || r.items[n+1].kind != itName && !r.items[n+2].number() {
			return false, false
		}
	}
	if x.qty(mass) {
		return true, true
	}
	named := slices.ContainsFunc(r.items, func(it item) bool { return it.kind == itName && int(it.pig) < r.alive })
	return true, named
}

// bentName is the one living pig whose name is closest to the word, and how many
// letters away it is; the same consonants count as one letter.
func (r *reader) bentName(s string) (pig int16, far int, ok bool) {
	pig, far = -1, 4
	hits := 0
	for k := range r.names {
		h := &r.names[k]
		if h.pig < 0 || int(h.pig) >= r.alive || len(h.words) != 1 || len(h.words[0]) < 4 || h.number {
			continue
		}
		w := h.words[0]
		d := distance(s, w)
		switch {
		case strings.HasPrefix(s, w) && len(s) <= len(w)+3 || consonants(s) == consonants(w) && len(consonants(s)) > 1:
			d = min(d, 1)
		case w[0] != s[0] && (d > 1 || len(w) < 4):
			continue
		case d == 2 && len(w) < 4, d == 3 && (len(w) < 4 || w[:2] != s[:2]), d > 3:
			continue
		}
		switch {
		case d < far:
			pig, far, hits = h.pig, d, 1
		case d == far:
			hits++
		}
	}
	return pig, far, hits == 1
}

// consonants are the letters of a word that are heard and no vowels, none twice in
// a row.
func consonants(s string) string {
	var b strings.Builder
	var last rune
	for _, c := range s {
		if strings.ContainsRune("aeiouyh", c) || c == last {
			continue
		}
		b.WriteRune(c)
		last = c
	}
	return b.String()
}

// joinNames makes one token of two that a keyboard parted within a name of the
// herd: "Kid lat was 75".
func (r *reader) joinNames() {
	for i := 0; i+1 < len(r.toks); i++ {
		a, b := &r.toks[i], &r.toks[i+1]
		if a.kind != tokWord || b.kind != tokWord || len(a.s) < 2 || len(b.s) < 2 {
			continue
		}
		whole := a.s + b.s
		if !slices.ContainsFunc(r.names, func(h herdName) bool { return len(h.words) == 1 && h.words[0] == whole && len(whole) >= 5 }) {
			continue
		}
		a.s, a.to = whole, b.to
		r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
	}
}
