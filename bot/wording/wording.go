// Package wording says entries, figures, questions and nudges in words: the
// verdict first, the number second, the reason third, in the units and with
// the names of the person. It is the one place with sentences in it.
//
// The sentences stand in catalogues ([Voice.Say]), keyed by the codes that
// model, schedule, reading and answer give out, with typed arguments ([Args]);
// another language is another set of catalogues.
package wording

import (
	"time"

	"troughbell/model"
)

// Voice is whom the words are for. A nil Herd is one of which nothing is known
// yet.
type Voice struct {
	Herd *model.Herd
	Now  time.Time // in the herd's zone
	// Open has the questions that wait for an answer, by their records.
	Open map[string]Asked
	// Lasting says that the words will be read on other days than today's: they name
	// each day by its date.
	Lasting bool
	// Own says that amounts stand in the person's units, also those that they told in
	// others.
	Own bool
	// Forecasts says that forecasts are fetched for a herd that says where it is.
	Forecasts bool
}

// Asked is a question as it was put.
type Asked struct {
	Said     string // the text that raised it
	Question string
	Labels   []string
}

// Effect is what recording an entry changed, for the second half of an
// acknowledgement.
type Effect struct {
	Entry int // index of the entry that it belongs to
	Code  string
	Names []string
	On    model.Day
	// Window is the days it speaks of, where it speaks of a span.
	Window model.DayInterval
	At     time.Time
	Q      []model.Quantity
}

// Asks reports whether the effect is said as a question.
func (e Effect) Asks() bool { return e.Code == notClearUnknown }

// Metric reports whether the person's units are metric; where none were ever
// stated they are US.
func (v Voice) Metric() bool { return v.Herd != nil && v.Herd.Units == model.Metric }

// today is the day of the herd's clock.
func (v Voice) today() model.Day { return model.DayOf(v.Now) }
