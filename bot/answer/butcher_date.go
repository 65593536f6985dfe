package answer

import (
	"slices"
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
	slot, blocks := a.slotLine(whole, data)
	lines = append(lines, slot)
	if blocks { // what may not be comes before what could be
		slices.Reverse(lines)
	}
	if on := a.onLine(target, data); on != "" {
		at := 0
		if blocks {
			at = 1
		}
		lines = slices.Insert(lines, at, on)
	}
	return Answer{Data: data, Text: strings.Join(lines, "\n"), Reasons: slices.Concat(a.targetSum(whole, target), f.Reasons, a.leadReason())}
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
