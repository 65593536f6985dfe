package store

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// A file waits for a day, is its herd's alone, gives way to another that came with
// the same message, and only a few of a herd wait at once.
func TestUploads(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f, other := newFarm(t, tx), newFarm(t, tx)
		keep := func(key string, at time.Time) {
			require.NoError(t, tx.KeepUpload(Upload{Herd: f.herd, By: f.person, Key: key, Name: "herd.zip", Bytes: []byte(key), At: at}))
		}
		has := func(herd HerdID, key string, now time.Time) bool {
			u, ok, err := tx.UploadOf(herd, key, now)
			require.NoError(t, err)
			if ok {
				require.Equal(t, Upload{Herd: herd, By: f.person, Key: key, Name: "herd.zip", Bytes: u.Bytes, At: u.At}, u)
			}
			return ok
		}
		keep("a", noon)
		require.True(t, has(f.herd, "a", noon.Add(UploadStands-time.Second)))
		require.False(t, has(f.herd, "a", noon.Add(UploadStands)), "a day old")
		require.False(t, has(other.herd, "a", noon), "another herd's")
		require.False(t, has(f.herd, "b", noon))
		require.NoError(t, tx.KeepUpload(Upload{Herd: f.herd, By: f.person, Key: "a", Name: "herd.zip", Bytes: []byte("newer"), At: noon}))
		u, _, err := tx.UploadOf(f.herd, "a", noon)
		require.NoError(t, err)
		require.Equal(t, "newer", string(u.Bytes))
		for i := range mostUploads {
			keep(fmt.Sprint(i), noon.Add(time.Duration(i+1)*time.Minute))
		}
		require.False(t, has(f.herd, "a", noon), "the oldest goes")
		require.True(t, has(f.herd, "0", noon))
		require.NoError(t, tx.DropUpload(f.herd, "0"))
		require.NoError(t, tx.DropUpload(f.herd, "0"))
		require.False(t, has(f.herd, "0", noon))
		require.NoError(t, tx.DropOldUploads(noon.Add(UploadStands+2*time.Minute)))
		require.False(t, has(f.herd, "1", noon))
		require.True(t, has(f.herd, "2", noon))
	})
}

// A message that waits for its file is behind nobody, and stays until it is handled.
func TestMessagesThatWaitForAFile(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		for _, key := range []string{"a", "b", "c"} {
			_, err := tx.Receive(Incoming{Key: key, Chat: "1", Raw: []byte(key), At: noon})
			require.NoError(t, err)
		}
		for range 2 {
			in, ok, err := tx.NextIncoming()
			require.NoError(t, err)
			require.True(t, ok)
			require.NoError(t, tx.AwaitFile(in))
			require.ErrorIs(t, tx.AwaitFile(in), ErrNotFound, "it waits already")
		}
		in, _, err := tx.NextIncoming()
		require.NoError(t, err)
		require.Equal(t, "c", in.Key)
		require.NoError(t, tx.Handled(in.ID))
		first, ok, err := tx.NextAwaiting(0)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, "a", string(first.Raw))
		second, _, err := tx.NextAwaiting(first.ID)
		require.NoError(t, err)
		require.Equal(t, "b", second.Key)
		require.NoError(t, tx.Handled(second.ID))
		_, ok, err = tx.NextAwaiting(first.ID)
		require.NoError(t, err)
		require.False(t, ok)
	})
}
