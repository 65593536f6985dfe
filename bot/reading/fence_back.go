package reading

// backOn keeps a reading of the fence with the outage that it ended: "fence was off when i
// got there. breaker. back on 6.1", "fence was dead, fixed it, reads 6.1 now".
func (r *reader) backOn() {
	for k := range r.items {
		it := &r.items[k]
		if !it.is(sFence) || it.kind != itWord || it.quest || r.force[k] != 0 {
			continue
		}
		dead := false
		for n := k + 1; n < len(r.items) && n <= k+farthestBack; n++ {
			x := &r.items[n]
			if x.pig >= 0 || x.kind == itThing || x.quest || x.unit != 0 && !x.qty(voltage) || x.isAny(setOf(sFeeder, sFeed, sBarrel, sWater, sWeather, sWeigh, sGirth, sPay)) && x.kind == itWord {
				break
			}
			dead = dead || x.isAny(setOf(sDead, sDown)) || x.s == "off" || isDead[x.s]
			if x.kind != itNum && !x.qty(voltage) || x.soft || x.ord {
				continue
			}
			if dead && x.v > 0 && x.v <= mostKv && r.readsBack(n) {
				for m := k + 1; m <= n; m++ {
					r.items[m].gap = min(r.items[m].gap, gapComma)
					r.items[m].sense.drop(sSick)
					r.items[m].sense.drop(sDied)
				}
				r.forceRange(k, n+1, fFence)
			}
			break
		}
	}
}

// farthestBack is how many words an outage and what ended it take, and mostKv what a pig
// fence reads at most. Common practice, no source.
const (
	farthestBack = 14
	mostKv       = 12
)

// readsBack says that the number at item n is told as what is read now.
func (r *reader) readsBack(n int) bool {
	if n+1 < len(r.items) && (r.items[n+1].is(sNow) || r.items[n+1].s == "again") {
		return true
	}
	for p := n - 1; p >= 0 && p >= n-3; p-- {
		if nowReads[r.items[p].s] || r.items[p].is(sNow) {
			return true
		}
	}
	return false
}

var nowReads = setOfWords(split("back on, back up, back to, back at, back, reads, reading, at, it's, its, is, now, showing, shows, says, up to, up at, got, getting"))
