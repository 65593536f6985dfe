package reading

import "strings"

// questionHeads parts a question from what the same sentence tells behind it: "how
// long will the feed last, and spent 19 salt". Without it the question would take
// the whole sentence, and the fact would be lost. What stands behind is told where
// it reads as a record by itself and the question is whole without it.
func (r *reader) questionHeads() {
	if r.part {
		return
	}
	tries := headTries
	for from := 0; from < len(r.items); {
		to := r.sentenceEnd(from)
		if n := r.questionHead(from, to, &tries); n > from {
			r.items[n].gap = gapStop
			to = n
		}
		from = to
	}
}

// headTries is how many places of a text are tried at most, headBytes how long a
// sentence is in which they are, so that a long text takes no longer to read.
const (
	headTries = 4
	headBytes = 200
)

// questionHead is the item that begins what a sentence tells behind its question, 0
// if nothing does.
func (r *reader) questionHead(from, to int, tries *int) int {
	if r.items[to-1].quest || r.items[to-1].to-r.items[from].from > headBytes {
		return 0
	}
	ask := -1
	for k := from; k < to && ask < 0; k++ {
		if r.questionStart(k) && r.reminderAhead(k) < 0 {
			ask = k
		}
	}
	if ask < 0 || r.tells(from, ask) {
		return 0
	}
	return r.tellsBehind(ask, to, tries)
}

// tellsBehind is the item that begins what is told behind the question from item ask
// on, 0 if nothing is.
func (r *reader) tellsBehind(ask, to int, tries *int) int {
	supposed := false
	for n := ask + 1; n < to && *tries > 0; n++ {
		supposed = supposed || n-1 > ask && r.supposesBehind(n-1)
		if r.items[n].s == "or" || !r.joinsAnother(n) && (supposed || !r.mayTell(ask, n, to)) {
			continue
		}
		*tries--
		if r.asksAlone(ask, n) && r.tellsAlone(n, to) {
			return n
		}
	}
	return 0
}

// supposesBehind says that the word of item k makes what follows it a part of the
// question: "if", "when", "that", "with".
func (r *reader) supposesBehind(k int) bool {
	it := &r.items[k]
	if it.kind != itWord || it.pig >= 0 {
		return false
	}
	switch it.s {
	case "when", "while", "with", "because", "unless", "assuming", "given", "suppose", "than", "whether":
		return true
	case "that":
		return r.items[k+1].gap == gapNone
	}
	return it.isAny(setOf(sWhatIf, sIf)) && !it.is(sFiller) || firstWord(it.s) == "if"
}

// mayTell says that item n can begin something told behind the question from item
// ask on: it tells a deed done or a state, and is no further part of the question.
func (r *reader) mayTell(ask, n, to int) bool {
	for k := n; k < to && k < n+3; k++ {
		if r.items[k].s == "wise" { // "what would we need, room and water wise, with seven"
			return false
		}
	}
	gap := r.items[n].gap
	past := r.asksOfPast(ask, n)
	end := n + 1
	for end < to && r.items[end].gap < gapAnd {
		end++
	}
	deed := r.deedDone(n, end)
	switch {
	case gap == gapAnd && r.items[n].pig >= 0 && r.onlyNames(ask+1, n): // "when are fern and juno due worming"
		return false
	case r.wants(n, end): // "how many feeders and barrels would i want for eight pigs"
		return false
	case gap == gapNone && n > ask && (lastWord(r.items[n-1].s) == "to" || modalI[r.items[n-1].s]): // "do i need to put water before wednesday"
		return false
	case gap == gapNone: // "how much feed is left i filled the big one 150"
		return deed >= 0 && !past && (r.isI(n) || deed == n && !r.quoteHas(span{0, ask, n}, needsDone...) && r.items[n].isAny(setOf(sFill, sPay, sPour, sWatered)))
	case deed >= 0 && past: // "when were they wormed and moved to pear"
		return gap >= gapComma || r.isI(n) || !r.amountless(n, end)
	case deed >= 0:
		return true
	case (!r.amountless(ask, n) || gap == gapAnd && r.namesThing(span{0, ask, n})) && r.onlyWeights(n, to): // "when will clover hit 260, and hazel 270", "when do plum n moss hit 250"
		return false
	case gap == gapAnd && stateVerbs[firstWord(r.items[ask].s)] && r.amountless(n, end): // "is the shed barrel and the hill barrel full"
		return false
	}
	return r.tells(n, to)
}

// onlyNames says that the items from i to j are pigs by name and small words, and at
// least one pig.
func (r *reader) onlyNames(i, j int) bool {
	pig := false
	for k := i; k < j; k++ {
		it := &r.items[k]
		pig = pig || it.pig >= 0
		if it.pig < 0 && !(it.kind == itWord && it.isAny(setOf(sFiller, sAnd))) {
			return false
		}
	}
	return pig
}

// joinsAnother says that item n begins what is said besides: behind a semicolon, with
// an "also".
func (r *reader) joinsAnother(n int) bool {
	if r.items[n].gap >= gapSemi {
		return true
	}
	for i := range r.toks {
		switch t := &r.toks[i]; {
		case t.to <= r.items[n-1].to:
		case t.from > r.items[n].from:
			return false
		case besides[t.s]:
			return true
		}
	}
	return false
}

// besides are words that begin what has nothing to do with what stands before them.
var besides = listed("also, oh, btw, ps, anyway, plus")

// asksOfPast says that the items from i to j ask of what was.
func (r *reader) asksOfPast(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itWord && it.pig < 0 {
			for _, w := range strings.Fields(it.s) {
				if pastVerbs[w] {
					return true
				}
			}
		}
	}
	return false
}

// onlyWeights says that the items from i to j are but pigs and weights, as further
// ones that a question names.
func (r *reader) onlyWeights(i, j int) bool {
	for k := i; k < j; k++ {
		it := &r.items[k]
		if it.pig < 0 && it.kind != itNum && !it.qty(mass) && !it.isAny(setOf(sFiller, sAnd, sPronoun, sThanks)) && !reachWords[it.s] {
			return false
		}
	}
	return true
}

// wants says that a verb of a question stands among the items from i to j.
func (r *reader) wants(i, j int) bool {
	for k := i; k < j; k++ {
		switch r.items[k].s {
		case "would", "should", "could", "can", "do", "does", "will", "shall", "need", "want", "would i", "do i", "should i", "can i":
			return true
		}
	}
	return false
}

// isI says that item n is the person who writes.
func (r *reader) isI(n int) bool {
	switch firstWord(r.items[n].s) {
	case "i", "we", "i'm", "im", "we're", "i've", "we've", "ive", "weve", "i'd", "just":
		return true
	}
	return false
}

// deedDone is the item near n that tells a deed as done, -1 if none does.
func (r *reader) deedDone(n, to int) int {
	for k := n; k < to && k < n+deedReach; k++ {
		it := &r.items[k]
		if it.kind == itWord && it.pig < 0 && pastDeeds[firstWord(it.s)] {
			return k
		}
	}
	return -1
}

// modalI are a question's verbs and its person, behind which a deed is one to be done.
var modalI = listed("must i, must we, should i, should we, shall i, shall we, can i, can we, do i, do we, did i, did we, could i, could we, might i")

// needsDone are verbs of a question behind which a deed is one to be done: "when do
// they need the mud topped up".
var needsDone = split("need, needs, want, wants, get, getting, be, been, have")

// deedReach is within how many words of its beginning a clause names its deed.
const deedReach = 5

// pastDeeds are verbs in the form that tells a deed as done.
var pastDeeds = listed("filled, refilled, fed, poured, dumped, topped, put, gave, given, spent, paid, bought, got, picked, grabbed, sold, moved, shifted, rotated, wormed, dewormed, treated, dosed, injected, jabbed, watered, hosed, soaked, weighed, taped, measured, mixed, made, ground, added, took, lost, died, butchered, slaughtered, hauled, shot, emptied, drained, found, noticed, rained, charged, checked, brought, used, threw, scooped")

// pastVerbs are verbs of a question about what was; stateVerbs are those of a
// question whether something is so.
var (
	pastVerbs  = listed("did, was, were, have, has, had")
	stateVerbs = listed("is, are, was, were, does, do")
)

func listed(s string) map[string]bool {
	out := map[string]bool{}
	for _, w := range split(s) {
		out[w] = true
	}
	return out
}

// asksAlone says that the items from i to j are a question by themselves.
func (r *reader) asksAlone(i, j int) bool {
	for _, e := range r.readPart(i, j).Entries {
		if _, ask := e.Act.(Ask); !ask {
			return false
		}
	}
	return true
}

// tellsAlone says that the items from i to j are read as a record by themselves, or
// as one that lacks a part.
func (r *reader) tellsAlone(i, j int) bool {
	for _, e := range r.readPart(i, j).Entries {
		switch e.Act.(type) {
		case Fact, Clarify:
			return true
		}
	}
	return false
}

// readPart reads the items from i to j as a text of their own.
func (r *reader) readPart(i, j int) Reading { return r.readAs(r.quote(i, j), true) }
