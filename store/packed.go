package store

import (
	"bytes"
	"encoding/binary"
	"reflect"
	"time"

	"troughbell/model"
)

// Packed is the journal of a herd as it is held in memory for long: one run of
// bytes, each record as what differs from the one before it. It gives the records
// back as the file would.
type Packed struct {
	herd    HerdID
	bytes   []byte
	records int
	last    packed
	from    span // in bytes: what the latest record's message gave
}

// packed is what of a record the next one is told apart from.
type packed struct {
	judged  string
	seq, at int64
	on      model.Day
}

// span is a piece of the bytes.
type span struct{ begin, end int }

// The marks that a packed record begins with.
const (
	markStated = 1 << iota
	markID     // its ID is not the one of its number
	markJudged // it was judged unlike the one before it
	markFrom   // it came with another message than the one before it
)

// Pack packs the records of a herd, from its first on.
func Pack(herd HerdID, journal []Envelope) *Packed {
	p := &Packed{herd: herd}
	p.Add(journal)
	return p
}

// Seq is the number of the latest record; 0 if there is none.
func (p *Packed) Seq() int64 { return p.last.seq }

// Weight is about how many bytes it takes.
func (p *Packed) Weight() int { return cap(p.bytes) + int(reflect.TypeFor[Packed]().Size()) }

// room is for how many more bytes room is made at least, beside a tenth of what
// there is.
const room = 128

// Add packs the records that come next, as the file has them.
func (p *Packed) Add(journal []Envelope) {
	b, from := p.bytes, []byte(nil)
	for i := range journal {
		e := &journal[i]
		from = appendFrom(from[:0], e)
		var marks byte
		if e.Stated {
			marks |= markStated
		}
		if e.ID != RecordID(e.Seq) {
			marks |= markID
		}
		if e.Judged != p.last.judged {
			marks |= markJudged
		}
		if p.records == 0 || !bytes.Equal(from, b[p.from.begin:p.from.end]) {
			marks |= markFrom
		}
		at := e.At.UnixMilli()
		b = append(b, marks)
		b = binary.AppendVarint(b, e.Seq-p.last.seq)
		b = binary.AppendVarint(b, at-p.last.at)
		b = binary.AppendVarint(b, int64(e.On-p.last.on))
		if marks&markID != 0 {
			b = appendText(b, e.ID)
		}
		if marks&markJudged != 0 {
			b = appendText(b, e.Judged)
		}
		if marks&markFrom != 0 {
			p.from = span{len(b), len(b) + len(from)}
			b = append(b, from...)
		}
		b = appendFact(b, e.Fact)
		p.last = packed{seq: e.Seq, at: at, on: e.On, judged: judgedAs(p.last.judged, e.Judged)}
		p.records++
	}
	if cap(b) != cap(p.bytes) { // it grew by as much as what lives shortly would
		b = append(make([]byte, 0, len(b)+len(b)/10+room), b...)
	}
	p.bytes = b
}

// judgedAs is how a record was judged, not to hold the row that it was read from
// where the words are those of the record before.
func judgedAs(before, now string) string {
	if before == now {
		return before
	}
	return string([]byte(now))
}

// appendFrom writes what one message gives to its records.
func appendFrom(b []byte, e *Envelope) []byte {
	b = binary.AppendVarint(b, e.SaidAt.UnixMilli())
	b = binary.AppendVarint(b, int64(e.By))
	b = binary.AppendVarint(b, int64(e.Source.Chat))
	for _, s := range []string{e.Zone, e.ByName, e.Source.Message, e.Text} {
		b = appendText(b, s)
	}
	return b
}

// from is what one message gave to its records.
func (u *unpacking) from() Envelope {
	said, by, chat := u.number(), u.number(), u.number()
	e := Envelope{By: PersonID(by), Source: Source{Chat: ChatID(chat)}, Zone: u.text()}
	e.ByName, e.Source.Message, e.Text = u.text(), u.text(), u.text()
	zone, err := Zone(e.Zone)
	if err != nil { // it was known when the record was packed
		panic(err)
	}
	e.SaidAt = time.UnixMilli(said).In(zone)
	return e
}

// Journal gives the records.
func (p *Packed) Journal() []Envelope {
	out := make([]Envelope, p.records)
	u := unpacking{rest: string(p.bytes)} // one copy, of which all their words are pieces
	var last packed
	var from Envelope
	for i := range out {
		marks := u.take(1)[0]
		last.seq += u.number()
		last.at += u.number()
		last.on += model.Day(u.number())
		id := ""
		if marks&markID != 0 {
			id = u.text()
		} else {
			id = RecordID(last.seq)
		}
		if marks&markJudged != 0 {
			last.judged = u.text()
		}
		if marks&markFrom != 0 {
			from = u.from()
		}
		e := from
		e.ID, e.Seq, e.Herd, e.On, e.Judged = id, last.seq, p.herd, last.on, last.judged
		e.At, e.Stated = time.UnixMilli(last.at).In(from.SaidAt.Location()), marks&markStated != 0
		e.Fact = u.fact()
		out[i] = e
	}
	return out
}
