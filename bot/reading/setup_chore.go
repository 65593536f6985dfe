package reading

import "strings"

// workWords tell of the round without the word for chores.
var workWords = setOfWords(split(`work, works, tend, tend to, go out, go, get out, get out there, get there, get down there, get up there, get over there, get over, down there, up there, over there, out there, be there, make it out, make it down, see to, take care of, come out, come, do everything, fill, fill up, fill everything, visit, drive out, check, once a week`))

// worksThen forces a habit of a day of the week, "we work on Sundays", into the chore
// day, where none is known yet.
func (r *reader) worksThen(k int) bool {
	it := &r.items[k]
	if it.kind != itDay || !it.day.every || r.c.Herd.Chore.Stated {
		return false
	}
	from, to := r.sentenceStart(k), r.sentenceEnd(k)
	work, who := false, false
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.kind == itDay && x.day.every, x.kind == itClock:
		case x.s == "i", x.s == "we":
			who = true
		case workWords[x.s]:
			work = true
		case x.pig >= 0, x.kind != itWord, x.quest, !x.isAny(setOf(sFiller, sOn, sAt, sAnd, sPigs, sPronoun, sAll, sFeed, sWater, sFill, sOut, sTell)) && x.s != "everything":
			return false
		}
	}
	if !work || !who {
		return false
	}
	r.forceRange(from, to, fChore)
	return true
}

// choreTold forces the day of chores told as the day that is ours, "sunday is our day,
// afternoon like 3", or as a habit with its hour and nothing else, "saturday mornings
// 8ish", where none is known yet.
func (r *reader) choreTold(k int) bool {
	it := &r.items[k]
	if it.kind != itDay && !isWeekday(it.s) || r.c.Herd.Chore.Stated || r.part {
		return false
	}
	from, to := r.sentenceStart(k), r.sentenceEnd(k)
	every, ours, hours := false, false, 0
	for n := from; n < to; n++ {
		x := &r.items[n]
		switch {
		case x.kind == itDay && x.day.form == dayWeekday && x.day.mod == 0:
			every = every || x.day.every || partsMany[lastWord(strings.ToLower(r.text[x.from:x.to]))]
		case n == k, x.kind == itDay && x.day.form == dayNone:
		case x.kind == itClock, x.kind == itNum && x.hourLike() && x.v > 0:
			hours++
		case ourDays[x.s] && n+1 < to && r.items[n+1].s == "day", ourDays[x.s] && lastWord(x.s) == "day":
			ours = true
		case x.pig >= 0, x.kind != itWord, x.quest:
			return false
		case choreSmall[x.s], partsOfDay[x.s], x.isAny(setOf(sChore)):
		default:
			return false
		}
	}
	if hours > 1 || !ours && !(every && hours == 1) {
		return false
	}
	for n := from; n < to; n++ {
		if x := &r.items[n]; x.isAny(setOf(sAskSure, sAsk)) {
			x.sense.drop(sAskSure)
			x.sense.drop(sAsk)
		}
	}
	if m := r.lex.of[it.s]; it.kind == itWord && m != nil && m.isDay { // "sunday's our day"
		it.kind, it.day = itDay, m.day
	}
	r.forceRange(from, to, fChore)
	return true
}

// partsMany make a habit of a day: "saturday mornings".
var partsMany = setOfWords(split(`mornings, afternoons, evenings, nights`))

// ourDays stand before "day" for the day on which the herd is seen to.
var ourDays = setOfWords(split(`our, is our, my, is my, the, is the, the only, our only, my only, our big, the big, our day, my day, is our day, is my day, is the day, our chore, pig`))

// choreSmall are small words that may stand beside such a day and its hour.
var choreSmall = setOfWords(split(`is, is our, is my, is the, are, it's, its, the, our, my, day, days, on, at, in, in the, by, like, around, about, say, ish, or so, so, probably, usually, mostly, normally, always, i guess, guess, i, we, would, work, works, best, for, us, me, and, or, early, late, morning, mornings, afternoon, afternoons, evening, evenings, am, pm, only, every, each, week, church, after church, after, lunch, work, after work, then, o'clock, oclock, sharp, thereabouts`))

// isWeekday says that a word is the bare name of a weekday, as "sunday's" leaves it.
func isWeekday(s string) bool {
	switch s {
	case "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday":
		return true
	}
	return false
}
