package model

// BookingLeadDays is how long before the early edge of the window the butcher
// should be booked: common practice, no source; small plants are full for
// three months and more in autumn.
const BookingLeadDays = 120

// BookingDue gives when the butcher should be booked by, and the window to ask
// for.
type BookingDue struct {
	Due
	Window DayInterval
	Booked bool
}

// BookingDue looks at the 80 % days of the target weight and the lead time.
// Booked says that an appointment on or after today stands. Missing "pigs" or
// "weight" as in Target. The lead is common practice, no source.
func (h *Herd) BookingDue(today Day) (BookingDue, error) {
	target, err := h.Target(h.TargetKg, today)
	if err != nil {
		return BookingDue{}, err
	}
	b := BookingDue{Window: target.Herd.Days}
	b.On, b.Pigs = b.Window.Low-BookingLeadDays, h.Alive(today)
	b.Reasons = []Reason{
		{Code: BookingWindow, On: b.Window.Mid, Q: []Quantity{
			{float64(b.Window.Low - today), Days}, {float64(b.Window.High - today), Days}, {h.TargetKg, Kilograms},
		}},
		{Code: BookingLead, On: b.On, Q: []Quantity{{BookingLeadDays, Days}}},
	}
	if next, ok := h.NextBooking(today); ok {
		b.Booked = true
		b.Reasons = append(b.Reasons, Reason{Code: BookingStands, On: next.Day})
	}
	return b, nil
}
