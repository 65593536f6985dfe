package reading

import (
	"slices"

	"troughbell/model"
)

// corrected is the record that the text may correct: what it replies to, else
// the latest fact of this person.
func (r *reader) corrected() (rec *Recorded, reply bool) {
	for k := range r.c.ReplyTo {
		if _, ok := r.c.ReplyTo[k].Entry.Act.(Fact); ok {
			return r.bestOf(r.c.ReplyTo), true
		}
	}
	return r.bestOf(r.c.Before), false
}

// bestOf picks the record that the numbers of the text speak of: the one said
// to be "not", else the newest.
func (r *reader) bestOf(rs []Recorded) *Recorded {
	var first *Recorded
	old, hasOld := r.oldNumber()
	for k := range rs {
		f, ok := rs[k].Entry.Act.(Fact)
		if !ok || r.c.Now.Sub(rs[k].At) > 48*3600*1e9 && !hasOld {
			continue
		}
		if first == nil {
			first = &rs[k]
		}
		if hasOld && r.holdsNumber(f.Fact, old) {
			return &rs[k]
		}
		if !hasOld && k > 0 && rs[k].Text != rs[0].Text {
			break
		}
	}
	if first != nil && !hasOld && ofNoAnimal(first) {
		if pig := r.weighedAnew(); pig != "" { // "no wait ash was 58", and water was told last
			for k := range rs {
				if f, ok := rs[k].Entry.Act.(Fact); ok && f.Kind() == "weigh" && slices.Contains(AnimalsOf(f.Fact), pig) {
					return &rs[k]
				}
			}
			return nil
		}
	}
	if first != nil && !hasOld { // among the records of one message, that of the pig named
		for k := range rs {
			f, ok := rs[k].Entry.Act.(Fact)
			if !ok || rs[k].Text != first.Text {
				continue
			}
			for n := range r.items {
				it := &r.items[n]
				if it.pig >= 0 && slices.Contains(AnimalsOf(f.Fact), r.pigs[it.pig].Name) && len(r.items) > 1 {
					return &rs[k]
				}
				if it.feeder >= 0 {
					if p, is := f.Fact.(model.Refill); is && p.Feeder == r.c.Herd.Feeders[it.feeder].Name {
						return &rs[k]
					}
				}
			}
		}
	}
	return first
}

// oldNumber is the number that the text says was wrong: "37 not 38", "not 450,
// 405".
func (r *reader) oldNumber() (float64, bool) {
	for k := range r.items {
		if r.items[k].s == "not" && k+1 < len(r.items) && r.items[k+1].number() {
			return r.items[k+1].v, true
		}
	}
	return 0, false
}

// holdsNumber says that a fact has the number, in the person's units.
func (r *reader) holdsNumber(f model.Fact, v float64) bool {
	near := func(si, said float64) bool { return si > said*0.995 && si < said*1.005 }
	kg, cm, l := r.massUnit().si(v), r.lengthUnit().si(v)*100, r.volumeUnit().si(v)
	switch x := f.(type) {
	case model.Weigh:
		return near(x.WeightKg, kg) || near(x.GirthCm, cm) || near(x.LengthCm, cm)
	case model.Refill:
		return x.FeedKg != nil && near(*x.FeedKg, kg)
	case model.Water:
		return x.Litres != nil && near(*x.Litres, l)
	case model.Fence:
		return near(x.Kv, v)
	case model.Stock:
		return x.FeedKg != nil && near(*x.FeedKg, kg) || x.Amount != nil && near(*x.Amount, v)
	case model.Spend:
		return near(x.Amount, v)
	case model.Mixed:
		return x.Batches != nil && near(*x.Batches, v)
	}
	return false
}

// ofNoAnimal says that a record is of feed, water, weather or money.
func ofNoAnimal(rec *Recorded) bool {
	f, ok := rec.Entry.Act.(Fact)
	if !ok {
		return false
	}
	switch f.Fact.(type) {
	case model.Water, model.Refill, model.FeedLevel, model.Fence, model.Stock, model.Spend, model.Weather:
		return true
	}
	return false
}

// weighedAnew is the living pig that the text names before a bare number, "" if none.
func (r *reader) weighedAnew() string {
	pig := ""
	for k := range r.items {
		switch it := &r.items[k]; {
		case it.feeder >= 0, it.barrel >= 0:
			return ""
		case it.pig >= 0 && !it.near && int(it.pig) < r.alive && pig == "":
			pig = r.pigs[it.pig].Name
		case pig != "" && it.kind == itNum && !it.soft:
			return pig
		}
	}
	return ""
}
