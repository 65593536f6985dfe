package wording

import (
	"fmt"
	"strings"
	"time"
)

// CodeWrong answers a one-time code that opens nothing.
func CodeWrong() string {
	return "That code opens nothing: mistyped, used already, or too old. Ask for a new one."
}

// OperatorOnly refuses what only who runs the server may do.
func OperatorOnly() string { return "Only the person who runs this server can do that." }

// PrivateOnly refuses to say in a group what only one person may read.
func PrivateOnly() string { return "Ask me that in our private chat." }

// HerdCode gives the one-time code for the owner of a further herd.
func (v Voice) HerdCode(code string, until time.Time) string {
	return v.say(partTalk, "herd_code", Args{Names: []string{code}, Moments: []time.Time{until}})
}

// HerdName is what a herd is called where one of several is meant; one without
// a name goes by its number.
func HerdName(name string, number int64) string {
	if name == "" {
		return fmt.Sprint(number)
	}
	return name
}

// HerdChosen acknowledges that the chat speaks of another herd now.
func HerdChosen(name string) string { return "We speak of " + name + " now." }

// HerdChoice says which herds the chat can speak of.
func HerdChoice(names []string) string {
	if len(names) == 1 {
		return "You have one herd here: " + names[0] + "."
	}
	return "Say which herd: /herd " + strings.Join(names, ", /herd ")
}

// FileRefused tells of a file that Telegram does not take.
func FileRefused(name string) string {
	return "Telegram does not take the file " + name + " here: ask for it in our private chat."
}

// FileTooLarge tells of a file that no message carries.
func FileTooLarge(name string) string {
	return name + " is too large for a message: on the computer, \"troughbell export --out herd.zip\"."
}
