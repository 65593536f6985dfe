package model

import "math"

// Yield is what a pig of a live weight gives.
type Yield struct {
	LiveKg, HangingKg, RetailKg Interval
	Pigs                        int
	Reasons                     []Reason
}

// What a butcher pig gives until the herd's own butcher sheets say more.
const (
	// DressingPct is hanging weight in percent of live weight: a market barrow
	// dresses 70 to 75 % (Univ. of Wisconsin Extension, How much meat should a
	// hog yield); 72 % is the middle of published examples.
	DressingPct = 72.0
	// TakeHomePct is packaged meat in percent of hanging weight, bone-in and
	// boneless cuts mixed, head, feet and lard left out: computed from published
	// cutting tests, range 55 to 75 %.
	TakeHomePct = 65.0

	dressingSD = 0.0195 // 70 to 75 % as an 80 % range
	takeHomeSD = 0.078  // 55 to 75 % as an 80 % range
	// How far one pig's share strays from its herd's: cutting and gut fill,
	// judgement.
	dressingPigSD = 0.02
	takeHomePigSD = 0.03
)

// Yield gives live, hanging and take-home weight of a mean pig on the day, by
// the published dressing and take-home shares, and by the herd's own where its
// butcher sheets gave hanging and packaged weights. *Missing "pigs" or "weight"
// where one is unknown.
func (h *Herd) Yield(on Day) (Yield, error) {
	pigs := h.Alive(on)
	if len(pigs) == 0 {
		return Yield{}, &Missing{What: "pigs"}
	}
	mean, err := h.MeanWeight(pigs, on)
	if err != nil {
		return Yield{}, err
	}
	dressing, nd := h.learnedDressing()
	takeHome, nt := h.learnedTakeHome()
	live := mean.WeightKg
	y := Yield{LiveKg: live, Pigs: len(pigs)}
	y.HangingKg = timesShare(live, dressing)
	y.RetailKg = timesShare(y.HangingKg, takeHome)
	y.Reasons = []Reason{shareReason(ReasonYieldDressing, ReasonYieldOwnDressing, dressing, nd), shareReason(ReasonYieldTakeHome, ReasonYieldOwnTakeHome, takeHome, nt)}
	return y, nil
}

// timesShare is a weight times a share, their relative errors taken together.
func timesShare(kg Interval, share Estimate) Interval {
	by := share.SD / share.Mean * z80
	side := func(bound float64) float64 { return math.Hypot((bound-kg.Mid)/kg.Mid, by) }
	mid := kg.Mid * share.Mean
	return Interval{mid * max(1-side(kg.Low), 0), mid, mid * (1 + side(kg.High))}
}

// Shares outside these bounds are slips of the pen, not pigs.
const (
	leastDressing, mostDressing = 0.55, 0.90
	leastTakeHome, mostTakeHome = 0.35, 0.95
)

// learnedDressing is hanging over live weight for this herd, learned from the
// hanging weights of pigs whose live weight was known, and from how many.
func (h *Herd) learnedDressing() (Estimate, int) {
	e := Estimate{DressingPct / 100, dressingSD}
	n := 0
	for _, g := range h.Gones {
		pigs, each, ok := h.hungEach(g)
		if !ok {
			continue
		}
		live, err := h.MeanWeight(pigs, pigs[0].Gone.On)
		if err != nil || live.WeightKg.Mid <= 0 {
			continue // no live weight, nothing to hold the hanging weight against
		}
		seen := each / live.WeightKg.Mid
		if seen < leastDressing || seen > mostDressing {
			continue
		}
		relative := (live.WeightKg.High - live.WeightKg.Low) / (2 * z80 * live.WeightKg.Mid)
		e = e.learn(seen, math.Hypot(relative*seen, dressingPigSD/math.Sqrt(float64(len(pigs)))))
		n += len(pigs)
	}
	return e, n
}

// learnedTakeHome is packaged over hanging weight for this herd, and from how
// many pigs.
func (h *Herd) learnedTakeHome() (Estimate, int) {
	e := Estimate{TakeHomePct / 100, takeHomeSD}
	n := 0
	hung := map[*Animal]float64{}
	for _, g := range h.Gones {
		if pigs, each, ok := h.hungEach(g); ok {
			for _, a := range pigs {
				hung[a] = each
			}
		}
		if g.F.PackagedKg == nil || g.F.How != Butchered {
			continue
		}
		pigs := h.hung(g)
		var hanging float64
		for _, a := range pigs {
			if hung[a] == 0 {
				hanging = 0
				break
			}
			hanging += hung[a]
		}
		if hanging == 0 {
			continue
		}
		packaged := *g.F.PackagedKg
		if !saidTotal(g.F) {
			packaged *= float64(len(pigs))
		}
		if seen := packaged / hanging; seen >= leastTakeHome && seen <= mostTakeHome {
			e = e.learn(seen, takeHomePigSD/math.Sqrt(float64(len(pigs))))
			n += len(pigs)
		}
	}
	return e, n
}

// hungEach gives the pigs of a butcher's hanging weight and what each hung;
// false where the record holds none.
func (h *Herd) hungEach(g Dated[Gone]) ([]*Animal, float64, bool) {
	if g.F.HangingKg == nil || g.F.How != Butchered {
		return nil, 0, false
	}
	pigs := h.hung(g)
	if len(pigs) == 0 {
		return nil, 0, false
	}
	each := *g.F.HangingKg
	if saidTotal(g.F) {
		each /= float64(len(pigs))
	}
	return pigs, each, true
}

// learn takes in a reading with an error of sd.
func (e Estimate) learn(value, sd float64) Estimate {
	gain := e.SD * e.SD / (e.SD*e.SD + sd*sd)
	return Estimate{e.Mean + gain*(value-e.Mean), e.SD * math.Sqrt(1-gain)}
}

// saidTotal reports whether weights of the record are of all its pigs together.
func saidTotal(g Gone) bool { return len(g.Animals) == 1 && g.Animals[0] == All }

func shareReason(published, own string, e Estimate, n int) Reason {
	q := []Quantity{{100 * e.Mean, Percent}, {100 * z80 * e.SD, Percent}}
	if n == 0 {
		return Reason{Code: published, Q: q}
	}
	return Reason{Code: own, Q: append(q, Quantity{float64(n), Count})}
}
