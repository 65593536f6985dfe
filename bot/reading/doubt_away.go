package reading

// awaySupposed says that to go away is but thought of: "let's say we're gone Aug 3 to 10",
// "thinking of going away that week", "we might go camping".
func (r *reader) awaySupposed(s span, _ int) bool {
	for k := r.sentenceStart(s.i); k < s.j; k++ {
		it := &r.items[k]
		if it.is(sWhatIf) && it.s != "with" || it.is(sIf) || it.s == "if" || awayThought[it.s] {
			return true
		}
	}
	return false
}

var awayThought = setOfWords(split("thinking of, thinking about, thinking of going, thinking about going, might, we might, i might, might go, we might go, i might go, maybe, considering, hoping to, hope to, would like to, i'd like to, we'd like to"))
