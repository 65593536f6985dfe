package reading

import (
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// seenDryBefore is the water that a "filled it" speaks of, where the sentence before
// told how low it was and this one names nothing and no feed.
func (r *reader) seenDryBefore(s span) (model.Water, bool) {
	if len(r.out) == 0 || r.has(s, sFeed) || r.has(s, sFeeder) || s.i == 0 {
		return model.Water{}, false
	}
	last := &r.out[len(r.out)-1]
	if _, none := last.Act.(None); none && len(r.out) > 1 { // "bone dry when i got there"
		last = &r.out[len(r.out)-2]
	}
	f, ok := last.Act.(Fact)
	if !ok || last.To > r.items[s.i].from || last.To < r.items[r.sentenceStart(max(r.sentenceStart(s.i)-1, 0))].from {
		return model.Water{}, false
	}
	w, ok := f.Fact.(model.Water)
	if !ok || !w.Seen || w.Full {
		return model.Water{}, false
	}
	return model.Water{Barrel: w.Barrel, Full: true}, true
}

// ofIt says that a sentence begins with the "it" that the span speaks of: "its up to the
// rim now".
func (r *reader) ofIt(s span) bool {
	switch k := r.sentenceStart(s.i); r.items[k].s {
	case "its", "it's", "it is", "it", "now it's", "it was":
		return s.i-k <= 1
	}
	return false
}

// bothBarrels is the water that a "filled both" speaks of, or a "filled all", where
// nothing but water was told before it, in this text or right before by the same
// person: of the barrels that were named then. None where it names anything itself.
func (r *reader) bothBarrels(s span) []model.Water {
	both := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.isAny(setOf(sBoth, sAll)) && !it.is(sPigs):
			both = true
		case it.kind == itDay, it.kind == itClock, it.kind == itWord && it.isAny(setOf(sFill, sFiller, sPronoun, sAnd, sFull)) && !it.isAny(setOf(sFeed, sFeeder, sWater, sBarrel, sWallow, sPigs)):
		default:
			return nil
		}
	}
	if !both {
		return nil
	}
	before := r.out
	if len(before) == 0 {
		before = r.latelyTold()
	}
	var named []string
	for _, e := range before {
		if _, ask := e.Act.(Ask); ask {
			continue
		}
		f, ok := e.Act.(Fact)
		if !ok {
			return nil
		}
		w, ok := f.Fact.(model.Water)
		if !ok || w.Barrel == "" {
			return nil
		}
		if !slices.Contains(named, w.Barrel) {
			named = append(named, w.Barrel)
		}
	}
	if len(named) < 2 || len(named) > 2 && r.has(s, sBoth) {
		return nil
	}
	if len(named) == len(r.c.Herd.Barrels) {
		return []model.Water{{Full: true}}
	}
	var out []model.Water
	for _, n := range named {
		out = append(out, model.Water{Barrel: n, Full: true})
	}
	return out
}

// latelyTold are the entries of the message before this one, where it was sent just
// before.
func (r *reader) latelyTold() []Entry {
	var out []Entry
	for k := range r.c.Before {
		b := &r.c.Before[k]
		if r.c.Now.Sub(b.At) > justTold || b.Text != r.c.Before[0].Text {
			break
		}
		out = append(out, b.Entry)
	}
	return out
}

// justTold is for how long a message goes on where the one before it ended.
const justTold = 30 * time.Minute

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

// amountsBehind joins a sentence of nothing but amounts to the one before it that says
// the feeders are done: "hoppers done. 150/70".
func (r *reader) amountsBehind() {
	for k := 1; k < len(r.items); k++ {
		if r.items[k].gap < gapStop || !r.onlyPours(k, r.sentenceEnd(k)) {
			continue
		}
		feeders, done := false, false
		for n := k - 1; n >= r.sentenceStart(k-1); n-- {
			it := &r.items[n]
			if it.number() && !it.soft && it.v != float64(len(r.c.Herd.Feeders)) || it.pig >= 0 || it.quest || it.isAny(setOf(sNot, sPlan, sBarrel, sWater)) && !it.is(sFeeder) {
				return
			}
			feeders = feeders || it.is(sFeeder) && strings.HasSuffix(it.s, "s")
			done = done || it.isAny(setOf(sDone, sFill, sFull, sPour))
		}
		if feeders && done {
			r.items[k].gap = gapComma
			r.forceRange(r.sentenceStart(k-1), r.sentenceEnd(k), fFeed)
		}
	}
}

// onlyPours says that items[i:j] are an amount for each of the feeders.
func (r *reader) onlyPours(i, j int) bool {
	feeders := len(r.c.Herd.Feeders)
	if it := &r.items[i]; it.kind == itSlash {
		return feeders == 2 && j == i+1 && it.v > 16 && it.v2 > 16
	}
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind != itNum && !it.qty(mass) || it.soft || it.ord || it.v <= 16 {
			return false
		}
	}
	return feeders > 1 && j-i == feeders
}
