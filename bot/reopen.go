package bot

import (
	"troughbell/bot/reading"
	"troughbell/model"
)

// reopen takes back an answer of this person's that recorded nothing but settled a
// question, where it is the last thing they said: the question is open again. False
// where it is not.
func (t *talk) reopen(e *reading.Entry) (bool, error) {
	said := map[any]bool{} // messages that recorded something
	for env := range t.s.live() {
		said[env.Source] = true
	}
	for i := len(t.s.Journal) - 1; i >= 0; i-- {
		env := t.s.Journal[i]
		if env.By != t.m.From.Person || env.Source == t.source() || t.s.voided[env.ID] {
			continue
		}
		if said[env.Source] || t.now.Sub(env.SaidAt) > undoAsks {
			return false, nil
		}
		settled, ok := env.Fact.(model.Settled)
		if !ok {
			continue
		}
		q, ok := t.s.record(settled.Question)
		if !ok {
			continue
		}
		if about := q.Fact.(model.Question).About; about == "undo" || about == "setup" {
			continue
		}
		if err := t.append(t.note(model.Void{Record: env.ID, Why: "undo"})); err != nil {
			return true, err
		}
		open, err := t.s.asked()
		if err != nil {
			return true, err
		}
		again := open[settled.Question]
		e.Act = reading.Undo{Of: "clarify"}
		t.lines = append(t.lines, t.voice().UndoneAnswer(again.Question))
		t.buttons = rows(again.Labels)
		return true, nil
	}
	return false, nil
}
