package reading

// Pigs that are called by numbers, as on their ear tags: which numbers of a text
// are such names and which are amounts is settled from what stands beside them,
// before anything else is read.

// tagKind is what a number is taken for.
type tagKind uint8

const (
	noTag    tagKind = iota
	tagPig           // the name of a pig of the herd
	tagDoubt         // perhaps the name of a pig, perhaps a count
	tagNew           // a name that this text gives
	tagStray         // stands where a tag does, but no pig has it
)

// bigTag is the least number that hardly ever counts anything on a smallholding,
// so that alone it is rather a tag's.
const bigTag = 100

// tagNames settles which numbers of the text are pigs.
func (r *reader) tagNames() {
	r.newTags()
	if r.longestTag == 0 {
		return
	}
	r.splitTags()
	r.spokenPairs()
	r.spokenTags()
	r.spokenRows()
	if r.answersWithNumber() {
		return
	}
	r.tagRows()
	for i := 0; i < len(r.toks); i++ {
		t := &r.toks[i]
		if t.kind != tokNum || t.tag != noTag || t.amount || t.decimals > 0 || t.ordinal {
			continue
		}
		if r.isTag(t.s) {
			t.tag = r.tagAt(i)
		} else if r.strayTag(i) {
			t.tag = tagStray
		}
		if t.tag == tagPig || t.tag == tagDoubt {
			r.possessive(i)
		}
	}
	r.tagRanges()
	r.tagCollisions()
}

// answersWithNumber says that the text is a lone number and the open question
// wants an amount.
func (r *reader) answersWithNumber() bool {
	p := r.c.Pending
	return p != nil && len(r.toks) == 1 && p.Clarify.Want != "" && p.Clarify.Want != "animals"
}

// isTag says that a pig of the herd, living or gone, is called by the number.
func (r *reader) isTag(s string) bool {
	if len(s) > r.longestTag {
		return false
	}
	for k := range r.names {
		if h := &r.names[k]; h.tag && h.words[0] == s {
			return true
		}
	}
	return false
}

// tagAt decides what the number at token i is, where a pig is called by it.
func (r *reader) tagAt(i int) tagKind {
	t := &r.toks[i]
	told := r.tagWordBefore(i)
	switch {
	case r.gluedIs(i), r.afterItsWord(i), r.tapeRound(i):
		return tagPig
	case r.putsDown(i):
		if t.v >= bigTag || r.saysOne() {
			return tagPig
		}
		return tagDoubt
	case r.amountAt(i, told):
		return noTag
	case told:
		return tagPig
	}
	p := r.beforeTag(i)
	if kind, ok := r.tagListed(i, p); ok {
		return kind
	}
	if r.valueAt(i, p) {
		return noTag
	}
	if t.v >= bigTag {
		if i > 0 && r.toks[i-1].s == "took" && i+1 < len(r.toks) && (r.toks[i+1].s == "in" || r.toks[i+1].s == "to") {
			return tagPig // "took 413 in this morning"
		}
		if r.otherAmounts(i) {
			return noTag
		}
		return tagPig
	}
	return r.smallTag(i, p)
}

// beforeTag is the last token before i that is a word, a number, the end of a line
// or a mark that parts or joins; -1 if there is none.
func (r *reader) beforeTag(i int) int {
	for k := i - 1; k >= 0; k-- {
		t := &r.toks[k]
		if t.kind != tokMark {
			return k
		}
		switch t.s {
		case ",", ".", ";", ":", "=", "-", "–", "&", "(", ")":
			return k
		}
	}
	return -1
}

// tagWordBefore says that a word for a pig's number stands before token i: "tag
// 22", "pig no. 3", "#7".
func (r *reader) tagWordBefore(i int) bool {
	for k := i - 1; k >= 0; k-- {
		t := &r.toks[k]
		if t.kind == tokBreak {
			return false
		}
		switch t.s {
		case ".", ":":
			if k != i-1 || k == 0 || r.toks[k-1].kind != tokWord {
				return false
			}
			continue
		case "#":
			if k > 0 && r.toks[k-1].kind == tokNum && !t.spaced {
				return false // "201# 502"
			}
			return !r.thingWord(k - 1)
		case "no", "nr", "num", "number", "numbers", "nos":
			if t.s == "no" && (k == 0 && i+1 >= len(r.toks) || k > 0 && r.toks[k-1].kind == tokNum) {
				return false
			}
			return !r.thingWord(k - 1)
		case "tag", "tags", "eartag", "eartags", "pig", "hog", "gilt", "barrow", "boar", "sow", "animal":
			return true
		case "pigs", "hogs", "gilts", "barrows":
			return r.tagIsListed(i)
		}
		return false
	}
	return false
}

// thingWord says that the token is the word for a thing that is numbered or named too:
// "barrel no. 2", "barrel oak".
func (r *reader) thingWord(k int) bool {
	if k < 0 || k >= len(r.toks) {
		return false
	}
	s := r.toks[k].s
	if genericThing[s] != 0 {
		return true
	}
	m := r.lex.of[s]
	return m != nil && m.sense.any(setOf(sFeeder, sBarrel, sPen))
}

// tagIsListed says that another of the herd's tags follows token i in a list or a
// range.
func (r *reader) tagIsListed(i int) bool {
	k := i + 1
	for k < len(r.toks) && tagJoin(r.toks[k].s) {
		k++
	}
	return k > i+1 && k < len(r.toks) && r.toks[k].kind == tokNum && r.isTag(r.toks[k].s) && !r.countBehind(k)
}

// tagJoin says that a word or mark joins names in a list or a range.
func tagJoin(s string) bool {
	switch s {
	case ",", "and", "&", "or", "-", "–", "to", "thru", "through", "#", "n", "plus", "/":
		return true
	}
	return false
}

// rangeWord says that a word or mark stands between the ends of a range.
func rangeWord(s string) bool {
	switch s {
	case "-", "–", "to", "thru", "through", "..", "…":
		return true
	}
	return false
}

// tagListed takes the number behind a tag and a comma, an "and" or a "to" for what
// that tag is: a list of names.
func (r *reader) tagListed(i, p int) (tagKind, bool) {
	if p < 0 {
		return noTag, false
	}
	k := i - 1
	for k >= 0 && tagJoin(r.toks[k].s) {
		k--
	}
	if k < 0 || k == i-1 || r.toks[k].kind != tokNum || r.toks[k].tag == noTag {
		return noTag, false
	}
	if rangeWord(r.toks[k+1].s) && i-k == 2 && r.toks[i].v <= r.toks[k].v {
		return noTag, true // "205 - 201": the pig, and what it weighs
	}
	if r.toks[k].tag == tagStray || r.toks[k].tag == tagDoubt {
		return tagPig, true
	}
	return r.toks[k].tag, true
}

// valueAt says that the number at token i is what the words before it tell of a
// pig or of a thing: "501 weighs 502", "girth 45", "sold 418 for 419".
func (r *reader) valueAt(i, p int) bool {
	if p < 0 {
		return false
	}
	if r.toks[p].kind == tokNum && r.toks[p].tag != noTag { // "501 505"
		return !r.listsPigs(i) && !r.oddRun(i)
	}
	if r.toks[p].s == "for" {
		return r.priceAt(p)
	}
	for k := p; k >= 0 && p-k < 6; k-- {
		t := &r.toks[k]
		if t.kind == tokNum {
			return t.tag != noTag && k < p
		}
		if t.kind != tokWord && t.s != ":" && t.s != "=" && t.s != "-" && t.s != "–" {
			return false
		}
		if h, n := r.nameAt(k); n > 0 && h.pig >= 0 {
			return true
		}
		if k == p && r.amountLabel(t.s) {
			return !r.tagIsListed(i) && !r.putInPen(i)
		}
		if t.kind == tokWord && !tellsWeight[t.s] {
			m := r.lex.of[t.s]
			if m == nil || !m.sense.any(setOf(sWeigh, sGirth, sLength, sTape, sAbout, sGain, sHung, sNow, sIs)) {
				return false
			}
		}
	}
	return false
}

// tellsWeight are the small words between a pig and its weight.
var tellsWeight = map[string]bool{
	"is": true, "was": true, "at": true, "now": true, "be": true, "to": true, "came": true, "in": true, "hit": true, "it's": true, "did": true,
	"already": true, "today": true, "only": true, "just": true, "made": true, "about": true, "s": true, "over": true, "tops": true,
}

// amountLabel says that a word tells that an amount follows it, and no pig.
func (r *reader) amountLabel(s string) bool {
	m := r.lex.of[s]
	if m == nil {
		return false
	}
	return m.sense.any(setOf(sGirth, sLength, sTarget, sHung, sFence, sHigh, sLow, sHumid, sFill, sPour, sFeeder, sBarrel, sPay, sMixed, sIngredient, sFeed)) && !m.sense.has(sGave)
}

// putInPen says that a pen follows the number at token i: "put 505 in the creek
// pen".
func (r *reader) putInPen(i int) bool {
	for k := i + 1; k < len(r.toks) && k <= i+4 && r.toks[k].kind == tokWord; k++ {
		if h, n := r.nameAt(k); n > 0 {
			return h.pen >= 0 && h.feeder < 0 && h.barrel < 0
		}
	}
	return false
}

// priceAt says that the number behind the "for" at token p is what pigs were sold
// for: a word for a sale stands before it, and no amount right before the "for".
func (r *reader) priceAt(p int) bool {
	if p > 0 && r.toks[p-1].kind == tokNum && r.toks[p-1].tag == noTag {
		return false // "offered me 400 for 502"
	}
	for k := p - 1; k >= 0 && r.toks[k].kind != tokBreak && r.toks[k].s != "."; k-- {
		if m := r.lex.of[r.toks[k].s]; m != nil && m.sense.any(setOf(sSold, sPay, sReceived)) {
			return true
		}
	}
	return false
}

// otherAmounts says that the clause before token i speaks of what is poured,
// bought or paid, so that a number in it is an amount of that.
func (r *reader) otherAmounts(i int) bool {
	if r.tagIsListed(i) || r.putInPen(i) {
		return false
	}
	for k := i - 1; k >= 0; k-- {
		t := &r.toks[k]
		if t.kind == tokBreak || t.kind == tokNum || t.s == "," || t.s == "." || t.s == ";" {
			return false
		}
		m := r.lex.of[t.s]
		if m == nil {
			continue
		}
		if m.sense.any(setOf(sSick, sWorm, sTreat, sProduct, sMove, sSold, sDied, sPigs, sAsk, sAskSure, sWeigh)) {
			return false
		}
		if m.sense.any(setOf(sFill, sPour, sFeeder, sBarrel, sWater, sWatered, sPay, sTarget, sMixed, sIngredient, sFence)) && !m.sense.has(sGave) {
			return true
		}
		if h, n := r.nameAt(k); n > 0 && (h.feeder >= 0 || h.barrel >= 0) {
			return true
		}
	}
	return false
}

// listsPigs says that the clause before token i does to pigs what is done to
// several at once, so that numbers in a row are pigs: "wormed 501 502 503".
func (r *reader) listsPigs(i int) bool {
	for k := i - 1; k >= 0 && r.toks[k].kind != tokBreak && r.toks[k].s != "."; k-- {
		t := &r.toks[k]
		if t.s == "tag" || t.s == "tags" {
			return true
		}
		if m := r.lex.of[t.s]; t.kind == tokWord && m != nil {
			if m.sense.any(setOf(sWeigh, sGirth, sTape)) {
				return false
			}
			if m.sense.any(setOf(sWorm, sTreat, sMove, sSold, sDied, sSlaughtered, sGave)) {
				return true
			}
		}
	}
	return false
}
