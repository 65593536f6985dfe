package reading

import "troughbell/model"

// emptyFilled takes back that a thing was seen empty where the same words tell that it was
// filled then: "hill and blue are dry, i filled hill".
func (r *reader) emptyFilled(from int) {
	if len(r.out)-from < 2 {
		return
	}
	kept := r.out[:from]
	for k := from; k < len(r.out); k++ {
		e := r.out[k]
		thing, empty := seenEmpty(e)
		if empty && thing != "" {
			filled := false
			for n := k + 1; n < len(r.out); n++ {
				filled = filled || fillsThing(r.out[n], thing) && r.out[n].On == e.On
			}
			if filled {
				continue
			}
		}
		kept = append(kept, e)
	}
	r.out = kept
}

// seenEmpty is the name of the feeder or barrel that an entry tells to be empty.
func seenEmpty(e Entry) (string, bool) {
	f, ok := e.Act.(Fact)
	if !ok {
		return "", false
	}
	switch v := f.Fact.(type) {
	case model.Water:
		return "b" + v.Barrel, v.Seen && v.Fraction != nil && *v.Fraction == 0 && v.Barrel != ""
	case model.FeedLevel:
		return "f" + v.Feeder, v.Fraction != nil && *v.Fraction == 0 && v.Feeder != ""
	}
	return "", false
}

// fillsThing says that an entry fills the thing that seenEmpty names so.
func fillsThing(e Entry, thing string) bool {
	f, ok := e.Act.(Fact)
	if !ok {
		return false
	}
	switch v := f.Fact.(type) {
	case model.Water:
		return "b"+v.Barrel == thing && !v.Seen
	case model.Refill:
		return "f"+v.Feeder == thing
	}
	return false
}
