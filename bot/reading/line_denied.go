package reading

import "strings"

// lineDenied takes the lines out that name a chore and deny it: "3 pails - no, rain",
// "scale: nope".
func (r *reader) lineDenied() {
	for k := 1; k < len(r.items); k++ {
		it := &r.items[k]
		if !denials[it.s] || it.gap != gapComma || it.quest || k+1 < len(r.items) && r.items[k+1].gap == gapNone {
			continue
		}
		if between := r.text[r.items[k-1].to:it.from]; !strings.ContainsAny(between, "-–—:") {
			continue
		}
		i, j := r.sentenceStart(k), r.sentenceEnd(k)
		if r.clauseFrom(k-1) != i || k-i > 4 || !r.amountless(k, j) {
			continue
		}
		for n := i; n < j; n++ {
			r.blank(n)
		}
	}
}

var denials = setOfWords(split("no, nope, nah, not, skipped, not done, nein, nothing, no go, didn't, didnt, not today"))
