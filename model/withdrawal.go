package model

import "time"

// PigClear is when a pig is clear of every withdrawal. Known is false where the
// days of some product are not known; then it is not clear at all.
type PigClear struct {
	Animal  *Animal
	Known   bool
	Treated bool
	ClearAt time.Time // zero where Treated is false; of the known products only where Known is false
	Clear   Day       // local day of ClearAt
	Reasons []Reason
}

// IsClear reports whether the pig may go at the moment: no product of unknown
// days, and every known one run out.
func (p PigClear) IsClear(at time.Time) bool {
	return p.Known && (!p.Treated || !p.ClearAt.After(at))
}

// NotBefore is the first local day that begins with the pig clear. It means
// nothing where Known or Treated is false.
func (p PigClear) NotBefore() Day {
	if p.Clear.At(0, p.ClearAt.Location()).Before(p.ClearAt) {
		return p.Clear + 1
	}
	return p.Clear
}

// Withdrawal gives for each living pig when it is clear, seen in the location
// of at. Of several products the latest counts. While a text on a drug waits for
// an answer no pig is clear.
func (h *Herd) Withdrawal(at time.Time) []PigClear {
	today := DayOf(at)
	alive := h.Alive(today)
	unsettled := h.unsettledDrugs(at)
	out := make([]PigClear, 0, len(alive))
	for _, a := range alive {
		p := PigClear{Animal: a, Known: true}
		for i := range h.Treatments {
			if g := &h.Treatments[i]; g.On <= today && h.covers(g, a) {
				p.add(g, at.Location())
			}
		}
		for _, on := range unsettled {
			p.Known, p.Treated = false, true
			p.Reasons = append(p.Reasons, Reason{Code: WithdrawalUnsettled, On: on})
		}
		out = append(out, p)
	}
	return out
}

// unsettledDrugs are the days of texts on drugs that are still asked about.
// Which pig got what is open, so it could be any of them.
func (h *Herd) unsettledDrugs(at time.Time) []Day {
	var out []Day
	for _, q := range h.Open() {
		if (q.F.About == "worm" || q.F.About == "treat") && !q.At.After(at) {
			out = append(out, q.On)
		}
	}
	return out
}

func (p *PigClear) add(g *Given, loc *time.Location) {
	p.Treated = true
	if g.WithdrawalDays == nil {
		p.Known = false
		p.Reasons = append(p.Reasons, Reason{Code: WithdrawalDaysUnknown, Names: productName(g), On: g.On})
		return
	}
	clear := g.clearAt().In(loc)
	p.Reasons = append(p.Reasons, Reason{
		Code: WithdrawalRuns, Names: productName(g), On: g.On,
		Q: []Quantity{{float64(*g.WithdrawalDays), Days}},
	})
	if clear.After(p.ClearAt) {
		p.ClearAt, p.Clear = clear, DayOf(clear)
	}
}

// clearAt is the clear moment of a treatment whose days are known.
func (g *Given) clearAt() time.Time {
	dose := g.At
	if !g.Said {
		dose = g.On.At(lastMinute, g.At.Location())
	}
	return clearMoment(dose, true, *g.WithdrawalDays)
}

// covers reports whether the pig got the treatment. Names that fit no pig could
// be any pig: then each one that was there counts as treated.
func (h *Herd) covers(g *Given, a *Animal) bool {
	pigs := g.Pigs
	if len(pigs) == 0 {
		pigs = h.Alive(g.On)
	}
	for _, p := range pigs {
		if p == a {
			return true
		}
	}
	return false
}
