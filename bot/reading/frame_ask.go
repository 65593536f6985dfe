package reading

import (
	"strings"
	"time"

	"troughbell/model"
)

// fillAsk reads a question: its topic, the pigs, the day or the weight asked
// about, and what is assumed.
func (r *reader) fillAsk(s span) {
	topic, score := r.topicOf(s)
	a := Ask{Topic: topic}
	sel := r.selectPigs(s.i, s.j)
	if sel.any && !sel.all && len(sel.pigs) > 0 {
		a.Animals = sel.names(r)
		if r.subjectFromText(s) {
			r.remember(sel)
		}
	}
	r.askDay(&a, s)
	r.askAmounts(&a, s)
	r.askAssume(&a, s)
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
	case (a.Topic == "feed_left" || a.Topic == "feed_need") && a.TargetKg == nil && r.has(s, sWhatIf) && r.feedTo(s) > 0:
		kg := r.feedTo(s)
		a.Topic = "butcher_date"
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		a.Assume.TargetKg = &kg
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
	if a.Topic == "" || a.Topic != "plan" && score == 0 && len(a.Animals) == 0 && a.TargetKg == nil && a.Assume == nil && a.On == nil {
		r.useAll(s)
		r.emit(None{Reason: NoneUnknown}, s)
		return
	}
	if a.Topic == "sizes" || a.Topic == "history" {
		a.What = strings.TrimSpace(r.quote(s.i, s.j))
	}
	if a.Topic == "why" && r.c.LastAsked != nil && len(a.Animals) == 0 {
		a.Animals = r.c.LastAsked.Animals
	}
	if r.force[s.i] == 0 {
		r.soft = append(r.soft, r.items[s.i].from)
	}
	r.useAll(s)
	r.emitOn(a, s, r.today, nil, false)
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

// feedTo is the weight that a what-if feeds the pigs to, "what if I feed them to
// 300", in kilograms; 0 if none.
func (r *reader) feedTo(s span) float64 {
	for k := s.i + 1; k < s.j; k++ {
		it := &r.items[k]
		if r.items[k-1].s != "to" || !it.number() || it.soft {
			continue
		}
		u := it.unit
		if it.kind == itNum {
			u = r.massUnit()
		}
		if u.dim() != mass {
			continue
		}
		if kg := u.si(it.v); kg >= 60 && kg <= 250 {
			return kg
		}
	}
	return 0
}

func (r *reader) subjectFromText(s span) bool { return r.eachNamed(s.i, s.j) }

// topicOf weighs the words of the span against the topics.
func (r *reader) topicOf(s span) (string, float32) {
	from, to := r.tokenRange(s)
	scores := map[string]float32{}
	var store [96]byte
	for i := from; i < to; i++ {
		if r.toks[i].kind != tokWord {
			continue
		}
		// Longer phrases speak louder: take the longest, and half of what its
		// words say by themselves.
		key := store[:0]
		best := 0
		var votes []topicVote
		for k := i; k < to && k < i+6; k++ {
			t := &r.toks[k]
			if t.kind != tokWord && t.kind != tokNum || len(key)+1+len(t.s) > cap(store[:]) {
				break
			}
			if k > i {
				key = append(key, ' ')
			}
			key = append(key, t.s...)
			if v, ok := r.lex.topics[string(key)]; ok {
				best, votes = k-i+1, v
			}
		}
		if best == 0 {
			if w, ok := r.lex.correct(r.toks[i].s); ok {
				votes = r.lex.topics[w]
			}
		}
		for _, v := range votes {
			scores[v.topic] += v.weight * (0.7 + 0.3*float32(max(best, 1)))
		}
	}
	r.contextVotes(s, scores)
	best, top := "", float32(0)
	for _, t := range topicWords {
		if v := scores[t.topic]; v > top {
			best, top = t.topic, v
		}
	}
	return best, top
}

// contextVotes adds what the herd's own names and the shape of the question
// say.
func (r *reader) contextVotes(s span, scores map[string]float32) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.feeder >= 0:
			scores["feed_left"] += 2.5
		case it.barrel >= 0 && !it.either:
			scores["water_left"] += 2.5
		case it.pen >= 0 && it.pig < 0:
			scores["move"] += 1
		case it.pig >= 0:
			scores["weight"] += 0.5
		case it.qty(mass) && !r.has(s, sFeed):
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
			if when && r.eachNamed(s.i, s.j) {
				scores["target"] += 4
			} else if when {
				scores["butcher_date"] += 3
			}
		}
	}
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

func (r *reader) starts(s span, word string) bool {
	return s.i < s.j && strings.HasPrefix(r.items[s.i].s, word)
}

// tokenRange is the tokens that a span was made of.
func (r *reader) tokenRange(s span) (from, to int) {
	if s.i >= s.j {
		return 0, 0
	}
	lo, hi := r.items[s.i].from, r.items[s.j-1].to
	from, to = -1, len(r.toks)
	for i := range r.toks {
		if from < 0 && r.toks[i].from >= lo {
			from = i
		}
		if r.toks[i].from >= hi {
			to = i
			break
		}
	}
	return max(from, 0), to
}

// askDay finds the day asked about. Questions look forward; those of what was,
// back.
func (r *reader) askDay(a *Ask, s span) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.kind != itDay || it.day.every {
			continue
		}
		l := lookForward
		if a.Topic == "history" || r.pastQuestion(s) {
			l = lookBack
		}
		if it.day.coarse && it.day.form == dayOffset && (a.Topic == "today" || a.Topic == "history") {
			continue
		}
		if d, ok := it.day.on(r.today, l, r.dayFirst); ok {
			if it.day.form == dayOffset && it.day.a == 0 && it.day.part == partNone && !(a.Topic == "weight") {
				continue // "today" is what every answer is about
			}
			if it.day.form == dayOffset && it.day.a == 0 && a.Topic == "weight" {
				continue
			}
			a.On = &d
			return
		}
	}
	if d, ok := r.monthAsked(s); ok && a.On == nil && a.Topic != "history" {
		a.On = &d
	}
}

// monthAsked reads a month without a day behind a word for an end as its first
// day: "until july".
func (r *reader) monthAsked(s span) (model.Day, bool) {
	from, to := r.tokenRange(s)
	for i := from + 1; i < to; i++ {
		m := r.lex.of[r.toks[i].s]
		if m == nil || m.month == 0 || len(r.toks[i].s) < 3 && r.toks[i].s != "may" {
			continue
		}
		switch r.toks[i-1].s {
		case "until", "till", "til", "to", "by", "in", "through", "before", "for":
		default:
			continue
		}
		d := model.DayOf(time.Date(r.c.Now.Year(), time.Month(m.month), 1, 12, 0, 0, 0, time.UTC))
		if d <= r.today {
			d = model.DayOf(time.Date(r.c.Now.Year()+1, time.Month(m.month), 1, 12, 0, 0, 0, time.UTC))
		}
		return d, true
	}
	return 0, false
}

func (r *reader) pastQuestion(s span) bool {
	for k := s.i; k < s.j; k++ {
		switch r.items[k].s {
		case "did", "was", "were", "how did", "what did", "what was", "when did", "did i", "did we", "weighed":
			return true
		}
	}
	return false
}

// askAmounts finds a weight or a count asked about.
func (r *reader) askAmounts(a *Ask, s span) {
	skip := -1
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		next, prev := &item{}, &item{}
		if k+1 < s.j {
			next = &r.items[k+1]
		}
		if k > s.i {
			prev = &r.items[k-1]
		}
		switch {
		case k == skip:
		case it.kind == itNum && !it.soft && (next.is(sPigs) || next.is(sMore) || next.is(sFewer) || next.is(sArrive) && a.Topic == "plan"):
			if !next.is(sMore) && !next.is(sFewer) || a.Topic == "plan" {
				a.Count = int(it.v)
			}
		case it.qty(mass), it.kind == itNum && !it.soft && !it.ord && it.v >= 20 && r.weightTopic(a.Topic) && !prev.is(sAll):
			u := it.unit
			if it.kind == itNum {
				u = r.massUnit()
			}
			kg := u.si(it.v)
			switch {
			case a.Topic == "plan":
				if a.WeightKg == nil && kg < 60 {
					a.WeightKg = model.Float(kg)
				} else {
					a.TargetKg = model.Float(kg)
				}
			case kg >= 20 && kg <= 400 && (r.weightTopic(a.Topic) || a.Topic == "feed_need" || a.Topic == ""):
				a.TargetKg = model.Float(kg)
			}
		}
	}
}

func (r *reader) weightTopic(t string) bool {
	return t == "butcher_date" || t == "target" || t == "weight" || t == "growth" || t == "" || t == "plan" || t == "yield"
}

// askAssume reads what-ifs: "2 more pigs", "target 280", "skip a Saturday".
func (r *reader) askAssume(a *Ask, s span) {
	what := r.has(s, sWhatIf) || r.quoteHas(s, "if")
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		var as model.Assumption
		switch {
		case (it.is(sMore) || it.s == "more") && k > s.i && r.items[k-1].kind == itNum && !r.items[k-1].used && r.pigsNear(k, s) && what:
			as.CountDelta = int(r.items[k-1].v)
		case it.s == "another" && what && r.pigsNear(k, s):
			as.CountDelta = 1
			if k+1 < s.j && r.items[k+1].kind == itNum {
				as.CountDelta = int(r.items[k+1].v)
			}
		case it.is(sFewer) && what && r.pigsNear(k, s):
			n := 1
			if k > s.i && r.items[k-1].kind == itNum {
				n = int(r.items[k-1].v)
			} else if k+1 < s.j && r.items[k+1].kind == itNum {
				n = int(r.items[k+1].v)
			}
			as.CountDelta = -n
		case it.s == "skip" || it.s == "skipped" || it.s == "miss" || it.s == "skip this" || it.s == "skipping" || it.s == "missed":
			as.SkipDays = 7
			for n := k; n < s.j; n++ {
				if r.items[n].qty(days) {
					as.SkipDays = int(r.items[n].si() + 0.5)
				}
			}
			a.On = nil
		default:
			continue
		}
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		if as.CountDelta != 0 {
			a.Assume.CountDelta = as.CountDelta
			a.Count = 0
		}
		if as.SkipDays != 0 {
			a.Assume.SkipDays = as.SkipDays
		}
	}
	if what && a.TargetKg != nil && (r.has(s, sTarget) || r.has(s, sWhatIf)) && a.Topic != "plan" {
		if a.Assume == nil {
			a.Assume = &model.Assumption{}
		}
		a.Assume.TargetKg = a.TargetKg
		a.TargetKg = nil
	}
}

func (r *reader) pigsNear(k int, s span) bool {
	for n := max(s.i, k-2); n < min(s.j, k+4); n++ {
		if r.items[n].is(sPigs) || r.items[n].isAny(setOf(sBarrow, sGilt)) {
			return true
		}
	}
	return k+1 >= s.j || r.items[k].s != "more"
}
