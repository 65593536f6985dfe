package schedule

import (
	"slices"
	"sort"
	"strings"
	"time"

	"troughbell/model"
)

// item is a need with its span of time on the day looked at.
type item struct {
	at, until time.Time
	n         need
}

// between lists what is told on the day outside the standing message. It is
// worked out once for a view.
func (v *view) between() []item {
	if !v.looked {
		v.items, v.looked = v.lookBetween(), true
	}
	return v.items
}

func (v *view) lookBetween() []item {
	var out []item
	var needs []need
	routine, away := v.routineToday(), v.h.Away(v.day)
	resting := v.resting() || v.unheard()
	for _, r := range rules {
		if r.between == nil || len(v.pigs) == 0 && !r.idle || resting && !r.always {
			continue
		}
		for _, n := range r.between(v) {
			if n.Grade == Routine && !n.asked && (routine || away) || v.idleOn(&n) {
				continue
			}
			needs = append(needs, n)
		}
	}
	v.oneTrip(needs)
	for _, n := range needs {
		if it, ok := v.place(n); ok {
			out = append(out, it)
		}
	}
	if len(v.pigs) > 0 {
		out = append(out, v.wakened()...)
		out = append(out, v.returned()...)
	}
	return out
}

// place gives a need between visits its moment on the day, or false if it has
// none on this day.
func (v *view) place(n need) (item, bool) {
	from, until, snoozed := v.snoozed(&n)
	if !n.edge.IsZero() && until.After(n.edge) { // a snooze ends where the cautious edge comes first
		until = n.edge
	}
	at := n.Earliest
	if told, ok := v.toldAt(n.token); ok {
		if !snoozed || from.Before(told) || until.Before(from) {
			return item{}, false
		}
		n.token += snoozeMark + token(until)
		if v.told(n.token) {
			return item{}, false
		}
		at = until
	} else if snoozed && until.After(at) {
		at = until
	}
	if at.Before(v.start) && n.Grade != Danger {
		at = v.morning(v.day)
	}
	at = later(at, v.start)
	if !n.exact && at.Before(v.fact) {
		at = v.fact
		if !n.breaks {
			at = at.Add(lateReply)
		}
	}
	if !n.breaks && !n.exact {
		at = v.awake(at)
	}
	at = wholeMinute(at)
	last := v.end
	if !n.Latest.IsZero() && n.Latest.Before(last) {
		last = n.Latest
	}
	if !at.Before(v.end) || at.After(last) || v.stopped(&n) || v.done(&n, at) {
		return item{}, false
	}
	n, ok := v.faded(n, at, false)
	return item{at, last, n}, ok
}

// wakened lists the lines of a visit that were put off until a moment of this
// day. They are computed anew, for the moment until which they were put off.
func (v *view) wakened() []item {
	var out []item
	seen := map[time.Time]bool{}
	for _, s := range v.h.Snoozes {
		at := s.F.Until.In(v.loc)
		m := wholeMinute(v.awake(at))
		if s.F.Stop || !at.After(s.At) || m.Before(v.start) || !m.Before(v.end) || m.Equal(v.visit) || seen[at] || v.h.Away(v.day) {
			continue
		}
		seen[at] = true
		for _, n := range v.as(m).visitNeeds() {
			from, until, ok := v.snoozed(&n)
			n.token = token(n.Topic) + snoozeMark + token(at)
			if !ok || !until.Equal(at) || from.After(at) || v.told(n.token) {
				continue
			}
			n.asked = true
			out = append(out, item{m, v.end, n})
		}
	}
	return out
}

// as is the view of the day as if it had a visit at the moment m.
func (v *view) as(m time.Time) *view {
	w := *v
	w.visit, w.next = m, v.nextVisit(m)
	return &w
}

// returned is the catch-up for who was away: what is due before the next visit. It
// comes on the evening of the last day away; for who came home before, as soon as
// they say so, unless the standing message of the day does.
func (v *view) returned() []item {
	var out []item
	for _, a := range v.h.Aways {
		tok := token(aboutCatchUp, "away", a.F.To)
		early := a.F.To == v.day-1 && !a.At.Before(v.start) && a.At.Before(v.end)
		if a.F.To != v.day && !early || v.h.Away(v.day+1) || v.told(tok) {
			continue
		}
		m := later(wholeMinute(v.evening(v.day)), wholeMinute(a.At))
		if early {
			if _, ok := v.round(); ok {
				continue
			}
			m = wholeMinute(v.awake(a.At))
		}
		back := need{token: tok, asked: true, Line: Line{
			About: aboutCatchUp, Topic: aboutCatchUp, Grade: Routine, Code: CodeCatchUpAway, On: a.F.To,
			Earliest: m, Latest: v.end,
			Q: []model.Quantity{{Value: float64(a.F.To - a.F.From + 1), Unit: model.Days}},
		}}
		out = append(out, item{m, v.end, back})
		for _, n := range v.as(m).visitNeeds() {
			n.token, n.asked = token(n.Topic, "away", a.F.To), true
			if !v.stopped(&n) && !v.told(n.token) {
				out = append(out, item{m, v.end, n})
			}
		}
		break
	}
	return out
}

// visitNeeds lists what the rules want told at the visit, before it is known
// how it has fared before.
func (v *view) visitNeeds() []need {
	var out []need
	for _, r := range rules {
		if r.visit != nil && (r.idle || len(v.pigs) > 0) {
			for _, n := range r.visit(v) {
				// Everything is pulled to the last visit before it truly falls due.
				if (n.Latest.IsZero() || !n.Latest.After(v.next)) && !n.Earliest.After(v.visit) && !v.idleOn(&n) {
					out = append(out, n)
				}
			}
		}
	}
	return out
}

// visitLines is what the standing message of the day says, in order.
func (v *view) visitLines() []need {
	var out []need
	for _, n := range v.visitNeeds() {
		if _, until, ok := v.snoozed(&n); ok && until.After(v.visit) && n.Grade != Danger {
			continue
		}
		if n.since.IsZero() && patient[n.About] && len(v.h.Chore.Days) > 1 {
			n.since = v.visit.Add(-patientRest)
		}
		if !n.since.IsZero() {
			if k, _ := v.toldTopic(n.Topic, n.since); k > 0 {
				continue
			}
		}
		if v.stopped(&n) || v.done(&n, v.visit) {
			continue
		}
		if n, ok := v.faded(n, v.visit, true); ok {
			out = append(out, n)
		}
	}
	return out
}

// patient are the topics that wait for days: where chores are done more often than
// once a week they stand in one round of it, and the others speak of what is to do.
var patient = map[string]bool{aboutWorm: true, aboutMove: true, aboutWeigh: true, aboutBook: true, aboutRation: true}

const patientRest = 6*day + 12*time.Hour

// mostLines is how many lines a message holds.
const mostLines = 6

// inOrder puts dangers first, then the order of topics, and leaves one line for
// each topic.
func inOrder(ns []need) []need {
	sort.SliceStable(ns, func(i, j int) bool {
		a, b := ns[i], ns[j]
		if (a.Grade == Danger) != (b.Grade == Danger) {
			return a.Grade == Danger
		}
		return ranking[a.About] < ranking[b.About]
	})
	place := map[string]int{}
	var out []need
	for _, n := range ns {
		key := topicKey(n)
		if i, ok := place[key]; ok {
			out[i].also = append(out[i].also, n.token)
			continue
		}
		place[key] = len(out)
		out = append(out, n)
	}
	return out
}

// topicKey tells lines apart that may stand in one message: one line says all
// there is to fill.
func topicKey(n need) string {
	if n.About == aboutRefill || n.About == aboutWater {
		return n.About
	}
	return n.Topic
}

// livesAt reports whether pigs were there by the moment.
func (v *view) livesAt(t time.Time) bool {
	return slices.ContainsFunc(v.pigs, func(p *model.Animal) bool { return !p.Group.ArriveAt.After(t) })
}

// standing is the message of a visit. It takes in what is due between
// visits at the same moment, and gives back what does not fit.
func (v *view) standing(r round, between []need) (n Nudge, left []need) {
	all := inOrder(append(r.visitLines(), between...))
	var lines []need
	for i, room := 0, mostLines; i < len(all); i++ {
		switch {
		case room > 0:
			lines = append(lines, all[i])
			room--
		case all[i].token != "": // lines of a visit that do not fit wait for the next
			left = append(left, all[i])
		}
	}
	missed, owned := v.missed()
	if owned && len(lines) > 0 && len(lines) < mostLines {
		lines = append(lines, missed)
	}
	n = nudge(lines)
	n.Standing = true
	n.Key = strings.Join(append([]string{r.key()}, keys(lines)...), tokenGap)
	n.GoodUntil = r.until
	if len(lines) == 0 {
		n.Well = r.well()
		if owned {
			n.Well = append(n.Well, missed.Line)
			n.Key += tokenGap + missed.token
		}
		n.Buttons = nil
	}
	return n, left
}

// keys lists the tokens of needs, those that they stand for included.
func keys(ns []need) []string {
	var out []string
	for _, n := range ns {
		for _, t := range append([]string{n.token}, n.also...) {
			if t != "" {
				out = append(out, t)
			}
		}
	}
	return out
}

// nudge makes one message of needs that are in order.
func nudge(ns []need) Nudge {
	n := Nudge{Grade: Routine}
	own, topics := true, map[string]bool{}
	for _, x := range ns {
		n.Lines = append(n.Lines, x.Line)
		if graver(x.Grade, n.Grade) {
			n.Grade = x.Grade
		}
		own = own && x.About == aboutOwn
		topics[x.Topic] = true
	}
	n.Key = strings.Join(keys(ns), tokenGap)
	switch {
	case len(ns) == 1 && ns[0].buttons != nil:
		n.Buttons = ns[0].buttons
	case n.Grade == Danger:
		n.Buttons = []Button{ButtonDone}
	case own:
		n.Buttons = []Button{ButtonDone, ButtonTomorrow}
	default:
		n.Buttons = []Button{ButtonDone, ButtonTomorrow, ButtonNextChore}
		if len(topics) == 1 { // with several it would not be clear what to stop
			n.Buttons = append(n.Buttons, ButtonStop)
		}
	}
	return n
}

// dueNeeds lists the needs between visits of the moment, the dangers apart, and
// until when the others are worth telling.
func (v *view) dueNeeds(now time.Time) (danger, rest []need, until time.Time) {
	until = v.end
	quiet := v.h.Quiet.Holds(model.MinuteOf(now))
	for _, it := range v.between() {
		if it.at.After(now) || it.until.Before(now) || quiet && !it.n.breaks && !it.n.exact && !(v.late && it.n.Grade == Welfare) {
			continue
		}
		if it.n.Grade == Danger {
			danger = append(danger, it.n)
			continue
		}
		rest = append(rest, it.n)
		if it.until.Before(until) {
			until = it.until
		}
	}
	return danger, rest, until
}

// due lists the nudges of the moment: dangers, the standing message, the rest.
func (v *view) due(now time.Time) []Nudge {
	danger, rest, until := v.dueNeeds(now)
	if all := inOrder(slices.Concat(danger, rest)); len(danger) > 0 && len(all) <= mostLines && !v.standsNow(now) {
		danger, rest = all, nil // one message; the danger in it keeps it worth sending
	}
	out := pages(danger, time.Time{})
	if r, ok := v.round(); ok && v.standsNow(now) {
		var n Nudge
		n, rest = v.standing(r, rest)
		out = append(out, n)
	}
	return append(out, pages(rest, until)...)
}

// standsNow reports whether a standing message is due, which takes the rest in.
func (v *view) standsNow(now time.Time) bool {
	r, ok := v.round()
	return ok && !r.at.After(now) && now.Before(r.until)
}

// pages makes as many messages of the needs as they take.
func pages(ns []need, until time.Time) []Nudge {
	var out []Nudge
	for page := range slices.Chunk(inOrder(ns), mostLines) {
		n := nudge(page)
		n.GoodUntil = until
		out = append(out, n)
	}
	return out
}

// upcoming is the first moment after now at which something of the day falls
// due; the start of the next day if nothing does.
func (v *view) upcoming(now time.Time) time.Time {
	next := v.end
	if day := now.Add(day); day.Before(next) { // a day of 25 hours
		next = day
	}
	if r, ok := v.round(); ok && r.at.After(now) && r.at.Before(next) {
		next = r.at
	}
	for _, it := range v.between() {
		if it.at.After(now) && it.at.Before(next) {
			next = it.at
		}
	}
	return next
}

func later(a, b time.Time) time.Time {
	if a.Before(b) {
		return b
	}
	return a
}
