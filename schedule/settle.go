package schedule

import (
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// seasonStart is when the pigs that are there now began to come.
func (v *view) seasonStart() time.Time {
	var first time.Time
	for _, p := range v.pigs {
		if at := p.Group.ArriveAt; first.IsZero() || at.Before(first) {
			first = at
		}
	}
	return first
}

// speaksOf reports whether a button or a word about these topics, said at the
// moment, speaks of the need. No topics at all means those of the latest nudge
// before.
func (v *view) speaksOf(about, topics []string, at time.Time, n *need) bool {
	if len(about) == 0 && len(topics) == 0 {
		for i := len(v.tolds) - 1; i >= 0; i-- {
			if t := v.tolds[i]; !t.At.After(at) {
				return n.among(t.F.Topics)
			}
		}
		return false
	}
	if len(topics) > 0 {
		return n.among(topics)
	}
	return slices.Contains(about, n.About)
}

// among reports whether the topics name the need. Whatever is said of feed or
// of water speaks for all that is told of it.
func (n *need) among(topics []string) bool {
	return slices.ContainsFunc(topics, func(t string) bool {
		if t == n.Topic || t == n.About {
			return true
		}
		family, _, _ := strings.Cut(t, ":")
		return family == n.About && (family == aboutRefill || family == aboutWater)
	})
}

// stopped reports whether the person ended the topic, for good or for the
// season. Dangers cannot be stopped.
func (v *view) stopped(n *need) bool {
	if n.Grade == Danger {
		return false
	}
	if v.h.Muted[n.About] || v.h.Muted[n.Topic] {
		return true
	}
	from := later(v.seasonStart(), later(v.h.Unmuted[n.About], v.h.Unmuted[model.All]))
	for _, s := range v.h.Snoozes {
		if s.F.Stop && !s.At.Before(from) && v.speaksOf(s.F.About, s.F.Topics, s.At, n) {
			return true
		}
	}
	return false
}

// done reports whether a Done silences the need at the moment m.
func (v *view) done(n *need, m time.Time) bool {
	if n.quiet == 0 {
		return false
	}
	for i := len(v.h.Dones) - 1; i >= 0; i-- {
		d := v.h.Dones[i]
		if d.At.Before(m.Add(-n.quiet)) {
			return false
		}
		if v.speaksOf(d.F.About, d.F.Topics, d.At, n) {
			return true
		}
	}
	return false
}

// longestDangerSnooze is how long a danger can be put off.
const longestDangerSnooze = 2 * time.Hour

// snoozed gives the latest snooze on the need: from when and until when. False
// if there is none.
func (v *view) snoozed(n *need) (from, until time.Time, ok bool) {
	for i := len(v.h.Snoozes) - 1; i >= 0; i-- {
		s := v.h.Snoozes[i]
		if s.F.Stop || s.F.Until.IsZero() || !v.speaksOf(s.F.About, s.F.Topics, s.At, n) {
			continue
		}
		until := s.F.Until
		if last := s.At.Add(longestDangerSnooze); n.Grade == Danger && until.After(last) {
			until = last
		}
		return s.At, until.In(v.loc), true
	}
	return time.Time{}, time.Time{}, false
}

// fading lists the topics that are asked about less when they are passed over.
// What keeps the pigs fed, watered and safe never fades.
var fading = map[string]bool{
	aboutWallow: true, aboutWorm: true, aboutMove: true, aboutWeigh: true, aboutBook: true,
	aboutLevel: true, aboutRation: true, aboutStock: true, aboutCheck: true,
}

const (
	ignoredOffDay = 2 // from so many on the topic waits for the chore day
	ignoredAsk    = 3 // and from so many on it is asked whether to keep it
	monthly       = 28 * day
)

// lastSign is when the person last took notice of the topic: a record of its
// kind, or any answer to a nudge on it.
func (v *view) lastSign(n *need) time.Time {
	t := v.seasonStart()
	late := func(at time.Time) {
		if at.After(t) {
			t = at
		}
	}
	h := v.h
	switch n.About {
	case aboutWallow:
		latest(h.WallowFills, late)
	case aboutWorm:
		latest(h.Worms, late)
	case aboutMove:
		if k := len(h.Moves); k > 0 {
			late(h.Moves[k-1].At)
		}
	case aboutWeigh:
		latest(h.Weighings, late)
	case aboutBook:
		latest(h.Bookings, late)
	case aboutLevel:
		latest(h.Refills, late)
		latest(h.FeedLevels, late)
	case aboutRation:
		latest(h.Recipes, late)
	case aboutStock:
		latest(h.Stocks, late)
	case aboutCheck:
		late(lastWord(h))
	}
	for _, d := range h.Dones {
		if v.speaksOf(d.F.About, d.F.Topics, d.At, n) {
			late(d.At)
		}
	}
	for _, s := range h.Snoozes {
		if v.speaksOf(s.F.About, s.F.Topics, s.At, n) {
			late(s.At)
		}
	}
	return t
}

// faded weighs how often a topic was passed over. It gives the need as it is
// to be told at the moment m, or false for not now.
func (v *view) faded(n need, m time.Time, visit bool) (need, bool) {
	if !fading[n.About] || n.Grade == Danger {
		return n, true
	}
	sign := v.lastSign(&n)
	ignored, last := v.toldTopic(n.Topic, sign)
	switch {
	case ignored < ignoredOffDay:
		return n, true
	case !visit:
		return n, false
	case ignored < ignoredAsk:
		return n, true
	}
	keep := "keep:" + n.About
	if k, _ := v.toldTopic(keep, sign); k == 0 {
		n.Line = Line{
			About: n.About, Topic: keep, Grade: Routine, Code: CodeKeepAsking,
			Names: []string{n.About}, Earliest: n.Earliest, Latest: n.Latest,
		}
		n.since = time.Time{}
		n.buttons = []Button{ButtonKeep, ButtonMonthly, ButtonStop}
		return n, true
	}
	return n, m.Sub(last) >= monthly-day // the chore day of the fourth week
}

// routineToday reports whether a routine message other than the standing one
// went out on the day.
func (v *view) routineToday() bool {
	for i := len(v.tolds) - 1; i >= 0; i-- {
		t := v.tolds[i]
		if t.At.Before(v.start) {
			return false
		}
		if model.DayOf(t.At.In(v.loc)) == v.day && !t.F.Standing && Grade(t.F.Grade) == Routine &&
			!slices.Contains(t.F.About, aboutOwn) && !slices.Contains(t.F.About, aboutCatchUp) &&
			!(len(t.F.Topics) == 1 && t.F.Topics[0] == stockEve) &&
			!strings.Contains(t.F.Key, snoozeMark) {
			return true
		}
	}
	return false
}

// snoozeMark stands in the token of a need told again after a snooze.
const snoozeMark = "~"
