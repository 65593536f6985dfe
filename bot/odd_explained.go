package bot

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/schedule"
)

// explainsFor is for how long after a strange level or fill a note may tell what
// it was, so that it need not be asked.
const explainsFor = 24 * time.Hour

// explain takes a note that tells what was the matter with feed or water gone for
// the answer to the question that would be put in the evening.
func (t *talk) explain() error {
	told := false
	for _, e := range t.recorded {
		if f, ok := e.Act.(reading.Fact); ok {
			n, ok := f.Fact.(model.Note)
			told = told || ok && reading.Trouble(n.What)
		}
	}
	if !told {
		return nil
	}
	of, code, at := t.unasked()
	if of == "" || t.now.Sub(at) > explainsFor {
		return nil
	}
	q := t.note(model.Question{About: "check", Code: code, Of: of})
	if err := t.append(q); err != nil {
		return err
	}
	asked := t.out.New[len(t.out.New)-1].ID
	if err := t.append(t.note(model.Settled{Question: asked, How: model.LeftOut})); err != nil {
		return err
	}
	t.lines = append(t.lines, t.voice().None(reading.None{Reason: schedule.ChoiceRain}, ""))
	return nil
}

// unasked is the latest record that shows feed or water gone that does not fit,
// of which nothing was asked yet.
func (t *talk) unasked() (of, code string, at time.Time) {
	take := func(record, kind string, when time.Time) {
		if when.After(at) {
			of, code, at = record, kind, when
		}
	}
	for _, o := range t.s.Herd.OddFeed() {
		take(o.Record, map[model.OddKind]string{
			model.OddMore: schedule.CodeOddFeedMore, model.OddLess: schedule.CodeOddFeedLess, model.OddEmpty: schedule.CodeOddFeedEmpty,
		}[o.Kind], o.At)
	}
	for _, o := range t.s.Herd.OddWater() {
		take(o.Record, map[model.OddKind]string{model.OddMore: schedule.CodeOddWaterMore, model.OddLess: schedule.CodeOddWaterLess}[o.Kind], o.At)
	}
	for _, q := range t.s.Herd.Questions {
		if q.F.Of == of {
			return "", "", time.Time{}
		}
	}
	return of, code, at
}
