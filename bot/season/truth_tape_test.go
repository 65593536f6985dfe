package season

import "math/rand/v2"

// A herd's shape says which girth goes with a weight. Lean finishers follow
// W = 1.95 G - 101.78 (223 pigs, J. Anim. Sci. meeting abstract, read), small
// local pigs W = 1.22 G - 52.384 (400 pigs; Kabululu, PLoS ONE 18(12) e0295433,
// 2023, read), in kg and cm; a herd lies between the two, the nearer to the
// second the less it was bred for lean growth.
type shape struct {
	local  float64 // share of the local type, 0 to mostLocal
	pigs   []float64
	tapeSD float64
}

// mostLocal is how far an outdoor cross goes towards the local type: an
// assumption, unmeasured.
const mostLocal = 0.35

func (s shape) girthCm(pig int, kg float64, rng *rand.Rand) float64 {
	kg *= s.pigs[pig]
	lean, local := (kg+101.78)/1.95, (kg+52.384)/1.22
	return (1-s.local)*lean + s.local*local + s.tapeSD*rng.NormFloat64()
}

// scaleSD is how far a scale reading lies from a pig's own curve: 1.85 to 2.2 kg
// (computed from the records), gut fill and the hour included.
const scaleSD = 2.0

// bodySD is the spread of girths between pigs of one herd and weight, as weight:
// 3.7 kg of 60 are given by Kabululu, reading included.
const bodySD = 0.045
