package reading

import (
	"maps"
	"slices"
	"strings"
	"sync"
)

// slipWords are the words that something else may have been put in the place of,
// found by their letters and by their sound.
type slipWords struct {
	near  map[string][]string // a word, or it with one letter left out
	sound map[string][]string // its consonants, or those with one left out
	start map[string][]string // its first three letters
	heard map[string]sounds   // how it sounds
}

// meantWords are the words of the lexicon that carry a meaning of the trade.
var meantWords = sync.OnceValue(func() *slipWords {
	l := words()
	set := map[string]bool{}
	for w, m := range l.of {
		if !m.worthBending() {
			continue
		}
		for _, part := range strings.Fields(w) {
			if len(part) > 2 && isLetters(part) && (part == w || l.of[part] == nil || l.of[part].worthBending()) {
				set[part] = true
			}
		}
	}
	for w := range l.placeWord {
		if len(w) > 5 && isLetters(w) {
			set[w] = true
		}
	}
	return indexSlips(set)
})

// indexSlips makes words findable by what a slip makes of them.
func indexSlips(set map[string]bool) *slipWords {
	all := slices.Sorted(maps.Keys(set))
	s := &slipWords{map[string][]string{}, map[string][]string{}, map[string][]string{}, make(map[string]sounds, len(all))}
	for _, w := range all {
		spread(s.near, w, w)
		s.heard[w] = soundsOf(w)
		if key := s.heard[w].bare; len(key) > 2 {
			spread(s.sound, key, w)
		} else if len(key) > 1 {
			s.sound[key] = append(s.sound[key], w)
		}
		if len(w) > 4 {
			s.start[w[:3]] = append(s.start[w[:3]], w)
		}
	}
	return s
}

// spread files a word under a key and under it with each letter left out.
func spread(m map[string][]string, key, w string) {
	m[key] = append(m[key], w)
	for i := range len(key) {
		k := key[:i] + key[i+1:]
		if n := len(m[k]); n == 0 || m[k][n-1] != w {
			m[k] = append(m[k], w)
		}
	}
}

// lightSenses are those that no word is bent to: they steer and tell nothing.
var lightSenses = setOf(sFiller, sAbout, sAnd, sForeign, sHearsay, sThanks, sPronoun, sIf, sAgo, sPlan, sNot, sNo, sYes, sCorrect, sUndo, sTopic, sOf, sPer, sBy, sIs, sHere, sTo, sFrom, sOn, sAt, sDo, sUndone, sStop, sSnooze, sWell)

// worthBending says that a word has a meaning that another word may hide.
func (m *meaning) worthBending() bool {
	if m.unit != 0 || m.isNum || m.isFrac || m.isDay || m.canon != "" || m.drug != "" {
		return !m.sense.has(sForeign)
	}
	rest := m.sense
	for i := range rest {
		rest[i] &^= lightSenses[i]
	}
	return !rest.empty() && !m.sense.any(setOf(sForeign, sNot))
}

// meantFor are the words of the trade that one can come from to the word by a
// slip, with what that takes, the likeliest first; own is how that sounds.
func (s *slipWords) meantFor(said string, own sounds) []meantWord {
	var out []meantWord
	seen := map[string]bool{said: true}
	consider := func(list []string) {
		for _, w := range list {
			if seen[w] {
				continue
			}
			seen[w] = true
			if c := slipCost(said, w, own, s.heard[w]); c < dearestSlip {
				out = append(out, meantWord{w, c})
			}
		}
	}
	consider(s.near[said])
	for i := range len(said) {
		consider(s.near[said[:i]+said[i+1:]])
	}
	if key := own.bare; len(key) > 1 {
		consider(s.sound[key])
		if len(key) > 2 {
			for i := range len(key) {
				consider(s.sound[key[:i]+key[i+1:]])
			}
		}
	}
	if len(said) > 4 {
		consider(s.start[said[:3]])
	}
	slices.SortStableFunc(out, byCost)
	return out
}

// meantWord is a word that may have been meant, and what the slip takes.
type meantWord struct {
	s    string
	cost float64
}

func byCost(a, b meantWord) int {
	switch {
	case a.cost < b.cost:
		return -1
	case a.cost > b.cost:
		return 1
	}
	return strings.Compare(a.s, b.s)
}

// dearestSlip is what a slip may take at most.
const dearestSlip = 1.75
