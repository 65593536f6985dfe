package model

import (
	"encoding/json"
	"fmt"
	"reflect"
	"sort"
	"time"
)

// Kind names a kind of fact. The names are part of the file format.
type Kind string

// Fact is something that a person said happened, or that the program did: the
// body of one record. Its fields are SI; what was not said is nil or empty.
type Fact interface {
	Kind() Kind
	// Version is the version of the fact's own layout, from 1.
	Version() int
	// Check says what is impossible in the fact taken by itself, whatever the
	// herd. It never judges against a herd.
	Check() error
	// fold adds the fact to the herd.
	fold(h *Herd, r Record)
}

// facts has one line for each kind of fact there is.
var facts = []Fact{
	Weigh{},
	Refill{},
	FeedLevel{},
	Stock{},
	Mixed{},
	Water{},
	WallowFill{},
	Worm{},
	Treat{},
	Move{},
	Sick{},
	Alarm{},
	Fence{},
	Weather{},
	Forecast{},
	Recipe{},
	Spend{},
	Arrive{},
	Gone{},
	Booked{},
	AwayFrom{},
	Expected{},
	Note{},
	Remind{},
	Done{},
	Snooze{},
	Setting{},
	Told{},
	Question{},
	Settled{},
	Void{},
	Import{},
}

var factTypes = func() map[Kind]reflect.Type {
	m := make(map[Kind]reflect.Type, len(facts))
	for _, f := range facts {
		m[f.Kind()] = reflect.TypeOf(f)
	}
	return m
}()

// Facts lists one empty fact of every kind, in a fixed order.
func Facts() []Fact { return append([]Fact(nil), facts...) }

// DecodeFact reads a fact of the given kind from the JSON that encoding it gave.
func DecodeFact(kind Kind, body []byte) (Fact, error) {
	t, ok := factTypes[kind]
	if !ok {
		return nil, fmt.Errorf("unknown kind of record %q", kind)
	}
	p := reflect.New(t)
	if err := json.Unmarshal(body, p.Interface()); err != nil {
		return nil, fmt.Errorf("record of kind %q: %w", kind, err)
	}
	return p.Elem().Interface().(Fact), nil
}

// Record is a fact with its time: one thing known about the herd.
type Record struct {
	ID   string    // the record's own name, unique in the herd
	On   Day       // the local day the fact belongs to
	At   time.Time // the moment, as well as it is known, in the herd's zone
	Said bool      // the person stated the time of day
	By   string    // who said it, as the household calls them; empty: the program
	// Imported says that it came with a file, and not as a text.
	Imported bool
	Fact     Fact
}

// before orders records by moment, kind and content, never by arrival, so that
// the same facts give the same herd in whichever order they came in.
func before(a, b *keyed) bool {
	if !a.At.Equal(b.At) {
		return a.At.Before(b.At)
	}
	if ra, rb := ranks[a.Fact.Kind()], ranks[b.Fact.Kind()]; ra != rb {
		return ra < rb
	}
	return a.content() < b.content()
}

// keyed is a record with what orders it among others of its moment and kind,
// written out only where there are any.
type keyed struct {
	Record
	key string
}

func (k *keyed) content() string {
	if k.key == "" {
		b, err := json.Marshal(k.Fact)
		if err != nil { // no fact holds what JSON cannot
			panic(fmt.Sprintf("model: record %s: %v", k.ID, err))
		}
		k.key = string(b)
	}
	return k.key
}

// ranks puts what sets the scene before what happens in it, at one moment.
var ranks = func() map[Kind]int {
	m := map[Kind]int{}
	for _, k := range []Kind{"settings", "arrive", "move"} {
		m[k] = len(m)
	}
	for _, f := range facts {
		if _, first := m[f.Kind()]; !first {
			m[f.Kind()] = len(m)
		}
	}
	return m
}()

// Fold makes a herd of its records. Records that a Void names are left out; the
// order in which the records are given changes nothing. Two records with one
// moment and the same content are both counted.
func Fold(records []Record) *Herd {
	voided := map[string]bool{}
	for _, r := range records {
		if v, ok := r.Fact.(Void); ok {
			voided[v.Record] = true
		}
	}
	h := newHerd()
	for _, r := range inOrder(records, voided) {
		h.fold(r)
	}
	h.coverTreatments()
	return h
}

// inOrder is the records that stand, in the order in which they are folded. Most
// journals are in that order as they are.
func inOrder(records []Record, voided map[string]bool) []Record {
	if len(voided) == 0 && areInOrder(records) {
		return records
	}
	in := make([]keyed, 0, len(records))
	for _, r := range records {
		if !voided[r.ID] {
			in = append(in, keyed{Record: r})
		}
	}
	sort.SliceStable(in, func(i, j int) bool { return before(&in[i], &in[j]) })
	out := make([]Record, len(in))
	for i := range in {
		out[i] = in[i].Record
	}
	return out
}

func areInOrder(records []Record) bool {
	for i := 1; i < len(records); i++ {
		if !records[i].At.After(records[i-1].At) && before(&keyed{Record: records[i]}, &keyed{Record: records[i-1]}) {
			return false
		}
	}
	return true
}

// fold takes in the record that comes after all others.
func (h *Herd) fold(r Record) {
	r.Fact.fold(h, r)
	if h.First.IsZero() {
		h.First = r.At
	}
	h.Last, h.latest = r.At, r
}

// Dated is a fact of one kind with the record it came in.
type Dated[F Fact] struct {
	Record
	F F
}

func dated[F Fact](f F, r Record) Dated[F] { return Dated[F]{r, f} }
