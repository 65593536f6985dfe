package wording

import (
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

func (v Voice) waterEffects(e reading.Entry, w model.Water) []Effect {
	if w.Seen && w.Fraction != nil && *w.Fraction == 0 {
		return v.dryEffects(e, w.Barrel)
	}
	left, err := v.Herd.WaterLeft(v.Now)
	if err != nil {
		if lacks(err, "capacity") {
			return []Effect{{Code: "water_capacity", Names: []string{v.ownBarrel()}}}
		}
		return nil
	}
	return []Effect{v.lasts("water", nil, edgeOf(left.EdgeAt, v.Now, left.EdgeDays))}
}

// dryEffects is for a barrel found dry: after a long thirst water must come
// slowly, and how long it was dry only the person can know.
func (v Voice) dryEffects(e reading.Entry, barrel string) []Effect {
	dry := Effect{Code: "water_dry"}
	if since, told := v.dryMoment(e); told {
		if x, long := thirst(v.Now.Sub(since).Hours()); long {
			dry = x
		}
	}
	left, err := v.Herd.WaterLeft(v.Now)
	if err != nil || barrel == "" || len(v.Herd.Barrels) < 2 {
		return []Effect{dry}
	}
	others := 0.0
	for _, b := range left.Barrels {
		if !strings.EqualFold(b.Name, barrel) {
			others += b.Litres.Low
		}
	}
	if others <= 0 {
		return []Effect{dry}
	}
	return []Effect{{Code: "water_one_dry", At: edgeOf(left.EdgeAt, v.Now, left.EdgeDays), Q: []model.Quantity{L(others)}}}
}

// dryMoment is since when a barrel is told to be dry, at the latest: of a day
// without an hour since its noon. false where the text does not say.
func (v Voice) dryMoment(e reading.Entry) (time.Time, bool) {
	switch {
	case e.Minute != nil:
		return e.On.At(*e.Minute, v.Now.Location()), true
	case e.On < v.today():
		return e.On.At(noon, v.Now.Location()), true
	}
	return time.Time{}, false
}

// thirst says how to bring pigs back to water after so many hours at least; the
// general card where they are few or not known, since a dry barrel is found late.
func thirst(hours float64) (Effect, bool) {
	back, err := model.WaterReturnAfter(hours, false)
	if err != nil { // longer than any pig lives without
		back = model.ReturnByVet
	}
	switch back {
	case model.ReturnSlowly:
		return Effect{Code: "water_back_slowly"}, true
	case model.ReturnByVet:
		return Effect{Code: "water_back_vet"}, true
	}
	return Effect{}, false
}

// edgeOf is the moment of an edge, from its days where no moment is given.
func edgeOf(at, now time.Time, days float64) time.Time {
	if at.IsZero() {
		return now.Add(daysLong(days))
	}
	return at.In(now.Location())
}

func (v Voice) wallowEffects() []Effect {
	left, err := v.Herd.WallowLeft(v.Now)
	if err != nil {
		return nil
	}
	return []Effect{{Code: "wallow_dry", On: left.Dry.Mid, Q: []model.Quantity{L(left.FillL)}}}
}

// rainEffects says what rain did for the wallow.
func (v Voice) rainEffects() []Effect {
	left, err := v.Herd.WallowLeft(v.Now)
	if err != nil {
		return nil
	}
	return []Effect{{Code: "wallow_rained", On: left.Dry.Mid}}
}

func (v Voice) weatherEffects(on model.Day) []Effect {
	heat, err := v.Herd.Heat(on)
	if err != nil {
		return nil
	}
	q := []model.Quantity{{Value: heat.THI, Unit: model.Count}, {Value: heat.HighC, Unit: model.Celsius}}
	switch heat.Class {
	case model.HeatAlert, model.HeatDanger, model.HeatEmergency:
		return []Effect{{Code: "heat_" + string(heat.Class), Q: q}}
	case model.HeatWatch:
		return []Effect{{Code: "heat_watch", Q: q}}
	}
	return nil
}
