package answer

import (
	"sort"
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
)

// historyLines is how many records a history shows.
const historyLines = 6

// past is one record of a history.
type past struct {
	at   time.Time
	on   model.Day
	kind model.Kind
	fact model.Fact
	said string
}

// history lists the latest records, of the pigs named or of the herd.
func history(a asked) Answer {
	all := a.records()
	sort.SliceStable(all, func(i, j int) bool { return all[i].at.After(all[j].at) })
	if a.On != nil {
		kept := all[:0]
		for _, p := range all {
			if p.on == *a.On {
				kept = append(kept, p)
			}
		}
		all = kept
	}
	items := []any{}
	var lines []string
	for i, p := range all {
		items = append(items, map[string]any{"on": p.on.String(), "text": p.said})
		if i < historyLines {
			lines = append(lines, a.say("past", wording.Args{Days: []model.Day{p.on}, Names: []string{p.said}}))
		}
	}
	data := map[string]any{"records": items}
	if len(lines) == 0 {
		if a.About != "" {
			return Answer{Data: data, Text: a.say("no_past_kind", wording.Args{Names: append([]string{wording.KindNoun(a.About)}, strings.Join(a.Animals, ", "))[:min(1+len(a.Animals), 2)]})}
		}
		return Answer{Data: data, Text: a.say("no_past", wording.Args{Names: a.Animals})}
	}
	if a.About != "" && lastAsked(a.What) { // when was the last: one line, and how long ago
		data["last"], data["days_ago"] = all[0].on.String(), int(a.today-all[0].on)
		return Answer{Data: data, Text: a.say("past_last", wording.Args{
			Days: []model.Day{all[0].on}, Names: []string{all[0].said}, Q: []model.Quantity{wording.Days(float64(a.today - all[0].on))},
		})}
	}
	if sum := a.sumUp(all, data); sum != "" {
		lines = append([]string{sum}, lines[:min(len(lines), sumLines)]...)
	}
	return Answer{Data: data, Text: strings.Join(lines, "\n")}
}

// sumLines is how many records stand beneath what they come to.
const sumLines = 3

// sumUp says what the fills of feed or of water come to where it is asked how much;
// empty where it is not, or where no fill told an amount.
func (a asked) sumUp(all []past, data map[string]any) string {
	what := " " + strings.ToLower(a.What) + " "
	if !strings.Contains(what, "how much") && !strings.Contains(what, "total") && !strings.Contains(what, "so far") {
		return ""
	}
	amount, told, untold := 0.0, 0, 0
	var since model.Day
	for _, p := range all {
		var v *float64
		switch f := p.fact.(type) {
		case model.Refill:
			v = f.FeedKg
		case model.Water:
			if f.Seen {
				continue
			}
			v = f.Litres
		default:
			continue
		}
		if since == 0 || p.on < since {
			since = p.on
		}
		if v == nil {
			untold++
			continue
		}
		told++
		amount += *v
	}
	if told == 0 {
		return ""
	}
	args := wording.Args{Days: []model.Day{since}, Q: []model.Quantity{wording.Kg(amount), wording.N(told)}}
	if untold > 0 {
		args.Q = append(args.Q, wording.N(untold))
	}
	code, key := "fed_total", "feed_kg"
	if a.About == "water" {
		code, key = "watered_total", "litres"
		args.Q[0] = wording.L(amount)
	}
	data["total_"+key], data["fills"], data["fills_untold"] = amount, told, untold
	return a.say(code, args)
}

// records collects what is to be listed: of named pigs what speaks of them, of
// the herd all that was done.
func (a asked) records() (out []past) {
	h := a.h
	add := func(r model.Record) { out = append(out, a.past(r)) }
	defer func() { out = a.ofKind(out) }()
	for _, w := range h.Weighings {
		if a.speaksOf(w.F.Animals) {
			add(w.Record)
		}
	}
	for _, t := range h.Treatments {
		if a.covers(t.Pigs) {
			add(t.Record)
		}
	}
	for _, s := range h.Sicks {
		if a.speaksOf(s.F.Animals) {
			add(s.Record)
		}
	}
	for _, g := range h.Gones {
		if a.speaksOf(g.F.Animals) {
			add(g.Record)
		}
	}
	for _, m := range h.Moves {
		if a.covers(m.Pigs) {
			add(m.Record)
		}
	}
	if a.named {
		return out
	}
	out = append(out, each(a, h.Refills)...)
	out = append(out, each(a, h.FeedLevels)...)
	out = append(out, each(a, h.Waters)...)
	out = append(out, each(a, h.WallowFills)...)
	out = append(out, each(a, h.Mixes)...)
	out = append(out, each(a, h.Stocks)...)
	out = append(out, each(a, h.Spends)...)
	out = append(out, each(a, h.Fences)...)
	out = append(out, each(a, h.Alarms)...)
	out = append(out, each(a, h.Notes)...)
	if a.About == "weather" {
		out = append(out, a.rains()...)
	}
	return out
}

// rains lists the days on which rain was told.
func (a asked) rains() []past {
	var out []past
	for on, w := range a.h.Weathers {
		if w.RainMm == nil && !w.Rained {
			continue
		}
		r := model.Record{On: on, At: on.At(12*60, a.now.Location()), Fact: model.Weather{RainMm: w.RainMm, Rained: w.Rained}}
		out = append(out, a.past(r))
	}
	return out
}

// ofKind keeps the records of the kind asked about; all where none was. A spill or
// a level is told of the same feeder as a fill.
func (a asked) ofKind(all []past) []past {
	if a.About == "" {
		return all
	}
	var kept []past
	for _, p := range all {
		if string(p.kind) == a.About || a.About == "refill" && p.kind == "feed_level" {
			kept = append(kept, p)
		}
	}
	return kept
}

func each[F model.Fact](a asked, records []model.Dated[F]) []past {
	out := make([]past, len(records))
	for i, r := range records {
		out[i] = a.past(r.Record)
	}
	return out
}

// past says a record without its day, which stands before it.
func (a asked) past(r model.Record) past {
	said := a.v.Echo(reading.Entry{Act: reading.Fact{Fact: r.Fact}})
	if r.Imported {
		said = a.v.Phrase("past_imported", wording.Args{Names: []string{said}})
	}
	return past{at: r.At, on: r.On, kind: r.Fact.Kind(), fact: r.Fact, said: said}
}

// covers reports whether a record of just these pigs, known by then, belongs in
// the history.
func (a asked) covers(pigs []*model.Animal) bool {
	if !a.named {
		return true
	}
	names := make([]string, len(pigs))
	for i, p := range pigs {
		names[i] = p.Name
	}
	return len(names) > 0 && a.speaksOf(names)
}

// speaksOf reports whether a record of these pigs belongs in the history.
func (a asked) speaksOf(animals []string) bool {
	if !a.named || len(animals) == 0 || len(animals) == 1 && animals[0] == model.All {
		return true
	}
	for _, n := range animals {
		for _, asked := range a.Animals {
			if strings.EqualFold(n, asked) {
				return true
			}
		}
	}
	return false
}

// lastAsked reports whether a question is after the latest record alone.
func lastAsked(what string) bool {
	what = " " + strings.ToLower(what)
	for _, w := range []string{" last ", " last?", "when did", "when was"} {
		if strings.Contains(what, w) {
			return !strings.Contains(what, "last week") && !strings.Contains(what, "last few") && !strings.Contains(what, "last month")
		}
	}
	return false
}
