package wording

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

func (v Voice) moveEffects() []Effect {
	due, err := v.Herd.MoveDue(v.today())
	if err != nil || due.On <= v.today() { // those due at once are not the ones that moved
		return nil
	}
	return []Effect{{Code: "move_next", On: due.On}}
}

// arriveEffects says when the pigs that came reach the target.
func (v Voice) arriveEffects(e reading.Entry, a model.Arrive) []Effect {
	t, err := v.Herd.Target(v.Herd.TargetKg, v.today())
	if err != nil {
		return nil
	}
	days, already := t.Herd.Days, t.Herd.Already
	alive := v.Herd.Alive(v.today())
	n := 0
	for _, g := range v.Herd.Groups {
		if !living(g, alive) {
			continue
		}
		if g.Arrived == e.On && len(g.Pigs) == a.Count && n < len(t.Groups) {
			days, already = t.Groups[n].Days, t.Groups[n].Already
		}
		n++
	}
	if already {
		return []Effect{{Code: reached, Q: []model.Quantity{Kg(t.TargetKg)}}}
	}
	return []Effect{{Code: finish, Q: []model.Quantity{Kg(t.TargetKg)}, On: days.Mid, Window: days}}
}

func living(g *model.Group, alive []*model.Animal) bool {
	for _, p := range alive {
		if p.Group == g {
			return true
		}
	}
	return false
}

// bookedEffects says what the pigs will weigh on the day, and whether every
// withdrawal has ended by then.
func (v Voice) bookedEffects(b model.Booked) []Effect {
	if b.Cancelled || b.Day == 0 {
		return nil
	}
	var out []Effect
	if m, err := v.Herd.MeanWeight(v.Herd.BookedPigs(b, v.today()), b.Day); err == nil {
		out = append(out, Effect{Code: "weight_then", Q: []model.Quantity{Kg(m.WeightKg.Mid), Kg(m.WeightKg.Low), Kg(m.WeightKg.High)}})
	}
	if names := v.notClearAt(b); len(names) > 0 {
		out = append(out, Effect{Code: "not_clear_then", Names: names, On: b.Day})
	}
	return out
}

// notClearAt names the pigs that are not clear when a booking's pigs go.
func (v Voice) notClearAt(b model.Booked) []string {
	load := v.loadMoment(b)
	var pigs []*model.Animal
	for _, c := range v.Herd.Withdrawal(v.Now) {
		if c.Treated && b.MayTake(c.Animal) && (!c.Known || c.ClearAt.After(load)) {
			pigs = append(pigs, c.Animal)
		}
	}
	return v.NamesOf(pigs)
}

// NamesOf names pigs; where they are all there are, or some have no name, they
// are all of them, which for a caution is the safe reading.
func (v Voice) NamesOf(pigs []*model.Animal) []string {
	if len(pigs) == 0 {
		return nil
	}
	if len(pigs) > 1 && len(pigs) == v.alive() {
		return []string{model.All}
	}
	names := make([]string, len(pigs))
	for i, p := range pigs {
		if p.Name == "" {
			return []string{model.All}
		}
		names[i] = p.Name
	}
	return names
}

// awayEffects says what runs out before the person is back.
func (v Voice) awayEffects(a model.AwayFrom) []Effect {
	back := a.To.At(v.Herd.Chore.Minute, v.Now.Location())
	if a.To == v.today()-1 {
		return []Effect{{Code: "home"}}
	}
	if a.To < v.today() {
		return nil
	}
	var out []Effect
	if f, err := v.Herd.FeedLeft(v.Now); err == nil {
		if edge := v.Now.Add(daysLong(f.EdgeDays)); edge.Before(back) {
			out = append(out, v.runsOut("feed", edge))
		}
	}
	if w, err := v.Herd.WaterLeft(v.Now); err == nil {
		if edge := edgeOf(w.EdgeAt, v.Now, w.EdgeDays); edge.Before(back) {
			out = append(out, v.runsOut("water", edge))
		}
	}
	return out
}

// runsOut says that something runs out while the person is away, or already.
func (v Voice) runsOut(what string, edge time.Time) Effect {
	if edge.Sub(v.Now) < time.Hour {
		return Effect{Code: "away_" + what + "_out"}
	}
	return Effect{Code: "away_" + what, At: edge}
}
