package reading

// What is but likened to a death or an illness, or only looked like one.

// likened takes dying, being killed and lying down away from what is only compared to
// it or was only thought so: "screamed like she died", "thought otis was dead".
func (r *reader) likened() {
	for k := range r.items {
		it := &r.items[k]
		if it.pig >= 0 || it.kind != itWord || it.quest || !it.isAny(setOf(sDied, sSlaughtered, sDown)) && it.s != "shot" {
			continue
		}
		if r.comparedTo(k) || r.onlyPlayed(k) || it.is(sDown) && !it.is(sDied) && r.asleep(k) {
			it.sense = setOf(sFiller)
		}
	}
}

// likenReach is how far before a word what likens to it may stand.
const likenReach = 6

// comparedTo says that what item k tells is only compared to or only thought.
func (r *reader) comparedTo(k int) bool {
	for n := k - 1; n >= 0 && n >= k-likenReach && r.items[n+1].gap < gapComma; n-- {
		it := &r.items[n]
		switch {
		case it.is(sHearsay), factTells[lastWord(it.s)]:
			return false // "thought you should know that otis died"
		case it.s == "as if", it.s == "as though":
			return true
		case it.s == "if" || it.s == "though":
			if n > 0 && r.items[n-1].s == "as" {
				return true
			}
		case it.s == "thought" || it.s == "i thought" || it.s == "swear" || it.s == "thinking":
			return it.s != "swear" || n > 0 && wouldWords[r.items[n-1].s]
		case it.s == "think":
			return n > 0 && wouldWords[r.items[n-1].s]
		case it.s == "something" && n == k-1:
			return true // "smells like something died in there"
		case it.s == "like":
			return n > 0 && n < k-1 && r.items[n].gap == gapNone && r.doesAs(n-1) && (r.items[n+1].is(sPronoun) || r.items[n+1].s == "the" || r.items[n+1].s == "a")
		}
	}
	return false
}

// factTells say that what follows is told for a fact.
var factTells = setOfWords(split("know, tell, say, mention, note, log, you"))

// wouldWords before a "think" or a "swear" make it what one would take it for.
var wouldWords = setOfWords(split("you'd, youd, you would, would, i'd, id, you, could, could've, couldve"))

// doesAs says that item n is a verb of doing that a "like" may compare, and none of
// looking or seeming, which tells what is so.
func (r *reader) doesAs(n int) bool {
	it := &r.items[n]
	return it.kind == itWord && it.pig < 0 && !seemWords[it.s] && !it.isAny(setOf(sIs, sPronoun)) && (!it.is(sFiller) || wayWords[it.s])
}

// seemWords lead to what is so, not to what it is compared to.
var seemWords = setOfWords(split("look, looks, looking, looked, seem, seems, seemed, sound, sounds, feels, feel, it's, more"))

// wayWords may stand between what is done and what it is compared to.
var wayWords = setOfWords(split("on, around, out, down, back, up, off, her, him, it, them, go, went"))

// onlyPlayed says that the death at item k was only played or, as is said behind it, only
// seemed to be one: "plays dead", "looked dead for a sec but she was sunbathing".
func (r *reader) onlyPlayed(k int) bool {
	if k == 0 || r.items[k].gap > gapNone {
		return false
	}
	switch w := r.items[k-1].s; {
	case playWords[w]:
		return true
	case w == "looked" || w == "seemed":
		return r.sentenceNames(k+1, r.sentenceEnd(k), sleepWords)
	}
	return false
}

var (
	playWords  = setOfWords(split("play, plays, played, playing, acted, acting, acts, pretending, pretends, pretended"))
	sleepWords = setOfWords(split("asleep, sleeping, snoring, snored, napping, nap, snoozing, dozing, sunbathing, sunbathe, snoozed, sleepin"))
)

// asleep says that the pig that lies at item k sleeps: "flat out in the sun asleep".
func (r *reader) asleep(k int) bool {
	s := span{0, r.sentenceStart(k), r.sentenceEnd(k)}
	return r.sentenceNames(r.clauseFrom(k), r.clauseEnd(k), sleepWords) && !r.has(s, sNot) && !r.quoteHas(s, "put", "had to put")
}
