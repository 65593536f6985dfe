package season

import (
	"fmt"
	"math"
	"strings"
)

// table is the seasons one by one, and what they come to.
func table(rs []*result) string {
	var b strings.Builder
	fmt.Fprintln(&b, "season pigs grower feeder barrels keeper   tape    days  feed water apart one dry (h/100 d)  fills best fewest  nudges/week hot  quiet  60 d 30 d 14 d")
	for _, r := range rs {
		kind := "obedient"
		if r.keeper.lazy {
			kind = "lazy"
		}
		fmt.Fprintf(&b, "%6d %4d %-6s %5.0f %7.0f  %-8s %-7s %4d %5.1f %5.1f %5.1f %7.1f          %5d %4d %6d   %9.1f %5.1f %5d  %s\n",
			r.number, len(r.farm.herd.pigs), r.grower.name, capacity(r.farm.feeders), capacity(r.farm.barrels), kind, r.tape(), r.days,
			r.per100(r.feed.hours), r.per100(r.water.hours), r.per100(r.feed.apart+r.water.apart), r.per100(r.feed.oneDry+r.water.oneDry),
			r.refills, r.best, r.fewest, median(r.weeks), median(r.hotWeeks), r.quiet, r.errorsText())
	}
	for _, lazy := range []bool{false, true} {
		s := summed(rs, lazy)
		name := map[bool]string{false: "obedient", true: "lazy"}[lazy]
		fmt.Fprintf(&b, "%s: %d seasons, dry %.2f h/100 d (99th percentile %.1f); fills of feed %d against %d (%.2f), of water %d against %d (%.2f), of both %.2f of the fewest possible; nudges a week median %.1f mean %.2f, in heat waves %.1f\n",
			name, len(s.dry), mean(s.dry), quantile(s.dry, 0.99), s.feed, s.feedBest, ratio(s.feed, s.feedBest),
			s.water, s.waterBest, ratio(s.water, s.waterBest), ratio(s.feed+s.water, s.fewest), median(s.weeks), meanInt(s.weeks), median(s.hotWeeks))
	}
	for _, tape := range []string{"scale", "checked", "tape"} {
		fmt.Fprintf(&b, "days off, %s:", tape)
		for _, ahead := range horizons {
			errors := daysOff(rs, ahead, func(r *result) bool { return r.tape() == tape })
			fmt.Fprintf(&b, "  %d days ahead %.1f (of %d)", ahead, mean(errors), len(errors))
		}
		fmt.Fprintln(&b)
	}
	return b.String()
}

func (r *result) tape() string {
	switch {
	case r.keeper.scale:
		return "scale"
	case r.keeper.checks:
		return "checked"
	}
	return "tape"
}

func (r *result) errorsText() string {
	var out []string
	for _, ahead := range horizons {
		if e, ok := r.errors[ahead]; ok {
			out = append(out, fmt.Sprintf("%4.0f", e))
		} else {
			out = append(out, "   -")
		}
	}
	return strings.Join(out, " ")
}

func capacity(vs []*vessel) float64 {
	sum := 0.0
	for _, v := range vs {
		sum += v.told
	}
	return sum
}

func mean(xs []float64) float64 {
	if len(xs) == 0 {
		return math.NaN()
	}
	sum := 0.0
	for _, x := range xs {
		sum += x
	}
	return sum / float64(len(xs))
}

func meanInt(xs []int) float64 {
	sum := 0.0
	for _, x := range xs {
		sum += float64(x)
	}
	return sum / float64(len(xs))
}

// quantile is of sorted values, between neighbours in proportion.
func quantile(sorted []float64, q float64) float64 {
	if len(sorted) == 0 {
		return math.NaN()
	}
	at := q * float64(len(sorted)-1)
	i := int(at)
	if i+1 >= len(sorted) {
		return sorted[len(sorted)-1]
	}
	return sorted[i] + (at-float64(i))*(sorted[i+1]-sorted[i])
}

func ratio(a, b int) float64 { return float64(a) / float64(b) }
