package reading

import (
	"time"

	"troughbell/model"
)

// Context is all that a text is read against.
type Context struct {
	Now  time.Time   // the message's own time, in the herd's zone
	Herd *model.Herd // names, units, sizes, and the state that judges

	// Pending is the question that the text may answer, nil if none is open.
	Pending *Pending
	// Before is what this person's texts were read as lately, the newest
	// first; a correction ("no, moss", "37 not 38") speaks of it.
	Before []Recorded
	// ReplyTo is what the message that this one replies to was read as.
	ReplyTo []Recorded
	// LastAsked is the latest question this person asked, for "why?".
	LastAsked *Ask
	// LastNudge is what the latest nudge, or the one replied to, was about.
	LastNudge []string
	// People are the names of the household's people, where the text may speak of
	// them: see OfPeople.
	People []string
}

// Recorded is an entry that was recorded before.
type Recorded struct {
	ID    string // of the record
	Entry Entry
	Text  string    // the original message
	At    time.Time // when it was said
}

// Entry is one thing that a text says.
type Entry struct {
	Act     Act
	On      model.Day // the local day it belongs to
	Minute  *int      // after midnight, only if the text states a time
	Dated   bool      // the text states the day
	Replace string    // the record that it corrects; empty if none
	Instead bool      // of a booking: it takes the place of the next one
	// InsteadOf is the day of the appointment whose place it takes, where the text
	// tells which.
	InsteadOf model.Day
	From      int // the part of the text it was read from, in bytes
	To        int
}

// Act is what an entry does. Intent is the contract's name for it.
type Act interface {
	Intent() string
}

// Fact is an act that records a fact of the herd.
type Fact struct{ model.Fact }

// Intent of a fact is the kind of its record.
func (f Fact) Intent() string { return string(f.Kind()) }

// Ask is a question to answer from the figures.
type Ask struct {
	Topic    string
	Animals  []string
	On       *model.Day // a day asked about
	TargetKg *float64   // a weight asked about
	Assume   *model.Assumption
	What     string // "plan" of a newcomer: nothing; "sizes": the thing asked about
	Count    int    // pigs asked about, for a plan
	WeightKg *float64
	Product  string
	About    string   // what within the topic, or of a history the kind of record; see AboutCold
	AreaM2   *float64 // ground asked about
	FlowLMin *float64 // of a drinker, litres a minute
	Price    *float64 // that a pig sells for, in the herd's money
	HighC    *float64 // of a day whose heat is asked about

	// Season is the season asked about, where it is not today's: its year, or
	// [LastSeason].
	Season string `json:",omitempty"`

	// Picture says that the answer is wanted as a picture; Dark and Light in which
	// colours, where the text says so.
	Picture     bool `json:",omitempty"`
	Dark, Light bool `json:",omitempty"`

	// At is when it was asked, of one that is kept for a "why?".
	At time.Time `json:",omitzero"`
}

func (Ask) Intent() string { return "ask" }

// LastSeason is the latest season that is over.
const LastSeason = "last"

// Done says that what a nudge asked for is done.
type Done struct{ About []string }

func (Done) Intent() string { return "done" }

// Snooze puts a nudge off by hours or until a day; NextChore is until the next
// chore day, Stop for the season.
type Snooze struct {
	About     []string
	Hours     int
	Until     *model.Day
	NextChore bool
	Stop      bool
}

func (Snooze) Intent() string { return "snooze" }

// Undo takes the latest record back, or the latest of a kind. Record is set
// where a certain one is meant; Named where the text names it, which may want a tap.
type Undo struct {
	Of, Record, Named string
	// Bare says that the text named no kind: Of is that of the latest record.
	Bare bool
}

func (Undo) Intent() string { return "undo" }

// Help asks how to use the bot, about a thing or in general.
type Help struct{ About string }

func (Help) Intent() string { return "help" }

// Do is a wish that is neither record nor question: "export", "invite",
// "privacy", "start", "skip" (the set-up question), "cancel"; "delete herd",
// "forget me", "people"; "remove person" and "hand over", of whom Arg names;
// "report", of the season that Arg names as in [Ask].
type Do struct {
	What string
	Arg  string
}

func (Do) Intent() string { return "help" }

// None is a text with nothing to record or answer. Reason is a code.
type None struct {
	Reason string
	// Coming is the pigs that the text says are to come.
	Coming *model.Expected
}

func (None) Intent() string { return "none" }

// Reasons of None.
const (
	NoneChatter  = "chatter"
	NoneThanks   = "thanks"
	NonePlan     = "plan"
	NoneHearsay  = "hearsay"
	NoneNegation = "negation"
	NoneForeign  = "not_this_herd"
	NoneUnknown  = "not_understood"
	NoneFuture   = "future"  // a fact dated in the future
	NoneBefore   = "before"  // a fact dated before the pigs came
	NoneNoPigs   = "no_pigs" // a fact of pigs where none were told of
	NoneUnit     = "unit"    // a unit that is not taken, such as stones
	NoneEmpty    = "empty"
	NoneSettled  = "settled" // an answer to a question no longer open
)

// Clarify asks back. Nothing of it is recorded until it is answered.
type Clarify struct {
	About string   // the intent in doubt
	Code  string   // of the question, in the catalogue of sentences
	Names []string // what fills the sentence
	Q     []model.Quantity
	// Draft is what would be recorded once Want is known.
	Draft []Entry
	// Want is the slot that a typed answer fills; empty if only a choice will do.
	Want string
	// Choices are the likeliest answers, best first, at most four.
	Choices []Choice
}

func (Clarify) Intent() string { return "clarify" }

// Choice is one answer to a Clarify: what it records. An empty Entries records
// nothing.
type Choice struct {
	// Label is set where it is a name of the herd's own or a number; else Code
	// names a phrase of the catalogue.
	Label   string
	Code    string
	Q       []model.Quantity
	Entries []Entry
}

// Pending is a question that is open: the record it was asked in, and the
// Clarify with its labels as the person saw them.
type Pending struct {
	ID      string
	Clarify Clarify
	Labels  []string // as shown, one for each choice
	Text    string   // the message that raised it
	AskedAt time.Time
	Setup   string // the set-up step, where it is one of those
}

// Reading is what a text says.
type Reading struct {
	Entries []Entry
	// Left is the parts of the text that were not understood, as they stand.
	Left []string
	// Answers says that the text answered the pending question; Choice is the code
	// of the choice taken, where it was one.
	Answers bool
	Choice  string
}
