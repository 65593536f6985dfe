package telegram

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// rawText is an update with a text, as Telegram writes it.
func rawText(update, sender int, name, text string) json.RawMessage {
	b, err := json.Marshal(map[string]any{"update_id": update, "message": map[string]any{
		"message_id": update, "date": 1_780_000_000, "text": text,
		"chat": map[string]any{"id": sender, "type": "private"},
		"from": map[string]any{"id": sender, "first_name": name},
	}})
	if err != nil {
		panic(err)
	}
	return b
}

// Ten thousand strangers at once fill neither the inbox nor the memory, and the
// household is answered while they shout; who brings a code gets in past them.
func TestTenThousandStrangers(t *testing.T) {
	r := newFarm(t, quick)
	code := codePattern.FindString(r.ask(ann, "invite").Text)
	require.NotEmpty(t, code)
	const crowd = 10_000
	for batch := range crowd / 100 {
		var raws []json.RawMessage
		for i := range 100 {
			n := batch*100 + i
			raws = append(raws, rawText(1_000_000+n, 5_000_000+n, "Eve", "Dot 38 girth"))
		}
		if batch == 50 {
			raws = append(raws, rawText(2_000_000, int(ben.ID), ben.Name, code))
		}
		require.NoError(t, r.bot.keep(t.Context(), raws))
	}
	r.settled()
	updates, turnedOff, _, _ := r.bot.Counts()
	require.GreaterOrEqual(t, updates, uint64(crowd))
	require.Greater(t, turnedOff, uint64(crowd*9/10))
	r.bot.strangers.mu.Lock()
	require.LessOrEqual(t, len(r.bot.strangers.each), maxStrangers)
	require.LessOrEqual(t, len(r.bot.strangers.told), maxStrangers)
	r.bot.strangers.mu.Unlock()
	r.read(func(tx *store.Tx) error {
		c, ok, err := tx.FindChat(transport, fmt.Sprint(ben.ID))
		require.True(t, ok && c.Person != 0, "the invited one is in")
		_, ok, err2 := tx.FindChat(transport, "5000000")
		require.False(t, ok, "nothing of a stranger is kept")
		require.NoError(t, err2)
		return err
	})
	require.NotEmpty(t, r.ask(ann, "help").Text)
}

// A stranger's later updates are looked at again once the limits allow, a crowd's
// too, and each is held to its own pace.
func TestStrangersPace(t *testing.T) {
	s, now := newStrangers(), time.Unix(1_780_000_000, 0)
	let := func(sender string, code bool, n int) (in int) {
		for range n {
			if s.lets(sender, code, now) {
				in++
			}
		}
		return in
	}
	require.Equal(t, strangerBurst, let("1", false, 1000))
	require.Equal(t, strangerBurst, let("2", true, 1000))
	for n := range 1000 {
		let(fmt.Sprint("crowd", n), false, 1)
	}
	require.Zero(t, let("3", false, 1))
	require.Equal(t, 1, let("4", true, 1), "a code waits for no crowd")
	now = now.Add(10 * time.Second)
	require.Equal(t, 2, let("1", false, 1000))
	for n := range 2 * maxStrangers {
		let(fmt.Sprint("more", n), false, 1)
	}
	require.LessOrEqual(t, len(s.each), maxStrangers)
}

// Updates as no server sends them harm nothing: what cannot be read is passed
// over, and the ones beside it are answered.
func TestMonstrousUpdates(t *testing.T) {
	r := newFarm(t, quick)
	deep := func(n int) json.RawMessage {
		return json.RawMessage(`{"update_id":7,"message":` + strings.Repeat(`{"reply_to_message":`, n) + `{}` + strings.Repeat(`}`, n) + `}`)
	}
	long := rawText(8, int(ann.ID), "Ann", strings.Repeat("Dot 38 girth. ", 100_000))
	for _, raw := range []json.RawMessage{
		deep(5_000), json.RawMessage(`{"update_id":9,"message":{"message_id":"x"}}`), json.RawMessage(`{"update_id":10,"message":{"chat":null}}`),
		json.RawMessage(`{"update_id":11,"callback_query":{"id":"1"}}`), json.RawMessage(`{"update_id":12,"my_chat_member":{}}`),
		json.RawMessage(`{"update_id":13,"message":{"message_id":1,"chat":{"id":101,"type":"private"},"text":"hi"}}`), long,
	} {
		require.NoError(t, r.bot.keep(t.Context(), []json.RawMessage{raw, rawText(14, int(dee.ID), "Dee", "x")}), "%.80s", raw)
	}
	_, _, err := readUpdate(deep(20_000))
	require.Error(t, err)
	r.eventually(func() bool { return strings.Contains(fmt.Sprint(r.api.Messages(ann.ID)), "too long") })
	require.NotEmpty(t, r.ask(ann, "help").Text)
}

func TestNamesOfPeople(t *testing.T) {
	for name, want := range map[string]string{
		"Ann": "Ann", " Ann\n\tB. ": "Ann B.", "\u202enn\u2066A\u200b\u00ad": "nnA", "A\x00\x1b[31mnn": "A[31mnn",
		"Z\u0301\u0301\u0301\u0301\u0301oe": "Z\u0301\u0301\u0301oe", strings.Repeat("x", 50): strings.Repeat("x", maxName),
		"Zoë": "Zoë", "Фёдор": "Фёдор", "安": "安", "'; DROP TABLE person; --": "'; DROP TABLE person; --",
	} {
		require.Equal(t, want, clean(name))
	}
}
