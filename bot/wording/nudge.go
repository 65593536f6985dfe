package wording

import (
	"strings"

	"troughbell/schedule"
)

// nudgeLines is how many lines a nudge has at most.
const nudgeLines = 6

// Nudge says a nudge, with the labels of its buttons. A standing message with
// nothing due says in two lines that all is well, and how long.
func (v Voice) Nudge(n schedule.Nudge) (text string, labels []string) {
	for _, b := range n.Buttons {
		labels = append(labels, buttonLabel(b))
	}
	if len(n.Lines) == 0 {
		return v.allWell(n.Well), labels
	}
	lines := make([]string, 0, len(n.Lines))
	for _, l := range n.Lines {
		s := v.Line(l)
		if l.Grade == schedule.Danger && !strings.HasPrefix(s, danger) {
			s = danger + " " + s
		}
		lines = append(lines, s)
	}
	if over := len(lines) - nudgeLines; over > 0 { // nothing is left unsaid: the last line takes the rest
		lines = append(lines[:nudgeLines-1], strings.Join(lines[nudgeLines-1:], " "))
	}
	return strings.Join(lines, "\n"), labels
}

// late ends the code of the sentence for a line whose day is past.
const late = "_late"

// danger is the one sign in use.
const danger = "⚠"

// Line says one thing that falls due.
func (v Voice) Line(l schedule.Line) string {
	a := With(l.Names, l.On, l.At, l.Q)
	a.Days = append(a.Days, l.Window.Low, l.Window.Mid, l.Window.High)
	code := l.Code
	if _, ok := lineSentences[code+late]; ok && l.On != 0 && l.On < v.today() {
		code += late
	}
	return v.say(partLine, code, a)
}

// allWell says in two lines that nothing is due and how long things last.
func (v Voice) allWell(well []schedule.Line) string {
	first := v.say(partLine, "all_well", With(nil, v.today(), v.Now, nil))
	var words []string
	for _, l := range well {
		words = append(words, v.Line(l))
	}
	if len(words) == 0 {
		return first
	}
	return first + "\n" + strings.Join(words, " ")
}

// buttonLabels are the words on the buttons of nudges.
var buttonLabels = map[schedule.Button]string{
	schedule.ButtonDone:      "Done",
	schedule.ButtonTomorrow:  "Tomorrow",
	schedule.ButtonNextChore: "Next chore day",
	schedule.ButtonStop:      "Stop this",
}

func buttonLabel(b schedule.Button) string {
	if l, ok := buttonLabels[b]; ok {
		return l
	}
	return capital(strings.ReplaceAll(string(b), "_", " "))
}
