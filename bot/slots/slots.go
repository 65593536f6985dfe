// Package slots writes entries in the form that other programs rely on: the
// intent and its slots, SI units in the names, values rounded to 0.01.
package slots

import "troughbell/bot/reading"

// Of gives the entry's slots by name, ready for JSON, "intent" included.
func Of(e reading.Entry) map[string]any {
	panic("slots")
}
