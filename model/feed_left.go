package model

import (
	"math"
	"time"
)

// FeedLeft gives what the feeders hold at the moment and for how long, from the
// pours, the levels seen, the pigs' weights and the herd's learned appetite.
// What would last longer than 400 days is given as 400. It is an error *Missing
// of "pigs", "weight", "feeder", "capacity" or "level" where one is unknown.
func (h *Herd) FeedLeft(at time.Time) (FeedLeft, error) {
	today := DayOf(at)
	if len(h.Alive(today)) == 0 {
		return FeedLeft{}, &Missing{What: "pigs"}
	}
	return h.feeding().left(at)
}

func (f *feedFit) left(at time.Time) (FeedLeft, error) {
	g, marks, err := f.at(at)
	if err != nil {
		return FeedLeft{}, err
	}
	x := wallDays(at)
	o, err := f.look(g, x)
	if err != nil {
		return FeedLeft{}, err
	}
	var ends [3][]float64
	for k, edge := range []float64{likely, lowEdge, cautiousEdge} {
		if ends[k], err = o.lasts(edge); err != nil {
			return FeedLeft{}, err
		}
	}
	appetite := math.Exp(g.mean[placeAppetite])
	sd := math.Sqrt(g.at(placeAppetite, placeAppetite))
	share := f.shares(g, o.there)
	out := FeedLeft{UseKgD: aboutLog(appetite*o.now.kg, sd)}
	total := make([]float64, f.size())
	first := -1
	for k, i := range o.there {
		fl := FeederLeft{
			Name:     f.feeders[i].name,
			Since:    marks[i].at,
			LevelKg:  levelKg(g, i),
			UseKgD:   out.UseKgD.Scale(share[k]),
			Capacity: Estimate{g.mean[placeCapacity(i)], math.Sqrt(g.at(placeCapacity(i), placeCapacity(i)))}.Interval(),
			Days:     ends[0][i], LowDays: ends[1][i], EdgeDays: ends[2][i],
		}
		fl.Empty = wallTime(x+fl.Days, at.Location())
		out.Feeders = append(out.Feeders, fl)
		if g.mean[placeLevel(i)] > 0 {
			total[placeLevel(i)] = 1
		}
		if first < 0 || fl.Days < out.Feeders[first].Days {
			first = k
		}
	}
	mean, variance := g.along(total)
	sum := Estimate{mean, math.Sqrt(variance)}.Interval()
	out.FeedKg = Interval{max(sum.Low, 0), max(sum.Mid, 0), max(sum.High, 0)}
	dry := out.Feeders[first]
	out.Days, out.LowDays, out.EdgeDays, out.Empty = dry.Days, dry.LowDays, dry.EdgeDays, dry.Empty
	for _, fl := range out.Feeders {
		out.LowDays, out.EdgeDays = min(out.LowDays, fl.LowDays), min(out.EdgeDays, fl.EdgeDays)
	}
	out.Reasons = f.reasons(g, marks, o, at)
	return out, nil
}
