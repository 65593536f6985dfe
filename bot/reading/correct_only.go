package reading

import (
	"slices"

	"troughbell/model"
)

// replaceByOnly puts an entry in the place of the record that its "only" takes from: the
// one of all barrels, "i only filled the east one" behind "filled both tanks", or the one
// of the same feeder, "gray was only 100" behind "120 lb in gray".
func (r *reader) replaceByOnly(es []Entry) {
	for k := range r.items {
		if r.items[k].s != "only" && r.items[k].s != "was only" || r.items[k].pig >= 0 {
			continue
		}
		was := r.items[k].s == "was only" || k > 0 && (r.items[k-1].s == "was" || r.items[k-1].s == "were") || k+1 < len(r.items) && (r.items[k+1].s == "got" || r.items[k+1].is(sTook))
		for n := range es {
			e := &es[n]
			f, ok := e.Act.(Fact)
			if !ok || e.Replace != "" || e.To <= r.items[k].from || e.From >= r.items[r.sentenceEnd(k)-1].to {
				continue
			}
			if rec := r.takenFrom(f.Fact, e.On, was); rec != nil {
				e.Replace = rec.ID
			}
			break
		}
	}
}

// takenFrom is the record that a fact told with "only" takes the place of, nil if none.
func (r *reader) takenFrom(f model.Fact, on model.Day, was bool) *Recorded {
	for n := range r.c.Before {
		old, ok := r.recent(n)
		rec := &r.c.Before[n]
		if !ok || rec.Entry.On != on || rec.ID == "" {
			continue
		}
		switch v := f.(type) {
		case model.Water:
			if o, is := old.(model.Water); is && v.Full && v.Barrel != "" && o.Full && o.Barrel == "" && len(r.c.Herd.Barrels) > 1 {
				return rec
			}
		case model.Refill:
			if o, is := old.(model.Refill); is && was && v.FeedKg != nil && o.FeedKg != nil && *v.FeedKg < *o.FeedKg && v.Feeder == o.Feeder && r.c.Now.Sub(rec.At) <= justTold {
				return rec
			}
		case model.Weigh:
			if o, is := old.(model.Weigh); is && was && slices.Equal(v.Animals, o.Animals) && v.WeightKg > 0 && v.WeightKg < o.WeightKg && r.c.Now.Sub(rec.At) <= justTold {
				return rec
			}
		}
	}
	return nil
}

// allButOne are the records in the place of one of all barrels of which the text says that
// one was not filled: "not the west one" behind "filled both tanks".
func (r *reader) allButOne(a *amends) (Reading, bool) {
	rec := &r.c.Before[0]
	f, ok := rec.Entry.Act.(Fact)
	if !ok || a.thing == nil || a.thing.barrel < 0 {
		return Reading{}, false
	}
	w, ok := f.Fact.(model.Water)
	if !ok || !w.Full || w.Barrel != "" || w.Litres != nil {
		return Reading{}, false
	}
	var got Reading
	for n, b := range r.c.Herd.Barrels {
		if int8(n) == a.thing.barrel {
			continue
		}
		e := rec.Entry
		with := w
		with.Barrel = b.Name
		e.Act = Fact{with}
		e = r.replaced(rec, e).Entries[0]
		if len(got.Entries) > 0 {
			e.Replace = ""
		}
		got.Entries = append(got.Entries, e)
	}
	return got, len(got.Entries) > 0
}
