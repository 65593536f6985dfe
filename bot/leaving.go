package bot

import (
	"encoding/json"
	"fmt"
	"strings"
	"time"
	"unicode"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// leaving is a wish that was put to a person once more: it is carried out when
// they type what they were asked to type, soon, and let be by anything else they
// say. No name stands in it.
type leaving struct {
	What leaveWhat      `json:"what"`
	Who  store.PersonID `json:"who,omitempty"`
	At   time.Time      `json:"at"`
}

// leavingStands is how long it can be confirmed.
const leavingStands = 10 * time.Minute

func leavingName(m Message) string { return store.PersonValue("leaving", m.Herd, m.From.Person) }

// takeLeaving gives what waits for the person's word, by its value, and forgets of
// it: whatever they say now decides it.
func takeLeaving(tx *store.Tx, m Message, v string) (*leaving, error) {
	if v == "" {
		return nil, nil
	}
	var l leaving
	if err := json.Unmarshal([]byte(v), &l); err != nil {
		return nil, fmt.Errorf("what waits to be confirmed: %w", err)
	}
	return &l, tx.SetValue(leavingName(m), "")
}

func (l leaving) keep(tx *store.Tx, m Message) error {
	b, err := json.Marshal(l)
	if err != nil {
		return fmt.Errorf("what waits to be confirmed: %w", err)
	}
	return tx.SetValue(leavingName(m), string(b))
}

// PersonOrHerd is what is gone after a message.
type PersonOrHerd string

// What can be gone.
const (
	HerdGone   PersonOrHerd = "herd"
	PersonGone PersonOrHerd = "person" // who spoke
)

// Farewell is the last word to a chat of which nothing is kept: it is said once
// the transaction is committed, and stands in no outbox. The chat is as it was.
type Farewell struct {
	Chat store.Chat
	Text string
}

// leave is one such wish on its way, in its transaction.
type leave struct {
	d    *Desk
	tx   *store.Tx
	s    *State
	m    Message
	v    wording.Voice
	now  time.Time
	team []store.Member
	mine store.Member // who speaks, as the store has it now

	farewells []Farewell
}

func (d *Desk) newLeave(tx *store.Tx, s *State, m Message) (*leave, error) {
	now := m.At.In(s.Zone)
	l := &leave{d: d, tx: tx, s: s, m: m, now: now, v: wording.Voice{Herd: s.Herd, Now: now}, mine: m.From}
	var err error
	l.team, err = tx.Members(m.Herd)
	for _, p := range l.team {
		if p.Person == m.From.Person {
			l.mine = p
		}
	}
	return l, err
}

// confirmed takes a message as the answer to what waits for it. done is false
// where it is something else, which lets it be.
func (d *Desk) confirmed(tx *store.Tx, s *State, m Message, was leaving) (out Outcome, done bool, err error) {
	l, err := d.newLeave(tx, s, m)
	if err != nil {
		return Outcome{}, false, err
	}
	typed, err := l.typed(was)
	if err != nil || m.Edit || m.Pressed || m.Medium != "" || plain(m.Text) == "" || plain(m.Text) != plain(typed) {
		return Outcome{}, false, err
	}
	if l.now.Sub(was.At) > leavingStands {
		return l.say(l.v.TooLate()), true, nil
	}
	switch was.What {
	case leaveForget:
		out, err = l.forget()
	case leaveDelete:
		out, err = l.delete()
	default:
		out, err = l.handOver(was.Who)
	}
	return out, true, err
}

// typed is what has to be typed; empty where that cannot be done any more.
func (l *leave) typed(was leaving) (string, error) {
	if was.What != leaveForget && l.mine.Role != store.Owner {
		return "", nil
	}
	switch was.What {
	case leaveForget:
		return typable(l.mine.Name), nil
	case leaveDelete:
		return typable(l.s.Row.Name), nil
	}
	to, ok, err := l.tx.Member(l.m.Herd, was.Who)
	if err != nil || !ok {
		return "", err
	}
	return to.Name, nil
}

// typable is a name, or what is typed in its place where it has nothing in it
// that can be typed.
func typable(name string) string {
	if plain(name) == "" {
		return wording.AllOfIt()
	}
	return name
}

// plain is a text by its letters and digits alone.
func plain(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, text)
}

// peopleFor is the names of a herd's people, where a text may speak of them.
func peopleFor(tx *store.Tx, m Message) (names []string, err error) {
	if !reading.OfPeople(m.Text) {
		return nil, nil
	}
	team, err := tx.Members(m.Herd)
	for _, p := range team {
		names = append(names, p.Name)
	}
	return names, err
}

// leave answers a wish that ends something, and says of one that waited for the
// person's word that it is let be.
func (d *Desk) leave(tx *store.Tx, m Message, was *leaving, out *Outcome) error {
	lapsed := was != nil && out.At.Sub(was.At) <= leavingStands
	if out.Leave == nil && !lapsed {
		return nil
	}
	s, err := d.State(tx, m.Herd)
	if err != nil {
		return err
	}
	l, err := d.newLeave(tx, s, m)
	if err != nil {
		return err
	}
	if w := out.Leave; w != nil {
		text, err := l.answer(*w)
		if err != nil {
			return err
		}
		out.Farewells = l.farewells
		out.Replies = append(out.Replies, Reply{Text: text, Entries: w.entries})
		return nil
	}
	if len(out.Replies) == 0 {
		out.Replies = []Reply{{}}
	}
	r := &out.Replies[0]
	r.Text = strings.TrimSuffix(l.v.LetBe()+"\n"+r.Text, "\n")
	return nil
}

func (l *leave) say(text string) Outcome {
	return Outcome{At: l.now, Replies: []Reply{{Text: text, Entries: []reading.Entry{{
		Act: reading.None{Reason: "confirmed"}, On: model.DayOf(l.now),
	}}}}}
}

// answer answers a wish that was just voiced.
func (l *leave) answer(w Leave) (string, error) {
	c, err := l.tx.Chat(l.m.Chat)
	switch {
	case err != nil:
		return "", err
	case c.Group && w.What != leavePeople: // it is confirmed in private only
		return wording.PrivateOnly(), nil
	}
	switch w.What {
	case leaveDelete:
		return l.askDelete()
	case leaveForget:
		return l.askForget()
	case leaveRemove:
		return l.remove(w.Who)
	case leaveHandOver:
		return l.askHandOver(w.Who)
	}
	names, roles := l.people()
	return l.v.People(l.s.Row.Name, names, roles, l.mine.Role == store.Owner), nil
}

func (l *leave) people() (names, roles []string) {
	for _, m := range l.team {
		names, roles = append(names, m.Name), append(roles, string(m.Role))
	}
	return names, roles
}
