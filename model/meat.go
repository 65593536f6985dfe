package model

import "time"

// Yield is what a pig of a live weight gives.
type Yield struct {
	LiveKg, HangingKg, RetailKg Interval
	Pigs                        int
	Reasons                     []Reason
}

// Yield gives live, hanging and take-home weight of a mean pig on the day.
func (h *Herd) Yield(on Day) (Yield, error) { panic("yield") }

// Cost is what the herd has cost and will cost.
type Cost struct {
	Spent, Forecast         float64
	PerKgLive, PerKgHanging float64
	Currency                string
	UnpricedFeedKg          float64
	Reasons                 []Reason
}

// Cost sums what was spent and what is still to come until the target.
func (h *Herd) Cost(at time.Time) (Cost, error) { panic("cost") }

// NeedsQuery is the question of a newcomer: how many pigs, from when, at what
// weight, to what weight.
type NeedsQuery struct {
	Count    int
	From     Day
	WeightKg float64
	TargetKg float64
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

// PlanNeeds works out what a batch of pigs will need.
func PlanNeeds(q NeedsQuery) (Needs, error) { panic("needs") }

// Assumption is a what-if: so many more or fewer pigs, another target, so many
// days of no visit.
type Assumption struct {
	CountDelta int
	TargetKg   *float64
	SkipDays   int
}

// Assume is the herd as it would be under the assumption; h stays as it is.
func (h *Herd) Assume(a Assumption, on Day) *Herd { panic("assume") }
