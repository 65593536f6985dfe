package model

import "time"

// PigClear is when a pig is clear of every withdrawal. Known is false where the
// days of some product are not known; then it is not clear at all.
type PigClear struct {
	Animal  *Animal
	Known   bool
	Treated bool
	ClearAt time.Time // zero where Treated is false
	Clear   Day       // local day of ClearAt
	Reasons []Reason
}

// Withdrawal gives for each living pig when it is clear, seen in loc, the
// herd's zone.
func (h *Herd) Withdrawal(at time.Time) []PigClear { panic("withdrawal") }

// ClearMoment is when a withdrawal of so many days after a last dose ends: N
// times 24 hours or the same wall time N days on, whichever is later. stated
// says that the hour of the dose is known; else 23:59 of its day counts.
func ClearMoment(dose time.Time, stated bool, days int) time.Time { panic("withdrawal") }

// LastSafeDose is the latest moment of a dose of a product with so many
// withdrawal days that is clear when the pigs are loaded.
func LastSafeDose(load time.Time, days int) time.Time { panic("withdrawal") }

// Due is a task with the day it falls due.
type Due struct {
	On      Day
	Pigs    []*Animal
	Pen     *Pen
	Blocked bool // not to be done: it could not be clear in time
	Reasons []Reason
}

// WormingDue gives when the next worming, or a dung test, is due.
func (h *Herd) WormingDue(today Day) (Due, error) { panic("worming") }

// MoveDue gives when the pigs should leave their pen.
func (h *Herd) MoveDue(today Day) (Due, error) { panic("move") }

// BookingDue gives when the butcher should be booked by, and the window to ask
// for.
type BookingDue struct {
	Due
	Window DayInterval
	Booked bool
}

// BookingDue looks at the target day and the lead time.
func (h *Herd) BookingDue(today Day) (BookingDue, error) { panic("booking") }
