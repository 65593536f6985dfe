package bot

import (
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Undelivered takes back that a nudge was told where it reached no chat before
// it was too old: what it was about falls due again as if it had never been
// said. That is done once for a key, so that a nudge that is never in time does
// not go round and round.
func (d *Desk) Undelivered(tx *store.Tx, herd store.HerdID, key string, now time.Time) error {
	reached, err := tx.Deliveries(herd, key)
	if err != nil || len(reached) > 0 {
		return err
	}
	s, err := d.State(tx, herd)
	if err != nil {
		return err
	}
	var told []store.Envelope
	for _, e := range s.Journal {
		if t, ok := e.Fact.(model.Told); ok && t.Key == key {
			told = append(told, e)
		}
	}
	if len(told) != 1 || s.voided[told[0].ID] {
		return nil
	}
	t := talk{s: s, now: now.In(s.Zone)}
	if err := t.keep(tx, model.Void{Record: told[0].ID, Why: "undelivered"}); err != nil {
		return err
	}
	return tx.SetLookAgain(herd, now)
}
