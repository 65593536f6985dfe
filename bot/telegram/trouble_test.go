package telegram

import (
	"errors"
	"log/slog"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// A full disk is met by every part of the bot at once: the log tells of it in
// two lines, and the pauses grow up to their limit.
func TestTroubleIsToldOnce(t *testing.T) {
	log := &journal{}
	b := New(Config{Store: &store.Store{}, Log: slog.New(slog.NewTextHandler(log, nil))})
	full := &store.Problem{Code: store.Full, Sentence: "There is no room left."}
	parts := []*trouble{{bot: b, what: "polling"}, {bot: b, what: "handling a message"}, {bot: b, what: "reading the outbox"}}
	for range 20 {
		for _, part := range parts {
			part.failed(full)
		}
	}
	last := parts[0].failed(full)
	require.InDelta(t, time.Minute, last, float64(16*time.Second))
	for _, part := range parts {
		part.passed()
		part.passed()
	}
	said := log.String()
	require.Equal(t, 2, strings.Count(said, "\n"), said)
	require.Contains(t, said, "There is no room left.")
	require.Contains(t, said, "the database works again")

	first := parts[0].failed(errors.New("no route to host"))
	require.InDelta(t, time.Second, first, float64(300*time.Millisecond), "it begins anew")
	require.Contains(t, log.String(), "polling fails")
}
