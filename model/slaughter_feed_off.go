package model

import "time"

// Hours off feed before slaughter, loading, road and waiting counted: 12 to 18
// (Ontario Ministry of Agriculture, Feed Withdrawal Prior to Slaughter 05-065,
// 2005; read), never beyond 24 (Better Pork, 2014; read). Water stays on until
// loading.
const (
	LeastFeedOffHours = 12
	UsualFeedOffHours = 14
	MostFeedOffHours  = 18
	NeverFeedOffHours = 24
)

// FeedOff is when feed is taken from pigs that go to the butcher.
type FeedOff struct {
	Slaughter time.Time
	From, To  time.Time // the window: MostFeedOffHours to LeastFeedOffHours before
	At        time.Time // the hour planned
	NotBefore time.Time // earlier they are off feed for too long
}

// FeedOffFor is the window in which feed goes off for a slaughter at a moment,
// in hours of the clock that passes: a change of the wall clock in the night
// does not shorten a fast.
func FeedOffFor(slaughter time.Time) FeedOff {
	before := func(hours int) time.Time { return slaughter.Add(-time.Duration(hours) * time.Hour) }
	return FeedOff{
		Slaughter: slaughter, From: before(MostFeedOffHours), To: before(LeastFeedOffHours),
		At: before(UsualFeedOffHours), NotBefore: before(NeverFeedOffHours),
	}
}

// FeedOut is how to run the feeders down to the booked day.
type FeedOut struct {
	FeedOff
	All bool // all pigs go: else those that stay want their feed
	// LeftKg is what will be in the feeders when feed goes off, if nothing more is
	// poured; PourKg what may still be poured so that nothing likely is left. One of
	// the two is 0.
	LeftKg, PourKg Interval
	// RunsOut is when they are likely empty if nothing is poured; the zero time
	// where that is after feed goes off.
	RunsOut time.Time
	Reasons []Reason
}

// assumedSlaughterMinute is taken for a booking without an hour: common
// practice, no source.
const assumedSlaughterMinute = 8 * 60

// FeedOut plans the feed of the days before the next booked day, seen from the
// moment at. A feeder should be closed at the hour, not run out by itself: the
// fast would start at an hour that nobody knows. *Missing "booking", "pigs",
// "weight", "feeder", "capacity" or "level" where one is unknown; *OutOfRange
// where feed should be off already.
func (h *Herd) FeedOut(at time.Time) (FeedOut, error) {
	today := DayOf(at)
	b, ok := h.NextBooking(today)
	if !ok {
		return FeedOut{}, &Missing{What: "booking"}
	}
	left, err := h.FeedLeft(at)
	if err != nil {
		return FeedOut{}, err
	}
	minute, assumed := assumedSlaughterMinute, true
	if b.Minute != nil {
		minute, assumed = *b.Minute, false
	}
	out := FeedOut{FeedOff: FeedOffFor(b.Day.At(minute, at.Location())), All: b.Count == 0 || b.Count >= len(h.Alive(today))}
	ahead := wallDays(out.At) - wallDays(at)
	if ahead < 0 {
		return FeedOut{}, &OutOfRange{"days_to_feed_off", ahead, 0, furthest}
	}
	f := h.feeding()
	s, err := f.span(wallDays(at), wallDays(out.At))
	if err != nil {
		return FeedOut{}, err
	}
	need := s.interval(f.appetiteAt(at))
	out.LeftKg = Interval{max(left.FeedKg.Low-need.High, 0), max(left.FeedKg.Mid-need.Mid, 0), max(left.FeedKg.High-need.Low, 0)}
	out.PourKg = Interval{max(need.Low-left.FeedKg.High, 0), max(need.Mid-left.FeedKg.Mid, 0), max(need.High-left.FeedKg.Low, 0)}
	if out.LeftKg.Mid > 0 {
		out.PourKg = Interval{}
	} else {
		out.LeftKg = Interval{}
		if left.Empty.Before(out.At) {
			out.RunsOut = left.Empty
		}
	}
	out.Reasons = []Reason{
		{Code: ReasonFeedOffHours, Q: []Quantity{{UsualFeedOffHours, Count}, {LeastFeedOffHours, Count}, {MostFeedOffHours, Count}}},
		{Code: ReasonFeedOutLeft, Q: []Quantity{{out.LeftKg.Mid, Kilograms}, {left.FeedKg.Mid, Kilograms}}},
	}
	if assumed {
		out.Reasons = append(out.Reasons, Reason{Code: ReasonFeedOffAssumed, Q: []Quantity{{assumedSlaughterMinute, Minutes}}})
	}
	return out, nil
}
