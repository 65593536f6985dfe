package telegram

import (
	"bytes"
	"encoding/json"
	"fmt"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"

	"troughbell/model"
)

// nowhere is a latitude, in degrees, that is kept for one that is none either: the
// person is to be told that it cannot be read.
const nowhere = 91

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
			m.Location = &tgbotapi.Location{Latitude: nowhere}
			if p, err := model.CoarsePlace(l.Latitude, l.Longitude); err == nil {
				m.Location = &tgbotapi.Location{Latitude: p.LatDeg, Longitude: p.LonDeg}
			}
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
