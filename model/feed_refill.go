package model

import (
	"math"
	"time"
)

// spareDays is what a pour should last beyond the next visit: judgement.
const spareDays = 1.0

// RefillPlan plans the visit at the moment at, for feed to last until next at
// the 2 % edge and, where it fits, a day beyond. Feed is not planned past the
// start of the day on which the last pigs are booked with the butcher. Errors as
// for FeedLeft.
func (h *Herd) RefillPlan(at, next time.Time) (RefillPlan, error) {
	if len(h.Alive(DayOf(at))) == 0 {
		return RefillPlan{}, &Missing{What: "pigs"}
	}
	return h.feeding().plan(at, next)
}

func (f *feedFit) plan(at, next time.Time) (RefillPlan, error) {
	g, marks, err := f.at(at)
	if err != nil {
		return RefillPlan{}, err
	}
	x, until := wallDays(at), wallDays(next)
	spare := until + spareDays
	leaves := math.Inf(1)
	if last, ok := f.h.LastPigsLeave(DayOf(at)); ok {
		until, spare = min(until, float64(last)), min(spare, float64(last))
		leaves = float64(last)
	}
	o, err := f.look(g, x)
	if err != nil {
		return RefillPlan{}, err
	}
	toNext, err := o.ahead(until)
	if err != nil {
		return RefillPlan{}, err
	}
	toSpare, err := o.ahead(spare)
	if err != nil {
		return RefillPlan{}, err
	}
	edges, err := o.lasts(cautiousEdge)
	if err != nil {
		return RefillPlan{}, err
	}
	middles, err := o.lasts(likely)
	if err != nil {
		return RefillPlan{}, err
	}
	edge, err := o.lastsTogether(cautiousEdge)
	if err != nil {
		return RefillPlan{}, err
	}
	middle, err := o.lastsTogether(likely)
	if err != nil {
		return RefillPlan{}, err
	}
	out := RefillPlan{EdgeAt: wallTime(x+edge, at.Location()), LikelyAt: wallTime(x+middle, at.Location())}
	share := f.shares(g, o.there)
	// What a pour comes on top of is never below nothing, so that no more is ever
	// short than in an empty feeder.
	some, none := *o, *o
	some.g, none.g = g.clone(), g.clone()
	for _, i := range o.there {
		some.g.rectify(placeLevel(i))
		none.g.forget(placeLevel(i), 0, 0)
	}
	worth, likelyShort := math.Inf(1), false
	for k, i := range o.there {
		level := max(g.mean[placeLevel(i)], 0)
		r := RefillFeeder{
			Name:     f.feeders[i].name,
			RoomKg:   max(g.mean[placeCapacity(i)]-level, 0),
			EdgeAt:   wallTime(x+edges[i], at.Location()),
			LikelyAt: wallTime(x+middles[i], at.Location()),
		}
		r.Lasts = o.shortBy(i, placeCapacity(i), share[k], toNext) <= 0
		if x+edges[i] < until {
			short := min(some.shortBy(i, placeLevel(i), share[k], toSpare), none.shortBy(i, placeLevel(i), share[k], toSpare))
			r.PourKg = min(max(short, 0), r.RoomKg)
			out.Needed = true
			likelyShort = likelyShort || x+middles[i] < until
			worth = min(worth, f.worthPouring(g.mean[placeCapacity(i)]))
		}
		out.PourKg += r.PourKg
		out.Feeders = append(out.Feeders, r)
	}
	if out.Needed && out.PourKg < worth {
		if until == leaves && !likelyShort { // the last pigs leave on what is there
			out.clear()
		} else {
			out.raise(worth)
		}
	}
	if batch, ok := f.h.BatchKg(); ok && batch > 0 {
		out.Batches = math.Ceil(out.PourKg/batch - 1e-9)
	}
	out.Reasons = append(f.reasons(g, marks, o, at), f.bookedReason(DayOf(at), DayOf(next))...)
	return out, nil
}

// A pour of less than a tenth of the feeder or a bag, whichever is smaller, is not
// worth the walk (judgement); a bag of which nothing was told holds 50 lb.
const (
	worthPart = 0.1
	usualBag  = 50 * 0.45359237
)

// clear takes all pours out of the plan.
func (p *RefillPlan) clear() {
	p.PourKg, p.Needed = 0, false
	for i := range p.Feeders {
		p.Feeders[i].PourKg = 0
	}
}

// raise has the feeder that is to take the most take so much more that it all comes
// to the kilograms, as far as there is room.
func (p *RefillPlan) raise(kg float64) {
	most := 0
	for i := range p.Feeders {
		if p.Feeders[i].PourKg > p.Feeders[most].PourKg {
			most = i
		}
	}
	f := &p.Feeders[most]
	more := max(0, min(kg-p.PourKg, f.RoomKg-f.PourKg))
	f.PourKg += more
	p.PourKg += more
}

// worthPouring is the least worth pouring into a feeder of a capacity, in kilograms.
func (f *feedFit) worthPouring(capacityKg float64) float64 {
	bag := usualBag
	if told, ok := f.h.Sizes["bag"]; ok {
		bag = told
	}
	return min(worthPart*capacityKg, bag)
}

// ahead sums the herd's feed from the outlook's moment to another.
func (o *outlook) ahead(until float64) (feedSpan, error) {
	return o.f.span(o.x, until)
}

// shortBy is how many kilograms what is at a place of the belief (level or
// capacity of feeder i) falls short of the feeder's share of a span at the 2 %
// edge; below zero it is enough.
func (o *outlook) shortBy(i, place int, share float64, s feedSpan) float64 {
	taken := share * s.kg
	extra := 0.0
	if s.kg > 0 {
		extra = s.spread / s.kg
	}
	spread := o.spread(place, i, taken, share*share*s.noise, extra)
	return math.Exp(o.g.mean[placeAppetite])*taken + cautiousEdge*spread - o.g.mean[place]
}

// LastPigsLeave is the booked day, on or after today, from which no pig is left; false where none is
// booked, or not all pigs are.
func (h *Herd) LastPigsLeave(today Day) (Day, bool) {
	found := false
	var last Day
	for _, b := range h.Bookings {
		if d := b.F.Day; d >= today && h.notYetBooked(today, d) == 0 && (!found || d < last) {
			last, found = d, true
		}
	}
	return last, found
}
