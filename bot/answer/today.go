package answer

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
)

// dueLines is how many lines the answer has at most.
const dueLines = 8

// daysAhead is how far "what's due?" looks.
const daysAhead = 14

// due lists what falls due in the next two weeks, or on the day asked about.
func due(a asked) Answer {
	days := daysAhead
	if a.On != nil && *a.On > a.today+daysAhead {
		days = int(*a.On - a.today)
	}
	items := []any{}
	var lines []string
	var reasons []model.Reason
	for _, l := range schedule.Upcoming(a.h, a.now, days) {
		if a.On != nil && !a.fallsOn(l, *a.On) {
			continue
		}
		said := a.v.Line(l)
		item := map[string]any{"about": l.About, "text": said}
		if l.On != 0 {
			item["on"] = l.On.String()
		}
		if !l.At.IsZero() {
			item["at"] = a.moment(l.At)
		}
		items = append(items, item)
		lines = append(lines, said)
		reasons = append(reasons, l.Reasons...)
	}
	data := map[string]any{"due": items}
	if len(lines) == 0 && len(a.h.Alive(a.today)) == 0 {
		if c, ok := a.h.Coming(a.today); ok {
			return Answer{Data: data, Text: a.say("nothing_due_coming", wording.Args{Days: []model.Day{c.Day}, Q: []model.Quantity{wording.N(c.Count)}})}
		}
		return Answer{Data: data, Text: a.say("nothing_due_empty", wording.Args{})}
	}
	if len(lines) == 0 {
		next := model.DayOf(a.h.NextChore(a.now))
		if a.On != nil {
			code := "nothing_due_on"
			if a.h.IsChoreDay(*a.On) {
				code = "nothing_due_round"
			}
			return Answer{Data: data, Text: a.say(code, wording.Args{Days: []model.Day{*a.On, next}})}
		}
		return Answer{Data: data, Text: a.say("nothing_due", wording.Args{Days: []model.Day{next}})}
	}
	if more := len(lines) - dueLines; more > 0 {
		lines = append(lines[:dueLines], a.say("due_more", wording.Args{Q: []model.Quantity{wording.N(more)}}))
	}
	return Answer{Data: data, Text: strings.Join(lines, "\n"), Reasons: reasons}
}

// fallsOn reports whether a line is for the day: it is due then, or the day is the
// next round, which takes what is overdue too.
func (a asked) fallsOn(l schedule.Line, day model.Day) bool {
	if l.On == day {
		return true
	}
	round := a.h.NextChore(a.now)
	if a.h.IsChoreDay(a.today) {
		round = a.now
	}
	return day == model.DayOf(round) && l.On <= day
}
