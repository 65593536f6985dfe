package reading

import (
	"cmp"
	"slices"
	"strings"
)

// suspect is a word that may stand in the place of another, with the words that may
// have been meant, the likeliest first.
type suspect struct {
	from int // where it begins in the text
	kind suspectKind
	// english says that the word is one of English, so that nothing far-fetched hides in it.
	english bool
	meant   []meantWord
}

// suspectKind is what is known of a suspicious word.
type suspectKind uint8

const (
	unheardOf suspectKind = iota // in no lexicon: a slip, a name or a word of other trades
	plainWord                    // common English
	smallWord                    // one that only holds a sentence together
	tradeWord                    // one that means something here
)

// least is what an attempt has to gain for a word of the kind to be given up.
func (k suspectKind) least() float64 {
	switch k {
	case unheardOf:
		return 0.2
	case tradeWord:
		return 1
	}
	return 0.6
}

// mostResidue is how many words or numbers of the sentence may stay without a meaning
// where a word of the kind is given up. told says that something was made of the
// sentence before.
func (k suspectKind) mostResidue(cost float64, told bool) int {
	n := 0
	if told {
		n++
	}
	if k == unheardOf && cost < likelySlip {
		n++
	}
	return n
}

// likelySlip is what a slip takes that happens every day.
const likelySlip = 0.95

// suspects are the words of the text that may not have been meant, the likeliest
// slips first: those of no lexicon, and the others where their sentence was not
// understood.
func (r *reader) suspects(got Reading) []suspect {
	troubled := r.troubled(got)
	var out []suspect
	toks := scan(nil, r.text, r.dayFirst)
	k := 0
	for i := range toks {
		t := &toks[i]
		for k < len(r.items) && r.items[k].to <= t.from {
			k++
		}
		if t.kind != tokWord || !isLetters(t.s) || k == len(r.items) || r.items[k].from > t.from {
			continue
		}
		kind, ok := r.suspicious(t, &r.items[k])
		switch {
		case !ok, kind != unheardOf && !troubled[k] && !r.besideLost(k):
			continue
		}
		meant := r.meantAt(toks, i, kind)
		if kind == tradeWord && !r.quoted(got, t.from) && (len(meant) == 0 || meant[0].cost > surelyName) {
			continue // it is at home where it stands
		}
		if len(meant) > 0 {
			out = append(out, suspect{t.from, kind, commonEnglish().has(t.s), meant})
		}
	}
	slices.SortStableFunc(out, func(a, b suspect) int {
		return cmp.Compare(a.meant[0].cost+0.3*float64(a.kind), b.meant[0].cost+0.3*float64(b.kind))
	})
	return out[:min(len(out), mostSuspects)]
}

// surelyName is what the slip from a name of the herd takes where even a word of the
// trade is one: "plm 155 mos 149".
const surelyName = 0.3

// quoted says that the word at a byte of the text is quoted as not understood.
func (r *reader) quoted(got Reading, from int) bool {
	for _, l := range got.Left {
		if at := strings.Index(r.text, l); at >= 0 && at <= from && from < at+len(l) {
			return true
		}
	}
	return false
}

// besideLost says that a number that nothing was made of stands beside item k.
func (r *reader) besideLost(k int) bool {
	return k > 0 && r.items[k].gap == gapNone && r.lostHard(&r.items[k-1]) || k+1 < len(r.items) && r.items[k+1].gap == gapNone && r.lostHard(&r.items[k+1])
}

// suspicious says whether the word of a token, and the item read from it, may be a
// slip, and of which kind it is.
func (r *reader) suspicious(t *token, it *item) (suspectKind, bool) {
	if it.pig >= 0 || it.kind == itThing || it.group >= 0 {
		return 0, false
	}
	m := r.lex.of[t.s]
	switch {
	case m == nil && !r.lex.plain[t.s] && !r.lex.inside[t.s] && !(r.lex.placeWord[t.s] && r.c.Herd.Zone == "") && !(strings.HasSuffix(t.s, "s") && r.lex.plain[t.s[:len(t.s)-1]]):
		return unheardOf, len(t.s) > 2 && !it.known && !(t.capital && !t.upper && len(r.c.Herd.Animals) == 0)
	case it.from != t.from || it.to != t.to:
		return 0, false // a word of a phrase
	case m == nil || m.kindless():
		return plainWord, len(t.s) > 2
	case m.month > 0:
		return 0, false
	case !m.worthBending():
		return smallWord, true
	}
	return tradeWord, len(t.s) > 2 && !m.isNum && !m.isDay && it.kind == itWord
}

// kindless says that a word stands in the lexicon without a meaning.
func (m *meaning) kindless() bool {
	return m.sense.empty() && m.unit == 0 && !m.isNum && !m.isFrac && !m.isDay && m.month == 0 && m.canon == "" && m.drug == ""
}

// meantAt are the words that the one at token i may have been meant for.
func (r *reader) meantAt(toks []token, i int, kind suspectKind) []meantWord {
	t := &toks[i]
	if kind == smallWord {
		if w := numberHomophones[t.s]; w != "" && i > 0 && r.numbered(toks[i-1].s) && !(i+1 < len(toks) && ofThings[toks[i+1].s]) {
			return []meantWord{{w, 0.2}}
		}
		return nil
	}
	var out []meantWord
	add := func(w string, cost float64) {
		if at := slices.IndexFunc(out, func(m meantWord) bool { return m.s == w }); at >= 0 {
			out[at].cost = min(out[at].cost, cost)
			return
		}
		out = append(out, meantWord{w, cost})
	}
	heard := soundsOf(t.s)
	for _, n := range r.nameSounds() {
		h := &r.names[n.name]
		if h.pig >= 0 && int(h.pig) >= r.alive || h.number || h.tag {
			continue
		}
		if isDigit(n.word[0]) || n.word == t.s || kind == plainWord && len(n.word) == 3 && len(t.s) == 3 && !swapped(n.word, t.s) {
			continue // "gut" is no "Gus"
		}
		c := max(slipCost(t.s, n.word, heard, n.sounds)-0.2, 0.1) // the herd's own names are said often
		if c < dearestSlip && (kind == unheardOf || c <= kind.dearest()) {
			add(n.word, c)
		}
	}
	if t.capital && !t.upper && i > 0 && (toks[i-1].kind == tokWord || kind == unheardOf && inNameList(toks, i)) { // a name
		slices.SortStableFunc(out, byCost)
		return out[:min(len(out), mostMeant)]
	}
	counted := i > 0 && toks[i-1].kind == tokNum
	own := r.lex.of[t.s]
	for _, w := range meantWords().meantFor(t.s, heard) {
		m, daily := r.lex.of[w.s], isDaily()[w.s]
		limit := kind.dearest()
		if kind == unheardOf && len(t.s) == len(w.s) && !swapped(t.s, w.s) {
			limit = 1.2 // another letter in its place makes another word
		}
		if !daily {
			limit -= seldom
		}
		switch {
		case w.cost > limit, kind != unheardOf && !daily:
		case m != nil && (m.unit != 0 && m.sense.empty() && !counted || m.isFrac && !daily):
		case kind != unheardOf && (sameStem(t.s, w.s) || otherLetter(t.s, w.s)):
		case kind == tradeWord && (m == nil || m.sense.any(own.sense)):
		case daily:
			add(w.s, w.cost)
		default:
			add(w.s, w.cost+seldom)
		}
	}
	slices.SortStableFunc(out, byCost)
	return out[:min(len(out), mostMeant)]
}

// inNameList says that the word at token i stands in a list of words with capitals, as new
// names do: "Hazel, Clover, Otis and Pepper".
func inNameList(toks []token, i int) bool {
	return i > 1 && toks[i-1].s == "," && toks[i-2].kind == tokWord && toks[i-2].capital && !toks[i-2].upper
}

// seldom is what it takes more to have meant a word that is seldom said.
const seldom = 0.3

// dearest is what the slip to a word of the trade may take at most.
func (k suspectKind) dearest() float64 {
	switch k {
	case unheardOf:
		return 1.5
	case plainWord:
		return 1.15
	}
	return 1
}

// sameStem says that two words differ but in their endings: "help", "helps".
func sameStem(a, b string) bool {
	stem := func(w string) string {
		for _, end := range [...]string{"ing", "ed", "es", "s", "e", "y"} {
			if len(w) > len(end)+2 && strings.HasSuffix(w, end) {
				return strings.TrimSuffix(w, end)
			}
		}
		return w
	}
	return stem(a) == stem(b)
}

// numbered says that a number follows the word, as it does behind "number".
func (r *reader) numbered(s string) bool {
	switch s {
	case "number", "no", "nr", "num", "#", "pig", "tag":
		return true
	}
	return genericThing[s] != 0
}

// troubled says of each item whether its sentence holds a question, or something
// quoted as not understood, or tells nothing.
func (r *reader) troubled(got Reading) []bool {
	out := make([]bool, len(r.items))
	for i := 0; i < len(r.items); {
		j := r.sentenceEnd(i)
		from, to := r.items[i].from, r.items[j-1].to
		trouble := !tells(got, from, to)
		for _, e := range got.Entries {
			if _, asks := e.Act.(Clarify); asks && e.From < to && e.To > from {
				trouble = true
			}
		}
		for _, l := range got.Left {
			at := strings.Index(r.text, l)
			trouble = trouble || at >= 0 && at < to && at+len(l) > from
		}
		for k := i; k < j; k++ {
			out[k] = trouble
		}
		i = j
	}
	return out
}

// tells says that a reading makes something of a part of the text.
func tells(got Reading, from, to int) bool {
	for _, e := range got.Entries {
		switch e.Act.(type) {
		case None, Clarify:
		default:
			if e.From < to && e.To > from {
				return true
			}
		}
	}
	return false
}
