package bot

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"troughbell/store"
)

// underWay marks the target of an edit that is a row of the outbox, because its
// message was being sent when the edit was queued and had no id yet.
const underWay = "row:"

// EditOf is what an edit of a message names it by: its id in the chat, or its row
// while it has none.
func EditOf(o store.Outgoing) string {
	if o.Sent == "" {
		return fmt.Sprint(underWay, o.ID)
	}
	return o.Sent
}

// inPlaceOf has new answers take the place of those that stand in the chat, and
// takes away what is left of these. A file takes no other message's place.
func inPlaceOf(m Message, standing []string, rows []store.Outgoing) []store.Outgoing {
	for i := range rows {
		if len(standing) == 0 {
			return rows
		}
		if rows[i].File == nil {
			rows[i].Kind, rows[i].Edits, standing = "edit", standing[0], standing[1:]
		}
	}
	for _, at := range standing {
		rows = append(rows, store.Outgoing{
			Key: replyKey(m, len(rows)), Herd: m.Herd, Chat: m.Chat, Kind: store.Removal,
			ReplyTo: m.ID, Edits: at, Quiet: true,
		})
	}
	return rows
}

// standingAnswers lists the messages that stand in the chat as the answers to
// the one that was edited, in their order, and drops those not sent yet. Files
// stay as they are.
func standingAnswers(tx *store.Tx, m Message) ([]string, error) {
	rows, err := tx.AnswersTo(m.Chat, m.ID)
	if err != nil {
		return nil, err
	}
	var standing, removed []string
	for _, o := range rows {
		if o.State == store.Pending {
			o.State = store.Dropped
			if err := tx.SaveOutgoing(o); err != nil {
				return nil, err
			}
		}
		if o.Kind == store.Removal {
			if at, err := EditTarget(tx, o); err != nil {
				return nil, err
			} else if o.State != store.Dropped {
				removed = append(removed, at)
			}
			continue
		}
		if o.File != nil { // other words below a picture would say something false of it
			continue
		}
		at, err := EditTarget(tx, o)
		if err != nil {
			return nil, err
		}
		switch {
		case o.Sent != "", at == "" && o.State == store.Sending:
			at = EditOf(o)
		}
		if at != "" && !slices.Contains(standing, at) {
			standing = append(standing, at)
		}
	}
	return slices.DeleteFunc(standing, func(at string) bool { return slices.Contains(removed, at) }), nil
}

// EditTarget is the message in the chat that an outgoing one replaces; empty
// where it replaces none, or one that after all was not sent. It is asked when
// the message's turn to be sent has come: the earlier one's outcome is then
// known, since within a chat nothing overtakes.
func EditTarget(tx *store.Tx, o store.Outgoing) (string, error) {
	number, ok := strings.CutPrefix(o.Edits, underWay)
	if !ok {
		return o.Edits, nil
	}
	row, err := strconv.ParseInt(number, 10, 64)
	if err != nil {
		return "", fmt.Errorf("what outgoing %d replaces: %w", o.ID, err)
	}
	earlier, _, err := tx.OutgoingByID(row)
	if err != nil || earlier.Sent == "" && earlier.State == store.Sending {
		return o.Edits, err
	}
	return earlier.Sent, nil
}
