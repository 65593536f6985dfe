// Package answer answers questions from the herd's figures: as data for other
// programs, and as words.
package answer

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
)

// Answer is the answer to one question.
type Answer struct {
	// Data holds the figures by the contract's names, ready for JSON; nil where
	// something needed is unknown.
	Data map[string]any
	// Text is what the person reads: the figures, or what to tell first.
	Text string
	// Reasons are kept for a "why?" that follows.
	Reasons []model.Reason
	// Buttons offers what may be asked or told next.
	Buttons [][]string
}

// To answers the question about the herd, seen from now in its zone. last is
// the question before, for "why?"; nil if there was none.
func To(h *model.Herd, now time.Time, q reading.Ask, last *reading.Ask) Answer { panic("answer") }
