package bot

import (
	"slices"
	"strings"
	"time"
	"unicode/utf8"

	"troughbell/bot/answer"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Outcome is what one message leads to: what is to be kept, and what is
// answered. Nothing has been written yet.
type Outcome struct {
	// At is the message's moment, in the zone that holds after it.
	At time.Time
	// New is the records to append, in order. Their IDs are those that the
	// journal will give them.
	New     []store.Envelope
	Replies []Reply
	// Invite is what a one-time code is wanted for; the desk makes it.
	Invite *Invite
	// Give is the documents wanted; the desk makes them.
	Give []Wanted
	// Leave is a wish that ends something; the desk answers it.
	Leave *Leave
	// Farewells are last words, to be said after the commit and kept nowhere.
	Farewells []Farewell
	// Gone says that the herd, or who spoke, is there no more: nothing is to be
	// queued or noted of the message.
	Gone PersonOrHerd
	// Keep is a file that waits until its sender says what becomes of it, and TakeIn
	// the key of one that is to be taken in; the desk does both.
	Keep   *store.Upload
	TakeIn string
	// Asked is the question to remember for a "why?"; nil if none was asked.
	Asked *reading.Ask
}

// MaxText is the longest text taken, in characters: Telegram's own limit.
const MaxText = 4096

// Respond works out what a message leads to. It is pure: the same state and
// message give the same outcome. asked is the question this person asked last.
func Respond(s *State, m Message, asked *reading.Ask) (Outcome, error) {
	m.Text = plainly(m.Text)
	t := &talk{before: s, s: s, m: m, asked: asked}
	t.now = m.At.In(s.Zone)
	if m.Upload != nil {
		err := t.upload()
		return t.out, err
	}
	if m.Medium != "" {
		return t.say(t.voice().Medium(m.Medium)), nil
	}
	if !utf8.ValidString(m.Text) || utf8.RuneCountInString(m.Text) > MaxText {
		return t.say(t.voice().Unreadable()), nil
	}
	t.m.Text = reading.Visible(m.Text)
	if m.Edit {
		if done, err := t.takeBack(); done || err != nil {
			return t.out, err
		}
	}
	if f, ok := t.answersFade(); ok {
		err := t.fade(f)
		return t.out, err
	}
	if err := t.read(); err != nil {
		return Outcome{}, err
	}
	t.looksAhead()
	t.guardDrugs()
	if err := t.carryOut(); err != nil {
		return Outcome{}, err
	}
	t.out.At = t.now
	return t.out, nil
}

// talk is one message on its way from text to outcome.
type talk struct {
	before *State // as it was when the message came
	s      *State // as it is with what the message has led to so far
	m      Message
	now    time.Time
	asked  *reading.Ask

	pending *reading.Pending
	r       reading.Reading
	out     Outcome

	recorded []reading.Entry // facts recorded, for the acknowledgement
	lines    []string        // what is answered beside it
	buttons  [][]string
	setup    bool // the message is part of setting up
	closed   bool // it ends that, and the set-up is summed up
	typed    bool // what is answered asks for a word or a number
}

func (t *talk) voice() wording.Voice {
	return wording.Voice{Herd: t.s.Herd, Now: t.now, Forecasts: t.s.Forecasts}
}

func (t *talk) source() store.Source { return store.Source{Chat: t.m.Chat, Message: t.m.ID} }

func (t *talk) say(text string) Outcome {
	t.out.At = t.now
	t.out.Replies = []Reply{{Text: text, Entries: []reading.Entry{{
		Act: reading.None{Reason: reading.NoneUnknown}, On: model.DayOf(t.now),
	}}}}
	return t.out
}

// append adds records to the outcome and takes them into the state.
func (t *talk) append(es ...store.Envelope) error {
	for i := range es {
		es[i].Herd, es[i].SaidAt = t.s.Row.ID, t.now
		es[i].By, es[i].ByName = t.m.From.Person, t.m.From.Name
		es[i].Source, es[i].Text = t.source(), t.m.Text
		es[i].Zone = t.now.Location().String()
		es[i].ID = store.RecordID(int64(len(t.s.Journal) + i + 1))
	}
	t.out.New = append(t.out.New, es...)
	s, err := t.s.with(es)
	t.s = s
	return err
}

// note makes a record of the program's own.
func (t *talk) note(f model.Fact) store.Envelope {
	return store.Envelope{On: model.DayOf(t.now), At: t.now, Judged: "certain", Fact: f}
}

// keep appends a record of the program's own that no message led to.
func (t *talk) keep(tx *store.Tx, f model.Fact) error {
	e := t.note(f)
	e.Herd, e.SaidAt, e.Zone = t.s.Row.ID, t.now, t.now.Location().String()
	return tx.Append(&e)
}

// takeBack undoes what the earlier version of an edited message recorded. It
// reports true where there is nothing more to do: the text is the same.
func (t *talk) takeBack() (bool, error) {
	text, known := t.s.knows(t.source())
	if !known {
		t.m.Edit = false // handled as new, once
		return false, nil
	}
	if text == t.m.Text {
		t.out.At = t.now
		return true, nil
	}
	var voids []store.Envelope
	for _, e := range t.s.from(t.source()) {
		q, ok := e.Fact.(model.Question)
		if !ok {
			voids = append(voids, t.note(model.Void{Record: e.ID, Why: "edit"}))
			continue
		}
		for _, a := range t.s.confirmedBy(e.ID, q.About) {
			voids = append(voids, t.note(model.Void{Record: a.ID, Why: "edit"}))
		}
		if t.s.isOpen(e.ID) {
			voids = append(voids, t.note(model.Settled{Question: e.ID, How: "dropped"}))
		}
	}
	return false, t.append(voids...)
}

// read reads the text, in the zone that it states where it states one and the
// message's clock is a wall clock.
func (t *talk) read() error {
	var err error
	if t.pending, err = t.s.pending(t.m, t.now); err != nil {
		return err
	}
	t.r = t.readOnce()
	t.spillBefore()
	if zone := statedZone(t.r); zone != nil && t.m.Wall && zone.String() != t.now.Location().String() {
		y, mo, d := t.now.Date()
		seconds := time.Duration(t.now.Second()) * time.Second
		t.now = model.DateDay(y, mo, d).At(model.MinuteOf(t.now), zone).Add(seconds)
		t.r = t.readOnce()
		keepZone(t.r, zone)
	}
	return nil
}

// keepZone has a reading state the zone that its text stated before the clock
// was put into it: "it is 7:40 am here" would now state yet another.
func keepZone(r reading.Reading, zone *time.Location) {
	for i, e := range r.Entries {
		f, ok := e.Act.(reading.Fact)
		if !ok {
			continue
		}
		if set, ok := f.Fact.(model.Setting); ok && set.Key == model.SetZone {
			set.Text = zone.String()
			r.Entries[i].Act = reading.Fact{Fact: set}
		}
	}
}

func statedZone(r reading.Reading) *time.Location {
	for _, e := range r.Entries {
		if f, ok := e.Act.(reading.Fact); ok {
			if set, ok := f.Fact.(model.Setting); ok && set.Key == model.SetZone {
				if loc, err := time.LoadLocation(set.Text); err == nil {
					return loc
				}
			}
		}
	}
	return nil
}

func (t *talk) context() reading.Context {
	c := reading.Context{
		Now: t.now, Herd: t.s.Herd, LastAsked: t.asked,
		Before: t.s.before(t.m.From.Person, store.Source{}), People: t.m.People,
	}
	if t.m.Edit {
		c.Before = t.s.before(t.m.From.Person, t.source())
	}
	if t.pending != nil && t.pending.Setup == "" {
		c.Pending = t.pending
	}
	if t.m.ReplyTo != "" {
		c.ReplyTo = recorded(t.s.spokenFrom(store.Source{Chat: t.m.Chat, Message: t.m.ReplyTo}))
	}
	if told, ok := t.s.lastNudge(t.m.ReplyNudge); ok {
		c.LastNudge = told.About
	}
	return c
}

func (t *talk) readOnce() reading.Reading {
	c := t.context()
	if t.pending != nil && t.pending.Setup != "" {
		return readSetup(c, t.pending, t.m.Text)
	}
	if c.Pending != nil && declines(t.m.Text, c.Pending.Labels) {
		return reading.Reading{Entries: []reading.Entry{{
			Act: reading.Do{What: "cancel"}, On: model.DayOf(t.now),
		}}}
	}
	return reading.Read(c, t.m.Text)
}

// declines reports whether a text turns a question down whose answers are
// things or numbers; where "no" is one of its labels it is an answer.
func declines(text string, labels []string) bool {
	text = strings.ToLower(strings.Trim(strings.TrimSpace(text), ".!"))
	for _, l := range labels {
		if strings.EqualFold(l, text) {
			return false
		}
	}
	switch text {
	case "no", "nope", "none", "neither", "nothing", "no one", "never mind", "nevermind", "nvm", "forget it", "skip it", "drop it":
		return true
	}
	return false
}

// carryOut does what the text says and words the reply.
func (t *talk) carryOut() error {
	card := t.urgentCard()
	cardOnly := card != "" && t.onlyNone() // nothing to say beside it
	for i := range t.r.Entries {
		if cardOnly {
			break
		}
		if err := t.act(&t.r.Entries[i]); err != nil {
			return err
		}
	}
	if err := t.explain(); err != nil {
		return err
	}
	if t.r.Answers && t.pending != nil {
		if err := t.append(t.note(model.Settled{Question: t.pending.ID, How: howSettled(t.r)})); err != nil {
			return err
		}
	}
	if err := t.implyUnits(); err != nil {
		return err
	}
	reply := Reply{Urgent: card != "" || alarmed(t.r.Entries), Entries: t.r.Entries, Answers: map[int]map[string]any{}}
	v := t.voice()
	var parts []string
	for _, l := range schedule.HeldAlarms(t.s.Herd, t.now) {
		parts = append(parts, v.Nudged(l))
	}
	if card != "" {
		parts = append(parts, card)
	}
	ack := len(parts)
	effects := v.Effects(t.s.Herd, t.recorded)
	if len(t.recorded) > 0 {
		parts = append(parts, v.Recorded(t.recorded, effects))
		t.typed = t.typed || slices.ContainsFunc(effects, wording.Effect.Asks)
	}
	parts = append(parts, t.lines...)
	if t.m.Beside {
		parts = append(parts, v.Import("beside"))
	}
	if len(t.r.Left) > 0 && card == "" && !t.lost() {
		parts = append(parts, v.Left(t.r.Left))
	}
	for i, e := range t.r.Entries {
		ask, ok := e.Act.(reading.Ask)
		if !ok {
			continue
		}
		if t.m.From.Role == store.Helper && tellsMoney(ask) {
			parts = append(parts, v.Forbidden("costs"))
			continue
		}
		a, err := t.whyNudge(ask)
		if err != nil {
			return err
		}
		if a.Text == "" {
			a = answer.To(t.s.Herd, t.now, ask, t.asked)
		}
		if a.Data != nil {
			reply.Answers[i] = a.Data
		}
		reply.Pictures = append(reply.Pictures, t.pictureOf(a, ask)...)
		parts = append(parts, a.Text)
		t.buttons = append(t.buttons, a.Buttons...)
		if ask.Topic != "why" {
			t.out.Asked = &ask
		}
	}
	questions, err := t.ask(&reply)
	if err != nil {
		return err
	}
	if t.closed && len(t.recorded) > 0 {
		parts[ack] = v.Recorded(t.recorded, v.Beside(effects))
	}
	parts = append(parts, questions...)
	reply.Text = strings.Join(parts, "\n")
	reply.Buttons = t.buttons
	reply.Typed = len(t.buttons) == 0 && (t.typed || len(reply.Questions) > 0)
	if reply.Text != "" {
		t.out.Replies = append(t.out.Replies, reply)
	}
	return nil
}

// lost reports whether nothing at all of the text was understood: then it is not
// quoted back on top of saying so.
func (t *talk) lost() bool {
	for _, e := range t.r.Entries {
		if n, ok := e.Act.(reading.None); !ok || n.Reason != reading.NoneUnknown {
			return false
		}
	}
	return true
}

// ask puts the questions that the message raises, and the next one of setting
// up where that goes on.
func (t *talk) ask(reply *Reply) ([]string, error) {
	var out []string
	asked := false
	for i, e := range t.r.Entries {
		c, ok := e.Act.(reading.Clarify)
		if !ok {
			continue
		}
		text, labels := t.voice().Question(c)
		q, err := packQuestion(c, text, labels, t.m.Text, "")
		if err != nil {
			return nil, err
		}
		if err := t.append(t.note(q)); err != nil {
			return nil, err
		}
		reply.question(i, text, labels)
		out, asked = append(out, text), true
		t.buttons = rows(labels)
	}
	if asked || !t.setup {
		return out, nil
	}
	text, err := t.nextSetup()
	if text != "" {
		out = append(out, text)
	}
	return out, err
}

// rows lays labels out two a row, the way thumbs like them.
func rows(labels []string) [][]string {
	var out [][]string
	for len(labels) > 2 {
		out, labels = append(out, labels[:2]), labels[2:]
	}
	if len(labels) > 0 {
		out = append(out, labels)
	}
	return out
}
