package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// cold says how a night bears on the pigs: tonight, or that of the day asked about.
func cold(a asked) Answer {
	on := a.today
	if a.On != nil {
		on = *a.On
	}
	n, weightKg, ours := a.meant()
	bare, err := model.NightLowBorneC(weightKg, false)
	if err != nil {
		return a.missing(err)
	}
	bedded, err := model.NightLowBorneC(weightKg, true)
	if err != nil {
		return a.missing(err)
	}
	args := wording.Args{Days: []model.Day{on}, Q: []model.Quantity{{}, celsius(bare), celsius(bedded), wording.Kg(weightKg)}}
	data := map[string]any{"on": on.String(), "bare_floor_c": kg(bare), "bedded_c": kg(bedded), "for_weight_kg": kg(weightKg)}
	rest := "cold_bears"
	if !ours {
		rest = "cold_bears_small"
	}
	low, told := a.nightLow(on)
	if !told {
		return Answer{Data: a.beside(heat, data), Text: a.say(rest, args) + "\n" + a.say("cold_untold", args)}
	}
	args.Q[0] = celsius(low)
	data["low_c"] = kg(low)
	frost, err := model.ClassOfFrost(low)
	if err != nil {
		return a.missing(err)
	}
	data["frost"] = string(frost)
	code := "cold_fine"
	switch {
	case low < bedded:
		code = "cold_too"
	case low < bare:
		code = "cold_straw"
	}
	lines := []string{a.say(code, args)}
	if frost != model.FrostNone {
		lines = append(lines, a.say("cold_"+string(frost), args))
	}
	lines = append(lines, a.say(rest, args))
	if straw, err := model.BeddingKg(n, 7); err == nil && low < bare && ours {
		data["straw_week_kg"] = kg(straw.High)
		lines[len(lines)-1] += " " + a.say("cold_bedding", wording.Args{Q: []model.Quantity{wording.Kg(straw.High)}})
	}
	return Answer{Data: a.beside(heat, data), Text: strings.Join(lines, "\n")}
}

// nightLow is the low told or forecast for the night of a day: of the day, or where
// only the next morning's is known, that.
func (a asked) nightLow(on model.Day) (float64, bool) {
	for _, d := range []model.Day{on, on + 1} {
		if w, _, ok := a.h.WeatherOf(d); ok && w.LowC != nil {
			return *w.LowC, true
		}
	}
	return 0, false
}
