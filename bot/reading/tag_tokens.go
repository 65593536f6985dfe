package reading

import (
	"slices"
	"strings"
)

// Numbers that stand for pigs are cut apart, joined and expanded as tokens, so
// that "411-415", "501,502,503" and "five oh six" are read as names one by one.

// splitTags cuts numbers apart that were taken for thousands, decimals or a
// fraction: "501,502,503", "1,2,3", "501/502".
func (r *reader) splitTags() {
	for i := 0; i < len(r.toks); i++ {
		t := r.toks[i]
		if t.kind != tokNum && t.kind != tokSlash || !strings.ContainsAny(t.s, ",/") || r.countBehind(i) {
			continue
		}
		parts := strings.FieldsFunc(t.s, func(c rune) bool { return c == ',' || c == '/' })
		ok := len(parts) > 1 && (t.kind == tokNum || t.v > 31 && t.v2 > 31)
		for _, p := range parts {
			ok = ok && r.isTag(p)
		}
		if ok {
			r.cutToken(i, parts)
			i += 2 * (len(parts) - 1)
		}
	}
}

// splitRuns cuts three and more numbers apart that stand behind one another with
// slashes and are no day: "501-504 251/244/262/247".
func (r *reader) splitRuns() {
	for i := 0; i < len(r.toks); i++ {
		t := r.toks[i]
		if t.kind != tokSlash || t.v <= 31 || t.v2 <= 31 {
			continue
		}
		if more := i+2 < len(r.toks) && r.toks[i+1].s == "/" && r.toks[i+2].kind == tokNum; t.v3 <= 31 && !more {
			continue
		}
		parts := strings.Split(t.s, "/")
		r.cutToken(i, parts)
		i += 2 * (len(parts) - 1)
	}
}

// cutToken puts one number for each part in the place of token i, with commas
// between them.
func (r *reader) cutToken(i int, parts []string) {
	t := r.toks[i]
	cut := make([]token, 0, 2*len(parts))
	at := t.from
	for k, p := range parts {
		if k > 0 {
			cut = append(cut, token{kind: tokMark, s: ",", from: at, to: at + 1})
			at++
		}
		v, _ := digits(p, 0)
		cut = append(cut, token{kind: tokNum, s: p, v: v, from: at, to: at + len(p), spaced: k > 0 || t.spaced})
		at += len(p)
	}
	r.toks = slices.Replace(r.toks, i, i+1, cut...)
}

// spokenTags makes one number of the words for one that a pig is called by: "five
// oh six", "tag twenty two".
func (r *reader) spokenTags() {
	for i := len(r.toks) - 1; i >= 0; i-- {
		t := &r.toks[i]
		if t.kind != tokWord || i > 0 && r.numberWord(i-1) {
			continue
		}
		m := r.lex.of[t.s]
		if m == nil || !m.isNum || m.number < 1 {
			continue
		}
		v, n := r.lex.spoken(r.toks[i:])
		if n == 0 || v != float64(int(v)) || v < bigTag && !r.tagWordBefore(i) || !r.isTag(itoa(int(v))) {
			continue
		}
		t.kind, t.v, t.s, t.to = tokNum, v, itoa(int(v)), r.toks[i+n-1].to
		r.toks = slices.Delete(r.toks, i+1, i+n)
	}
}

func (r *reader) numberWord(i int) bool {
	m := r.lex.of[r.toks[i].s]
	return r.toks[i].kind == tokWord && m != nil && m.isNum
}

// possessive takes the "'s" behind a tag for a part of it.
func (r *reader) possessive(i int) {
	if i+2 >= len(r.toks) || r.toks[i+1].s != "'" && r.toks[i+1].s != "’" || r.toks[i+1].spaced || r.toks[i+2].s != "s" || r.toks[i+2].spaced {
		return
	}
	r.toks[i].to = r.toks[i+2].to
	r.toks = slices.Delete(r.toks, i+1, i+3)
}

// widestTags is the most pigs that a range of tags can name.
const widestTags = 200

// tagRanges puts the pigs between the ends of a range in its place: "411-415",
// "501 to 505".
func (r *reader) tagRanges() {
	for i := 1; i+1 < len(r.toks); i++ {
		a, b := &r.toks[i-1], &r.toks[i+1]
		if !rangeWord(r.toks[i].s) || a.tag != b.tag || a.tag != tagPig && a.tag != tagNew || b.v <= a.v || b.v-a.v > widestTags {
			continue
		}
		at := r.toks[i].from
		between := []token{{kind: tokMark, s: "&", from: at, to: at}}
		for v := int(a.v) + 1; v < int(b.v); v++ {
			s := itoa(v)
			if a.tag == tagPig && !r.isLiving(s) {
				continue
			}
			between = append(between, token{kind: tokNum, s: s, v: float64(v), from: at, to: at, spaced: true, tag: a.tag}, token{kind: tokMark, s: "&", from: at, to: at})
		}
		r.toks = slices.Replace(r.toks, i, i+1, between...)
		i += len(between)
	}
}

// isLiving says that a living pig is called by the number.
func (r *reader) isLiving(s string) bool {
	for k := range r.names {
		if h := &r.names[k]; h.tag && int(h.pig) < r.alive && h.words[0] == s {
			return true
		}
	}
	return false
}
