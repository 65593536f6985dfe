package telegram

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

func TestFaultsOfPolling(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("getUpdates",
		botapitest.Fault{HangUp: true}, botapitest.Fault{Status: 502, Page: "<html>bad gateway</html>"},
		botapitest.Fault{Status: 500, Description: "Internal Server Error"}, botapitest.Fault{Lost: true},
		botapitest.Fault{Status: 409, Description: "Conflict: terminated by other getUpdates request"},
	)
	for _, text := range []string{"spent 20 straw", "spent 21 straw", "spent 22 straw"} {
		r.ask(ann, text)
		require.Equal(t, []string{"spend"}, r.kinds()[text])
	}
	r.eventually(func() bool { return strings.Contains(r.log.String(), "polling works again") })
	require.Equal(t, 1, strings.Count(r.log.String(), "polling fails"))
	require.Empty(t, r.fatal)
}

func TestWebhookIsRemoved(t *testing.T) {
	r := newFarm(t, quick)
	r.api.SetWebhook(true)
	r.ask(ann, "spent 20 straw") // ends the poll under way; the next one finds the webhook
	require.Contains(t, r.ask(ann, "spent 21 straw").Text, "21")
	calls := r.api.Calls("deleteWebhook")
	require.NotEmpty(t, calls)
	require.Equal(t, "false", calls[0].Params.Get("drop_pending_updates"), "what waits is kept")
}

func TestAnotherCopyThatStays(t *testing.T) {
	r := newFarm(t, quick)
	for range conflictsBeforeGivingUp {
		r.api.Fail("getUpdates", botapitest.Fault{Status: 409, Description: "Conflict: terminated by other getUpdates request"})
	}
	r.api.Say(ann, "spent 20 straw") // ends the poll under way
	select {
	case err := <-r.fatal:
		require.ErrorIs(t, err, ErrOther)
	case <-time.After(20 * time.Second):
		t.Fatal("it does not give up")
	}
	require.Equal(t, 1, strings.Count(r.log.String(), "another copy of the bot is running"))
}

func TestTokenThatIsRevoked(t *testing.T) {
	for _, method := range []string{"getUpdates", "sendMessage"} {
		r := newFarm(t, quick)
		r.api.Fail(method, botapitest.Fault{Status: 401, Description: "Unauthorized"})
		r.api.Say(ann, "spent 20 straw")
		select {
		case err := <-r.fatal:
			require.ErrorIs(t, err, ErrToken)
		case <-time.After(20 * time.Second):
			t.Fatal("it goes on without a token")
		}
	}
}

// An offset from before a week of silence may be of another count of ids.
func TestOldOffsetIsNotSent(t *testing.T) {
	r := newFarm(t, quick)
	r.ask(ann, "spent 20 straw")
	r.close()
	r.open()
	r.write(func(tx *store.Tx) error {
		return tx.SetValue(valueSeen, "1000000000")
	})
	before := len(r.api.Calls("getUpdates"))
	r.start(quick)
	r.eventually(func() bool { return len(r.api.Calls("getUpdates")) > before+1 })
	calls := r.api.Calls("getUpdates")[before:]
	require.False(t, calls[0].Params.Has("offset"))
	require.True(t, calls[1].Params.Has("offset"))
	for _, c := range calls {
		require.Equal(t, wanted, c.Params.Get("allowed_updates"), "the server remembers it: it goes along each time")
	}
}
