package reading

import "troughbell/model"

// awayPlace says that the "at" or "to" at item k leads to where people stay for days: "we
// are at my sister's thursday through sunday", "we're going to the lake friday to sunday".
func (r *reader) awayPlace(k int) bool {
	it := &r.items[k]
	last := lastWord(it.s)
	if it.pig >= 0 || last != "at" && last != "to" && last != "in" || last == "to" && !r.goesTo(k) {
		return false
	}
	n := k + 1
	for n < len(r.items) && r.items[n].gap == gapNone && awayDeterminers[r.items[n].s] {
		n++
	}
	if n >= len(r.items) || r.items[n].gap != gapNone || r.items[n].pig >= 0 || r.items[n].kind == itThing {
		return false
	}
	if !r.owner(n) && !awaySpots[lastWord(r.items[n].s)] {
		return false
	}
	if r.isI(r.sentenceStart(k)) || r.goesTo(k) {
		return true
	}
	for m := k; m >= r.clauseFrom(k) && m >= k-4; m-- {
		switch w := firstWord(r.items[m].s); {
		case w == "we", w == "i", w == "we're", w == "i'm", w == "we'll", w == "i'll", w == "im", w == "were", w == "staying", w == "stay", w == "spending":
			return true
		}
	}
	return false
}

// aroundHoliday finds the two weekdays behind a holiday that but names their weekend:
// "memorial day weekend friday till monday night".
func (r *reader) aroundHoliday(s span) (from, to model.Day, ok bool) {
	var at []int
	for k := s.i; k < s.j; k++ {
		if r.items[k].kind == itDay {
			at = append(at, k)
		}
	}
	if len(at) != 3 || !r.items[at[0]].day.weekend || r.items[at[1]].day.form != dayWeekday || r.items[at[2]].day.form != dayWeekday {
		return 0, 0, false
	}
	holiday, ok := r.items[at[0]].day.on(r.today, lookForward, r.dayFirst)
	if !ok {
		return 0, 0, false
	}
	first, _ := longWeekend(holiday)
	from = (first - 4).Next(weekdayOf(r.items[at[1]].day.a))
	to = from.Next(weekdayOf(r.items[at[2]].day.a))
	for _, k := range at {
		r.items[k].used = true
	}
	return from, to, from > r.today
}

var (
	awayDeterminers = listed("the, my, our, his, her, their, a, moms, an")
	awaySpots       = listed("lake, beach, cabin, coast, mountains, shore, ocean, sea, island, fair, hospital, city, camp, show, conference, river house, lake house, lakehouse, inlaws, in-laws, grandparents, parents, folks, cottage, campground, retreat, reunion, wedding, hotel")
)
