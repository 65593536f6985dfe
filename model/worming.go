package model

// Days between wormings, each a day to test the dung or to treat by the label.
const (
	// WormingAfterArrivalDays is the second look at new pigs: common practice,
	// no source.
	WormingAfterArrivalDays = 35
	// WormingIntervalDays is the time from a swallowed egg of the large
	// roundworm to the first eggs in the dung, 42 days (Ascaris: The Neglected
	// Parasite, 2013); retreating sooner finds no grown worms.
	WormingIntervalDays = 42
	// wormedTogetherDays joins pigs that fall due within a week.
	wormedTogetherDays = 7
)

// WormingDue gives when the next worming, or better a dung test, is due: for
// the pigs that come first, and those within a week of them. It names no
// product and no dose. Blocked says that a product with the last one's
// withdrawal days could not be clear by the booked day; without a booking the
// early edge of the target's days only gives the last day that is clear.
func (h *Herd) WormingDue(today Day) (Due, error) {
	pigs := h.Alive(today)
	if len(pigs) == 0 {
		return Due{}, &Missing{What: "pigs"}
	}
	due := make([]Day, len(pigs))
	first := 0
	for i, a := range pigs {
		due[i] = a.Group.Arrived + WormingAfterArrivalDays
		if last := h.lastWorming(a, today); last != nil {
			due[i] = last.On + WormingIntervalDays
		}
		if due[i] < due[first] {
			first = i
		}
	}
	d := Due{On: due[first]}
	for i, a := range pigs {
		if due[i] <= d.On+wormedTogetherDays {
			d.Pigs = append(d.Pigs, a)
		}
	}
	if last := h.lastWorming(pigs[first], today); last != nil {
		d.Reasons = append(d.Reasons, Reason{
			Code: WormingSinceLast, Names: productName(last), On: last.On,
			Q: []Quantity{{WormingIntervalDays, Days}},
		})
	} else {
		d.Reasons = append(d.Reasons, Reason{
			Code: WormingSinceArrival, On: pigs[first].Group.Arrived,
			Q: []Quantity{{WormingAfterArrivalDays, Days}},
		})
	}
	h.clearBeforeButcher(&d, today)
	d.Reasons = append(d.Reasons, Reason{Code: WormingTestFirst})
	return d, nil
}

// lastWorming is the latest worming of the pig on or before the day; nil if it
// was never wormed.
func (h *Herd) lastWorming(a *Animal, on Day) *Given {
	var last *Given
	for i := range h.Treatments {
		g := &h.Treatments[i]
		if g.Worm && g.On <= on && (last == nil || g.On >= last.On) && h.covers(g, a) {
			last = g
		}
	}
	return last
}

// clearBeforeButcher holds the worming against the day the pigs go.
func (h *Herd) clearBeforeButcher(d *Due, today Day) {
	goes, booked, known := h.goesOn(today)
	if !known {
		return
	}
	dose := max(d.On, today)
	days := h.wormerDays()
	if days == nil {
		d.Reasons = append(d.Reasons, Reason{
			Code: WormingReadLabel, On: goes,
			Q: []Quantity{{float64(goes - dose), Days}},
		})
		d.Blocked = booked && dose >= goes
		return
	}
	counted := Quantity{float64(*days), Days}
	// A dose late on a day is clear late on a day: it must be the day before.
	last := goes - Day(*days) - 1
	d.Reasons = append(d.Reasons, Reason{Code: WormingLastDay, On: last, Q: []Quantity{counted}})
	if booked && dose > last {
		d.Blocked = true
		d.Reasons = append(d.Reasons, Reason{Code: WormingTooLate, On: goes, Q: []Quantity{counted}})
	}
}

// goesOn is the day the pigs go to the butcher: booked, else the early edge of
// the target's days.
func (h *Herd) goesOn(today Day) (day Day, booked, known bool) {
	if b, ok := h.NextBooking(today); ok {
		return b.Day, true, true
	}
	target, err := h.Target(h.TargetKg, today)
	if err != nil { // no weight to start from: then no day is known
		return 0, false, false
	}
	return target.Herd.Days.Low, false, true
}

// wormerDays is the withdrawal of the last wormer whose days were told.
func (h *Herd) wormerDays() *int {
	for i := len(h.Worms) - 1; i >= 0; i-- {
		if days := h.Worms[i].F.WithdrawalDays; days != nil {
			return days
		}
	}
	return nil
}

// productName is the product as the person calls it, as the names of a reason;
// none where it was not said.
func productName(g *Given) []string {
	if g.Product == "" {
		return nil
	}
	return []string{g.Product}
}
