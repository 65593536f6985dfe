package reading

import (
	"slices"
	"strings"
)

func (r *reader) namesBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if r.items[k].pig >= 0 || r.items[k].group >= 0 || r.items[k].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return false
}

// oneName says that the two numbers at i and j belong to one pig: no list of
// names stands before the run of numbers, and no odd number of them.
func (r *reader) oneName(i, j int) bool {
	names, numbers := 0, 2
	k := i - 1
	for ; k >= 0 && !r.subjectItem(k, span{}) && r.items[k+1].gap < gapStop; k-- {
		if r.items[k].number() && !r.items[k].soft {
			numbers++
		}
	}
	for ; k >= 0 && !r.items[k].number() && r.items[k+1].gap < gapStop; k-- {
		if r.items[k].pig >= 0 {
			names++
		}
	}
	for k = j + 1; k < len(r.items) && !r.subjectItem(k, span{}) && r.items[k].gap < gapStop; k++ {
		if r.items[k].number() && !r.items[k].soft {
			numbers++
		}
	}
	return numbers == 2*names || names < 2 && (numbers%2 == 0 || names == 1)
}

// whose finds the pigs of each measure. Names stand before their numbers where
// a name comes first, else behind them. Several names before as many numbers
// take one each.
func (r *reader) whose(s span, ms []measure) {
	first := s.j
	for k := s.i; k < s.j; k++ {
		if r.subjectItem(k, s) {
			first = k
			break
		}
	}
	if first == s.j { // no pig named
		sel := r.defaultPigs(s)
		for k := range ms {
			ms[k].pigs = sel
		}
		return
	}
	namesFirst := first < ms[0].at && !r.forNames(ms, s)
	if !namesFirst && len(ms) > 1 && !r.subjectBetween(ms[len(ms)-1].at, s.j, s) {
		// "38 dot 40 moss 41 fig" ends on a name; "girth: 38 dot, moss 40" does not.
		namesFirst = first > ms[0].at && r.subjectsBefore(ms, s)
	}
	var last selection
	for k := 0; k < len(ms); k++ {
		lo, hi := s.i, s.j
		if namesFirst {
			if k > 0 {
				lo = ms[k-1].at + 1
			}
			hi = ms[k].at
			from := r.fromNames(lo, hi)
			if k == 0 && len(ms) > 1 && r.listOfNames(ms) {
				from = r.firstName(lo, hi)
			}
			if sel := r.selectPigs(from, hi); sel.any {
				last = sel
				if n := r.runOf(ms, k, s); n > 1 && !sel.all && len(sel.pigs) == n && r.eachNamed(lo, hi) {
					for x := range n {
						one := sel
						one.pigs = sel.pigs[x : x+1]
						ms[k+x].pigs = one
					}
					k += n - 1
					continue
				} else if n > 1 && !sel.all && len(sel.pigs) > 1 && len(sel.pigs) != n && r.eachNamed(lo, hi) && plainRun(ms[k:k+n]) {
					for x := range n {
						ms[k+x].pigs, ms[k+x].uneven = sel, true
					}
					k += n - 1
					continue
				}
			} else if k == 0 {
				last = r.defaultPigs(s)
			}
			ms[k].pigs = last
			if k+1 == len(ms) && ms[k].role != roleTare {
				if tail := r.selectPigs(ms[k].at+1, s.j); tail.any && (!ms[k].pigs.any || ms[k].pigs.all && !tail.all && len(tail.pigs) > 0) {
					ms[k].pigs = tail
				}
			}
			continue
		}
		lo = ms[k].at + 1
		if k+1 < len(ms) {
			hi = ms[k+1].at
		}
		sel := r.selectPigs(lo, hi)
		if !sel.any && k > 0 {
			sel = ms[k-1].pigs
		}
		ms[k].pigs = sel
	}
	if !namesFirst { // "170, 165 dot and moss"
		for k := 0; k < len(ms); k++ {
			n := k
			for n < len(ms) && !ms[n].pigs.any {
				n++
			}
			if n > k && n < len(ms) {
				if got := ms[n].pigs; len(got.pigs) == n-k+1 && !got.all {
					for x := k; x <= n; x++ {
						one := got
						one.pigs = got.pigs[x-k : x-k+1]
						ms[x].pigs = one
					}
				} else {
					for x := k; x < n; x++ {
						ms[x].pigs = got
					}
				}
			}
			k = n
		}
	}
}

// runOf counts the measures from k on with no subject between them.
func (r *reader) runOf(ms []measure, k int, s span) int {
	n := 1
	for k+n < len(ms) && !r.subjectBetween(ms[k+n-1].at, ms[k+n].at, s) {
		n++
	}
	return n
}

// plainRun says that each of the measures is one pig's and stands for itself.
func plainRun(ms []measure) bool {
	for _, m := range ms {
		if m.role == roleTare || m.role == roleGain || m.role == roleLength || m.same {
			return false
		}
	}
	return true
}

func (r *reader) subjectItem(k int, s span) bool {
	it := &r.items[k]
	return it.pig >= 0 || it.stray || it.group >= 0 || it.isAny(whoWords) && !(it.s == "each") && it.s != "old"
}

func (r *reader) subjectBetween(i, j int, s span) bool {
	for k := i + 1; k < j; k++ {
		if r.subjectItem(k, s) {
			return true
		}
	}
	return false
}

// subjectsBefore says that each number but the first has a subject right
// before it.
func (r *reader) subjectsBefore(ms []measure, s span) bool {
	for k := 1; k < len(ms); k++ {
		if !r.subjectBetween(ms[k-1].at, ms[k].at, s) {
			return false
		}
	}
	return true
}

// defaultPigs are the pigs meant where none is named: the only one, those said
// before in the text, or the whole herd where the words speak of a mean.
func (r *reader) defaultPigs(s span) selection {
	switch {
	case r.alive == 1:
		return selection{pigs: []int16{0}, any: true}
	case len(r.subject) > 0:
		return selection{pigs: append([]int16(nil), r.subject...), any: true}
	case r.subjAll:
		return selection{all: true, any: true}
	case r.has(s, sEach) || r.averages(s) || r.quoteHas(s, "they"):
		return selection{all: true, any: true}
	case r.alive > 0 && !r.anyNamed():
		return selection{all: true, any: true}
	}
	return selection{}
}

func (r *reader) anyNamed() bool {
	for p := range r.alive {
		if r.pigs[p].Name != "" {
			return true
		}
	}
	return false
}

func (r *reader) quoteHas(s span, words ...string) bool {
	for k := s.i; k < s.j; k++ {
		for _, w := range words {
			if r.items[k].s == w {
				return true
			}
		}
	}
	return false
}

// forNames says that names follow their numbers behind "for": "177 for hazel".
func (r *reader) forNames(ms []measure, s span) bool {
	for k := ms[0].at + 1; k+1 < s.j; k++ {
		if r.items[k].s == "for" && r.items[k-1].number() && r.items[k+1].pig >= 0 {
			return true
		}
	}
	return false
}

// fromNames skips words for several pigs that only lead up to their names:
// "both girls got weighed, Plum's at 163".
func (r *reader) fromNames(i, j int) int {
	for k := i; k < j; k++ {
		if r.items[k].pig >= 0 {
			for n := k; n > i; n-- {
				if r.items[n-1].is(sBut) {
					return i
				}
			}
			if r.items[k].gap >= gapComma || r.items[k].gap == gapAnd && k+1 < j && r.items[k+1].is(sIs) {
				return k
			}
			return i
		}
	}
	return i
}

// listOfNames says that before every number stands a pig's name of its own, as in
// a list.
func (r *reader) listOfNames(ms []measure) bool {
	for k := 1; k < len(ms); k++ {
		if ms[k].same {
			return false
		}
		named := false
		for n := ms[k-1].at + 1; n < ms[k].at; n++ {
			named = named || r.items[n].pig >= 0
		}
		if !named {
			return false
		}
	}
	return true
}

// firstName is the item of the first pig's name that words for several pigs only
// lead up to: "weighed the old ones today hazel 175 clover 181". What is added to
// them by "and", or left out, is no such list.
func (r *reader) firstName(i, j int) int {
	for k := i; k < j; k++ {
		if r.items[k].pig < 0 {
			continue
		}
		if k > i && (r.items[k].gap == gapAnd || r.items[k-1].isAny(setOf(sBut, sAnd))) {
			return i
		}
		return k
	}
	return i
}

// averages says that the span speaks of a mean.
func (r *reader) averages(s span) bool {
	for k := s.i; k < s.j; k++ {
		if w := r.items[k].s; strings.HasPrefix(w, "av") || strings.HasPrefix(w, "mean") {
			return true
		}
	}
	return false
}

// several says that the measures give several weights or girths.
func (r *reader) several(ms []measure) bool {
	n := 0
	for _, m := range ms {
		if m.role != roleTare && m.role != roleGain && m.role != roleLength {
			n++
		}
	}
	return n > 1
}

// ofOneGroup says that several measures are given for one group of pigs that is
// told by a word, not by their names: "taped the boys 29 30 29.5".
func (r *reader) ofOneGroup(s span, ms []measure) bool {
	for _, m := range ms {
		if m.pigs.all || len(m.pigs.pigs) < 2 || len(m.pigs.pigs) != len(ms) || !slices.Equal(m.pigs.pigs, ms[0].pigs.pigs) {
			return false
		}
	}
	return len(ms) > 1 && !r.eachNamed(s.i, s.j)
}

// ofTheWhole says that every measure is given for the herd as a whole, or for
// nobody.
func ofTheWhole(ms []measure) bool {
	for _, m := range ms {
		if m.pigs.any && !m.pigs.all {
			return false
		}
	}
	return true
}
