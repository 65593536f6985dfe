package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// naming is what a text says of how the pigs are called.
type naming struct {
	names []string
	sexes []model.Sex // of each, in their order; none where not all are known
	left  []string    // what stands behind and says something else
}

// Words around the names of a text that only tells names.
var (
	tellsNames = setOfWords(split(`name, names, named, naming, call, called, calling, answer, answers, christened, dubbed, meet, introducing, introduce`))
	theseAre   = setOfWords(split(`they're, theyre, these, they, it's, its, here`))
	// namingFillers stand between the beginning and the first name.
	namingFillers = setOfWords(split(`the, their, our, my, his, her, we, i, us, you, have, has, had, 've, we've, weve, is, are, were, was, be, being, will, a, all, them, em, 'em, this,
		pig, pigs, piglet, piglets, weaner, weaners, new, little, ones, guys, kids, kid, wife, husband, daughter, daughters, son, sons, grandkids, children, family, girls, boys,
		picked, chose, chosen, decided, on, going, by, gonna, to, as, for, so, ok, okay, and, btw, just, finally, got, two, three, four, five, six, seven, eight, now, today`))
	// betweenNames stand between names and the words for their sex.
	betweenNames = setOfWords(split(`and, n, the, a, an, is, are, both, all, being, called, named, who, that, one, little, big, he's, hes, she's, shes, they're, theyre`))
	restWords    = setOfWords(split(`rest, others, other`))
)

// namingIn reads a text that only says how the pigs are called, and perhaps of which sex
// they are: "names are Pickle, Truffle and Olive. Pickle is a boy".
func (r *reader) namingIn(text string) (n naming, ok bool) {
	sentences := strings.FieldsFunc(text, func(c rune) bool { return c == '.' || c == '\n' || c == ';' || c == '!' })
	t := namesTold{r: r}
	for i, s := range sentences {
		words := namingPieces(s)
		if len(words) == 0 {
			continue
		}
		if i == 0 {
			if words, ok = r.behindLead(words); !ok {
				return naming{}, false
			}
		}
		before := t
		before.names, before.sexes = slices.Clone(t.names), slices.Clone(t.sexes)
		if rest, whole := t.sentence(words); !whole {
			if len(t.names) < 2 && (i == 0 || len(before.names) == 0) || i == 0 && len(rest) == len(words) {
				return naming{}, false
			}
			if i > 0 {
				t, rest = before, words
			}
			n.left = append(n.left, strings.Trim(strings.Join(rest, " "), ", "))
		}
	}
	n.names = t.names
	if len(n.names) == 0 {
		return naming{}, false
	}
	n.sexes = t.sexesFirst()
	n.names = t.names
	return n, true
}

// namingPieces are the words of a sentence and its marks, which matter in a list.
func namingPieces(sentence string) []string {
	for _, mark := range []string{",", ":", "(", ")", "&", "+", "=", "–", " - "} {
		sentence = strings.ReplaceAll(sentence, mark, " "+mark+" ")
	}
	return strings.Fields(strings.ReplaceAll(sentence, "’", "'"))
}

// behindLead is what stands behind the words that lead up to a list of names; false
// where the text does not begin as such a list does.
func (r *reader) behindLead(words []string) ([]string, bool) {
	named, opens := false, true
	for k, w := range words {
		low := strings.ToLower(w)
		switch {
		case tellsNames[low]:
			named = true
		case r.sexOfNamed(words[k:]):
			return words[k:], true
		case theseAre[low], low == ":", low == "=", low == "-", low == "–", low == "the", low == "our", low == "are", low == "is":
		case len(w) == 1 && w != low, !namingFillers[low]:
			return words[k:], named || opens && r.looksListed(words[k:])
		default:
			opens = false
		}
	}
	return nil, false
}

// looksListed says that words are a list of names although no word of naming leads up
// to it: each has a capital.
func (r *reader) looksListed(words []string) bool {
	names, marks := 0, false
	for _, w := range words {
		low := strings.ToLower(w)
		switch {
		case low == "," || low == "and" || low == "n" || low == "&":
			marks = true
		case low == ":", isCount(low), betweenNames[low], restWords[low], r.sexWord(low) != "", strings.ContainsAny(w, "()"):
		case !r.mayBeName(w) || w == low || r.wordOfThing(low):
			return false
		default:
			names++
		}
	}
	return marks && names >= 2
}

// isCount says that a word is a small number in figures.
func isCount(w string) bool { return len(w) < 3 && strings.Trim(w, "0123456789") == "" }

// mayBeName says that a word of a list can be a pig's name.
func (r *reader) mayBeName(w string) bool {
	low := strings.ToLower(w)
	if len(w) == 1 {
		return w != low && w != "I"
	}
	return !stopWords[low] && !namingFillers[low] && !tellsNames[low] && isLetters(strings.ReplaceAll(low, "'", "")) && strings.ToLower(w[:1]) != strings.ToUpper(w[:1])
}

// sexWord is the sex that a word says, empty if none.
func (r *reader) sexWord(low string) model.Sex {
	if m := r.lex.of[low]; m != nil {
		return sexOf(&item{sense: m.sense, pig: -1})
	}
	return ""
}

// namesTold is what the sentences of a naming have told so far.
type namesTold struct {
	r     *reader
	names []string
	sexes []model.Sex
	cased bool // names are written with a capital
}

// sentence takes a sentence and gives the words from where it was not understood;
// whole says that there are none.
func (t *namesTold) sentence(words []string) (rest []string, whole bool) {
	var current []int     // those spoken of since the last sex
	var ahead model.Sex   // a sex said ahead of its names
	comma, ones := 0, 0   // where the last comma stood; how many names stand behind it
	first := len(t.names) // names of earlier sentences come again, new ones do not
	for k, w := range words {
		low := strings.Trim(strings.ToLower(w), "'\"")
		sex := t.r.sexWord(low)
		switch {
		case low == ",":
			comma, ones = k, 0
		case low == ":":
			ahead = "" // what stands before it counts them
		case isCount(low), low == "&" || low == "+" || low == "(" || low == ")" || low == "-" || low == "–" || low == "=" || betweenNames[low] && !(len(w) == 1 && w != low):
		case restWords[low]:
			for i, s := range t.sexes {
				if s == "" {
					current = append(current, i)
				}
			}
		case sex != "" && len(current) > 0:
			one := !strings.HasSuffix(low, "s") || low == "castrates"
			if one && !saidOfAll(words, k) {
				current = current[len(current)-1:]
			}
			for _, i := range current {
				t.sexes[i] = sex
			}
			current, ahead = nil, ""
		case sex != "":
			ahead = sex
		case k == len(words)-1 && len(t.names) > 0 && t.r.smallTalk(low) && w == low:
		default:
			name := capitalize(strings.Trim(w, "'\""))
			i := slices.Index(t.names, name)
			switch {
			case i < 0 && (first > 0 || !t.r.mayBeName(name) || t.r.wordOfThing(low) || w == low && (t.cased || t.r.tradeWord(low))):
				return words[max(comma, 0):], false
			case i < 0:
				i = len(t.names)
				t.cased = t.cased || w != low
				t.names, t.sexes = append(t.names, name), append(t.sexes, "")
			}
			ones++
			if ahead != "" {
				t.sexes[i] = ahead
				continue
			}
			current = append(current, i)
		}
	}
	return nil, true
}

// saidOfAll says that the sex at word k is said of all names before it: "are", "both".
func saidOfAll(words []string, k int) bool {
	for n := k - 1; n >= 0 && n >= k-3; n-- {
		switch strings.ToLower(words[n]) {
		case "are", "both", "all":
			return true
		}
	}
	return false
}

// tradeWord says that a small word means something of the trade, and so is no name
// where it is not written as one.
func (r *reader) tradeWord(low string) bool {
	m := r.lex.of[low]
	return m != nil && (m.isNum || m.isDay || m.isFrac || m.unit != 0 || m.month != 0)
}

// wordOfThing says that a word stands for the herd as a whole or for a thing of the place,
// which is then what is named.
func (r *reader) wordOfThing(low string) bool {
	m := r.lex.of[low]
	return m != nil && m.sense.any(setOf(sHerd, sFeeder, sBarrel, sPen, sWallow, sFence))
}

// sexesFirst brings the names whose sex is known before the others, and gives their sexes:
// said back in that order, it is plain which is whose.
func (t *namesTold) sexesFirst() (sexes []model.Sex) {
	var known, others []string
	for i, s := range t.sexes {
		if s == "" {
			others = append(others, t.names[i])
			continue
		}
		known, sexes = append(known, t.names[i]), append(sexes, s)
	}
	t.names = append(known, others...)
	return sexes
}
