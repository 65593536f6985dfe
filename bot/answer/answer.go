// Package answer answers questions from the herd's figures: as data for other
// programs, and as words.
package answer

import (
	"time"

	"troughbell/bot/picture"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
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
	// Picture is the figures to draw, where a picture was asked for; else nil.
	Picture picture.Drawing
}

// asked is a question with all that it is answered from.
type asked struct {
	reading.Ask
	h     *model.Herd // under the question's assumption, if it has one
	now   time.Time
	today model.Day
	pigs  []*model.Animal // those asked about, alive then; all where none was named
	named bool            // the question names pigs
	over  *model.Season   // the season that is over, of which the question is; nil: today's
	last  *reading.Ask
	v     wording.Voice
}

// topics has one line for each topic of a question.
var topics = map[string]func(asked) Answer{
	"butcher_date": butcherDate,
	"target":       butcherDate,
	"weight":       weight,
	"growth":       weight,
	"feed_left":    feedLeft,
	"feed_need":    feedNeed,
	"water_left":   waterLeft,
	"ration_check": rationCheck,
	"yield":        yield,
	"cost":         cost,
	"worming":      worming,
	"move":         move,
	"wallow":       wallow,
	"withdrawal":   withdrawal,
	"heat":         heat,
	"plan":         plan,
	"today":        due,
	"history":      history,
	"sizes":        sizes,
}

// To answers the question about the herd, seen from now in its zone. last is
// the question before, for "why?"; nil if there was none.
func To(h *model.Herd, now time.Time, q reading.Ask, last *reading.Ask) Answer {
	if q.Topic == "why" {
		return why(h, now, q, last)
	}
	a := asked{Ask: q, h: h, now: now, today: model.DayOf(now), last: last}
	if q.Assume != nil && len(h.Animals) > 0 {
		a.h = h.Assume(*q.Assume, a.today)
	}
	a.v = wording.Voice{Herd: a.h, Now: now, Own: true}
	if q.Season != "" {
		return a.ofSeason()
	}
	a.pigs, a.named = a.whichPigs(a.whose())
	if len(q.Animals) > 0 && len(a.pigs) == 0 && q.Topic != "history" { // pigs that are gone have a history
		return a.noSuchPig()
	}
	answer, ok := abouts[q.About]
	if !ok {
		answer, ok = topics[q.Topic]
	}
	if !ok {
		return Answer{Text: a.v.Help("")}
	}
	out := answer(a)
	if q.Picture {
		out = a.draw(out)
	}
	if out.Data != nil {
		out.Text = a.assumed() + out.Text
	}
	return out
}

// assumed says which other number of pigs an answer assumes; other assumptions
// show in its figures.
func (a asked) assumed() string {
	if a.Assume == nil || a.Assume.CountDelta == 0 {
		return ""
	}
	code, n := "with_more", a.Assume.CountDelta
	if n < 0 {
		code, n = "with_fewer", -n
	}
	return a.say(code, wording.Args{Q: []model.Quantity{wording.N(n)}}) + " "
}

// why says the reasons of the question before.
func why(h *model.Herd, now time.Time, q reading.Ask, last *reading.Ask) Answer {
	v := wording.Voice{Herd: h, Now: now, Own: true}
	if last == nil || last.Topic == "why" {
		return Answer{Text: v.Say("why_nothing", wording.Args{})}
	}
	before := To(h, now, *last, nil)
	if before.Data == nil {
		return Answer{Text: before.Text}
	}
	text := v.Why(before.Reasons)
	if text == "" {
		text = v.Say("why_plain", wording.Args{})
	}
	return Answer{
		Data:    map[string]any{"of": last.Topic, "reasons": reasonCodes(before.Reasons)},
		Text:    text,
		Reasons: before.Reasons,
	}
}

// missing asks for what a figure lacks.
func (a asked) missing(err error) Answer { return Answer{Text: a.v.Missing(err, a.Topic)} }

// say gives a sentence of the catalogue.
func (a asked) say(code string, args wording.Args) string { return a.v.Say(code, args) }
