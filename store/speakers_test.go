package store

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// whoSpeaks asks for a speaker in a transaction of its own.
func whoSpeaks(t *testing.T, in func(context.Context, func(*Tx) error) error, external string) (c Chat, m *Member) {
	t.Helper()
	require.NoError(t, in(t.Context(), func(tx *Tx) (err error) {
		c, m, _, err = tx.FindSpeaker("telegram", external)
		return err
	}))
	return c, m
}

func peopleAsOf(t *testing.T, s *Store) (n int64) {
	t.Helper()
	require.NoError(t, s.Read(t.Context(), func(tx *Tx) error {
		var known bool
		n, known = tx.PeopleAsOf()
		require.True(t, known)
		return nil
	}))
	return n
}

// Who speaks is remembered, and whatever changes people or chats is seen at once: by
// the transaction that does it, and by all that come after.
func TestSpeakersAreRememberedUntilTheyChange(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	var h household
	write(t, s, func(tx *Tx) {
		var err error
		h, err = settle(tx, "quillwort", 12)
		require.NoError(t, err)
	})
	asked := func(f func()) int {
		before := s.speakers.count()
		f()
		require.Equal(t, before, s.speakers.count(), "nothing changed")
		s.speakers.mu.Lock()
		defer s.speakers.mu.Unlock()
		return len(s.speakers.of)
	}
	const owner, helper = "7quillwort0", "7quillwort1"
	require.Equal(t, 2, asked(func() {
		whoSpeaks(t, s.Read, owner)
		whoSpeaks(t, s.Write, helper)
		whoSpeaks(t, s.Read, "unknown")
	}))
	_, m := whoSpeaks(t, s.Write, owner)
	m.Name = "changed by who asked"

	var further HerdID
	steps := []struct {
		what   string
		change func(tx *Tx, c Chat, m *Member) error
	}{
		{"the chat is dead", func(tx *Tx, c Chat, _ *Member) error { c.Dead = "gone"; return tx.SaveChat(c) }},
		{"the chat is reached again", func(tx *Tx, c Chat, _ *Member) error { c.Dead = ""; return tx.SaveChat(c) }},
		{"another role", func(tx *Tx, c Chat, m *Member) error { return tx.Join(c.Herd, m.Person, Family) }},
		{"operator", func(tx *Tx, c Chat, _ *Member) error { return tx.SetOperator(c.Person) }},
		{"another name", func(tx *Tx, c Chat, _ *Member) error { return tx.Rename(c.Person, "Bo") }},
		{"another herd", func(tx *Tx, c Chat, m *Member) (err error) {
			if further, err = tx.CreateHerd("Long Acre", "UTC", noon); err != nil {
				return err
			}
			if err := tx.Join(further, m.Person, Owner); err != nil {
				return err
			}
			c.Herd = further
			return tx.SaveChat(c)
		}},
		{"that herd is erased", func(tx *Tx, c Chat, _ *Member) error { return tx.EraseHerd(further) }},
	}
	for _, step := range steps {
		t.Run(step.what, func(t *testing.T) {
			before, who := whoSpeaks(t, s.Read, owner)
			fault := errors.New("taken back")
			require.ErrorIs(t, s.Write(t.Context(), func(tx *Tx) error {
				require.NoError(t, step.change(tx, before, who))
				c, m, _, err := tx.FindSpeaker("telegram", owner)
				require.NoError(t, err)
				require.NotEqual(t, fmt.Sprint(before, *who), fmt.Sprint(c, m), "seen where it is done")
				return fault
			}), fault)
			c, m := whoSpeaks(t, s.Read, owner)
			require.Equal(t, before, c)
			require.Equal(t, who, m)
			further = before.Herd
			asOf := peopleAsOf(t, s)
			require.Equal(t, asOf, peopleAsOf(t, s), "nothing changed")
			write(t, s, func(tx *Tx) {
				require.NoError(t, step.change(tx, before, who))
				_, known := tx.PeopleAsOf()
				require.False(t, known, "where it changes")
			})
			require.NotEqual(t, asOf, peopleAsOf(t, s))
			c, m = whoSpeaks(t, s.Read, owner)
			require.NotEqual(t, fmt.Sprint(before, *who), fmt.Sprint(c, *m))
			fresh, err := OpenReader(t.Context(), path)
			require.NoError(t, err)
			require.NoError(t, fresh.Read(t.Context(), func(tx *Tx) error {
				_, known := tx.PeopleAsOf()
				require.False(t, known, "another process changes them")
				return nil
			}))
			wantC, wantM := whoSpeaks(t, fresh.Read, owner)
			require.NoError(t, fresh.Close())
			require.Equal(t, wantC, c)
			require.Equal(t, wantM, m)
			c, m = whoSpeaks(t, s.Write, owner)
			require.Equal(t, wantC, c)
			require.Equal(t, wantM, m)
		})
	}
	write(t, s, func(tx *Tx) { require.NoError(t, tx.EraseHerd(h.herd)) })
	_, m = whoSpeaks(t, s.Read, helper)
	require.Nil(t, m)
}

// A read that began before a change neither takes nor leaves what came of it.
func TestSpeakersOfAnEarlierMoment(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	read(t, s, func(tx *Tx) {
		_, err := tx.Chat(f.chat) // from here on it sees this moment
		require.NoError(t, err)
		write(t, s, func(tx *Tx) {
			require.NoError(t, tx.Join(f.herd, f.person, Family))
		})
		_, m := whoSpeaks(t, s.Write, "4711")
		require.Equal(t, Family, m.Role)
		_, m, _, err = tx.FindSpeaker("telegram", "4711")
		require.NoError(t, err)
		require.Equal(t, Owner, m.Role)
	})
	_, m := whoSpeaks(t, s.Write, "4711")
	require.Equal(t, Family, m.Role)
}

// Every statement that changes people or chats is known by its words.
func TestStatementsThatChangePeople(t *testing.T) {
	for query, want := range map[string]bool{
		"INSERT INTO chat (id) VALUES (?)":                      true,
		"UPDATE person SET name = '' WHERE id = ?":              true,
		"DELETE FROM member WHERE herd = ?":                     true,
		"UPDATE outgoing SET chat = ? WHERE chat = ?":           false,
		"SELECT 1 FROM chat WHERE id = ?":                       false,
		"INSERT INTO outgoing (chat, herd) VALUES (?, ?)":       false,
		"UPDATE herd SET paused = (SELECT 1) WHERE id = ?":      false,
		"DELETE FROM chat WHERE id = ?":                         true,
		"INSERT INTO record (person, chat, said_by) VALUES (?)": false,
	} {
		require.Equal(t, want, changesPeople.MatchString(query), query)
	}
}
