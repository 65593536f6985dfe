package reading

// forcePutOff settles a reminder that is put off, "hold off on the worming reminder until
// monday": it asks for no new one.
func (r *reader) forcePutOff() {
	for k := range r.items {
		if it := &r.items[k]; r.force[k] != 0 || !it.is(sSnooze) || k != r.sentenceStart(k) && !r.fillersBefore(k) {
			continue
		}
		end := r.sentenceEnd(k)
		for n := k + 1; n < end && n < k+6; n++ {
			switch it := &r.items[n]; it.s {
			case "reminder", "reminders", "nudge", "nudges":
				it.sense, it.unit = setOf(sFiller), 0
				r.forceRange(k, end, fSnooze)
			}
		}
	}
}
