package document

import (
	"bytes"
	"path"
	"strings"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Bounds of a file that is taken in. A season of a few pigs exports some 250 records,
// 60 bytes each where packed and 400 unpacked, so what a herd gives out fits for as
// long as any is kept. The rows and cells bound the memory: 130 MB at most.
const (
	MaxIntake   = 10 << 20 // bytes of the file as it came
	maxUnpacked = 64 << 20 // bytes of all tables of a ZIP together
	maxEntries  = 200      // files in a ZIP
	maxRatio    = 200      // how many times larger than packed one may be
	ratioFrom   = 1 << 20  // bytes below which the ratio says nothing
	maxRows     = 100_000  // of all tables together
	maxColumns  = 100
	maxCells    = 3_000_000 // of all tables together
	maxCell     = 64 << 10  // bytes
)

// Terms are what a file is read against: how the herd writes dates and weights,
// its zone, and the moment after which nothing can have happened.
type Terms struct {
	Units string // model.US, model.Metric, or empty: not stated
	Zone  *time.Location
	Now   time.Time
}

// Intake is what a file brings.
type Intake struct {
	Whole   bool // a ZIP of tables
	Rows    []Row
	Bad     []Bad    // what could not be read, in the order of the file
	Unread  []string // columns and files that were not looked at
	Swapped bool     // the dates are not in the herd's order, by their own evidence
}

// Row is a record that a file brings.
type Row struct {
	File string
	Line int
	ID   string // what the file calls the record; empty: nothing

	Fact   model.Fact
	On     model.Day
	At     time.Time // noon of the day where only that is known
	Timed  bool      // the moment is known, not only the day
	Stated bool
	Said   time.Time // zero: not known
	Zone   string    // empty: the herd's
	By     string
	Text   string
	Listed bool // of a plain list of weights: the pig's name is as somebody wrote it
}

// Bad is a line that cannot be taken in, or with Line 0 a whole file. Code is of
// the catalogue of sentences, Names fill it.
type Bad struct {
	File  string
	Line  int
	Code  string
	Names []string
}

// Unreadable is the error of a file that cannot be taken in at all.
type Unreadable struct {
	Code  string
	Names []string
}

func (u *Unreadable) Error() string {
	return "the file cannot be taken in: " + strings.Join(append([]string{u.Code}, u.Names...), " ")
}

func unreadable(code string, names ...string) error { return &Unreadable{code, names} }

// fault is why a line cannot be taken in.
type fault struct {
	code  string
	names []string
}

func (f *fault) Error() string { return strings.Join(append([]string{f.code}, f.names...), " ") }

func faulty(code string, names ...string) *fault { return &fault{code, names} }

// ReadTables reads what Tables wrote, also after a spreadsheet had it: the ZIP, or
// one of its files, or a plain list of weights. Every error is an *Unreadable.
func ReadTables(name string, b []byte, how Terms) (Intake, error) {
	in := intake{how: how}
	name = shown(path.Base(strings.ReplaceAll(name, `\`, "/")))
	var err error
	switch {
	case len(b) > MaxIntake:
		err = unreadable("too_large")
	case len(bytes.TrimSpace(b)) == 0:
		err = unreadable("empty")
	case bytes.HasPrefix(b, []byte("PK")):
		in.out.Whole = true
		err = in.unzip(b)
	default:
		err = in.sheet(name, bytes.NewReader(b))
	}
	if err != nil {
		return Intake{}, err
	}
	if len(in.out.Rows) == 0 && len(in.out.Bad) == 0 {
		return Intake{}, unreadable("no_rows")
	}
	return in.out, nil
}

// intake is a file on its way in.
type intake struct {
	how   Terms
	out   Intake
	rows  int
	cells int
}

func (in *intake) bad(file string, line int, f *fault) {
	in.out.Bad = append(in.out.Bad, Bad{File: file, Line: line, Code: f.code, Names: f.names})
}

// add takes a row in, or notes why it cannot be.
func (in *intake) add(r Row, f *fault) {
	if f == nil {
		f = in.judge(r)
	}
	if f != nil {
		in.bad(r.File, r.Line, f)
		return
	}
	in.out.Rows = append(in.out.Rows, r)
}

// judge says what is impossible in a row, whatever the herd.
func (in *intake) judge(r Row) *fault {
	if err := r.Fact.Check(); err != nil {
		return faulty("row_check", err.Error())
	}
	if r.At.After(in.how.Now) || r.On > model.DayOf(in.how.Now) || r.Said.After(in.how.Now) {
		return faulty("row_future", r.On.String())
	}
	if r.On < firstDay || r.At.Before(firstDay.At(0, time.UTC)) {
		return faulty("row_day", r.On.String())
	}
	if r.Zone != "" {
		if _, err := store.Zone(r.Zone); err != nil {
			return faulty("row_zone", r.Zone)
		}
	}
	return sound(r, in.how.Now)
}
