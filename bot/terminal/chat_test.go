package terminal_test

import (
	"bytes"
	"context"
	"io"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/terminal"
	"troughbell/store"
)

// screen is an output that can be read while it is written.
type screen struct {
	mu  sync.Mutex
	buf bytes.Buffer
}

func (s *screen) Write(b []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.buf.Write(b)
}

func (s *screen) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.buf.String()
}

// clock is a clock that the test sets.
type clock struct {
	mu sync.Mutex
	at time.Time
}

func (c *clock) now() time.Time {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.at
}

func (c *clock) set(t time.Time) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.at = t
}

var chicago = func() *time.Location {
	l, err := time.LoadLocation("America/Chicago")
	if err != nil {
		panic(err)
	}
	return l
}()

// friday is the evening before a chore day.
var friday = time.Date(2026, 5, 15, 18, 0, 0, 0, chicago)

// herd makes a herd in a database of its own.
func herd(t *testing.T) (*store.Store, store.HerdID) {
	t.Helper()
	st, err := store.Open(t.Context(), filepath.Join(t.TempDir(), "herd.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	var id store.HerdID
	require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) error {
		id, err = tx.CreateHerd("", chicago.String(), friday)
		return err
	}))
	return st, id
}

// open opens a chat on the herd.
func open(t *testing.T, st *store.Store, id store.HerdID, c *clock) *terminal.Chat {
	t.Helper()
	chat := &terminal.Chat{Store: st, Desk: bot.NewDesk(), Herd: id, Now: c.now}
	require.NoError(t, chat.Open(t.Context()))
	return chat
}

const setUp = "4 pigs came today, 48 lb each. US units, target 265 lb. one feeder, 300 lb. two water barrels, 55 gal each. chore day saturday 7 am\n"

// A nudge appears while the chat is open, once.
func TestNudgesWhileOpen(t *testing.T) {
	st, id := herd(t)
	c := &clock{at: friday}
	chat := open(t, st, id, c)
	r, w := io.Pipe()
	var out screen
	ended := make(chan error)
	go func() { ended <- chat.Run(t.Context(), r, &out) }()
	_, err := io.WriteString(w, setUp)
	require.NoError(t, err)
	_, err = io.WriteString(w, "fence 5.2\n") // taken once the first was answered
	require.NoError(t, err)
	_, err = io.WriteString(w, "\n")
	require.NoError(t, err)
	require.NoError(t, chat.Look(t.Context()))
	require.NotContains(t, out.String(), "\n* ")
	c.set(friday.Add(13 * time.Hour)) // Saturday 7 am
	require.NoError(t, chat.Look(t.Context()))
	require.Equal(t, 1, strings.Count(out.String(), "\n* "), out.String())
	require.NoError(t, chat.Look(t.Context()))
	require.Equal(t, 1, strings.Count(out.String(), "\n* "), "told once")
	require.NoError(t, w.Close())
	require.NoError(t, <-ended)
}

// What fell due while no chat was open is told when one opens.
func TestNudgesAtOpening(t *testing.T) {
	st, id := herd(t)
	c := &clock{at: friday}
	var out screen
	require.NoError(t, open(t, st, id, c).Run(t.Context(), strings.NewReader(setUp), &out))
	c.set(friday.Add(40 * time.Hour)) // Sunday 10 am
	var later screen
	require.NoError(t, open(t, st, id, c).Run(t.Context(), strings.NewReader(""), &later))
	require.True(t, strings.HasPrefix(later.String(), "* "), later.String())
	var again screen
	require.NoError(t, open(t, st, id, c).Run(t.Context(), strings.NewReader(""), &again))
	require.Empty(t, again.String(), "told once")
}

// A chat that is stopped ends without an error and keeps what it has answered.
func TestStopped(t *testing.T) {
	st, id := herd(t)
	chat := open(t, st, id, &clock{at: friday})
	ctx, stop := context.WithCancel(t.Context())
	r, w := io.Pipe()
	var out screen
	ended := make(chan error)
	go func() { ended <- chat.Run(ctx, r, &out) }()
	_, err := io.WriteString(w, "fence 5.2\n")
	require.NoError(t, err)
	_, err = io.WriteString(w, "\n")
	require.NoError(t, err)
	stop()
	require.NoError(t, w.CloseWithError(context.Canceled))
	require.NoError(t, <-ended)
	require.Contains(t, out.String(), "Fence 5.2 kV.")
}
