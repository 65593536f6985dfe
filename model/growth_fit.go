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
//	start_k + d (1 + herd speed + batch speed_k) + own_i + strayed_i(d) - lost(d)
//
// all of them normal beforehand (growth_prior.go). Given what is shared, the
// pigs are independent, so each is a small block of its own readings (a
// Gaussian process on d), and the shared unknowns are a regression on top;
// weighings of several pigs together are one more block conditioned on the
// pigs' own. Readings are linearised about the fit and the fit repeated.
type growthFit struct {
	pigs   []*growthPig
	groups []*growthGroup
	means  growthMeans

	scatter map[string]*readingScatter // by kind of reading
	theta   []float64                  // shared unknowns: sharedColumns, then start and speed of each group
	info    lower                      // Cholesky factor of their posterior precision
	loose   lower                      // the same precision before factoring
	rhs     []float64

	weighed bool // some pig was

	mu   sync.Mutex
	told map[Day][]PigWeight // weights of a day, worked out once
}

// growthGroup is pigs that came together.
type growthGroup struct {
	day     float64 // from which their path counts
	mean    float64 // of the start on the table
	sd      float64
	known   bool    // something says where they stand
	guessed bool    // the weight said on arrival, or the age, does
	weanKg  float64 // weight on arrival where it tells fresh weaners, else 0
}

// growthPig is one pig's readings and their solved block.
type growthPig struct {
	animal   *Animal
	group    int
	readings []growthReading
	spells   []growthSpell

	moments []growthMoment // of the readings
	own     lower          // covariance of the pig's own path at them

	block lower     // Cholesky factor of the readings' covariance, shared things known
	v     []float64 // block \ residual
	u     []float64 // block \ design, growthColumns a row
	w     []float64 // what each reading adds to the path by the kernel, all known
}

// growthMeans is the block of the readings of several pigs together.
type growthMeans struct {
	readings []growthReading
	parts    [][]growthPart
	block    lower
	v        []float64
	u        []float64 // a row of all shared unknowns for each reading
}

// growthPart is one pig's part in a mean: how the mean moves with the pig's
// table day, and the pig's own readings seen from there.
type growthPart struct {
	pig   int
	coef  float64
	table float64
	at    growthMoment
	q     []float64
}

// growthSpell is a spell of sickness, in days.
type growthSpell struct{ from, to float64 }

func (s growthSpell) sickDays(day float64) float64 {
	return math.Max(0, math.Min(day, s.to)-s.from)
}

// growthColumns counts the shared unknowns that one pig knows of: the herd's
// speed, three biases, its batch's start and its batch's speed.
const growthColumns = sharedColumns + 2

func (p *growthPig) column(k int) int {
	if k < sharedColumns {
		return k
	}
	return sharedColumns + 2*p.group + k - sharedColumns
}

// growthRounds is how often the fit is linearised anew. The curve is nearly
// straight within its errors, so it settles after three.
const growthRounds = 5

func (h *Herd) growth() *growthFit {
	return h.figures.growth.get(func() *growthFit {
		f := &growthFit{scatter: map[string]*readingScatter{}, told: map[Day][]PigWeight{}}
		for by := range readingErrors {
			f.scatter[by] = &readingScatter{ratio: 1}
		}
		groupOf := map[*Group]int{}
		for i, g := range h.Groups {
			groupOf[g] = i
			f.groups = append(f.groups, &growthGroup{day: float64(g.Arrived)})
		}
		for _, a := range h.Animals {
			f.pigs = append(f.pigs, &growthPig{animal: a, group: groupOf[a.Group]})
		}
		f.collect(h)
		f.collectSpells(h)
		for i, g := range h.Groups {
			f.startOf(i, g)
		}
		f.solve()
		return f
	})
}

// startOf sets what is known of where a group stood when it came.
func (f *growthFit) startOf(k int, from *Group) {
	g := f.groups[k]
	g.mean, g.sd = openStartDay, openStartSD
	first, sum, n := math.Inf(1), 0.0, 0.0
	read := func(r *growthReading) {
		g.known = true
		g.day = math.Min(g.day, r.day)
		if first = math.Min(first, r.day); r.day <= float64(from.Arrived)+3 {
			sum, n = sum+r.kg, n+1
		}
	}
	for _, p := range f.pigs {
		for i := range p.readings {
			if p.group == k {
				read(&p.readings[i])
			}
		}
	}
	for i := range f.means.readings {
		for _, j := range f.means.readings[i].pigs {
			if f.pigs[j].group == k {
				read(&f.means.readings[i])
				break
			}
		}
	}
	if n > 0 {
		g.weanKg = sum / n
		g.mean = tableDay(g.weanKg)
	}
	early := float64(from.Arrived) - g.day // days weighed before they came
	switch {
	case from.WeightKg != nil:
		day := tableDay(*from.WeightKg)
		_, gain := tableWeight(day)
		g.mean, g.sd = day-early, math.Hypot(guessedStartSD**from.WeightKg+0.3, 0.2*early)/gain
		g.weanKg = *from.WeightKg
		g.known, g.guessed = true, true
	case from.Born != nil && g.day >= float64(*from.Born):
		age := g.day - float64(*from.Born)
		g.mean, g.sd = age, math.Max(ageStartFloor, ageStartSD*age)
		if n == 0 {
			g.weanKg, _ = tableWeight(age)
		}
		g.known, g.guessed = true, true
	}
	if early > 0 || from.Born != nil && int(from.Arrived-*from.Born) > weanedByAge || g.weanKg == 0 {
		g.weanKg = weanedNoneKg
	}
}

// collectSpells reads the spells of sickness.
func (f *growthFit) collectSpells(h *Herd) {
	for _, s := range h.Sicks {
		day := float64(s.On)
		for _, a := range resolve(s.F.Animals, h.aliveAt(s.At)) {
			p := f.pigs[a.Number]
			last := len(p.spells) - 1
			running := last >= 0 && p.spells[last].to >= day
			switch {
			case running && s.F.Well:
				p.spells[last].to = day
			case running:
				p.spells[last].to = day + sickDays
			case !s.F.Well:
				p.spells = append(p.spells, growthSpell{day, day + sickDays})
			}
		}
	}
}

// prior is the mean of a pig's path and the design of the shared unknowns but
// for the biases, on a day.
func (f *growthFit) prior(p *growthPig, day float64) (mean, days float64) {
	g := f.groups[p.group]
	days = day - g.day
	mean = days - weanedLag(g.weanKg, days)
	for _, s := range p.spells {
		mean -= sickSlow * s.sickDays(day)
	}
	return mean, days
}

// growthMoment is a day as a pig's path counts it: days since its batch came,
// and its own speed faded since.
type growthMoment struct{ days, faded float64 }

func (f *growthFit) moment(p *growthPig, day float64) growthMoment {
	days := math.Max(0, day-f.groups[p.group].day)
	return growthMoment{days, faded(days)}
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
	for round := range growthRounds {
		f.startShared()
		for _, p := range f.pigs {
			f.solvePig(p)
		}
		f.solveMeans()
		f.solveShared()
		if round == growthRounds-1 {
			return
		}
		f.judge(round == growthRounds-2)
		f.relinearise()
	}
}

// startShared sets the prior of the shared unknowns.
func (f *growthFit) startShared() {
	n := sharedColumns + 2*len(f.groups)
	f.loose, f.rhs = newLower(n), make([]float64, n)
	set := func(i int, mean, sd float64) {
		f.loose.row(i)[i] = 1 / (sd * sd)
		f.rhs[i] = mean / (sd * sd)
	}
	set(0, 0, herdSpeedSD)
	set(biasTape, 0, readingErrors[ByTape].bias)
	set(biasEye, 0, readingErrors[ByEye].bias)
	set(biasHanging, 0, readingErrors[byHanging].bias)
	for k, g := range f.groups {
		set(sharedColumns+2*k, g.mean, g.sd)
		set(sharedColumns+2*k+1, 0, groupSpeedSD)
	}
}

// prepare computes once what no round changes.
func (f *growthFit) prepare(p *growthPig) {
	n := len(p.readings)
	p.block, p.own = newLower(n), newLower(n)
	p.v, p.w, p.u = make([]float64, n), make([]float64, n), make([]float64, n*growthColumns)
	p.moments = make([]growthMoment, n)
	for i := range n {
		p.moments[i] = f.moment(p, p.readings[i].day)
		row := p.own.row(i)
		for j := range i + 1 {
			row[j] = f.kernel(p, p.moments[j], p.moments[i])
		}
	}
}

// solvePig solves the block of one pig's own readings and adds what it says of
// the shared unknowns.
func (f *growthFit) solvePig(p *growthPig) {
	n := len(p.readings)
	if n == 0 {
		return
	}
	if p.v == nil {
		f.prepare(p)
	}
	for i := range p.readings {
		r := &p.readings[i]
		kg, gain := tableWeight(r.table)
		mean, days := f.prior(p, r.day)
		p.v[i] = r.table + (r.kg-kg)/gain - mean
		u := p.u[i*growthColumns : (i+1)*growthColumns]
		clear(u)
		u[0], u[sharedColumns], u[sharedColumns+1] = days, 1, days
		if r.err.column != biasNone {
			u[r.err.column] = kg / gain
		}
		row, own := p.block.row(i), p.own.row(i)
		for j := range i + 1 {
			o := &p.readings[j]
			row[j] = own[j]
			if r.err.shape > 0 && o.by == r.by {
				okg, ogain := tableWeight(o.table)
				row[j] += r.err.shape * r.err.shape * kg / gain * okg / ogain
			}
		}
		row[i] += r.noise(kg, gain)
	}
	p.block.factor()
	p.block.forward(p.v)
	p.block.forwardRows(p.u, growthColumns)
	for a := range growthColumns {
		ca := p.column(a)
		for b := range a + 1 {
			s := 0.0
			for i := range n {
				s += p.u[i*growthColumns+a] * p.u[i*growthColumns+b]
			}
			f.loose.row(ca)[p.column(b)] += s
		}
		s := 0.0
		for i := range n {
			s += p.u[i*growthColumns+a] * p.v[i]
		}
		f.rhs[ca] += s
	}
}

// noise is the variance of a reading in table days, a slip allowed for.
func (r *growthReading) noise(kg, gain float64) float64 {
	right := r.sd(kg)
	right *= right
	wrong := right + slipSD*slipSD*kg*kg
	return 1 / ((1-r.wrong)/right + r.wrong/wrong) / (gain * gain)
}

// sd is the standard deviation of a reading's own error in kg, as such readings
// scatter in this herd.
func (r *growthReading) sd(kg float64) float64 {
	return r.err.sd(kg) * math.Sqrt(r.scatter.ratio)
}

// solveMeans solves the block of readings of several pigs together, each pig's
// own readings known.
func (f *growthFit) solveMeans() {
	m := &f.means
	n, cols := len(m.readings), len(f.rhs)
	if n == 0 {
		return
	}
	first := m.parts == nil
	if first {
		m.parts = make([][]growthPart, n)
	}
	m.block, m.v, m.u = newLower(n), make([]float64, n), make([]float64, n*cols)
	for i := range m.readings {
		r := &m.readings[i]
		share := 1 / float64(len(r.pigs))
		mean, u := r.kg, m.u[i*cols:(i+1)*cols]
		total := 0.0
		for k, j := range r.pigs {
			p := f.pigs[j]
			at := f.moment(p, r.day)
			if first {
				m.parts[i] = append(m.parts[i], growthPart{pig: j, table: r.table})
			}
			part := &m.parts[i][k]
			kg, gain := tableWeight(part.table)
			part.coef, part.at, part.q = gain*share, at, f.seen(p, at)
			total += kg * share
			prior, days := f.prior(p, r.day)
			mean -= (kg + gain*(prior+dot(part.q, p.v)-part.table)) * share
			for c, x := range [...]float64{0: days, sharedColumns: 1, sharedColumns + 1: days} {
				for k, q := range part.q {
					x -= q * p.u[k*growthColumns+c]
				}
				u[p.column(c)] += part.coef * x
			}
		}
		if r.err.column != biasNone {
			u[r.err.column] += total
		}
		m.v[i] = mean
		row := m.block.row(i)
		for j := range i + 1 {
			row[j] = f.shared(m.parts[i], m.parts[j])
		}
		row[i] += r.noise(total, 1)
	}
	m.block.factor()
	m.block.forward(m.v)
	m.block.forwardRows(m.u, cols)
	for i := range n {
		u := m.u[i*cols : (i+1)*cols]
		for a := range cols {
			row := f.loose.row(a)
			for b := range a + 1 {
				row[b] += u[a] * u[b]
			}
			f.rhs[a] += u[a] * m.v[i]
		}
	}
}

// shared is the covariance of two means through the pigs that are in both.
func (f *growthFit) shared(a, b []growthPart) float64 {
	s := 0.0
	j := 0
	for i := range a {
		for j < len(b) && b[j].pig < a[i].pig {
			j++
		}
		if j < len(b) && b[j].pig == a[i].pig {
			s += a[i].coef * b[j].coef * (f.kernel(f.pigs[a[i].pig], a[i].at, b[j].at) - dot(a[i].q, b[j].q))
		}
	}
	return s
}

// seen is the covariance of a pig's path at a moment with its own readings, seen
// through their block.
func (f *growthFit) seen(p *growthPig, at growthMoment) []float64 {
	q := make([]float64, len(p.readings))
	for i, m := range p.moments {
		q[i] = f.kernel(p, at, m)
	}
	p.block.forward(q)
	return q
}

// solveShared solves for the shared unknowns.
func (f *growthFit) solveShared() {
	f.info = lower{f.loose.n, append([]float64(nil), f.loose.a...)}
	f.info.factor()
	f.theta = append([]float64(nil), f.rhs...)
	f.info.forward(f.theta)
	f.info.backward(f.theta)
	for _, p := range f.pigs {
		for i := range p.w {
			p.w[i] = p.v[i]
			for c := range growthColumns {
				p.w[i] -= p.u[i*growthColumns+c] * f.theta[p.column(c)]
			}
		}
		p.block.backward(p.w)
	}
}

// relinearise moves each reading's place on the table to where the fit has it.
func (f *growthFit) relinearise() {
	for _, p := range f.pigs {
		for i := range p.readings {
			p.readings[i].table = f.path(p, p.readings[i].day)
		}
	}
	for i, parts := range f.means.parts {
		for k := range parts {
			parts[k].table = f.path(f.pigs[parts[k].pig], f.means.readings[i].day)
		}
	}
}
