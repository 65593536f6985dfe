package reading

import (
	"math"
	"slices"
	"sync"
)

// A word of no lexicon is most often a slip: "rite to th lid". Which word was meant is
// told by how such a slip comes about and by the words beside it.

// usedWords are the words that people text from the pen, findable by their slips.
var usedWords = sync.OnceValue(func() *slipWords {
	set := map[string]bool{}
	for w := range usages().one {
		if len(w) > 1 && isLetters(w) {
			set[w] = true
		}
	}
	return indexSlips(set)
})

const (
	// slipNats is what a slip of cost 1 counts as beside the rarity of words.
	slipNats = 6.0
	// rarest is the most that a word taken for a slip may cost, its neighbours counted.
	rarest = 18.0
	// commonMeant and rarerMeant are what it counts against a slip that the word that
	// stands there is English, by how often it is used.
	commonMeant, rarerMeant = 7.0, 3.0
	// nameLead is by how much a slip from a word must be likelier than one from a name of
	// the herd.
	nameLead = 0.3
	// nearSlip is what a slip may take where a name may be meant.
	nearSlip = 0.9
	// mostGuesses is how many unknown words of a text are looked at: one of more than that
	// is in another language.
	mostGuesses = 24
	// surelyMeant is by how much one word must lead the next.
	surelyMeant = 1.2
)

// placeAhead are words that a place stands behind.
var placeAhead = map[string]bool{"to": true, "too": true, "in": true, "into": true, "onto": true, "on": true, "from": true, "of": true, "at": true, "the": true}

// likelyWord is the word that the one at token i, which no lexicon has, was meant for.
func (r *reader) likelyWord(i int) (string, bool) {
	t := &r.toks[i]
	if !isLetters(t.s) || t.capital && !t.upper && (i > 0 || len(r.c.Herd.Animals) == 0) {
		return "", false
	}
	if len(r.c.Herd.Animals) == 0 && i+1 < len(r.toks) && r.toks[i+1].kind != tokWord {
		return "", false // of a list of names
	}
	if r.guesses++; r.guesses > mostGuesses {
		return "", false
	}
	u := usages()
	before, behind := usageEdge, usageEdge
	if i > 0 {
		before = usageWord(&r.toks[i-1])
	}
	if i+1 < len(r.toks) {
		behind = usageWord(&r.toks[i+1])
	}
	var odd float64
	switch common := commonEnglish().has(t.s); {
	case !common && !rarerEnglish().has(t.s):
	case placeAhead[before] || r.namesGiven() || r.thingWord(i-1) || r.thingWord(i+1):
		return "", false // "moved to creek", "water barrel oak": what nobody has named yet
	case common:
		odd = commonMeant
	default:
		odd = rarerMeant
	}
	best, bestCost, second := "", math.Inf(1), math.Inf(1)
	ofName := r.nameSlip(t.s)
	named := before == usageEdge && behind == usageNumber // "stella 180": a name that nobody has told
	for _, w := range usedWords().meantFor(t.s, soundsOf(t.s)) {
		if m := r.lex.of[w.s]; m != nil && (m.drug != "" || m.sense.has(sDied)) || len(t.s) == 2 && !clippedFrom(t.s, w.s) || ofName < w.cost+nameLead || named && w.cost > nearSlip {
			continue // no drug and no death rests on a slip, and a name of the herd is likelier
		}
		cost := odd + slipNats*w.cost + u.after(before, w.s) + u.after(w.s, behind)
		switch {
		case cost < bestCost:
			best, bestCost, second = w.s, cost, bestCost
		case cost < second:
			second = cost
		}
	}
	if best == "" || bestCost > rarest || second-bestCost < surelyMeant {
		return "", false
	}
	return best, true
}

// clippedFrom says that two letters are what is left of a short word: "th", "ws".
func clippedFrom(said, w string) bool {
	return len(w) == 3 && w[0] == said[0] && (w[1] == said[1] || w[2] == said[1])
}

// namesGiven says that the text may give names: to a herd's first pigs, or to pens.
func (r *reader) namesGiven() bool {
	return len(r.c.Herd.Animals) == 0 || slices.ContainsFunc(r.toks, func(t token) bool {
		m := r.lex.of[t.s]
		return m != nil && m.sense.any(setOf(sPen, sNamed))
	})
}

// nameSlip is what the likeliest slip takes from a name of the herd.
func (r *reader) nameSlip(said string) float64 {
	least, heard := float64(noSlip), soundsOf(said)
	for _, w := range r.nameSounds() {
		least = min(least, slipCost(said, w.word, heard, w.sounds))
	}
	return least
}

// heardWord is a word of a name with its sounds.
type heardWord struct {
	word   string
	sounds sounds
	name   int // in the reader's names
}

// nameSounds are the words of the herd's names that may be misheard, made where a
// text needs them.
func (r *reader) nameSounds() []heardWord {
	if r.heard == nil {
		r.heard = []heardWord{}
		for k := range r.names {
			for _, w := range r.names[k].words {
				if len(w) > 2 && genericThing[w] == 0 {
					r.heard = append(r.heard, heardWord{w, soundsOf(w), k})
				}
			}
		}
	}
	return r.heard
}
