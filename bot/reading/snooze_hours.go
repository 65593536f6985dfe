package reading

// hoursBehind is for how long something is put off that but a sentence behind it tells, "not
// now. 3 hrs", else what is usual.
func (r *reader) hoursBehind(k int) int {
	hour, at := 0, 0
	for n := k; n < len(r.items); n++ {
		switch it := &r.items[n]; {
		case it.qty(hours) && hour == 0:
			hour, at = int(it.si()+0.5), n
		case it.kind != itWord || it.pig >= 0 || !it.isAny(setOf(sFiller, sGave, sAbout, sPronoun, sThanks)):
			return usualHours
		}
	}
	if hour == 0 {
		return usualHours
	}
	r.useAll(span{fSnooze, k, len(r.items)})
	r.skip = at
	return hour
}

// usualHours is for how long something is put off where nothing tells how long.
const usualHours = 2
