package reading

// Pigs called 1, 2, 3: numbers that count things and hours far more often than
// they name pigs, so that only what stands beside them makes them names.

// smallTag decides what a small number is that a pig is called by. p is the token
// before it, -1 none.
func (r *reader) smallTag(i, p int) tagKind {
	t := &r.toks[i]
	many := t.v > float64(r.alive) // no count of the herd's pigs
	listed := r.tagIsListed(i)
	if p >= 0 && r.toks[p].kind == tokWord {
		s := r.toks[p].s
		if m := r.lex.of[s]; m != nil {
			switch {
			case m.sense.any(setOf(sSold, sDied, sSlaughtered, sWorm, sTreat, sGave, sMove)):
				switch {
				case listed:
					return tagPig
				case m.sense.has(sMove):
					return pigIf(many)
				}
				return tagDoubt // a pig, a count, or days of withdrawal
			case m.sense.has(sBut) || s == "not" || s == "except":
				if many || listed {
					return tagPig
				}
				return tagDoubt
			}
		}
		switch s {
		case "does", "is", "will", "did", "has":
			return pigIf(i+1 < len(r.toks) && r.toks[i+1].kind == tokWord || s == "is" && p > 0 && sizeWords[r.toks[p-1].s] && r.endsAt(i))
		case "hows", "how's", "whats", "what's", "wheres", "where's", "whens", "when's":
			return pigIf(i+1 < len(r.toks) && r.toks[i+1].kind == tokWord && !unitAsked[r.toks[i+1].s])
		case "for", "with":
			if r.listsPigs(i) {
				return tagDoubt
			}
		}
	}
	if r.weighedBehind(i) && (r.beginsPart(i, p) || p > 0 && r.toks[p].kind == tokNum && r.toks[p-1].tag != noTag) {
		return tagPig
	}
	switch {
	case !r.beginsPart(i, p):
		return noTag
	case listed && r.pigsDo(i):
		return tagPig
	}
	return r.tagBegins(i, many)
}

// putsDown says that the number at token i is put down or had to be: "had to put 4 down".
func (r *reader) putsDown(i int) bool {
	if i > 0 && r.toks[i-1].s == "put" && i+1 < len(r.toks) && r.toks[i+1].s == "down" {
		return i+2 >= len(r.toks) || r.toks[i+2].s != "for"
	}
	if i > 1 && r.toks[i-1].s == "down" && r.toks[i-2].s == "put" {
		return i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord
	}
	return i > 0 && (r.toks[i-1].s == "shoot" || r.toks[i-1].s == "euthanize" || r.toks[i-1].s == "euthanise") && (i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord)
}

// saysOne says that the text speaks of a single pig.
func (r *reader) saysOne() bool {
	for i := range r.toks {
		switch r.toks[i].s {
		case "leg", "her", "his", "she", "he", "him", "hip", "she's", "he's":
			return true
		}
	}
	return false
}

// otherTagged says that another number of the text is a pig's beyond doubt, since a verb
// of one alone stands behind it: "3 won't eat and 4 has a cough".
func (r *reader) otherTagged(i int) bool {
	for k := range r.toks {
		if k != i && k+1 < len(r.toks) && r.toks[k].kind == tokNum && r.toks[k].s != r.toks[i].s && r.isTag(r.toks[k].s) && aloneVerb[r.toks[k+1].s] {
			return true
		}
	}
	return false
}

// sizeWords ask with "how" before them what a pig is like: "how heavy is 3".
var sizeWords = setOfWords(split("heavy, big, old, fat, far, close, long, tall"))

// unitAsked are words behind a number that make it an amount in a question.
var unitAsked = setOfWords(split("lb, lbs, pounds, kg, kilos, bags, sacks, buckets, days, weeks, months, gallons, gal, litres, liters, pigs, hogs, times, percent"))

// endsAt says that the sentence ends behind token i.
func (r *reader) endsAt(i int) bool {
	return i+1 >= len(r.toks) || r.toks[i+1].kind == tokBreak || r.toks[i+1].kind == tokMark || r.toks[i+1].s == "now" || r.toks[i+1].s == "today"
}

// pigsDo says that what stands behind the list of tags that begins at token i is
// told of pigs: "1 and 3 off feed", "2, 3 and 4 are limping".
func (r *reader) pigsDo(i int) bool {
	k := i
	for k+1 < len(r.toks) && (tagJoin(r.toks[k+1].s) || r.toks[k+1].kind == tokNum) {
		k++
	}
	if k+1 >= len(r.toks) {
		return false
	}
	switch r.toks[k+1].s {
	case "are", "were", "have", "both", "look", "seem", "weigh", "got":
		return true
	}
	return r.pigVerbBehind(k)
}

func pigIf(yes bool) tagKind {
	if yes {
		return tagPig
	}
	return noTag
}

// beginsPart says that a part of the sentence begins at token i.
func (r *reader) beginsPart(i, p int) bool {
	if p < 0 || r.toks[p].kind == tokBreak || r.toks[p].kind == tokMark && r.toks[p].s != ":" && r.toks[p].s != "=" && r.toks[p].s != "-" {
		return true
	}
	if r.toks[p].kind != tokWord {
		return false
	}
	m := r.lex.of[r.toks[p].s]
	if r.toks[p].s == "the" && i+1 < len(r.toks) && aloneVerb[r.toks[i+1].s] {
		return true // "the 3 has diarrhea"
	}
	return r.toks[p].s == "and" || m != nil && (m.isDay || m.sense == setOf(sFiller) || m.sense.any(setOf(sWeigh, sGirth)))
}

// tagBegins decides what a small number is that begins a part of a sentence.
func (r *reader) tagBegins(i int, many bool) tagKind {
	if i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord {
		return noTag
	}
	n := r.toks[i+1].s
	if aloneVerb[n] || n == "gained" || n == "put" && i+2 < len(r.toks) && r.toks[i+2].s == "on" {
		return tagPig
	}
	m, _ := r.lex.phrase(r.toks[i+1:], func(m *meaning) bool { return !m.sense.empty() })
	switch {
	case m == nil:
		return noTag
	case m.sense.any(setOf(sWeigh, sGirth, sTape, sLength, sHung)):
		return tagPig
	case m.sense.any(setOf(sSick, sWell, sDied, sSold, sOut, sDown, sSlaughtered)):
		if many || m.sense.has(sSick) && r.otherTagged(i) {
			return tagPig
		}
		if m.sense.any(setOf(sDied, sSold, sSlaughtered)) {
			return tagDoubt // that pig, or so many
		}
		return noTag
	case m.sense.any(setOf(sProduct, sWorm, sTreat)):
		return tagDoubt
	}
	return noTag
}

// aloneVerb are verbs in the form for one only.
var aloneVerb = map[string]bool{
	"is": true, "was": true, "has": true, "isn't": true, "isnt": true, "wasn't": true, "hasn't": true, "hasnt": true, "doesn't": true,
	"doesnt": true, "looks": true, "seems": true, "acts": true, "weighs": true, "measures": true, "tapes": true, "eats": true, "coughs": true,
}

// weighedBehind says that the number that follows token i can be a weight or a
// measure of the tape: "1 201, 2 195".
func (r *reader) weighedBehind(i int) bool {
	j := i + 1
	if j+1 < len(r.toks) && r.toks[j+1].s == "on" && (r.toks[j].s == "bang" || r.toks[j].s == "spot" || r.toks[j].s == "dead" || r.toks[j].s == "right") {
		j += 2
	}
	for j < len(r.toks) && j < i+3 && (r.toks[j].s == ":" || r.toks[j].s == "=" || r.toks[j].s == "-" || r.toks[j].s == "–" || r.toks[j].s == "at" || r.toks[j].s == "." || r.toks[j].s == ")") {
		j++
	}
	if j >= len(r.toks) || r.toks[j].kind != tokNum || r.toks[j].v < 10 || r.toks[j].ordinal || r.toks[j].from == r.toks[i].to {
		return false
	}
	k := j + 1
	if k >= len(r.toks) || r.toks[k].kind != tokWord {
		return k >= len(r.toks) || r.toks[k].s != "$" && r.toks[k].s != "%" && r.toks[k].s != "°"
	}
	if r.toks[k].s == "x" || r.toks[k].s == "by" {
		return true
	}
	if u, n := r.unitPhrase(k); u != 0 {
		if u.dim() != mass && u.dim() != length {
			return false
		}
		k += n
		if k >= len(r.toks) || r.toks[k].kind != tokWord {
			return true
		}
	}
	if r.unitAt(k).dim() == vessel {
		return false // "2 50 lb bags"
	}
	m := r.lex.of[r.toks[k].s]
	return m == nil || !m.sense.any(setOf(sIngredient, sFeed, sFeeder, sBarrel, sWater, sPigs, sFull, sEmpty))
}
