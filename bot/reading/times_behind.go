package reading

import "strings"

// timesBehind brings a count of bags or buckets that stands behind an x before them: "bucket
// x3", "3x bucket".
func (r *reader) timesBehind() {
	for i := 0; i+1 < len(r.toks); i++ {
		if r.unitAt(i).dim() != vessel || r.toks[i].kind != tokWord {
			continue
		}
		x, n := i+1, i+2
		if r.toks[x].s == "x" && n < len(r.toks) && r.toks[n].kind == tokNum && r.toks[n].decimals == 0 && r.toks[n].v <= mostCounted && (n+1 >= len(r.toks) || r.unitAt(n+1) == 0) {
			word, num := r.toks[i], r.toks[n]
			num.from, num.to, word.spaced = word.from, word.to, true
			word.to = r.toks[n].to
			r.toks[i], r.toks[x] = num, word
			r.toks = append(r.toks[:n], r.toks[n+1:]...)
		}
	}
	for i := 2; i+1 < len(r.toks); i++ { // "put the first sack in"
		if (r.toks[i].s == "first" || r.toks[i].s == "second" || r.toks[i].s == "third" || r.toks[i].s == "other") && r.toks[i-1].s == "the" && putInto[r.toks[i-2].s] && r.unitAt(i+1).dim() == vessel && !strings.HasSuffix(r.toks[i+1].s, "s") {
			r.toks[i].s = "one"
		}
	}
	for i := 0; i+2 < len(r.toks); i++ {
		if r.toks[i].kind == tokNum && r.toks[i+1].s == "x" && r.unitAt(i+2).dim() == vessel {
			r.toks = append(r.toks[:i+1], r.toks[i+2:]...)
		}
	}
}

// mostCounted is how many bags or buckets somebody carries at most. Common practice, no
// source.
const mostCounted = 40

var putInto = listed("put, poured, dumped, emptied, added, opened, threw, tipped, gave, pour, dump")
