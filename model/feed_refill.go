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
	if last, ok := f.h.lastPigsLeave(DayOf(at)); ok {
		until, spare = min(until, float64(last)), min(spare, float64(last))
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
		}
		out.PourKg += r.PourKg
		out.Feeders = append(out.Feeders, r)
	}
	if batch, ok := f.h.BatchKg(); ok && batch > 0 {
		out.Batches = math.Ceil(out.PourKg/batch - 1e-9)
	}
	out.Reasons = append(f.reasons(g, marks, o, at), f.bookedReason(DayOf(at), DayOf(next))...)
	return out, nil
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

// lastPigsLeave is the booked day from which no pig is left; false where none is
// booked, or not all pigs are.
func (h *Herd) lastPigsLeave(today Day) (Day, bool) {
	found := false
	var last Day
	for _, b := range h.Bookings {
		if d := b.F.Day; d >= today && h.notYetBooked(today, d) == 0 && (!found || d < last) {
			last, found = d, true
		}
	}
	return last, found
}
