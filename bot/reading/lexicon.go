package reading

import (
	"maps"
	"slices"
	"sort"
	"strings"
	"sync"
)

// meaning is what the lexicons know of a word or phrase.
type meaning struct {
	text   string // the word or phrase itself
	sense  senses
	unit   unitID
	canon  string // of an ingredient
	drug   string // of a product
	number float64
	isNum  bool
	day    dayExpr
	isDay  bool
	month  int8
	frac   float64
	isFrac bool
}

// lexicon is all words and phrases with their meanings.
type lexicon struct {
	of      map[string]*meaning
	longest map[string]int      // first word of a phrase: the most words such a phrase has
	near    map[string][]string // a word with one letter left out: the words it may have been
	plain   map[string]bool
	topics  map[string][]topicVote
	zones   map[string]string
	// placeWord are the words in the names of zones and places, which are no slips.
	placeWord map[string]bool
	clipped   map[string]string // a word without its vowels: the word
	inside    map[string]bool   // words that stand in phrases only
	zoneLen   int
}

var words = sync.OnceValue(buildLexicon)

// split cuts a comma list into its trimmed items.
func split(list string) []string {
	parts := strings.Split(list, ",")
	out := parts[:0]
	for _, p := range parts {
		if p = strings.Join(strings.Fields(p), " "); p != "" {
			out = append(out, p)
		}
	}
	return out
}

func buildLexicon() *lexicon {
	l := &lexicon{
		of: map[string]*meaning{}, longest: map[string]int{}, near: map[string][]string{},
		plain: map[string]bool{}, topics: map[string][]topicVote{}, zones: map[string]string{}, placeWord: map[string]bool{},
	}
	for _, table := range [][]entryWords{tradeWords, talkWords, saidWords, animalWords, waysWords} {
		for _, e := range table {
			for _, w := range split(e.words) {
				l.meaning(w).sense.add(e.sense)
			}
		}
	}
	for _, u := range unitWords {
		for _, w := range split(u.words) {
			l.meaning(w).unit = mustUnit(u.unit)
		}
	}
	for _, e := range ingredientWords {
		for _, w := range split(e.words) {
			m := l.meaning(w)
			m.canon = e.name
			m.sense.add(sIngredient)
		}
	}
	for _, e := range productWords {
		for _, w := range split(e.words) {
			m := l.meaning(w)
			m.drug = e.name
			m.sense.add(sProduct)
		}
	}
	addNumbers(l)
	addDays(l)
	addTopics(l)
	addZones(l)
	for _, w := range strings.Fields(plainWords + plainAnimal) {
		l.plain[w] = true
	}
	l.addForms()
	l.index()
	l.clipped = clippedWords(l)
	return l
}

// addForms lets the other spoken forms of a word or phrase mean the same, where they
// mean nothing yet.
func (l *lexicon) addForms() {
	for _, w := range slices.Sorted(maps.Keys(l.of)) {
		m := l.of[w]
		for _, form := range otherForms(w) {
			_, rest, _ := strings.Cut(form, " ")
			if l.of[form] == nil && (l.of[rest] == nil || !strings.Contains(rest, " ")) { // "is" before "not getting up" is a word of its own
				l.of[form] = m
				l.reach(form)
			}
		}
	}
	for _, w := range slices.Sorted(maps.Keys(l.topics)) {
		votes := l.topics[w]
		for _, form := range otherForms(w) {
			if l.topics[form] == nil {
				l.topics[form] = votes
			}
		}
	}
}

// meaning gives the entry of a word or phrase, made where there is none.
func (l *lexicon) meaning(w string) *meaning {
	m := l.of[w]
	if m == nil {
		m = &meaning{text: w}
		l.of[w] = m
		l.reach(w)
	}
	return m
}

// reach notes how many words the phrases have that begin like this one.
func (l *lexicon) reach(w string) {
	if first, _, more := strings.Cut(w, " "); more {
		l.longest[first] = max(l.longest[first], strings.Count(w, " ")+1)
	}
}

// index prepares the search for near-miss spellings.
func (l *lexicon) index() {
	single := make([]string, 0, len(l.of))
	for w := range l.of {
		if len(w) >= 4 && isLetters(w) {
			single = append(single, w)
		}
	}
	l.inside = map[string]bool{}
	for w := range l.of { // "eating" stands in "not eating" only
		for _, part := range strings.Fields(w) {
			if len(part) > 4 && isLetters(part) && l.of[part] == nil && (!l.plain[part] || l.of[w].sense.has(sSick)) && !l.inside[part] {
				l.inside[part] = true
				single = append(single, part)
			}
		}
	}
	sort.Strings(single)
	for _, w := range single {
		l.near[w] = append(l.near[w], w)
		for i := range len(w) {
			k := w[:i] + w[i+1:]
			if n := len(l.near[k]); n == 0 || l.near[k][n-1] != w {
				l.near[k] = append(l.near[k], w)
			}
		}
	}
}

func isLetters(w string) bool {
	for i := range len(w) {
		if c := w[i]; (c < 'a' || c > 'z') && c < 0x80 {
			return false
		}
	}
	return true
}

// correct finds the word of the lexicon that s is one slip away from: a letter
// left out, doubled, changed or swapped with its neighbour. Words of four
// letters must begin alike. Plain English is never corrected.
func (l *lexicon) correct(s string) (string, bool) { return l.corrected(s, false) }

// corrected is correct, with or without the words that stand in phrases only.
func (l *lexicon) corrected(s string, inside bool) (string, bool) {
	if len(s) == 3 && isLetters(s) && !l.plain[s] { // "otu"
		for i := range 2 {
			b := []byte(s)
			b[i], b[i+1] = b[i+1], b[i]
			m := l.of[string(b)]
			if m == nil {
				continue
			}
			sense := m.sense
			sense.drop(sFiller)
			if !sense.empty() || m.unit != 0 {
				return string(b), true
			}
		}
		return "", false
	}
	if len(s) < 4 || !isLetters(s) || l.plain[s] || commonEnglish().has(s) {
		return "", false
	}
	if strings.HasSuffix(s, "s") && l.plain[s[:len(s)-1]] {
		return "", false
	}
	var best string
	var buf [32]byte
	consider := func(list []string) {
		for _, w := range list {
			if !inside && l.inside[w] || w[0] != s[0] && (len(s) < 5 || w[1] != s[0]) || distance(s, w) != 1 {
				continue
			}
			if len(w) == 4 && len(s) == 5 && !doubled(s, w) {
				continue // "solid" is no "sold", nor "dried" a pig that died
			}
			if len(s) == 4 && len(w) == 4 && !swapped(s, w) {
				continue // too many words of four letters are one letter apart
			}
			if best == "" || len(w) > len(best) {
				best = w
			}
		}
	}
	consider(l.near[s])
	if len(s) <= len(buf) {
		for i := range len(s) {
			n := copy(buf[:], s[:i])
			n += copy(buf[n:], s[i+1:])
			consider(l.near[string(buf[:n])])
		}
	}
	return best, best != ""
}
