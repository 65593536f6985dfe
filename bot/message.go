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
	Herd store.HerdID
	Chat store.ChatID
	From store.Member
	ID   string // the message's own id in its chat
	Text string
	At   time.Time // when it was sent
	Edit bool      // it is a new version of the message ID
	// Version tells the versions of an edited message apart: no two have one.
	Version int64
	// ReplyTo is the person's message that it replies to, whether directly or by
	// replying to the bot's answer; ReplyNudge the key of the nudge replied to.
	ReplyTo    string
	ReplyNudge string
	// Group says that others read along.
	Group bool
	// Pressed says that the text is the word on a button.
	Pressed bool
	// Wall says that the message's clock is a wall clock: where a text states
	// the herd's zone, the hour stays and the zone changes.
	Wall   bool
	Medium string // what it is if not a text: "photo", "voice", ...
	// People are the names of the household's people, where the text may speak of
	// them; the desk sees to it.
	People []string
	Upload *Upload // a file to be taken in; nil: none
	Beside bool    // a table came with it that was not looked at
	// Foreseen is what it leads to, where that was worked out ahead.
	Foreseen *Foreseen
}

// version is 0 for the message as it was first sent.
func (m Message) version() int64 {
	if !m.Edit {
		return 0
	}
	return m.Version
}

// Reply is what the bot answers.
type Reply struct {
	Text    string
	Urgent  bool // it is about a danger
	Buttons [][]string
	Files   []File
	// Pictures are the figures of the pictures among Files, in their order.
	Pictures []Picture
	Entries  []reading.Entry
	// Answers has the data of each "ask" among Entries, by its index.
	Answers map[int]map[string]any
	// Questions has the text and labels of each "clarify", by its index.
	Questions map[int]Asked
	// Typed says that the reply asks for a number or a word that no button gives.
	Typed bool
}

// Asked is a question as the person reads it.
type Asked struct {
	Text   string
	Labels []string
}

func (r *Reply) question(i int, text string, labels []string) {
	if r.Questions == nil {
		r.Questions = map[int]Asked{}
	}
	r.Questions[i] = Asked{Text: text, Labels: labels}
}
