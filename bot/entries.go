package bot

import (
	"troughbell/bot/reading"
	"troughbell/bot/slots"
)

// Slots gives the reply's entries as other programs read them: the slots of
// each, the answer of each question, the choices of each doubt.
func (r Reply) Slots() []map[string]any {
	out := make([]map[string]any, 0, len(r.Entries))
	for i, e := range r.Entries {
		m := slots.Of(e)
		if a, ok := r.Answers[i]; ok {
			m["answer"] = a
		}
		if q, ok := r.Questions[i]; ok {
			m["question"] = q.Text
			m["choices"] = append([]string{}, q.Labels...)
		}
		if _, ok := e.Act.(reading.Clarify); ok && m["choices"] == nil {
			m["choices"] = []string{}
		}
		out = append(out, m)
	}
	return out
}
