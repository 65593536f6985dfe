package store

import (
	"fmt"
	"strings"
)

// Value gives a small fact of the server itself, such as the offset of the poll
// or the time of the last tick; empty if it was never set.
func (tx *Tx) Value(name string) (string, error) {
	var v string
	if _, err := tx.one("SELECT value FROM value WHERE name = ?", []any{name}, &v); err != nil {
		return "", fmt.Errorf("value %s: %w", name, err)
	}
	return v, nil
}

const oneValue = "coalesce((SELECT value FROM value WHERE name = ?), '')"

// Values gives several of them, in the order of their names.
func (tx *Tx) Values(names ...string) ([]string, error) {
	values, args, dest := make([]string, len(names)), make([]any, len(names)), make([]any, len(names))
	for i := range names {
		args[i], dest[i] = names[i], &values[i]
	}
	if _, err := tx.one("SELECT "+oneValue+strings.Repeat(", "+oneValue, len(names)-1), args, dest...); err != nil {
		return nil, fmt.Errorf("values %s: %w", strings.Join(names, ", "), err)
	}
	return values, nil
}

// SetValue keeps what Value gives.
func (tx *Tx) SetValue(name, value string) error {
	_, err := tx.exec("INSERT INTO value (name, value) VALUES (?, ?)"+
		" ON CONFLICT (name) DO UPDATE SET value = excluded.value", name, value)
	if err != nil {
		return fmt.Errorf("value %s: %w", name, err)
	}
	return nil
}

// PersonValue is the name of a value that is about a person in a herd, and goes
// with either of them.
func PersonValue(name string, herd HerdID, person PersonID) string {
	return personValue(name, herd, fmt.Sprint(person))
}

// HerdValue is the name of a value that is about a herd and goes with it.
func HerdValue(name string, herd HerdID) string { return personValue(name, herd, "") }

func personValue(name string, herd HerdID, person string) string {
	return fmt.Sprintf("%s:%d:%s", name, herd, person)
}
