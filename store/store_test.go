package store

import (
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

var noon = time.Date(2026, 5, 16, 12, 0, 0, 0, time.UTC)

// newStore opens a fresh file, closed at the end of the test.
func newStore(t testing.TB) *Store {
	t.Helper()
	return openStore(t, filepath.Join(t.TempDir(), "herd.db"), Options{Ephemeral: true})
}

func openStore(t testing.TB, path string, o Options) *Store {
	t.Helper()
	s, err := Open(t.Context(), path, o)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, s.Close()) })
	return s
}

func write(t testing.TB, s *Store, f func(*Tx)) {
	t.Helper()
	require.NoError(t, s.Write(t.Context(), func(tx *Tx) error { f(tx); return nil }))
}

func read(t testing.TB, s *Store, f func(*Tx)) {
	t.Helper()
	require.NoError(t, s.Read(t.Context(), func(tx *Tx) error { f(tx); return nil }))
}

// farm is a herd with an owner and a private chat.
type farm struct {
	herd   HerdID
	person PersonID
	chat   ChatID
}

func newFarm(t testing.TB, tx *Tx) (f farm) {
	t.Helper()
	var err error
	f.herd, err = tx.CreateHerd("Long Acre", "America/Chicago", noon)
	require.NoError(t, err)
	f.person, err = tx.CreatePerson("Ann")
	require.NoError(t, err)
	require.NoError(t, tx.Join(f.herd, f.person, Owner))
	c, err := tx.ChatOf("telegram", "4711", false)
	require.NoError(t, err)
	f.chat = c.ID
	c.Herd, c.Person = f.herd, f.person
	require.NoError(t, tx.SaveChat(c))
	return f
}

func (f farm) envelope(fact model.Fact) Envelope {
	return Envelope{
		Herd: f.herd, On: model.DayOf(noon), At: noon, SaidAt: noon.Add(time.Minute), By: f.person, ByName: "Ann",
		Source: Source{Chat: f.chat, Message: "17"}, Text: "as it was said", Judged: "certain", Fact: fact,
	}
}
