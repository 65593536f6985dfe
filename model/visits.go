package model

import (
	"errors"
	"math"
	"time"
)

// SupplyVisit is one call at the herd to fill everything that holds feed or
// water.
type SupplyVisit struct {
	// At is the visit: visitHour of the last day on which, then, nothing has run
	// dry at the 2 % edge, or the beginning of the span.
	At time.Time
	// Feed and Water say which of the two would run dry before the next day's
	// visit hour; the other is filled on the way.
	Feed, Water bool
	FeedKg      float64 // what fits then, likely; 0 where no feeder is known
	Litres      float64 // likewise
	// SafeUntil is until when all that was filled lasts at the 2 % edge.
	SafeUntil time.Time
}

const (
	visitHour = 18 * 60 // minutes after midnight
	mostCalls = 31      // in a span; more is a visit each day
)

// SupplyVisits is the fewest visits that keep feed and water from running dry
// between two moments at the 2 % edge, each as late as that allows and each
// filling all feeders and barrels to the brim. A span whose first hours are not
// covered begins with a visit. What is not known of feed or of water is left
// out; where neither is known the error says what is missing.
func (h *Herd) SupplyVisits(from, until time.Time) ([]SupplyVisit, error) {
	var out []SupplyVisit
	s, err := h.supplies(from)
	if err != nil {
		return nil, err
	}
	for last := from; s.edge().Before(until) && len(out) < mostCalls; {
		at := lastVisitBefore(s.edge())
		if !at.After(last) {
			at = from
			if len(out) > 0 { // full vessels do not last from one evening to the next
				at = (DayOf(last) + 1).At(visitHour, last.Location())
			}
		}
		if !at.Before(until) {
			break
		}
		v := SupplyVisit{At: at}
		next := (DayOf(at) + 1).At(visitHour, at.Location())
		v.Feed, v.Water = s.feed.Before(next), s.water.Before(next)
		if v.FeedKg, v.Litres, err = h.room(at); err != nil {
			return nil, err
		}
		h = h.filled(at)
		if s, err = h.supplies(at); err != nil {
			return nil, err
		}
		v.SafeUntil, last = s.edge(), at
		out = append(out, v)
	}
	return out, nil
}

// lastVisitBefore is the latest visit hour not after the moment.
func lastVisitBefore(t time.Time) time.Time {
	at := DayOf(t).At(visitHour, t.Location())
	if at.After(t) {
		at = (DayOf(t) - 1).At(visitHour, t.Location())
	}
	return at
}

// supply is until when feed and water are safe; far off where not known.
type supply struct{ feed, water time.Time }

func (s supply) edge() time.Time {
	if s.water.Before(s.feed) {
		return s.water
	}
	return s.feed
}

func (h *Herd) supplies(at time.Time) (supply, error) {
	far := at.AddDate(2, 0, 0)
	s := supply{far, far}
	feed, err1 := h.FeedLeft(at)
	if err1 == nil {
		s.feed = at.Add(time.Duration(feed.EdgeDays * 24 * float64(time.Hour)))
	}
	water, err2 := h.WaterLeft(at)
	if err2 == nil {
		s.water = water.EdgeAt
	}
	var lacks *Missing
	for _, err := range []error{err1, err2} {
		if err != nil && !errors.As(err, &lacks) {
			return s, err
		}
	}
	if err1 != nil && err2 != nil {
		return s, err1
	}
	return s, nil
}

// room is what feeders and barrels could take at the moment, likely.
func (h *Herd) room(at time.Time) (feedKg, litres float64, err error) {
	var lacks *Missing
	feed, err := h.FeedLeft(at)
	switch {
	case err == nil:
		for _, f := range feed.Feeders {
			feedKg += math.Max(0, f.Capacity.Mid-f.LevelKg.Mid)
		}
	case !errors.As(err, &lacks):
		return 0, 0, err
	}
	water, err := h.WaterLeft(at)
	switch {
	case err == nil:
		for _, b := range h.Barrels {
			if b.CapacityL != nil {
				litres += *b.CapacityL
			}
		}
		litres = math.Max(0, litres-water.Litres.Mid)
	case !errors.As(err, &lacks):
		return 0, 0, err
	}
	return feedKg, litres, nil
}

// filled is the herd as it would be were every feeder and barrel filled at the
// moment; h stays as it is.
func (h *Herd) filled(at time.Time) *Herd {
	c := *h
	c.figures = &figures{}
	c.Refills = append([]Dated[Refill](nil), h.Refills...)
	c.Waters = append([]Dated[Water](nil), h.Waters...)
	r := Record{On: DayOf(at), At: at}
	if feed, err := h.FeedLeft(at); err == nil { // feeders that nobody set up among them
		for _, f := range feed.Feeders {
			c.Refills = append(c.Refills, dated(Refill{Feeder: f.Name, Full: true}, r))
		}
	}
	if len(h.Barrels) > 0 {
		c.Waters = append(c.Waters, dated(Water{Full: true}, r))
	}
	return &c
}
