package bot

import (
	"encoding/json"
	"fmt"
	"slices"
	"time"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// putOdd keeps the question that a line of a nudge puts about what does not fit,
// with what each of its answers would record.
func (t *talk) putOdd(tx *store.Tx, v wording.Voice, n schedule.Nudge) error {
	for _, l := range n.Lines {
		if len(l.Choices) == 0 {
			continue
		}
		c := reading.Clarify{About: l.About, Code: l.Code, Names: l.Names, Q: l.Q}
		for _, code := range l.Choices {
			c.Choices = append(c.Choices, reading.Choice{Code: code, Entries: t.oddEntries(l, code)})
		}
		q, err := packQuestion(c, v.Line(l), v.Choices(l), "", "")
		if err != nil {
			return err
		}
		if q, err = inNudge(q, n.Key); err != nil {
			return err
		}
		q.Of = l.Of
		if err := t.keep(tx, q); err != nil {
			return err
		}
	}
	return nil
}

// inNudge notes in a question which nudge put it.
func inNudge(q model.Question, key string) (model.Question, error) {
	var body questionBody
	if err := json.Unmarshal(q.Body, &body); err != nil {
		return q, fmt.Errorf("keep a question: %w", err)
	}
	body.Nudge = key
	raw, err := json.Marshal(body)
	if err != nil {
		return q, fmt.Errorf("keep a question: %w", err)
	}
	q.Body = raw
	return q, nil
}

// nudgeOf is the key of the nudge that a question was put in.
func nudgeOf(q model.Dated[model.Question]) (string, error) {
	return nudgeKey(q.F.Body)
}

func nudgeKey(question json.RawMessage) (string, error) {
	var body questionBody
	if err := json.Unmarshal(question, &body); err != nil {
		return "", fmt.Errorf("read a question: %w", err)
	}
	return body.Nudge, nil
}

// oddEntries is what an answer records. Where the verdict alone says it, that is
// nothing beside it.
func (t *talk) oddEntries(l schedule.Line, code string) []reading.Entry {
	on := model.DayOf(t.now)
	said := reading.Entry{Act: reading.None{Reason: code}, On: on}
	feed := l.Code == schedule.CodeOddFeedMore || l.Code == schedule.CodeOddFeedEmpty
	switch code {
	case schedule.ChoiceWentAll, schedule.ChoiceWentNot:
		e, ok := t.went(l, code)
		switch {
		case ok && code == schedule.ChoiceWentNot:
			return []reading.Entry{e, said}
		case ok:
			return []reading.Entry{e}
		}
	case schedule.ChoiceSpilled, schedule.ChoiceOthers:
		if e, ok := t.spilled(l); feed && ok {
			return []reading.Entry{e}
		}
	case schedule.ChoiceNotFull:
		if e, ok := t.notFull(l); feed && ok {
			return []reading.Entry{e}
		}
	case schedule.ChoiceTrough:
		if r, ok := t.s.record(l.Of); ok && r.Fact.Kind() == (model.FeedLevel{}).Kind() {
			return []reading.Entry{{Act: reading.Undo{Of: string(r.Fact.Kind()), Record: l.Of}, On: on}, said}
		}
		if e, ok := t.notFromEmpty(l); ok {
			return []reading.Entry{e, said}
		}
	}
	return []reading.Entry{said}
}

// spilled is a loss of feed just before the record that the line asks about.
func (t *talk) spilled(l schedule.Line) (reading.Entry, bool) {
	r, ok := t.s.record(l.Of)
	if !ok || len(l.Names) == 0 {
		return reading.Entry{}, false
	}
	e := reading.Entry{Act: reading.Fact{Fact: model.FeedLevel{Feeder: l.Names[0], Spilled: true}}}
	e.On, e.Minute = justBefore(r, t.now.Location())
	return e, true
}

// justBefore is the minute before a record, of its day where it has one.
func justBefore(r store.Envelope, loc *time.Location) (model.Day, *int) {
	at := r.At.In(loc).Add(-time.Minute)
	minute := model.MinuteOf(at)
	return model.DayOf(at), &minute
}

// notFull is the fill before the one asked about, no longer said to be full.
func (t *talk) notFull(l schedule.Line) (reading.Entry, bool) {
	asked, ok := t.s.record(l.Of)
	if !ok {
		return reading.Entry{}, false
	}
	var last *model.Dated[model.Refill]
	for i := range t.s.Herd.Refills {
		r := &t.s.Herd.Refills[i]
		if r.F.Full && r.At.Before(asked.At) && (r.F.Feeder == "" || slices.Contains(l.Names, r.F.Feeder)) {
			last = r
		}
	}
	if last == nil || last.F.FeedKg == nil { // nothing would be left of it
		return reading.Entry{}, false
	}
	fill := last.F
	fill.Full = false
	return t.replacing(last.ID, fill)
}

// notFromEmpty is the fill asked about, no longer said to have found nothing.
func (t *talk) notFromEmpty(l schedule.Line) (reading.Entry, bool) {
	r, ok := t.s.record(l.Of)
	if !ok {
		return reading.Entry{}, false
	}
	fill, ok := r.Fact.(model.Refill)
	if !ok {
		return reading.Entry{}, false
	}
	fill.FromEmpty = false
	return t.replacing(l.Of, fill)
}

// replacing is an entry that corrects a record and stays at its moment.
func (t *talk) replacing(id string, f model.Fact) (reading.Entry, bool) {
	r, ok := t.s.record(id)
	if !ok || f.Check() != nil {
		return reading.Entry{}, false
	}
	minute := model.MinuteOf(r.At)
	return reading.Entry{Act: reading.Fact{Fact: f}, On: r.On, Minute: &minute, Dated: r.On != model.DayOf(t.now), Replace: id}, true
}

// verdicts are what the answers mean for the span asked about. An answer that
// records what happened needs none.
var verdicts = map[string]string{
	schedule.ChoiceAte:       model.AsUsual,
	schedule.ChoiceAteLess:   model.AsUsual,
	schedule.ChoiceDrank:     model.AsUsual,
	schedule.ChoiceDrankLess: model.AsUsual,
	schedule.ChoiceIll:       model.AsUsual, // it weighs what it weighs
	schedule.ChoiceShort:     model.AsUsual,
	schedule.ChoiceBullied:   model.AsUsual,
}

// howSettled is how an answer settles its question.
func howSettled(r reading.Reading) string {
	if !slices.Contains(schedule.Choices, r.Choice) {
		return "answered"
	}
	if v, ok := verdicts[r.Choice]; ok {
		return v
	}
	if slices.ContainsFunc(r.Entries, func(e reading.Entry) bool { return e.Act.Intent() != "none" }) {
		return "answered"
	}
	return model.LeftOut
}

// spillBefore takes a spill told in the person's own words for the answer to a
// question about feed gone: it happened before the fill that showed it.
func (t *talk) spillBefore() {
	if t.pending == nil || t.r.Answers {
		return
	}
	c := t.pending.Clarify
	if c.Code != schedule.CodeOddFeedMore && c.Code != schedule.CodeOddFeedEmpty {
		return
	}
	for i, e := range t.r.Entries {
		f, ok := e.Act.(reading.Fact)
		if !ok || e.Dated || e.Minute != nil {
			continue
		}
		spill, ok := f.Fact.(model.FeedLevel)
		if !ok || !spill.Spilled || spill.Feeder != "" && !slices.Contains(c.Names, spill.Feeder) {
			continue
		}
		for _, choice := range c.Choices {
			if choice.Code != schedule.ChoiceSpilled || len(choice.Entries) == 0 {
				continue
			}
			at := choice.Entries[0]
			t.r.Entries[i].On, t.r.Entries[i].Minute = at.On, at.Minute
			t.r.Answers = true
		}
	}
}
