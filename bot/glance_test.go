package bot

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// A glance counts for the herd as it was glanced at, at that moment and after that
// outage, and for nothing else.
func TestGlance(t *testing.T) {
	anew := func(records int) *State {
		s, err := NewState(store.HerdRow{ID: 1}, aJournal(1, records), time.UTC)
		require.NoError(t, err)
		return s
	}
	s, now := anew(3), time.Date(2026, 6, 13, 7, 0, 0, 0, time.UTC)
	down := now.Add(-5 * time.Hour)
	g := decide(s, now, down)
	again := *s
	again.Row.LookAgain = now // the row may change: nothing rests on it
	require.Same(t, g, g.decided(&again, now, down))
	for name, other := range map[string]*glance{
		"a record more":  g.decided(anew(4), now, down),
		"another moment": g.decided(s, now.Add(time.Minute), down),
		"no outage":      g.decided(s, now, time.Time{}),
		"no glance":      (*glance)(nil).decided(s, now, down),
	} {
		require.NotSame(t, g, other, name)
		require.NotNil(t, other, name)
	}
}
