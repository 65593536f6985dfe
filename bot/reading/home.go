package reading

import (
	"strings"

	"troughbell/model"
)

// homeAgain is a text that says nothing but that those who were away are back.
var homeAgain = newPattern(`^(?:(?:we|i|all|finally|ok|hi|hey|just|and|now|am|are|is|have|came|come|got|made it|arrived) |(?:we're|we are|i'm|im|we've|i've|were|weve|ive) )*` +
	`(?:(?:back|home)(?: (?:home|now|again|early|safe|already|at the farm|on the farm|at home|from (?:the |our |my )?(?:trip|vacation|holiday|holidays|away|travels?|travelling|traveling|weekend))){0,3})$`)

// home reads such a text while the herd's people are away: the days away end with
// the day before. A pig that got out and is back is meant by it first.
func (r *reader) home() (Reading, bool) {
	text, day := strings.TrimRight(r.plain, "! "), r.today
	if m := loadDay.groups(text); m != nil && m[1] != "" {
		if d, ok := r.dayIn(m[2]); ok && d <= r.today {
			text, day = m[1], d
		}
	}
	if !homeAgain.matches(text) || r.openAlarm(model.AlarmOut) != nil {
		return Reading{}, false
	}
	for _, a := range r.c.Herd.Aways {
		if a.F.From > r.today || a.F.To < day {
			continue
		}
		if a.F.From >= day {
			return r.just(Undo{Of: "away", Record: a.ID}), true
		}
		e := Entry{Act: Fact{model.AwayFrom{From: a.F.From, To: day - 1}}, On: r.today, Replace: a.ID, To: len(r.text)}
		return Reading{Entries: []Entry{e}}, true
	}
	return Reading{}, false
}
