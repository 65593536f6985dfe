package answer

import (
	"cmp"
	"slices"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// feedNeed says the feed needed until a day, or until the target is reached.
func feedNeed(a asked) Answer {
	until, toTarget, err := a.feedUntil()
	if err != nil {
		return a.missing(err)
	}
	n, err := a.h.FeedNeed(a.now, until)
	if err != nil {
		return a.missing(err)
	}
	data := map[string]any{
		"feed_kg": kg(n.FeedKg.Mid), "low_kg": kg(n.FeedKg.Low), "high_kg": kg(n.FeedKg.High),
		"batches": kg(n.Batches), "until": until.String(),
	}
	code := "feed_need"
	if toTarget {
		code = "feed_need_target"
	}
	text := a.say(code, wording.Args{
		Days: []model.Day{until},
		Q:    append(span(n.FeedKg), model.Quantity{Value: n.Batches, Unit: model.Count}, wording.Kg(a.target())),
	})
	buy := a.shopping(n.FeedKg.Mid, data)
	if line := cmp.Or(a.pourLine(data), buy); line != "" {
		text += "\n" + line
	}
	return Answer{Data: data, Text: text, Reasons: n.Reasons}
}

// target is the weight asked about, else the herd's.
func (a asked) target() float64 {
	if a.TargetKg != nil {
		return *a.TargetKg
	}
	return a.h.TargetKg
}

// feedUntil is the day until which feed is asked for.
func (a asked) feedUntil() (until model.Day, toTarget bool, err error) {
	if a.On != nil {
		return *a.On, false, nil
	}
	f, err := a.h.Target(a.target(), a.today)
	if err != nil {
		return 0, false, err
	}
	return f.Herd.Days.Mid, true, nil
}

// pourLine says what the next visit needs, where that is known.
func (a asked) pourLine(data map[string]any) string {
	visit := a.h.NextChore(a.now)
	if a.h.IsChoreDay(a.today) {
		visit = a.now
	}
	next := visit
	for model.DayOf(next) <= model.DayOf(visit) {
		next = a.h.NextChore(next)
	}
	p, err := a.h.RefillPlan(visit, next)
	if err != nil || !p.Needed {
		return ""
	}
	pour := map[string]any{}
	args := wording.Args{
		Days: []model.Day{model.DayOf(visit)}, Moments: []time.Time{next},
		Q: []model.Quantity{wording.Kg(p.PourKg), {Value: p.Batches, Unit: model.Count}},
	}
	for _, f := range p.Feeders {
		if f.PourKg > 0 {
			pour[f.Name] = kg(f.PourKg)
			args.Names = append(args.Names, f.Name)
			args.Q = append(args.Q, wording.Kg(f.PourKg))
		}
	}
	data["next_visit"] = map[string]any{
		"date": model.DayOf(visit).String(), "pour_kg": kg(p.PourKg), "batches": p.Batches, "feeders": pour,
	}
	return a.say("next_pour", args)
}

// shopping adds what the mix takes for so much feed beyond what the feeders hold,
// in whole bags where their size is known, and says it. What stands in the shed
// is not taken off: the person sees that.
func (a asked) shopping(feedKg float64, data map[string]any) string {
	m, ok := a.h.Recipe()
	if !ok {
		return ""
	}
	if left, err := a.h.FeedLeft(a.now); err == nil {
		feedKg = max(feedKg-left.FeedKg.Mid, 0)
	}
	sacks := map[string]float64{}
	if bag, told := a.h.Sizes["bag"]; told && bag > 0 {
		for name := range m.Ingredients {
			sacks[name] = bag
		}
	}
	list, err := model.ShoppingList(m, feedKg, sacks, nil)
	if err != nil || len(list) == 0 {
		return ""
	}
	slices.SortFunc(list, func(x, y model.Purchase) int {
		return cmp.Or(cmp.Compare(y.NeedKg, x.NeedKg), cmp.Compare(x.Ingredient, y.Ingredient))
	})
	take := map[string]any{}
	var args wording.Args
	for _, p := range list {
		one := map[string]any{"feed_kg": kg(p.NeedKg)}
		if p.Sacks > 0 {
			one["bags"], one["over_kg"] = p.Sacks, kg(p.OverKg)
		}
		take[p.Ingredient] = one
		args.Names = append(args.Names, p.Ingredient)
		args.Q = append(args.Q, wording.Kg(p.NeedKg))
	}
	data["ingredients"] = take
	return a.say("feed_takes", args)
}
