package bot

import (
	"time"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// act carries out one entry of the text. What is only answered (a question, a
// doubt) is left for the reply.
func (t *talk) act(e *reading.Entry) error {
	switch a := e.Act.(type) {
	case reading.Fact:
		return t.record(e, a.Fact)
	case reading.Done:
		return t.done(e, a)
	case reading.Snooze:
		return t.snooze(e, a)
	case reading.Undo:
		return t.undo(e, a)
	case reading.Help:
		t.lines = append(t.lines, t.voice().Help(a.About))
	case reading.Do:
		return t.do(a)
	case reading.None:
		if a.Reason == reading.NoneUnknown && len(t.r.Entries) > 1 {
			return nil // the rest was understood; what was not is quoted
		}
		if t.before.blank() { // a first word, whatever it is, begins the conversation
			return t.do(reading.Do{What: "start"})
		}
		t.lines = append(t.lines, t.voice().None(a, t.m.Text))
		t.offer(a)
	}
	return nil
}

// record keeps a fact.
func (t *talk) record(e *reading.Entry, f model.Fact) error {
	if why := forbidden(t.m.From, f); why != "" {
		t.lines = append(t.lines, t.voice().Forbidden(why))
		e.Act = reading.None{Reason: "forbidden"}
		return nil
	}
	if err := f.Check(); err != nil {
		t.lines = append(t.lines, t.voice().Impossible(err))
		e.Act = reading.None{Reason: "impossible"}
		return nil
	}
	judged := "certain"
	if t.r.Answers {
		judged = confirmed
	}
	if e.Replace != "" {
		judged = "corrected"
		if err := t.append(t.note(model.Void{Record: e.Replace, Why: "correction"})); err != nil {
			return err
		}
	}
	switch fact := f.(type) {
	case model.Arrive, model.Setting, model.Recipe:
		t.setup = true
	case model.Booked:
		if e.Replace != "" {
			break // it corrects a record, which is voided for it
		}
		b, err := t.rebook(fact, e)
		if err != nil {
			return err
		}
		f, e.Act = b, reading.Fact{Fact: b}
	}
	switch f := f.(type) {
	case model.AwayFrom:
		if f.To >= model.DayOf(t.now) { // still ahead: somebody will come
			t.buttons = rows([]string{t.voice().SitterSheet()})
		}
	case model.Worm, model.Treat:
		if err := t.settleDrugs(); err != nil {
			return err
		}
	}
	t.recorded = append(t.recorded, *e)
	at, stated := t.moment(*e)
	return t.append(store.Envelope{On: e.On, At: at, Stated: stated, Judged: judged, Fact: f})
}

// moment is when an entry happened, as well as the text tells: the time it
// states, the message's own on the same day, else the middle of its day.
func (t *talk) moment(e reading.Entry) (at time.Time, stated bool) {
	switch {
	case e.Minute != nil:
		return e.On.At(*e.Minute, t.now.Location()), true
	case e.On == model.DayOf(t.now):
		return t.now, false
	default:
		return e.On.At(12*60, t.now.Location()), false
	}
}

// topics are the lines of the latest nudge that the words speak of.
func (t *talk) topics(about []string) (topics, abouts []string) {
	told, ok := t.s.lastNudge(t.m.ReplyNudge)
	if !ok {
		return nil, about
	}
	if len(about) == 0 {
		return told.Topics, told.About
	}
	for _, topic := range told.Topics {
		for _, a := range about {
			if topic == a || len(topic) > len(a) && topic[:len(a)+1] == a+":" {
				topics = append(topics, topic)
			}
		}
	}
	return topics, about
}

func (t *talk) done(e *reading.Entry, a reading.Done) error {
	topics, about := t.topics(a.About)
	e.Act = reading.Done{About: about}
	t.lines = append(t.lines, t.voice().Done(about))
	t.typed = t.typed || wording.DoneAsks(about)
	return t.append(t.note(model.Done{About: about, Topics: topics}))
}

func (t *talk) snooze(e *reading.Entry, a reading.Snooze) error {
	f := model.Snooze{Stop: a.Stop}
	f.Topics, f.About = t.topics(a.About)
	if len(f.Topics)+len(f.About) == 0 { // nothing was told yet that it could be about
		none := reading.None{Reason: "nothing_told"}
		e.Act = none
		t.lines = append(t.lines, t.voice().None(none, t.m.Text))
		return nil
	}
	switch {
	case a.Stop:
	case a.NextChore:
		f.Until = t.s.Herd.NextChore(t.now)
		day := model.DayOf(f.Until)
		a.Until = &day
	case a.Until != nil:
		f.Until = a.Until.At(t.s.Herd.Chore.Minute, t.now.Location())
	default:
		f.Until = t.now.Add(time.Duration(max(a.Hours, 1)) * time.Hour)
	}
	a.About = f.About
	e.Act = a
	t.lines = append(t.lines, t.voice().Snoozed(f))
	return t.append(t.note(f))
}

// do answers a wish that is neither record nor question.
func (t *talk) do(a reading.Do) error {
	switch a.What {
	case "start":
		t.lines = append(t.lines, t.voice().Welcome())
		if t.pending != nil && t.pending.Setup != "" { // who starts again is where they were
			text, labels := t.voice().SetupQuestion(t.pending.Setup)
			t.lines, t.buttons = append(t.lines, text), rows(labels)
			return nil
		}
		// Who may not set up is not asked, nor who joins while somebody else is at it.
		t.setup = t.m.From.Role != store.Helper && !t.s.settingUp()
	case "skip":
		if t.pending == nil || t.pending.Setup == "" {
			t.lines = append(t.lines, t.voice().NothingToSkip())
			return nil
		}
		t.setup = true
		return t.append(t.note(model.Setting{Key: model.SetSkipped, Text: t.pending.Setup}))
	case "cancel":
		if t.pending == nil {
			t.lines = append(t.lines, t.voice().NothingToSkip())
			return nil
		}
		t.lines = append(t.lines, t.voice().Dropped())
		return t.append(t.note(model.Settled{Question: t.pending.ID, How: "dropped"}))
	case "invite":
		t.invite()
	case aboutImport:
		if a.Arg == "" {
			t.lines = append(t.lines, t.voice().Do(a.What))
			return nil
		}
		t.takeIn(a.Arg)
	case "export", "report", "calendar":
		t.give(a.What, a.Arg)
	case "sitter":
		t.lines = append(t.lines, answer.SitterSheet(t.s.Herd, t.now))
	case "delete herd", "forget me", "remove person", "hand over", "people":
		t.leave(leaveWishes[a.What], a)
	case "privacy":
		place := ""
		if t.s.Forecasts && t.s.Herd.Place != nil {
			place = t.s.Herd.Place.String()
		}
		t.lines = append(t.lines, t.voice().Privacy(sentDays, failedDays, place))
	case "settings":
		t.lines = append(t.lines, t.voice().Help(a.What))
	default:
		t.lines = append(t.lines, t.voice().Do(a.What))
	}
	return nil
}
