package schedule

import (
	"slices"
	"time"

	"troughbell/model"
)

// feedOutTellings and waterOutTellings are how often a calculated emergency is
// told, a day apart, while nothing is logged.
const (
	feedOutTellings  = 2
	waterOutTellings = 3
)

// refillVisit says what to mix and pour at the visit so that no feeder runs dry
// before the next one, at its cautious edge.
func refillVisit(v *view) []need {
	p, err := v.f.RefillPlan(v.visitAt(), v.next)
	if err != nil || !p.Needed {
		return nil // what is lacking is asked for in checkVisit
	}
	l := Line{
		About: aboutRefill, Topic: aboutRefill, Grade: Routine, Code: CodeRefillVisit,
		On: v.day, At: v.wanted(v.next), Reasons: v.untilNext(p.Reasons),
		Q: []model.Quantity{{Value: p.PourKg, Unit: model.Kilograms}, {Value: p.Batches, Unit: model.Count}},
	}
	for _, f := range p.Feeders {
		if f.PourKg <= 0 {
			continue
		}
		l.Names = append(l.Names, f.Name)
		l.Q = append(l.Q, model.Quantity{Value: f.PourKg, Unit: model.Kilograms})
		if !f.Lasts {
			l.Code = CodeRefillBrim
		}
		if l.Latest.IsZero() || f.EdgeAt.Before(l.Latest) {
			l.Latest = f.EdgeAt
		}
	}
	l.Look = v.looksAtFeed(l.Names)
	return []need{{Line: l, quiet: sameVisit}}
}

// sameVisit is for how long a Done silences what comes again at every visit.
const sameVisit = 12 * time.Hour

// refillBetween tells of feed that cannot wait for the next visit: once in time
// to act, and as a calculated emergency when it is likely gone. On a day with a
// visit the one after it counts: the standing message speaks for this one.
func refillBetween(v *view) []need {
	p, err := v.f.RefillPlan(v.at, v.next)
	if err != nil {
		return nil
	}
	edge, likely := v.runsDry(p)
	until := v.wanted(v.lastsUntil(edge, likely))
	if until.After(v.next) {
		if p, err = v.f.RefillPlan(v.at, until); err != nil {
			return nil
		}
	}
	if !p.Needed || !edge.Before(until) {
		return nil
	}
	l := Line{
		About: aboutRefill, Topic: "refill:between", Grade: Welfare, Code: CodeRefillMidweek,
		Latest: v.next, Reasons: p.Reasons,
	}
	for _, f := range p.Feeders {
		if !f.EdgeAt.IsZero() && f.EdgeAt.Before(until) {
			l.Names = append(l.Names, f.Name)
		}
	}
	l.At, l.On = edge, model.DayOf(likely.In(v.loc))
	l.Earliest = v.callAt(v.earlier(edge))
	p = v.planThen(p, l.Earliest, until)
	l.Q = []model.Quantity{{Value: p.PourKg, Unit: model.Kilograms}, {Value: p.Batches, Unit: model.Count}}
	if slices.ContainsFunc(p.Feeders, func(f model.RefillFeeder) bool { return slices.Contains(l.Names, f.Name) && !f.Lasts }) {
		l.Code = CodeRefillMidweekBrim
	}
	filled := v.feedSpoken()
	out := []need{{Line: l, token: token(aboutRefill, "between", filled, v.next), edge: l.At, quiet: v.sinceVisit()}}
	l.Topic, l.Code, l.Grade, l.At, l.On = "refill:out", CodeRefillOut, Danger, likely, 0
	l.Q = l.Q[:1:1]
	if seen, ok := v.feedSeenEmpty(); ok { // who saw it knows: no word on what may be
		l.Code, l.At = CodeRefillSeenEmpty, seen
		return v.tellAgain(need{Line: l, quiet: v.sinceVisit()}, filled, seen.Add(v.seenEmptyWait()), feedOutTellings)
	}
	l.Reasons = append([]model.Reason{v.notLogged(filled)}, p.Reasons...)
	return append(out, v.tellAgain(need{Line: l, quiet: v.sinceVisit()}, filled, likely, feedOutTellings)...)
}

// planThen is the plan as it will be at the moment it is told: there is more room
// by then. Where it cannot be had, or nothing would be needed, it is the plan of now.
func (v *view) planThen(p model.RefillPlan, at, until time.Time) model.RefillPlan {
	if !at.After(v.at) {
		return p
	}
	if then, err := v.f.RefillPlan(at, until); err == nil && then.PourKg > 0 {
		return then
	}
	return p
}

// emptyBeside is for how long one feeder may likely stand empty while others hold
// feed, before it is told between visits: with fewer places to eat the weak are
// pushed off (common practice, no source).
const emptyBeside = day

// runsDry gives when feed is wanting, cautiously and likely: the moment at which
// all feeders are empty, since pigs walk from one to the next, or the one at which
// a single feeder begins to stand empty for long before the next visit. Where
// pigs are in several pens each feeder counts by itself.
func (v *view) runsDry(p model.RefillPlan) (edge, likely time.Time) {
	edge, likely = p.EdgeAt, p.LikelyAt
	apart := v.pensApart()
	for _, f := range p.Feeders {
		if !f.EdgeAt.Before(edge) || f.EdgeAt.IsZero() {
			continue
		}
		if apart || f.LikelyAt.Before(v.next.Add(-emptyBeside)) {
			edge, likely = f.EdgeAt, f.LikelyAt
		}
	}
	return edge, likely
}

// pensApart reports whether the pigs are in more than one pen.
func (v *view) pensApart() bool {
	for _, p := range v.pigs[1:] {
		if v.h.CurrentPen(p) != v.h.CurrentPen(v.pigs[0]) {
			return true
		}
	}
	return false
}

// feedSpoken is when a feeder's level was last spoken of.
func (v *view) feedSpoken() time.Time {
	var t time.Time
	late := func(at time.Time) { t = later(t, at) }
	latest(v.h.Refills, late)
	latest(v.h.FeedLevels, late)
	return t
}

// afterVisit moves a moment that lies before the day's visit, or so soon after it
// that the standing message has just spoken, to the evening.
func (v *view) afterVisit(m time.Time) time.Time {
	if !v.visit.IsZero() && m.Before(v.visit.Add(act)) {
		return later(v.evening(v.day), wholeMinute(v.visit.Add(act)))
	}
	return m
}

// sinceVisit is for how long back a Done silences what is told between visits:
// to the latest chore moment.
func (v *view) sinceVisit() time.Duration {
	if !v.visit.IsZero() && v.fact.After(v.visit) {
		return v.end.Sub(v.visit)
	}
	return v.end.Sub(v.prev)
}

// tellAgain makes a need that is told at a moment and again a day later each, so
// many times in all, while nothing that settles it is logged.
func (v *view) tellAgain(n need, period, first time.Time, times int) []need {
	at := first
	for i := range times {
		n.token = token(n.Topic, period, i)
		if told, ok := v.toldAt(n.token); ok {
			at = told.Add(day)
			if told.Before(n.At) { // a forecast made while it is out says: from now
				n.At = told
			}
			continue
		}
		if !n.breaks && !v.fact.IsZero() {
			at = later(at, v.fact.Add(lateReply)) // whoever has just logged something is on the spot
		}
		n.Earliest, n.Latest = v.afterVisit(at), at.Add(2*day)
		n.Q = append(n.Q[:len(n.Q):len(n.Q)], model.Quantity{Value: float64(i), Unit: model.Count})
		return []need{n}
	}
	return nil
}

// feedSeenEmpty gives when the feeders were last seen empty, where nothing was
// poured since: all of them in one word, or each by its name.
func (v *view) feedSeenEmpty() (time.Time, bool) {
	var poured time.Time
	latest(v.h.Refills, func(at time.Time) { poured = at })
	empty := map[string]bool{}
	for i := len(v.h.FeedLevels) - 1; i >= 0; i-- {
		s := v.h.FeedLevels[i]
		if s.F.Fraction == nil || *s.F.Fraction > 0 || s.At.Before(poured) {
			return time.Time{}, false
		}
		if f := v.h.Feeder(s.F.Feeder); s.F.Feeder == "" || f == nil {
			return s.At, true
		} else if empty[f.Name] = true; len(empty) == len(v.h.Feeders) {
			return v.h.FeedLevels[len(v.h.FeedLevels)-1].At, true
		}
	}
	return time.Time{}, false
}

// seenEmptyWait is how long after feeders were seen empty it is brought up: longer
// where the question is put whether they are.
func (v *view) seenEmptyWait() time.Duration {
	if slices.ContainsFunc(v.odd(), func(n need) bool { return n.Code == CodeOddFeedEmpty }) {
		return 2 * alarmEvery
	}
	return alarmEvery
}
