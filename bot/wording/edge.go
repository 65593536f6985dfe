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

const textsWait = " Texts wait at Telegram, for a day at most."

// DatabaseFails tells who runs the server why nothing can be recorded, by the
// code of the trouble, and what to do.
func DatabaseFails(code string) string {
	switch code {
	case "full":
		return "I cannot record anything: the server's disk is full. Make room there; I go on by myself." + textsWait
	case "missing":
		return "I cannot record anything: the database's folder is gone. Put it back on the server; I go on by myself." + textsWait
	case "replaced":
		return "The database file was replaced while I used it. I stop; what I had stands in a copy beside it, named in the log. Start me again to go on with the new file." + textsWait
	case "damaged", "not_a_database":
		return "The database is damaged. I stop, so that nothing more is lost: keep the file, put the latest backup in its place with troughbell restore, and start me again." + textsWait
	case "newer":
		return "The database was used by a newer version of me. I stop; start that version." + textsWait
	default:
		return "I cannot record anything: the database cannot be written. Check the server's disk and the file's permissions; I go on by myself." + textsWait
	}
}

// DatabaseWaits tells who texts while the database fails what becomes of it.
func DatabaseWaits() string {
	return "Not recorded yet: the server has trouble. Your text waits, for a day at most, and I answer it once that is mended."
}

// DatabasePutBack tells who runs the server that the database was deleted while
// in use, and is whole again.
func DatabasePutBack() string {
	return "The database file was deleted or moved while I used it. I wrote it back whole; nothing is lost."
}
