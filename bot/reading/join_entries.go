package reading

import (
	"strings"

	"troughbell/model"
)

// withPrices gives money told right behind a sale or a purchase to it: "sold
// brick to a family for 250 dollars", "6 bags, cost me 114".
func (r *reader) withPrices(es []Entry) []Entry {
	out := es[:0]
	for _, e := range es {
		if n := len(out); n > 0 && r.priced(&out[n-1], e) {
			continue
		} else if n > 0 && r.pricedAhead(out[n-1], &e, len(es)) {
			out[n-1] = e
			continue
		}
		out = append(out, e)
	}
	return out
}

// priced gives the money of the entry behind to the sale or purchase before it,
// where it is its price.
func (r *reader) priced(e *Entry, money Entry) bool {
	f, ok := e.Act.(Fact)
	m, ok2 := money.Act.(Fact)
	if !ok || !ok2 || money.From < e.To || strings.ContainsAny(r.text[e.To:money.From], ".\n;") && !strings.Contains(r.text[e.To:money.From], "Mr.") {
		return false
	}
	sp, ok := m.Fact.(model.Spend)
	if !ok || sp.Income {
		return false
	}
	between := strings.ToLower(r.text[e.To:money.To])
	switch a := f.Fact.(type) {
	case model.Gone:
		if a.How != model.Sold || a.Amount != nil || strings.Contains(between, "spent") || strings.Contains(between, "paid the") || strings.Contains(strings.ToLower(r.text[e.To:money.From]), " and ") {
			return false
		}
		a.Amount, a.Currency = model.Float(sp.Amount), sp.Currency
		if n := max(len(a.Animals), a.Count); n > 1 && r.eachIn(money) {
			a.Amount = model.Float(sp.Amount * float64(n))
		}
		e.Act = Fact{a}
	case model.Stock:
		if a.Amount != nil || a.Counted || !onlyPriceWords(sp.What) {
			return false
		}
		a.Amount, a.Currency = model.Float(sp.Amount), sp.Currency
		e.Act = Fact{a}
	default:
		return false
	}
	e.To = max(e.To, money.To)
	return true
}

// pricedAhead gives money told without a word of what it was for to the purchase right
// behind it: "5200 pesos, 2 sacks soya".
func (r *reader) pricedAhead(money Entry, e *Entry, all int) bool {
	f, ok := e.Act.(Fact)
	m, ok2 := money.Act.(Fact)
	if !ok || !ok2 || e.From < money.To {
		return false
	}
	st, ok := f.Fact.(model.Stock)
	sp, ok2 := m.Fact.(model.Spend)
	if !ok || !ok2 || st.Amount != nil || st.Counted || sp.Income || sp.What != "" || e.On != money.On {
		return false
	}
	if between := r.text[money.To:e.From]; strings.ContainsAny(between, "\n;") || strings.Contains(between, ".") && all > 2 || strings.Contains(strings.ToLower(between), " and ") {
		return false
	}
	st.Amount, st.Currency = model.Float(sp.Amount), sp.Currency
	e.Act, e.From = Fact{st}, money.From
	return true
}

// eachIn says that the words of an entry, or those right behind it, say "each".
func (r *reader) eachIn(e Entry) bool {
	for k := range r.items {
		if it := &r.items[k]; it.is(sEach) && it.from >= e.From && it.from <= e.To+8 {
			return true
		}
	}
	return false
}

// onlyPriceWords says that the words of a spending name nothing that was bought.
func onlyPriceWords(what string) bool {
	for _, w := range strings.Fields(strings.ToLower(what)) {
		switch w {
		case "cost", "costing", "total", "cash", "all", "in", "altogether", "for", "it", "them", "me", "us", "at", "of", "a", "was", "the", "lot", "feed":
		default:
			return false
		}
	}
	return true
}

// filledByPour joins a feeder's being full to the pour right before it: "two bags
// in the small hopper, which filled it to the brim".
func (r *reader) filledByPour(es []Entry) []Entry {
	out := es[:0]
	for _, e := range es {
		if n := len(out); n > 0 {
			a, ok := refillOf(out[n-1])
			b, ok2 := refillOf(e)
			if l, is := levelOf(e); ok && is && l.Feeder == a.Feeder && l.Fraction != nil && a.FeedKg != nil && !a.Full && a.Fraction == nil && out[n-1].On == e.On && e.From >= out[n-1].To && !toldBefore(r.text[min(e.From, len(r.text)):min(e.To, len(r.text))]) {
				a.Fraction = l.Fraction // "put 120 in, so it's three quarters now"
				out[n-1].Act = Fact{a}
				out[n-1].To = max(out[n-1].To, e.To)
				continue
			}
			if ok2 && b.Full && b.FeedKg == nil && saidFull(out, e, b) {
				continue
			}
			if ok && ok2 && r.fullThenHowMuch(out, e, b) {
				continue
			}
			if ok && ok2 && a.Feeder == b.Feeder && out[n-1].On == e.On && a.FeedKg != nil && !a.Full && a.Fraction == nil && b.Full && b.FeedKg == nil && sameMinute(out[n-1].Minute, e.Minute) {
				a.Full = true
				out[n-1].Act = Fact{a}
				out[n-1].To = max(out[n-1].To, e.To)
				continue
			}
		}
		out = append(out, e)
	}
	return out
}

// fullThenHowMuch gives a pour the mark of a feeder said to be full before it, in
// the place of that entry: "filled both. 150 big 70 small", "filled it; it took 150".
func (r *reader) fullThenHowMuch(out []Entry, e Entry, b model.Refill) bool {
	if b.FeedKg == nil || b.Fraction != nil || b.FromEmpty {
		return false
	}
	for k := len(out) - 1; k >= 0; k-- {
		a, ok := refillOf(out[k])
		if !ok {
			return false
		}
		if a.Feeder != b.Feeder {
			continue
		}
		if !a.Full || a.FeedKg != nil || out[k].On != e.On || !sameMinute(out[k].Minute, e.Minute) || r.moreBetween(out[k].To, e.To) {
			return false
		}
		b.Full = true
		out[k].Act = Fact{b}
		out[k].To = max(out[k].To, e.To)
		if out[k].Minute == nil {
			out[k].Minute = e.Minute
		}
		return true
	}
	return false
}

// saidFull says that a feeder was said to be full before, at the same time.
func saidFull(out []Entry, e Entry, b model.Refill) bool {
	for _, x := range out {
		if a, ok := refillOf(x); ok && a.Feeder == b.Feeder && a.Full && x.On == e.On && sameMinute(x.Minute, e.Minute) {
			return true
		}
	}
	return false
}

// moreBetween says that the words from one place of the text to another tell of
// something poured on top.
func (r *reader) moreBetween(from, to int) bool {
	for k := range r.items {
		if it := &r.items[k]; it.from >= from && it.to <= to && it.isAny(setOf(sMore)) {
			return true
		}
	}
	return false
}

func levelOf(e Entry) (model.FeedLevel, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return model.FeedLevel{}, false
	}
	l, ok := f.Fact.(model.FeedLevel)
	return l, ok
}

// toldBefore says that words tell of what was, not of what is.
func toldBefore(words string) bool {
	w := " " + strings.ToLower(words) + " "
	return strings.Contains(w, " was ") || strings.Contains(w, " were ") || strings.Contains(w, " had ") || strings.Contains(w, " before ")
}

func refillOf(e Entry) (model.Refill, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return model.Refill{}, false
	}
	p, ok := f.Fact.(model.Refill)
	return p, ok
}

// twoReadings asks where one pig by name got two different readings of the same
// kind on the same day: "maybe hazel is 180, maybe 200".
func (r *reader) twoReadings(es []Entry) []Entry {
	for b := range es {
		y, ok := oneWeighed(es[b])
		if !ok {
			continue
		}
		for a := range b {
			x, ok := oneWeighed(es[a])
			if !ok || x.Animals[0] != y.Animals[0] || es[a].On != es[b].On || (x.GirthCm > 0) != (y.GirthCm > 0) || x.WeightKg == y.WeightKg && x.GirthCm == y.GirthCm || !sameMinute(es[a].Minute, es[b].Minute) {
				continue
			}
			c := Clarify{About: "weigh", Code: "implausible_weight_again", Names: y.Animals, Want: "", Draft: []Entry{es[b]}}
			for _, e := range []Entry{es[b], es[a]} {
				w, _ := oneWeighed(e)
				c.Choices = append(c.Choices, Choice{Code: "meant", Q: quantityOf(w), Entries: []Entry{e}})
			}
			c.Choices = append(c.Choices, Choice{Code: "nothing"})
			ask := es[b]
			ask.Act = c
			ask.From = es[a].From
			out := append(append(append([]Entry(nil), es[:a]...), es[a+1:b]...), ask)
			return append(out, es[b+1:]...)
		}
	}
	return es
}

func sameMinute(a, b *int) bool { return a == nil || b == nil || *a == *b }

func oneWeighed(e Entry) (model.Weigh, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return model.Weigh{}, false
	}
	w, ok := f.Fact.(model.Weigh)
	return w, ok && len(w.Animals) == 1 && w.Animals[0] != model.All
}

// withoutDownsSigns drops the signs of illness told beside a pig that cannot rise:
// the alarm says the graver thing.
func withoutDownsSigns(es []Entry) []Entry {
	var down []string
	any := false
	for _, e := range es {
		if f, ok := e.Act.(Fact); ok {
			if a, is := f.Fact.(model.Alarm); is && a.What == model.AlarmDown && !a.Over {
				down, any = append(down, a.Animals...), true
			}
		}
	}
	if !any {
		return es
	}
	out := es[:0]
	for _, e := range es {
		if f, ok := e.Act.(Fact); ok {
			if s, is := f.Fact.(model.Sick); is && !s.Well && len(s.Animals) == 1 && len(down) == 1 && s.Animals[0] == down[0] {
				continue
			}
		}
		out = append(out, e)
	}
	return out
}
