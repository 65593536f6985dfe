package store

import (
	"reflect"
	"strings"
	"time"

	"troughbell/model"
)

// Packed is the journal of a herd as it is held in memory for long: what the
// records of one message have in common is there once, and names are shared. It
// gives the records back as the file would.
type Packed struct {
	herd    HerdID
	records []packed
	weight  int
}

type packed struct {
	fact   model.Fact
	from   *said
	id     string
	judged string
	at     int64 // milliseconds since 1970
	seq    int64
	on     model.Day
	stated bool
}

// said is what one message gave to its records.
type said struct {
	text, message, byName string
	by                    PersonID
	chat                  ChatID
	zone                  *time.Location
	at                    int64
}

// Pack packs the records of a herd, from its first on.
func Pack(herd HerdID, journal []Envelope) *Packed {
	p := &Packed{herd: herd, weight: int(reflect.TypeFor[Packed]().Size())}
	p.Add(journal)
	return p
}

// Seq is the number of the latest record; 0 if there is none.
func (p *Packed) Seq() int64 {
	if len(p.records) == 0 {
		return 0
	}
	return p.records[len(p.records)-1].seq
}

// Weight is about how many bytes it takes.
func (p *Packed) Weight() int {
	return p.weight + cap(p.records)*int(reflect.TypeFor[packed]().Size())
}

// spare is how many records there is room for when the room is made.
const spare = 8

// Add packs the records that come next, as the file has them.
func (p *Packed) Add(journal []Envelope) {
	if need := len(p.records) + len(journal); need > cap(p.records) {
		p.records = append(make([]packed, 0, need+spare), p.records...)
	}
	for _, e := range journal {
		var before packed
		if n := len(p.records); n > 0 {
			before = p.records[n-1]
		}
		from := said{
			text: e.Text, message: e.Source.Message, byName: e.ByName, by: e.By, chat: e.Source.Chat,
			zone: e.At.Location(), at: e.SaidAt.UnixMilli(),
		}
		next := packed{ // the ID cloned, not to hold the row that it was read from
			fact: e.Fact, from: before.from, id: strings.Clone(e.ID), judged: e.Judged, at: e.At.UnixMilli(), seq: e.Seq, on: e.On, stated: e.Stated,
		}
		if before.from == nil || *before.from != from {
			if before.from != nil && before.from.byName == from.byName {
				from.byName = before.from.byName
			}
			next.from = &from
			p.weight += int(reflect.TypeFor[said]().Size()) + len(from.text) + len(from.message)
		}
		if before.judged == next.judged {
			next.judged = before.judged
		}
		p.records = append(p.records, next)
		p.weight += len(next.id) + weightOf(reflect.ValueOf(e.Fact))
	}
}

// Journal gives the records.
func (p *Packed) Journal() []Envelope {
	out := make([]Envelope, len(p.records))
	for i := range p.records {
		r := &p.records[i]
		f := r.from
		out[i] = Envelope{
			ID: r.id, Seq: r.seq, Herd: p.herd, On: r.on, Zone: f.zone.String(), At: time.UnixMilli(r.at).In(f.zone), Stated: r.stated,
			SaidAt: time.UnixMilli(f.at).In(f.zone), By: f.by, ByName: f.byName, Source: Source{f.chat, f.message}, Text: f.text,
			Judged: r.judged, Fact: r.fact,
		}
	}
	return out
}

// weightOf is how many bytes a value takes, with what it points to.
func weightOf(v reflect.Value) int {
	return int(v.Type().Size()) + weightBehind(v)
}

var instantType = reflect.TypeFor[time.Time]()

// weightBehind is how many bytes what a value points to takes.
func weightBehind(v reflect.Value) (sum int) {
	switch v.Kind() {
	case reflect.String:
		return v.Len()
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			return weightOf(v.Elem())
		}
	case reflect.Slice:
		sum = v.Cap() * int(v.Type().Elem().Size())
		for i := range v.Len() {
			sum += weightBehind(v.Index(i))
		}
	case reflect.Map:
		const head, slots = 56, 8 // of Go's maps, which are made of groups of slots
		sum = head + (v.Len()/slots+1)*slots*int(v.Type().Key().Size()+v.Type().Elem().Size())
		for entry := v.MapRange(); entry.Next(); {
			sum += weightBehind(entry.Key()) + weightBehind(entry.Value())
		}
	case reflect.Struct:
		if v.Type() == instantType { // its zone is shared
			return 0
		}
		for i := range v.NumField() {
			sum += weightBehind(v.Field(i))
		}
	}
	return sum
}
