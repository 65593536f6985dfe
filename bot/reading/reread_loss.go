package reading

// What a reading leaves not understood, as a number: the less, the better the text was
// understood. A question costs more than a word left over, a thing told takes off.

// mayReread says that something of the text was not understood, or a word of it is
// in no lexicon, and that it may be read again.
func (r *reader) mayReread(got Reading) bool {
	if len(r.put) > 0 || len(r.text) > longestReread || len(r.items) == 0 || got.Answers {
		return false
	}
	for _, e := range got.Entries {
		switch a := e.Act.(type) {
		case None:
			if a.Reason != NoneUnknown && a.Reason != NoneChatter {
				return false
			}
		case Do:
			return false
		}
		if e.Replace != "" {
			return false
		}
	}
	if r.asksOrNothing(got) || len(got.Left) > 0 {
		return true
	}
	for k := range r.items {
		if it := &r.items[k]; r.strange(it) || r.lostHard(it) {
			return true
		}
	}
	return false
}

func (r *reader) asksOrNothing(got Reading) bool {
	for _, e := range got.Entries {
		switch e.Act.(type) {
		case None, Clarify:
			return true
		}
	}
	return false
}

// strange says that an item is a word of no lexicon.
func (r *reader) strange(it *item) bool {
	return it.kind == itWord && !it.known && len(it.s) > 2
}

// hard says that an item is a number, a name or a thing.
func (it *item) hard() bool {
	return it.number() && (!it.soft || it.s != "" && isDigit(it.s[0])) || it.kind == itDim || it.kind == itName || it.kind == itThing || it.kind == itFrac
}

// lostHard says that nothing was made of a number, a name or a thing, or that the
// number was taken to count something of no concern.
func (r *reader) lostHard(it *item) bool {
	if it.kind == itWord {
		return it.s != "" && isDigit(it.s[0]) // left out of the reckoning
	}
	return it.hard() && (!it.used || it.soft)
}

// loss is how much a reading leaves.
func (r *reader) loss(got Reading) float64 {
	sum := 0.8 * float64(len(got.Left))
	for _, e := range got.Entries {
		switch a := e.Act.(type) {
		case Clarify:
			sum += 2
		case None:
			sum += 2.5
			if a.Reason == NoneUnknown {
				sum += 0.5
			}
		default:
			sum -= 0.5
		}
	}
	for k := range r.items {
		it := &r.items[k]
		switch {
		case r.lostHard(it):
			sum++
		case it.hard():
			sum -= 0.3
		case r.strange(it) && it.used:
			sum += 0.25
		case r.strange(it):
			sum += 0.5
		case it.kind == itWord && !it.used && it.isAny(tradeSenses):
			sum += 0.4
		}
	}
	return sum
}

// residue is how many words and numbers stand without a meaning in the clauses of the
// words that were replaced, questions counted twice.
func (r *reader) residue(got Reading) int {
	n := 0
	for i := 0; i < len(r.items); {
		j := i + 1
		for j < len(r.items) && r.items[j].gap < gapComma {
			j++
		}
		if r.putWithin(i, j) {
			n += r.residueOf(got, i, j)
		}
		i = j
	}
	return n
}

// putWithin says that one of the words of the items i to j was replaced.
func (r *reader) putWithin(i, j int) bool {
	for _, p := range r.put {
		if r.items[i].from <= p.from && p.from < r.items[j-1].to {
			return true
		}
	}
	return false
}

func (r *reader) residueOf(got Reading, i, j int) int {
	n := 0
	for k := i; k < j; k++ {
		if r.meansNothing(&r.items[k], len(got.Left) > 0) {
			n++
		}
	}
	question := false
	for _, e := range got.Entries {
		if e.From >= r.items[j-1].to || e.To <= r.items[i].from {
			continue
		}
		switch e.Act.(type) {
		case Clarify:
			n += 2
		case Ask:
			question = true
		}
	}
	if question && n > 0 && r.putAsks() { // a question has more words than its topic
		n--
	}
	return n
}

// putAsks says that one of the replaced words was meant to open a question.
func (r *reader) putAsks() bool {
	for _, p := range r.put {
		switch p.s {
		case "when", "what", "how", "will", "why", "where":
			return true
		}
	}
	return false
}

// meansNothing says that an item adds nothing to what is told. quoted says that
// something of the text was not understood.
func (r *reader) meansNothing(it *item, quoted bool) bool {
	switch {
	case r.strange(it), r.lostHard(it):
		return true
	case it.kind != itWord:
		return false
	case it.sense.empty() && it.unit == 0:
		return len(it.s) > 2 && !r.numbered(it.s) && !sideWords[it.s]
	}
	return quoted && !it.used && it.isAny(tradeSenses) && !it.isAny(setOf(sTape, sWeigh, sGirth))
}

// sideWords tell which leg or side of an animal.
var sideWords = setOfWords([]string{"front", "hind", "rear", "side", "foot", "leg", "ear", "eye"})
