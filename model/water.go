package model

import "time"

type waterFit struct{}

// BarrelLeft is what one water barrel holds and for how long.
type BarrelLeft struct {
	Name                    string
	Since                   time.Time
	Litres                  Interval
	UseLD                   Interval
	Days, LowDays, EdgeDays float64
	EdgeAt, LikelyAt        time.Time
}

// WaterLeft is what the barrels hold together. Days and its edges are those of
// all barrels together: pigs walk from a dry one to the next.
type WaterLeft struct {
	Litres, UseLD           Interval
	Days, LowDays, EdgeDays float64
	EdgeAt, LikelyAt        time.Time
	Barrels                 []BarrelLeft
	Reasons                 []Reason
}

// WaterLeft gives what the barrels hold at the moment and for how long, from
// fills and levels seen, the pigs' weights and the heat.
func (h *Herd) WaterLeft(at time.Time) (WaterLeft, error) { panic("water") }

// WallowLeft says when the wallow will be dry.
type WallowLeft struct {
	Dry     DayInterval
	LossLD  Interval // litres a day
	FillL   float64  // to bring it back to its depth, likely
	Reasons []Reason
}

// WallowLeft gives the day on which the wallow is dry.
func (h *Herd) WallowLeft(at time.Time) (WallowLeft, error) { panic("wallow") }

// HeatClass is a published class of the temperature-humidity index.
type HeatClass string

// The classes, and the plain temperature line for heavy pigs (HeatWatch).
const (
	HeatNormal    HeatClass = "normal"
	HeatWatch     HeatClass = "watch"
	HeatAlert     HeatClass = "alert"
	HeatDanger    HeatClass = "danger"
	HeatEmergency HeatClass = "emergency"
)

// Heat is how a day bears on the pigs.
type Heat struct {
	THI       float64
	Class     HeatClass
	HighC     float64
	RhPct     float64
	RhAssumed bool
	Guessed   bool // no temperature was told: the month's normal, a guess
	Reasons   []Reason
}

// Heat gives the heat class of the day for the pigs that are there.
func (h *Herd) Heat(on Day) (Heat, error) { panic("heat") }
