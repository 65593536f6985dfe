package bot

import (
	"encoding/json"
	"fmt"
	"time"

	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Desk is where messages and the clock come in: it brings a herd's state to
// Respond and to the planner, and keeps what they lead to. One Desk serves all
// herds of a store; a transaction handles one message or one look at a herd.
type Desk struct {
	memory  *memory
	sky     *Sky     // fetches forecasts; nil where none are
	backups *Backups // nil where none are kept

	// Copies lists the copies of the database that the program has made; nil where
	// it makes none.
	Copies func() ([]store.Copy, error)
}

// NewDesk makes a desk.
func NewDesk() *Desk { return &Desk{memory: newMemory()} }

// State is the herd as the transaction sees it. Of its records only those are read
// that are not remembered.
func (d *Desk) State(tx *store.Tx, id store.HerdID) (*State, error) {
	row, err := tx.Herd(id)
	if err != nil {
		return nil, err
	}
	return d.stateOf(tx, row)
}

// stateOf is State, of a herd whose row was read.
func (d *Desk) stateOf(tx *store.Tx, row store.HerdRow) (*State, error) {
	id := row.ID
	if s := d.memory.state(id, row.Seq); s != nil {
		now := *s
		now.Row = row
		return &now, nil
	}
	journal, seq := d.memory.journal(id, row.Seq)
	if seq < row.Seq {
		since, err := tx.JournalSince(id, seq)
		if err != nil {
			return nil, err
		}
		journal = append(journal, since...)
	}
	zone, err := store.Zone(row.Zone)
	if err != nil {
		return nil, fmt.Errorf("herd %q: zone: %w", row.Name, err)
	}
	s, err := NewState(row, journal, zone)
	if err != nil {
		return nil, err
	}
	s.Forecasts = d.sky != nil
	d.memory.keep(id, s)
	return s, nil
}

// Forget drops what is remembered of a herd: after a transaction that wrote to
// it was not committed.
func (d *Desk) Forget(id store.HerdID) { d.memory.forget(id) }

// Handle answers one message and keeps what it says, in the transaction. The
// answer is not queued; see Queue.
func (d *Desk) Handle(tx *store.Tx, m Message) (Outcome, error) {
	row, kept, err := tx.HerdAndValues(m.Herd, leavingName(m), askedName(m))
	if err != nil {
		return Outcome{}, err
	}
	s, err := d.stateOf(tx, row)
	if err != nil {
		return Outcome{}, err
	}
	was, err := takeLeaving(tx, m, kept[0])
	if err != nil {
		return Outcome{}, err
	}
	if was != nil {
		if out, done, err := d.confirmed(tx, s, m, *was); done || err != nil {
			return out, err
		}
	}
	asked, err := readAsked(kept[1])
	if err != nil {
		return Outcome{}, err
	}
	if m.People, err = peopleFor(tx, m); err != nil {
		return Outcome{}, err
	}
	out, err := respond(s, m, asked)
	if err != nil {
		return Outcome{}, err
	}
	for i := range out.Replies {
		if err := out.Replies[i].draw(); err != nil {
			return Outcome{}, err
		}
	}
	if err := tx.Append(pointers(out.New)...); err != nil {
		return Outcome{}, err
	}
	d.memory.more(m.Herd, out.New)
	if err := d.reword(tx, s, out.New, out.At); err != nil {
		return Outcome{}, err
	}
	if out.Invite != nil {
		if err := makeCode(tx, s, m, &out); err != nil {
			return Outcome{}, err
		}
	}
	if err := d.handleFiles(tx, m, &out); err != nil {
		return Outcome{}, err
	}
	if len(out.Give) > 0 {
		if err := d.makeDocuments(tx, m, &out); err != nil {
			return Outcome{}, err
		}
	}
	if err := d.leave(tx, m, was, &out); err != nil {
		return Outcome{}, err
	}
	if out.Asked != nil {
		kept := *out.Asked
		kept.At = out.At
		if err := keepAsked(tx, m, &kept); err != nil {
			return Outcome{}, err
		}
	}
	if len(out.New) > 0 && s.Row.LookAgain.After(out.At) { // what was due may be settled, what was far may be near
		if err := tx.SetLookAgain(m.Herd, out.At); err != nil {
			return Outcome{}, err
		}
	}
	return out, nil
}

func pointers(es []store.Envelope) []*store.Envelope {
	out := make([]*store.Envelope, len(es))
	for i := range es {
		out[i] = &es[i]
	}
	return out
}

func askedName(m Message) string { return store.PersonValue("asked", m.Herd, m.From.Person) }

func lastAsked(tx *store.Tx, m Message) (*reading.Ask, error) {
	v, err := tx.Value(askedName(m))
	if err != nil {
		return nil, err
	}
	return readAsked(v)
}

func readAsked(v string) (*reading.Ask, error) {
	if v == "" {
		return nil, nil
	}
	var a reading.Ask
	if err := json.Unmarshal([]byte(v), &a); err != nil {
		return nil, fmt.Errorf("the last question asked: %w", err)
	}
	return &a, nil
}

func keepAsked(tx *store.Tx, m Message, a *reading.Ask) error {
	b, err := json.Marshal(a)
	if err != nil {
		return fmt.Errorf("the question asked: %w", err)
	}
	return tx.SetValue(askedName(m), string(b))
}

// Push is a nudge in words.
type Push struct {
	Nudge   schedule.Nudge
	At      time.Time
	Text    string
	Buttons [][]string
	Files   []File
}

// Look looks at a herd at the moment now: it keeps that the nudges it gives
// were told, and when to look again. downFrom is since when nobody looked,
// where that was an outage; else zero.
func (d *Desk) Look(tx *store.Tx, id store.HerdID, now, downFrom time.Time) ([]Push, error) {
	row, err := tx.Herd(id)
	if err != nil {
		return nil, err
	}
	return d.look(tx, row, now, downFrom, nil)
}

// look is Look, of a herd that may have been glanced at before.
func (d *Desk) look(tx *store.Tx, row store.HerdRow, now, downFrom time.Time, g *glance) ([]Push, error) {
	id := row.ID
	s, err := d.stateOf(tx, row)
	if err != nil {
		return nil, err
	}
	g = g.decided(s, now, downFrom)
	due, again := g.due, g.again
	now = now.In(s.Zone)
	var out []Push
	open, err := s.asked()
	if err != nil {
		return nil, err
	}
	v := wording.Voice{Herd: s.Herd, Now: now, Open: open}
	t := talk{s: s, now: now}
	for _, n := range due {
		text, labels := v.Nudge(n)
		if n.Standing {
			line, err := d.backupLine(tx, s, v)
			if err != nil {
				return nil, err
			}
			if line != "" {
				text += "\n" + line
			}
		}
		out = append(out, Push{Nudge: n, At: now, Text: text, Buttons: rows(labels)})
		if err := t.keep(tx, n.Told()); err != nil {
			return nil, err
		}
		if err := t.putOdd(tx, v, n); err != nil {
			return nil, err
		}
	}
	if d.sky != nil && s.wantsForecast(now) {
		d.sky.want(id, now)
		if _, next := skyTimes(now); next.Before(again) {
			again = next
		}
	}
	if !again.After(now) { // time must go on, whatever a rule says
		again = now.Add(time.Minute)
	}
	return out, tx.SetLookAgain(id, again)
}

// StillDue reports whether a nudge that was told but not yet delivered is worth
// delivering still: whether nothing since has settled it.
func (d *Desk) StillDue(tx *store.Tx, id store.HerdID, key string, now time.Time) (bool, error) {
	s, err := d.State(tx, id)
	if err != nil {
		return false, err
	}
	var without []store.Envelope
	for _, e := range s.Journal {
		if t, ok := e.Fact.(model.Told); ok && t.Key == key {
			continue
		}
		without = append(without, e)
	}
	untold, err := NewState(s.Row, without, s.Zone)
	if err != nil {
		return false, err
	}
	return schedule.StillDue(untold.Herd, key, now.In(s.Zone)), nil
}
