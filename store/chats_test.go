package store

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

func TestChats(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		private, err := tx.Chat(f.chat)
		require.NoError(t, err)
		require.Equal(t, Chat{ID: f.chat, Transport: "telegram", External: "4711", Herd: f.herd, Person: f.person}, private)
		again, err := tx.ChatOf("telegram", "4711", false)
		require.NoError(t, err)
		require.Equal(t, private, again)
		found, ok, err := tx.FindChat("telegram", "4711")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, private, found)
		_, ok, err = tx.FindChat("terminal", "4711")
		require.NoError(t, err)
		require.False(t, ok, "another transport's")
		speaks, member, ok, err := tx.FindSpeaker("telegram", "4711")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, private, speaks)
		want, _, err := tx.Member(f.herd, f.person)
		require.NoError(t, err)
		require.Equal(t, &want, member)
		_, _, ok, err = tx.FindSpeaker("terminal", "4711")
		require.NoError(t, err)
		require.False(t, ok)
		_, err = tx.Chat(99)
		require.ErrorIs(t, err, ErrNotFound)
		require.ErrorIs(t, tx.SaveChat(Chat{ID: 99}), ErrNotFound)

		group, err := tx.ChatOf("telegram", "-12", true)
		require.NoError(t, err)
		require.True(t, group.Group)
		require.Zero(t, group.Herd)
		group.Herd = f.herd
		require.NoError(t, tx.SaveChat(group))
		speaks, member, ok, err = tx.FindSpeaker("telegram", "-12")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, group, speaks)
		require.Nil(t, member, "a group is no person's")
		all, err := tx.Chats(f.herd)
		require.NoError(t, err)
		require.Equal(t, []Chat{private, group}, all)
	})
}

func TestHerdIsPausedWhileNobodyCanBeReached(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		due := func() []HerdID {
			ids, err := tx.Due(noon, 10)
			require.NoError(t, err)
			return ids
		}
		alone, err := tx.CreateHerd("Hill End", "UTC", noon)
		require.NoError(t, err)
		require.Empty(t, due(), "no chat yet")
		f := newFarm(t, tx)
		require.Equal(t, []HerdID{f.herd}, due())
		c, err := tx.Chat(f.chat)
		require.NoError(t, err)
		c.Dead = "blocked"
		require.NoError(t, tx.SaveChat(c))
		require.Empty(t, due())
		h, err := tx.Herd(f.herd)
		require.NoError(t, err)
		require.True(t, h.Paused)
		c.Dead, c.Herd = "", alone
		require.NoError(t, tx.SaveChat(c))
		require.Equal(t, []HerdID{alone}, due(), "the chat now speaks of the other herd")
	})
}

func TestDueInOrder(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		other, err := tx.CreateHerd("Hill End", "UTC", noon)
		require.NoError(t, err)
		c, err := tx.ChatOf("terminal", "", false)
		require.NoError(t, err)
		c.Herd = other
		require.NoError(t, tx.SaveChat(c))
		require.NoError(t, tx.SetLookAgain(f.herd, noon.Add(time.Minute)))
		require.NoError(t, tx.SetLookAgain(other, noon))
		require.ErrorIs(t, tx.SetLookAgain(99, noon), ErrNotFound)
		for _, r := range []struct {
			now   time.Time
			limit int
			want  []HerdID
		}{
			{noon.Add(-time.Millisecond), 0, nil},
			{noon, 0, []HerdID{other}},
			{noon.Add(time.Hour), 0, []HerdID{other, f.herd}},
			{noon.Add(time.Hour), 1, []HerdID{other}},
		} {
			got, err := tx.Due(r.now, r.limit)
			require.NoError(t, err)
			require.Equal(t, r.want, got)
		}
		h, err := tx.Herds()
		require.NoError(t, err)
		require.Len(t, h, 2)
		require.Equal(t, noon.Add(time.Minute), h[0].LookAgain)
	})
}

func TestGroupUnderANewID(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		group, err := tx.ChatOf("telegram", "-12", true)
		require.NoError(t, err)
		group.Herd = f.herd
		require.NoError(t, tx.SaveChat(group))
		// A message came under the new id before the news of it did.
		early, err := tx.ChatOf("telegram", "-100987", true)
		require.NoError(t, err)
		o := Outgoing{Key: "reply", Chat: early.ID, Kind: "reply", Text: "hello"}
		_, err = tx.Queue(&o)
		require.NoError(t, err)
		group.External = "-100987"
		require.NoError(t, tx.SaveChat(group))
		now, err := tx.ChatOf("telegram", "-100987", true)
		require.NoError(t, err)
		require.Equal(t, group, now)
		moved, ok, err := tx.OutgoingByKey("reply")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, group.ID, moved.Chat)
		_, err = tx.Chat(early.ID)
		require.ErrorIs(t, err, ErrNotFound)

		// Where records point to the other row, it stays, set aside.
		early, err = tx.ChatOf("telegram", "-100555", true)
		require.NoError(t, err)
		early.Herd = f.herd
		require.NoError(t, tx.SaveChat(early))
		e := f.envelope(model.Note{What: "x"})
		e.Source = Source{Chat: early.ID, Message: "1"}
		require.NoError(t, tx.Append(&e))
		group.External = "-100555"
		require.NoError(t, tx.SaveChat(group))
		aside, err := tx.Chat(early.ID)
		require.NoError(t, err)
		require.Equal(t, "moved", aside.Dead)
		require.Zero(t, aside.Herd)

		// Another herd's chat is not taken.
		other, err := tx.CreateHerd("Hill End", "UTC", noon)
		require.NoError(t, err)
		theirs, err := tx.ChatOf("telegram", "-100777", true)
		require.NoError(t, err)
		theirs.Herd = other
		require.NoError(t, tx.SaveChat(theirs))
		group.External = "-100777"
		require.ErrorContains(t, tx.SaveChat(group), "another herd")
	})
}
