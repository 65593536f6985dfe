package answer

import (
	"maps"

	"troughbell/bot/wording"
	"troughbell/model"
)

// needs works out what the pigs asked about will need; they are those of a plan
// where the herd has none.
func (a asked) needs() (model.Needs, model.NeedsQuery, error) {
	n, weightKg, _ := a.meant()
	q := model.NeedsQuery{Count: n, From: a.today, WeightKg: min(weightKg, a.endKg()-1), TargetKg: a.endKg()}
	if a.On != nil {
		q.From = *a.On
	}
	q.LeadDays, _ = a.h.BookingLead()
	needs, err := model.PlanNeeds(q)
	return needs, q, err
}

// space says what pens, shelter and shade the pigs take.
func space(a asked) Answer {
	n, q, err := a.needs()
	if err != nil {
		return a.missing(err)
	}
	keep, err := model.StockingRate(1, model.MeanPigKg, 1e4, seasonDays)
	if err != nil {
		return a.missing(err)
	}
	open := 1e4 * keep.OverCover * float64(q.Count)
	data := planData(q, n)
	data["season_m2"] = kg(open)
	args := wording.Args{Q: []model.Quantity{
		wording.N(q.Count), area(n.PenM2), area(n.ShelterM2), area(n.ShadeM2), wording.Kg(q.TargetKg), area(open),
	}}
	return Answer{Data: data, Text: a.say("space", args) + "\n" + a.say("space_pens", args), Reasons: n.Reasons}
}

// seasonDays is the stay of the trial that the rate for lasting grass is from,
// fourteen weeks.
const seasonDays = 98

// ground says how many pigs the ground carries with grass left on it: that asked
// about, else all pens of the herd, else an acre or a hectare.
func ground(a asked) Answer {
	m2, code := 0.0, "ground"
	switch {
	case a.AreaM2 != nil:
		m2, code = *a.AreaM2, "ground_asked"
	default:
		for _, p := range a.h.Pens {
			if p.AreaM2 != nil {
				m2 += *p.AreaM2
			}
		}
	}
	if m2 == 0 {
		m2, code = acreM2, "ground_asked"
		if a.v.Metric() {
			m2 = 1e4
		}
	}
	one, err := model.StockingRate(1, model.MeanPigKg, m2, seasonDays)
	if err != nil {
		return a.missing(err)
	}
	carries := int(1 / one.OverCover)
	data := map[string]any{}
	if needs, q, err := a.needs(); err == nil {
		data = planData(q, needs)
	}
	data["area_m2"], data["pigs"] = kg(m2), carries
	args := wording.Args{Q: []model.Quantity{area(m2), wording.N(carries), area(1e4 * one.OverCover * m2 / 1e4)}}
	switch {
	case carries < 1 && code == "ground":
		code = "ground_none"
	case carries < 1:
		code = "ground_asked_none"
	}
	text := a.say(code, args)
	if n := len(a.h.Alive(a.today)); n > 0 && a.AreaM2 == nil && len(a.h.Pens) > 0 {
		if all, err := model.StockingRate(n, model.MeanPigKg, m2, seasonDays); err == nil {
			data["yours"], data["over_cover"] = n, kg(all.OverCover)
			yours := "ground_yours_fit"
			if all.OverCover > 1 {
				yours = "ground_yours_bare"
			}
			text += "\n" + a.say(yours, wording.Args{Q: []model.Quantity{wording.N(n)}})
		}
	}
	return Answer{Data: data, Text: text + "\n" + a.say("ground_rest", args)}
}

// acreM2 is a US acre in square metres.
const acreM2 = 4046.8564224

// straw says how much bedding the pigs take up to the butcher.
func straw(a asked) Answer {
	needs, q, err := a.needs()
	if err != nil {
		return a.missing(err)
	}
	days := float64(needs.Target.Mid - q.From)
	if b, ok := a.h.NextBooking(a.today); ok {
		days = float64(b.Day - a.today)
	}
	if a.On != nil && *a.On > a.today && len(a.h.Alive(a.today)) > 0 {
		days = float64(*a.On - a.today)
	}
	all, err := model.BeddingKg(q.Count, days)
	if err != nil {
		return a.missing(err)
	}
	week, err := model.BeddingKg(q.Count, 7)
	if err != nil {
		return a.missing(err)
	}
	data := planData(q, needs)
	data["days"], data["straw_week_kg"] = days, kg(week.Mid)
	bounds(data, "straw", all)
	args := wording.Args{Q: append([]model.Quantity{wording.N(q.Count), wording.Days(days), wording.Kg(week.Mid)}, span(all)...)}
	return Answer{Data: data, Text: a.say("straw", args) + "\n" + a.say("straw_rest", args)}
}

// feederPlaces says how many feeding places the pigs want, and how wide.
func feederPlaces(a asked) Answer {
	n, weightKg, ours := a.meant()
	places, err := model.FeederHolesFor(n)
	if err != nil {
		return a.missing(err)
	}
	now, err := model.FeederWidthCm(min(max(weightKg, 20), 150))
	if err != nil {
		return a.missing(err)
	}
	end, err := model.FeederWidthCm(min(max(a.endKg(), 20), 150))
	if err != nil {
		return a.missing(err)
	}
	now, end = now*pigsAPlace, end*pigsAPlace
	needs, q, err := a.needs()
	if err != nil {
		return a.missing(err)
	}
	data := planData(q, needs)
	maps.Copy(data, map[string]any{"places": places, "place_width_cm": kg(now), "place_width_end_cm": kg(end)})
	args := wording.Args{Q: []model.Quantity{wording.N(n), wording.N(places), cm(now), wording.Kg(weightKg), cm(end), wording.Kg(a.endKg())}}
	code := "feeder_places"
	if !ours {
		code = "feeder_places_plan"
	}
	return Answer{Data: data, Text: a.say(code, args) + "\n" + a.say("feeder_places_rest", args)}
}

// pigsAPlace is how many pigs share a place where its width is published.
const pigsAPlace = 4

// fence says which strands and how much wire the pigs want.
func fence(a asked) Answer {
	needs, q, err := a.needs()
	if err != nil {
		return a.missing(err)
	}
	small, err := model.FenceStrandsCm(min(q.WeightKg, 220))
	if err != nil {
		return a.missing(err)
	}
	wire, err := model.FenceWireM(needs.PenM2, len(small))
	if err != nil {
		return a.missing(err)
	}
	data := planData(q, needs)
	data["strands_cm"], data["wire_m"] = small, kg(wire)
	args := wording.Args{Q: []model.Quantity{wording.N(len(small)), {Value: wire, Unit: model.Metres}, area(needs.PenM2)}}
	for _, s := range small {
		args.Q = append(args.Q, cm(s))
	}
	code := "fence"
	if len(small) == 3 {
		code = "fence_small"
	}
	return Answer{Data: data, Text: a.say(code, args) + "\n" + a.say("fence_rest", args)}
}
