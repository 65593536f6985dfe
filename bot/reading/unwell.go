package reading

import "strings"

// What ails a pig is often told without a word of sickness: "walks not good",
// "hasn't been eating", "breathing funny".

// bodyVerbs are what a well animal does; the ones marked are missed when they are
// not done at all.
var bodyVerbs = map[string]bool{
	"eat": true, "eats": true, "eating": true, "eaten": true, "drink": true, "drinks": true, "drinking": true, "poop": true, "pooping": true,
	"walk": false, "walks": false, "walking": false, "breathe": false, "breathes": false, "breathing": false, "breath": false, "act": false, "acts": false, "acting": false,
	"look": false, "looks": false, "looking": false, "seem": false, "seems": false, "feels": false, "feeling": false, "moving": false, "moves": false, "sounds": false, "sounding": false,
	"stand": false, "stands": false, "standing": false, "grunting": false, "touching": true, "touch": true, "touched": true,
}

// illWords behind such a verb say that it is done badly.
var illWords = map[string]bool{
	"bad": true, "badly": true, "funny": true, "weird": true, "strange": true, "strangely": true, "odd": true, "oddly": true, "poorly": true, "crooked": true,
	"wobbly": true, "hardly": true, "barely": true, "tired": true, "sad": true, "miserable": true, "depressed": true, "down": false, "terrible": true, "awful": true, "rough": true,
	"unsteady": true, "shaky": true, "gimpy": true, "ragged": true, "pale": true, "dull": true, "sickly": true, "crappy": true, "puny": true, "wrong": true, "lame": true, "stiff": true,
	"hunched": true, "sideways": true, "heavily": true, "worse": true,
}

// wellWords behind a "not" say that it is not done as it should be.
var wellWords = map[string]bool{
	"good": true, "well": true, "right": true, "much": true, "normal": true, "normally": true, "enough": true, "properly": true, "proper": true, "anything": true,
	"correct": true, "correctly": true, "great": true, "himself": true, "herself": true, "straight": true, "happy": true, "healthy": true, "as usual": true, "so good": true,
	"too good": true, "so hot": true, "too hot": true, "very well": true, "fine": true, "her": true, "his": true, "their": true, "its": true, "food": true, "feed": true, "the": true,
}

// unwell gives the sense of sickness to what is told of a pig that does a thing of
// the body badly or not at all.
func (r *reader) unwell() {
	r.reasonsOfDrugs()
	for k := range r.items {
		it := &r.items[k]
		missed, verb := bodyVerbs[it.s]
		if !verb || it.pig >= 0 || it.quest || it.is(sSick) || !r.pigDoes(k) {
			continue
		}
		if n := r.doneBadly(k, missed); n >= 0 {
			for x := min(n, k); x <= max(n, k); x++ {
				r.items[x].sense.drop(sNot)
			}
			it.sense = setOf(sSick)
			r.items[n].used = true
		}
	}
}

// doneBadly is the item that says the verb at k is done badly or not at all, -1 if
// none does.
func (r *reader) doneBadly(k int, missed bool) int {
	for n := k + 1; n < len(r.items) && n <= k+3 && r.items[n].gap < gapAnd; n++ {
		it := &r.items[n]
		switch {
		case it.kind != itWord && !it.soft:
			return -1
		case illWords[it.s]:
			return n
		case it.is(sNot) && n+1 < len(r.items) && r.items[n+1].gap < gapAnd && r.items[n+1].kind == itWord:
			for m := n + 1; m < len(r.items) && m <= n+2; m++ {
				if wellWords[r.items[m].s] {
					return n
				}
			}
			return -1
		}
	}
	for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap < gapAnd; n-- {
		it := &r.items[n]
		if it.s == "hardly" || it.s == "barely" || it.s == "scarcely" {
			return n
		}
		if !it.is(sNot) || it.is(sPlan) && !missed {
			if it.kind == itWord && it.is(sFiller) && !it.is(sPlan) && it.pig < 0 {
				continue
			}
			return -1
		}
		if missed && it.s != "forgot" && it.s != "forgot to" {
			return n
		}
		for m := k + 1; m < len(r.items) && m <= k+2 && r.items[m].gap < gapAnd; m++ {
			if w := r.items[m].s; wellWords[w] && w != "the" && w != "her" && w != "his" && w != "their" && w != "its" && w != "enough" {
				return n
			}
		}
		return -1
	}
	return -1
}

// pigDoes says that a pig is spoken of before the verb at k in its clause, or is
// meant there since its sentence spoke of one.
func (r *reader) pigDoes(k int) bool {
	for n := k - 1; n >= 0 && n >= k-8; n-- {
		it := &r.items[n]
		if it.pig >= 0 || it.group >= 0 || heOrShe[it.s] || it.isAny(whoWords) || it.s == "they" || it.soft && it.kind == itNum {
			return true
		}
		if it.s == "i" || it.s == "we" || it.s == "my" && n == k-1 || it.number() && !it.soft || r.items[n+1].gap >= gapStop {
			return false
		}
	}
	return false
}

// reasonsOfDrugs takes the sense of sickness from what a drug was given for: "gave
// hazel meloxicam for her leg" tells of the treatment.
func (r *reader) reasonsOfDrugs() {
	for k := range r.items {
		it := &r.items[k]
		if it.is(sGave) && (strings.HasPrefix(it.s, "vet ") || strings.HasPrefix(it.s, "the vet ")) {
			it.s = "vet came" // whatever the visit was called
		}
		if !it.is(sSick) || it.is(sTreat) || it.is(sWorm) || k == 0 {
			continue
		}
		from := -1
		for n := k - 1; n >= 0 && n >= k-3 && r.items[n+1].gap == gapNone; n-- {
			if r.items[n].s == "for" {
				from = n
				break
			}
			if !r.items[n].isAny(setOf(sFiller, sPronoun)) && r.items[n].s != "bad" && r.items[n].s != "sore" {
				break
			}
		}
		for n := from - 1; n >= 0 && n >= r.sentenceStart(k); n-- {
			if r.items[n].isAny(setOf(sProduct, sTreat, sWorm)) {
				it.sense.drop(sSick)
				it.sense.add(sFiller)
				break
			}
		}
	}
}
