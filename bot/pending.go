package bot

import (
	"encoding/json"
	"fmt"
	"slices"
	"time"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// questionBody is what the journal keeps of a question: enough to record the
// answer as if the text had been clear from the start.
type questionBody struct {
	Text    string           `json:"text"` // the message that raised it
	About   string           `json:"about"`
	Code    string           `json:"code"`
	Names   []string         `json:"names,omitempty"`
	Q       []model.Quantity `json:"q,omitempty"`
	Draft   []entryBody      `json:"draft,omitempty"`
	Want    string           `json:"want,omitempty"`
	Choices []choiceBody     `json:"choices,omitempty"`
	Labels  []string         `json:"labels,omitempty"`
	Asked   string           `json:"asked,omitempty"` // the question as it was put
	Setup   string           `json:"setup,omitempty"`
	Nudge   string           `json:"nudge,omitempty"` // the nudge that it was put in
}

type choiceBody struct {
	Label   string           `json:"label,omitempty"`
	Code    string           `json:"code,omitempty"`
	Q       []model.Quantity `json:"q,omitempty"`
	Entries []entryBody      `json:"entries,omitempty"`
}

// entryBody is an entry as JSON. Exactly one of the acts is there.
type entryBody struct {
	Kind    model.Kind      `json:"kind,omitempty"`
	Fact    json.RawMessage `json:"fact,omitempty"`
	Ask     *reading.Ask    `json:"ask,omitempty"`
	Undo    *reading.Undo   `json:"undo,omitempty"`
	Done    *reading.Done   `json:"done,omitempty"`
	Snooze  *reading.Snooze `json:"snooze,omitempty"`
	Do      *reading.Do     `json:"do,omitempty"`
	Help    *reading.Help   `json:"help,omitempty"`
	None    *reading.None   `json:"none,omitempty"`
	On      model.Day       `json:"on"`
	Minute  *int            `json:"minute,omitempty"`
	Dated   bool            `json:"dated,omitempty"`
	Replace string          `json:"replace,omitempty"`
	Instead model.Day       `json:"instead,omitempty"` // the day of the appointment whose place it takes
}

func packEntries(es []reading.Entry) ([]entryBody, error) {
	var out []entryBody
	for _, e := range es {
		b := entryBody{On: e.On, Minute: e.Minute, Dated: e.Dated, Replace: e.Replace, Instead: e.InsteadOf}
		switch a := e.Act.(type) {
		case reading.Fact:
			raw, err := json.Marshal(a.Fact)
			if err != nil {
				return nil, fmt.Errorf("keep a question on %s: %w", a.Kind(), err)
			}
			b.Kind, b.Fact = a.Kind(), raw
		case reading.Ask:
			b.Ask = &a
		case reading.Undo:
			b.Undo = &a
		case reading.Done:
			b.Done = &a
		case reading.Snooze:
			b.Snooze = &a
		case reading.Do:
			b.Do = &a
		case reading.Help:
			b.Help = &a
		case reading.None:
			b.None = &a
		default:
			return nil, fmt.Errorf("keep a question: an answer cannot be %q", e.Act.Intent())
		}
		out = append(out, b)
	}
	return out, nil
}

func unpackEntries(bs []entryBody) ([]reading.Entry, error) {
	var out []reading.Entry
	for _, b := range bs {
		e := reading.Entry{On: b.On, Minute: b.Minute, Dated: b.Dated, Replace: b.Replace, InsteadOf: b.Instead, Instead: b.Instead != 0}
		switch {
		case b.Kind != "":
			f, err := model.DecodeFact(b.Kind, b.Fact)
			if err != nil {
				return nil, err
			}
			e.Act = reading.Fact{Fact: f}
		case b.Ask != nil:
			e.Act = *b.Ask
		case b.Undo != nil:
			e.Act = *b.Undo
		case b.Done != nil:
			e.Act = *b.Done
		case b.Snooze != nil:
			e.Act = *b.Snooze
		case b.Do != nil:
			e.Act = *b.Do
		case b.Help != nil:
			e.Act = *b.Help
		case b.None != nil:
			e.Act = *b.None
		default:
			return nil, fmt.Errorf("a kept answer says nothing")
		}
		out = append(out, e)
	}
	return out, nil
}

// packQuestion makes the fact that a question was asked.
func packQuestion(c reading.Clarify, asked string, labels []string, text, setup string) (model.Question, error) {
	body := questionBody{
		Text: text, About: c.About, Code: c.Code, Names: c.Names, Q: c.Q,
		Want: c.Want, Labels: labels, Asked: asked, Setup: setup,
	}
	var err error
	if body.Draft, err = packEntries(c.Draft); err != nil {
		return model.Question{}, err
	}
	for _, ch := range c.Choices {
		b := choiceBody{Label: ch.Label, Code: ch.Code, Q: ch.Q}
		if b.Entries, err = packEntries(ch.Entries); err != nil {
			return model.Question{}, err
		}
		body.Choices = append(body.Choices, b)
	}
	raw, err := json.Marshal(body)
	if err != nil {
		return model.Question{}, fmt.Errorf("keep a question: %w", err)
	}
	return model.Question{About: c.About, Code: c.Code, Body: raw}, nil
}

// unpackQuestion is the question as it was asked.
func unpackQuestion(q model.Dated[model.Question]) (*reading.Pending, error) {
	var body questionBody
	if err := json.Unmarshal(q.F.Body, &body); err != nil {
		return nil, fmt.Errorf("read question %s: %w", q.ID, err)
	}
	c := reading.Clarify{About: body.About, Code: body.Code, Names: body.Names, Q: body.Q, Want: body.Want}
	var err error
	if c.Draft, err = unpackEntries(body.Draft); err != nil {
		return nil, err
	}
	for _, b := range body.Choices {
		ch := reading.Choice{Label: b.Label, Code: b.Code, Q: b.Q}
		if ch.Entries, err = unpackEntries(b.Entries); err != nil {
			return nil, err
		}
		c.Choices = append(c.Choices, ch)
	}
	return &reading.Pending{
		ID: q.ID, Clarify: c, Labels: body.Labels, Text: body.Text, AskedAt: q.At, Setup: body.Setup,
	}, nil
}

// questionStands is how long an unanswered question may still be answered by a
// bare word; a reply to it may answer it later too.
const questionStands = 36 * time.Hour

// pending is the question that a text of this person may answer: the one it
// replies to, else the latest open one of theirs. A button may hang below a later
// message than that which raised its question: there it was put once more.
func (s *State) pending(m Message, now time.Time) (*reading.Pending, error) {
	open := s.Herd.Open()
	for i := len(open) - 1; i >= 0; i-- {
		src, by := s.origin(open[i].ID)
		replied := m.ReplyTo != "" && src.Message == m.ReplyTo && src.Chat == m.Chat
		odd := open[i].F.Of != "" // put in a nudge, for anyone to answer
		if odd && m.ReplyNudge != "" {
			in, err := nudgeOf(open[i])
			if err != nil {
				return nil, err
			}
			replied = in == m.ReplyNudge
		}
		if m.Pressed && !replied && by == m.From.Person && !s.asks(m) {
			p, err := unpackQuestion(open[i])
			if err != nil {
				return nil, err
			}
			replied = slices.Contains(p.Labels, m.Text)
		}
		if replied || m.ReplyTo == "" && (by == m.From.Person || odd) && now.Sub(open[i].At) <= questionStands {
			return unpackQuestion(open[i])
		}
	}
	return nil, nil
}

// asked is the open questions as they were put, by their records.
func (s *State) asked() (map[string]wording.Asked, error) {
	out := map[string]wording.Asked{}
	for _, q := range s.Herd.Open() {
		var body questionBody
		if err := json.Unmarshal(q.F.Body, &body); err != nil {
			return nil, fmt.Errorf("read question %s: %w", q.ID, err)
		}
		if body.Setup == "" {
			out[q.ID] = wording.Asked{Said: body.Text, Question: body.Asked, Labels: body.Labels}
		}
	}
	return out, nil
}

func (s *State) origin(record string) (src store.Source, by store.PersonID) {
	e, _ := s.record(record)
	return e.Source, e.By
}

// asks reports whether the message that a message replies to left a question open: a
// press then speaks of no other, though it has the same words.
func (s *State) asks(m Message) bool {
	return slices.ContainsFunc(s.Herd.Open(), func(q model.Dated[model.Question]) bool {
		src, _ := s.origin(q.ID)
		return m.ReplyTo != "" && src == store.Source{Chat: m.Chat, Message: m.ReplyTo}
	})
}
