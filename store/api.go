package store

import (
	"context"
	"time"
)

// Options of Open.
type Options struct {
	// Ephemeral trades the safety of the disk for speed: for a herd that lives
	// and dies with a run.
	Ephemeral bool
}

// Store is an open database file.
type Store struct{}

// Open opens the file for writing, makes it if it is not there, and brings its
// schema up to date. The error says what to do in one sentence.
func Open(ctx context.Context, path string, o Options) (*Store, error) { panic("store") }

// OpenReader opens the file for reading, beside a process that writes it.
func OpenReader(ctx context.Context, path string) (*Store, error) { panic("store") }

// Close closes the file.
func (s *Store) Close() error { panic("store") }

// Write runs f in one transaction that is committed if f returns nil.
func (s *Store) Write(ctx context.Context, f func(*Tx) error) error { panic("store") }

// Read runs f on one consistent state.
func (s *Store) Read(ctx context.Context, f func(*Tx) error) error { panic("store") }

// Tx is a transaction.
type Tx struct{}

// Herds lists the herds by id.
func (tx *Tx) Herds() ([]HerdRow, error) { panic("store") }

// Herd gives one herd.
func (tx *Tx) Herd(id HerdID) (HerdRow, error) { panic("store") }

// CreateHerd makes a herd.
func (tx *Tx) CreateHerd(name, zone string, now time.Time) (HerdID, error) { panic("store") }

// Journal gives all records of a herd in the order they came in, voided ones
// and the voids included.
func (tx *Tx) Journal(id HerdID) ([]Envelope, error) { panic("store") }

// Append adds a record to its herd's journal, and gives it its ID and Seq. A
// settings record of the name or the zone changes the herd's row too.
func (tx *Tx) Append(e *Envelope) error { panic("store") }

// BySource gives the records that came from a message, not voided ones only if
// live is true.
func (tx *Tx) BySource(herd HerdID, s Source, live bool) ([]Envelope, error) { panic("store") }

// SetLookAgain notes when the herd is to be looked at for nudges.
func (tx *Tx) SetLookAgain(id HerdID, at time.Time) error { panic("store") }

// Due lists herds that are to be looked at, not paused, at most limit.
func (tx *Tx) Due(now time.Time, limit int) ([]HerdID, error) { panic("store") }

// CreatePerson makes a person.
func (tx *Tx) CreatePerson(name string) (PersonID, error) { panic("store") }

// Join makes a person a member of a herd, or changes the role.
func (tx *Tx) Join(herd HerdID, person PersonID, role Role) error { panic("store") }

// Member gives a person's membership; false if there is none.
func (tx *Tx) Member(herd HerdID, person PersonID) (Member, bool, error) { panic("store") }

// Members lists the people of a herd.
func (tx *Tx) Members(herd HerdID) ([]Member, error) { panic("store") }

// SetOperator makes a person the operator of this server.
func (tx *Tx) SetOperator(person PersonID) error { panic("store") }

// HasOperator reports whether the server has an operator.
func (tx *Tx) HasOperator() (bool, error) { panic("store") }

// ChatOf gives the chat of a transport, made if it is not there.
func (tx *Tx) ChatOf(transport, external string, group bool) (Chat, error) { panic("store") }

// Chat gives a chat.
func (tx *Tx) Chat(id ChatID) (Chat, error) { panic("store") }

// SaveChat changes a chat: its herd, person, external id or reachability.
func (tx *Tx) SaveChat(c Chat) error { panic("store") }

// Chats lists the chats in which a herd is spoken of.
func (tx *Tx) Chats(herd HerdID) ([]Chat, error) { panic("store") }

// NewCode makes a one-time code, kept only as its hash, that gives a role in a
// herd; herd 0 is a herd still to be made, with operator also the server.
func (tx *Tx) NewCode(herd HerdID, role Role, operator bool, now time.Time, good time.Duration) (code string, err error) {
	panic("store")
}

// Grant is what a code gives.
type Grant struct {
	Herd     HerdID
	Role     Role
	Operator bool
}

// UseCode spends a code; false if there is none such, or it is spent or old.
func (tx *Tx) UseCode(code string, now time.Time) (Grant, bool, error) { panic("store") }

// Receive keeps a message that came in; false if it was there already.
func (tx *Tx) Receive(in Incoming) (bool, error) { panic("store") }

// NextIncoming gives the oldest message not yet handled; false if none.
func (tx *Tx) NextIncoming() (Incoming, bool, error) { panic("store") }

// Handled marks a message as handled; problem is empty if all went well.
func (tx *Tx) Handled(id int64, problem string) error { panic("store") }

// Queue puts a message into the outbox; one whose key is there already is left
// as it is, and false is given.
func (tx *Tx) Queue(o *Outgoing) (bool, error) { panic("store") }

// ToSend lists messages that may go out now: the oldest one of each chat that
// has none under way, at most limit.
func (tx *Tx) ToSend(now time.Time, limit int) ([]Outgoing, error) { panic("store") }

// NextSend is when the earliest pending message may go out; false if none.
func (tx *Tx) NextSend() (time.Time, bool, error) { panic("store") }

// SaveOutgoing notes how sending goes: State, Tries, NotBefore, Sent, Repeated.
func (tx *Tx) SaveOutgoing(o Outgoing) error { panic("store") }

// Sending lists messages whose outcome is unknown: found in "sending" at start.
func (tx *Tx) Sending() ([]Outgoing, error) { panic("store") }

// OutgoingBySent finds what was sent as the message of the chat.
func (tx *Tx) OutgoingBySent(chat ChatID, sent string) (Outgoing, bool, error) { panic("store") }

// OutgoingByKey finds a message of the outbox by its key.
func (tx *Tx) OutgoingByKey(key string) (Outgoing, bool, error) { panic("store") }

// Deliveries lists the messages that delivered the nudge of that key.
func (tx *Tx) Deliveries(herd HerdID, told string) ([]Outgoing, error) { panic("store") }

// Value and SetValue keep small facts of the server itself, such as the offset
// of the poll and the time of the last tick.
func (tx *Tx) Value(name string) (string, error) { panic("store") }
func (tx *Tx) SetValue(name, value string) error { panic("store") }

// Backup writes a consistent copy to a new file, checked, in use or not.
func (s *Store) Backup(ctx context.Context, to string) error { panic("store") }

// Restore puts a backup in the place of the database at path, which no process
// may have open; it refuses to overwrite one unless force is set.
func Restore(ctx context.Context, from, path string, force bool) error { panic("store") }
