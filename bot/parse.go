package bot

import (
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Parsed is what a text would be recorded as.
type Parsed struct {
	Entries []map[string]any
	Reply   string
}

// Parse says what a text would lead to as the next message at now, without
// recording it. It speaks as the person who was asked the latest open question,
// else as the one who spoke last.
func Parse(s *State, now time.Time, text string) (Parsed, error) {
	if text == "" {
		return Parsed{Entries: []map[string]any{{
			"intent": "none", "reason": "empty", "date": model.DayOf(now).String(),
		}}}, nil
	}
	m := Message{Herd: s.Row.ID, ID: "parse", Text: text, At: now, From: s.speaker()}
	out, err := Respond(s, m, nil)
	if err != nil {
		return Parsed{}, err
	}
	var p Parsed
	for i, r := range out.Replies {
		p.Entries = append(p.Entries, r.Slots()...)
		if i > 0 {
			p.Reply += "\n"
		}
		p.Reply += r.Text
	}
	return p, nil
}

func (s *State) speaker() store.Member {
	m := store.Member{Herd: s.Row.ID, Role: store.Owner}
	if open := s.Herd.Open(); len(open) > 0 {
		_, m.Person = s.origin(open[len(open)-1].ID)
		return m
	}
	if live := s.live(); len(live) > 0 {
		m.Person, m.Name = live[0].By, live[0].ByName
	}
	return m
}
