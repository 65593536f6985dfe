package bot

import "strings"

// urgentPart is one place of a phrase: the words that fit, or a gap.
type urgentPart map[string]bool

// urgentRule is a phrase made ready to be compared.
type urgentRule struct {
	urgentPhrase
	parts  []urgentPart // nil is a gap of up to two words
	unless map[string]bool
	rank   int
}

// urgentRules are the rules by each word that can begin them.
var urgentRules = func() map[string][]urgentRule {
	out := map[string][]urgentRule{}
	for i, p := range urgentPhrases {
		r := urgentRule{urgentPhrase: p, unless: wordSet(p.unless), rank: i}
		for _, place := range strings.Fields(p.phrase) {
			if place == "_" {
				r.parts = append(r.parts, nil)
				continue
			}
			if name, ok := strings.CutPrefix(place, "<"); ok {
				place = urgentGroups[strings.TrimSuffix(name, ">")]
			}
			r.parts = append(r.parts, wordSet(strings.ReplaceAll(place, "/", " ")))
		}
		for w := range r.parts[0] {
			out[w] = append(out[w], r)
		}
	}
	return out
}()

// end is where the phrase ends that begins at i, or -1. A gap holds as few words
// as do.
func (r urgentRule) end(words []string, i int) int {
	return endOf(r.parts, words, i)
}

func endOf(parts []urgentPart, words []string, i int) int {
	for k, part := range parts {
		if part == nil {
			for gap := 0; gap <= 2; gap++ {
				if end := endOf(parts[k+1:], words, i+gap); end >= 0 {
					return end
				}
			}
			return -1
		}
		if i >= len(words) || !part[words[i]] {
			return -1
		}
		i++
	}
	return i
}
