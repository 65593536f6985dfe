package reading

import (
	"slices"
	"strings"
)

// Numbers that this text gives to pigs as names: "tags 411 to 419", "9 pigs came,
// 501, 502, ... and 509", "pigs are 1, 2, 3 and 4", "#7 and #12".

// newTags marks the numbers that become names of pigs that come.
func (r *reader) newTags() {
	if !r.comesHere() {
		return
	}
	for i := 0; i+1 < len(r.toks); i++ {
		if t, n := &r.toks[i], &r.toks[i+1]; t.s == "ear" && (n.s == "tag" || n.s == "tags") {
			t.s, t.to = "eartags", n.to
			r.toks = slices.Delete(r.toks, i+1, i+2)
		}
	}
	r.colourTags()
	var given []string
	for i := 0; i < len(r.toks); i++ {
		t := &r.toks[i]
		if t.kind != tokNum || t.decimals > 0 && !strings.Contains(t.s, ",") || t.ordinal {
			continue
		}
		led := r.ledByTags(i)
		if led || r.countsTags(i) {
			r.cutNewTags(i)
		}
		elems, end := r.tagRun(i, led)
		if len(elems) > 0 && (led || r.countedRun(i, elems)) {
			for _, k := range elems {
				r.toks[k].tag = tagNew
				given = append(given, r.toks[k].s)
			}
		}
		i = max(i, end-1)
	}
	if len(given) == 0 {
		return
	}
	n := len(r.toks)
	r.tagRanges()
	if len(r.toks) > n {
		given = given[:0]
		for k := range r.toks {
			if r.toks[k].tag == tagNew {
				given = append(given, r.toks[k].s)
			}
		}
	}
	r.newTagsAgain(given)
	r.tagRanges()
}

// comesHere says that the text can tell of pigs that come: in a herd without any,
// or by a word for it.
func (r *reader) comesHere() bool {
	if r.c.Herd == nil || len(r.c.Herd.Animals) == 0 {
		return true
	}
	for i := range r.toks {
		switch r.toks[i].s {
		case "came", "arrived", "bought", "new", "more", "come", "picked", "joined", "delivered", "unloaded", "purchased":
			return true
		}
	}
	return false
}

// tagLead are words that numbers of pigs follow.
var tagLead = map[string]bool{
	"tag": true, "tags": true, "eartag": true, "eartags": true, "tagged": true, "numbered": true, "numbers": true, "nos": true,
	"named": true, "called": true, "names": true,
}

// ledByTags says that a word for names or tags leads up to the number at token i.
func (r *reader) ledByTags(i int) bool {
	for k := i - 1; k >= 0 && i-k < 6; k-- {
		t := &r.toks[k]
		switch {
		case tagLead[t.s]:
			return t.s != "names" && t.s != "numbers" && t.s != "tag" || k == i-1 || r.toks[k+1].s != "of"
		case t.s == "#":
			return k == i-1 && !r.thingWord(k-1) && !(k > 0 && r.toks[k-1].kind == tokNum && !t.spaced)
		case t.s == "are" && k > 0 && (r.toks[k-1].s == "pigs" || r.toks[k-1].s == "they"):
			_, end := r.tagRun(i, true)
			return end > i+1
		case t.s == ":" || t.s == "are" || t.s == "is" || t.s == "from" || t.s == "no" || t.s == "." || t.s == "number" || t.s == "numbers" || t.s == "with" || t.s == "(":
		default:
			return false
		}
	}
	return false
}

// countsTags says that pigs are counted before the number at token i.
func (r *reader) countsTags(i int) bool { return r.countBefore(i) > 1 }

// countReach is how many tokens before a list of numbers are looked at for how many
// pigs came.
const countReach = 40

// countBefore is how many pigs were said to come before token i, 0 if none.
func (r *reader) countBefore(i int) int {
	for k := i - 1; k > 0 && i-k < countReach; k-- {
		m := r.lex.of[r.toks[k].s]
		if m == nil || !m.sense.any(setOf(sPigs, sBarrow, sGilt, sYoung)) {
			continue
		}
		for n := k - 1; n >= 0 && k-n < 4; n-- {
			t := &r.toks[n]
			if t.kind == tokNum {
				return int(t.v)
			}
			if w := r.lex.of[t.s]; t.kind == tokWord && w != nil && w.isNum {
				return int(w.number)
			}
			if t.kind != tokWord {
				break
			}
		}
	}
	return 0
}

// tagRun lists the whole numbers that stand in one list from token i on, and where
// it ends. A number with a unit is none of it. led lets blanks part them.
func (r *reader) tagRun(i int, led bool) ([]int, int) {
	var elems []int
	k := i
	for k < len(r.toks) {
		t := &r.toks[k]
		if t.kind != tokNum || t.decimals > 0 || t.ordinal || r.amountAt(k, led) || t.v < 1 || r.yearAt(k) {
			break
		}
		elems = append(elems, k)
		k++
		j := k
		for j < len(r.toks) && tagJoin(r.toks[j].s) {
			j++
		}
		if j == k && !led || j >= len(r.toks) {
			break
		}
		k = j
	}
	if n := len(elems); n > 0 {
		if last := elems[n-1]; k > last+1 && k < len(r.toks) && !led && r.toks[k-1].s == "and" {
			return nil, k // "48, 52 and 50 lb"
		}
		k = elems[n-1] + 1
	}
	return elems, max(k, i+1)
}

// yearAt says that the number at token k is the year of a day.
func (r *reader) yearAt(k int) bool {
	if t := &r.toks[k]; t.v < 2000 || t.v > 2100 || k < 2 {
		return false
	}
	j := k - 1
	if r.toks[j].s == "," {
		j--
	}
	return j > 0 && r.toks[j].kind == tokNum && r.dateAt(j)
}

// countedRun says that a list of numbers names as many pigs as were said to come:
// they rise by one each, or are higher than a young pig's weight.
func (r *reader) countedRun(i int, elems []int) bool {
	n := 0
	rises, high := true, true
	for x, k := range elems {
		v := r.toks[k].v
		if x > 0 {
			d := v - r.toks[elems[x-1]].v
			if rangeWord(r.toks[k-1].s) && d > 0 {
				n += int(d) - 1
			} else {
				rises = rises && d == 1
			}
		}
		high = high && v >= 2*bigTag
		n++
	}
	if n < 2 || n != r.countBefore(i) || !rises && !high {
		return false
	}
	if i > 0 {
		if m := r.lex.of[r.toks[i-1].s]; r.toks[i-1].s == "at" || m != nil && m.sense.any(setOf(sWeigh, sAbout, sGirth)) {
			return false
		}
	}
	return true
}

// cutNewTags cuts apart the numbers at token i that were taken for thousands or
// decimals and rise by one each.
func (r *reader) cutNewTags(i int) {
	for ; i < len(r.toks); i += 2 {
		if r.toks[i].kind != tokNum || r.countBehind(i) {
			return
		}
		parts := strings.Split(r.toks[i].s, ",")
		for k := 1; k < len(parts); k++ {
			a, end := digits(parts[k-1], 0)
			b, end2 := digits(parts[k], 0)
			if b != a+1 || end != len(parts[k-1]) || end2 != len(parts[k]) {
				return
			}
		}
		if len(parts) > 1 {
			r.cutToken(i, parts)
			i += 2 * (len(parts) - 1)
		}
		if i+1 >= len(r.toks) || r.toks[i+1].s != "," {
			return
		}
	}
}

// newTagsAgain marks the new names where they stand a second time, with a sex or a
// weight of their own.
func (r *reader) newTagsAgain(given []string) {
	for i := range r.toks {
		t := &r.toks[i]
		if t.kind != tokNum || t.tag != noTag || t.ordinal || !slices.Contains(given, t.s) {
			continue
		}
		if r.amountAt(i, false) && !r.sexBeside(i) {
			continue
		}
		if t.v >= bigTag || r.sexBeside(i) || i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && r.countBehind(i+1) && (i == 0 || r.toks[i-1].kind != tokWord) {
			t.tag = tagNew
		}
	}
}

// sexBeside says that the list of numbers around token i is told a sex, before or
// behind it: "1 and 2 are gilts", "barrows: 3, 4". A single number right before
// the word for several only counts them.
func (r *reader) sexBeside(i int) bool {
	sexed := func(k int) bool {
		if k < 0 || k >= len(r.toks) {
			return false
		}
		m := r.lex.of[r.toks[k].s]
		return m != nil && m.sense.any(setOf(sBarrow, sGilt, sBoar, sSow))
	}
	k, many, told := i+1, false, false
	for k < len(r.toks) && (tagJoin(r.toks[k].s) || r.toks[k].kind == tokNum) {
		many = many || r.toks[k].kind == tokNum
		k++
	}
	for k < len(r.toks) && (r.toks[k].s == "is" || r.toks[k].s == "are" || r.toks[k].s == "both" || r.toks[k].s == "all" || r.toks[k].s == ":" || r.toks[k].s == "=" || r.toks[k].s == "a" || r.toks[k].s == "(") {
		told = true
		k++
	}
	for n := i - 1; n >= 0 && (tagJoin(r.toks[n].s) || r.toks[n].kind == tokNum) && !many; n-- {
		many = r.toks[n].kind == tokNum && r.toks[n+1].s != ","
	}
	if sexed(k) && (told || many || r.singularSex(r.toks[k].s)) {
		return true
	}
	k = i - 1
	for k >= 0 && (tagJoin(r.toks[k].s) || r.toks[k].kind == tokNum) {
		k--
	}
	told = false
	for k >= 0 && (r.toks[k].s == "is" || r.toks[k].s == "are" || r.toks[k].s == ":" || r.toks[k].s == "=" || r.toks[k].s == "(") {
		told = true
		k--
	}
	return sexed(k) && (told || r.toks[i].v >= bigTag)
}

// colourTags makes one name of a colour and a number, as tags of several colours
// have them: "red 14, red 15 and blue 3".
func (r *reader) colourTags() {
	pairs := 0
	for i := 0; i+1 < len(r.toks); i++ {
		if r.colouredTag(i) {
			pairs++
		}
	}
	if pairs == 0 || pairs == 1 && !r.saysTag() {
		return
	}
	for i := 0; i+1 < len(r.toks); i++ {
		if !r.colouredTag(i) {
			continue
		}
		t := &r.toks[i]
		t.s, t.to, t.tag = t.s+" "+r.toks[i+1].s, r.toks[i+1].to, tagNew
		r.toks = slices.Delete(r.toks, i+1, i+2)
	}
}

func (r *reader) colouredTag(i int) bool {
	switch r.toks[i].s {
	case "red", "blue", "yellow", "green", "white", "orange", "pink", "purple", "black", "grey", "gray":
	default:
		return false
	}
	return i+1 < len(r.toks) && r.toks[i+1].kind == tokNum && r.toks[i+1].decimals == 0 && !r.amountAt(i+1, true)
}

func (r *reader) saysTag() bool {
	for i := range r.toks {
		if tagLead[r.toks[i].s] {
			return true
		}
	}
	return false
}
