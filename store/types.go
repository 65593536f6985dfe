package store

import (
	"time"

	"troughbell/model"
)

// Ids of rows.
type (
	HerdID   int64
	PersonID int64
	ChatID   int64
)

// HerdRow is a herd as the store knows it; what the herd says of itself is in
// its records.
type HerdRow struct {
	ID   HerdID
	Name string
	Made string // its name at its making; Name is the one stated since
	Zone string // IANA name in force: the stated one, else the default at its making
	// Seq is the number of the herd's latest record.
	Seq int64
	// LookAgain is when the herd is to be looked at for nudges, at the latest.
	LookAgain time.Time
	Paused    bool // nobody of the herd can be reached
}

// Role of a person in a herd.
type Role string

// The roles. A helper logs, but sees no money and takes nothing back.
const (
	Owner  Role = "owner"
	Family Role = "family"
	Helper Role = "helper"
)

// Member is a person in a herd.
type Member struct {
	Herd     HerdID
	Person   PersonID
	Name     string
	Role     Role
	Operator bool // runs this server
}

// Chat is a place where messages are exchanged: a private chat, a group, the
// terminal.
type Chat struct {
	ID        ChatID
	Transport string // "telegram", "terminal", "replay"
	External  string // the transport's own id
	Group     bool
	Herd      HerdID   // the herd spoken of here; 0 while none is
	Person    PersonID // whose private chat it is; 0 for a group
	Dead      string   // why it cannot be reached; empty if it can
}

// Source is where a record came from.
type Source struct {
	Chat    ChatID
	Message string // the message's own id in the chat
}

// Imported is the Judged of a record that came with a file.
const Imported = "imported"

// Envelope is a record in the journal with all that is kept beside the fact.
type Envelope struct {
	ID     string // unique in the herd; given by Append if empty
	Seq    int64  // its place in the journal; given by Append
	Herd   HerdID
	On     model.Day
	Zone   string // the zone of the herd's clock when it was said
	At     time.Time
	Stated bool // the time of day was stated
	SaidAt time.Time
	By     PersonID
	ByName string
	Source Source
	Text   string // the original message
	Judged string // how the reading was judged: "certain", "confirmed", "corrected"; "imported"
	Fact   model.Fact
}

// Record is the envelope's fact as the model takes it.
func (e Envelope) Record() model.Record {
	return model.Record{ID: e.ID, On: e.On, At: e.At, Said: e.Stated, By: e.ByName, Imported: e.Judged == Imported, Fact: e.Fact}
}

// Incoming is a message as it came in, kept before anything is made of it.
type Incoming struct {
	ID   int64
	Key  string // what it is: the same message never has two rows
	Chat string // the transport's own id of the chat, for order within it
	Raw  []byte
	At   time.Time
}

// Outgoing is a message to be sent.
type Outgoing struct {
	ID      int64
	Key     string // what caused it, and which of several: never queued twice
	Herd    HerdID
	Chat    ChatID
	Kind    string // "reply", "nudge", "edit", Question, Removal
	Text    string
	Buttons [][]string // labels, row by row
	ReplyTo string     // message in the chat that it answers
	Edits   string     // message in the chat that it replaces the text of, or takes away
	Quiet   bool       // sent without a sound
	Urgent  bool       // a danger: goes before all else that waits
	File    *File      // goes out with Text as its caption; nil: none
	Told    string     // key of the nudge it delivers
	// GoodUntil is until when it is worth saying; zero: always.
	GoodUntil time.Time
	NotBefore time.Time
	State     string // "pending", "sending", "sent", "dropped"
	Tries     int
	Sent      string // the transport's id of the message sent
	Repeated  bool   // it may have arrived twice
}
