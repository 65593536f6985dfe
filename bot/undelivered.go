package bot

import (
	"slices"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// Undelivered takes back that a nudge was told where it reached no chat before
// it was too old: what it was about falls due again as if it had never been
// said. That is done once for a key, so that a nudge that is never in time does
// not go round and round.
func (d *Desk) Undelivered(tx *store.Tx, herd store.HerdID, key string, now time.Time) error {
	s, err := d.State(tx, herd)
	if err != nil {
		return err
	}
	if back, err := s.untell(tx, key, now, "undelivered"); err != nil || !back {
		return err
	}
	return tx.SetLookAgain(herd, now)
}

// untell takes back that a nudge was told, with the questions that it put. false:
// it was told for good, since it reached a chat or was taken back before.
func (s *State) untell(tx *store.Tx, key string, now time.Time, why string) (bool, error) {
	reached, err := tx.Deliveries(s.Row.ID, key)
	if err != nil || len(reached) > 0 {
		return false, err
	}
	var told []string
	var put []string
	for _, e := range s.Journal {
		switch f := e.Fact.(type) {
		case model.Told:
			if f.Key == key {
				told = append(told, e.ID)
			}
		case model.Question:
			of, err := nudgeKey(f.Body)
			if err != nil {
				return false, err
			}
			if of == key && s.isOpen(e.ID) {
				put = append(put, e.ID)
			}
		}
	}
	if len(told) != 1 || s.voided[told[0]] {
		return false, nil
	}
	t := talk{s: s, now: now.In(s.Zone)}
	for _, record := range slices.Concat(told, put) {
		if err := t.keep(tx, model.Void{Record: record, Why: why}); err != nil {
			return false, err
		}
	}
	return true, nil
}

// reword takes back the nudges that wait to be sent where the units were switched
// since, so that the next look words them anew. was is the herd before. One that
// reached some chat already goes out to the others as it is, and so does the word
// that the program was off, which no later look knows of.
func (d *Desk) reword(tx *store.Tx, was *State, added []store.Envelope, now time.Time) error {
	if !slices.ContainsFunc(added, mayTurnUnits) {
		return nil
	}
	s, err := d.State(tx, was.Row.ID)
	if err != nil {
		return err
	}
	if (wording.Voice{Herd: s.Herd}).Metric() == (wording.Voice{Herd: was.Herd}).Metric() {
		return nil
	}
	rows, err := tx.Untold(s.Row.ID)
	if err != nil {
		return err
	}
	again := map[string]bool{}
	for _, o := range rows {
		back, looked := again[o.Told]
		if !looked && !schedule.OfOutage(o.Told) {
			if back, err = s.untell(tx, o.Told, now, "units"); err != nil {
				return err
			}
		}
		again[o.Told] = back
		if !back {
			continue
		}
		o.State = store.Dropped
		if err := tx.SaveOutgoing(o); err != nil {
			return err
		}
	}
	return nil
}

// mayTurnUnits reports whether a record sets the units, or takes one back that may
// have set them.
func mayTurnUnits(e store.Envelope) bool {
	switch f := e.Fact.(type) {
	case model.Setting:
		return f.Key == model.SetUnits
	case model.Void:
		return true
	}
	return false
}
