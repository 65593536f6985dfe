package reading

import (
	"strings"
	"sync"
)

// said is the words of a span as they were said, in lower case, one blank before
// and behind each: phrases of several words are looked for in it, whatever items
// they were made into.
func (r *reader) said(s span) string {
	if s.frame = 0; s == r.saidOf && s.j > 0 {
		return r.saidWords
	}
	from, to := r.tokenRange(s)
	var b strings.Builder
	if from < to {
		b.Grow(r.toks[to-1].to - r.toks[from].from + 2*(to-from) + 1)
	}
	b.WriteByte(' ')
	for i := from; i < to; i++ {
		if k := r.toks[i].kind; k == tokWord || k == tokNum {
			b.WriteString(r.toks[i].s)
			b.WriteByte(' ')
		}
	}
	r.saidOf, r.saidWords = s, b.String()
	return r.saidWords
}

// phrases are phrases to look for in what was said. They are made when they are first
// looked for: most runs of the program look for few.
type phrases func() *phraseSet

// phraseSet has behind the first word of each phrase what else it has, with a blank
// before each of its words and one at its end.
type phraseSet struct {
	rest map[string][]string
	// starts are, by the length of a first word, the letters it begins with, by their
	// number in the alphabet or somewhere: few words of a text need to be looked up.
	starts [16]uint32
}

// phrasesOf makes phrases of a comma list.
func phrasesOf(list string) phrases {
	return sync.OnceValue(func() *phraseSet {
		p := &phraseSet{rest: map[string][]string{}}
		for _, one := range split(list) {
			first, rest, more := strings.Cut(one, " ")
			if more {
				rest = " " + rest
			}
			p.rest[first] = append(p.rest[first], rest+" ")
			p.starts[len(first)&15] |= 1 << (first[0] & 31)
		}
		return p
	})
}

// behind is what the phrases that begin with a word have behind it.
func (p *phraseSet) behind(word string) []string {
	if word == "" || p.starts[len(word)&15]&(1<<(word[0]&31)) == 0 {
		return nil
	}
	return p.rest[word]
}

// saysAny reports whether one of the phrases stands in what was said.
func saysAny(said string, p phrases) bool {
	for said != "" {
		if p.begin(said) {
			return true
		}
		from := strings.IndexByte(said[1:], ' ')
		if from < 0 {
			return false
		}
		said = said[1+from:]
	}
	return false
}

// begin reports whether what was said, a blank before it, begins with one of the
// phrases.
func (p phrases) begin(said string) bool {
	if said == "" || said[0] != ' ' {
		return false
	}
	to := strings.IndexByte(said[1:], ' ') + 1
	if to == 0 {
		return false
	}
	for _, rest := range p().behind(said[1:to]) {
		if strings.HasPrefix(said[to:], rest) {
			return true
		}
	}
	return false
}

// denied are words that make of what was seen something that was not, will be or
// may be.
var denied = phrasesOf("no, not, nothing, never, didn't, didnt, don't, dont, doesn't, doesnt, won't, wont, wasn't, wasnt, haven't, hasn't, without, if, might, may, could, would, will, going to, gonna, almost, nearly, hope, hoping, forecast, supposed, calling for, expect, expected, expecting, tomorrow, chance, next week, wish, said that, they say, heard")

// pieces are the stretches of a text around item k, the shortest first: between
// boundaries of any kind, its clause, what no semicolon parts, its sentence. What a
// short one tells needs no longer one.
func (r *reader) pieces(k int) [4]span {
	var out [4]span
	for n, gap := range []uint8{gapAnd, gapComma, gapSemi, gapStop} {
		i, j := k, k+1
		for i > 0 && r.items[i].gap < gap {
			i--
		}
		for j < len(r.items) && r.items[j].gap < gap {
			j++
		}
		out[n] = span{i: i, j: j}
	}
	return out
}
