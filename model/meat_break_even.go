package model

import (
	"math"
	"time"
)

// mostMoney and mostWeightKg bound sums of money and weight of a small herd.
const (
	mostMoney    = 1e9
	mostWeightKg = 1e6
)

// BreakEven is the price of a kilogram at which so much money (0 to 1e9) is just
// covered by so many kilograms sold or eaten (more than nothing, up to 1e6): else
// *OutOfRange. Divide by what was sold, not by what was bought: the dead are
// carried by the others.
//
// Source: Sauk County youth livestock budget form (read): total cost over
// expected market weight; deaths as in Texas Agricultural Extension B-1241, 1988.
func BreakEven(money, kg float64) (float64, error) {
	if err := inMoney(money); err != nil {
		return 0, err
	}
	if !(kg > 0 && kg <= mostWeightKg) {
		return 0, &OutOfRange{"weight_kg", kg, 0, mostWeightKg}
	}
	return money / kg, nil
}

// MostForPig is the most that one could pay for a weaner so that its sale just
// covers all the rest: income less other cost, both in money (0 to 1e9, else
// *OutOfRange). Negative where even a gift would lose. Computed.
func MostForPig(income, otherCost float64) (float64, error) {
	for _, m := range []float64{income, otherCost} {
		if err := inMoney(m); err != nil {
			return 0, err
		}
	}
	return income - otherCost, nil
}

func inMoney(m float64) error {
	if !(m >= 0 && m <= mostMoney) {
		return &OutOfRange{"money", m, 0, mostMoney}
	}
	return nil
}

// FeedPerGain is the feed that went for a kilogram of live gain.
type FeedPerGain struct {
	Ratio          Interval
	FeedKg, GainKg float64
	Since          Day
	Cost           float64 // money a kilogram of gain for feed alone; 0 where no price is known
	Reasons        []Reason
}

// FeedConversion is kilograms of feed (0 to 1e6) to a kilogram of gain (gainKg
// more than nothing, up to 1e6): else *OutOfRange. With money in place of feed it
// is the cost of gain.
//
// Source: feed over end less start weight, as in county youth swine project
// sheets (read).
func FeedConversion(feedKg, gainKg float64) (float64, error) {
	switch {
	case !(feedKg >= 0 && feedKg <= mostWeightKg):
		return 0, &OutOfRange{"feed_kg", feedKg, 0, mostWeightKg}
	case !(gainKg > 0 && gainKg <= mostWeightKg):
		return 0, &OutOfRange{"gain_kg", gainKg, 0, mostWeightKg}
	}
	return feedKg / gainKg, nil
}

// FeedPerGain is feed to gain of this season's pigs since the first of them came:
// the feed by the learned appetite, the gain by the weights as they are known.
// Pigs that died have eaten, and gained nothing that counts. *Missing "pigs" or
// "weight" where one is unknown; *OutOfRange in the first week, when gain is lost
// in the noise.
func (h *Herd) FeedPerGain(at time.Time) (FeedPerGain, error) {
	const leastDays = 7
	today := DayOf(at)
	pigs := h.Alive(today)
	if len(pigs) == 0 {
		return FeedPerGain{}, &Missing{What: "pigs"}
	}
	since := today
	for _, a := range h.season(today).Pigs {
		since = min(since, a.Group.Arrived)
	}
	if days := today - since; days < leastDays {
		return FeedPerGain{}, &OutOfRange{"days", float64(days), leastDays, furthest}
	}
	f := h.feeding()
	appetite := f.appetiteAt(at)
	kg, noise, err := f.use.over(float64(since), wallDays(at))
	if err != nil {
		return FeedPerGain{}, err
	}
	out := FeedPerGain{Since: since, FeedKg: math.Exp(appetite.Mean) * kg}
	var spread float64
	for _, a := range h.season(today).Pigs {
		end := today
		if a.Gone != nil && a.Gone.On <= today {
			if a.Gone.F.How == Died {
				continue
			}
			end = a.Gone.On
		}
		last, err := h.MeanWeight([]*Animal{a}, end)
		if err != nil {
			return FeedPerGain{}, err
		}
		began, err := h.MeanWeight([]*Animal{a}, max(since, a.Group.Arrived))
		if err != nil {
			return FeedPerGain{}, err
		}
		out.GainKg += last.WeightKg.Mid - began.WeightKg.Mid
		// Pigs of one herd err together: their errors add up.
		spread += math.Hypot(last.WeightKg.High-last.WeightKg.Low, began.WeightKg.High-began.WeightKg.Low) / (2 * z80)
	}
	ratio, err := FeedConversion(out.FeedKg, out.GainKg)
	if err != nil {
		return FeedPerGain{}, err
	}
	relative := math.Sqrt(appetite.SD*appetite.SD + noise/(kg*kg) + spread*spread/(out.GainKg*out.GainKg))
	out.Ratio = aboutLog(ratio, relative)
	if price, ok := h.feedPrice(h.account(h.season(today), at)); ok {
		out.Cost = ratio * price
	}
	out.Reasons = []Reason{{Code: ReasonFeedPerGainUsed, On: since, Q: []Quantity{{out.FeedKg, Kilograms}, {out.GainKg, Kilograms}}}}
	return out, nil
}

// FeedPrice is what the herd pays for a kilogram of feed this season, by its
// recipe where each ingredient has a price, else the mean of all it bought;
// currency is empty where none was named. false where no price was told.
func (h *Herd) FeedPrice(at time.Time) (perKg float64, currency string, ok bool) {
	money := h.account(h.season(DayOf(at)), at)
	perKg, ok = h.feedPrice(money)
	return perKg, money.currency, ok
}
