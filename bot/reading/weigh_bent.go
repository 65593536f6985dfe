package reading

import "strings"

// What a keyboard makes of a pig's name: a plain word close to it, "Clever 184
// lbs" for Clover, where nothing stands beside the word but a weight.

// bentNames takes a word for the pig whose name it is closest to where its clause
// is but that word and a weight with its unit.
func (r *reader) bentNames() {
	for k := range r.items {
		it := &r.items[k]
		if it.kind != itWord || it.pig >= 0 || k+1 >= len(r.items) || k > 0 && it.gap < gapAnd || len(it.s) < 3 || strings.Contains(it.s, " ") {
			continue
		}
		n := &r.items[k+1]
		end := k+2 >= len(r.items) || r.items[k+2].gap >= gapAnd
		weighs := n.gap == gapNone && n.qty(mass) && n.unit != unitStone && !n.soft && end
		if !weighs {
			continue
		}
		p, ok := r.bentName(it.s)
		if !ok {
			continue
		}
		hard := it.known && !it.sense.empty() && !it.is(sThanks) // a word that steers: "plus 160 lbs"
		it.kind, it.pig, it.sense, it.unit, it.canon = itName, p, senses{}, 0, ""
		it.bent = hard
	}
}

// bentName is the one living pig whose name is a letter away from the word, begins
// it, or has the same consonants.
func (r *reader) bentName(s string) (int16, bool) {
	found, hits := int16(-1), 0
	for k := range r.names {
		h := &r.names[k]
		if h.pig < 0 || int(h.pig) >= r.alive || len(h.words) != 1 || len(h.words[0]) < 4 {
			continue
		}
		w := h.words[0]
		if w[0] != s[0] {
			continue
		}
		if distance(s, w) <= 1 || strings.HasPrefix(s, w) && len(s) <= len(w)+3 || consonants(s) == consonants(w) {
			found = h.pig
			hits++
		}
	}
	return found, hits == 1
}

// consonants are the letters of a word that are no vowels, none twice in a row.
func consonants(s string) string {
	var b strings.Builder
	var last rune
	for _, c := range s {
		if strings.ContainsRune("aeiouy", c) || c == last {
			continue
		}
		b.WriteRune(c)
		last = c
	}
	return b.String()
}
