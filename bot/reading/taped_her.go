package reading

// tapedHer gives the "her" or "him" that was taped to the pig named last before it, where
// another was weighed ahead: "Otis 189 and Hazel wouldn't go in so I taped her, 39 around".
func (r *reader) tapedHer() {
	for k := 1; k < len(r.items); k++ {
		it, verb := &r.items[k], &r.items[k-1]
		if it.s != "her" && it.s != "him" || it.gap != gapNone || it.quest || !tapings[verb.s] && !verb.is(sTape) {
			continue
		}
		for n := k - 2; n >= r.sentenceStart(k); n-- {
			if p := &r.items[n]; p.pig >= 0 && !p.near {
				it.kind, it.pig, it.sense = itName, p.pig, senses{}
				break
			}
		}
	}
}

var tapings = setOfWords(split("taped, measured, strung, put the tape on, put the tape around, ran the tape around"))
