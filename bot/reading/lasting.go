package reading

import "troughbell/model"

// lasting is for how many hours something has lasted that a span tells: "for 30
// hours", "since yesterday noon"; nil where it does not say. Of a day without an
// hour noon is taken: of a thirst the longer guess is the safer one.
func (r *reader) lasting(s span, since bool) *float64 {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if it.qty(hours) && it.si() > 0 || it.qty(days) && it.si() > 0 {
			it.used = true
			h := it.si()
			if it.qty(days) {
				h *= 24
			}
			return model.Float(min(h, 1000))
		}
	}
	if !since {
		return nil
	}
	day, minute, dated := r.when(s, lookBack)
	if minute == nil && (!dated || day >= r.today) {
		return nil
	}
	from := 12 * 60
	if minute != nil {
		from = *minute
	}
	h := r.c.Now.Sub(day.At(from, r.c.Now.Location())).Hours()
	if h < 0 || h > 1000 {
		return nil
	}
	return &h
}
