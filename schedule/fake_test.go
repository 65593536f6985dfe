package schedule

import (
	"time"

	"troughbell/model"
)

// fake is figures that follow plain rules of the clock: feed lasts so many days
// from the latest refill, water so many from the latest fill.
type fake struct {
	h                               *model.Herd
	feedDays, waterDays, wallowDays float64 // cautious; 0: not known
	worm, move, weigh, book         model.Day
	wormBlocked                     bool
	heat                            map[model.Day]model.HeatClass
	clear                           func(*model.Herd) []model.PigClear
	weightKg                        float64
	ration                          model.Ration
	capacityKg, useKgD, pour        float64
	oddFeed                         []model.OddFeed
	oddWater                        []model.OddWater
	stalls                          []model.GrowthStall
	fills                           []model.FeedFill
	ahead                           []model.Outgrown
}

func (f fake) Adequacy(model.Day) (model.Adequacy, error) {
	return model.Adequacy{Ahead: f.ahead}, nil
}

func (f fake) FeedFills() []model.FeedFill       { return f.fills }
func (f fake) OddFeed() []model.OddFeed          { return f.oddFeed }
func (f fake) OddWater() []model.OddWater        { return f.oddWater }
func (f fake) GrowthStalls() []model.GrowthStall { return f.stalls }

const likelyFactor = 1.25

func (f fake) since(last time.Time) time.Time {
	if last.IsZero() {
		return f.h.First
	}
	return last
}

func (f fake) feed() (edge, likely time.Time) {
	var last time.Time
	latest(f.h.Refills, func(at time.Time) { last = at })
	last = f.since(last)
	return last.Add(days(f.feedDays)), last.Add(days(f.feedDays * likelyFactor))
}

func (f fake) FeedLeft(at time.Time) (model.FeedLeft, error) {
	if f.feedDays == 0 {
		return model.FeedLeft{}, &model.Missing{What: "feeder"}
	}
	edge, likely := f.feed()
	return model.FeedLeft{
		EdgeDays: edge.Sub(at).Hours() / 24, Empty: likely,
		Feeders: []model.FeederLeft{{Name: "hopper", Capacity: model.Interval{Low: f.capacityKg, Mid: f.capacityKg, High: f.capacityKg}}},
	}, nil
}

func (f fake) FeedNeed(from time.Time, until model.Day) (model.FeedNeed, error) {
	kg := f.useKgD * (until+1).At(0, from.Location()).Sub(from).Hours() / 24
	return model.FeedNeed{FeedKg: model.Interval{Low: kg, Mid: kg, High: kg}, Until: until}, nil
}

func (f fake) RefillPlan(at, next time.Time) (model.RefillPlan, error) {
	if f.feedDays == 0 {
		return model.RefillPlan{}, &model.Missing{What: "feeder"}
	}
	edge, likely := f.feed()
	p := model.RefillPlan{Needed: edge.Before(next)}
	if p.Needed {
		p.PourKg, p.Batches = 100, 3
	}
	if f.pour > 0 {
		p.PourKg = f.pour
	}
	p.EdgeAt, p.LikelyAt = edge, likely
	p.Feeders = []model.RefillFeeder{{Name: "hopper", PourKg: p.PourKg, Lasts: f.feedDays >= next.Sub(at).Hours()/24, EdgeAt: edge, LikelyAt: likely}}
	return p, nil
}

func (f fake) WaterLeft(at time.Time) (model.WaterLeft, error) {
	if f.waterDays == 0 {
		return model.WaterLeft{}, &model.Missing{What: "barrels"}
	}
	var last time.Time
	latest(f.h.Waters, func(at time.Time) { last = at })
	last = f.since(last)
	edge := last.Add(days(f.waterDays))
	if n := len(f.h.Waters); n > 0 && f.h.Waters[n-1].F.Seen && f.h.Waters[n-1].F.Barrel != "tote" { // empty
		edge = last
		f.waterDays = 0
	}
	w := model.WaterLeft{
		EdgeAt: edge, LikelyAt: last.Add(days(f.waterDays * likelyFactor)), EdgeDays: edge.Sub(at).Hours() / 24,
		Litres: model.Interval{Mid: 100}, UseLD: model.Interval{Low: 20, Mid: 25, High: 30},
	}
	for _, b := range f.h.Barrels {
		w.Barrels = append(w.Barrels, model.BarrelLeft{Name: b.Name, Litres: model.Interval{Mid: 50}})
	}
	return w, nil
}

func (f fake) WaterFilled(at time.Time) (model.WaterLeft, error) {
	w, err := f.WaterLeft(at)
	full := 0.0
	for _, b := range f.h.Barrels {
		full += *b.CapacityL
	}
	w.EdgeAt, w.LikelyAt = at.Add(days(full/w.UseLD.High)), at.Add(days(full/w.UseLD.Mid))
	return w, err
}

func (f fake) WallowLeft(at time.Time) (model.WallowLeft, error) {
	if f.wallowDays == 0 {
		return model.WallowLeft{}, &model.Missing{What: "wallow"}
	}
	var last time.Time
	latest(f.h.WallowFills, func(at time.Time) { last = at })
	dry := model.DayOf(f.since(last).Add(days(f.wallowDays)).In(at.Location()))
	return model.WallowLeft{Dry: model.DayInterval{Low: dry, Mid: dry + 1, High: dry + 2}, FillL: 200}, nil
}

func (f fake) due(on model.Day, what string) (model.Due, error) {
	if on == 0 {
		return model.Due{}, &model.Missing{What: what}
	}
	return model.Due{On: on}, nil
}

func (f fake) WormingDue(model.Day) (model.Due, error) {
	d, err := f.due(f.worm, "birth")
	d.Blocked = f.wormBlocked
	return d, err
}
func (f fake) MoveDue(model.Day) (model.Due, error)  { return f.due(f.move, "pen") }
func (f fake) WeighDue(model.Day) (model.Due, error) { return f.due(f.weigh, "weight") }

func (f fake) BookingDue(model.Day) (model.BookingDue, error) {
	d, err := f.due(f.book, "weight")
	return model.BookingDue{Due: d, Window: model.DayInterval{Low: f.book + 120, Mid: f.book + 127, High: f.book + 134}}, err
}

func (f fake) Withdrawal(time.Time) []model.PigClear {
	if f.clear == nil {
		return nil
	}
	return f.clear(f.h)
}

func (f fake) Heat(on model.Day) (model.Heat, error) {
	c, ok := f.heat[on]
	if !ok {
		return model.Heat{}, &model.Missing{What: "temperature"}
	}
	return model.Heat{Class: c, HighC: 33, RhPct: 60, THI: 82, Reasons: []model.Reason{{Code: model.HeatHighTold, On: on}}}, nil
}

func (f fake) Target(kg float64, today model.Day) (model.TargetFigure, error) {
	return model.TargetFigure{TargetKg: kg, Herd: model.TargetDay{Days: model.DayInterval{Low: today + 50, Mid: today + 60, High: today + 70}}}, nil
}

func (f fake) MeanWeight([]*model.Animal, model.Day) (model.PigWeight, error) {
	if f.weightKg == 0 {
		return model.PigWeight{}, &model.Missing{What: "weight"}
	}
	return model.PigWeight{WeightKg: model.Interval{Low: f.weightKg - 4, Mid: f.weightKg, High: f.weightKg + 4}}, nil
}

func (f fake) RationCheck(model.Day) (model.Ration, error) {
	if f.ration.NeededSIDLysinePct == 0 {
		return model.Ration{}, &model.Missing{What: "recipe"}
	}
	return f.ration, nil
}
