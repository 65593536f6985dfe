package model

import "time"

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

// FeedNeed is the feed that the herd needs over a span.
type FeedNeed struct {
	FeedKg  Interval
	Batches float64 // of the mix, 0 where no batch is known
	Until   Day
	Reasons []Reason
}

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
	PourKg  float64 // never less than is worth the walk, unless there is no room
	Batches float64 // rounded up to whole batches; 0 where no batch is known
	Feeders []RefillFeeder
	Needed  bool // something is to be poured before next; PourKg is 0 where nothing fits yet
	// EdgeAt and LikelyAt are when all feeders together run dry, at the 2 % edge
	// and likely: pigs walk from an empty one to the next.
	EdgeAt, LikelyAt time.Time
	Reasons          []Reason
}
