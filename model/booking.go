package model

import "math"

const (
	// BookingLeadDays is how long before the early edge of the window the butcher
	// should be booked: common practice, no source; small plants are full for
	// three months and more in autumn.
	BookingLeadDays = 120
	// leadToldLate is the lead in days below which a booking teaches nothing: it
	// was told late rather than made late.
	leadToldLate = 14
	// leastLeadDays and mostLeadDays bound what a few bookings can teach. Judgement.
	leastLeadDays, mostLeadDays = 28, 365
)

// BookingDue gives when the butcher should be booked by, and the window to ask
// for.
type BookingDue struct {
	Due
	Window DayInterval
	Booked bool
}

// BookingLead is how many days ahead this herd's butcher is booked, and from how
// many bookings that was learned: the geometric mean of the days from the text to
// the day booked, [BookingLeadDays] standing for one booking more. Bookings told
// on one day count once.
func (h *Herd) BookingLead() (days Day, learned int) {
	sum := math.Log(BookingLeadDays)
	said := map[Day]bool{}
	for _, b := range h.Bookings {
		lead := b.F.Day - b.On
		if lead < leadToldLate || said[b.On] {
			continue
		}
		said[b.On] = true
		sum += math.Log(float64(min(lead, mostLeadDays)))
		learned++
	}
	lead := math.Round(math.Exp(sum / float64(1+learned)))
	return Day(min(max(lead, leastLeadDays), mostLeadDays)), learned
}

// BookingDue looks at the 80 % days of the target weight and the lead time, see
// [Herd.BookingLead]. Booked says that an appointment on or after today stands.
// Missing "pigs" or "weight" as in Target.
func (h *Herd) BookingDue(today Day) (BookingDue, error) {
	target, err := h.Target(h.TargetKg, today)
	if err != nil {
		return BookingDue{}, err
	}
	b := BookingDue{Window: target.Herd.Days}
	lead, learned := h.BookingLead()
	b.On, b.Pigs = b.Window.Low-lead, h.Alive(today)
	b.Reasons = []Reason{{Code: BookingWindow, On: b.Window.Mid, Q: []Quantity{
		{float64(b.Window.Low - today), Days}, {float64(b.Window.High - today), Days}, {h.TargetKg, Kilograms},
	}}}
	why := Reason{Code: BookingLead, On: b.On, Q: []Quantity{{float64(lead), Days}}}
	if learned > 0 {
		why = Reason{Code: BookingLeadOwn, On: b.On, Q: []Quantity{{float64(lead), Days}, {float64(learned), Count}}}
	}
	b.Reasons = append(b.Reasons, why)
	if next, ok := h.NextBooking(today); ok {
		b.Booked = true
		b.Reasons = append(b.Reasons, Reason{Code: BookingStands, On: next.Day})
	}
	return b, nil
}
