package schedule

import (
	"time"

	"troughbell/model"
)

// capacityAhead is how many visits ahead the feeder's size is looked at.
const capacityAhead = 3

// capacityVisit says once, three weeks ahead, that the feeders will no longer
// hold the feed between two visits, that there are too few drinkers, and what the
// pigs outgrow before the next visit.
func capacityVisit(v *view) []need {
	return append(append(v.feederTooSmall(), v.nipplesTooFew()...), v.outgrown()...)
}

func (v *view) feederTooSmall() []need {
	left, err := v.f.FeedLeft(v.visitAt())
	if err != nil || len(left.Feeders) == 0 {
		return nil
	}
	l := Line{About: aboutCapacity, Topic: "capacity:feed", Grade: Routine, Code: CodeCapacityFeed}
	holds := 0.0
	for _, f := range left.Feeders {
		l.Names = append(l.Names, f.Name)
		holds += f.Capacity.Low
	}
	from, to := v.visit, v.next
	for range capacityAhead + 1 {
		kg, err := v.eaten(from, to)
		if err != nil {
			return nil
		}
		if kg.High > holds {
			l.On = model.DayOf(from.In(v.loc))
			l.Q = []model.Quantity{{Value: holds, Unit: model.Kilograms}, {Value: kg.High, Unit: model.Kilograms}}
			return []need{{Line: l, since: v.seasonStart()}}
		}
		from, to = to, v.nextVisit(to)
	}
	return nil
}

// nipplesTooFew says that there are fewer drinkers than the pigs want.
func (v *view) nipplesTooFew() []need {
	have := 0
	var since time.Time
	for _, b := range v.h.Barrels {
		if b.Nipples == nil {
			return nil // not known for all
		}
		have += *b.Nipples
	}
	want, err := model.NipplesFor(len(v.pigs))
	if err != nil { // no pigs, or more than a small herd
		return nil
	}
	if len(v.h.Barrels) == 0 || have >= want {
		return nil
	}
	since = v.seasonStart()
	return []need{{since: since, Line: Line{
		About: aboutCapacity, Topic: "capacity:nipples", Grade: Routine, Code: CodeCapacityNipples,
		Q: []model.Quantity{{Value: float64(have), Unit: model.Count}, {Value: float64(want), Unit: model.Count}},
	}}}
}
