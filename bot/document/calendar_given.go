package document

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// Kinds of dates that a person sets: one of them that moves is another record.
const (
	kindButcher = "butcher"
	kindRemind  = "remind"
)

// Given is what the calendar files of a herd hold, by the latest of them.
type Given struct {
	Events []GivenEvent `json:"events,omitempty"`
}

// GivenEvent is a date as it was given last.
type GivenEvent struct {
	date
	UID string `json:"uid"` // without the herd
	// Sequence is the minute in which its present wording and day were first given,
	// counted from 1970, or one more than before: it rises with each change, also
	// where a file was given that left no note of it.
	Sequence int64 `json:"sequence"`
	Gone     bool  `json:"gone,omitempty"` // it fell away
}

// keptGiven is how long a date is remembered once it is past, in days.
const keptGiven = 30

// with is what a file of these dates gives after what was given before.
func (g Given) with(dates []date, today model.Day, now time.Time) Given {
	before := slices.DeleteFunc(slices.Clone(g.Events), func(e GivenEvent) bool { return e.Last < today-keptGiven })
	of := match(before, dates, today)
	var out Given
	uids := map[string]bool{}
	for _, e := range before {
		uids[e.UID] = true
	}
	found := map[int]bool{}
	for i, d := range dates {
		e := GivenEvent{date: d, Sequence: now.Unix() / 60}
		if n := of[i]; n >= 0 {
			found[n] = true
			e = before[n]
			if e.Gone || e.told() != d.told() {
				e.Sequence = max(e.Sequence+1, now.Unix()/60)
			}
			e.date, e.Gone = d, false
		} else {
			e.UID = uidOf(d, uids)
		}
		uids[e.UID] = true
		out.Events = append(out.Events, e)
	}
	for n, e := range before {
		if found[n] {
			continue
		}
		if !e.Gone && e.Last >= today { // what is past took place
			e.Gone, e.Sequence = true, max(e.Sequence+1, now.Unix()/60)
		}
		out.Events = append(out.Events, e)
	}
	return out
}

// told is what is seen of a date.
func (d date) told() [4]string { return [4]string{d.Title, d.From, d.To, d.Zone} }

// match finds for each date the event that it was given as, or -1: that of its
// key; of a date that a person set, whose record is another one when it is
// corrected or moved, the one of the same words, else of an appointment the
// earliest that is left.
func match(before []GivenEvent, dates []date, today model.Day) []int {
	of, taken := make([]int, len(dates)), map[int]bool{}
	for i := range of {
		of[i] = -1
	}
	pass := func(same func(GivenEvent, date) bool) {
		for i, d := range dates {
			for n, e := range before {
				if of[i] < 0 && !taken[n] && e.Kind == d.Kind && same(e, d) {
					of[i], taken[n] = n, true
				}
			}
		}
	}
	ahead := func(e GivenEvent) bool { return e.Last >= today }
	pass(func(e GivenEvent, d date) bool { return e.Key == d.Key })
	pass(func(e GivenEvent, d date) bool { return d.set() && ahead(e) && e.told() == d.told() })
	pass(func(e GivenEvent, d date) bool { return d.Kind == kindRemind && ahead(e) && e.Title == d.Title })
	pass(func(e GivenEvent, d date) bool { return d.Kind == kindButcher && ahead(e) && !e.Gone })
	return of
}

// set reports whether a person set the date.
func (d date) set() bool { return d.Kind == kindButcher || d.Kind == kindRemind }

// uidOf makes a UID of a date's kind and key, in characters that pass everywhere.
func uidOf(d date, taken map[string]bool) string {
	safe := strings.Map(func(r rune) rune {
		if r > '~' || r <= ' ' {
			return '_'
		}
		return r
	}, d.Kind+"-"+d.Key)
	uid := safe
	for n := 2; taken[uid]; n++ {
		uid = fmt.Sprintf("%s-%d", safe, n)
	}
	return uid
}
