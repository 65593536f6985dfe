package answer

import (
	"troughbell/bot/wording"
	"troughbell/model"
)

// heatCare says what helps pigs in heat, today's class before it where it is known.
func heatCare(a asked) Answer {
	text := a.say("heat_care", wording.Args{})
	x, err := a.h.Heat(a.today)
	if err != nil {
		return Answer{Text: text}
	}
	data := map[string]any{"thi": kg(x.THI), "class": string(x.Class), "rh_assumed": x.RhAssumed, "high_c": kg(x.HighC), "on": a.today.String()}
	if x.Class != model.HeatNormal {
		text = a.say("heat_"+string(x.Class), wording.Args{Days: []model.Day{a.today}, Q: []model.Quantity{celsius(x.HighC)}}) + "\n" + text
	}
	return Answer{Data: data, Text: text, Reasons: x.Reasons}
}

// heatLine says from what temperature on it is too hot, plainly and by the
// humidity that is told or assumed.
func heatLine(a asked) Answer {
	_, weightKg, ours := a.meant()
	plain := model.WatchAnyC
	if weightKg > model.HeavyPigKg {
		plain = model.WatchHeavyC
	}
	rh := a.h.Air(a.today).RhPct
	lines := map[string]any{}
	args := wording.Args{Q: []model.Quantity{celsius(plain), wording.Kg(weightKg), {Value: rh, Unit: model.Percent}}}
	for _, c := range []struct {
		class model.HeatClass
		thi   float64
	}{{model.HeatAlert, model.AlertTHI}, {model.HeatDanger, model.DangerTHI}, {model.HeatEmergency, model.EmergencyTHI}} {
		at, err := model.THIReachedC(c.thi, rh)
		if err != nil {
			return a.missing(err)
		}
		lines[string(c.class)] = kg(at)
		args.Q = append(args.Q, celsius(at))
	}
	code := "heat_line"
	if ours {
		code = "heat_line_ours"
	}
	data := a.beside(heat, map[string]any{"watch_c": plain, "classes_from_c": lines, "rh_pct": kg(rh)})
	return Answer{Data: data, Text: a.say(code, args) + "\n" + a.say("heat_line_classes", args), Reasons: []model.Reason{
		{Code: model.HeatIndex, Q: []model.Quantity{{Value: model.AlertTHI, Unit: model.Count}}},
	}}
}
