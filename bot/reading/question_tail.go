package reading

// questionTails parts a question from what the same sentence tells before it: "60
// kg in the feeder, full, and how is the withdrawal of lotte?". Without it the
// question would take the whole sentence, and the fact would be lost.
func (r *reader) questionTails() {
	for from := 0; from < len(r.items); {
		to := r.sentenceEnd(from)
		if n := r.questionTail(from, to); n > from {
			for k := from; k < n; k++ {
				r.items[k].quest = false
			}
			r.items[n].gap = gapStop
		}
		from = to
	}
}

// questionTail is the item that begins a question within a sentence that tells
// something before it, 0 if none does.
func (r *reader) questionTail(from, to int) int {
	if it := &r.items[from]; it.isAny(setOf(sAsk, sAskSure, sWhatIf, sIf, sRemind, sNote, sTopic)) && !r.namesAt(from) {
		return 0
	}
	told := false
	for n := from + 1; n < to; n++ {
		told = told || r.tells(n-1, n)
		if !told || r.items[n].gap < gapAnd || r.items[n].is(sRemind) {
			continue
		}
		if r.asksFrom(n, to) {
			return n
		}
	}
	return 0
}

func (r *reader) namesAt(k int) bool {
	it := &r.items[k]
	return it.pig >= 0 || it.kind == itThing
}

// tells says that the items from i to j state an amount, a level or what befell
// or was done to an animal.
func (r *reader) tells(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.number() && !it.soft || it.kind == itDim || it.kind == itFrac || it.kind == itSlash || it.isAny(setOf(sFull, sEmpty, sFill, sWorm, sMove, sWatered, sSick, sDied, sSold, sProduct, sHose, sMixed, sSlaughtered, sTook)) && !it.is(sAsk) {
			return true
		}
	}
	return false
}

// asksFrom says that a question begins at item n of a sentence that ends before
// item to: by its first words, or because a question mark ends it and it is but a
// topic.
func (r *reader) asksFrom(n, to int) bool {
	it := &r.items[n]
	if it.pig >= 0 && !it.quest {
		return false
	}
	switch {
	case it.is(sAskSure) && !it.is(sFiller) && it.pig < 0 && (it.quest || r.strongAsk(it.s)) && !r.relative(n):
		return true
	case it.is(sAsk) && n+1 < to && r.items[n+1].gap == gapNone && it.pig < 0 && (r.asksOfPigs(n) || it.quest && r.inverted(n) || r.askedNumberFirst(n)):
		return true
	case it.s == "if" && r.asksLater(n):
		return true
	case (it.s == "is" || it.s == "are") && it.gap == gapAnd && n+1 < to && r.items[n+1].gap == gapNone && (determiners[firstWord(r.items[n+1].s)] || r.items[n+1].is(sPronoun)) && r.items[n+1].s != "there" && r.items[n+1].s != "that":
		return true // "... and is the shed barrel full"
	case it.is(sTopic) && (it.s == "feed to" || it.s == "days to" || it.s == "feed until" || it.s == "days until" || it.s == "feed till" || it.s == "days till"):
		return n+1 < to && (r.items[n+1].number() || r.items[n+1].kind == itDay)
	case !it.quest || to-n > shortQuestion:
		return false
	}
	topic := false
	for k := n; k < to; k++ {
		x := &r.items[k]
		topic = topic || x.isAny(setOf(sTopic, sAskSure)) || x.is(sAsk)
	}
	for k := n; k < to; k++ {
		if x := &r.items[k]; x.gap >= gapAnd && k > n || (x.number() && !x.soft || x.kind == itDim) && !topic {
			return false
		}
	}
	return true
}

// shortQuestion is how many words a question has at most that a mark alone makes
// one.
const shortQuestion = 6
