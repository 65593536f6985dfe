package telegram

import (
	"errors"
	"testing"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
	"github.com/stretchr/testify/require"
)

// The texts are those of the official server (tdlib/telegram-bot-api,
// Client.cpp, fail_query_with_error and check_chat_access).
func TestErrorsByMeaning(t *testing.T) {
	for _, tt := range []struct {
		code int
		text string
		want outcome
	}{
		{403, "Forbidden: bot was blocked by the user", unreachable},
		{403, "Forbidden: user is deactivated", unreachable},
		{403, "Forbidden: bot was kicked from the group chat", unreachable},
		{400, "Bad Request: chat not found", unreachable},
		{400, "Bad Request: group chat was upgraded to a supergroup chat", migrated},
		{400, "Bad Request: message is not modified", alreadyDone},
		{400, "Bad Request: query is too old and response timeout expired or query ID is invalid", alreadyDone},
		{400, "Bad Request: message to edit not found", gone},
		{400, "Bad Request: message is too long", refused},
		{401, "Unauthorized", badToken},
		{404, "Not Found", badToken},
		{409, "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running", conflict},
		{409, "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first", webhook},
		{429, "Too Many Requests: retry after 35", flood},
		{500, "Internal Server Error", passing},
	} {
		err := sortOut("sendMessage", &tgbotapi.Error{Code: tt.code, Message: tt.text}, true)
		require.Equal(t, tt.want, err.what, tt.text)
	}
	// The library leaves the code out where a file goes along.
	for text, want := range map[string]outcome{
		"Forbidden: bot was blocked by the user":                           unreachable,
		"Bad Request: PHOTO_INVALID_DIMENSIONS":                            refused,
		"Bad Request: not enough rights to send photos to the chat":        refused,
		"Bad Request: not enough rights to send text messages to the chat": unreachable,
		"Unauthorized":                      badToken,
		"Request Entity Too Large":          refused,
		"Too Many Requests: retry after 35": flood,
		"Internal Server Error":             passing,
		"Bad Gateway":                       passing,
		"something new":                     passing,
	} {
		require.Equal(t, want, sortOut("sendPhoto", &tgbotapi.Error{Message: text}, true).what, text)
	}
	require.Equal(t, passing, sortOut("sendMessage", errors.New("connection refused"), false).what)
	require.Equal(t, unknown, sortOut("sendMessage", errors.New("connection reset"), true).what)
}

func TestServerAddresses(t *testing.T) {
	for _, good := range []string{"", "https://api.telegram.org", "http://localhost:8081", "http://[::1]:8081/sub"} {
		require.NoError(t, CheckAPI(good), good)
	}
	for _, bad := range []string{"localhost:8081", "api.telegram.org", "ftp://x", "http://", "http://x?y", "://", "http://x#y"} {
		require.Error(t, CheckAPI(bad), bad)
	}
}
