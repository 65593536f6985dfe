package telegram

import (
	"bytes"
	"encoding/json"
	"fmt"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/model"
)

// coarse takes out of an update, before it is kept, where exactly somebody is:
// of a shared position only the tenth of a degree that a forecast needs is left.
func coarse(raw []byte) ([]byte, error) {
	if !bytes.Contains(raw, []byte("location")) && !bytes.Contains(raw, []byte("venue")) {
		return raw, nil
	}
	var t tgbotapi.Update
	if err := json.Unmarshal(raw, &t); err != nil {
		return nil, fmt.Errorf("read an update: %w", err)
	}
	found := false
	for _, m := range []*tgbotapi.Message{t.Message, t.EditedMessage} {
		if m == nil || m.Location == nil && m.Venue == nil {
			continue
		}
		found, m.Venue = true, nil
		if l := m.Location; l != nil {
			p, err := model.CoarsePlace(l.Latitude, l.Longitude)
			if err != nil {
				p = model.Place{}
			}
			m.Location = &tgbotapi.Location{Latitude: p.LatDeg, Longitude: p.LonDeg}
		}
	}
	if !found {
		return raw, nil
	}
	out, err := json.Marshal(t)
	if err != nil {
		return nil, fmt.Errorf("keep an update: %w", err)
	}
	return out, nil
}
