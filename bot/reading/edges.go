package reading

import (
	"strings"
	"sync"
)

// What people say before they come to the point and behind it: "hey, ", "ok so",
// "long day.", "thanks", ":)". It is left out before anything else is read, so
// that what begins or ends the point begins or ends the text.

// openingPhrases stand before the point, whatever follows.
const openingPhrases = `hey, heya, hiya, hi there, hey there, hello there, hello, howdy, hey hey, um, umm, uh, uhm, er, hm, hmm, fyi, just fyi, btw, heads up, ok so, okay so, alright so, ok well, so yeah, ok um, so um,
	just a quick update, quick update, a quick update, small update, quick one, quick report, short report, evening report, morning report, sorry for the late text, sorry for the late message, sorry for the late report, sorry for the late update,
	sorry for the delay, sorry this is late, sorry it's late, sorry its late, sorry so late, sorry i'm late, sorry im late, long day, long day today, what a day, what a long day, busy day, busy day today, rough day, hot day today, whew, phew, oof, omg`

// haltedPhrases stand before the point only where a mark parts them from it.
const haltedPhrases = `hi, ok, okay, well, so, alright, right, morning, good morning, evening, good evening, afternoon, good afternoon, update, hi all, hi everyone, hello everyone, good day, greetings, dear friend, tired, so tired, i'm tired, im tired, man, lol, haha, ugh, wow, yo, hey bot, hi bot, hello bot, anyway, anyways`

// closingPhrases stand behind the point.
const closingPhrases = `thanks, thank you, thx, ty, thanks a lot, thanks again, many thanks, thank you so much, lol, lmao, haha, ok bye, bye, okay bye, bye now, good night, goodnight, have a good night, have a good one, have a nice day, have a good day, gn, night night,
	i think that's all, i think thats all, i think that's it, i think thats it, that's all, thats all, that's it, thats it, that is all, that's everything, thats everything, that's all for today, thats all for today, that's it for today, that's all for now, back to work now, back to work, talk soon, talk later, ttyl, cheers, over and out, that's about it, thats about it, that's about all`

// edgePhrases are the phrases by their words.
type edgePhrases struct{ open, halted, close [][]string }

var edgesOf = sync.OnceValue(func() edgePhrases {
	cut := func(list string) [][]string {
		var out [][]string
		for _, p := range split(list) {
			out = append(out, strings.Fields(p))
		}
		return out
	}
	return edgePhrases{cut(openingPhrases), cut(haltedPhrases), cut(closingPhrases)}
})

// cutEdges leaves out what stands before and behind the point. A text of nothing
// else stays as it is.
func (r *reader) cutEdges() {
	from, to := 0, len(r.toks)
	for from < to {
		n := r.opening(from)
		if n == 0 {
			break
		}
		from += n
	}
	for from < to {
		n := r.closing(from, to)
		if n == 0 {
			break
		}
		to -= n
	}
	point := false
	for i := from; i < to; i++ {
		point = point || r.toks[i].kind != tokMark && r.toks[i].kind != tokBreak
	}
	if point && (from > 0 || to < len(r.toks)) {
		r.toks = append(r.toks[:0], r.toks[from:to]...)
	}
	r.cutJoints()
}

// joinWords are words that lead from one thing to the next behind the end of a
// sentence or a comma, and mean nothing there.
var joinWords = map[string]bool{"oh": true, "and": true, "also": true, "um": true, "uh": true, "additionally": true, "plus": true}

// cutJoints leaves such words out: "hazel 180. oh and is brick clear".
func (r *reader) cutJoints() {
	out := r.toks[:0]
	for i := 0; i < len(r.toks); i++ {
		t := r.toks[i]
		if n := len(out); n > 0 && joinWords[t.s] && i+1 < len(r.toks) && (sentenceMarks[out[n-1].s] || t.s != "and" && t.s != "plus" && out[n-1].s == ",") && r.toks[i+1].kind != tokBreak {
			if r.toks[i+1].s == "," {
				i++ // "also, ..."
			}
			continue
		}
		out = append(out, t)
	}
	r.toks = out
}

var sentenceMarks = map[string]bool{".": true, "!": true, "?": true, ";": true, "\n": true}

// opening is how many tokens an opening and the marks behind it take at token i.
func (r *reader) opening(i int) int {
	longest := func(phrases [][]string) int {
		best := 0
		for _, p := range phrases {
			if len(p) > best && r.phraseAt(p, i) {
				best = len(p)
			}
		}
		return best
	}
	if n := longest(edgesOf().open); n > 0 {
		return n + r.marksAt(i+n)
	}
	if n := longest(edgesOf().halted); n > 0 {
		if marks := r.marksAt(i + n); marks > 0 {
			return n + marks
		}
	}
	return 0
}

var partingMarks = map[string]bool{",": true, ".": true, "!": true, ":": true, ";": true, "-": true, "–": true, "—": true, "…": true, "\n": true}

// marksAt is how many marks and ends of lines that part stand from token i on.
func (r *reader) marksAt(i int) int {
	n := 0
	for i+n < len(r.toks) {
		if !partingMarks[r.toks[i+n].s] {
			break
		}
		n++
	}
	if n > 0 && i+n < len(r.toks) && r.toks[i+n-1].s == "-" && !r.toks[i+n].spaced {
		return 0 // "ok -5"
	}
	return n
}

// closing is how many tokens a closing takes that ends before token to.
func (r *reader) closing(from, to int) int {
	if to-from > 2 && (r.toks[to-1].s == ")" || r.toks[to-1].s == "(") && (r.toks[to-2].s == ":" || r.toks[to-2].s == ";") && !r.toks[to-1].spaced && r.toks[to-2].spaced {
		return 2 // ":)"
	}
	end := to
	for end > from && (r.toks[end-1].s == "." || r.toks[end-1].s == "!" || r.toks[end-1].s == "…" || r.toks[end-1].s == "\n") {
		end--
	}
	best := 0
	for _, p := range edgesOf().close {
		if at := end - len(p); at > from && len(p) > best && r.phraseAt(p, at) {
			best = len(p)
		}
	}
	if best == 0 {
		return 0
	}
	at := end - best
	if p := r.toks[at-1].s; p == "and" || p == "for" || p == "no" || p == "say" || p == "with" {
		return 0 // "and that's it" is left as it is
	}
	return to - at
}

func (r *reader) phraseAt(p []string, i int) bool {
	if i+len(p) > len(r.toks) {
		return false
	}
	for k, w := range p {
		if r.toks[i+k].kind != tokWord || r.toks[i+k].s != w {
			return false
		}
	}
	return true
}
