package reading

import (
	"slices"
	"strings"

	"troughbell/model"
)

// herdName is one way in which the text may speak of a thing of the herd.
type herdName struct {
	words  []string
	pig    int16
	feeder int8
	barrel int8
	pen    int8
	group  int8
	part   bool // a part of a longer name, such as "north" of "north hopper"
	tag    bool // a pig called by a number
	number bool // the number at the end of a name: only behind its kind's word
	sized  bool // begins with a size, which has other names
}

// genericThing are the words in things' names that say what kind they are.
var genericThing = map[string]sense{
	"feeder": sFeeder, "hopper": sFeeder, "trough": sFeeder, "bin": sFeeder, "barrel": sBarrel, "drum": sBarrel, "tank": sBarrel,
	"tote": sBarrel, "tub": sBarrel, "cube": sBarrel, "ibc": sBarrel, "pen": sPen, "paddock": sPen, "lot": sPen, "pasture": sPen, "field": sPen, "run": sPen, "cistern": sBarrel,
	"water": sWater, "feed": sFeed, "yard": sPen, "plot": sPen, "waterer": sBarrel, "keg": sBarrel,
}

// herdNames lists what the herd's own things may be called. Parts of names that
// several things share are left out.
func herdNames(h *model.Herd, pigs []*model.Animal) []herdName {
	if h == nil {
		return nil
	}
	out := make([]herdName, 0, len(pigs)+4*(len(h.Feeders)+len(h.Barrels)+len(h.Pens)))
	none := herdName{pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1}
	for i, a := range pigs {
		if words := nameWords(a.Name); len(words) > 0 {
			n := none
			n.pig, n.words = int16(i), words
			n.tag = len(words) == 1 && isDigit(words[0][0])
			out = append(out, n)
			if s, ok := numberAlone(words, pigs, i); ok {
				n.words, n.tag = s, true
				out = append(out, n)
			}
		}
	}
	for i, g := range h.Groups {
		if words := nameWords(g.Name); len(words) > 0 && i < 100 {
			n := none
			n.group, n.words = int8(i), words
			out = append(out, n)
		}
	}
	var kinds [3][][]string
	for _, f := range h.Feeders {
		kinds[0] = append(kinds[0], nameWords(f.Name))
	}
	for _, b := range h.Barrels {
		kinds[1] = append(kinds[1], nameWords(b.Name))
	}
	for _, p := range h.Pens {
		kinds[2] = append(kinds[2], nameWords(p.Name))
	}
	for k, names := range kinds {
		for i, words := range names {
			if i > 100 {
				break
			}
			n := none
			switch k {
			case 0:
				n.feeder = int8(i)
			case 1:
				n.barrel = int8(i)
			case 2:
				n.pen = int8(i)
			}
			n.words = words
			if len(n.words) == 0 || len(n.words) == 1 && genericThing[n.words[0]] != 0 && len(names) == 1 {
				continue // "barrel": the general word finds it
			}
			out = append(out, n)
			if p, ok := partOf(n, names, i); ok {
				out = append(out, p)
				if w := otherSize[p.words[0]]; w != "" && len(p.words) == 1 && !sizeSaid(w, names) {
					p.words = []string{w}
					out = append(out, p)
				}
			}
		}
	}
	for k := range out {
		out[k].sized = sizeWord(out[k].words[0])
	}
	return out
}

// plainName says that a name is words of small and capital letters of ASCII.
func plainName(name string) bool {
	for i := range len(name) {
		if c := name[i] | 0x20; (c < 'a' || c > 'z') && name[i] != ' ' {
			return false
		}
	}
	return true
}

// nameWords are the words of a name as they stand in a text.
func nameWords(name string) []string {
	if plainName(name) { // most names, and all of them are looked at for each text
		return strings.Fields(strings.ToLower(name))
	}
	var own []string
	for _, t := range scan(nil, name, false) {
		if t.kind == tokWord || t.kind == tokNum {
			if w := strings.TrimSuffix(t.s, "'s"); w != "" {
				own = append(own, w)
			}
		}
	}
	return own
}

// partOf gives what of a thing's name singles it out among its kind.
func partOf(n herdName, all [][]string, i int) (herdName, bool) {
	if !slices.ContainsFunc(n.words, generalWord) || !slices.ContainsFunc(n.words, ownWord) {
		return herdName{}, false
	}
	rest := ownPart(n.words)
	for j := range all {
		if j != i && slices.Equal(ownPart(all[j]), rest) {
			return herdName{}, false
		}
	}
	p := n
	p.words, p.part = rest, true
	p.number = len(rest) == 1 && isDigit(rest[0][0])
	return p, true
}

// ownPart are the words of a name that other things of its kind do not bear.
func ownPart(words []string) []string {
	var own []string
	for _, w := range words {
		if ownWord(w) {
			own = append(own, w)
		}
	}
	return own
}

func ownWord(w string) bool { return !generalWord(w) }

func generalWord(w string) bool { return genericThing[w] != 0 || w == "the" || w == "old" }

// otherSize are words of a thing's name that are said for one another.
var otherSize = map[string]string{"small": "little", "little": "small", "big": "large", "large": "big", "gray": "grey", "grey": "gray"}

// sizeSaid says that one of the names has the word.
func sizeSaid(w string, names [][]string) bool {
	for _, words := range names {
		if slices.Contains(words, w) {
			return true
		}
	}
	return false
}

// nameAt finds the longest of the herd's names at token i. Several things of
// different kinds may have one name; they come back together.
func (r *reader) nameAt(i int) (herdName, int) {
	best := herdName{pig: -1, feeder: -1, barrel: -1, pen: -1, group: -1}
	n := 0
	if r.toks[i].s == "" {
		return best, 0
	}
	first := r.toks[i].s[0]
	if !r.nameStarts.has(first) {
		return best, 0
	}
	for k := range r.names {
		h := &r.names[k]
		if h.words[0][0] != first && !h.sized {
			continue
		}
		if h.tag && r.toks[i].tag != tagPig && r.toks[i].tag != tagDoubt {
			continue
		}
		if h.number && !r.afterKind(i, h) || len(h.words) == 1 && len(h.words[0]) == 1 && !h.number && !h.tag && !r.letterHere(i) {
			continue
		}
		if r.toks[i].s == "little" && i > 0 && r.toks[i-1].s == "a" {
			continue // "a little extra" is no small one
		}
		if h.part && len(h.words) == 1 && r.lex.of[h.words[0]] != nil && r.lex.of[h.words[0]].sense.has(sFiller) && !r.thingHere(i) {
			continue // "got her back" where a pen is the Back Lot
		}
		m := matchName(h.words, r.toks[i:])
		if m == 0 || m < n {
			continue
		}
		if m > n {
			best, n = *h, m
			continue
		}
		if h.pig >= 0 && best.pig < 0 {
			best.pig = h.pig
		}
		if h.feeder >= 0 && best.feeder < 0 {
			best.feeder = h.feeder
		}
		if h.barrel >= 0 && best.barrel < 0 {
			best.barrel = h.barrel
		}
		if h.pen >= 0 && best.pen < 0 {
			best.pen = h.pen
		}
		if h.group >= 0 && best.group < 0 {
			best.group = h.group
		}
	}
	return best, n
}

// letterHere says that the single letter at token i is a name: written large, or
// behind the word for a kind of thing or "to".
func (r *reader) letterHere(i int) bool {
	if r.toks[i].capital && i > 0 {
		return true
	}
	return i > 0 && (genericThing[r.toks[i-1].s] != 0 || r.toks[i-1].s == "to" || r.toks[i-1].s == "into") && (i+1 >= len(r.toks) || r.toks[i+1].kind != tokWord)
}

// afterKind says that the number at token i follows the word of the kind of
// thing that it would be the number of, such as "barrels 1 and 2".
func (r *reader) afterKind(i int, h *herdName) bool {
	if i > 0 && r.toks[i-1].kind == tokNum {
		return false
	}
	for j := i - 1; j >= 0 && i-j < 6; j-- {
		t := &r.toks[j]
		if t.s == "#" || t.s == "and" || t.s == "&" || t.s == "," || t.s == "no" || t.s == "number" || t.kind == tokNum && t.v < 20 {
			continue
		}
		m := r.lex.of[t.s]
		if m == nil {
			return false
		}
		switch {
		case h.feeder >= 0:
			return m.sense.has(sFeeder) || m.sense.has(sBarrel)
		case h.barrel >= 0:
			return m.sense.has(sBarrel) || m.sense.has(sWater) || m.sense.has(sWatered)
		case h.pen >= 0:
			return m.sense.has(sPen) || m.sense.has(sMove) && t.s != "put"
		}
		return false
	}
	return false
}

// compass are letters for the quarters that things are told apart by.
var compass = map[string]string{"n": "north", "s": "south", "e": "east", "w": "west"}

// sizeAlias are other words for the sizes that things are told apart by.
var sizeAlias = map[string]string{
	"sm": "small", "lil": "small", "little": "small", "smaller": "small", "tiny": "small", "smal": "small", "sml": "small",
	"lg": "big", "large": "big", "larger": "big", "bigger": "big", "bg": "big", "bigg": "big",
}

// sizeStarts are what those begin with.
const sizeStarts = "slbt"

// byteSet is a set of bytes.
type byteSet [4]uint64

func (s *byteSet) add(b byte)      { s[b>>6] |= 1 << (b & 63) }
func (s *byteSet) has(b byte) bool { return s[b>>6]&(1<<(b&63)) != 0 }

func (s *byteSet) addAll(bytes string) {
	for i := range len(bytes) {
		s.add(bytes[i])
	}
}

// sizeWord says that a name's word is one that people say in other words.
func sizeWord(w string) bool {
	switch w {
	case "big", "large", "small", "little":
		return true
	}
	return false
}

// matchName gives the number of tokens that the name's words take, 0 if they
// do not stand there.
func matchName(words []string, toks []token) int {
	k := 0
	for _, w := range words {
		if k < len(toks) && k > 0 && toks[k].s == "#" {
			k++
		}
		if k >= len(toks) {
			return 0
		}
		s := toks[k].s
		if len(s) == 1 && k+1 < len(toks) {
			switch {
			case genericThing[toks[k+1].s] != 0 && compass[s] == w:
				s = w // "n hopper"
			case s == "b" && w == "barrel" && toks[k+1].kind == tokNum && !toks[k+1].spaced:
				s = w // "b1"
			}
		}
		if s != w && sizeWord(w) {
			if other := sizeAlias[s]; other == w || other == "big" && w == "large" || other == "small" && w == "little" {
				s = w
			}
		}
		if k > 0 && isDigit(w[0]) {
			if v, ok := numberWords[s]; ok && w == itoa(int(v)) {
				s = w // "barrel one"
			}
		}
		if s != w && !(toks[k].kind == tokWord && len(s) > len(w) && s[:len(w)] == w && (s[len(w):] == "'s" || s[len(w):] == "s" && len(w) > 2 && w[len(w)-1] != 's')) {
			return 0
		}
		k++
	}
	return k
}

// nearName finds the one living pig or thing whose one-word name is a slip away
// from the word.
func (r *reader) nearName(s string) (herdName, bool) {
	var found herdName
	hits := 0
	for k := range r.names {
		h := &r.names[k]
		if len(h.words) != 1 || h.number || h.tag || len(h.words[0]) < 3 || len(s) < 3 {
			continue
		}
		w := h.words[0]
		limit := 1
		if len(w) >= 7 {
			limit = 2
		}
		if len(w) == 3 && !(len(s) == 4 && s[:3] == w) && !swapped(s, w) && !(len(s) == 4 && s[0] == w[0] && s[3] == w[2]) {
			continue
		}
		if w[0] != s[0] && (len(w) < 5 || s[1] != w[0]) {
			continue
		}
		if distance(s, w) <= limit || h.pig >= 0 && len(s) > 2 && !strings.ContainsAny(s, "aeiouy") && consonants(s) == consonants(w) {
			if hits > 0 && found.pig == h.pig && found.feeder == h.feeder && found.barrel == h.barrel && found.pen == h.pen {
				continue
			}
			found = *h
			hits++
		}
	}
	return found, hits == 1
}

// cutName finds the one living pig whose name begins with the word, of three
// letters or more: "clov 185, pep 171".
func (r *reader) cutName(s string) (int16, bool) {
	if len(s) < 3 {
		return -1, false
	}
	found, hits := int16(-1), 0
	for k := range r.names {
		h := &r.names[k]
		if h.pig >= 0 && int(h.pig) < r.alive && len(h.words) == 1 && len(h.words[0]) > len(s) && strings.HasPrefix(h.words[0], s) {
			found = h.pig
			hits++
		}
	}
	return found, hits == 1
}

// initial finds the one pig whose name begins with the letter.
func (r *reader) initial(letter byte) (int16, bool) {
	found, hits := int16(-1), 0
	for k := range r.names {
		h := &r.names[k]
		if h.pig >= 0 && len(h.words) > 0 && h.words[0] != "" && h.words[0][0] == letter {
			found = h.pig
			hits++
		}
	}
	return found, hits == 1
}
