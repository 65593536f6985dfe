package schedule

import (
	"errors"
	"time"

	"troughbell/model"
)

// figures is what the rules ask of a herd. It stands between them and the
// model so that a rule can be tried with any figure; *model.Herd is the one
// that is used.
type figures interface {
	FeedLeft(at time.Time) (model.FeedLeft, error)
	FeedNeed(from time.Time, until model.Day) (model.FeedNeed, error)
	RefillPlan(at, next time.Time) (model.RefillPlan, error)
	WaterLeft(at time.Time) (model.WaterLeft, error)
	WaterFilled(at time.Time) (model.WaterLeft, error)
	WallowLeft(at time.Time) (model.WallowLeft, error)
	WormingDue(today model.Day) (model.Due, error)
	MoveDue(today model.Day) (model.Due, error)
	WeighDue(today model.Day) (model.Due, error)
	BookingDue(today model.Day) (model.BookingDue, error)
	Withdrawal(at time.Time) []model.PigClear
	Heat(on model.Day) (model.Heat, error)
	Target(targetKg float64, today model.Day) (model.TargetFigure, error)
	MeanWeight(pigs []*model.Animal, on model.Day) (model.PigWeight, error)
	RationCheck(on model.Day) (model.Ration, error)
	Adequacy(today model.Day) (model.Adequacy, error)
	FeedFills() []model.FeedFill
	OddFeed() []model.OddFeed
	OddWater() []model.OddWater
	GrowthStalls() []model.GrowthStall
}

// lacks gives what a figure lacks to be computed, or false where the error is
// another. A rule whose figure cannot be had says nothing of its own accord:
// whoever asks for the figure is told what it lacks.
func lacks(err error) (*model.Missing, bool) {
	var m *model.Missing
	if errors.As(err, &m) {
		return m, true
	}
	return nil, false
}
