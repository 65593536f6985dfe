package wording

import (
	"troughbell/bot/reading"
	"troughbell/model"
)

// goneEffects says how many pigs are left, or, where the butcher's weights came
// in for pigs that had left before, what share they are.
func (v Voice) goneEffects(e reading.Entry, g model.Gone) []Effect {
	var out []Effect
	if g.How == model.Died {
		out = append(out, Effect{Code: "died"})
	}
	pigs := v.pigsGone(g)
	if share, ok := v.dressing(g, pigs); ok {
		out = append(out, share)
	}
	if (g.HangingKg != nil || g.PackagedKg != nil) && leftBefore(pigs, e.On) {
		return out
	}
	left := Effect{Code: "left", Q: []model.Quantity{N(v.alive())}}
	if v.alive() == 0 {
		left.Code = "none_left"
	}
	return append(out, left)
}

// pigsGone finds the pigs of a record that have left; without names all that
// went the same way.
func (v Voice) pigsGone(g model.Gone) []*model.Animal {
	var out []*model.Animal
	for _, a := range v.Herd.Animals {
		if a.Gone == nil || a.Gone.F.How != g.How {
			continue
		}
		if len(g.Animals) == 0 || g.Animals[0] == model.All || coversSame(g.Animals, []string{a.Name}) {
			out = append(out, a)
		}
	}
	return out
}

func leftBefore(pigs []*model.Animal, on model.Day) bool {
	for _, p := range pigs {
		// Pigs loaded this morning and weighed at noon left by another record.
		weighed := p.Gone.F.HangingKg != nil || p.Gone.F.PackagedKg != nil
		if p.Gone.On >= on && weighed {
			return false
		}
	}
	return len(pigs) > 0
}

// dressing is the hanging weight as a share of what the pigs weighed alive.
func (v Voice) dressing(g model.Gone, pigs []*model.Animal) (Effect, bool) {
	if g.HangingKg == nil || len(pigs) == 0 {
		return Effect{}, false
	}
	live, err := v.Herd.MeanWeight(pigs, pigs[0].Gone.On)
	if err != nil || live.WeightKg.Mid <= 0 {
		return Effect{}, false
	}
	each := *g.HangingKg
	if len(g.Animals) == 0 || g.Animals[0] == model.All { // a total
		each /= float64(len(pigs))
	}
	return Effect{Code: "dressed", Q: []model.Quantity{
		{Value: 100 * each / live.WeightKg.Mid, Unit: model.Percent}, Kg(live.WeightKg.Mid),
	}}, true
}
