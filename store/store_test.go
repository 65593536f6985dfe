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

func newFarm(t testing.TB, tx *Tx) farm {
	t.Helper()
	f, err := makeFarm(tx)
	require.NoError(t, err)
	return f
}

func makeFarm(tx *Tx) (f farm, err error) {
	if f.herd, err = tx.CreateHerd("Long Acre", "America/Chicago", noon); err != nil {
		return f, err
	}
	if f.person, err = tx.CreatePerson("Ann"); err != nil {
		return f, err
	}
	if err = tx.Join(f.herd, f.person, Owner); err != nil {
		return f, err
	}
	c, err := tx.ChatOf("telegram", "4711", false)
	if err != nil {
		return f, err
	}
	f.chat = c.ID
	c.Herd, c.Person = f.herd, f.person
	return f, tx.SaveChat(c)
}

func (f farm) envelope(fact model.Fact) Envelope {
	return Envelope{
		Herd: f.herd, On: model.DayOf(noon), At: noon, SaidAt: noon.Add(time.Minute), By: f.person, ByName: "Ann",
		Source: Source{Chat: f.chat, Message: "17"}, Text: "as it was said", Judged: "certain", Fact: fact,
	}
}

// season is so many records of the usual mixture, a few minutes apart.
func (f farm) season(count int) []Envelope {
	out := make([]Envelope, count)
	for i := range out {
		var fact model.Fact
		switch i % 4 {
		case 0:
			fact = model.Refill{FeedKg: model.Float(81.65 + float64(i)), Full: true}
		case 1:
			fact = model.Water{Barrel: "barrel 2", Full: true}
		case 2:
			fact = model.Weigh{Animals: []string{"Dot", "Pru"}, GirthCm: 60 + float64(i)/10}
		case 3:
			fact = model.Weather{HighC: model.Float(30.5), LowC: model.Float(19)}
		}
		out[i] = f.envelope(fact)
		out[i].At = noon.Add(time.Duration(i) * 7 * time.Minute)
		out[i].On = model.DayOf(out[i].At)
		out[i].SaidAt = out[i].At
	}
	return out
}
