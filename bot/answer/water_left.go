package answer

import (
	"strings"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// waterLeft says how much water is left and how long it lasts.
func waterLeft(a asked) Answer {
	w, err := a.h.WaterLeft(a.now)
	if err != nil {
		return a.missing(err)
	}
	barrels := map[string]any{}
	var parts []string
	for _, b := range w.Barrels {
		barrels[b.Name] = map[string]any{
			"litres": kg(b.Litres.Mid), "use_l_d": kg(b.UseLD.Mid), "days": kg(b.Days),
			"low_days": kg(b.LowDays), "empty": a.moment(b.LikelyAt),
		}
		parts = append(parts, a.v.Phrase("barrel_part", wording.Args{
			Names: []string{b.Name}, Q: []model.Quantity{wording.L(b.Litres.Mid)},
		}))
	}
	data := map[string]any{
		"litres": kg(w.Litres.Mid), "low_litres": kg(w.Litres.Low), "high_litres": kg(w.Litres.High),
		"use_l_d": kg(w.UseLD.Mid), "days": kg(w.Days), "low_days": kg(w.LowDays),
		"empty": a.moment(w.LikelyAt), "barrels": barrels,
	}
	edge := w.EdgeAt
	if edge.IsZero() {
		edge = a.after(w.EdgeDays)
	}
	text := a.lastsLine("water", edge, w.LikelyAt, data)
	second := a.say("water_amount", wording.Args{Q: []model.Quantity{wording.L(w.Litres.Mid), wording.LD(w.UseLD.Mid)}})
	if len(parts) > 1 {
		second += " " + strings.Join(parts, ", ") + "."
	}
	sum := model.Reason{Code: "water_sum", Q: []model.Quantity{
		wording.L(w.Litres.Mid), wording.LD(w.UseLD.Mid), wording.Days(w.Days), wording.Days(w.LowDays),
	}}
	return Answer{Data: data, Text: text + "\n" + second, Reasons: append([]model.Reason{sum}, w.Reasons...)}
}

// wallow says when the wallow will be dry.
func wallow(a asked) Answer {
	w, err := a.h.WallowLeft(a.now)
	if err != nil {
		return a.missing(err)
	}
	data := map[string]any{
		"date": w.Dry.Mid.String(), "low": w.Dry.Low.String(), "high": w.Dry.High.String(),
		"days": int(w.Dry.Mid - a.today), "loss_l_d": kg(w.LossLD.Mid), "fill_l": kg(w.FillL),
		"why": a.v.Why(w.Reasons),
	}
	text := a.say("wallow_dry", wording.Args{Days: dayArgs(w.Dry), Q: []model.Quantity{wording.L(w.FillL)}})
	return Answer{Data: data, Text: text, Reasons: w.Reasons}
}

// heat says how a day bears on the pigs.
func heat(a asked) Answer {
	on := a.today
	if a.On != nil {
		on = *a.On
	}
	look := a.h.Heat
	if a.HighC != nil {
		look = func(on model.Day) (model.Heat, error) { return a.h.HeatAt(on, *a.HighC) }
	}
	x, err := look(on)
	if err != nil {
		return a.missing(err)
	}
	data := map[string]any{
		"on": on.String(), "thi": kg(x.THI), "class": string(x.Class), "rh_assumed": x.RhAssumed,
		"high_c": kg(x.HighC), "rh_pct": kg(x.RhPct),
	}
	args := wording.Args{Days: []model.Day{on}, Moments: []time.Time{a.now}, Q: []model.Quantity{
		{Value: x.HighC, Unit: model.Celsius}, {Value: x.RhPct, Unit: model.Percent}, {Value: x.THI, Unit: model.Count},
	}}
	text := a.say("heat_"+string(x.Class), args)
	if x.RhAssumed {
		text += "\n" + a.say("heat_rh_assumed", args)
	}
	return Answer{Data: data, Text: text, Reasons: x.Reasons}
}
