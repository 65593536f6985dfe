// Package wording says entries, figures, questions and nudges in words: the
// verdict first, the number second, the reason third, in the units and with
// the names of the person. It is the one place with sentences in it.
package wording

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

// Voice is whom the words are for.
type Voice struct {
	Herd *model.Herd
	Now  time.Time // in the herd's zone
}

// Effect is what recording an entry changed, for the second half of an
// acknowledgement.
type Effect struct {
	Code  string
	Names []string
	On    model.Day
	At    time.Time
	Q     []model.Quantity
}

// Recorded acknowledges entries that were recorded, with their effects.
func (v Voice) Recorded(es []reading.Entry, effects []Effect) string { panic("wording") }

// Echo says one fact in a phrase that reads back to the same fact.
func (v Voice) Echo(e reading.Entry) string { panic("wording") }

// Question says a Clarify, with the labels of its choices.
func (v Voice) Question(c reading.Clarify) (text string, labels []string) { panic("wording") }

// None says why nothing was recorded.
func (v Voice) None(n reading.None, text string) string { panic("wording") }

// Left quotes what was not understood.
func (v Voice) Left(parts []string) string { panic("wording") }

// Nudge says a nudge, with the labels of its buttons.
func (v Voice) Nudge(n schedule.Nudge) (text string, labels []string) { panic("wording") }

// Why says reasons, at most three lines.
func (v Voice) Why(rs []model.Reason) string { panic("wording") }

// Missing asks for what a figure lacks.
func (v Voice) Missing(err error, topic string) string { panic("wording") }
