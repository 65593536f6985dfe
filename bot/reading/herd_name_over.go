package reading

// nameOver says that a herd's name, which begins with a capital, is over at item k, where
// talk goes on: "call us willow bottom | we're on mountain time", "cricket hollow | i guess".
func (r *reader) nameOver(k int) bool {
	it := &r.items[k]
	if w := firstWord(it.s); personOfTalk[w] && (!it.capital || len(w) < 2 || w[0] == 'i') {
		return true
	}
	if it.capital || it.kind != itWord || k+1 < len(r.items) && r.items[k+1].capital && nameJoiners[it.s] {
		return false
	}
	return it.isAny(setOf(sPronoun, sIs, sPlan, sThanks, sHearsay, sAbout)) || talkOn[it.s]
}

var (
	personOfTalk = listed("i, i'm, im, i'll, i've, i'd, we, we're, were, we've, we'll, you, they, they're, it's, that's, thats, there's, because, since, so, but, if")
	nameJoiners  = listed("of, the, at, on, by, in, and, n, is")
	talkOn       = listed("for, please, then, too, maybe, probably, really, though, tho, lol, haha, would, will, should, what, how, when")
)
