package reading

import (
	"sort"
	"strings"

	"troughbell/model"
)

// topicOf weighs the words of the span against the topics.
func (r *reader) topicOf(s span) (string, float32) {
	from, to := r.tokenRange(s)
	scores := map[string]float32{}
	var store [96]byte
	for i := from; i < to; i++ {
		if r.toks[i].kind != tokWord || r.namedAt(i, s) {
			continue
		}
		// Longer phrases speak louder: take the longest, and half of what its
		// words say by themselves.
		best := 0
		var votes []topicVote
		for n, key := range r.phrasesAt(store[:0], i, min(to, i+6)) {
			if v, ok := r.lex.topics[string(key)]; ok {
				best, votes = n, v
			}
		}
		if best == 0 {
			if w, ok := r.correct(r.toks[i].s); ok {
				votes = r.lex.topics[w]
			}
		}
		for _, v := range votes {
			scores[v.topic] += v.weight * (0.7 + 0.3*float32(max(best, 1)))
		}
	}
	r.contextVotes(s, scores)
	r.signVotes(s, scores)
	best, top := "", float32(0)
	for _, t := range topicWords {
		if v := scores[t.topic]; v > top {
			best, top = t.topic, v
		}
	}
	if v := scores[topicHelp]; v > top {
		best, top = topicHelp, v
	}
	return best, top
}

// namedAt says that token i is a word of a pig's name, which tells no topic: "is Bill
// ready".
func (r *reader) namedAt(i int, s span) bool {
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; it.pig >= 0 && !it.near && r.toks[i].from >= it.from && r.toks[i].from < it.to {
			return true
		}
	}
	return false
}

// contextVotes adds what the herd's own names and the shape of the question
// say.
func (r *reader) contextVotes(s span, scores map[string]float32) {
	named := false
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.feeder >= 0 && !r.enoughBehind(k):
			scores["feed_left"] += 2.5
		case it.barrel >= 0 && !it.either:
			scores["water_left"] += 2.5
		case it.pen >= 0 && it.pig < 0 && k > s.i && (r.items[k-1].s == "to" || r.items[k-1].s == "into"):
			scores["move"] += 3.5
		case it.pen >= 0 && it.pig < 0:
			scores["move"] += 1
		case it.pig >= 0 && !named:
			named = true
			scores["weight"] += 0.5
		case it.qty(mass) && !r.has(s, sFeed) && scores["ration_check"] == 0 && scores["cost"] == 0:
			scores["butcher_date"] += 1.5
			scores["weight"] -= 0.5
		case it.kind == itDay && scores["weight"] > 0:
			scores["weight"] += 0.3
		}
	}
	when := r.starts(s, "when") || r.quoteHas(s, "when", "what date", "what day", "how soon", "how long", "when's", "whens", "when is", "when will", "when do", "when does", "when are", "when can", "when should")
	if when {
		scores["butcher_date"] *= 1.25
		scores["weight"] *= 0.6
		scores["yield"] *= 0.7
		scores["target"] *= 0.6
	}
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.qty(mass) || it.kind == itNum && !it.soft && it.v >= 60 {
			if r.asksHeat(s) {
				break
			}
			if (when || r.quoteHas(s, "make", "makes", "hit", "reach", "get to", "make it to") && !r.has(s, sAbout)) && r.eachNamed(s.i, s.j) {
				scores["target"] += 4
			} else if when {
				scores["butcher_date"] += 3
			}
		}
	}
	if named && r.has(s, sProduct) { // "when is the penicillin out of brick"
		scores["withdrawal"] += 2
	}
	if named && scores["butcher_date"] > 0 && r.starts(s, "can") && r.underDrug(s) { // "can otis go to the butcher", days after a shot
		scores["withdrawal"] += scores["butcher_date"]
	}
	if named && r.starts(s, "how long") && s.j-s.i <= 4 && scores["weight"] <= 0.6 { // "how long for clover"
		scores["butcher_date"] += 3
	}
	r.askedOfThings(s, scores)
	if scores["target"] > 0 && (r.quoteHas(s, "what is", "what's", "whats") && !r.quoteHas(s, "date")) {
		scores["target"] += 1.5
	}
	if scores["history"] > 0 && r.starts(s, "when did") {
		scores["history"] += 3
	}
	if scores["plan"] > 0 && r.alive > 0 && !r.quoteHas(s, "plan") {
		scores["plan"] *= 0.7
	}
	if scores["why"] > 0 && s.j-s.i > 6 {
		scores["why"] *= 0.5
	}
	if r.has(s, sWallow) {
		scores["water_left"] *= 0.4
		scores["feed_left"] *= 0.6
	}
	if r.has(s, sWater) && scores["water_left"] > 0 {
		scores["feed_left"] *= 0.5
	}
	if scores["feed_need"] > 0 && scores["feed_left"] > 0 && r.quoteHas(s, "need", "buy", "mix", "eat", "order") {
		scores["feed_need"] += 1
	}
	if scores["withdrawal"] > 0 {
		scores["butcher_date"] *= 0.6
		scores["worming"] *= 0.6
	}
	if scores["cost"] > 0 {
		scores["weight"] *= 0.5
		scores["feed_left"] *= 0.6
		scores["yield"] *= 0.7
		scores["butcher_date"] *= 0.7
	}
}

// underDrug says that a pig of the span had a drug lately, so that whether it can go
// asks whether it is clear.
func (r *reader) underDrug(s span) bool {
	sel := r.selectPigs(s.i, s.j)
	for _, g := range r.c.Herd.Treatments {
		if model.DayOf(g.At) < r.today-drugLately {
			continue
		}
		for _, a := range g.Pigs {
			for _, p := range sel.pigs {
				if r.pigs[p].Number == a.Number {
					return true
				}
			}
		}
	}
	return false
}

// drugLately is for how many days a drug makes a pig's going a question of its
// withdrawal. Common practice, no source: few labels ask for more.
const drugLately = 60

func (r *reader) starts(s span, word string) bool {
	return s.i < s.j && strings.HasPrefix(r.items[s.i].s, word)
}

// tokenRange is the tokens that a span was made of.
func (r *reader) tokenRange(s span) (from, to int) {
	if s.i >= s.j {
		return 0, 0
	}
	lo, hi := r.items[s.i].from, r.items[s.j-1].to
	from = sort.Search(len(r.toks), func(i int) bool { return r.toks[i].from >= lo })
	if from == len(r.toks) {
		from = 0
	}
	return from, max(from, sort.Search(len(r.toks), func(i int) bool { return r.toks[i].from >= hi }))
}

func (r *reader) weightTopic(t string) bool {
	return t == "butcher_date" || t == "target" || t == "weight" || t == "growth" || t == "" || t == "plan" || t == "yield"
}

// askedOfThings weighs what a question is about by the things in it: barrels that
// "make it to wednesday" are no pigs, and pigs that are "how big" have no size.
func (r *reader) askedOfThings(s span, scores map[string]float32) {
	things, pigs := 0, 0
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0, it.isAny(setOf(sPigs, sBarrow, sGilt)), it.s == "they", it.s == "them":
			pigs++
		case it.barrel >= 0, it.feeder >= 0, it.isAny(setOf(sBarrel, sFeeder, sWater)):
			things++
		}
	}
	if things > 0 && scores["water_left"]+scores["feed_left"] > 0 {
		scores["butcher_date"] *= 0.3
	}
	if r.asksHeat(s) {
		scores["heat"] += 5
	}
	if r.heatAsked(s.i, s.j) {
		scores["heat"] += 12
	}
	if pigs > 0 && things == 0 && scores["sizes"] > 0 && scores["growth"] == 0 && r.quoteHas(s, "how big", "how large") && !r.has(s, sPen) && !r.has(s, sWallow) && !r.quoteHas(s, "for", "need") {
		scores["weight"] += 3
		scores["sizes"] *= 0.3
	}
	if pigs > 0 && r.quoteHas(s, "growing", "gaining") {
		scores["growth"] += 2
	}
	if r.has(s, sHung) && scores["yield"] > 0 {
		scores["yield"] += 2
	}
	if r.starts(s, "how big a") || r.starts(s, "what size") || r.quoteHas(s, "how big") && r.quoteHas(s, "a", "an") && r.quoteHas(s, "for") {
		scores["sizes"] += 6
	}
	if r.whatWeDid(s) && scores["cost"] == 0 && scores["feed_left"]+scores["feed_need"]+scores["water_left"] > 0 {
		scores["history"] += 6
	}
}

// whatWeDid says that a question asks what the person did or gave: "how much feed
// did we use last week".
func (r *reader) whatWeDid(s span) bool {
	for k := s.i; k < s.j; k++ {
		switch w := r.items[k].s; {
		case w == "did" || w == "what did" || w == "when did" || w == "how did":
			return k+1 < s.j && (r.items[k+1].s == "i" || r.items[k+1].s == "we")
		case (w == "have they" || w == "did they") && (r.quoteHas(s, "eaten", "eat", "gone through", "used", "drunk", "go through") || k+1 < s.j && (r.items[k+1].s == "eaten" || r.items[k+1].s == "gone")):
			return true
		case w == "have" && k+2 < s.j && (r.items[k+1].s == "i" || r.items[k+1].s == "we" || r.items[k+1].s == "they") && (r.items[k+2].s == "eaten" || r.items[k+2].s == "gone through" || r.items[k+2].s == "gone" || r.items[k+2].s == "used" || r.items[k+2].s == "fed"):
			return true
		case w == "did i" || w == "did we" || (w == "have i" || w == "have we") && !r.has(s, sLeft) && !strings.Contains(r.said(s), " got "):
			return true
		}
	}
	return false
}

// asksHeat says that a number of the question is one of degrees: "will they die if
// its 98", "is 95 too hot".
func (r *reader) asksHeat(s span) bool {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.qty(temperature) {
			return true
		}
		if it.kind != itNum || it.soft || it.ord || !r.summerHeat(it.v) {
			continue
		}
		if k > s.i {
			switch r.items[k-1].s {
			case "its", "it's", "it is", "it", "it hits", "hits", "reaches", "gets to", "it gets to", "it'll be", "goes to", "be", "is":
				if !r.eachNamed(s.i, s.j) && !r.has(s, sWeigh) && r.firstQty(s, mass) < 0 {
					return r.items[k-1].s != "be" && r.items[k-1].s != "is" && r.items[k-1].s != "hits" && r.items[k-1].s != "reaches" || r.has(s, sWeather)
				}
			}
		}
		if r.has(s, sWeather) && !r.eachNamed(s.i, s.j) {
			return true
		}
	}
	return false
}

// summerHeat says that a bare number can be a hot day's high.
func (r *reader) summerHeat(v float64) bool {
	if r.units == model.Metric {
		return v >= 26 && v <= 45
	}
	return v >= 80 && v <= 118
}
