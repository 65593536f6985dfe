package store

import (
	"errors"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestInbox(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		_, ok, err := tx.NextIncoming()
		require.NoError(t, err)
		require.False(t, ok)
		first := Incoming{Key: "4711/17", Chat: "4711", Raw: []byte("{}"), At: noon}
		for i, want := range []bool{true, false} {
			got, err := tx.Receive(first)
			require.NoError(t, err)
			require.Equal(t, want, got, "time %d", i)
		}
		got, err := tx.Receive(Incoming{Key: "4711/18", Chat: "4711", At: noon})
		require.NoError(t, err)
		require.True(t, got, "an empty message is one")

		in, ok, err := tx.NextIncoming()
		require.NoError(t, err)
		require.True(t, ok)
		first.ID = in.ID
		require.Equal(t, first, in)
		require.NoError(t, tx.Handled(in.ID))
		in, ok, err = tx.NextIncoming()
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, "4711/18", in.Key)
		require.NoError(t, tx.SetAside(in, "no idea"))
		require.ErrorIs(t, tx.Handled(99), ErrNotFound)
		_, ok, err = tx.NextIncoming()
		require.NoError(t, err)
		require.False(t, ok)
		got, err = tx.Receive(first)
		require.NoError(t, err)
		require.False(t, got, "a message that was handled is not taken again")

		got, err = tx.Receive(Incoming{Key: "99/1", Chat: "99", Raw: []byte("a stranger's")})
		require.NoError(t, err)
		require.True(t, got)
		in, _, err = tx.NextIncoming()
		require.NoError(t, err)
		require.NoError(t, tx.DropIncoming(in.ID))
		require.ErrorIs(t, tx.DropIncoming(in.ID), ErrNotFound)
		_, ok, err = tx.NextIncoming()
		require.NoError(t, err)
		require.False(t, ok)
		_, err = tx.Receive(Incoming{Key: "99/2", Chat: "99"})
		require.NoError(t, err)
		next, _, err := tx.NextIncoming()
		require.NoError(t, err)
		require.Greater(t, next.ID, in.ID, "the number of a dropped message is not given again")
		require.NoError(t, tx.Handled(next.ID))

		taken := Incoming{Key: "4711/19", Chat: "4711", Raw: []byte("{}"), At: noon}
		for _, want := range []bool{true, false} {
			got, others, err := tx.TakeIn(&taken, "4711/19")
			require.NoError(t, err)
			require.Equal(t, want, got)
			require.False(t, others)
		}
		version := Incoming{Key: "4711/19:edit", Chat: "4711", At: noon}
		got, others, err := tx.TakeIn(&version, "4711/19")
		require.NoError(t, err)
		require.True(t, got)
		require.True(t, others, "the one before it")
		require.Greater(t, taken.ID, next.ID)
		got, err = tx.Receive(taken)
		require.NoError(t, err)
		require.False(t, got)
		_, ok, err = tx.NextIncoming()
		require.NoError(t, err)
		require.False(t, ok, "it is handled as it is taken in")
		require.NoError(t, tx.AwaitFile(taken))
		back, ok, err := tx.NextAwaiting(0)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, taken, back, "one that waits after all is kept whole")
	})
}

func TestOutboxKeepsAMessageWhole(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		o := Outgoing{
			Key: "nudge 1", Herd: f.herd, Chat: f.chat, Kind: "nudge", Text: "Barrel 2 is dry by Friday.",
			Buttons: [][]string{{"Done", "Tomorrow"}, {"Stop"}}, ReplyTo: "5", Edits: "6", Quiet: true, Told: "water 2026-05-16",
			GoodUntil: noon.Add(time.Hour), NotBefore: noon.Add(time.Minute),
		}
		queued, err := tx.Queue(&o)
		require.NoError(t, err)
		require.True(t, queued)
		require.NotZero(t, o.ID)
		require.Equal(t, Pending, o.State)
		again := o
		again.Text, again.ID = "other words", 0
		queued, err = tx.Queue(&again)
		require.NoError(t, err)
		require.False(t, queued)
		back, ok, err := tx.OutgoingByKey("nudge 1")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, o, back)

		plain := Outgoing{Key: "reply 1", Chat: f.chat, Kind: "reply", Text: "Got it."}
		_, err = tx.Queue(&plain)
		require.NoError(t, err)
		back, _, err = tx.OutgoingByKey("reply 1")
		require.NoError(t, err)
		require.Equal(t, plain, back)
		back, ok, err = tx.OutgoingByID(plain.ID)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, plain, back)
		_, ok, err = tx.OutgoingByID(99)
		require.NoError(t, err)
		require.False(t, ok)

		_, err = tx.Queue(&Outgoing{Chat: f.chat})
		require.ErrorContains(t, err, "no key")
		_, err = tx.Queue(&Outgoing{Key: "x", Chat: 99})
		require.ErrorContains(t, err, "FOREIGN KEY")
		_, err = tx.Queue(&Outgoing{Key: "x", Chat: f.chat, State: "lost"})
		require.ErrorContains(t, err, "CHECK")
		_, ok, err = tx.OutgoingByKey("x")
		require.NoError(t, err)
		require.False(t, ok)
	})
}

func TestDeliveriesAreFound(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		group, err := tx.ChatOf("telegram", "-12", true)
		require.NoError(t, err)
		for i, chat := range []ChatID{f.chat, group.ID, f.chat} {
			o := Outgoing{Key: fmt.Sprint("water 1/", i), Herd: f.herd, Chat: chat, Kind: "nudge", Told: "water 1"}
			_, err := tx.Queue(&o)
			require.NoError(t, err)
			if i < 2 { // the third still waits
				o.State, o.Sent, o.Tries, o.Repeated = Sent, fmt.Sprint(100+i), 2, true
				require.NoError(t, tx.SaveOutgoing(o))
			}
		}
		got, err := tx.Deliveries(f.herd, "water 1")
		require.NoError(t, err)
		require.Len(t, got, 2)
		require.Equal(t, "101", got[1].Sent)
		require.Equal(t, 2, got[1].Tries)
		require.True(t, got[1].Repeated)
		none, err := tx.Deliveries(f.herd, "")
		require.NoError(t, err)
		require.Empty(t, none)
		one, ok, err := tx.OutgoingBySent(group.ID, "101")
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, got[1], one)
		for _, sent := range []string{"100", ""} {
			_, ok, err = tx.OutgoingBySent(group.ID, sent)
			require.NoError(t, err)
			require.False(t, ok, "not in this chat: %q", sent)
		}
		require.ErrorIs(t, tx.SaveOutgoing(Outgoing{ID: 99, State: Sent}), ErrNotFound)
	})
}

// Whatever is queued, put off and sent, Waiting and NextTo agree with a plain
// reading of their promise, and who listens hears of all that waits.
func TestWhoWaitsAndForWhat(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	var heard []Waiting
	s.OnQueued(func(w []Waiting) { heard = append(heard, w...) })
	run := 0
	rapid.Check(t, func(rt *rapid.T) {
		run++
		heard = nil
		var all []Outgoing
		var told []Waiting
		elsewhere := map[ChatID]bool{} // chats of another transport
		write(t, s, func(tx *Tx) {
			_, err := tx.exec("UPDATE outgoing SET state = 'dropped'")
			require.NoError(t, err)
			for i := range rapid.IntRange(0, 9).Draw(rt, "messages") {
				n := rapid.IntRange(1, 4).Draw(rt, "chat")
				transport := "telegram"
				if n == 4 {
					transport = "terminal"
				}
				c, err := tx.ChatOf(transport, fmt.Sprint(n), false)
				require.NoError(t, err)
				elsewhere[c.ID] = n == 4
				o := Outgoing{
					Key: fmt.Sprint(run, "/", i), Herd: f.herd, Chat: c.ID, Kind: "reply", Text: "x",
					State:  rapid.SampledFrom([]string{Pending, Pending, Pending, Sending, Sent, Dropped}).Draw(rt, "state"),
					Urgent: rapid.IntRange(0, 3).Draw(rt, "urgent") == 0,
				}
				if m := rapid.IntRange(0, 3).Draw(rt, "wait"); m > 0 {
					o.NotBefore = noon.Add(time.Duration(m) * time.Minute)
				}
				_, err = tx.Queue(&o)
				require.NoError(t, err)
				all = append(all, o)
				if o.State == Pending {
					told = append(told, Waiting{o.Chat, o.Urgent})
				}
			}
		})
		require.Equal(rt, told, heard)
		var want []Waiting
		var sending []Outgoing
		heads := map[ChatID]Outgoing{}
		for _, o := range all {
			if o.State == Sending && !elsewhere[o.Chat] {
				sending = append(sending, o)
			}
			if o.State != Pending {
				continue
			}
			head, seen := heads[o.Chat]
			if !seen || o.Urgent && !head.Urgent {
				heads[o.Chat] = o
			}
			if !seen && !elsewhere[o.Chat] {
				want = append(want, Waiting{Chat: o.Chat})
			}
		}
		for i, w := range want {
			want[i].Urgent = heads[w.Chat].Urgent
		}
		read(t, s, func(tx *Tx) {
			got, err := tx.Waiting("telegram")
			require.NoError(t, err)
			require.Equal(rt, want, got)
			found, err := tx.Sending("telegram")
			require.NoError(t, err)
			require.Equal(rt, sending, found)
			for chat, want := range heads {
				head, ok, err := tx.NextTo(chat)
				require.NoError(t, err)
				require.True(rt, ok)
				require.Equal(rt, want, head)
			}
			_, ok, err := tx.NextTo(f.chat)
			require.NoError(t, err)
			require.False(rt, ok, "a chat for which nothing waits")
		})
	})
}

// What was not committed is told to nobody.
func TestNobodyHearsOfWhatWasNotCommitted(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) { f = newFarm(t, tx) })
	heard := 0
	s.OnQueued(func(w []Waiting) { heard += len(w) })
	require.Error(t, s.Write(t.Context(), func(tx *Tx) error {
		_, err := tx.Queue(&Outgoing{Key: "1", Herd: f.herd, Chat: f.chat, Kind: "reply", Text: "x"})
		require.NoError(t, err)
		return errors.New("no")
	}))
	require.Zero(t, heard)
}

func TestAnswersAreFound(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		group, err := tx.ChatOf("telegram", "-12", true)
		require.NoError(t, err)
		for i, o := range []Outgoing{
			{Chat: f.chat, Kind: "reply", ReplyTo: "17"},
			{Chat: f.chat, Kind: "edit", ReplyTo: "17", Edits: "101"},
			{Chat: group.ID, Kind: "reply", ReplyTo: "17"},
			{Chat: f.chat, Kind: "reply", ReplyTo: "18"},
			{Chat: f.chat, Kind: "nudge"},
		} {
			o.Key = fmt.Sprint(i)
			_, err := tx.Queue(&o)
			require.NoError(t, err)
		}
		for message, want := range map[string][]string{"17": {"0", "1"}, "18": {"3"}, "19": nil, "": nil} {
			got, err := tx.AnswersTo(f.chat, message)
			require.NoError(t, err)
			var keys []string
			for _, o := range got {
				keys = append(keys, o.Key)
			}
			require.Equal(t, want, keys, "message %q", message)
		}
	})
}

func TestOutboxAfterARestart(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s, err := Open(t.Context(), path, Options{})
	require.NoError(t, err)
	write(t, s, func(tx *Tx) {
		f := newFarm(t, tx)
		for i, state := range []string{Sent, Sending, Pending} {
			_, err := tx.Queue(&Outgoing{Key: fmt.Sprint(i), Herd: f.herd, Chat: f.chat, Kind: "reply", Text: fmt.Sprint(i), State: state})
			require.NoError(t, err)
		}
	})
	require.NoError(t, s.Close())
	s = openStore(t, path, Options{})
	write(t, s, func(tx *Tx) {
		unknown, err := tx.Sending("telegram")
		require.NoError(t, err)
		require.Len(t, unknown, 1)
		require.Equal(t, "1", unknown[0].Text)
		unknown[0].State = Pending
		require.NoError(t, tx.SaveOutgoing(unknown[0]))
		next, ok, err := tx.NextTo(unknown[0].Chat)
		require.NoError(t, err)
		require.True(t, ok)
		require.Equal(t, "1", next.Text, "nothing overtakes what may have been under way")
	})
}

func TestValues(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		v, err := tx.Value("offset")
		require.NoError(t, err)
		require.Empty(t, v)
		for _, want := range []string{"12", "13", ""} {
			require.NoError(t, tx.SetValue("offset", want))
			v, err = tx.Value("offset")
			require.NoError(t, err)
			require.Equal(t, want, v)
		}
		require.NoError(t, tx.SetValue("seen", "7"))
		require.NoError(t, tx.SetValue("offset", "14"))
		all, err := tx.Values("seen", "never", "offset")
		require.NoError(t, err)
		require.Equal(t, []string{"7", "", "14"}, all)
	})
}
