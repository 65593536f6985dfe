package store

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A file is kept with its message and for as long as that is to be sent.
func TestFileGoesWithItsMessage(t *testing.T) {
	s := newStore(t)
	var f farm
	chart := bytes.Repeat([]byte("PNG"), 1000)
	for i, end := range []string{Sent, Dropped} {
		var o Outgoing
		write(t, s, func(tx *Tx) {
			if i == 0 {
				f = newFarm(t, tx)
			}
			o = Outgoing{
				Key: end, Herd: f.herd, Chat: f.chat, Kind: "reply", Text: "Growth.",
				File: &File{Kind: Photo, Name: "growth.png", Bytes: chart},
			}
			queued, err := tx.Queue(&o)
			require.NoError(t, err)
			require.True(t, queued)
			queued, err = tx.Queue(&Outgoing{Key: end, Chat: f.chat, Text: "x", File: &File{Kind: Document, Name: "b", Bytes: []byte("b")}})
			require.NoError(t, err)
			require.False(t, queued, "the same message again brings no second file")
		})
		write(t, s, func(tx *Tx) {
			due, ok, err := tx.NextTo(f.chat)
			require.NoError(t, err)
			require.True(t, ok)
			require.Equal(t, &File{Kind: Photo, Name: "growth.png", Size: 3000}, due.File, "a look at it reads no bytes")
			for _, state := range []string{Sending, Pending, Sending} { // a crash, or an outcome unknown
				o.State = state
				require.NoError(t, tx.SaveOutgoing(o))
				got, err := tx.FileBytes(o.ID)
				require.NoError(t, err)
				require.Equal(t, chart, got)
			}
			require.NoError(t, tx.SaveFileKind(o.ID, Document))
			o.State = end
			require.NoError(t, tx.SaveOutgoing(o))
			_, err = tx.FileBytes(o.ID)
			require.ErrorContains(t, err, "taken away", end)
			back, _, err := tx.OutgoingByID(o.ID)
			require.NoError(t, err)
			require.Equal(t, &File{Kind: Document, Name: "growth.png", Size: 3000}, back.File, "what it was is known still")
			left, err := tx.FilesHeld()
			require.NoError(t, err)
			require.Zero(t, left)
		})
	}
	write(t, s, func(tx *Tx) {
		_, err := tx.FileBytes(99)
		require.ErrorIs(t, err, ErrNotFound)
		require.ErrorIs(t, tx.SaveFileKind(99, Photo), ErrNotFound)
	})
}

// What cannot go out is refused whole: neither the file nor its message is kept.
func TestFileThatCannotGoOut(t *testing.T) {
	s := newStore(t)
	some := []byte("x")
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		for why, file := range map[string]File{
			"no kind of file":     {Kind: "film", Name: "a.png", Bytes: some},
			"is empty":            {Kind: Photo, Name: "a.png"},
			"is the most":         {Kind: Document, Name: "a.zip", Bytes: make([]byte, MaxFile+1)},
			`"" is no name`:       {Kind: Photo, Bytes: some},
			`"../a" is no name`:   {Kind: Photo, Name: "../a", Bytes: some},
			`"a\\b" is no name`:   {Kind: Photo, Name: `a\b`, Bytes: some},
			`".ssh" is no name`:   {Kind: Photo, Name: ".ssh", Bytes: some},
			`"-rf" is no name`:    {Kind: Photo, Name: "-rf", Bytes: some},
			`"a\nb" is no name`:   {Kind: Photo, Name: "a\nb", Bytes: some},
			`"c:x" is no name`:    {Kind: Photo, Name: "c:x", Bytes: some},
			`"\xff" is no name`:   {Kind: Photo, Name: "\xff", Bytes: some},
			`long" is no name of`: {Kind: Photo, Name: strings.Repeat("a", 97) + "long", Bytes: some},
		} {
			queued, err := tx.Queue(&Outgoing{Key: "k", Chat: f.chat, Text: "x", File: &file})
			require.ErrorContains(t, err, why)
			require.False(t, queued)
		}
		_, ok, err := tx.OutgoingByKey("k")
		require.NoError(t, err)
		require.False(t, ok)
		exact := File{Kind: Document, Name: "Long Acre 2026.zip", Bytes: make([]byte, MaxFile)}
		_, err = tx.Queue(&Outgoing{Key: "k", Chat: f.chat, Text: "x", File: &exact})
		require.NoError(t, err)
	})
}
