package reading

// Behind "undo that" people say how it came about: "disregard that. I was looking at the
// oil tank".

// afterUndo takes the sentences out that only explain an undo before them: those without
// a number, a level or a pig.
func (r *reader) afterUndo() {
	end := 0
	if len(r.items) == 0 {
		return
	}
	if end = r.sentenceEnd(0); end == len(r.items) || !r.onlyUndo(end) {
		return
	}
	for k := end; k < len(r.items); k++ {
		it := &r.items[k]
		if it.pig >= 0 || it.quest || it.number() && !it.soft || it.kind == itFrac || it.kind == itSlash || it.isAny(setOf(sFull, sEmpty, sOut, sFill, sPour, sUndo)) && it.kind == itWord {
			return
		}
	}
	for k := end; k < len(r.items); k++ {
		r.blank(k)
	}
}

// onlyUndo says that items[:end] wish to undo what was told last, and say nothing else.
func (r *reader) onlyUndo(end int) bool {
	undo := false
	for k := range end {
		it := &r.items[k]
		switch {
		case it.is(sUndo):
			undo = true
		case it.kind != itWord || it.pig >= 0 || !it.isAny(setOf(sFiller, sNo, sPronoun, sThanks, sCorrect)):
			return false
		}
	}
	return undo
}
