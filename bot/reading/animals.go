package reading

import (
	"strings"

	"troughbell/model"
)

// selection is the pigs that a stretch of text speaks of.
type selection struct {
	pigs  []int16
	all   bool // the whole herd, or pigs without names
	any   bool // pigs were spoken of at all
	near  bool // by a near-miss spelling or an initial
	bent  bool // by a plain word close to a name
	count int  // how many, where only a number was said
	lost  bool // spoken of, but not to be told which
	stray bool // by a number that no pig has
	some  bool // but some of a kind, count of them, and not which
	out   int  // how many were told to be left out
	part  int  // how many of a herd without names, where a kind was said and not all
}

// names are the selection as a fact's Animals.
func (s selection) names(r *reader) []string {
	if s.all || len(s.pigs) == 0 {
		return []string{model.All}
	}
	out := make([]string, 0, len(s.pigs))
	for _, p := range s.pigs {
		if n := r.pigs[p].Name; n != "" {
			out = append(out, n)
		}
	}
	if len(out) == 0 {
		return []string{model.All}
	}
	return out
}

var whoWords = setOf(sAll, sBoth, sRest, sBarrow, sGilt, sBoar, sSow, sYoung, sOld, sPigs)

// selectPigs gathers the pigs that items[i:j] speak of, in the order said.
func (r *reader) selectPigs(i, j int) selection {
	var s selection
	not := false
	add := func(p int16) {
		if not {
			s.drop(p)
			s.out++
			if r.excluded = p + 1; s.out > 1 {
				r.excluded = 0
			}
			return
		}
		for _, q := range s.pigs {
			if q == p {
				return
			}
		}
		s.pigs = append(s.pigs, p)
	}
	everyone := func() {
		for p := range r.alive {
			s.pigs = append(s.pigs, int16(p))
		}
	}
	for k := i; k < j; k++ {
		it := &r.items[k]
		next := &item{}
		if k+1 < j {
			next = &r.items[k+1]
		}
		switch {
		case it.pig >= 0:
			s.any = true
			s.near = s.near || it.near
			s.bent = s.bent || it.bent
			if s.all {
				if not {
					s.all = false
					everyone()
				} else {
					s.all = false // "all: dot and moss"
				}
			}
			add(it.pig)
			it.used = true
		case it.stray:
			it.used = true
			s.any, s.stray = true, true
		case it.group >= 0:
			s.any, s.all = true, false
			r.addGroup(r.c.Herd.Groups[it.group], add)
			it.used = true
		case it.is(sBut) && (s.all || len(s.pigs) > 0 || allBut(it.s)) && r.namesPig(k+1, j), r.leavesOut(k, j, s.all):
			not = true
			s.any = true
			if s.all || len(s.pigs) == 0 {
				s.all = false
				everyone()
			}
			it.used = true
		case it.is(sAll) && !it.is(sPigs) || it.is(sAll) && it.is(sPigs):
			it.used = true
			s.any = true
			if len(s.pigs) == 0 && !r.narrows(k+1, j) {
				s.all = true
			}
		case it.is(sBoth):
			if r.thingBeside(k, j) {
				continue
			}
			it.used = true
			s.any = true
			switch {
			case r.narrows(k+1, j):
			case r.alive == 2:
				s.all = true
			case len(r.subject) == 2 && len(s.pigs) == 0:
				s.pigs = append(s.pigs, r.subject...)
			case len(s.pigs) == 0:
				s.lost = true
			}
		case it.is(sRest) && k > i && len(s.pigs) > 0 && (r.items[k-1].is(sNot) || r.items[k-1].s == "but not" || r.items[k-1].s == "not"):
			it.used = true // "otis and hazel but not the rest"
		case it.is(sRest):
			it.used = true
			s.any = true
			for p := range r.alive {
				if !r.spoken[int16(p)] {
					add(int16(p))
				}
			}
			s.all = len(r.spoken) == 0 && len(s.pigs) == r.alive
		case it.is(sYoung) || it.is(sOld) && it.s != "old":
			if g := r.ageGroup(it.is(sYoung)); g != nil && !next.is(sFeeder) && !next.is(sBarrel) {
				it.used = true
				s.any, s.all = true, false
				r.addGroup(g, add)
			} else if !r.thingBeside(k, j) && len(s.pigs) == 0 && !s.all {
				s.any, s.lost = true, true
			}
		case it.isAny(setOf(sBarrow, sGilt, sBoar, sSow)):
			it.used = true
			s.any = true
			was := len(s.pigs)
			r.addSex(it, add)
			if n := r.countedAt(k - 1); n > 0 && n < len(s.pigs)-was && !not { // "the two gilts", of four
				it.used = true
				return selection{any: true, lost: true, some: true, count: n}
			}
			if len(s.pigs) == was && !not && !s.all {
				s.lost = r.alive > 0
			} else {
				s.all = false
			}
		case it.is(sPigs):
			it.used = true
			if len(s.pigs) == 0 && !s.any {
				s.any = true
				s.all = true
			}
			if k > i && r.items[k-1].kind == itNum {
				s.count = int(r.items[k-1].v)
			}
		case (it.is(sPronoun) || it.s == "moved them" || it.s == "moved em") && !s.any && (len(r.subject) > 0 || r.subjAll):
			one := onePronouns[it.s]
			if it.s == "it" || it.s == "its" || it.s == "it's" {
				continue
			}
			if one && len(r.subject) == 1 || !one {
				s.any = true
				s.pigs = append(s.pigs, r.subject...)
				s.all = r.subjAll
			}
		}
	}
	if len(s.pigs) > 0 || s.stray {
		s.lost = s.stray
	}
	if n := r.someOf(i, j); n > 0 && !s.stray && !r.eachNamed(i, j) {
		return selection{any: true, lost: true, some: true, count: n}
	}
	r.countsUsed(i, j, &s)
	if !s.all && len(s.pigs) > 0 && r.unnamed(s.pigs) {
		s.all = true
		if len(s.pigs) < r.alive {
			s.part = len(s.pigs)
		}
	}
	if !s.all && len(s.pigs) == r.alive && r.alive > 1 && !r.eachNamed(i, j) {
		s.all = true
	}
	return s
}

func (s *selection) drop(p int16) {
	for k, q := range s.pigs {
		if q == p {
			s.pigs = append(s.pigs[:k:k], s.pigs[k+1:]...)
			return
		}
	}
}

func (r *reader) unnamed(pigs []int16) bool {
	for _, p := range pigs {
		if r.pigs[p].Name != "" {
			return false
		}
	}
	return true
}

// eachNamed says that pigs were called by their names, one by one.
func (r *reader) eachNamed(i, j int) bool {
	for k := i; k < j; k++ {
		if r.items[k].pig >= 0 {
			return true
		}
	}
	return false
}

// namesPig says that a pig or a group of pigs follows.
func (r *reader) namesPig(i, j int) bool {
	for k := i; k < j && k < i+4; k++ {
		it := &r.items[k]
		if it.pig >= 0 || it.group >= 0 || it.isAny(setOf(sBarrow, sGilt, sBoar, sSow, sYoung, sOld)) {
			return true
		}
	}
	return false
}

// narrows says that a word for "all" is narrowed by the next words to a sex, a
// group or things: "all the gilts", "all three barrels".
func (r *reader) narrows(i, j int) bool {
	for k := i; k < j && k < i+3; k++ {
		it := &r.items[k]
		if it.isAny(setOf(sBarrow, sGilt, sBoar, sSow)) || it.group >= 0 || it.is(sYoung) && r.ageGroup(true) != nil || it.is(sOld) && it.s != "old" && r.ageGroup(false) != nil {
			return true
		}
		if it.gap > gapNone && k > i {
			return false
		}
	}
	return false
}

// thingBeside says that a word for "both" or "all" speaks of feeders, barrels or
// pens.
func (r *reader) thingBeside(k, j int) bool {
	for n := k + 1; n < j && n < k+3; n++ {
		it := &r.items[n]
		if it.isAny(setOf(sFeeder, sBarrel, sWater, sPen)) || it.feeder >= 0 || it.barrel >= 0 {
			return true
		}
	}
	return false
}

// remember keeps the pigs spoken of, for "she" and for a fact without a
// subject.
func (r *reader) remember(s selection) {
	if !s.any {
		return
	}
	r.subject = append(r.subject[:0], s.pigs...)
	r.subjAll = s.all
	for _, p := range s.pigs {
		r.spoken[p] = true
	}
}

// whichPig asks which pig is meant: draft takes the names of each choice.
func (r *reader) whichPig(about string, s span, draft Entry, with func(names []string) Act) {
	c := Clarify{About: about, Code: "which_animal", Want: "animals", Draft: []Entry{draft}}
	for p := range r.alive {
		if len(c.Choices) == 4 {
			break
		}
		if n := r.pigs[p].Name; n != "" {
			e := draft
			e.Act = with([]string{n})
			c.Choices = append(c.Choices, Choice{Label: n, Entries: []Entry{e}})
		}
	}
	if len(c.Choices) == 0 || about == "sick" && r.alive > len(c.Choices) && len(c.Choices) < 4 {
		e := draft
		e.Act = with([]string{model.All})
		c.Choices = append(c.Choices, Choice{Code: "all_pigs", Entries: []Entry{e}})
	}
	r.clarify(c, s)
}

// allBut says that a phrase for "but" holds the word for all: "all but".
func allBut(s string) bool {
	w := firstWord(s)
	return w == "all" || w == "everyone" || w == "everybody" || w == "every" || strings.Contains(s, "em all ") || strings.Contains(s, "of them ") || strings.Contains(s, "of em ")
}

// leavesOut says that item k leads to pigs and nothing else, which are then left out of
// all: a "but" behind them, "moved all to pear but otis", or an "except" in a sentence
// that begins with them, "all in pear now except otis".
func (r *reader) leavesOut(k, j int, all bool) bool {
	it := &r.items[k]
	if !(all && it.s == "but") && !(it.is(sBut) && allBut(r.items[r.sentenceStart(k)].s)) {
		return false
	}
	n := k + 1
	for n < j && (r.items[n].pig >= 0 || n > k+1 && r.items[n].is(sAnd)) && (n == k+1 || r.items[n].gap <= gapAnd) {
		n++
	}
	return n > k+1 && (n >= len(r.items) || r.items[n].gap >= gapStop)
}
