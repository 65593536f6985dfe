package reading

// What settles the hours of messages and the day of chores where a sentence says
// nothing else.

// forceHours forces such sentences into their frames: "not before 8 and not after
// 20:30", "from 22 until 7 no messages", "switch chores to sundays at 9", "ping me at 8
// instead of 7".
func (r *reader) forceHours() {
	for i := 0; i < len(r.items); {
		j := r.sentenceEnd(i)
		if f := r.hoursTold(i, j); f != fIdle {
			r.forceRange(i, j, f)
		}
		i = j
	}
}

// longestHours is how many items a sentence has at most that sets hours. Common
// practice, no source.
const longestHours = 14

// hoursTold says which setting the items i to j are of, fIdle if of none or of more.
func (r *reader) hoursTold(i, j int) frame {
	if j-i > longestHours {
		return fIdle
	}
	var hours, clocks, masses, days, before, after int
	uses, not, quiet, tell, chore, change, remind := false, false, false, false, false, false, false
	for k := i; k < j; k++ {
		it := &r.items[k]
		switch {
		case it.pig >= 0 || it.kind == itThing || it.group >= 0 || it.isAny(setOf(sUndo, sMute, sDone, sIf)) && !it.isAny(setOf(sFiller)):
			return fIdle
		case it.kind == itClock:
			hours, clocks = hours+1, clocks+1
		case it.kind == itNum && it.hourLike():
			hours++
		case it.kind == itDay && it.day.form == dayWeekday && it.day.mod == 0:
			days++
		case it.kind != itWord:
			return fIdle
		case it.unit.dim() == mass && !it.label:
			masses++
		case unitVerbs[it.s]:
			uses = true
		case (it.s == "can you" || it.s == "could you") && k == i:
		case it.s == "before":
			before++
		case it.s == "after":
			after++
		case it.is(sQuiet):
			quiet = true
		case it.is(sChore):
			chore = true
		case it.is(sTell):
			tell = true
		case it.is(sRemind) && !it.quest:
			remind = true
		case partsOfDay[it.s]:
		case changeVerbs[it.s]:
			change = true
		case it.is(sNot), it.is(sNo):
			not = true
		case it.isAny(setOf(sFiller, sPronoun, sFrom, sTo, sAt, sOn, sIs, sAnd, sNow, sAsk, sThanks, sHere)), len(it.s) <= 2:
		default:
			return fIdle
		}
	}
	switch {
	case masses > 0:
		if uses && masses <= 2 && hours+days == 0 && !quiet && !chore && !tell && !r.items[i].quest && (masses == 1) == !not {
			return fUnits
		}
	case quiet && hours == 2 && days == 0:
		return fQuiet
	case not && before == 1 && after == 1 && hours == 2 && days == 0 && !chore:
		return fQuiet
	case remind && chore && hours == 1 && days == 0 && !not && r.fromNowOn(i, j):
		return fChore // "remind me of chores at 6 am from now on"
	case chore && days == 1 && hours <= 1 && !not && r.fromNowOn(i, j):
		return fChore // "chores thursdays 5pm from here on"
	case chore && change && days == 1 && hours <= 1 && !not:
		return fChore
	case tell && clocks > 0 && hours == 2 && r.insteadAt(i, j) > i && days == 0 && !quiet:
		return fChore
	}
	return fIdle
}

// partsOfDay tell which half of the day the hour before them is in.
var partsOfDay = setOfWords(split(`at night, in the morning, in the evening, in the afternoon, in the night`))

// fromNowOn says that items[i:j] set something for good.
func (r *reader) fromNowOn(i, j int) bool {
	for k := i; k < j; k++ {
		switch r.items[k].s {
		case "from now on", "from now", "always", "from today", "henceforth", "in future", "every time":
			return true
		case "from":
			if k+1 < j && (r.items[k+1].s == "now" || r.items[k+1].s == "here") {
				return true
			}
		}
	}
	return false
}

// changeVerbs give a setting another value.
var changeVerbs = setOfWords(split(`switch, change, move, shift, set, make, put, swap`))

// unitVerbs say which units are used.
var unitVerbs = setOfWords(split(`do, use, work in, reckon in, think in, count everything in, deal in, measure in, go by, go with, weigh in, count in`))

// hourLike says that a number may be an hour of the day.
func (it *item) hourLike() bool {
	return !it.soft && !it.ord && !it.rng && it.v >= 0 && it.v <= 24 && it.v == float64(int(it.v))
}

// hourAmong says that items[i:j] tell an hour of the day.
func (r *reader) hourAmong(i, j int) bool {
	for k := i; k < j; k++ {
		if it := &r.items[k]; it.kind == itClock || it.kind == itNum && it.hourLike() {
			return true
		}
	}
	return false
}

// insteadAt is the item that says what no longer holds, "instead of 7"; -1 if none does.
func (r *reader) insteadAt(i, j int) int {
	for k := i; k < j; k++ {
		if s := r.items[k].s; s == "instead of" || s == "rather than" || s == "not" && r.hourAmong(i, k) && r.hourAmong(k, min(k+3, j)) {
			return k
		}
	}
	return -1
}
