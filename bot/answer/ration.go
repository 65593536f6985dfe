package answer

import (
	"cmp"
	"math"
	"sort"
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// rationCheck holds the mix against what the pigs need.
func rationCheck(a asked) Answer {
	on := a.today
	if a.On != nil {
		on = *a.On
	}
	r, err := a.h.RationCheck(on)
	if err != nil {
		return a.missing(err)
	}
	change := map[string]any{}
	args := wording.Args{Q: []model.Quantity{
		{Value: r.SIDLysinePct, Unit: model.Percent},
		{Value: r.NeededSIDLysinePct, Unit: model.Percent},
		wording.Kg(r.ForWeightKg),
		{Value: r.CrudeProteinPct, Unit: model.Percent},
		{Value: r.EnergyMJKg, Unit: model.MegajoulesPerKg},
	}}
	names := make([]string, 0, len(r.Change))
	for name := range r.Change {
		names = append(names, name)
	}
	sort.Slice(names, func(i, j int) bool { return math.Abs(r.Change[names[i]]) > math.Abs(r.Change[names[j]]) })
	for _, name := range names {
		change[name] = kg(r.Change[name])
		args.Names = append(args.Names, name)
		args.Q = append(args.Q, wording.Kg(r.Change[name]))
	}
	data := map[string]any{
		"crude_protein_pct": fine(r.CrudeProteinPct), "lysine_pct": fine(r.LysinePct),
		"sid_lysine_pct": fine(r.SIDLysinePct), "energy_mj_kg": fine(r.EnergyMJKg),
		"needed_sid_lysine_pct": fine(r.NeededSIDLysinePct), "for_weight_kg": kg(r.ForWeightKg),
		"ok": r.OK, "change": change,
	}
	code := "ration_short"
	if r.OK {
		code = "ration_ok"
	}
	lines := []string{a.say(code, args)}
	batch, _ := a.h.BatchKg()
	switch {
	case r.OK || len(names) == 0:
		lines = append(lines, a.say("ration_rest", args))
	case wording.FarChange(r.Change[names[0]], batch):
		lines = append(lines, a.say("ration_far", args))
	default:
		lines = append(lines, a.say("ration_change", args))
	}
	// One of the two at most: an answer has two lines.
	step, cheap := a.stepDown(data), a.cheaper(data)
	if more := cmp.Or(cheap, step); r.OK && len(r.OverLimit) == 0 && more != "" {
		lines[len(lines)-1] += " " + more
	}
	if len(r.OverLimit) > 0 {
		data["over_limit"] = r.OverLimit
		lines[len(lines)-1] += " " + a.say("ration_over", wording.Args{Names: r.OverLimit})
	}
	if len(r.Unknown) > 0 {
		data["unknown"] = r.Unknown
		lines = append(lines, a.say("ration_unknown", wording.Args{Names: r.Unknown}))
	}
	return Answer{Data: data, Text: strings.Join(lines, "\n"), Reasons: r.Reasons}
}
