package model

import "time"

// LastDose is the latest moment of a dose that is clear when the pigs are loaded.
type LastDose struct {
	Load    time.Time // the booked hour, or the start of the booked day
	At      time.Time
	Days    int // of withdrawal counted
	Gone    bool
	Reasons []Reason
}

// LastDoseBefore is the latest dose of a product with so many withdrawal days,
// from its label or the vet (0 to 365, else *OutOfRange), that is clear when the
// pigs are loaded for the next booked day: at the hour booked, else at the start
// of that day. Gone says that the moment has passed. Any dose, and any product,
// is a matter for label and vet. *Missing "booking".
func (h *Herd) LastDoseBefore(at time.Time, withdrawalDays int) (LastDose, error) {
	if err := withdrawalRange(withdrawalDays); err != nil {
		return LastDose{}, err
	}
	b, ok := h.NextBooking(DayOf(at))
	if !ok {
		return LastDose{}, &Missing{What: "booking"}
	}
	minute := 0
	if b.Minute != nil {
		minute = *b.Minute
	}
	load := b.Day.At(minute, at.Location())
	d := LastDose{Load: load, At: lastSafeDose(load, withdrawalDays), Days: withdrawalDays}
	d.Gone = d.At.Before(at)
	d.Reasons = []Reason{{Code: ReasonLastDose, On: b.Day, Q: []Quantity{{float64(withdrawalDays), Days}}}}
	return d, nil
}

// WormerDays is the withdrawal of the last wormer whose days were told; false
// where none was.
func (h *Herd) WormerDays() (int, bool) {
	if d := h.wormerDays(); d != nil {
		return *d, true
	}
	return 0, false
}
