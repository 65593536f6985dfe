package answer

import (
	"troughbell/bot/wording"
	"troughbell/model"
)

// slotLine is about the appointment: not clear, booked, or what to ask for, and
// whether it blocks the day. It puts not_before into data where a withdrawal
// still runs.
func (a asked) slotLine(t model.TargetDay, data map[string]any) (line string, blocks bool) {
	clear := a.clearance(a.pigs)
	if !clear.known {
		data["not_before"] = nil
		return a.say("target_not_clear", wording.Args{Names: a.v.NamesOf(clear.unknown)}), true
	}
	from := t.Days.Low
	if clear.at.After(a.now) {
		notBefore := model.DayOf(clear.at.In(a.now.Location())) + 1
		data["not_before"] = notBefore.String()
		from = max(from, notBefore)
		if b, ok := a.h.NextBooking(a.today); ok && clear.at.After(a.loadMoment(b)) {
			return a.bookedLine(b, clear)
		}
		if t.Days.Mid < notBefore {
			return a.say("target_blocked", wording.Args{Days: []model.Day{notBefore}, Moments: moments(clear.at, a.now)}), true
		}
	}
	if b, ok := a.h.NextBooking(a.today); ok {
		return a.bookedLine(b, clear)
	}
	return a.askFor(from, max(from, t.Days.High), data), false
}

// askFor says which days to ask the butcher for, and when to call by the lead that
// this herd's bookings have had.
func (a asked) askFor(from, to model.Day, data map[string]any) string {
	lead, learned := a.h.BookingLead()
	by := from - lead
	data["book_by"], data["booking_lead_days"], data["bookings_learned_from"] = by.String(), int(lead), learned
	if by <= a.today {
		return a.say("target_ask_now", wording.Args{Days: []model.Day{from, to}})
	}
	return a.say("target_ask", wording.Args{Days: []model.Day{from, to, by}})
}

// leadReason says how long ahead the butcher is booked, where none is yet.
func (a asked) leadReason() []model.Reason {
	due, err := a.h.BookingDue(a.today)
	if err != nil || due.Booked {
		return nil
	}
	for _, r := range due.Reasons {
		if r.Code == model.BookingLead || r.Code == model.BookingLeadOwn {
			return []model.Reason{r}
		}
	}
	return nil
}

func (a asked) bookedLine(b model.Booked, clear clearance) (line string, blocks bool) {
	args := wording.Args{Names: a.v.NamesOf(clear.treated), Days: []model.Day{b.Day}, Moments: moments(clear.at, a.now)}
	if clear.at.After(a.loadMoment(b)) {
		return a.say("booked_not_clear", args), true
	}
	pigs := a.pigs
	if len(a.Animals) == 0 {
		pigs = a.h.BookedPigs(b, a.today)
	}
	w, err := a.h.MeanWeight(pigs, b.Day)
	if err == nil {
		args.Q = span(w.WeightKg)
	}
	return a.say("booked_weight", args), false
}
