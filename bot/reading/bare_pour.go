package reading

// barePours settles clauses that are but a number and an "in", which may tell what was
// poured and no temperature: "100 in this a.m.". What of is asked.
func (r *reader) barePours() {
	if len(r.c.Herd.Feeders) == 0 {
		return
	}
	for k := 0; k+1 < len(r.items); k++ {
		it, in := &r.items[k], &r.items[k+1]
		if it.kind != itNum || it.soft || it.ord || it.rng || it.quest || in.s != "in" || in.gap != gapNone || k != r.clauseFrom(k) || it.v < leastBarePour {
			continue
		}
		end := r.clauseEnd(k)
		for n := k + 2; n < end; n++ {
			if x := &r.items[n]; x.kind != itDay && x.kind != itClock && !(x.kind == itWord && x.sense == setOf(sFiller) && !isPlace[x.s]) {
				end = 0
			}
		}
		if end > 0 {
			r.settled = append(r.settled, span{fFeed, k, end})
		}
	}
}

// leastBarePour is the least bare number that is asked about as a pour.
const leastBarePour = 10

// isPlace are small words that lead on to a place: "100 in the shade".
var isPlace = setOfWords(split("the, a, an, my, our, here, there"))
