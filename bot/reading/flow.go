package reading

import "troughbell/model"

// flowStart says that the word of item k may begin the telling of how a drinker
// runs.
func (r *reader) flowStart(k int) bool {
	switch firstWord(r.items[k].s) {
	case "flow", "flows", "nipple", "nipples", "drinker", "drinkers", "pint", "quart", "qt", "jar":
		return true
	}
	return r.items[k].qty(volume) && r.items[k].si() <= 4
}

// flowSpan is the items around item k that tell how fast a drinker runs, which asks
// for a verdict: "nipple runs a pint in 40 seconds".
func (r *reader) flowSpan(k int) span {
	for _, s := range r.pieces(k) {
		if r.tellsFlow(s) {
			return s
		}
	}
	return span{}
}

func (r *reader) tellsFlow(s span) bool {
	for n := s.i; n < s.j; n++ {
		if it := &r.items[n]; it.pig >= 0 || it.qty(mass) || it.isAny(setOf(sFill, sFull, sEmpty, sWallow, sFeeder, sProduct, sTreat, sWorm)) {
			return false
		}
	}
	return r.flowTold(s) != nil
}

// litresOf are measures that are no unit of a barrel, in litres.
var litresOf = map[string]float64{
	"cup": lPerGal / 16, "cups": lPerGal / 16, "pint": lPerGal / 8, "pints": lPerGal / 8, "quart": lPerGal / 4, "quarts": lPerGal / 4, "qt": lPerGal / 4,
	"ml": 0.001, "litre": 1, "liter": 1, "l": 1, "jar": lPerGal / 4,
}

// flowTold is the flow that a span tells in litres a minute: a volume in so many
// seconds, or a volume a minute; nil where it tells none.
func (r *reader) flowTold(s span) *float64 {
	litres, seconds := 0.0, 0.0
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		next, after := "", ""
		if k+1 < s.j {
			next = r.items[k+1].s
		}
		if k+2 < s.j {
			after = r.items[k+2].s
		}
		switch {
		case it.qty(volume) && litres == 0:
			litres = it.si()
		case it.kind == itNum && litresOf[next] > 0 && litres == 0:
			litres = it.v * litresOf[next]
		case it.kind == itFrac && litresOf[next] > 0 && litres == 0:
			litres = it.v * litresOf[next]
		case it.kind == itFrac && (next == "a" || next == "an" || next == "of") && litresOf[after] > 0 && litres == 0:
			litres = it.v * litresOf[after]
		case litresOf[it.s] > 0 && litres == 0 && it.kind == itWord:
			litres = litresOf[it.s]
		case it.kind == itNum && seconds == 0 && (next == "s" || next == "sec" || next == "secs" || next == "second" || next == "seconds"):
			seconds = it.v
		case it.kind == itQty && it.unit == unitMinute && seconds == 0:
			seconds = it.v * 60
		case it.kind == itWord && it.unit == unitMinute && seconds == 0 && litres > 0:
			seconds = 60
		case it.s == "gpm" && k > s.i && r.items[k-1].number():
			return model.Float(r.items[k-1].v * lPerGal)
		}
	}
	if litres <= 0 || seconds <= 0 {
		return nil
	}
	flow := litres / seconds * 60
	if flow > 20 { // a hose, not a drinker
		return nil
	}
	return &flow
}
