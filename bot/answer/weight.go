package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// weight says what the pigs weigh and gain on a day, today unless asked
// otherwise.
func weight(a asked) Answer {
	on := a.today
	if a.On != nil {
		on = *a.On
	}
	pigs := a.pigs
	if !a.named { // a day in the past has the pigs of that day
		pigs = a.h.Alive(on)
	}
	if len(pigs) == 0 {
		return a.missing(&model.Missing{What: "pigs"})
	}
	animals := map[string]any{}
	var parts []string
	var reasons []model.Reason
	names, of := byName(pigs)
	for _, name := range names {
		w, err := a.h.MeanWeight(of[name], on)
		if err != nil {
			return a.missing(err)
		}
		animals[name] = weightData(w)
		parts = append(parts, a.weightPart(name, w))
		if len(names) == 1 {
			reasons = w.Reasons
		}
	}
	data := map[string]any{"on": on.String(), "animals": animals}
	if len(names) == 1 {
		return Answer{Data: data, Text: a.oneWeight(names[0], of[names[0]], on), Reasons: reasons}
	}
	mean, err := a.h.MeanWeight(pigs, on)
	if err != nil {
		return a.missing(err)
	}
	data["mean"] = weightData(mean)
	args := a.weightArgs("", mean, on)
	return Answer{Data: data, Text: a.say("mean_weight", args) + "\n" + strings.Join(parts, ", ") + ".", Reasons: mean.Reasons}
}

func weightData(w model.PigWeight) map[string]any {
	return map[string]any{
		"weight_kg": kg(w.WeightKg.Mid), "low_kg": kg(w.WeightKg.Low), "high_kg": kg(w.WeightKg.High),
		"gain_kg_d": kg(w.GainKgD.Mid),
	}
}

// weightArgs fills a sentence with a weight, its range and the gain.
func (a asked) weightArgs(name string, w model.PigWeight, on model.Day) wording.Args {
	args := wording.Args{Q: append(span(w.WeightKg), wording.KgD(w.GainKgD.Mid))}
	if name != "" {
		args.Names = []string{name}
	}
	if on != a.today {
		args.Days = []model.Day{on}
	}
	return args
}

func (a asked) weightPart(name string, w model.PigWeight) string {
	code := "weight_part"
	if a.Topic == "growth" {
		code = "gain_part"
	}
	if name == model.All {
		name = a.v.Phrase("others", wording.Args{})
	}
	return a.v.Phrase(code, a.weightArgs(name, w, a.today))
}

func (a asked) oneWeight(name string, pigs []*model.Animal, on model.Day) string {
	w, err := a.h.MeanWeight(pigs, on)
	if err != nil {
		return a.v.Missing(err, a.Topic)
	}
	if name == model.All {
		if len(pigs) > 1 {
			return a.say("mean_weight", a.weightArgs("", w, on))
		}
		name = a.v.Phrase("the_pig", wording.Args{})
	}
	return a.say("one_weight", a.weightArgs(name, w, on))
}
