package wording

import (
	"strings"
	"time"

	"troughbell/model"
)

func (v Voice) waterEffects(w model.Water) []Effect {
	if w.Seen && w.Fraction != nil && *w.Fraction == 0 {
		return v.dryEffects(w.Barrel)
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
func (v Voice) dryEffects(barrel string) []Effect {
	left, err := v.Herd.WaterLeft(v.Now)
	if err != nil || barrel == "" || len(v.Herd.Barrels) < 2 {
		return []Effect{{Code: "water_dry"}}
	}
	others := 0.0
	for _, b := range left.Barrels {
		if !strings.EqualFold(b.Name, barrel) {
			others += b.Litres.Low
		}
	}
	if others <= 0 {
		return []Effect{{Code: "water_dry"}}
	}
	return []Effect{{Code: "water_one_dry", At: edgeOf(left.EdgeAt, v.Now, left.EdgeDays), Q: []model.Quantity{L(others)}}}
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
