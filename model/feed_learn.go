package model

import (
	"math"
	"time"
)

// learn takes a record into the belief.
func (f *feedFit) learn(g gaussian, marks []feedMark, e feedEvent, x float64) error {
	var name string
	switch fact := e.fact.(type) {
	case Refill:
		name = fact.Feeder
	case FeedLevel:
		name = fact.Feeder
	}
	meant := f.spoken(name, x)
	for _, i := range meant {
		if _, alarm := e.fact.(Alarm); !marks[i].said && !alarm {
			f.begin(g, i, x)
		}
	}
	f.heed(g, meant, e)
	switch fact := e.fact.(type) {
	case Refill:
		parts := f.roomShares(g, meant)
		for k, i := range meant {
			f.refilled(g, i, fact, parts[k], e)
			f.spans[i].poured(fact, parts[k], e.record.At)
			marks[i].note(e.record.At, fact.Full || fact.Fraction != nil || fact.FromEmpty)
		}
	case FeedLevel:
		if fact.Spilled {
			f.spilled(g, meant, fact)
			for _, i := range meant {
				f.spans[i] = feedSince{}
				marks[i].note(e.record.At, false)
			}
			break
		}
		for k, share := range f.levelShares(g, meant) {
			if err := f.levelSeen(g, meant[k], fact, share, x, e); err != nil {
				return err
			}
			marks[meant[k]].note(e.record.At, true)
		}
	case Alarm: // pigs cannot get at feed, whatever hangs in the feeder
		for _, i := range meant {
			f.spans[i] = feedSince{}
			if marks[i].said {
				g.forget(placeLevel(i), 0, emptySD*g.mean[placeCapacity(i)])
				marks[i].note(e.record.At, true)
			}
		}
	}
	f.taught(g, e.record.ID)
	for _, i := range meant { // a story against all reason must not shrink it away
		g.mean[placeCapacity(i)] = max(g.mean[placeCapacity(i)], leastCapacity*f.feeders[i].capacityKg)
	}
	return nil
}

// note takes down that a record spoke of the level.
func (m *feedMark) note(at time.Time, seen bool) {
	m.said, m.at = true, at
	if seen {
		m.seen = at
	}
}

// begin believes something of the level before the first record of a feeder:
// nothing where the pigs had just come, a little otherwise.
func (f *feedFit) begin(g gaussian, i int, x float64) {
	capacity := g.mean[placeCapacity(i)]
	for _, a := range f.h.Animals {
		if wallDays(a.Group.ArriveAt)+freshDays < x {
			g.forget(placeLevel(i), leftBefore*capacity, leftBefore*capacity)
			return
		}
	}
	g.forget(placeLevel(i), 0, emptySD*capacity)
}

// roomShares splits feed poured into feeders that were not told apart by the
// room in them.
func (f *feedFit) roomShares(g gaussian, of []int) []float64 {
	out := make([]float64, len(of))
	var sum float64
	for k, i := range of {
		capacity := g.mean[placeCapacity(i)]
		out[k] = max(capacity-max(g.mean[placeLevel(i)], 0), 0.01*capacity)
		sum += out[k]
	}
	for k := range out {
		out[k] /= sum
	}
	return out
}

// levelShares splits an amount seen in feeders that were not told apart.
func (f *feedFit) levelShares(g gaussian, of []int) []float64 {
	out := make([]float64, len(of))
	var sum float64
	for k, i := range of {
		out[k] = g.mean[placeCapacity(i)]
		sum += out[k]
	}
	for k := range out {
		out[k] /= sum
	}
	return out
}

func (f *feedFit) refilled(g gaussian, i int, r Refill, part float64, e feedEvent) {
	level, capacity := placeLevel(i), g.mean[placeCapacity(i)]
	if r.FromEmpty {
		f.seenEmpty(g, i, e)
	} else {
		g.rectify(level)
	}
	if r.FeedKg == nil { // how much went in is not known, only where it came to
		fraction, sd := 1.0, brimSD
		if !r.Full && r.Fraction != nil {
			fraction, sd = *r.Fraction, eyeSD
		}
		g.replace(level, f.weights(placeCapacity(i), fraction), sd*capacity)
		return
	}
	kg := *r.FeedKg * part
	if r.Full && !r.FromEmpty {
		f.tookToFill(g, i, kg, e)
	}
	g.mean[level] += kg
	g.widen(level, pourSD*kg*pourSD*kg)
	if !r.Full {
		f.hadRoom(g, i, e)
	}
	switch {
	case r.Full:
		f.levelRead(g, i, f.levelUnder(i, 1), brimSD*capacity, !r.FromEmpty, e)
	case r.Fraction != nil:
		f.levelRead(g, i, f.levelUnder(i, *r.Fraction), eyeSD*capacity, !r.FromEmpty, e)
	}
}

// hadRoom learns that what went in had room: the feeder holds more than was
// thought, or there was less in it.
func (f *feedFit) hadRoom(g gaussian, i int, e feedEvent) {
	w, sd := f.levelUnder(i, 1), brimSD*g.mean[placeCapacity(i)]
	over, variance := g.along(w)
	if total := variance + sd*sd; over > strange*math.Sqrt(total) {
		f.spare(g, i, over, total, over/math.Sqrt(total), e)
	}
	g.atMostZero(w, sd)
}

func (f *feedFit) levelSeen(g gaussian, i int, l FeedLevel, share, x float64, e feedEvent) error {
	capacity := g.mean[placeCapacity(i)]
	switch {
	case l.Fraction != nil && *l.Fraction == 0, l.FeedKg != nil && *l.FeedKg == 0, l.Days != nil && *l.Days == 0:
		f.seenEmpty(g, i, e)
	case l.Fraction != nil:
		f.levelRead(g, i, f.levelUnder(i, *l.Fraction), eyeSD*capacity, true, e)
	case l.FeedKg != nil:
		kg := *l.FeedKg * share
		f.levelIs(g, i, f.weights(placeLevel(i), 1), kg, kgSeenSD*kg+emptySD*capacity, true, e)
	case l.Days != nil:
		use, err := f.use.on(Day(math.Floor(x)))
		if err != nil || use.kg == 0 { // where nothing eats, days say nothing
			return err
		}
		there := f.withFeed(g, f.eating(x))
		part := 0.0
		for k, j := range there {
			if j == i {
				part = f.shares(g, there)[k]
			}
		}
		kg := *l.Days * part * use.kg * math.Exp(g.mean[placeAppetite])
		w := f.weights(placeLevel(i), 1)
		w[placeAppetite] = -kg // the guess of the days knows the herd's appetite
		f.levelIs(g, i, w, kg-kg*g.mean[placeAppetite], daysSeenSD*kg+emptySD*capacity, true, e)
	}
	return nil
}

// seenEmpty learns that a feeder is empty: it ran out some time before, so that
// at least so much was eaten, and what is in it now is known.
func (f *feedFit) seenEmpty(g gaussian, i int, e feedEvent) {
	level, capacity := placeLevel(i), g.mean[placeCapacity(i)]
	sd := emptySD * capacity
	mean, variance := g.mean[level], g.at(level, level)
	f.foundEmpty(i, Estimate{mean, math.Sqrt(variance + sd*sd)}, e)
	if z := mean / math.Sqrt(variance+sd*sd); z > strange {
		f.spare(g, i, mean, variance+sd*sd, z, e)
	}
	g.atMostZero(f.weights(level, 1), sd)
	g.forget(level, 0, sd)
}

// levelRead learns that a functional of level and capacity is zero.
func (f *feedFit) levelRead(g gaussian, i int, w []float64, sd float64, spanned bool, e feedEvent) {
	f.levelIs(g, i, w, 0, sd, spanned, e)
}

// levelIs learns a reading of a level. Where it lies far from what was expected
// and pigs ate in between, most of the surprise is put down to the span (a
// spill, a pour not told) and little to the herd's appetite.
func (f *feedFit) levelIs(g gaussian, i int, w []float64, value, sd float64, spanned bool, e feedEvent) {
	mean, variance := g.along(w)
	total := variance + sd*sd
	if z := math.Abs(value-mean) / math.Sqrt(total); spanned && z > strange {
		f.spare(g, i, value-mean, total, z, e)
	}
	g.observe(w, value, sd)
}

// spare widens a level so that a surprise is strange by no more than it may be.
func (f *feedFit) spare(g gaussian, i int, surprise, total, z float64, e feedEvent) {
	if f.usual {
		return
	}
	g.widen(placeLevel(i), surprise*surprise/(strange*strange)-total)
	if z > leftOut {
		f.odd = append(f.odd, oddSpan{f.feeders[i].name, e.record.On, e.record.At})
	}
}

// weights is the functional of one quantity alone.
func (f *feedFit) weights(place int, by float64) []float64 {
	w := make([]float64, f.size())
	w[place] = by
	return w
}

// levelUnder is level less a fraction of the capacity.
func (f *feedFit) levelUnder(i int, fraction float64) []float64 {
	w := f.weights(placeLevel(i), 1)
	w[placeCapacity(i)] = -fraction
	return w
}
