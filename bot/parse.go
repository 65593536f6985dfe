package bot

import (
	"strings"
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/store"
)

// Parsed is what a text would be recorded as.
type Parsed struct {
	Entries []map[string]any
	Reply   string
}

// Parsing is a herd against which texts are read without being recorded.
type Parsing struct {
	State *State
	asked *reading.Ask // the last question of the person who speaks
}

// Parsing reads a herd for it.
func (d *Desk) Parsing(tx *store.Tx, herd store.HerdID) (*Parsing, error) {
	s, err := d.State(tx, herd)
	if err != nil {
		return nil, err
	}
	asked, err := lastAsked(tx, Message{Herd: herd, From: s.speaker()})
	if err != nil {
		return nil, err
	}
	return &Parsing{State: s, asked: asked}, nil
}

// Text says what a text would lead to as the next message at now. It speaks as
// the person who was asked the latest open question, else as the one who spoke
// last.
func (p *Parsing) Text(now time.Time, text string) (Parsed, error) {
	out := Parsed{Entries: []map[string]any{}}
	if strings.TrimSpace(text) == "" {
		out.Entries = append(out.Entries, map[string]any{
			"intent": "none", "reason": reading.NoneEmpty, "date": model.DayOf(now).String(),
		})
		return out, nil
	}
	m := Message{Herd: p.State.Row.ID, ID: "parse", Text: text, At: now, From: p.State.speaker()}
	o, err := Respond(p.State, m, p.asked)
	if err != nil {
		return Parsed{}, err
	}
	var said []string
	for _, r := range o.Replies {
		out.Entries = append(out.Entries, r.Slots()...)
		said = append(said, r.Text)
	}
	out.Reply = strings.Join(said, "\n")
	return out, nil
}

func (s *State) speaker() store.Member {
	m := store.Member{Herd: s.Row.ID, Role: store.Owner}
	if open := s.Herd.Open(); len(open) > 0 {
		_, m.Person = s.origin(open[len(open)-1].ID)
		return m
	}
	for latest := range s.live() {
		m.Person, m.Name = latest.By, latest.ByName
		break
	}
	return m
}
