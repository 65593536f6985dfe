package reading

// muses says that the "if" at item k is what somebody thinks about: "i was thinking if
// we got two more pigs would the feed last".
func (r *reader) muses(k int) bool {
	return k > 0 && firstWord(r.items[k].s) == "if" && musing[lastWord(r.items[k-1].s)]
}

var musing = listed("thinking, wondering, thought, talking, about, musing, dreaming, debating, asking, what")

// supposedBefore says that what item k stands in is supposed or but thought about.
func (r *reader) supposedBefore(k int) bool {
	for n := r.sentenceStart(k); n < k; n++ {
		if it := &r.items[n]; it.pig < 0 && (firstWord(it.s) == "if" || supposeHeads[firstWord(it.s)] || musing[lastWord(it.s)] && it.s != "about") {
			return true
		}
	}
	return false
}
