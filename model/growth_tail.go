package model

// growthTail is how a pig's path after its last reading goes with its readings:
// there the covariance of the path with every reading is one number plus another
// times what is left of the pig's own speed, so that a day's figures need no new
// solving. Two directions of the readings, seen through their block, and what
// comes of them.
type growthTail struct {
	from           float64 // days after the batch came; no shortcut before
	still, speed   []float64
	ofStill, both  float64 // squares and product of the two directions
	ofSpeed        float64
	stillU, speedU growthDesign
	stillW, speedW float64
}

// tailOf works out the tail of a pig once its readings are solved; of a pig that
// was sick there is none.
func (f *growthFit) tailOf(p *growthPig) {
	n := p.block.n
	if n == 0 || len(p.spells) > 0 {
		return
	}
	room := make([]float64, 2*n)
	t := &growthTail{still: room[:n:n], speed: room[n:]}
	for i, m := range p.moments {
		t.from = max(t.from, m.days)
		t.still[i], t.speed[i] = strayedLater(m)
		t.still[i] += pigStartDays * pigStartDays
		t.stillW += t.still[i] * p.w[i]
		t.speedW += t.speed[i] * p.w[i]
	}
	p.block.forward(t.still)
	p.block.forward(t.speed)
	t.ofStill, t.both, t.ofSpeed = dot(t.still, t.still), dot(t.still, t.speed), dot(t.speed, t.speed)
	for i := range n {
		for c, x := range p.u[i*growthColumns : (i+1)*growthColumns] {
			t.stillU[c] += t.still[i] * x
			t.speedU[c] += t.speed[i] * x
		}
	}
	p.tail = t
}

// holds reports whether the moment lies in the tail.
func (t *growthTail) holds(at growthMoment) bool { return t != nil && at.days >= t.from }
