package telegram

import (
	"context"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

// Nothing is said of an answer within half a second; then it is said, and again
// before it fades, until the answer is out.
func TestWorkingIsSaidAfterHalfASecond(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		b := &Bot{Config: Config{}.withDefaults(), asides: make(chan func(context.Context), 10)}
		done := b.working("101", actionTyping)
		time.Sleep(499 * time.Millisecond)
		synctest.Wait()
		require.Empty(t, b.asides)
		time.Sleep(2 * time.Millisecond)
		synctest.Wait()
		require.Len(t, b.asides, 1)
		time.Sleep(actionLasts)
		synctest.Wait()
		require.Len(t, b.asides, 2)
		done()
		time.Sleep(time.Minute)
		synctest.Wait()
		require.Len(t, b.asides, 2)
	})
}

// The chat says what is under way where a call takes long, and nothing where it
// does not.
func TestWorkingIsSaidWhereItTakesLong(t *testing.T) {
	for _, slow := range []bool{true, false} {
		l := quick
		l.Patience = time.Hour
		if slow {
			l.Patience = time.Millisecond
		}
		r := newFarm(t, l)
		if slow {
			for _, method := range []string{"sendMessage", "sendPhoto", "sendDocument"} {
				r.api.Fail(method, botapitest.Fault{Delay: 100 * time.Millisecond})
			}
		}
		r.ask(ann, "spent 20 straw")
		r.sendFile("one", photo())
		f := photo()
		f.Kind = store.Document
		r.sendFile("two", f)
		r.eventually(func() bool { return len(r.files("one")) == 1 && len(r.files("two")) == 1 })
		r.settled()
		said := map[string]bool{}
		for _, c := range r.api.Calls("sendChatAction") {
			require.Equal(t, "101", c.Params.Get("chat_id"))
			said[c.Params.Get("action")] = true
		}
		if slow {
			require.Subset(t, said, map[string]bool{actionTyping: true, actionPhoto: true, actionDocument: true})
		} else {
			require.Empty(t, said)
		}
	}
}
