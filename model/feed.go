package model

import "time"

type feedFit struct{}

// FeederLeft is what one feeder holds and for how long.
type FeederLeft struct {
	Name     string
	Since    time.Time // of the latest record that speaks of its level
	LevelKg  Interval
	UseKgD   Interval // today
	Capacity Interval // kg
	Days     float64  // until empty, likely
	LowDays  float64  // 10 % edge
	EdgeDays float64  // 2 % edge: guards the pigs
	Empty    time.Time
}

// FeedLeft is what all feeders hold. Days, LowDays, EdgeDays and Empty are
// those of the first feeder to run dry.
type FeedLeft struct {
	FeedKg, UseKgD          Interval
	Days, LowDays, EdgeDays float64
	Empty                   time.Time
	Feeders                 []FeederLeft
	Reasons                 []Reason
}

// FeedLeft gives what the feeders hold at the moment and for how long, from the
// pours, the levels seen, the pigs' weights and the herd's learned appetite.
func (h *Herd) FeedLeft(at time.Time) (FeedLeft, error) { panic("feed") }

// FeedNeed is the feed that the herd needs over a span.
type FeedNeed struct {
	FeedKg  Interval
	Batches float64 // of the mix, 0 where no batch is known
	Until   Day
	Reasons []Reason
}

// FeedNeed gives the feed needed from the moment until the end of the day, by
// the pigs that are there.
func (h *Herd) FeedNeed(from time.Time, until Day) (FeedNeed, error) { panic("feed") }

// RefillFeeder is what one feeder should get at a visit.
type RefillFeeder struct {
	Name     string
	PourKg   float64   // to last until the next visit at the cautious edge, no more than fits
	RoomKg   float64   // what fits
	Lasts    bool      // filled to the brim it lasts until the next visit at the cautious edge
	EdgeAt   time.Time // cautious moment of running dry if nothing is poured
	LikelyAt time.Time
}

// RefillPlan is what to mix and pour at a visit so that no feeder runs dry
// before the next one.
type RefillPlan struct {
	PourKg  float64
	Batches float64 // rounded up to whole batches; 0 where no batch is known
	Feeders []RefillFeeder
	Needed  bool // something is to be poured before next
	Reasons []Reason
}

// RefillPlan plans the visit at the moment at, for feed to last until next.
func (h *Herd) RefillPlan(at, next time.Time) (RefillPlan, error) { panic("feed") }
