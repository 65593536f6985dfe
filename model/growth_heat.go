package model

import (
	"math"
	"slices"
	"sort"
)

// What heat takes of the appetite it takes of growth as well: over 112 papers
// pigs in heat that came and went with the day ate 15.1 % less and gained 15.2 %
// less, in steady heat 23.2 and 25.3 % ("Effect of constant and cyclic heat stress
// on growth performance ...", a meta-analysis of 7230 pigs, abstract read); one
// trial of steady heat saw 19 and 25 % (PMC7772945, abstract read). The mean is
// set between, its SD, for shade, air and breed, is judgement.
const (
	heatGainPerFeed   = 1.1
	heatGainPerFeedSD = 0.4
)

// heatStep is a hot day, and what heat has taken of a batch's feed since it came
// up to the end of that day, in days of feed.
type heatStep struct{ day, taken float64 }

// heatTaken is what heat took of a batch's feed before a day, in days of feed.
func (g *growthGroup) heatTaken(day float64) float64 {
	i := sort.Search(len(g.heat), func(i int) bool { return g.heat[i].day >= day })
	if i == 0 {
		return 0
	}
	return g.heat[i-1].taken
}

// hotDays counts a batch's hot days before a day.
func (g *growthGroup) hotDays(day float64) int {
	return sort.Search(len(g.heat), func(i int) bool { return g.heat[i].day >= day })
}

// collectHeat reckons what heat takes of each batch, by the same figure as the
// feed: on days of which a temperature was told or forecast, by the weight of a
// pig that has grown by the table since its batch was first weighed. That weight
// is near enough for a share of a share, and no later weighing moves it.
func (f *growthFit) collectHeat(h *Herd) {
	var days []Day
	for _, known := range []map[Day]Weather{h.Weathers, h.forecasts} {
		for d := range known {
			if air := h.Air(d); !air.Guessed && air.MeanC() > mildC {
				days = append(days, d)
			}
		}
	}
	slices.Sort(days)
	days = slices.Compact(days)
	for k, g := range f.groups {
		day, table := f.heatFrom(k)
		taken := 0.0
		for _, d := range days {
			if float64(d) < g.day {
				continue
			}
			kg, _ := tableWeight(table + float64(d) - day)
			taken += math.Max(0, 1-h.weatherFeedFactor(d, kg))
			g.heat = append(g.heat, heatStep{float64(d), taken})
		}
	}
}

// heatFrom is a day, and where on the table a batch's pigs are taken to stand on
// it to reckon how heavy heat finds them.
func (f *growthFit) heatFrom(group int) (day, table float64) {
	g := f.groups[group]
	if g.guessed {
		return g.day, g.mean
	}
	first, sum, n := math.Inf(1), 0.0, 0.0
	see := func(r *growthReading) {
		if r.day < first {
			first, sum, n = r.day, 0, 0
		}
		if r.day == first {
			sum, n = sum+r.kg, n+1
		}
	}
	for _, p := range f.pigs {
		for i := range p.readings {
			if p.group == group {
				see(&p.readings[i])
			}
		}
	}
	for i := range f.means.readings {
		r := &f.means.readings[i]
		if slices.ContainsFunc(r.pigs, func(j int) bool { return f.pigs[j].group == group }) {
			see(r)
		}
	}
	if n == 0 {
		return g.day, g.mean
	}
	return first, tableDay(sum / n)
}

// heatReasonDays is how long heat is spoken of.
const heatReasonDays = 30

// heatReason says what heat took of the pigs' growth lately, where it is worth a
// word.
func (f *growthFit) heatReason(pigs []*growthPig, on Day, gainKgD float64) []Reason {
	const wordKg = 0.5
	slow := heatGainPerFeed + f.theta[heatSlow]
	to, from := float64(on), float64(on-heatReasonDays)
	lost, days := 0.0, 0
	for _, p := range pigs {
		g := f.groups[p.group]
		lost += slow * (g.heatTaken(to) - g.heatTaken(from)) * gainKgD / float64(len(pigs))
		days = max(days, g.hotDays(to)-g.hotDays(from))
	}
	if lost < wordKg {
		return nil
	}
	return []Reason{{Code: ReasonHeatSlow, On: on, Q: []Quantity{{float64(days), Count}, {lost, Kilograms}}}}
}
