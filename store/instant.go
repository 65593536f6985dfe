package store

import (
	"fmt"
	"sync"
	"time"
	_ "time/tzdata" // a bare machine has no zones of its own
)

// millis writes an instant; the zero time is 0.
func millis(t time.Time) int64 {
	if t.IsZero() {
		return 0
	}
	return t.UnixMilli()
}

// instant reads what millis wrote.
func instant(ms int64) time.Time {
	if ms == 0 {
		return time.Time{}
	}
	return time.UnixMilli(ms).UTC()
}

var zones sync.Map // IANA name to *time.Location

// Zone finds a zone by its IANA name. Each is read once.
func Zone(name string) (*time.Location, error) {
	if z, ok := zones.Load(name); ok {
		return z.(*time.Location), nil
	}
	z, err := time.LoadLocation(name)
	if err != nil || name == "" || name == "Local" {
		return nil, fmt.Errorf("%q is not the name of a time zone, such as America/Chicago", name)
	}
	zones.Store(name, z)
	return z, nil
}
