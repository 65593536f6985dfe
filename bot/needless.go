package bot

import (
	"slices"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Needless is a message of the outbox whose buttons nobody needs any more.
type Needless struct {
	Row store.Outgoing
	// Done and PutOff say what became of the nudge that it delivered; neither: its
	// question is settled.
	Done, PutOff bool
}

// oneRound is how long several nudges on one topic belong together: whoever
// settles the last of them settles those before.
const oneRound = 36 * time.Hour

// Needless lists the messages whose buttons a message has made needless by what
// it said: those of the questions that it answered, and all deliveries of the
// nudges that it settled whole. An edit changes its own answers by itself.
func (d *Desk) Needless(tx *store.Tx, m Message, out Outcome) ([]Needless, error) {
	settles := func(e store.Envelope) bool {
		switch e.Fact.(type) {
		case model.Settled, model.Done, model.Snooze:
			return true
		}
		return false
	}
	if m.Edit || !slices.ContainsFunc(out.New, settles) {
		return nil, nil
	}
	s, err := d.State(tx, m.Herd)
	if err != nil {
		return nil, err
	}
	var all []Needless
	for _, e := range out.New {
		var some []Needless
		switch f := e.Fact.(type) {
		case model.Settled:
			some, err = s.needlessAsked(tx, f)
		case model.Done:
			some, err = s.needlessTold(tx, f.Topics, e.At)
			for i := range some {
				some[i].Done = true
			}
		case model.Snooze:
			some, err = s.needlessTold(tx, f.Topics, e.At)
			for i := range some {
				some[i].PutOff = true
			}
		}
		if err != nil {
			return nil, err
		}
		all = append(all, some...)
	}
	return all, nil
}

func (s *State) needlessAsked(tx *store.Tx, f model.Settled) ([]Needless, error) {
	q, ok := s.record(f.Question)
	if !ok {
		return nil, nil
	}
	asked, ok := q.Fact.(model.Question)
	if !ok {
		return nil, nil
	}
	if asked.Of != "" { // put in a nudge, to everybody
		key, err := nudgeKey(asked.Body)
		if err != nil {
			return nil, err
		}
		told, _ := s.lastNudge(key)
		if len(told.Topics) != 1 { // its buttons speak of more than the question
			return nil, nil
		}
		return withButtons(tx.Deliveries(q.Herd, key))
	}
	return withButtons(tx.AnswersTo(q.Source.Chat, q.Source.Message))
}

// needlessTold lists the deliveries of the nudges of this round of which nothing
// is left when the topics are settled.
func (s *State) needlessTold(tx *store.Tx, topics []string, at time.Time) ([]Needless, error) {
	var all []Needless
	for _, t := range s.Herd.Tolds {
		if len(t.F.Topics) == 0 || t.At.After(at) || at.Sub(t.At) > oneRound {
			continue
		}
		if slices.ContainsFunc(t.F.Topics, func(topic string) bool { return !slices.Contains(topics, topic) }) {
			continue
		}
		some, err := withButtons(tx.Deliveries(s.Row.ID, t.F.Key))
		if err != nil {
			return nil, err
		}
		all = append(all, some...)
	}
	return all, nil
}

func withButtons(rows []store.Outgoing, err error) ([]Needless, error) {
	var out []Needless
	for _, o := range rows {
		if len(o.Buttons) > 0 && o.Sent != "" {
			out = append(out, Needless{Row: o})
		}
	}
	return out, err
}

// Overtaken reports whether a nudge is of an earlier round and what it told has
// been told anew: an answer to it would speak of the new one.
func (d *Desk) Overtaken(tx *store.Tx, herd store.HerdID, key string, now time.Time) (bool, error) {
	s, err := d.State(tx, herd)
	if err != nil {
		return false, err
	}
	tolds := s.Herd.Tolds
	i := slices.IndexFunc(tolds, func(t model.Dated[model.Told]) bool { return t.F.Key == key })
	if i < 0 || now.Sub(tolds[i].At) <= oneRound {
		return false, nil
	}
	for _, later := range tolds[i+1:] {
		if slices.ContainsFunc(later.F.Topics, func(topic string) bool { return slices.Contains(tolds[i].F.Topics, topic) }) {
			return true, nil
		}
	}
	return false, nil
}
