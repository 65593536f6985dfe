package model

import "slices"

// pigKg is a pig's weight in kg.
type pigKg struct {
	animal *Animal
	kg     float64
}

// byPig are weights by whose they are.
func byPig(weights []pigKg) map[*Animal]float64 {
	kg := make(map[*Animal]float64, len(weights))
	for _, w := range weights {
		kg[w.animal] = w.kg
	}
	return kg
}

// medianWeights is the middle of what Weights has of these pigs on a day. Ranges,
// gains and reasons take most of the time of that, and many figures need none.
// Missing as in Weights.
func (h *Herd) medianWeights(pigs []*Animal, on Day) ([]pigKg, error) {
	known, err := h.growing(pigs)
	if err != nil {
		return nil, err
	}
	f := h.growth()
	out := make([]pigKg, len(known))
	for i, p := range known {
		if same := slices.Index(known[:i], p.like); same >= 0 {
			out[i] = pigKg{p.animal, out[same].kg}
			continue
		}
		kg, _ := tableWeight(f.place(p, f.within(p, on)))
		out[i] = pigKg{p.animal, kg}
	}
	return out, nil
}
