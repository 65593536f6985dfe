package reading

import "troughbell/model"

// seenDryBefore is the water that a "filled it" speaks of, where the sentence before
// told how low it was and this one names nothing and no feed.
func (r *reader) seenDryBefore(s span) (model.Water, bool) {
	if len(r.out) == 0 || r.has(s, sFeed) || r.has(s, sFeeder) || s.i == 0 {
		return model.Water{}, false
	}
	last := &r.out[len(r.out)-1]
	f, ok := last.Act.(Fact)
	if !ok || last.To > r.items[s.i].from || last.To < r.items[r.sentenceStart(s.i-1)].from {
		return model.Water{}, false
	}
	w, ok := f.Fact.(model.Water)
	if !ok || !w.Seen || w.Full {
		return model.Water{}, false
	}
	return model.Water{Barrel: w.Barrel, Full: true}, true
}

// pairOfPours says that the two numbers at item k are what went into two feeders, which
// the sentence says to be full: "150/70, both full".
func (r *reader) pairOfPours(k int) bool {
	it := &r.items[k]
	if it.v <= hottestF || it.v2 <= 16 || it.unit != 0 || len(r.c.Herd.Feeders) != 2 {
		return false
	}
	full := false
	for n := r.sentenceStart(k); n < r.sentenceEnd(k); n++ {
		x := &r.items[n]
		if x.quest || x.pig >= 0 || x.barrel >= 0 || x.number() && !x.soft || x.isAny(setOf(sWater, sBarrel, sWeather, sHigh, sLow, sHumid, sWeigh, sGirth, sTape)) && !x.is(sFiller) {
			return false
		}
		full = full || x.is(sFull)
	}
	return full
}
