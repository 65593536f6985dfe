package bot

import (
	"reflect"

	"troughbell/bot/reading"
	"troughbell/store"
)

// Foreseen is what a message leads to, worked out ahead of the transaction that
// handles it. It counts only where nothing it rests on has changed by then.
type Foreseen struct {
	s     *State
	m     Message
	asked *reading.Ask
	out   Outcome
}

// Foresee works out what a message leads to, beside the transactions that handle
// others. It keeps nothing.
func (d *Desk) Foresee(tx *store.Tx, m Message) (*Foreseen, error) {
	row, kept, err := tx.HerdAndValues(m.Herd, askedName(m))
	if err != nil {
		return nil, err
	}
	s, err := d.stateOf(tx, row)
	if err != nil {
		return nil, err
	}
	asked, err := readAsked(kept[0])
	if err != nil {
		return nil, err
	}
	if m.People, err = peopleFor(tx, m); err != nil {
		return nil, err
	}
	out, err := Respond(s, m, asked)
	if err != nil {
		return nil, err
	}
	return &Foreseen{s: s, m: m, asked: asked, out: out}, nil
}

// respond is Respond, or the same by what was foreseen.
func respond(s *State, m Message, asked *reading.Ask) (Outcome, error) {
	f := m.Foreseen
	m.Foreseen = nil
	if f != nil && f.rests(s, m, asked) {
		return f.out, nil
	}
	return Respond(s, m, asked)
}

// rests reports whether all that was foreseen rests on is as it was. The herd is the
// same where it was not made anew.
func (f *Foreseen) rests(s *State, m Message, asked *reading.Ask) bool {
	m.Version = f.m.Version // tells the versions of an edit apart, and no edit is foreseen
	return f.s.Herd == s.Herd && f.s.Row == s.Row && reflect.DeepEqual(f.m, m) && reflect.DeepEqual(f.asked, asked)
}
