package model

import "time"

// LevelCourse is what a feeder (kg) or a barrel (litres) held, and will hold,
// from moment to moment, as far as was known at each.
type LevelCourse struct {
	Name     string
	Capacity float64 // 0: not known
	At       []time.Time
	Level    []Interval // 80 %
}

// FeedCourse gives the level of each feeder at the moments, which may lie ahead:
// there nothing more is poured. Moments before anything was said of a feeder, or
// at which it was not there, are left out of its course. Errors as of
// [Herd.FeedLeft] where no moment is left.
func (h *Herd) FeedCourse(at []time.Time) ([]LevelCourse, error) {
	f := h.feeding()
	out := make([]LevelCourse, len(f.feeders))
	for i, b := range f.feeders {
		out[i].Name = b.name
	}
	var lacks error
	any := false
	for _, t := range at {
		g, marks, err := f.at(t)
		if err != nil {
			lacks = err
			continue
		}
		for _, i := range f.eating(wallDays(t)) {
			if !marks[i].said {
				continue
			}
			any = true
			c := &out[i]
			c.Capacity = g.mean[placeCapacity(i)]
			c.At, c.Level = append(c.At, t), append(c.Level, levelKg(g, i))
		}
	}
	if !any && lacks == nil {
		lacks = &Missing{What: "level"}
	}
	if !any {
		return nil, lacks
	}
	return knownCourses(out), nil
}

// knownCourses keeps the courses of which something is known.
func knownCourses(all []LevelCourse) []LevelCourse {
	kept := all[:0]
	for _, c := range all {
		if len(c.At) > 0 {
			kept = append(kept, c)
		}
	}
	return kept
}
