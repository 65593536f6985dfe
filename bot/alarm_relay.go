package bot

import (
	"fmt"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/schedule"
	"troughbell/store"
)

// alarmFresh is how long after its moment an emergency is passed on: an older one is
// history, or comes up by itself.
const alarmFresh = time.Hour

// relayAlarms passes an emergency on to the other chats of the herd at once, with a
// sound: who texted it has the card, the others do not wait for the next nudge.
func (d *Desk) relayAlarms(tx *store.Tx, m Message, out Outcome) error {
	for _, e := range out.New {
		a, ok := e.Fact.(model.Alarm)
		if !ok || a.Over || m.Edit || out.At.Sub(e.At) > alarmFresh {
			continue
		}
		s, err := d.State(tx, m.Herd)
		if err != nil {
			return err
		}
		chats, err := tx.Chats(m.Herd)
		if err != nil {
			return err
		}
		v := wording.Voice{Herd: s.Herd, Now: out.At}
		text := v.Relayed(schedule.AlarmLine(a, e.At), m.From.Name)
		for _, c := range chats {
			if c.ID == m.Chat || c.Dead != "" {
				continue
			}
			// Not a nudge: it is neither counted nor settled by a button of its own.
			o := store.Outgoing{
				Key: fmt.Sprintf("alarm:%d:%d:%s", m.Herd, c.ID, e.ID), Herd: m.Herd, Chat: c.ID, Kind: "reply",
				Text: text, Urgent: true, GoodUntil: out.At.Add(alarmFresh),
			}
			if _, err := tx.Queue(&o); err != nil {
				return err
			}
		}
	}
	return nil
}
