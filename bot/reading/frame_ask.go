package reading

import (
	"strings"

	"troughbell/model"
)

// fillQuestion reads one question: its topic, the pigs, the day or the weight asked
// about, and what is assumed, where that is not said already.
func (r *reader) fillQuestion(s span, as *model.Assumption) {
	topic, score := r.topicOf(s)
	if k := r.doesTo(s); k >= 0 {
		if of, sure := r.topicOf(span{s.frame, k, s.j}); of != "" {
			topic, score = of, sure
		}
	}
	if topic == topicHelp {
		r.fillHelp(s)
		return
	}
	if (topic == "" || topic == "today") && r.lastIsWeather() && saysAny(r.saidAround(s), heatJudged) {
		topic, score = "heat", topicSure
	}
	if next := r.askedNext(s); next != "" {
		topic, score = next, topicSure
	}
	a := Ask{Topic: topic}
	sel := r.selectPigs(s.i, s.j)
	if sel.stray { // a number that no pig has
		r.useAll(s)
		r.whichPig("ask", s, r.draft(a, s), func(n []string) Act {
			b := a
			b.Animals = n
			return b
		})
		return
	}
	if r.eachNamed(s.i, s.j) && r.has(s, sRest) && !r.has(s, sAll) { // "is munti behind the others"
		sel = r.namedOnly(s)
	}
	if sel.any && !sel.all && len(sel.pigs) > 0 && !(len(sel.pigs) == 1 && r.ofSeveral(s)) {
		a.Animals = sel.names(r)
		if r.subjectFromText(s) {
			r.remember(sel)
		}
	}
	if !sel.any && len(a.Animals) == 0 {
		a.Animals = r.hePig(r.said(s))
	}
	r.askAbout(&a, s)
	r.askDay(&a, s)
	r.askAmounts(&a, s)
	if as != nil {
		a.Assume, a.Count = as, 0
		if a.Topic == "target" || a.Topic == "history" && !r.pastQuestion(s) {
			a.Topic = supposedTopic(as)
		}
		if as.TargetKg != nil {
			a.TargetKg = nil
		}
	} else {
		r.askAssume(&a, s)
		r.askAway(&a, s)
	}
	if a.Assume != nil && !r.namedBehindAsk(s) && a.Assume.CountDelta < 0 && a.Assume.CountDelta == -len(a.Animals) && (a.Topic == "feed_left" || a.Topic == "feed_need" || a.Topic == "water_left" || a.Topic == "cost") {
		a.Animals = nil // "if i sell otis how long does the feed last" asks of the others
	}
	r.pigsThoughtOf(&a)
	if k := r.find(s, sProduct); k >= 0 {
		a.Product = r.items[k].canon
	}
	r.planAgain(&a, s)
	switch {
	case (a.Topic == "" || r.quoteHas(s, "how about", "what about")) && r.c.LastAsked != nil && (len(a.Animals) > 0 || a.On != nil || a.TargetKg != nil) && s.j-s.i <= 4:
		a.Topic = r.c.LastAsked.Topic // "and otis?"
		if a.TargetKg == nil {
			a.TargetKg = r.c.LastAsked.TargetKg
		}
	case a.Topic == "" && len(a.Animals) > 0 && (a.On != nil || s.j-s.i <= 4):
		a.Topic = "weight"
	case (a.Topic == "feed_left" || a.Topic == "feed_need") && a.TargetKg == nil && r.has(s, sWhatIf) && r.feedTo(s) > 0 && !r.asksFeed(s):
		kg := r.feedTo(s)
		a.Topic = "butcher_date"
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		a.Assume.TargetKg = &kg
	case a.Topic == "target" && a.Assume != nil && a.Assume.TargetKg != nil:
		a.Topic = "butcher_date" // "what if the target was 280"
	case a.Topic == "" && a.Assume != nil:
		a.Topic = "feed_need"
		if a.Assume.TargetKg != nil {
			a.Topic = "butcher_date"
		}
		if a.Assume.SkipDays > 0 {
			a.Topic = "feed_left"
		}
	case a.Topic == "" && a.TargetKg != nil:
		a.Topic = "butcher_date"
	}
	if a.Topic == "" || a.Topic != "plan" && a.About == "" && score == 0 && len(a.Animals) == 0 && a.TargetKg == nil && a.Assume == nil && a.On == nil {
		r.useAll(s)
		r.emit(None{Reason: NoneUnknown}, s)
		return
	}
	if a.TargetKg == nil && (a.Assume == nil || a.Assume.TargetKg == nil) && (a.Topic == "feed_need" || a.Topic == "cost") && r.feedTo(s) > 0 {
		a.TargetKg = model.Float(r.feedTo(s))
	}
	if a.Topic == "plan" && a.About != AboutSpace && a.Assume != nil && a.Assume.CountDelta != 0 && r.alive > 0 {
		a.Topic = "feed_need" // "what if I get 3 more pigs"
	}
	if a.Topic == "feed_need" && a.TargetKg == nil && a.Assume == nil && r.asksShopDay(s) {
		a.Topic = "feed_left"
	}
	if a.Topic == "feed_need" && r.alive == 0 {
		a.Topic = "plan"
	}
	if a.Topic == "feed_need" && a.On != nil && *a.On-r.today <= soonDays && !r.asksFeed(s) && a.Assume == nil && a.TargetKg == nil {
		a.Topic = "feed_left" // "feed till sat?"
	}
	if a.Topic == "feed_need" && r.quoteHas(s, "enough") && !r.quoteHas(s, "need", "buy", "mix", "order", "bags", "batches") && a.TargetKg == nil && a.Assume == nil {
		a.Topic = "feed_left" // "is there enough for the week"
	}
	if a.Topic == "sizes" || a.Topic == "history" {
		a.What = strings.TrimSpace(r.quote(s.i, s.j))
	}
	if a.Topic == "why" && r.c.LastAsked != nil && len(a.Animals) == 0 {
		a.Animals = r.c.LastAsked.Animals
	}
	if a.Topic == "heat" && a.About == "" {
		a.HighC = r.heatSupposed(s.i, s.j)
	}
	if !r.askedOutright(s) {
		r.soft = append(r.soft, r.items[s.i].from)
	}
	r.useAll(s)
	r.emitOn(a, s, r.today, nil, false)
}

// namedOnly are the pigs that a span names by name.
func (r *reader) namedOnly(s span) selection {
	sel := selection{any: true}
	for k := s.i; k < s.j; k++ {
		if p := r.items[k].pig; p >= 0 {
			sel.pigs = append(sel.pigs, p)
		}
	}
	return sel
}

// asksShopDay says that a question asks on what day feed is to be bought, which is
// how long what there is lasts: "when do I need to buy feed".
func (r *reader) asksShopDay(s span) bool {
	when := r.starts(s, "when") || r.starts(s, "by when") || r.starts(s, "how soon") || r.starts(s, "how long")
	return when && r.quoteHas(s, "buy", "order", "get", "restock", "mill", "store", "shop", "shopping", "pick up", "mix", "reorder")
}

// ofSeveral says that a span asks of "them" and names nobody, so that it is not
// about the one pig spoken of before.
func (r *reader) ofSeveral(s span) bool {
	return !r.eachNamed(s.i, s.j) && r.quoteHas(s, "them", "they", "em", "'em", "their", "they're", "theyre")
}

// askedOutright says that a span is a question by more than a word of a topic: one
// was found to begin in it, or it is the whole first or last sentence of a text.
func (r *reader) askedOutright(s span) bool {
	for k := s.i; k < s.j; k++ {
		if r.force[k] != 0 {
			return true
		}
	}
	switch firstWord(r.items[s.i].s) {
	case "what", "what's", "whats", "when", "when's", "whens", "how", "how's", "hows", "why", "who", "who's", "where", "which":
		return true
	}
	if s.j < len(r.items) && r.items[s.j].s == "when" || strings.HasSuffix(r.items[s.j-1].s, "when") { // "next move when"
		return true
	}
	alone := r.sentenceStart(s.i) == s.i && r.sentenceEnd(s.i) == s.j && s.j-s.i > 1
	return alone && (s.i > 0 && s.j == len(r.items) || s.i == 0 && s.j < len(r.items))
}

// soonDays is until how many days from now "feed till sat?" asks whether what is in
// the feeders lasts, and not what the pigs will eat.
const soonDays = 10

// asksFeed says that a question asks for an amount of feed.
func (r *reader) asksFeed(s span) bool {
	return r.quoteHas(s, "how much", "how many", "need", "buy", "mix", "order", "do i need", "do we need", "more feed", "much", "should i") || r.quoteHas(s, "bags", "batches", "for")
}

// planAgain takes a question of somebody without pigs, who asked for a plan
// before, as one about that plan: "what if it's 6", "how big a feeder?".
func (r *reader) planAgain(a *Ask, s span) {
	last := r.c.LastAsked
	if last == nil || last.Topic != "plan" || r.alive > 0 {
		return
	}
	switch a.Topic {
	case "", "feed_need", "feed_left", "water_left", "butcher_date", "target", "weight", "sizes", "plan":
	default:
		return
	}
	for k := s.i; k < s.j; k++ {
		if it := &r.items[k]; a.Count == 0 && a.Topic != "plan" && it.kind == itNum && !it.soft && !it.ord && it.v >= 1 && it.v <= 60 && it.v == float64(int(it.v)) {
			a.Count = int(it.v)
		}
	}
	if a.Topic != "plan" {
		a.What = strings.TrimSpace(r.quote(s.i, s.j))
	}
	a.Topic, a.Assume = "plan", nil
	if a.Count == 0 {
		a.Count = last.Count
	}
	if a.On == nil {
		a.On = last.On
	}
	if a.WeightKg == nil {
		a.WeightKg = last.WeightKg
	}
	if a.TargetKg == nil {
		a.TargetKg = last.TargetKg
	}
}

func (r *reader) subjectFromText(s span) bool { return r.eachNamed(s.i, s.j) }
