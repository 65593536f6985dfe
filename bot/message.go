// Package bot is the conversation: what a text leads to, and what is answered.
// It is the same for every transport; the transports bring messages and take
// replies.
package bot

import (
	"time"

	"troughbell/bot/reading"
	"troughbell/store"
)

// Message is one text from a person of the household.
type Message struct {
	Herd    store.HerdID
	Chat    store.ChatID
	From    store.Member
	ID      string // the message's own id in its chat
	Text    string
	At      time.Time // when it was sent
	Edit    bool      // it is a new version of the message ID
	ReplyTo string    // message of the person's, or of the bot's, that it replies to
	Medium  string    // what it is if not a text: "photo", "voice", ...
}

// Reply is what the bot answers.
type Reply struct {
	Text    string
	Buttons [][]string
	// Instead says that it takes the place of the earlier answer to the message
	// (the message was edited).
	Instead bool
	Entries []reading.Entry
	// Answers has the data of each "ask" among Entries, by its index.
	Answers map[int]map[string]any
}
