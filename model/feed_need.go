package model

import (
	"math"
	"time"
)

// mostNeedDays bounds the span that feed is summed over: more than the target of
// any pig is looked for.
const mostNeedDays = 800

// FeedNeed gives the feed needed from the moment until the end of the day, by
// the pigs that are there, with what is wasted at the feeder. Pigs booked with
// the butcher eat until the start of their day. Nothing is needed for a span
// that has passed. *Missing "pigs" or "weight" where one is unknown; *OutOfRange
// for a day more than 800 days ahead.
func (h *Herd) FeedNeed(from time.Time, until Day) (FeedNeed, error) {
	if ahead := until - DayOf(from); ahead > mostNeedDays {
		return FeedNeed{}, &OutOfRange{"days", float64(ahead), 0, mostNeedDays}
	}
	if len(h.Alive(DayOf(from))) == 0 {
		return FeedNeed{}, &Missing{What: "pigs"}
	}
	return h.feeding().need(from, until)
}

func (f *feedFit) need(from time.Time, until Day) (FeedNeed, error) {
	x := wallDays(from)
	now, err := f.use.on(DayOf(from))
	if err == nil {
		err = now.lacks
	}
	if err != nil {
		return FeedNeed{}, err
	}
	s, err := f.span(x, float64(until)+1)
	if err != nil {
		return FeedNeed{}, err
	}
	appetite := f.appetiteAt(from)
	out := FeedNeed{Until: until, FeedKg: s.interval(appetite)}
	if batch, ok := f.h.BatchKg(); ok && batch > 0 {
		out.Batches = out.FeedKg.Mid / batch
	}
	out.Reasons = append(f.appetiteReasons(appetite, from), f.bookedReason(DayOf(from), until)...)
	return out, nil
}

// feedSpan is the feed of a span at an appetite of 1.
type feedSpan struct {
	kg, noise float64
	spread    float64 // kg, from not knowing the weights better than now
}

// span sums the feed between two moments in wall days. Pigs that go to the
// butcher in it no longer eat from the start of their day.
func (f *feedFit) span(from, to float64) (feedSpan, error) {
	var s feedSpan
	for x := from; x < to; {
		end := min(to, math.Floor(x)+1)
		d := Day(math.Floor(x))
		stay := f.h.notYetBooked(Day(math.Floor(from)), d)
		if stay == 0 {
			break
		}
		use, err := f.use.on(d)
		if err != nil {
			return feedSpan{}, err
		}
		kg := (end - x) * use.kg * stay
		s.kg += kg
		s.noise += (end - x) * use.noise * stay
		extra, err := f.use.grown(from, x)
		if err != nil {
			return feedSpan{}, err
		}
		s.spread += kg * extra
		x = end
	}
	return s, nil
}

// interval is the feed of the span for a herd whose appetite has this logarithm.
func (s feedSpan) interval(appetite Estimate) Interval {
	if s.kg <= 0 {
		return Interval{}
	}
	relative := math.Sqrt(appetite.SD*appetite.SD + (s.noise+s.spread*s.spread)/(s.kg*s.kg))
	return aboutLog(math.Exp(appetite.Mean)*s.kg, relative)
}

// notYetBooked is the share of the pigs alive on the day today that no butcher's
// day up to and including d takes away.
func (h *Herd) notYetBooked(today, d Day) float64 {
	if len(h.Bookings) == 0 {
		return 1
	}
	n := len(h.Alive(today))
	left := n
	for _, b := range h.Bookings {
		if b.F.Day < today || b.F.Day > d {
			continue
		}
		if b.F.Count == 0 {
			return 0
		}
		left -= b.F.Count
	}
	if n == 0 {
		return 1
	}
	return float64(max(left, 0)) / float64(n)
}
