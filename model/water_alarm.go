package model

import "time"

// openWaterAlarm is the latest word of no water that nothing has settled since:
// neither its end nor a fill. Until then no barrel counts, whatever stands in it.
func (h *Herd) openWaterAlarm(at time.Time) *Dated[Alarm] {
	var open *Dated[Alarm]
	for i := range h.Alarms {
		if a := &h.Alarms[i]; a.F.What == AlarmNoWater && !a.At.After(at) {
			if open = a; a.F.Over {
				open = nil
			}
		}
	}
	if open == nil {
		return nil
	}
	for i := range h.Waters {
		w := &h.Waters[i]
		filled := !w.F.Seen || w.F.Fraction != nil && *w.F.Fraction > 0 || w.F.Litres != nil && *w.F.Litres > 0
		if filled && w.At.After(open.At) && !w.At.After(at) {
			return nil
		}
	}
	return open
}
