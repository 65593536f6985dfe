package model

import (
	"errors"
	"math"
	"sort"
	"sync"
)

// herdUse is the feed that leaves the feeders of a herd day by day, before
// anything learned of its appetite: intake by weight, times the effect of the
// mix's energy, times that of the weather.
type herdUse struct {
	h     *Herd
	weigh weigher
	turns []Day       // days from which other pigs are there, in order
	pigs  [][]*Animal // those there from each turn on
	mixes []mixFrom

	mu      sync.Mutex
	knots   map[Day]useKnot
	days    map[Day]dayUse
	spreads map[Day]float64
}

// weigher gives the weights that intake follows from; a herd is one.
type weigher interface {
	// medianWeights gives the median weight of those pigs of which it is known.
	// *Missing where it is of none.
	medianWeights(pigs []*Animal, on Day) ([]pigKg, error)
	MeanWeight(pigs []*Animal, on Day) (PigWeight, error)
}

// useKnot is the use at one day, before energy and weather. Between knots use
// runs straight: weights have no corners.
type useKnot struct {
	kg       float64 // all pigs together, reference feed
	weightKg float64 // mean
}

// dayUse is the use of one day at an appetite of 1.
type dayUse struct {
	useKnot
	pigs int
	// noise is the variance of the day's use round its expectation, in kg2: what
	// makes a week of a few pigs differ from the week before.
	noise float64
	// lacks is the *Missing of a day of whose pigs no weight is known: the use is
	// then a stand-in that teaches nothing.
	lacks error
}

// Pigs of which nothing is known stand in at a middling weight, with a week's
// use that may be anything.
const (
	standInKg     = 60.0
	standInSpread = 1.0 // relative SD
)

func newHerdUse(h *Herd, w weigher) *herdUse {
	u := &herdUse{h: h, weigh: w, knots: map[Day]useKnot{}, days: map[Day]dayUse{}, spreads: map[Day]float64{}}
	for _, a := range h.Animals {
		u.turns = append(u.turns, a.Group.Arrived)
		if a.Gone != nil {
			u.turns = append(u.turns, a.Gone.On)
		}
	}
	sort.Slice(u.turns, func(i, j int) bool { return u.turns[i] < u.turns[j] })
	for _, d := range u.turns {
		u.pigs = append(u.pigs, h.Alive(d))
	}
	for _, r := range h.Recipes {
		u.mixes = append(u.mixes, mixFrom{r.On, r.F.intakeEnergyMJKg()})
	}
	return u
}

// mixFrom is the energy of a mix and the day from which it is fed.
type mixFrom struct {
	from       Day
	energyMJKg float64
}

// turn is the index of the turn that the day belongs to, -1 before the first.
func (u *herdUse) turn(d Day) int {
	return sort.Search(len(u.turns), func(i int) bool { return u.turns[i] > d }) - 1
}

// alive lists the pigs there on the day.
func (u *herdUse) alive(d Day) []*Animal {
	if i := u.turn(d); i >= 0 {
		return u.pigs[i]
	}
	return nil
}

// knotStep is the days between knots.
const knotStep = 7

// on gives the use of a day.
func (u *herdUse) on(d Day) (dayUse, error) {
	u.mu.Lock()
	defer u.mu.Unlock()
	if have, ok := u.days[d]; ok {
		return have, nil
	}
	use, err := u.reckon(d)
	if err != nil {
		return dayUse{}, err
	}
	u.days[d] = use
	return use, nil
}

func (u *herdUse) reckon(d Day) (dayUse, error) {
	pigs := u.alive(d)
	if len(pigs) == 0 {
		return dayUse{}, nil
	}
	turn := u.turn(d)
	from := u.turns[turn]
	a := from + (d-from)/knotStep*knotStep
	b := a + knotStep
	if turn+1 < len(u.turns) {
		b = min(b, u.turns[turn+1]-1)
	}
	first, err := u.knot(a, pigs)
	var missing *Missing
	if errors.As(err, &missing) {
		kg := float64(len(pigs)) * feedUseKgD(standInKg, "", 0)
		return dayUse{useKnot: useKnot{kg, standInKg}, pigs: len(pigs), noise: 7 * kg * kg * standInSpread * standInSpread, lacks: err}, nil
	}
	if err != nil {
		return dayUse{}, err
	}
	k := first
	if b > a && d > a {
		second, err := u.knot(b, pigs)
		if err != nil {
			return dayUse{}, err
		}
		t := float64(d-a) / float64(b-a)
		k.kg += t * (second.kg - first.kg)
		k.weightKg += t * (second.weightKg - first.weightKg)
	}
	k.kg *= energyFactor(u.mixEnergyMJKg(d)) * u.h.weatherFeedFactor(d, k.weightKg)
	use := dayUse{useKnot: k, pigs: len(pigs)}
	use.noise = k.kg * k.kg * (7*weekSpread(len(pigs)) + u.h.sickFeedSpread(d, len(pigs)))
	return use, nil
}

func (u *herdUse) knot(d Day, pigs []*Animal) (useKnot, error) {
	if k, ok := u.knots[d]; ok {
		return k, nil
	}
	weights, err := u.weigh.medianWeights(pigs, d)
	if err != nil {
		return useKnot{}, err
	}
	var k useKnot
	for _, w := range weights {
		k.kg += feedUseKgD(w.kg, w.animal.Sex, 0)
		k.weightKg += w.kg / float64(len(weights))
	}
	if len(weights) > 0 { // pigs of unknown weight eat as the others do on the mean
		k.kg *= float64(len(pigs)) / float64(len(weights))
	}
	u.knots[d] = k
	return k, nil
}

// mixEnergyMJKg is the energy of the mix fed on the day, 0 where none is known.
// Before the first recipe was told the pigs are taken to have eaten it already.
func (u *herdUse) mixEnergyMJKg(d Day) float64 {
	if len(u.mixes) == 0 {
		return 0
	}
	i := sort.Search(len(u.mixes), func(i int) bool { return u.mixes[i].from > d })
	return u.mixes[max(i-1, 0)].energyMJKg
}

// over sums use and its noise between two counts of days.
func (u *herdUse) over(from, to float64) (kg, noise float64, err error) {
	for x := from; x < to; {
		d := Day(math.Floor(x))
		end := min(to, float64(d)+1)
		use, err := u.on(d)
		if err != nil {
			return 0, 0, err
		}
		kg += (end - x) * use.kg
		noise += (end - x) * use.noise
		x = end
	}
	return kg, noise, nil
}
