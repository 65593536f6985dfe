package reading

// Small words that would be taken for more than they are.

// smallLeads takes the meaning from a "turns out" that leads a sentence, which lets no pig
// out, and from an "as of" before a day, which names no pen.
func (r *reader) smallLeads() {
	for k := 0; k+1 < len(r.items); k++ {
		it, n := &r.items[k], &r.items[k+1]
		switch {
		case it.s == "as of" && n.kind == itDay && n.gap == gapNone:
			r.blank(k)
		case turnsOut[it.s]:
			r.blank(k)
		case (it.s == "turns" || it.s == "turned") && n.s == "out" && n.gap == gapNone && !r.rightBehindPig(k):
			r.blank(k)
			r.blank(k + 1)
		}
	}
}

var turnsOut = setOfWords(split("turns out, turned out, as it turns out, it turns out"))

// rightBehindPig says that pigs stand right before item k: "the gilts turned out".
func (r *reader) rightBehindPig(k int) bool {
	return k > 0 && r.items[k].gap == gapNone && (r.items[k-1].pig >= 0 || r.items[k-1].isAny(whoWords))
}
