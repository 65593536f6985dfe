package reading

import "strings"

// askedOfMore takes a thing that is but named behind a question, "how long feed. and
// water", for asked about as well: it says nothing of its own.
func (r *reader) askedOfMore() {
	for k := 1; k < len(r.items); k++ {
		from, to := r.items[k-1].to, r.items[k].from
		if r.items[k].gap < gapStop || k+1 != r.sentenceEnd(k) || r.force[k-1] != uint8(fAsk) || r.force[k] != 0 || !strings.Contains(strings.ToLower(r.text[from:to]), "and") {
			continue
		}
		switch r.items[k].s {
		case "water", "the water", "feed", "the feed":
			r.force[k] = uint8(fAsk)
		}
	}
}
