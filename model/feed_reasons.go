package model

import (
	"math"
	"time"
)

// The codes of the reasons for feed, ration, yield, cost and needs, with what
// fills them.
const (
	// ReasonFeedMark: Names feeder, On the day of the latest record of its level.
	ReasonFeedMark = "feed_last_mark"
	// ReasonFeedUnseen: Names feeder: only pours were told, no level was seen.
	ReasonFeedUnseen = "feed_level_unseen"
	// ReasonFeedPigs: Q pigs, their mean weight, the herd's feed a day.
	ReasonFeedPigs = "feed_pigs"
	// ReasonFeedAppetite: Q learned use in percent of the table's, and its 80 %
	// half range in percent.
	ReasonFeedAppetite = "feed_appetite"
	// ReasonFeedTable: no fill has taught yet; Q half range in percent.
	ReasonFeedTable = "feed_by_table"
	// ReasonFeedCapacity: Names feeder, Q what it holds.
	ReasonFeedCapacity = "feed_capacity"
	// ReasonFeedCapacityGuessed: the same, guessed from the largest pour.
	ReasonFeedCapacityGuessed = "feed_capacity_guessed"
	// ReasonFeedHeat: Q percent less feed for the heat, and the day's mean.
	ReasonFeedHeat = "feed_heat"
	// ReasonFeedCold: Q percent more feed for the cold, and the day's mean.
	ReasonFeedCold = "feed_cold"
	// ReasonFeedSick: Names pigs unwell in the last fortnight, On the last day of
	// it: such days teach less.
	ReasonFeedSick = "feed_sick"
	// ReasonFeedLeftOut: Names feeder, On the day: a span too strange to learn from.
	ReasonFeedLeftOut = "feed_span_left_out"
	// ReasonFeedOdd: Names feeder, On the day it was full before, Q what left it
	// since, what was expected, half the 80 % range of that.
	ReasonFeedOdd = "feed_odd"
	// ReasonFeedOddEmpty: Names feeder, Q what should be left in it, and at the
	// cautious edge.
	ReasonFeedOddEmpty = "feed_odd_empty"
	// ReasonFeederNeverFilled: Names feeder set up but never spoken of.
	ReasonFeederNeverFilled = "feeder_never_filled"
	// ReasonFeedBooked: On the butcher's day, up to which feed is reckoned.
	ReasonFeedBooked = "feed_until_butcher"

	// ReasonRationNeeds: Q mean weight, digestible lysine needed in percent.
	ReasonRationNeeds = "ration_needs"
	// ReasonRationHolds: Q digestible lysine and crude protein in percent, energy.
	ReasonRationHolds = "ration_holds"
	// ReasonRationUnknown: Names ingredients without figures, Q their kilograms.
	ReasonRationUnknown = "ration_unknown"
	// ReasonRationAdd: Names ingredient, Q kilograms more a batch.
	ReasonRationAdd = "ration_add"
	// ReasonRationNoRemedy: no ingredient of the mix can bring it up to the need.
	ReasonRationNoRemedy = "ration_no_remedy"

	// ReasonYieldDressing: Q hanging in percent of live, 80 % half range.
	ReasonYieldDressing = "yield_dressing"
	// ReasonYieldOwnDressing: the same with the herd's own pigs; Q also how many.
	ReasonYieldOwnDressing = "yield_own_dressing"
	// ReasonYieldTakeHome: Q packaged in percent of hanging, 80 % half range.
	ReasonYieldTakeHome = "yield_take_home"
	// ReasonYieldOwnTakeHome: the same with the herd's own pigs; Q also how many.
	ReasonYieldOwnTakeHome = "yield_own_take_home"

	// ReasonCostPaid: Q money paid this season.
	ReasonCostPaid = "cost_paid"
	// ReasonCostReceived: Q money received this season.
	ReasonCostReceived = "cost_received"
	// ReasonCostFeedAhead: On until when, Q feed still to buy, its price a kilogram.
	ReasonCostFeedAhead = "cost_feed_ahead"
	// ReasonCostFeedUnpriced: Q feed without a price, left out of the sum.
	ReasonCostFeedUnpriced = "cost_feed_unpriced"
	// ReasonCostOtherMoney: Names currencies, left out of the sum.
	ReasonCostOtherMoney = "cost_other_currency"
	// ReasonCostDead: Q pigs that died: the others carry their cost.
	ReasonCostDead = "cost_dead_carried"
	// ReasonCostNoWeight: nothing is known to divide the cost by.
	ReasonCostNoWeight = "cost_no_weight"

	// ReasonNeedsGrowth: Q pigs, weight at the start, weight aimed for, days.
	ReasonNeedsGrowth = "needs_growth"
	// ReasonNeedsFeed: Q feed a pig, feed a day at the end.
	ReasonNeedsFeed = "needs_feed"
	// ReasonNeedsWater: Q litres a day in heat at the end.
	ReasonNeedsWater = "needs_water"
	// ReasonNeedsSpace: Q shelter, shade a pig: common practice, no source.
	ReasonNeedsSpace = "needs_space"
	// ReasonNeedsBooking: On the day to book by, Q days ahead of the early edge.
	ReasonNeedsBooking = "needs_booking"
)

// FeedReasonCodes lists the codes of the reasons above, for the catalogue of
// sentences to be held against.
func FeedReasonCodes() []string {
	return []string{
		ReasonFeedMark, ReasonFeedUnseen, ReasonFeedPigs, ReasonFeedAppetite, ReasonFeedTable,
		ReasonFeedCapacity, ReasonFeedCapacityGuessed, ReasonFeedHeat, ReasonFeedCold, ReasonFeedSick,
		ReasonFeedLeftOut, ReasonFeedOdd, ReasonFeedOddEmpty, ReasonFeederNeverFilled, ReasonFeedBooked,
		ReasonRationNeeds, ReasonRationHolds, ReasonRationUnknown, ReasonRationAdd, ReasonRationNoRemedy,
		ReasonYieldDressing, ReasonYieldOwnDressing, ReasonYieldTakeHome, ReasonYieldOwnTakeHome,
		ReasonCostPaid, ReasonCostReceived, ReasonCostFeedAhead, ReasonCostFeedUnpriced, ReasonCostOtherMoney,
		ReasonCostDead, ReasonCostNoWeight,
		ReasonNeedsGrowth, ReasonNeedsFeed, ReasonNeedsWater, ReasonNeedsSpace, ReasonNeedsBooking,
	}
}

// oddFor is how many days a span left out is worth telling.
const oddFor = 28

// reasons says why the feeders hold and lose what they do.
func (f *feedFit) reasons(g gaussian, marks []feedMark, o *outlook, at time.Time) []Reason {
	today := DayOf(at)
	var out []Reason
	for _, i := range o.there {
		name := []string{f.feeders[i].name}
		if seen := marks[i].seen; !seen.IsZero() {
			out = append(out, Reason{Code: ReasonFeedMark, Names: name, On: DayOf(seen)})
		} else {
			out = append(out, Reason{Code: ReasonFeedUnseen, Names: name, On: DayOf(marks[i].at)})
		}
	}
	out = append(out, Reason{Code: ReasonFeedPigs, Q: []Quantity{
		{float64(o.now.pigs), Count},
		{o.now.weightKg, Kilograms},
		{math.Exp(g.mean[placeAppetite]) * o.now.kg, KilogramsPerDay},
	}})
	out = append(out, f.appetiteReasons(Estimate{g.mean[placeAppetite], math.Sqrt(g.at(placeAppetite, placeAppetite))}, at)...)
	for _, i := range o.there {
		b, code := f.feeders[i], ReasonFeedCapacity
		if b.capacitySD >= impliedSD*b.capacityKg {
			code = ReasonFeedCapacityGuessed
		}
		out = append(out, Reason{Code: code, Names: []string{b.name}, Q: []Quantity{{g.mean[placeCapacity(i)], Kilograms}}})
	}
	for _, s := range f.odd {
		if !s.at.After(at) && today-s.on <= oddFor {
			out = append(out, Reason{Code: ReasonFeedLeftOut, Names: []string{s.feeder}, On: s.on})
		}
	}
	for _, b := range f.feeders {
		if math.IsInf(b.from, 1) {
			out = append(out, Reason{Code: ReasonFeederNeverFilled, Names: []string{b.name}})
		}
	}
	return out
}

// appetiteReasons says what the herd eats by: the table or its own fills, heat,
// cold, sick pigs.
func (f *feedFit) appetiteReasons(appetite Estimate, at time.Time) []Reason {
	d := DayOf(at)
	half := 100 * (math.Exp(z80*appetite.SD) - 1)
	var out []Reason
	if appetite.SD >= 0.95*appetiteSD {
		out = append(out, Reason{Code: ReasonFeedTable, Q: []Quantity{{half, Percent}}})
	} else {
		out = append(out, Reason{Code: ReasonFeedAppetite, Q: []Quantity{{100 * math.Exp(appetite.Mean), Percent}, {half, Percent}}})
	}
	if use, err := f.use.on(d); err == nil {
		switch by := f.h.weatherFeedFactor(d, use.weightKg); {
		case by < 1:
			out = append(out, Reason{Code: ReasonFeedHeat, On: d, Q: []Quantity{{100 * (1 - by), Percent}, {f.h.Air(d).MeanC(), Celsius}}})
		case by > 1:
			out = append(out, Reason{Code: ReasonFeedCold, On: d, Q: []Quantity{{100 * (by - 1), Percent}, {f.h.Air(d).MeanC(), Celsius}}})
		}
	}
	return append(out, f.sickReason(d)...)
}

// sickReason names the pigs whose sickness made the last fortnight's feed
// uncertain, and the last such day.
func (f *feedFit) sickReason(today Day) []Reason {
	if len(f.h.Sicks) == 0 {
		return nil
	}
	r := Reason{Code: ReasonFeedSick, On: -1}
	named := map[string]bool{}
	for d := today - sickEndsAfter + 1; d <= today; d++ {
		for _, a := range f.h.sickOn(d) {
			r.On = d
			if a.Name != "" && !named[a.Name] {
				named[a.Name] = true
				r.Names = append(r.Names, a.Name)
			}
		}
	}
	if r.On < 0 {
		return nil
	}
	return []Reason{r}
}

func (f *feedFit) bookedReason(today, until Day) []Reason {
	if last, ok := f.h.LastPigsLeave(today); ok && last <= until+1 {
		return []Reason{{Code: ReasonFeedBooked, On: last}}
	}
	return nil
}
