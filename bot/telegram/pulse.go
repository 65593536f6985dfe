package telegram

import (
	"fmt"
	"strconv"
	"time"

	"troughbell/store"
)

// valueSent is the name of the value that says when Telegram took a message
// last, in Unix seconds.
const valueSent = "telegram.sent"

// Pulse is when Telegram answered a poll last, and when it took a message last;
// zero: never.
func Pulse(tx *store.Tx) (polled, sent time.Time, err error) {
	if polled, err = moment(tx, valueSeen); err != nil {
		return polled, sent, fmt.Errorf("when the poll was answered last: %w", err)
	}
	if sent, err = moment(tx, valueSent); err != nil {
		return polled, sent, fmt.Errorf("when a message was sent last: %w", err)
	}
	return polled, sent, nil
}

// moment reads a value that setMoment has written.
func moment(tx *store.Tx, name string) (time.Time, error) {
	v, err := tx.Value(name)
	if err != nil {
		return time.Time{}, err
	}
	return readMoment(v)
}

func readMoment(v string) (time.Time, error) {
	if v == "" {
		return time.Time{}, nil
	}
	n, err := strconv.ParseInt(v, 10, 64)
	if err != nil {
		return time.Time{}, err
	}
	return time.Unix(n, 0), nil
}

func setMoment(tx *store.Tx, name string, t time.Time) error {
	return tx.SetValue(name, strconv.FormatInt(t.Unix(), 10))
}
