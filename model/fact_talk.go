package model

import (
	"encoding/json"
	"errors"
	"time"
)

// Remind is a reminder of the person's own, for a local day and, with Minute, a
// time on it.
type Remind struct {
	Day    Day    `json:"day"`
	Minute *int   `json:"minute,omitempty"`
	What   string `json:"what"`
}

func (Remind) Kind() Kind   { return "remind" }
func (Remind) Version() int { return 1 }

func (m Remind) Check() error {
	if m.What == "" {
		return errors.New("a reminder needs words")
	}
	return nil
}

func (m Remind) fold(h *Herd, r Record) { h.Reminds = append(h.Reminds, dated(m, r)) }

// Done says that what a nudge asked for is done. About is as in Told; empty
// means all of the latest one.
type Done struct {
	About []string `json:"about,omitempty"`
	// Topics are the keys of the lines it settles (see Told.Topics).
	Topics []string `json:"topics,omitempty"`
}

func (Done) Kind() Kind               { return "done" }
func (Done) Version() int             { return 1 }
func (Done) Check() error             { return nil }
func (d Done) fold(h *Herd, r Record) { h.Dones = append(h.Dones, dated(d, r)) }

// Snooze puts off what a nudge asked for until a moment; Stop ends it for the
// season.
type Snooze struct {
	About  []string  `json:"about,omitempty"`
	Topics []string  `json:"topics,omitempty"`
	Until  time.Time `json:"until,omitzero"`
	Stop   bool      `json:"stop,omitempty"`
}

func (Snooze) Kind() Kind               { return "snooze" }
func (Snooze) Version() int             { return 1 }
func (Snooze) Check() error             { return nil }
func (s Snooze) fold(h *Herd, r Record) { h.Snoozes = append(h.Snoozes, dated(s, r)) }

// Told is a nudge that went out. Key names the nudge and its period, so that it
// goes out once; Topics name its lines ("refill:hopper", "weigh").
type Told struct {
	Key      string   `json:"key"`
	About    []string `json:"about"`
	Topics   []string `json:"topics,omitempty"`
	Standing bool     `json:"standing,omitempty"`
	Grade    string   `json:"grade"`
}

func (Told) Kind() Kind               { return "told" }
func (Told) Version() int             { return 1 }
func (Told) Check() error             { return nil }
func (t Told) fold(h *Herd, r Record) { h.Tolds = append(h.Tolds, dated(t, r)) }

// Question is something the program asked back. Body is the bot's own note of
// what each answer would record; the model keeps it unread.
type Question struct {
	About string `json:"about"` // the kind of fact in doubt, or "setup"
	Code  string `json:"code"`
	// Of is the record that a question about what does not fit speaks of: the fill
	// or the weighing that ended the span.
	Of   string          `json:"of,omitempty"`
	Body json.RawMessage `json:"body,omitempty"`
}

func (Question) Kind() Kind               { return "question" }
func (Question) Version() int             { return 1 }
func (Question) Check() error             { return nil }
func (q Question) fold(h *Herd, r Record) { h.Questions = append(h.Questions, dated(q, r)) }

// Settled says that a question needs no answer any more.
type Settled struct {
	Question string `json:"question"` // the question's record
	How      string `json:"how"`      // "answered", "dropped", "skipped", or a verdict
}

// Verdicts on a span that did not fit, as Settled.How of a question with Of.
const (
	// LeftOut: something else was the matter; the span teaches nothing.
	LeftOut = "left_out"
	// AsUsual: nothing was the matter; the span teaches in full, strange as it is.
	AsUsual = "as_usual"
)

func (Settled) Kind() Kind               { return "settled" }
func (Settled) Version() int             { return 1 }
func (Settled) Check() error             { return nil }
func (s Settled) fold(h *Herd, r Record) { h.settled[s.Question] = s.How }

// Void takes a record back. The record stays in the store; the herd is as if it
// had never been.
type Void struct {
	Record string `json:"record"`
	Why    string `json:"why"` // "undo", "edit", "correction", "import": with all that a file brought
}

func (Void) Kind() Kind         { return "void" }
func (Void) Version() int       { return 1 }
func (Void) Check() error       { return nil }
func (Void) fold(*Herd, Record) {}
