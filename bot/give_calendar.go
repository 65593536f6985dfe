package bot

import (
	"encoding/json"
	"fmt"
	"time"

	"troughbell/bot/document"
	"troughbell/store"
)

// What the calendar files of a herd hold is kept beside its records: the dates in
// them are computed, and what another version of the program, or another forecast,
// once made of them is not to be had from the records. It is the herd's and not
// a person's, since people hand calendars on.
func givenName(herd store.HerdID) string { return store.HerdValue("calendar", herd) }

// calendar makes the calendar file, and what is to be kept of it once it goes out.
func (s *State) calendar(tx *store.Tx, now time.Time) ([]byte, *document.Given, error) {
	var before document.Given
	v, err := tx.Value(givenName(s.Row.ID))
	if err != nil {
		return nil, nil, err
	}
	if v != "" {
		if err := json.Unmarshal([]byte(v), &before); err != nil {
			return nil, nil, fmt.Errorf("the calendar given before: %w", err)
		}
	}
	b, after, err := document.Calendar(s.Herd, s.id(), now, before)
	return b, &after, err
}

func (s *State) keepGiven(tx *store.Tx, g document.Given) error {
	b, err := json.Marshal(g)
	if err != nil {
		return fmt.Errorf("the calendar given: %w", err)
	}
	return tx.SetValue(givenName(s.Row.ID), string(b))
}
