package bot

import (
	"encoding/json"
	"fmt"
	"regexp"

	"troughbell/model"
	"troughbell/schedule"
)

// recordID is what the IDs of records look like.
var recordID = regexp.MustCompile(`^r[0-9]+$`)

// noRecord is the ID of a record that did not come along: no record has it.
const noRecord = "-"

// renamed gives a fact with the records that it names called as name says.
func renamed(f model.Fact, name func(id string) string) (model.Fact, error) {
	topics := func(in []string) []string {
		if len(in) == 0 {
			return in
		}
		out := make([]string, len(in))
		for i, topic := range in {
			out[i] = renamedTopic(topic, name)
		}
		return out
	}
	switch f := f.(type) {
	case model.Settled:
		f.Question = name(f.Question)
		return f, nil
	case model.Told:
		f.Key, f.Topics = renamedTopic(f.Key, name), topics(f.Topics)
		return f, nil
	case model.Done:
		f.Topics = topics(f.Topics)
		return f, nil
	case model.Snooze:
		f.Topics = topics(f.Topics)
		return f, nil
	case model.Question:
		return renamedQuestion(f, name)
	}
	return f, nil
}

func renamedTopic(topic string, name func(id string) string) string {
	return schedule.Renamed(topic, func(part string) (string, bool) {
		if !recordID.MatchString(part) {
			return "", false
		}
		return name(part), true
	})
}

func renamedQuestion(q model.Question, name func(id string) string) (model.Fact, error) {
	if q.Of != "" {
		q.Of = name(q.Of)
	}
	if len(q.Body) == 0 {
		return q, nil
	}
	var body questionBody
	if err := json.Unmarshal(q.Body, &body); err != nil {
		return nil, fmt.Errorf("read a question: %w", err)
	}
	body.Nudge = renamedTopic(body.Nudge, name)
	entries := func(es []entryBody) {
		for i := range es {
			if es[i].Replace != "" {
				es[i].Replace = name(es[i].Replace)
			}
			if u := es[i].Undo; u != nil && u.Record != "" {
				u.Record = name(u.Record)
			}
		}
	}
	entries(body.Draft)
	for _, c := range body.Choices {
		entries(c.Entries)
	}
	raw, err := json.Marshal(body)
	if err != nil {
		return nil, fmt.Errorf("keep a question: %w", err)
	}
	q.Body = raw
	return q, nil
}

// refers ranks kinds by what they name: those that name no record first, then
// questions, then what names questions.
func refers(f model.Fact) int {
	switch f.(type) {
	case model.Question:
		return 1
	case model.Settled, model.Told, model.Done, model.Snooze:
		return 2
	}
	return 0
}
