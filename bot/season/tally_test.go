package season

import (
	"math"
	"slices"
	"time"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/schedule"
)

// result is what came of a season.
type result struct {
	*setting
	days          int
	feed, water   dryness
	refills, best int // days of filling, and of the clairvoyant's
	feedDays      int // of refills, those with feed
	feedBest      int // of best, likewise
	fewest        int // of a clairvoyant who fills to the brim
	weeks         []int
	hotWeeks      []int
	quiet         int             // messages in quiet hours that are no danger
	errors        map[int]float64 // of the butcher date, in days, by days ahead
	missing       []int           // days ahead that got no date
}

// per100 is hours per 100 days.
func (r *result) per100(hours float64) float64 { return hours * 100 / float64(r.days) }

func (r *result) dry() float64 { return r.per100(r.feed.hours + r.water.hours) }

func tally(s *setting, pushes []bot.Push) *result {
	k, f := s.keeper, s.farm
	r := &result{setting: s, feed: f.feed, water: f.water, errors: map[int]float64{}}
	r.days = int(k.slot - f.herd.from)
	r.feedDays = countDays(k.fills.feed)
	r.refills = r.feedDays + countDays(k.fills.water)
	r.clairvoyant()
	r.nudges(pushes)
	for _, ahead := range horizons {
		g, asked := k.guesses[ahead]
		switch {
		case !asked:
		case !g.known:
			r.missing = append(r.missing, ahead)
		default:
			r.errors[ahead] = math.Abs(float64(g.day - (f.herd.from + model.Day(s.truth))))
		}
	}
	return r
}

func countDays(days map[int]bool) int {
	n := 0
	for d := range days {
		if d > 0 { // the first fill is the same for all
			n++
		}
	}
	return n
}

// clairvoyant counts the fills of a keeper who knows what is to come.
func (r *result) clairvoyant() {
	f, k := r.farm, r.keeper
	end := k.slot.At(goMinute, f.loc)
	var visits []time.Time
	for _, v := range k.visits {
		if v.Before(end) {
			visits = append(visits, v)
		}
	}
	feed := clairvoyant{visits: visits, end: end, loc: f.loc, use: func(t time.Time) float64 {
		if !t.Before(f.feedOff) {
			return 0
		}
		return f.herd.feedOn(f.day(t)) * hourly(t.In(f.loc).Hour()) / hourlySum
	}}
	water := feed
	water.use = func(t time.Time) float64 {
		return f.herd.waterOn(f.day(t)) * hourly(t.In(f.loc).Hour()) / hourlySum
	}
	first := f.herd.from.At(10*60, f.loc)
	var pour func(need, room float64) float64
	if !k.brim { // as much as lasts until the next visit, with the same day to spare
		pour = func(need, room float64) float64 { return min(need*8/7, room) }
	}
	holds := 0.0
	for _, v := range f.feeders {
		holds += v.holds
	}
	start := min(holds, f.herd.feedOn(0)*10) - feed.sum(first, visits[0])
	barrels := 0.0
	for _, v := range f.barrels {
		barrels += v.holds
	}
	w := water.days(barrels-water.sum(first, visits[0]), barrels, nil)
	r.feedBest = feed.days(start, holds, pour)
	r.best = r.feedBest + w
	r.fewest = feed.days(start, holds, nil) + w
}

// nudges counts the messages of each whole week, and those out of hours.
func (r *result) nudges(pushes []bot.Push) {
	f := r.farm
	weeks := r.days / 7
	count := make([]int, weeks+1)
	for _, p := range pushes {
		at := p.At.In(f.loc)
		if h := at.Hour(); (h >= 21 || h < 6) && p.Nudge.Grade != schedule.Danger {
			r.quiet++
		}
		if w := f.day(at) / 7; w >= 0 && w < len(count) {
			count[w]++
		}
	}
	for w := range weeks {
		hot := 0
		for d := 7 * w; d < 7*w+7; d++ {
			if f.herd.air[d].highC >= hotDayC {
				hot++
			}
		}
		if hot >= 2 {
			r.hotWeeks = append(r.hotWeeks, count[w])
		} else {
			r.weeks = append(r.weeks, count[w])
		}
	}
}

func median(ns []int) float64 {
	if len(ns) == 0 {
		return math.NaN()
	}
	s := slices.Clone(ns)
	slices.Sort(s)
	return (float64(s[(len(s)-1)/2]) + float64(s[len(s)/2])) / 2
}
