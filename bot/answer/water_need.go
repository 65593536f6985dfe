package answer

import (
	"troughbell/bot/wording"
	"troughbell/model"
)

// mildC and hotC are the warmer half of a mild and of a hot day, between which the
// need for water is given.
const mildC, hotC = 20.0, 31.5

// waterNeed says what pigs draw in a day, on a mild day and in heat: those there
// are, by what their barrels taught, or those thought of from start to end.
func waterNeed(a asked) Answer {
	n, weightKg, ours := a.meant()
	each := func(weightKg, tempC float64) float64 {
		litres, err := model.PigDrawLD(min(max(weightKg, 5), 180), tempC)
		if err != nil { // never inside these bounds
			return 0
		}
		return litres * float64(n)
	}
	data := map[string]any{"count": n, "weight_kg": kg(weightKg)}
	mild, hot := each(weightKg, mildC), each(weightKg, hotC)
	args := wording.Args{Q: []model.Quantity{wording.N(n), wording.Kg(weightKg), wording.LD(mild), wording.L(hot)}}
	if !ours {
		end := a.endKg()
		args.Q = append(args.Q, wording.Kg(end), wording.LD(each(end, mildC)), wording.L(each(end, hotC)))
		data["need_l_d"], data["hot_l_d"] = kg(mild), kg(hot)
		data["end_weight_kg"], data["end_use_l_d"], data["end_hot_l_d"] = kg(end), kg(each(end, mildC)), kg(each(end, hotC))
		text := a.say("water_need_plan", args) + "\n" + a.nipples(n, data)
		return Answer{Data: a.beside(waterLeft, data), Text: text}
	}
	var reasons []model.Reason
	if w, err := a.h.WaterLeft(a.now); err == nil && n == len(a.h.Alive(a.today)) && w.UseLD.Mid > 0 {
		mild = w.UseLD.Mid
		hot = max(hot, mild)
		args.Q[2], args.Q[3] = wording.LD(mild), wording.L(hot)
		reasons = w.Reasons
	}
	data["need_l_d"], data["hot_l_d"] = kg(mild), kg(hot)
	text := a.say("water_need", args) + "\n" + a.nipples(n, data)
	return Answer{Data: a.beside(waterLeft, data), Text: text, Reasons: reasons}
}

// nipples says how many drinkers the pigs want and how they should run.
func (a asked) nipples(n int, data map[string]any) string {
	want, err := model.NipplesFor(n)
	if err != nil {
		return a.v.Missing(err, a.Topic)
	}
	data["nipples"] = want
	return a.say("water_need_nipples", wording.Args{Q: []model.Quantity{wording.N(want), jar(model.MostFlowLMin), jar(model.LeastFlowLMin)}})
}

// jar is how many seconds a pint, or half a litre, takes at a flow in litres a
// minute: what a person times with a jar.
func jar(litresMin float64) model.Quantity {
	return model.Quantity{Value: jarL / litresMin * 60, Unit: model.Count}
}

// jarL is the jar: a US pint, near enough half a litre that one line serves both.
const jarL = 0.473176473

// flow says whether a drinker runs as it should, or how it should run.
func flow(a asked) Answer {
	args := wording.Args{Q: []model.Quantity{jar(model.MostFlowLMin), jar(model.LeastFlowLMin), jar(model.UsualFlowLMin)}}
	data := map[string]any{"least_l_min": model.LeastFlowLMin, "most_l_min": model.MostFlowLMin}
	if a.FlowLMin == nil {
		return Answer{Data: a.beside(waterLeft, data), Text: a.say("flow_right_is", args) + "\n" + a.say("flow_measure", args)}
	}
	class, err := model.ClassOfFlow(*a.FlowLMin)
	if err != nil {
		return a.missing(err)
	}
	data["flow_l_min"], data["class"] = kg(*a.FlowLMin), string(class)
	args.Q = append(args.Q, jar(max(*a.FlowLMin, 0.01)))
	return Answer{Data: a.beside(waterLeft, data), Text: a.say("flow_"+string(class), args) + "\n" + a.say("flow_right_is", args)}
}
