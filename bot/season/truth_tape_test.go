package season

import "math/rand/v2"

// A herd's shape says which girth goes with a weight. Lean finishers follow
// W = 1.95 G - 101.78 (223 pigs, J. Anim. Sci. meeting abstract, read), small
// local pigs W = 1.22 G - 52.384 (400 pigs; Kabululu, PLoS ONE 18(12) e0295433,
// 2023, read), in kg and cm; a herd lies between the two.
type shape struct {
	local float64   // share of the local type, 0 to mostLocal
	pigs  []float64 // each pig's own shape, as a factor on its weight
}

const (
	// mostLocal is how far an outdoor cross goes towards the local type: an
	// assumption, unmeasured. At 100 kg it makes the girths of herds differ as if
	// they were 11 % apart in weight (computed).
	mostLocal = 0.3
	// tapeSD is the error of one girth in centimetres: an assumption.
	tapeSD = 1.2
)

func (s shape) girthCm(pig int, kg float64, rng *rand.Rand) float64 {
	kg *= s.pigs[pig]
	lean, local := (kg+101.78)/1.95, (kg+52.384)/1.22
	return (1-s.local)*lean + s.local*local + tapeSD*rng.NormFloat64()
}

// scaleSD is how far a scale reading lies from a pig's own curve: 1.85 to 2.2 kg
// (computed from the records), gut fill and the hour included.
const scaleSD = 2.0

// bodySD is the spread of girths between pigs of one herd and weight, as weight:
// 3.7 kg of 60 are given by Kabululu, reading included.
const bodySD = 0.045
