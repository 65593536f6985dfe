package model

import "time"

// FeederSpan says from when full feeders no longer hold the feed between two
// chore days.
type FeederSpan struct {
	HoldsKg  Interval // all feeders, full
	SpanDays int      // the longest between two chore days
	NowKg    Interval // eaten in a span that begins today
	// From is the first day of a span that takes more than they hold: Low by the
	// cautious edges of both, Mid likely, High by the hopeful ones. A day beyond the
	// target, or Never, says that it does not come.
	From    DayInterval
	Never   bool // not before the pigs reach their target
	Reasons []Reason
}

// FeederSpan looks ahead, from the moment, to the day on which the herd's target
// is reached. Errors as for FeedLeft.
func (h *Herd) FeederSpan(at time.Time) (FeederSpan, error) {
	today := DayOf(at)
	left, err := h.FeedLeft(at)
	if err != nil {
		return FeederSpan{}, err
	}
	target, err := h.Target(h.TargetKg, today)
	if err != nil {
		return FeederSpan{}, err
	}
	out := FeederSpan{SpanDays: h.choreGap()}
	for _, f := range left.Feeders {
		out.HoldsKg = Interval{out.HoldsKg.Low + f.Capacity.Low, out.HoldsKg.Mid + f.Capacity.Mid, out.HoldsKg.High + f.Capacity.High}
	}
	f := h.feeding()
	appetite := f.appetiteAt(at)
	end := min(max(target.Herd.Days.High, today), today+furthest)
	over := func(day Day) (low, mid, high bool, err error) {
		s, err := f.span(float64(day), float64(day)+float64(out.SpanDays))
		if err != nil {
			return false, false, false, err
		}
		grown, err := f.use.grown(wallDays(at), float64(day))
		if err != nil {
			return false, false, false, err
		}
		s.spread += s.kg * grown
		eaten := s.interval(appetite)
		if day == today {
			out.NowKg = eaten
		}
		return eaten.High > out.HoldsKg.Low, eaten.Mid > out.HoldsKg.Mid, eaten.Low > out.HoldsKg.High, nil
	}
	out.From = DayInterval{end + 1, end + 1, end + 1}
	for day := today; day <= end; day++ {
		low, mid, high, err := over(day)
		if err != nil {
			return FeederSpan{}, err
		}
		if low {
			out.From.Low = min(out.From.Low, day)
		}
		if mid {
			out.From.Mid = min(out.From.Mid, day)
		}
		if high {
			out.From.High = min(out.From.High, day)
			break
		}
	}
	out.Never = out.From.Mid > end
	out.Reasons = []Reason{{Code: ReasonFeederSpan, Q: []Quantity{{out.HoldsKg.Mid, Kilograms}, {float64(out.SpanDays), Days}}}}
	return out, nil
}

// choreGap is the longest span of days between two chore days of the week.
func (h *Herd) choreGap() int {
	gap := 7
	if n := len(h.Chore.Days); n > 1 {
		gap = 0
		for i, d := range h.Chore.Days {
			next := h.Chore.Days[(i+1)%n]
			gap = max(gap, (int(next)-int(d)+6)%7+1)
		}
	}
	return gap
}
