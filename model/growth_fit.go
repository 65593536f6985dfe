package model

import (
	"math"
	"sync"
)

// growthFit is what the herd's weighings say of its growth: the posterior of
// every pig's path along the growth table, jointly with what the herd shares.
//
// The table day of pig i of batch k, d days after the batch came, is
//
//	start_k + d (1 + herd speed + batch speed_k) + own_i + strayed_i(d) - lost_i(d)
//
// all of them normal beforehand (growth_prior.go). Given what is shared, the
// pigs are independent, so each is a small block of its own readings (a
// Gaussian process on d), and the shared unknowns are a regression on top;
// weighings of several pigs together are one more block conditioned on the
// pigs' own.
//
// Readings are taken in one after the other, in the order in which they were made
// (growth_meet.go). What is not linear - where on the table a reading is placed,
// how likely it is a slip, how wide readings scatter in this herd - is settled as
// each comes, and settled anew only by a reading that surprises; all the rest is
// linear and normal, where a reading can only narrow. So a weighing in the central
// half of its forecast never widens a pig's interval on the scale of the table.
type growthFit struct {
	pigs   []*growthPig
	groups []*growthGroup
	means  growthMeans
	events []*growthPig // whose the next reading is, in the order in which they were made; nil for several pigs'

	scatter map[string]*readingScatter // by kind of reading
	theta   []float64                  // shared unknowns: sharedColumns, then start and speed of each group
	info    lower                      // Cholesky factor of their posterior precision
	loose   lower                      // their precision by the prior and the pigs' own readings, not factored
	rhs     []float64
	stale   bool // theta and info lag behind loose and the means

	weighed bool // some pig was

	mu   sync.Mutex
	told map[Day][]PigWeight // weights of a day, worked out once
}

// growthGroup is pigs that came together.
type growthGroup struct {
	day     float64 // from which their path counts
	mean    float64 // of the start on the table
	sd      float64
	doubt   float64    // of sd, from 1: how much wider it is taken
	known   bool       // something says where they stand
	guessed bool       // the weight said on arrival, or the age, does
	weanKg  float64    // weight on arrival where it tells fresh weaners, else 0
	heat    []heatStep // hot days, in order
}

// growthPig is one pig's readings and their solved block. The rows of the block
// are the readings taken in so far.
type growthPig struct {
	animal   *Animal
	group    int
	readings []growthReading
	spells   []growthSpell
	like     *growthPig // an earlier pig of which just the same is known, else itself
	liked    bool       // some later pig is like it

	moments []growthMoment // of the readings
	own     lower          // covariance of the pig's own path at them

	block   lower       // Cholesky factor of the readings' covariance, shared things known
	inverse lower       // of block
	v       []float64   // block \ residual
	u       []float64   // block \ design, growthColumns a row
	w       []float64   // what each reading adds to the path by the kernel, all known
	edition int         // counts the changes of the block
	tail    *growthTail // nil while readings are taken in, and where it has none
}

// growthSpell is a spell of sickness, in days.
type growthSpell struct{ from, to float64 }

func (s growthSpell) sickDays(day float64) float64 {
	return math.Max(0, math.Min(day, s.to)-s.from)
}

// growthColumns counts the shared unknowns that one pig knows of: the herd's
// speed, four columns of biases, how heat slows it, its batch's start and its batch's speed.
const growthColumns = sharedColumns + 2

func (p *growthPig) column(k int) int {
	if k < sharedColumns {
		return k
	}
	return sharedColumns + 2*p.group + k - sharedColumns
}

func (h *Herd) growth() *growthFit {
	return h.figures.growth.get(func() *growthFit {
		f := &growthFit{scatter: map[string]*readingScatter{}, told: map[Day][]PigWeight{}}
		for by := range readingErrors {
			f.scatter[by] = newReadingScatter()
		}
		groupOf := map[*Group]int{}
		for i, g := range h.Groups {
			groupOf[g] = i
			f.groups = append(f.groups, &growthGroup{day: float64(g.Arrived), doubt: 1})
		}
		for _, a := range h.Animals {
			f.pigs = append(f.pigs, &growthPig{animal: a, group: groupOf[a.Group]})
		}
		f.collect(h)
		f.collectSpells(h)
		for i, g := range h.Groups {
			f.startOf(i, g)
		}
		f.collectHeat(h)
		f.pairAlike()
		f.solve()
		return f
	})
}

// growthDesign is how a pig's path moves with what it shares.
type growthDesign [growthColumns]float64

// prior is the mean of a pig's path on a day, and how the path moves with what the
// pig shares.
func (f *growthFit) prior(p *growthPig, day float64) (mean float64, design growthDesign) {
	g := f.groups[p.group]
	days := day - g.day
	taken := g.heatTaken(day)
	mean = days - weanedLag(g.weanKg, days) - heatGainPerFeed*taken
	for _, s := range p.spells {
		mean -= sickSlow * s.sickDays(day)
	}
	return mean, growthDesign{0: days, heatSlow: -taken, sharedColumns: 1, sharedColumns + 1: days}
}

// shared is what a pig's path has of what it shares, by the fit.
func (f *growthFit) shared(p *growthPig, design growthDesign) float64 {
	sum := 0.0
	for c, x := range design {
		sum += x * f.theta[p.column(c)]
	}
	return sum
}

// growthMoment is a day as a pig's path counts it: days since its batch came,
// and its own speed faded since.
type growthMoment struct{ days, faded float64 }

func (f *growthFit) moment(p *growthPig, day float64) growthMoment {
	days := math.Max(0, day-f.groups[p.group].day)
	return growthMoment{days, fadedAfter(days)}
}

// kernel is the covariance of a pig's own path at two moments.
func (f *growthFit) kernel(p *growthPig, a, b growthMoment) float64 {
	if a.days > b.days {
		a, b = b, a
	}
	k := pigStartDays*pigStartDays + strayed(a.days, a.faded, b.faded)
	if len(p.spells) > 0 {
		start := f.groups[p.group].day
		for _, s := range p.spells {
			k += sickSlowSD * sickSlowSD * s.sickDays(start+a.days) * s.sickDays(start+b.days)
		}
	}
	return k
}

// solve finds the posterior.
func (f *growthFit) solve() {
	f.startShared()
	for _, p := range f.pigs {
		f.prepare(p)
	}
	f.prepareMeans()
	for _, p := range f.events {
		if p == nil {
			f.meetMean()
		} else {
			f.meet(p)
		}
	}
	f.settle()
	for _, p := range f.pigs {
		f.weigh(p)
		f.tailOf(p)
	}
}

// startShared sets the prior of the shared unknowns.
func (f *growthFit) startShared() {
	n := sharedColumns + 2*len(f.groups)
	f.loose, f.rhs = newLower(n), make([]float64, n)
	f.info, f.theta = newLower(n), make([]float64, n)
	f.stale = true
	set := func(i int, mean, sd float64) {
		f.loose.row(i)[i] = 1 / (sd * sd)
		f.rhs[i] = mean / (sd * sd)
	}
	set(0, 0, herdSpeedSD)
	set(biasTape, 0, readingErrors[ByTape].bias)
	set(biasTapeSlope, 0, tapeSlopeSD)
	set(biasEye, 0, readingErrors[ByEye].bias)
	set(biasHanging, 0, readingErrors[byHanging].bias)
	set(heatSlow, 0, heatGainPerFeedSD)
	for k, g := range f.groups {
		set(sharedColumns+2*k, g.mean, g.sd*g.doubt)
		set(sharedColumns+2*k+1, 0, groupSpeedSD)
	}
}

// settle solves for the shared unknowns by what was taken in so far.
func (f *growthFit) settle() {
	if !f.stale {
		return
	}
	f.stale = false
	f.solveMeans()
	copy(f.info.a, f.loose.a)
	copy(f.theta, f.rhs)
	f.tellMeans()
	f.info.factor()
	f.info.forward(f.theta)
	f.info.backward(f.theta)
}

// weigh finds what each reading of a pig adds to its path.
func (f *growthFit) weigh(p *growthPig) {
	for i := range p.block.n {
		p.w[i] = p.v[i]
		for c, x := range p.u[i*growthColumns : (i+1)*growthColumns] {
			p.w[i] -= x * f.theta[p.column(c)]
		}
	}
	p.block.backward(p.w[:p.block.n])
}

// seen is the covariance of a pig's path at a moment with its own readings, seen
// through their block.
func (f *growthFit) seen(p *growthPig, at growthMoment) []float64 {
	return f.seenIn(make([]float64, p.block.n), p, at)
}

// seenIn is seen in a slice that is given.
func (f *growthFit) seenIn(q []float64, p *growthPig, at growthMoment) []float64 {
	if t := p.tail; t.holds(at) {
		for i := range q {
			q[i] = t.still[i] + at.faded*t.speed[i]
		}
		return q
	}
	for i := range q {
		q[i] = f.kernel(p, at, p.moments[i])
	}
	p.block.forward(q)
	return q
}
