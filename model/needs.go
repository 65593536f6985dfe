package model

import (
	"math"
	"time"
)

// NeedsQuery is the question of a newcomer: how many pigs, from when, at what
// weight, to what weight.
type NeedsQuery struct {
	Count    int
	From     Day
	WeightKg float64
	TargetKg float64
	LeadDays Day // before the butcher, see [Herd.BookingLead]; 0: [BookingLeadDays]
}

// Needs is what pigs will need from arrival to the butcher.
type Needs struct {
	FeedKg        Interval
	FeedByMonthKg []MonthFeed
	FeederHoles   int
	Feeders       int // of a common drum's size, to hold a week's feed at the end
	Barrels       int // of a common drum's size, to hold a week's water in heat
	Nipples       int
	ShelterM2     float64
	ShadeM2       float64
	PenM2         float64 // each, of a rotation
	Target        DayInterval
	BookBy        Day
	Reasons       []Reason
}

// MonthFeed is the feed of one calendar month.
type MonthFeed struct {
	Month  Day // its first day
	FeedKg float64
}

// What newcomers' pigs need beside feed and water.
const (
	drumL = 208.2 // 55 US gallons, computed
	// pigsAHole eat at one feeder hole, see FeederHolesFor.
	pigsAHole = 4
	// A bedded shelter takes 0.75 m2 a pig up to 90 kg and 1.1 m2 to butcher
	// weight, between the EU legal floor (Directive 2008/120/EC) and the organic
	// rule (Regulation 889/2008): judgement.
	shelterSmallM2, shelterM2 = 0.75, 1.1
	shelterSmallKg            = 90.0
	// Shade over 45 kg: 6 square feet a pig, Midwest Plan Service, from memory.
	shadeM2 = 0.56
	// A week's water is reckoned for days whose warmer half has this mean.
	heatDaytimeC = 30.0
	usableBarrel = 0.95
	// Bounds of what can be planned.
	mostPlanned            = 200
	leastStartKg, mostEnds = 5.0, 170.0
)

// PlanNeeds works out what a batch of pigs will need, by the published table of
// growth and intake. Count lies between 1 and 200, WeightKg from 5 kg to below
// TargetKg, TargetKg up to 170 kg (0: DefaultTargetKg), LeadDays
// is not negative; else *OutOfRange.
func PlanNeeds(q NeedsQuery) (Needs, error) {
	if q.TargetKg == 0 {
		q.TargetKg = DefaultTargetKg
	}
	if q.LeadDays == 0 {
		q.LeadDays = BookingLeadDays
	}
	switch {
	case q.LeadDays < 0:
		return Needs{}, &OutOfRange{"lead_days", float64(q.LeadDays), 0, furthest}
	case q.Count < 1 || q.Count > mostPlanned:
		return Needs{}, &OutOfRange{"count", float64(q.Count), 1, mostPlanned}
	case !(q.TargetKg > leastStartKg && q.TargetKg <= mostEnds):
		return Needs{}, &OutOfRange{"target_kg", q.TargetKg, leastStartKg, mostEnds}
	case !(q.WeightKg >= leastStartKg && q.WeightKg < q.TargetKg):
		return Needs{}, &OutOfRange{"weight_kg", q.WeightKg, leastStartKg, q.TargetKg}
	}
	at := q.From.At(0, time.UTC)
	h := Fold([]Record{{ID: "plan", On: q.From, At: at, Fact: Arrive{Count: q.Count, WeightKg: &q.WeightKg}}})
	target, err := h.Target(q.TargetKg, q.From)
	if err != nil {
		return Needs{}, err
	}
	end := target.Herd.Days.Mid
	need, err := h.FeedNeed(at, end)
	if err != nil {
		return Needs{}, err
	}
	last, err := h.feeding().use.on(end)
	if err != nil {
		return Needs{}, err
	}
	n := Needs{FeedKg: need.FeedKg, Target: target.Herd.Days, BookBy: target.Herd.Days.Low - q.LeadDays}
	if n.FeedByMonthKg, err = h.feedByMonth(q.From, end); err != nil {
		return Needs{}, err
	}
	n.space(q)
	week := aboutLog(7*last.kg, math.Hypot(appetiteSD, math.Sqrt(weekSpread(q.Count))))
	n.Feeders = max(int(math.Ceil(week.High/(drumL*feedDensityKgL))), 1)
	hotLD := float64(q.Count) * drawnLD(q.TargetKg, "", heatDaytimeC)
	n.Barrels = max(int(math.Ceil(7*hotLD/(drumL*usableBarrel))), 1)
	n.Reasons = []Reason{
		{Code: ReasonNeedsGrowth, On: end, Q: []Quantity{{float64(q.Count), Count}, {q.WeightKg, Kilograms}, {q.TargetKg, Kilograms}, {float64(end - q.From), Days}}},
		{Code: ReasonNeedsFeed, Q: []Quantity{{n.FeedKg.Mid / float64(q.Count), Kilograms}, {last.kg, KilogramsPerDay}}},
		{Code: ReasonNeedsWater, Q: []Quantity{{hotLD, LitresPerDay}, {heatDaytimeC, Celsius}}},
		{Code: ReasonNeedsSpace, Q: []Quantity{{n.ShelterM2 / float64(q.Count), SquareMetres}, {shadeM2, SquareMetres}}},
		{Code: ReasonNeedsBooking, On: n.BookBy, Q: []Quantity{{float64(q.LeadDays), Days}}},
	}
	return n, nil
}

// space fills in what the pigs take up when they are at their target.
func (n *Needs) space(q NeedsQuery) {
	each := shelterM2
	if q.TargetKg <= shelterSmallKg {
		each = shelterSmallM2
	}
	pigs := float64(q.Count)
	n.FeederHoles = (q.Count + pigsAHole - 1) / pigsAHole
	n.Nipples = max(LeastNipples, (q.Count+PigsPerNipple-1)/PigsPerNipple)
	n.ShelterM2, n.ShadeM2 = pigs*each, pigs*shadeM2
	// Each pen bears all pigs for the usual stay at the end.
	n.PenM2 = pigs * moveDefaultDays * q.TargetKg / MeanPigKg / PigDaysPerHa * 1e4
}

// feedByMonth splits the likely feed from a day to another, both included, over
// the calendar months.
func (h *Herd) feedByMonth(from, to Day) ([]MonthFeed, error) {
	appetite := math.Exp(h.feeding().appetiteAt(from.At(0, time.UTC)).Mean)
	var out []MonthFeed
	for d := from; d <= to; d++ {
		use, err := h.feeding().use.on(d)
		if err != nil {
			return nil, err
		}
		y, m, _ := d.Date()
		if first := DateDay(y, m, 1); len(out) == 0 || out[len(out)-1].Month != first {
			out = append(out, MonthFeed{Month: first})
		}
		out[len(out)-1].FeedKg += appetite * use.kg
	}
	return out, nil
}
