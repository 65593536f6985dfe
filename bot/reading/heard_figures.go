package reading

// Figures and words that are written for their sound.

// figureFor reads the figure that stands for "for": "no time 4 blue", "some 4 em".
func (r *reader) figureFor() {
	for i := 1; i+1 < len(r.toks); i++ {
		t, p, n := &r.toks[i], &r.toks[i-1], &r.toks[i+1]
		if t.s != "4" || t.kind != tokNum || !t.spaced || !n.spaced || p.kind != tokWord || n.kind != tokWord {
			continue
		}
		if beforeFor[p.s] || behindFor[n.s] && !r.isName(i-1) {
			t.kind, t.s = tokWord, "for"
		}
	}
}

var (
	beforeFor = setOfWords(split("time, feed, food, water, enough, room, hay, straw, thanks, thx, ready, waiting, look, looking, way, good, bad, out"))
	behindFor = setOfWords(split("em, me, u, him, her, now, later, sure, real, once, good"))
)

// hoursHeard reads "in 3 ours" as hours.
func (r *reader) hoursHeard(i int) {
	t := &r.toks[i]
	if i == 0 || t.s != "ours" && t.s != "our" {
		return
	}
	p := &r.toks[i-1]
	m := r.lex.of[p.s]
	switch {
	case t.s == "our" && p.s == "1":
		t.s = "hour"
	case t.s == "ours" && (p.kind == tokNum || p.kind == tokWord && m != nil && m.isNum):
		t.s = "hours"
	}
}
