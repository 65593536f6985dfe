package answer

import (
	"slices"
	"sort"
	"strings"
	"time"

	"troughbell/bot/picture"
	"troughbell/model"
)

// Days that the pictures of levels show before now, and ahead at most; and the
// days of heat.
const (
	levelsBack, levelsAhead = 35, 21
	heatBack, heatAhead     = 13, 6
)

// feedPicture has the level of each feeder through the last weeks, and how it
// falls from now on.
func feedPicture(a asked) (picture.Drawing, error) {
	left, err := a.h.FeedLeft(a.now)
	if err != nil {
		return nil, err
	}
	ends := map[string][2]time.Time{}
	last := a.now
	for _, x := range left.Feeders {
		ends[x.Name] = [2]time.Time{a.after(x.EdgeDays), x.Empty}
		last = latest(last, x.Empty)
	}
	l := a.levels(last)
	var fills []fill
	for _, r := range a.h.Refills {
		f := fill{at: r.At, vessel: r.F.Feeder}
		if r.F.FeedKg != nil {
			f.amount = *r.F.FeedKg
		}
		fills = append(fills, f)
	}
	course, err := a.h.FeedCourse(a.moments(l, fills, left.Feeders[0].Since))
	if err != nil {
		return nil, err
	}
	l.Vessels = vessels(course, fills, ends)
	return l, nil
}

// waterPicture has the same of the barrels, and the heat of those days.
func waterPicture(a asked) (picture.Drawing, error) {
	left, err := a.h.WaterLeft(a.now)
	if err != nil {
		return nil, err
	}
	ends := map[string][2]time.Time{}
	last := a.now
	for _, b := range left.Barrels {
		ends[b.Name] = [2]time.Time{b.EdgeAt, b.LikelyAt}
		last = latest(last, b.LikelyAt)
	}
	l := a.levels(last)
	l.Water = true
	var fills []fill
	for _, w := range a.h.Waters {
		if w.F.Seen {
			continue
		}
		f := fill{at: w.At, vessel: w.F.Barrel}
		if w.F.Litres != nil {
			f.amount = *w.F.Litres
		}
		fills = append(fills, f)
	}
	course, err := a.h.WaterCourse(a.moments(l, fills, a.now))
	if err != nil {
		return nil, err
	}
	l.Vessels = vessels(course, fills, ends)
	if days, err := a.hotDays(model.DayOf(l.From), model.DayOf(l.To)); err != nil {
		return nil, err
	} else if len(days) > 0 {
		l.Heat = &picture.Heat{Days: days, Today: a.today}
	}
	return l, nil
}

func latest(a, b time.Time) time.Time {
	if b.After(a) {
		return b
	}
	return a
}

// levels begins a picture that reaches a little beyond the last moment at which
// something runs dry, and to the next round.
func (a asked) levels(last time.Time) picture.Levels {
	to := latest(last.AddDate(0, 0, 1), a.h.NextChore(a.now).AddDate(0, 0, 1))
	if most := a.now.AddDate(0, 0, levelsAhead); to.After(most) {
		to = most
	}
	from := a.now.AddDate(0, 0, -levelsBack)
	if first := a.h.First; !first.IsZero() && first.After(from) {
		from = first.In(a.now.Location())
	}
	l := picture.Levels{Now: a.now, From: from, To: to}
	for d := model.DayOf(from); d <= model.DayOf(to); d++ {
		if a.h.IsChoreDay(d) {
			l.Rounds = append(l.Rounds, d)
		}
	}
	return l
}

// fill is one fill of a vessel; an empty name is of all alike.
type fill struct {
	at     time.Time
	vessel string
	amount float64
}

// moments at which a course is told: twice a day, just before and just after each
// fill, and now.
func (a asked) moments(l picture.Levels, fills []fill, seen time.Time) []time.Time {
	out := []time.Time{l.From, a.now, l.To}
	for d := model.DayOf(l.From); d <= model.DayOf(l.To); d++ {
		out = append(out, d.At(0, a.now.Location()), d.At(12*60, a.now.Location()))
	}
	around := func(t time.Time) {
		if !t.After(a.now) {
			out = append(out, t.Add(-time.Second), t)
		}
	}
	for _, f := range fills {
		around(f.at)
	}
	for _, f := range a.h.FeedLevels {
		around(f.At)
	}
	for _, w := range a.h.Waters {
		around(w.At)
	}
	around(seen)
	kept := out[:0]
	for _, t := range out {
		if t = t.In(a.now.Location()); !t.Before(l.From) && !t.After(l.To) {
			kept = append(kept, t)
		}
	}
	sort.Slice(kept, func(i, j int) bool { return kept[i].Before(kept[j]) })
	return slices.CompactFunc(kept, func(x, y time.Time) bool { return x.Equal(y) })
}

// vessels puts courses, fills and ends together.
func vessels(course []model.LevelCourse, fills []fill, ends map[string][2]time.Time) []picture.Vessel {
	var out []picture.Vessel
	for _, c := range course {
		end, there := ends[c.Name]
		if !there { // taken away since
			continue
		}
		v := picture.Vessel{LevelCourse: c, SafeTo: end[0], Empty: end[1]}
		for _, f := range fills {
			if f.vessel != "" && !strings.EqualFold(f.vessel, c.Name) {
				continue
			}
			p := picture.Poured{At: f.at, Amount: f.amount}
			if f.vessel == "" && len(course) > 1 { // of all together; what each got is not known
				p.Amount = 0
			}
			v.Poured = append(v.Poured, p)
		}
		out = append(out, v)
	}
	return out
}

// heatPicture has the heat of the last two weeks and of the days forecast.
func heatPicture(a asked) (picture.Drawing, error) {
	days, err := a.hotDays(a.today-heatBack, a.today+heatAhead)
	if err != nil {
		return nil, err
	}
	if len(days) == 0 {
		return nil, &model.Missing{What: "temperature"}
	}
	return picture.Heat{Days: days, Today: a.today}, nil
}

// hotDays lists the days between the two of which a high was told or forecast.
func (a asked) hotDays(from, to model.Day) ([]picture.HotDay, error) {
	var out []picture.HotDay
	for d := from; d <= to; d++ {
		air := a.h.Air(d)
		if !air.HighTold {
			continue
		}
		x, err := a.h.Heat(d)
		if err != nil {
			return nil, err
		}
		out = append(out, picture.HotDay{On: d, HighC: x.HighC, THI: x.THI, Class: x.Class, Forecast: air.Forecast})
	}
	return out, nil
}
