package reading

import "troughbell/model"

// levelsOfTwo says that one level after another is told of things that are named only as
// several, "hoppers half and full", so that it is open which is which.
func (r *reader) levelsOfTwo(s span) bool {
	if s.frame != fFeed && s.frame != fWater {
		return false
	}
	things, levels := -1, 0
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		switch {
		case it.kind == itThing || it.barrel >= 0 || it.feeder >= 0, it.number() && !it.soft && !it.qty(percent):
			return false
		case it.kind == itWord && it.isAny(setOf(sFeeder, sBarrel)):
			if things >= 0 || it.s[len(it.s)-1] != 's' {
				return false
			}
			things = k
		case it.kind == itFrac, it.qty(percent), it.kind == itWord && it.isAny(setOf(sFull, sEmpty)) && !it.isAny(setOf(sFill, sFeeder, sBarrel)):
			if things < 0 || levels > 0 && it.gap != gapAnd && it.gap != gapComma {
				return false
			}
			levels++
		}
	}
	return things >= 0 && levels == 2
}

// askInOrder asks whether such levels are those of the two things in their order.
func (r *reader) askInOrder(s span) bool {
	h := r.c.Herd
	if !r.levelsOfTwo(s) || s.frame == fFeed && len(h.Feeders) != 2 || s.frame == fWater && len(h.Barrels) != 2 {
		return false
	}
	var es []Entry
	for k := s.i; k < s.j && len(es) < 2; k++ {
		it := &r.items[k]
		var part float64
		switch {
		case it.kind == itFrac:
			part = it.v
		case it.qty(percent):
			part = it.v / 100
		case it.is(sFull) && it.kind == itWord:
			part = 1
		case it.is(sEmpty) && it.kind == itWord:
		default:
			continue
		}
		if s.frame == fFeed {
			es = append(es, r.draft(Fact{model.FeedLevel{Feeder: h.Feeders[len(es)].Name, Fraction: &part}}, s))
		} else {
			es = append(es, r.draft(Fact{model.Water{Barrel: h.Barrels[len(es)].Name, Fraction: &part, Seen: true}}, s))
		}
	}
	r.useAll(s)
	r.clarify(doubtful(es), s)
	return true
}
