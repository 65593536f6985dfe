package answer

import (
	"slices"

	"troughbell/bot/picture"
	"troughbell/bot/wording"
	"troughbell/model"
)

// How far the pictures of growth and of the calendar reach ahead at least and at
// most, in days.
const leastAhead, mostAhead = 14, 200

// curveDays is in how many days a course of weights is told.
const curveDays = 64

func dayPair(from, to model.Day) []model.Day { return []model.Day{from, to} }

// growthPicture has what each of the pigs asked about weighed, and will weigh
// until the butcher's day, or until the target is surely reached.
func growthPicture(a asked) (picture.Drawing, error) {
	pigs := a.h.Alive(a.today)
	if a.named {
		pigs = a.pigs
	}
	if len(pigs) == 0 {
		return nil, &model.Missing{What: "pigs"}
	}
	g := picture.Growth{TargetKg: a.h.TargetKg, Today: a.today, From: a.today}
	if a.TargetKg != nil {
		g.TargetKg = *a.TargetKg
	}
	for _, p := range pigs {
		g.From = min(g.From, p.Group.Arrived)
	}
	var err error
	goes := a.goes()
	if g.To, g.Booked, err = a.lastDay(pigs, goes, g.TargetKg); err != nil {
		return nil, err
	}
	return a.growthOf(g, pigs, goes)
}

// growthOf fills in what each pig weighs on the days of the picture, until the day
// on which it goes.
func (a asked) growthOf(g picture.Growth, pigs []*model.Animal, goes map[*model.Animal]model.Day) (picture.Drawing, error) {
	days := a.curve(g.From, g.To, g.Booked)
	seen := a.h.WeightsSeen()
	var err error
	if g.Pigs, err = a.pigCourses(pigs, goes, days, seen); err != nil {
		return nil, err
	}
	if len(g.Pigs) > 1 {
		g.Mean, err = a.courseOf(model.All, pigs, days)
	}
	if g.Over { // none of them weighs anything now
		for i := range g.Pigs {
			g.Pigs[i].NowKg = model.Interval{}
		}
	}
	return g, err
}

// goes gives for each pig that is booked the day on which it goes.
func (a asked) goes() map[*model.Animal]model.Day {
	out := map[*model.Animal]model.Day{}
	for _, b := range a.h.Bookings {
		if b.F.Day <= a.today {
			continue
		}
		for _, p := range a.h.BookedPigs(b.F, a.today) {
			if day, there := out[p]; !there || b.F.Day < day {
				out[p] = b.F.Day
			}
		}
	}
	return out
}

// lastDay is the last day on which one of the pigs goes: the butcher's where it is
// booked, else the one by which the target is reached in 90 of 100 cases; within
// bounds. booked has the butcher's days.
func (a asked) lastDay(pigs []*model.Animal, goes map[*model.Animal]model.Day, targetKg float64) (to model.Day, booked []model.Day, err error) {
	open := false
	for _, p := range pigs {
		day, there := goes[p]
		if !there {
			open = true
			continue
		}
		to = max(to, day)
		if !slices.Contains(booked, day) {
			booked = append(booked, day)
		}
	}
	slices.Sort(booked)
	if open {
		t, err := a.h.Target(targetKg, a.today)
		if err != nil {
			return 0, nil, err
		}
		to = max(to, t.Herd.Days.High, a.today+leastAhead)
	}
	return min(to, a.today+mostAhead), booked, nil
}

// until ends a course on a day.
func until(g picture.PigGrowth, last model.Day) picture.PigGrowth {
	n := len(g.On)
	for n > 1 && g.On[n-1] > last {
		n--
	}
	g.On, g.Kg = g.On[:n], g.Kg[:n]
	return g
}

// curve picks days between the two; both, today and the days also given are among
// them.
func (a asked) curve(from, to model.Day, also []model.Day) []model.Day {
	out := []model.Day{to}
	if from <= a.today && a.today <= to {
		out = append(out, a.today)
	}
	for d := from; d < to; d += max(1, (to-from)/curveDays) {
		out = append(out, d)
	}
	for _, d := range also {
		if d <= to {
			out = append(out, d)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// pigCourses gives a course for each pig with a name, and one for those of a
// group that have none.
func (a asked) pigCourses(pigs []*model.Animal, goes map[*model.Animal]model.Day, days []model.Day, seen []model.WeightSeen) ([]picture.PigGrowth, error) {
	all, err := a.h.WeightCourse(days)
	if err != nil {
		return nil, err
	}
	own := map[*model.Animal]model.PigCourse{}
	for _, c := range all {
		own[c.Animal] = c
	}
	nameless := map[*model.Group][]*model.Animal{}
	for _, p := range pigs {
		if p.Name == "" {
			nameless[p.Group] = append(nameless[p.Group], p)
		}
	}
	var out []picture.PigGrowth
	for _, p := range pigs {
		switch c, known := own[p]; {
		case p.Name != "" && !known: // nothing is known of its weight
		case p.Name != "":
			g := picture.PigGrowth{Name: p.Name, On: c.On, Kg: c.Kg}
			if day, booked := goes[p]; booked {
				g = until(g, day)
			}
			g.Seen = weighed(seen, []*model.Animal{p}, false)
			out = append(out, a.withNow(g, []*model.Animal{p}))
		case len(nameless[p.Group]) > 0:
			group := nameless[p.Group]
			name := model.All
			if len(nameless) > 1 {
				name = a.v.Phrase("group_since", wording.Args{Days: []model.Day{p.Group.Arrived}})
			}
			g, err := a.courseOf(name, group, days)
			if err != nil {
				return nil, err
			}
			g.Seen = weighed(seen, group, true)
			out = append(out, g)
			nameless[p.Group] = nil
		}
	}
	return out, nil
}

// courseOf is the mean of several pigs, on the days on which they are there.
func (a asked) courseOf(name string, pigs []*model.Animal, days []model.Day) (picture.PigGrowth, error) {
	g := picture.PigGrowth{Name: name}
	for _, on := range days {
		var there []*model.Animal
		for _, p := range a.h.Alive(on) {
			if slices.Contains(pigs, p) {
				there = append(there, p)
			}
		}
		if len(there) < len(pigs) { // of fewer it would be another mean
			continue
		}
		w, err := a.h.MeanWeight(there, on)
		if err != nil {
			return g, err
		}
		g.On, g.Kg = append(g.On, on), append(g.Kg, w.WeightKg)
	}
	return a.withNow(g, pigs), nil
}

func (a asked) withNow(g picture.PigGrowth, pigs []*model.Animal) picture.PigGrowth {
	if w, err := a.h.MeanWeight(pigs, a.today); err == nil {
		g.NowKg = w.WeightKg
	}
	return g
}

// weighed lists the weighings of one pig, or those of several and their means.
func weighed(seen []model.WeightSeen, pigs []*model.Animal, means bool) []picture.Weighed {
	var out []picture.Weighed
	for _, w := range seen {
		if w.Mean && !means || len(w.Pigs) == 0 {
			continue
		}
		for _, p := range w.Pigs {
			if slices.Contains(pigs, p) {
				out = append(out, picture.Weighed{On: w.On, Kg: w.Kg, By: w.By})
				break
			}
		}
	}
	return out
}
