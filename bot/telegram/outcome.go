package telegram

import (
	"errors"
	"fmt"
	"strings"
	"time"

	tgbotapi "github.com/go-telegram-bot-api/telegram-bot-api/v5"
)

// outcome sorts what can become of a call by what is to be done about it.
type outcome int

const (
	passing     outcome = iota // surely not delivered; try again later
	unknown                    // may or may not have been delivered
	flood                      // not delivered; wait as long as told
	unreachable                // the person blocked the bot, left, or is gone
	migrated                   // the group has a new id
	alreadyDone                // the edit was there already, the query too old
	gone                       // the message to edit or to answer is not there
	oversized                  // the file is larger than the server gives out
	refused                    // our own fault: the call was not right
	badToken                   // the token is not valid
	conflict                   // another copy polls
	webhook                    // a webhook is set
)

// callError is a call that failed.
type callError struct {
	method  string
	what    outcome
	wait    time.Duration // flood: how long
	newChat int64         // migrated: the new id
	err     error
}

func (e *callError) Error() string { return fmt.Sprintf("%s: %v", e.method, e.err) }

func (e *callError) Unwrap() error { return e.err }

// sortOut makes a callError of what the library gave. wrote says that the
// request went out.
func sortOut(method string, err error, wrote bool) *callError {
	e := &callError{method: method, err: err}
	var api *tgbotapi.Error
	if !errors.As(err, &api) {
		if wrote { // no answer, or one that is none: a gateway's page
			e.what = unknown
		}
		return e
	}
	e.what = meaning(api)
	e.wait = time.Duration(api.RetryAfter) * time.Second
	e.newChat = api.MigrateToChatID
	return e
}

// meanings tells refusals apart by their text; the server has no finer codes.
// The first match counts.
var meanings = []struct {
	text string
	what outcome
}{
	{"group chat was upgraded to a supergroup chat", migrated},
	{"message is not modified", alreadyDone},
	{"query is too old", alreadyDone},
	{"message to delete not found", alreadyDone},
	{"message can't be deleted", gone}, // it is older than two days
	{"message to edit not found", gone},
	{"message can't be edited", gone},
	{"message to be replied not found", gone},
	{"file is too big", oversized},
	{"chat not found", unreachable},
	{"bot was kicked", unreachable},
	{"bot was blocked", unreachable},
	{"user is deactivated", unreachable},
	{"not enough rights to send photos", refused}, // a text still arrives there
	{"not enough rights to send documents", refused},
	{"not enough rights", unreachable},
	{"have no rights to send", unreachable},
	{"terminated by other getupdates request", conflict},
	{"webhook is active", webhook},
}

func meaning(e *tgbotapi.Error) outcome {
	text := strings.ToLower(e.Message)
	if e.MigrateToChatID != 0 {
		return migrated
	}
	for _, m := range meanings {
		if strings.Contains(text, m.text) {
			return m.what
		}
	}
	code := e.Code
	if code == 0 {
		code = codeOf(text)
	}
	switch {
	case code == 401 || code == 404:
		return badToken
	case code == 403:
		return unreachable
	case code == 409:
		return conflict
	case code == 429:
		return flood
	case code >= 500:
		return passing
	default:
		return refused
	}
}

// leading has the words that the description of a refusal begins with.
var leading = []struct {
	words string
	code  int
}{
	{"bad request", 400},
	{"unauthorized", 401},
	{"forbidden", 403},
	{"not found", 404},
	{"conflict", 409},
	{"request entity too large", 413},
	{"too many requests", 429},
	{"internal server error", 500},
	{"bad gateway", 502},
	{"service unavailable", 503},
	{"gateway timeout", 504},
}

// codeOf is the code of a refusal by its description, in lower case: the library
// leaves the code out where a file was sent along. One that is not known counts
// as passing.
func codeOf(description string) int {
	for _, l := range leading {
		if strings.HasPrefix(description, l.words) {
			return l.code
		}
	}
	return 500
}
