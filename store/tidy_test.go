package store

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Texts that nothing needs go when their days are over, and are in the files no
// more; what replies, edits and records need stays, and so does what waits.
func TestTextsGoWhenTheirDaysAreOver(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{Ephemeral: true})
	keep := Keeping{Sent: 60, Failed: 30}
	var h household
	var ids []int64
	day := func(n int) time.Time { return noon.AddDate(0, 0, n) }
	for n := range 3 {
		write(t, s, func(tx *Tx) {
			var err error
			if n == 0 {
				h, err = settle(tx, "quillwort", 0)
				require.NoError(t, err)
			}
			for _, state := range []string{Sent, Dropped, Pending} {
				o := Outgoing{
					Key: fmt.Sprint(n, state), Herd: h.herd, Chat: h.chat, Kind: "nudge", Text: fmt.Sprintf("Fill yarrow%d %s.", n, state),
					Buttons: [][]string{{fmt.Sprintf("Sorrel%d %s", n, state)}}, ReplyTo: fmt.Sprint("17", n), Told: "refill", State: state,
					File: &File{Kind: Document, Name: fmt.Sprintf("tansy%d-%s.txt", n, state), Bytes: []byte("x")},
				}
				if state == Sent {
					o.Sent = fmt.Sprint("9", n)
				}
				_, err := tx.Queue(&o)
				require.NoError(t, err)
				ids = append(ids, o.ID)
			}
			for i, problem := range []string{"", "meadowsweet"} {
				key := fmt.Sprintf("in %d %d", n, i)
				_, err := tx.Receive(Incoming{Key: key, Chat: "7", Raw: []byte(fmt.Sprint("larkspur", n)), At: day(n)})
				require.NoError(t, err)
				in, _, err := tx.NextIncoming()
				require.NoError(t, err)
				if problem == "" {
					require.NoError(t, tx.Handled(in.ID))
				} else {
					require.NoError(t, tx.SetAside(in, problem))
				}
			}
		})
		require.NoError(t, s.Tidy(t.Context(), day(n), keep))
	}
	texts := func() (out []string) {
		read(t, s, func(tx *Tx) {
			for _, id := range ids {
				o, ok, err := tx.OutgoingByID(id)
				require.NoError(t, err)
				require.True(t, ok)
				if o.Text != "" {
					out = append(out, fmt.Sprintf("%s%s", o.Text[11:12], o.State[:1]))
					require.NotEmpty(t, o.Buttons)
				} else {
					require.Empty(t, o.Buttons)
					require.Nil(t, o.File)
				}
			}
		})
		return out
	}
	require.NoError(t, s.Tidy(t.Context(), day(29), keep))
	require.NotEmpty(t, found(t, path, "larkspur0"))
	require.NoError(t, s.Tidy(t.Context(), day(30), keep))
	require.Empty(t, found(t, path, "larkspur0"))
	require.NotEmpty(t, found(t, path, "larkspur1"))
	require.NoError(t, s.Tidy(t.Context(), day(59), keep))
	require.Equal(t, []string{"0s", "0d", "0p", "1s", "1d", "1p", "2s", "2d", "2p"}, texts())
	require.NoError(t, s.Tidy(t.Context(), day(60), keep))
	require.Equal(t, []string{"0p", "1s", "1d", "1p", "2s", "2d", "2p"}, texts())
	for _, gone := range []string{"yarrow0 sent", "Sorrel0 dropped", "tansy0-sent"} {
		require.Empty(t, found(t, path, gone))
	}
	// The program was off for a while: what is old enough by then goes all the same.
	require.NoError(t, s.Tidy(t.Context(), day(200), keep))
	require.Equal(t, []string{"0p", "1p", "2p"}, texts())
	read(t, s, func(tx *Tx) {
		o, ok, err := tx.OutgoingBySent(h.chat, "90")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, "170", o.ReplyTo)
		require.Equal(t, "refill", o.Told)
		all, err := list(tx, "SELECT day FROM tide", nil, func(row scanner) (d string, err error) {
			err = row.Scan(&d)
			return d, err
		})
		require.NoError(t, err)
		require.Len(t, all, 2, strings.Join(all, " "))
		codes, err := list(tx, "SELECT role FROM code", nil, func(row scanner) (d string, err error) {
			err = row.Scan(&d)
			return d, err
		})
		require.NoError(t, err)
		require.Empty(t, codes)
	})
	// What had waited goes in its turn once it is done.
	write(t, s, func(tx *Tx) {
		o, _, err := tx.OutgoingByID(ids[2])
		require.NoError(t, err)
		o.State = Dropped
		require.NoError(t, tx.SaveOutgoing(o))
	})
	require.NoError(t, s.Tidy(t.Context(), day(201), keep))
	require.Equal(t, []string{"1p", "2p"}, texts())
}

// Texts are taken out some at a time, so that others write in between, and where that
// was cut off it goes on. What waits is passed over and comes to its turn later.
func TestTidyTakesSomeAtATime(t *testing.T) {
	s := newStore(t)
	const rows, waits = 1300, 700
	var f farm
	first := Outgoing{Kind: "reply"}
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		for n := 1; n <= rows; n++ {
			o := Outgoing{Key: fmt.Sprint(n), Herd: f.herd, Chat: f.chat, Kind: "reply", Text: "Filled.", State: Sent}
			if n == waits {
				o.State = Pending
				o.File = &File{Kind: Document, Name: "tansy.txt", Bytes: []byte("x")}
			}
			_, err := tx.Queue(&o)
			require.NoError(t, err)
			if n == waits {
				first = o
			}
			_, err = tx.Receive(Incoming{Key: fmt.Sprint(n), Chat: "7", At: noon.AddDate(0, 0, n/1000)})
			require.NoError(t, err)
			if n != 1 { // which waits for its file, say
				require.NoError(t, tx.Handled(int64(n)))
			}
		}
	})
	keep := Keeping{Sent: 60, Failed: 30}
	left := func() (in, out int, tidied int64) {
		read(t, s, func(tx *Tx) {
			_, err := tx.one("SELECT (SELECT count(*) FROM incoming), (SELECT count(*) FROM outgoing WHERE text <> '')", nil, &in, &out)
			require.NoError(t, err)
			tidied, err = tx.tidied()
			require.NoError(t, err)
		})
		return in, out, tidied
	}
	require.NoError(t, s.Tidy(t.Context(), noon, keep))
	cutOff := tidying{border: rows, before: millis(noon)}
	for _, some := range []func(*Tx) (bool, error){cutOff.outgoing, (&tidying{before: millis(noon)}).incoming} {
		write(t, s, func(tx *Tx) {
			more, err := some(tx)
			require.NoError(t, err)
			require.True(t, more)
		})
	}
	in, out, tidied := left()
	require.Equal(t, []int{rows - tidySpan + 1, rows - tidySpan, tidySpan}, []int{in, out, int(tidied)})

	require.NoError(t, s.Tidy(t.Context(), noon.AddDate(0, 0, 60), keep))
	in, out, tidied = left()
	require.Equal(t, []int{1, 1, waits - 1}, []int{in, out, int(tidied)})
	write(t, s, func(tx *Tx) {
		o, ok, err := tx.OutgoingByID(first.ID)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, "tansy.txt", o.File.Name)
		o.State = Dropped
		require.NoError(t, tx.SaveOutgoing(o))
		require.NoError(t, tx.Handled(1))
	})
	require.NoError(t, s.Tidy(t.Context(), noon.AddDate(0, 0, 61), keep))
	in, out, tidied = left()
	require.Equal(t, []int{0, 0, rows}, []int{in, out, int(tidied)})
	read(t, s, func(tx *Tx) {
		o, _, err := tx.OutgoingByID(first.ID)
		require.NoError(t, err)
		require.Nil(t, o.File)
	})
}
