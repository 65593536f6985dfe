package model

import "math"

// GrowthStall is a pig, or the mean of several, that gained far less between two
// weighings than pigs of this herd do.
type GrowthStall struct {
	Record       string   // the later weighing
	Animals      []string // the pig; empty where it has no name, or for a mean of several
	Also         []string // others that fell short by the same two days, in the order of weighing
	From, On     Day
	GainKg       float64 // weighed
	WantKg       float64 // expected
	FromKg, ToKg float64
	EachGainKg   float64 // mean of the pig and the others, as GainKg
	EachWantKg   float64 // the same of WantKg
	Reasons      []Reason
}

// From when on a gain does not fit: under this part of what is expected, over so
// many days, and beyond what readings and pigs scatter by so many standard errors.
const (
	stallPart = 0.6
	stallDays = 21
	stallZ    = 2.6
)

// heldWeight is one weighing of a pig, or of several pigs' mean.
type heldWeight struct {
	record string
	on     Day
	kg     float64
	by     string
	pigs   int
}

// GrowthStalls lists the weighings that show a stall, in the order of time, each
// against the latest one of the same pig made by the same means at least three
// weeks before and after the pigs had settled in: no more than one a day, that of
// the pig furthest behind, with the others that fell short since the same day
// named beside it. Sickness told and heat known are allowed for. What was answered
// LeftOut is not listed, nor are those of a day of which one was answered AsUsual.
func (h *Herd) GrowthStalls() []GrowthStall {
	if len(h.Weighings) < 2 {
		return nil
	}
	f := h.growth()
	var found stallsFound
	before := map[int][]heldWeight{} // by the pig's number; -1: means
	for _, w := range h.Weighings {
		pigs := h.weighed(w)
		if len(pigs) == 0 || h.verdict(w.ID) == LeftOut {
			continue
		}
		now := heldWeight{record: w.ID, on: w.On, kg: w.F.WeightKg, by: w.F.by(), pigs: len(pigs)}
		if w.F.GirthCm > 0 {
			e, _ := ReadTape(w.F.GirthCm, w.F.LengthCm)
			now.kg = e.Mean
		}
		mean := len(w.F.Animals) == 0 || w.F.Animals[0] == All
		for _, a := range pigs {
			key := a.Number
			if mean && len(pigs) > 1 {
				key = -1
			}
			if s, z, ok := f.stalled(h, a, now, before[key], key < 0); ok {
				found.add(s, z, h.verdict(now.record))
			}
			before[key] = append(before[key], now)
			if key < 0 {
				break
			}
		}
	}
	return found.list()
}

// by is how the weighing was made.
func (w Weigh) by() string {
	switch {
	case w.GirthCm > 0:
		return ByTape
	case w.By == "":
		return ByScale
	}
	return w.By
}

// stalled holds a weighing against the latest one before that it can be held
// against, and gives by how many standard errors the gain falls short.
func (f *growthFit) stalled(h *Herd, a *Animal, now heldWeight, before []heldWeight, mean bool) (GrowthStall, float64, bool) {
	i := len(before) - 1
	for i >= 0 && (now.on-before[i].on < stallDays || wallDays(a.Group.ArriveAt)+oddSettleDays > float64(before[i].on) || before[i].by != now.by || before[i].pigs != now.pigs) {
		i--
	}
	if i < 0 || before[i].kg <= 0 || now.kg <= 0 {
		return GrowthStall{}, 0, false
	}
	was := before[i]
	p := f.pigs[a.Number]
	from, _ := f.prior(p, float64(was.on))
	to, _ := f.prior(p, float64(now.on))
	days := float64(now.on - was.on)
	speed, sure := f.speed(p.group)
	ahead := speed*days - (days - (to - from)) // table days, what is known to cost some taken off
	start := tableDay(was.kg)
	kg, gain := tableWeight(start + max(ahead, 0))
	want := kg - was.kg
	faded := fadedAfter(days)
	strayed := strayed(days, faded, faded) + days*days*sure*sure
	pigs := 1.0
	if mean {
		pigs = float64(now.pigs)
	}
	strayed *= strayedTogether + (1-strayedTogether)/pigs
	off := readingErrors[now.by]
	first, second := off.sd(was.kg), off.sd(now.kg)
	sd := math.Sqrt((first*first+second*second)/pigs*f.scatter[now.by].likely() + gain*gain*strayed)
	s := GrowthStall{
		Record: now.record, From: was.on, On: now.on, GainKg: now.kg - was.kg, WantKg: want, FromKg: was.kg, ToKg: now.kg,
	}
	if !mean {
		s.Animals = a.names()
	}
	z := (want - s.GainKg) / sd
	if want <= 0 || s.GainKg >= stallPart*want || z < stallZ {
		return s, z, false
	}
	s.Reasons = []Reason{
		{Code: ReasonGrowthStall, Names: s.Animals, On: was.on, Q: []Quantity{
			{s.GainKg, Kilograms}, {want, Kilograms}, {z80 * sd, Kilograms}, {days, Days},
		}},
		{Code: ReasonHerdSpeed, Q: []Quantity{{100 * speed, Percent}, {100 * sure, Percent}}},
	}
	if now.by == ByTape {
		s.Reasons = append(s.Reasons, Reason{Code: ReasonStallTape, Q: []Quantity{{off.sd(now.kg), Kilograms}}})
	}
	return s, z, true
}
