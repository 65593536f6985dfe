package reading

// runsOn says that a question of how much begins at item n, which a talker has run together
// with what stands before: "everything looks good how much feed have we got left".
func (r *reader) runsOn(n, to int) bool {
	it := &r.items[n]
	if n == 0 || it.pig >= 0 || it.kind != itWord || firstWord(it.s) != "how" {
		return false
	}
	i, end := r.tokenRange(span{fAsk, n, to})
	if i+1 >= end || !runOnHow[r.toks[i+1].s] {
		return false
	}
	p := &r.items[n-1]
	if p.kind == itWord && !(p.s == "good" || p.s == "fine" || p.s == "ok" || p.s == "okay" || p.s == "great" || p.s == "now" || p.s == "well" || p.s == "today" || p.s == "home" || p.s == "there" || p.s == "here" || p.s == "all right" || p.s == "alright" || p.s == "happy") {
		return false
	}
	for k := i + 2; k < end && k <= i+5; k++ {
		if helpVerbs[r.toks[k].s] {
			return true
		}
	}
	return false
}

var runOnHow = listed("much, many, long, soon, big, heavy, far")
