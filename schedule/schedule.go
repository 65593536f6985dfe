// Package schedule decides what to say unasked, and when.
//
// A rule looks at a herd and says what, the earliest useful and the latest safe
// moment, how grave, and why. The planner lays what is due onto the person's
// rhythm: chore days first, other days only for what cannot wait, quiet hours
// broken only by the closed list of dangers. Nothing is stored as an alarm: a
// nudge is computed at the moment of sending, from the records and the time.
package schedule

import (
	"time"

	"troughbell/model"
)

// Grade says how grave a nudge is.
type Grade string

// The grades. Only Danger breaks quiet hours.
const (
	Routine Grade = "routine"
	Welfare Grade = "welfare"
	Danger  Grade = "danger"
)

// Line is one thing that a nudge says.
type Line struct {
	About string // the contract's word: "refill", "water", ...
	Topic string // About, with the thing it speaks of: "water:barrel 2"
	Grade Grade
	Code  string // of the sentence in the catalogue
	Names []string
	On    model.Day // the day it speaks of
	At    time.Time // the moment it speaks of
	Q     []model.Quantity
	// Window is the days it speaks of, where it speaks of a span.
	Window model.DayInterval
	// Look says that a word on how full it is, before it is filled, would sharpen
	// what is known of the pigs' use; LookEach that the line asks it of all that the
	// nudge has to fill.
	Look, LookEach bool
	// Choices are the answers of a line that asks, best first, at most four; Of is
	// the record that it asks about.
	Choices []string
	Of      string
	// Earliest useful and latest safe moment to tell it.
	Earliest, Latest time.Time
	Reasons          []model.Reason
}

// Nudge is one message that goes out unasked.
type Nudge struct {
	Key      string // names the nudge and its period: it goes out once
	Standing bool   // the one routine message of a chore day
	Grade    Grade
	Lines    []Line
	// Well has the figures of a standing message that says all is well: Lines is
	// then empty.
	Well    []Line
	Buttons []Button
	// GoodUntil is until when it is worth saying; zero: always.
	GoodUntil time.Time
}

// Button is what can be tapped below a nudge, as an intent; words come later.
type Button string

// The buttons of a nudge.
const (
	ButtonDone      Button = "done"
	ButtonTomorrow  Button = "tomorrow"
	ButtonNextChore Button = "next_chore_day"
	ButtonStop      Button = "stop"
	ButtonKeep      Button = "keep"    // a Snooze until now: the count of tellings starts again
	ButtonMonthly   Button = "monthly" // a Snooze for 28 days
)

// About lists what is in the nudge, in the order of its lines, each once.
func (n Nudge) About() []string {
	var out []string
	seen := map[string]bool{}
	for _, l := range n.Lines {
		if !seen[l.About] {
			seen[l.About] = true
			out = append(out, l.About)
		}
	}
	return out
}

// Told is the fact to record when the nudge goes out.
func (n Nudge) Told() model.Told {
	t := model.Told{Key: n.Key, About: n.About(), Standing: n.Standing, Grade: string(n.Grade)}
	for _, l := range n.Lines {
		t.Topics = append(t.Topics, l.Topic)
		if l.Look {
			t.Topics = append(t.Topics, lookTopic(l.About))
		}
	}
	return t
}
