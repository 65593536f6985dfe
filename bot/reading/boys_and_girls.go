package reading

// A boy or a girl may be a child who helps, and then is no pig: "the miller boy texted",
// "neighbor girl fed them".

// helpersNotPigs takes the sense of a pig from one boy or girl that does what no pig does,
// or stands behind a family's name.
func (r *reader) helpersNotPigs() {
	for k := range r.items {
		if s := r.items[k].s; s != "boy" && s != "girl" && s != "young man" && s != "lad" || r.items[k].pig >= 0 && !r.items[k].near {
			continue
		}
		if k+1 < len(r.items) && r.items[k+1].gap == gapNone && childDoes[firstWord(r.items[k+1].s)] || r.ofFamily(k) {
			r.blank(k)
		}
	}
}

// ofFamily says that a family's name or a neighbor stands before item k.
func (r *reader) ofFamily(k int) bool {
	if k == 0 || r.items[k].gap != gapNone {
		return false
	}
	p := &r.items[k-1]
	if p.pig >= 0 || p.kind != itWord {
		return false
	}
	return p.is(sForeign) || hiredWords[p.s] || p.capital && k > 1 && p.sense.empty()
}

var (
	childDoes  = listed("texted, text, texts, called, calls, phoned, says, said, told, tells, reports, reported, wrote, filled, fills, watered, waters, poured, dumped, weighed, helped, helps, next, down, across, who, that, from, does, did, do, doing, forgot, left, checked, noticed, saw, fed, took, mowed, came")
	hiredWords = listed("hired, farm, chore, neighbour's, neighbor's, neighbors, church, nephew")
)
