package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// butcherDate says when the pigs reach the target, and from when on every
// withdrawal is clear.
func butcherDate(a asked) Answer {
	target := a.h.TargetKg
	if a.TargetKg != nil {
		target = *a.TargetKg
	}
	f, err := a.h.Target(target, a.today)
	if err != nil {
		return a.missing(err)
	}
	whole := f.Herd
	if a.named {
		if whole, err = a.targetOf(a.pigs, target, f); err != nil {
			return a.missing(err)
		}
	}
	data := a.targetData(whole)
	data["target_kg"] = kg(target)
	animals := map[string]any{}
	names, of := byName(a.pigs)
	for _, name := range names {
		t, err := a.targetOf(of[name], target, f)
		if err != nil {
			return a.missing(err)
		}
		animals[name] = a.targetData(t)
	}
	data["animals"] = animals
	if !a.named && len(f.Groups) > 1 {
		data["groups"] = a.groupData(f)
	}
	lines := []string{a.targetLine(whole, target)}
	if !a.named && len(f.Groups) > 1 {
		lines[0] += " " + a.groupLine(f)
	}
	if second := a.slotLine(whole, data); second != "" {
		lines = append(lines, second)
	}
	if on := a.onLine(target, data); on != "" {
		lines = append([]string{on}, lines...)
	}
	return Answer{Data: data, Text: strings.Join(lines, "\n"), Reasons: append(a.targetSum(whole, target), f.Reasons...)}
}

// targetSum is the sum behind a target day: what is still to gain, how fast, how
// long.
func (a asked) targetSum(t model.TargetDay, target float64) []model.Reason {
	days := float64(t.Days.Mid - a.today)
	w, err := a.h.MeanWeight(a.pigs, a.today)
	if err != nil || days <= 0 {
		return nil
	}
	gain := target - w.WeightKg.Mid
	return []model.Reason{{Code: "target_sum", Q: []model.Quantity{
		wording.Kg(target), wording.Kg(w.WeightKg.Mid), wording.Kg(gain), wording.KgD(gain / days), wording.Days(days),
	}}}
}

func (a asked) targetData(t model.TargetDay) map[string]any {
	return map[string]any{
		"date": t.Days.Mid.String(), "low": t.Days.Low.String(), "high": t.Days.High.String(),
		"days": int(t.Days.Mid - a.today),
	}
}

// targetOf is when the mean of the pigs reaches the target: a pig's, a group's
// or the herd's own figure where it is one of those, else a search by day.
func (a asked) targetOf(pigs []*model.Animal, target float64, f model.TargetFigure) (model.TargetDay, error) {
	if len(pigs) == 1 {
		if t, ok := f.Animals[pigs[0]]; ok {
			return t, nil
		}
	}
	if len(pigs) == len(a.h.Alive(a.today)) {
		return f.Herd, nil
	}
	return a.searchTarget(pigs, target)
}

// farthest is how far ahead a target is looked for, in days.
const farthest = 500

// searchTarget finds the first days on which high edge, middle and low edge of
// the pigs' mean weight reach the target.
func (a asked) searchTarget(pigs []*model.Animal, target float64) (model.TargetDay, error) {
	var t model.TargetDay
	for d := a.today; d <= a.today+farthest; d++ {
		w, err := a.h.MeanWeight(pigs, d)
		if err != nil {
			return t, err
		}
		if t.Days.Low == 0 && w.WeightKg.High >= target {
			t.Days.Low = d
		}
		if t.Days.Mid == 0 && w.WeightKg.Mid >= target {
			t.Days.Mid = d
		}
		if w.WeightKg.Low >= target {
			t.Days.High = d
			break
		}
	}
	for _, d := range []*model.Day{&t.Days.Low, &t.Days.Mid, &t.Days.High} {
		if *d == 0 {
			*d = a.today + farthest
		}
	}
	t.Already = t.Days.Mid == a.today
	return t, nil
}

// living lists the groups that have living pigs, in the order of
// TargetFigure.Groups.
func (a asked) living() []*model.Group {
	alive := map[*model.Group]bool{}
	for _, p := range a.h.Alive(a.today) {
		alive[p.Group] = true
	}
	var out []*model.Group
	for _, g := range a.h.Groups {
		if alive[g] {
			out = append(out, g)
		}
	}
	return out
}

func (a asked) groupData(f model.TargetFigure) []any {
	var out []any
	for i, g := range a.living() {
		d := a.targetData(f.Groups[i])
		d["group"] = g.Name
		d["arrived"] = g.Arrived.String()
		names := []string{}
		for _, p := range g.Pigs {
			if p.Gone == nil && p.Name != "" {
				names = append(names, p.Name)
			}
		}
		d["names"] = names
		out = append(out, d)
	}
	return out
}

// groupLine says the day of each group, in the order of arrival.
func (a asked) groupLine(f model.TargetFigure) string {
	var parts []string
	for i, g := range a.living() {
		name := g.Name
		if name == "" {
			name = a.say("group_since", wording.Args{Days: []model.Day{g.Arrived}})
		}
		parts = append(parts, a.say("group_day", wording.Args{Names: []string{name}, Days: dayArgs(f.Groups[i].Days)}))
	}
	return strings.Join(parts, " ")
}

func (a asked) targetLine(t model.TargetDay, target float64) string {
	args := wording.Args{
		Names: a.subject(), Days: dayArgs(t.Days),
		Q: []model.Quantity{wording.Kg(target), wording.Days(float64(t.Days.Mid - a.today))},
	}
	if t.Already {
		return a.say("target_reached", args)
	}
	return a.say("target_day", args)
}

// slotLine is about the appointment: not clear, booked, or what to ask for. It
// puts not_before into data where a withdrawal still runs.
func (a asked) slotLine(t model.TargetDay, data map[string]any) string {
	clear := a.clearance(a.pigs)
	if !clear.known {
		data["not_before"] = nil
		return a.say("target_not_clear", wording.Args{Names: a.v.NamesOf(clear.unknown)})
	}
	from := t.Days.Low
	if clear.at.After(a.now) {
		notBefore := model.DayOf(clear.at.In(a.now.Location())) + 1
		data["not_before"] = notBefore.String()
		from = max(from, notBefore)
		if t.Days.Mid < notBefore {
			return a.say("target_blocked", wording.Args{Days: []model.Day{notBefore}, Moments: moments(clear.at, a.now)})
		}
	}
	if b, ok := a.h.NextBooking(a.today); ok {
		return a.bookedLine(b, clear)
	}
	return a.say("target_ask", wording.Args{Days: []model.Day{from, max(from, t.Days.High)}})
}

func (a asked) bookedLine(b model.Booked, clear clearance) string {
	args := wording.Args{Names: a.v.NamesOf(clear.treated), Days: []model.Day{b.Day}, Moments: moments(clear.at, a.now)}
	if clear.at.After(a.loadMoment(b)) {
		return a.say("booked_not_clear", args)
	}
	w, err := a.h.MeanWeight(a.pigs, b.Day)
	if err == nil {
		args.Q = span(w.WeightKg)
	}
	return a.say("booked_weight", args)
}

// onLine answers whether they will be there by a day asked about.
func (a asked) onLine(target float64, data map[string]any) string {
	if a.On == nil {
		return ""
	}
	w, err := a.h.MeanWeight(a.pigs, *a.On)
	if err != nil {
		return ""
	}
	data["on"] = a.On.String()
	data["weight_kg"], data["low_kg"], data["high_kg"] = kg(w.WeightKg.Mid), kg(w.WeightKg.Low), kg(w.WeightKg.High)
	code := "by_day_no"
	if w.WeightKg.Mid >= target {
		code = "by_day_yes"
	}
	return a.say(code, wording.Args{Names: a.subject(), Days: []model.Day{*a.On}, Q: span(w.WeightKg)})
}
