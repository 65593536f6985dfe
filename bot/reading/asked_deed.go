package reading

// asksDeed says that behind a "did" at token i stands who is asked about and then the
// plain form of a deed: "did bill fill the feeder yesterday", "did my wife move them".
func (r *reader) asksDeed(i int) bool {
	who := 0
	for k := i + 1; k < len(r.toks) && k <= i+askedWhoReach && r.toks[k].kind == tokWord; k++ {
		w := r.toks[k].s
		if who > 0 && plainDeeds[w] {
			return true
		}
		switch m := r.lex.of[w]; {
		case plainDeeds[w]: // "did feed water and bedding"
			return false
		case m != nil && m.sense.any(setOf(sFeed, sWater, sFeeder, sBarrel, sWallow, sPen, sPigs, sAll, sBoth, sRest, sDone)):
			return false
		case m == nil, r.toks[k].capital, !m.sense.has(sFiller):
			who++
		}
	}
	return false
}

// askedWhoReach is within how many words behind "did" the deed is named.
const askedWhoReach = 4

// plainDeeds are the deeds of a keeper in the form that stands behind "did".
var plainDeeds = listed("fill, refill, feed, water, top, put, worm, deworm, move, weigh, tape, give, buy, order, mix, grind, check, empty, clean, do, pour, add, sell, pay, treat, haul, hose, pick, get, say, come, finish, remember, ever, already")
