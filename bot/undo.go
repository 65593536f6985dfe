package bot

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/model"
	"troughbell/store"
)

// undoAsks is the age from which taking a record back wants a tap.
const undoAsks = time.Hour

// undo takes a record back: the one named, else the person's latest of that
// kind. It names what it undoes, and asks first where that is old, someone
// else's or a drug.
func (t *talk) undo(e *reading.Entry, a reading.Undo) error {
	if a.Bare {
		if done, err := t.reopen(e); done || err != nil {
			return err
		}
	}
	target, ok := t.undoTarget(a)
	if !ok {
		t.lines = append(t.lines, t.voice().NothingToUndo(a.Of))
		e.Act = reading.None{Reason: "nothing_to_undo"}
		return nil
	}
	kind := string(target.Fact.Kind())
	entry := entryOf(target)
	if t.m.From.Role == store.Helper {
		t.lines = append(t.lines, t.voice().Forbidden("undo"))
		e.Act = reading.None{Reason: "forbidden"}
		return nil
	}
	drug := kind == "worm" || kind == "treat"
	if a.Record == "" && (drug || t.now.Sub(target.SaidAt) > undoAsks || target.By != t.m.From.Person) {
		if err := t.dropUndoAsked(); err != nil {
			return err
		}
		e.Act = reading.Clarify{
			About: "undo", Code: "undo_sure", Names: []string{t.voice().Echo(entry)},
			Choices: []reading.Choice{
				{Code: "undo_yes", Entries: []reading.Entry{{
					Act: reading.Undo{Of: kind, Record: target.ID}, On: model.DayOf(t.now),
				}}},
				{Code: "undo_no", Entries: []reading.Entry{{
					Act: reading.None{Reason: "kept"}, On: model.DayOf(t.now),
				}}},
			},
		}
		return nil
	}
	e.Act = reading.Undo{Of: kind}
	if err := t.append(t.takenBack(target)...); err != nil {
		return err
	}
	t.lines = append(t.lines, t.voice().Undone(entry))
	return nil
}

// dropUndoAsked drops this person's earlier questions on what to take back: who
// asks again wants one answer, not two open questions.
func (t *talk) dropUndoAsked() error {
	for _, q := range t.s.Herd.Open() {
		if _, by := t.s.origin(q.ID); q.F.About != "undo" || by != t.m.From.Person {
			continue
		}
		if err := t.append(t.note(model.Settled{Question: q.ID, How: "dropped"})); err != nil {
			return err
		}
	}
	return nil
}

func (t *talk) undoTarget(a reading.Undo) (store.Envelope, bool) {
	var others *store.Envelope
	for env := range t.s.live() {
		switch {
		case a.Record != "" && env.ID != a.Record,
			a.Named != "" && env.ID != a.Named,
			a.Of != "" && !undoes(a.Of, env.Fact.Kind()),
			env.Source == t.source():
			continue
		case a.Record != "" || env.By == t.m.From.Person:
			return env, true
		case others == nil:
			others = &env
		}
	}
	if others != nil {
		return *others, true
	}
	return store.Envelope{}, false
}

// undoes reports whether the word for a kind speaks of a record of kind k.
func undoes(of string, k model.Kind) bool {
	return of == string(k) || of == "treat" && k == "worm" || of == "refill" && k == "feed_level"
}

// takenBack is the records that undo one: its void, the void of what it did to
// another appointment, and once more what it corrected; of an import all that came
// with the file.
func (t *talk) takenBack(target store.Envelope) []store.Envelope {
	out := []store.Envelope{t.note(model.Void{Record: target.ID, Why: "undo"})}
	_, file := target.Fact.(model.Import)
	for _, e := range t.s.Journal {
		switch {
		case e.Source != target.Source || e.ID == target.ID:
			continue
		case target.Judged == store.Imported: // by itself
			return out
		case file:
			if e.Judged == store.Imported && !t.s.voided[e.ID] {
				out = append(out, t.note(model.Void{Record: e.ID, Why: withImport}))
			}
			continue
		}
		switch f := e.Fact.(type) {
		case model.Booked:
			if (f.Cancelled || e.Judged == implied) && !t.s.voided[e.ID] {
				out = append(out, t.note(model.Void{Record: e.ID, Why: "undo"}))
			}
		case model.Void:
			if old, ok := t.s.record(f.Record); ok && f.Why == "correction" {
				again := t.note(old.Fact)
				again.On, again.At, again.Stated = old.On, old.At, old.Stated
				out = append(out, again)
			}
		}
	}
	return out
}
