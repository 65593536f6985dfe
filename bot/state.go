package bot

import (
	"fmt"
	"iter"
	"slices"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/store"
)

// State is a herd as a conversation sees it: its row, its journal and what the
// journal amounts to. It is made by NewState and never changed.
type State struct {
	Row     store.HerdRow
	Journal []store.Envelope
	Herd    *model.Herd
	Zone    *time.Location
	// Forecasts says that forecasts are fetched for a herd that says where it is.
	Forecasts bool

	voided map[string]bool
}

// NewState folds a herd's journal. fallback is the zone that holds until the
// herd states its own.
func NewState(row store.HerdRow, journal []store.Envelope, fallback *time.Location) (*State, error) {
	records := make([]model.Record, len(journal))
	voided := map[string]bool{}
	for i, e := range journal {
		records[i] = e.Record()
		if v, ok := e.Fact.(model.Void); ok {
			voided[v.Record] = true
		}
	}
	h := model.Fold(records)
	zone := fallback
	if h.Zone != "" {
		var err error
		if zone, err = store.Zone(h.Zone); err != nil {
			return nil, fmt.Errorf("herd %q: zone: %w", row.Name, err)
		}
	}
	return &State{Row: row, Journal: journal, Herd: h, Zone: zone, voided: voided}, nil
}

// with is the state after some more records.
func (s *State) with(more []store.Envelope) (*State, error) {
	if len(more) == 0 {
		return s, nil
	}
	next := *s
	next.Journal = slices.Concat(s.Journal, more)
	for _, e := range more {
		var ok bool
		if next.Herd, ok = next.Herd.With(e.Record()); ok {
			continue
		}
		anew, err := NewState(s.Row, next.Journal, s.Zone)
		if err != nil {
			return nil, err
		}
		anew.Forecasts = s.Forecasts
		return anew, nil
	}
	return &next, nil
}

// spoken reports whether records of the kind come from what people say, as
// against what the program keeps of its own doings.
func spoken(k model.Kind) bool {
	switch k {
	case "told", "question", "settled", "void", "forecast":
		return false
	}
	return true
}

// live is the standing records that people's words made, the newest first.
func (s *State) live() iter.Seq[store.Envelope] {
	return func(yield func(store.Envelope) bool) {
		for i := len(s.Journal) - 1; i >= 0; i-- {
			e := &s.Journal[i]
			if !s.voided[e.ID] && spoken(e.Fact.Kind()) && e.Judged != implied && !yield(*e) {
				return
			}
		}
	}
}

// blank reports whether nothing was ever recorded or asked.
func (s *State) blank() bool { return len(s.Journal) == 0 }

// from lists the standing records, questions included, of one message.
func (s *State) from(src store.Source) []store.Envelope {
	var out []store.Envelope
	for i := range s.Journal {
		e := &s.Journal[i]
		k := e.Fact.Kind()
		if e.Source == src && !s.voided[e.ID] && (spoken(k) || k == "question") {
			out = append(out, *e)
		}
	}
	return out
}

// isOpen reports whether a question waits for its answer.
func (s *State) isOpen(question string) bool {
	return slices.ContainsFunc(s.Herd.Open(), func(q model.Dated[model.Question]) bool { return q.ID == question })
}

// confirmed marks a record that the answer to a question made.
const confirmed = "confirmed"

// confirmedBy lists the standing records of a kind that the answer to a question
// made: together with the text that raised it they are one fact.
func (s *State) confirmedBy(question, kind string) []store.Envelope {
	var out []store.Envelope
	for _, e := range s.Journal {
		settled, ok := e.Fact.(model.Settled)
		if !ok || settled.Question != question || s.voided[e.ID] {
			continue
		}
		for _, a := range s.from(e.Source) {
			if a.Judged == confirmed && string(a.Fact.Kind()) == kind {
				out = append(out, a)
			}
		}
	}
	return out
}

// spokenFrom lists the standing records of one message that people's words made.
func (s *State) spokenFrom(src store.Source) []store.Envelope {
	var out []store.Envelope
	for _, e := range s.from(src) {
		if spoken(e.Fact.Kind()) && e.Judged != store.Imported {
			out = append(out, e)
		}
	}
	return out
}

// knows reports whether anything was ever kept of a message.
func (s *State) knows(src store.Source) (text string, ok bool) {
	for i := len(s.Journal) - 1; i >= 0; i-- {
		if s.Journal[i].Source == src {
			return s.Journal[i].Text, true
		}
	}
	return "", false
}

// record finds a record by its ID.
func (s *State) record(id string) (store.Envelope, bool) {
	for i := len(s.Journal) - 1; i >= 0; i-- {
		if s.Journal[i].ID == id {
			return s.Journal[i], true
		}
	}
	return store.Envelope{}, false
}

// entryOf is the entry that a record was made from.
func entryOf(e store.Envelope) reading.Entry {
	out := reading.Entry{Act: reading.Fact{Fact: e.Fact}, On: e.On, Dated: e.On != model.DayOf(e.SaidAt.In(e.At.Location()))}
	if e.Stated {
		m := model.MinuteOf(e.At)
		out.Minute = &m
	}
	return out
}

// recent is how many of a person's latest records a correction can speak of.
const recent = 8

func recorded(es []store.Envelope) []reading.Recorded {
	var out []reading.Recorded
	for _, e := range es {
		out = append(out, reading.Recorded{ID: e.ID, Entry: entryOf(e), Text: e.Text, At: e.SaidAt})
	}
	return out
}

// before lists what the person's latest texts recorded, the newest first.
func (s *State) before(by store.PersonID, skip store.Source) []reading.Recorded {
	var mine []store.Envelope
	for e := range s.live() {
		if e.By == by && e.Source != skip && e.Judged != store.Imported {
			if mine = append(mine, e); len(mine) == recent {
				break
			}
		}
	}
	return recorded(mine)
}

// lastNudge is what the latest nudge, or the one named, was about.
func (s *State) lastNudge(key string) (model.Told, bool) {
	tolds := s.Herd.Tolds
	for i := len(tolds) - 1; i >= 0; i-- {
		if key == "" || tolds[i].F.Key == key {
			return tolds[i].F, true
		}
	}
	return model.Told{}, false
}
