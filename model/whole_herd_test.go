package model

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// aWholeSeason is a herd that has told something of every kind.
func aWholeSeason(t testing.TB) *toldHerd {
	s := tellHerd(t).tell("2026-05-02 08:00",
		Arrive{Count: 4, Animals: []string{"Juniper", "Moss", "Fern", "Burdock"}, Sexes: []Sex{Gilt, Barrow, Gilt, Barrow}, WeightKg: Float(22)},
		feederKg("barn", 110), feederKg("lane", 60), barrelSetting("north", 208, 2), barrelSetting("south", 208, 2),
		penSetting("orchard", 900, true), penSetting("hill", 1200, false), wallowSetting(4, 0.25),
		Setting{Key: SetTarget, Number: Float(118)}, Setting{Key: SetSize, Thing: &Thing{Name: "bag", FeedKg: Float(25)}},
		Recipe{Ingredients: map[string]float64{"corn": 34, "soybean meal 48": 14, "mineral premix": 1.5}},
		Stock{Ingredient: "corn", FeedKg: Float(600), Amount: Float(130), Currency: "USD"},
		Stock{Ingredient: "soybean meal 48", FeedKg: Float(300), Amount: Float(160), Currency: "USD"},
		Stock{Ingredient: "barley", FeedKg: Float(200), Amount: Float(30), Currency: "USD"},
		Spend{Amount: 320, Currency: "USD", What: "pigs"})
	for w := range 6 {
		d := DateDay(2026, 5, 9) + Day(7*w)
		s.tell(d.String()+" 09:00",
			Refill{Feeder: "barn", FeedKg: Float(30 + 3*float64(w)), Full: true}, Refill{Feeder: "lane", FeedKg: Float(12 + float64(w)), Full: true},
			Water{Full: true}, WallowFill{}, Weather{HighC: Float(24 + float64(w)), LowC: Float(12)})
	}
	return s.
		tell("2026-05-30 10:00", Weigh{Animals: []string{"Fern"}, WeightKg: 38, By: ByScale}, Weigh{Animals: []string{"Moss"}, GirthCm: 76}).
		tell("2026-06-02 19:00", Worm{Treatment{Animals: []string{All}, Product: "feed wormer", WithdrawalDays: Int(5)}}, Sick{Animals: []string{"Burdock"}, Note: "off feed"}).
		tell("2026-06-10 10:00", Move{Pen: "hill"}, Mixed{Batches: Float(2)}, FeedLevel{Feeder: "barn", Fraction: Float(0.4)}).
		tell("2026-06-13 11:00", Booked{Day: DateDay(2026, 9, 1), Minute: Int(570)})
}

// everyFigure writes what the model says of a herd at a moment, to the bit.
func everyFigure(h *Herd, at time.Time) string {
	today := DayOf(at)
	out := ""
	say := func(name string, err error, v ...any) {
		out += fmt.Sprintf("%s %v", name, err)
		for _, x := range v {
			out += fmt.Sprintf(" %x", x)
		}
		out += "\n"
	}
	weights, err := h.Weights(today)
	say("weights", err)
	for _, w := range weights {
		say(w.Animal.Name, nil, w.WeightKg, w.GainKgD)
	}
	target, err := h.Target(h.TargetKg, today)
	say("target", err, target.Herd.Days)
	left, err := h.FeedLeft(at)
	say("feed left", err, left.FeedKg, left.UseKgD, left.Days, left.LowDays, left.EdgeDays)
	need, err := h.FeedNeed(at, today+60)
	say("feed need", err, need.FeedKg, need.Batches)
	plan, err := h.RefillPlan(at, at.Add(7*24*time.Hour))
	say("refill", err, plan.PourKg, plan.Batches)
	water, err := h.WaterLeft(at)
	say("water", err, water.Litres, water.UseLD, water.Days, water.LowDays, water.EdgeDays)
	wallow, err := h.WallowLeft(at)
	say("wallow", err, wallow.Dry, wallow.LossLD, wallow.FillL)
	ration, err := h.RationCheck(today)
	say("ration", err, ration.SIDLysinePct, ration.ForWeightKg, ration.EnergyMJKg)
	steps, err := h.RationSteps(today)
	say("steps", err)
	for _, s := range steps.Steps {
		say("step", nil, s.FromKg, s.Days, s.RichKg)
	}
	mix, err := h.LeastCostMix(at)
	say("mix", err, mix.PerKg, mix.NowPerKg)
	for _, name := range sortedKeys(mix.Recipe.Ingredients) {
		say(name, nil, mix.Recipe.Ingredients[name])
	}
	yield, err := h.Yield(today + 60)
	say("yield", err, yield.LiveKg, yield.HangingKg, yield.RetailKg)
	cost, err := h.Cost(at)
	say("cost", err, cost.Spent, cost.Forecast, cost.PerKgLive, cost.PerKgHanging, cost.PerKgPackaged)
	gain, err := h.FeedPerGain(at)
	say("feed per gain", err, gain.Ratio, gain.Cost)
	pens, err := h.PenNitrogenYear(today)
	say("nitrogen", err)
	for _, p := range pens {
		say(p.Pen.Name, nil, p.FedKg, p.KeptKg, p.KgHa)
	}
	worms, err := h.PenWorms(today)
	say("worms", err)
	for _, w := range worms {
		say(w.Pen.Name, nil, w.Since, w.LastUse, w.InfectiveFrom)
	}
	adequate, err := h.Adequacy(today)
	say("adequacy", err, adequate.NippleHeightCm, adequate.ShelterM2, adequate.FeederWidthCm)
	for _, o := range adequate.Ahead {
		say(o.Code, nil, o.Days, o.FromKg)
	}
	span, err := h.FeederSpan(at)
	say("span", err, span.HoldsKg, span.From)
	feedOut, err := h.FeedOut(at)
	say("feed out", err, feedOut.At.Unix(), feedOut.LeftKg, feedOut.PourKg)
	due, err := h.MoveDue(today)
	say("move", err, due.On)
	due, err = h.WormingDue(today)
	say("worm", err, due.On)
	for _, p := range h.Withdrawal(at) {
		say("withdrawal "+p.Animal.Name, nil, p.ClearAt.Unix(), p.Known)
	}
	return out
}

func TestEveryFigureIsThatOfTheFactsNotTheirOrder(t *testing.T) {
	s := aWholeSeason(t)
	at := s.moment("2026-06-14 12:00")
	want := everyFigure(s.herd(), at)
	for _, line := range []string{"feed left", "water", "mix", "cost", "nitrogen", "span", "feed out"} {
		require.Contains(t, want, line+" <nil>", "every figure can be had of this herd")
	}
	rapid.Check(t, func(rt *rapid.T) {
		require.Equal(rt, want, everyFigure(Fold(rapid.Permutation(s.records).Draw(rt, "records")), at))
	})
}

func TestVoidingAnyRecordRestoresEveryFigure(t *testing.T) {
	s := aWholeSeason(t)
	at := s.moment("2026-06-14 12:00")
	want := everyFigure(s.herd(), at)
	for i, r := range s.records {
		again := append([]Record(nil), s.records...)
		again = append(again, Record{ID: "twice", On: r.On, At: r.At, Said: true, Fact: r.Fact})
		void := Record{ID: "void", On: DayOf(at), At: at, Fact: Void{Record: "twice", Why: "undo"}}
		require.Equal(t, want, everyFigure(Fold(append(again, void)), at), "%s of record %d", r.Fact.Kind(), i)
	}
}

// Every interval of the figures nests, whatever the moment.
func TestIntervalsOfEveryFigureNest(t *testing.T) {
	s := aWholeSeason(t)
	h := s.herd()
	start := s.moment("2026-05-09 12:00")
	rapid.Check(t, func(rt *rapid.T) {
		at := start.Add(time.Duration(rapid.IntRange(0, 100*24).Draw(rt, "hours")) * time.Hour)
		nest := func(name string, i Interval) {
			require.LessOrEqual(rt, i.Low, i.Mid, name)
			require.LessOrEqual(rt, i.Mid, i.High, name)
		}
		days := func(name string, i DayInterval) {
			require.LessOrEqual(rt, i.Low, i.Mid, name)
			require.LessOrEqual(rt, i.Mid, i.High, name)
		}
		today := DayOf(at)
		left, err := h.FeedLeft(at)
		require.NoError(rt, err)
		nest("feed", left.FeedKg)
		nest("use", left.UseKgD)
		require.LessOrEqual(rt, left.EdgeDays, left.LowDays)
		require.LessOrEqual(rt, left.LowDays, left.Days)
		need, err := h.FeedNeed(at, today+Day(rapid.IntRange(0, 90).Draw(rt, "ahead")))
		require.NoError(rt, err)
		nest("need", need.FeedKg)
		yield, err := h.Yield(today)
		require.NoError(rt, err)
		nest("live", yield.LiveKg)
		nest("hanging", yield.HangingKg)
		nest("retail", yield.RetailKg)
		span, err := h.FeederSpan(at)
		require.NoError(rt, err)
		nest("holds", span.HoldsKg)
		nest("now", span.NowKg)
		days("too small", span.From)
		wallow, err := h.WallowLeft(at)
		require.NoError(rt, err)
		days("wallow", wallow.Dry)
		nest("loss", wallow.LossLD)
		steps, err := h.RationSteps(today)
		require.NoError(rt, err)
		for _, x := range steps.Steps {
			days("step", x.Days)
		}
		ready, err := h.Adequacy(today)
		require.NoError(rt, err)
		for _, x := range ready.Ahead {
			days(x.Code, x.Days)
		}
		if out, err := h.FeedOut(at); err == nil {
			nest("left at feed off", out.LeftKg)
			nest("to pour", out.PourKg)
		}
		if gain, err := h.FeedPerGain(at); err == nil {
			nest("feed per gain", gain.Ratio)
		}
	})
}
