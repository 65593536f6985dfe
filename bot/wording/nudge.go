package wording

import (
	"math"
	"slices"
	"strings"
	"time"

	"troughbell/model"
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
	if len(n.Lines) == 1 && !n.Standing {
		if q, ok := v.asked(n.Lines[0]); ok {
			labels = q.Labels
		}
		if c := v.Choices(n.Lines[0]); c != nil {
			labels = c
		}
	}
	if len(n.Lines) == 0 {
		return v.allWell(n.Well), labels
	}
	lines := make([]string, 0, len(n.Lines))
	for _, l := range lookOnce(n.Lines) {
		s := v.Line(l)
		if c := v.Choices(l); c != nil && (len(n.Lines) > 1 || n.Standing) { // the buttons speak of more than this line
			s += " " + v.say(partLine, "choices", Args{Names: []string{Join(c, "or")}})
		}
		lines = append(lines, marked(l, s))
	}
	if over := len(lines) - nudgeLines; over > 0 { // nothing is left unsaid: the last line takes the rest
		lines = append(lines[:nudgeLines-1], strings.Join(lines[nudgeLines-1:], " "))
	}
	return strings.Join(lines, "\n"), labels
}

// marked puts the sign before a line that tells of a danger.
func marked(l schedule.Line, s string) string {
	if l.Grade == schedule.Danger && !strings.HasPrefix(s, danger) {
		return danger + " " + s
	}
	return s
}

// Relayed says a line to those who did not tell of it, with the name of who did.
func (v Voice) Relayed(l schedule.Line, by string) string {
	said := v.Nudged(l)
	if by != "" {
		said += " " + v.say(partLine, "told_by", Args{Names: []string{by}})
	}
	return said
}

// Nudged says one line as it stands in a nudge.
func (v Voice) Nudged(l schedule.Line) string { return marked(l, v.Line(l)) }

// Choices are the labels of the answers to a line that asks; nil where it asks
// nothing.
func (v Voice) Choices(l schedule.Line) []string {
	var out []string
	for _, c := range l.Choices {
		out = append(out, v.phrase(partChoice, c, Args{}))
	}
	return out
}

// The codes of asking for a look before filling.
const (
	lookOne  = "look_first"
	lookEach = "look_first_each"
)

// lookOnce has one line of a nudge, the last, ask for the look at all there is to
// fill.
func lookOnce(lines []schedule.Line) []schedule.Line {
	out := slices.Clone(lines)
	last := -1
	for i := range out {
		if !out[i].Look {
			continue
		}
		if last >= 0 {
			out[last].Look = false
			out[i].LookEach = true
		}
		last = i
	}
	return out
}

func lookCode(l schedule.Line) string {
	if l.LookEach || len(l.Names) > 1 {
		return lookEach
	}
	return lookOne
}

// asked is the question that a line puts once more.
func (v Voice) asked(l schedule.Line) (Asked, bool) {
	if l.Code != schedule.CodeCheckQuestion || len(l.Names) == 0 {
		return Asked{}, false
	}
	q, ok := v.Open[l.Names[0]]
	return q, ok && q.Question != "" && q.Said != ""
}

// danger is the one sign in use.
const danger = "⚠"

// Line says one thing that falls due.
func (v Voice) Line(l schedule.Line) string {
	if q, ok := v.asked(l); ok {
		return v.say(partLine, "check_question_again", Args{
			Names: []string{shorten(q.Said, 40), q.Question}, Moments: []time.Time{l.At},
		})
	}
	a := With(v.lineNames(l), l.On, l.At, l.Q)
	a.Days = append(a.Days, l.Window.Low, l.Window.Mid, l.Window.High)
	said := v.say(partLine, v.lineCode(l), a)
	if l.Look {
		said += " " + v.say(partLine, lookCode(l), Args{})
	}
	return said
}

// Endings of the codes of sentences for special cases of a line.
const (
	far  = "_far"   // what it asks for is out of reach
	late = "_late"  // its day is past
	this = "_today" // its day is today
	soon = "_now"   // its moment is past, or within the hour
	one  = "_one"   // it speaks of one thing only
)

// lineCode is the code of the line's sentence.
func (v Voice) lineCode(l schedule.Line) string {
	for _, special := range []struct {
		ending string
		holds  bool
	}{
		{far, v.farChange(l)},
		{late, l.On != 0 && l.On < v.today()},
		{this, l.On != 0 && l.On == v.today()},
		{soon, !l.At.IsZero() && l.At.Sub(v.Now) < time.Hour},
		{one, len(l.Names) == 1},
	} {
		if _, ok := lineSentences[l.Code+special.ending]; ok && special.holds {
			return l.Code + special.ending
		}
	}
	return l.Code
}

// farChange reports whether a line on the ration asks for more than half a batch
// of something: no mix is mended so.
func (v Voice) farChange(l schedule.Line) bool {
	batch, ok := v.batchKg()
	if !ok || l.Code != schedule.CodeRationShort || len(l.Q) <= 3 {
		return false
	}
	return slices.ContainsFunc(l.Q[3:], func(q model.Quantity) bool { return FarChange(q.Value, batch) })
}

func (v Voice) batchKg() (float64, bool) {
	if v.Herd == nil {
		return 0, false
	}
	return v.Herd.BatchKg()
}

// FarChange reports whether a change of so many kilograms is no way to mend a
// batch of the size.
func FarChange(kg, batchKg float64) bool { return math.Abs(kg) > batchKg/2 }

// lineNames are the names of a line as they are said: kinds of things in words,
// ingredients with what is there of what is needed.
func (v Voice) lineNames(l schedule.Line) []string {
	names := slices.Clone(l.Names)
	if l.Code == schedule.CodeCheckQuestion && len(names) > 2 {
		return []string{names[0], About(names[1]), v.reminded(names[1], names[2])}
	}
	for i, name := range names {
		names[i] = plainly(name)
		switch l.Code {
		case schedule.CodeKeepAsking, schedule.CodeCheckNotFilled:
			names[i] = About(name)
		case schedule.CodeStockShort, schedule.CodeStockEve:
			if len(l.Q) >= 2*len(names) {
				have, _ := v.number(l.Q[2*i], styleFeed)
				names[i] = name + " " + have + " of " + v.Quantity(l.Q[2*i+1], styleFeed)
			}
		}
	}
	return names
}

// again ends the code of a question's sentence for when it is asked once more,
// without what filled it the first time.
const again = "_again"

// reminded is a question that was asked before, as far as it can be said without
// what filled it.
func (v Voice) reminded(about, code string) string {
	if about == "setup" {
		text, _ := v.SetupQuestion(code)
		question, _, _ := strings.Cut(text, "?")
		return question + "?"
	}
	for _, c := range []string{code + again, about + "_" + code, code} {
		if s, ok := questionSentences[c]; ok {
			if said, whole := v.fill(s, Args{}); whole {
				return capital(strings.TrimSpace(said))
			}
		}
	}
	return "a question on the " + About(about) + "."
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
