package document

import (
	"encoding/json"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// Columns that every table has.
const (
	dayColumn    = "on_day"
	momentColumn = "at"
)

// tableName takes what systems add to the name of a file that is there already off:
// "weigh (1).csv", "weigh-2.csv".
var tableName = regexp.MustCompile(`^([a-z_]+?)(?:[ _-]*\(?[0-9]+\)?)?\.(?:csv|tsv|txt)$`)

// kindOf is the kind of the records that a table has, by the name of its file.
func kindOf(name string) (model.Kind, bool) {
	m := tableName.FindStringSubmatch(strings.ToLower(name))
	if m == nil {
		return "", false
	}
	for _, f := range model.Facts() {
		if string(f.Kind()) == m[1] || store.ViewName(f.Kind()) == m[1] {
			return f.Kind(), true
		}
	}
	return "", false
}

// empty is an empty fact of a kind; nil if there is no such kind.
func empty(kind model.Kind) model.Fact {
	facts := model.Facts()
	i := slices.IndexFunc(facts, func(f model.Fact) bool { return f.Kind() == kind })
	if i < 0 {
		return nil
	}
	return facts[i]
}

// table reads the rows of a table that Tables wrote. kind is empty where only the
// records themselves tell it.
func (in *intake) table(s *sheet, kind model.Kind) {
	var cols []store.Column
	if f := empty(kind); f != nil {
		cols = store.Columns(f)
	}
	dates := []string{dayColumn, momentColumn}
	var numbers []string
	for _, c := range cols {
		switch sortOf(c) {
		case aDay:
			dates = append(dates, c.Name)
		case aNumber:
			numbers = append(numbers, c.Name)
		}
	}
	in.out.Swapped = s.datesIn(dates, in.how.Units) || in.out.Swapped
	s.numbersIn(numbers)
	for _, h := range s.cols {
		if kind != "" && !knownColumn(cols, h) {
			in.unread(s.name + ": " + h)
		}
	}
	for i, l := range s.lines {
		s.lines[i].cells = nil // what a row keeps is its own
		r := Row{File: s.name, Line: l.number, ID: strings.Clone(strings.TrimSpace(s.cell(l, "id")))}
		switch f := in.tableRow(s, l, kind, &r); {
		case f != nil:
			in.bad(s.name, l.number, f)
		case in.alone(r):
			in.bad(s.name, l.number, faulty("row_alone"))
		case ours(r.Fact.Kind()):
		default:
			in.add(r, nil)
		}
	}
}

// ours reports whether records of a kind only tell of others that they were taken
// back or brought along: there is nothing of it to bring.
func ours(k model.Kind) bool { return k == model.Void{}.Kind() || k == model.Import{}.Kind() }

// alone reports whether a row means something only beside the other tables: a
// question and its end.
func (in *intake) alone(r Row) bool {
	switch r.Fact.(type) {
	case model.Question, model.Settled:
		return !in.out.Whole || r.ID == ""
	}
	return false
}

// knownColumn reports whether a column of a table is looked at.
func knownColumn(cols []store.Column, name string) bool {
	switch name {
	case "", "id", dayColumn, momentColumn, "said_by", "text", recordColumn:
		return true
	}
	if slices.ContainsFunc(cols, func(c store.Column) bool { return c.Name == name }) {
		return true
	}
	for _, x := range extras(namesOf(cols)) {
		if x.name == name {
			return true
		}
	}
	return false
}

func namesOf(cols []store.Column) []string {
	out := make([]string, len(cols))
	for i, c := range cols {
		out[i] = c.Name
	}
	return out
}

// tableRow reads one row. The record in its last column rules; the others must not
// say something else, else somebody changed them and it is not certain which is
// meant. Without the record they are all there is.
func (in *intake) tableRow(s *sheet, l sheetLine, kind model.Kind, r *Row) *fault {
	if s.wide(l) {
		return faulty("row_wide")
	}
	r.By, r.Text = strings.Clone(asItWas(s.cell(l, "said_by"))), strings.Clone(asItWas(s.cell(l, "text")))
	raw := strings.TrimSpace(s.cell(l, recordColumn))
	if raw == "" {
		return in.rowOfCells(s, l, kind, r)
	}
	var e exact
	if err := json.Unmarshal([]byte(raw), &e); err != nil || e.At.IsZero() {
		return faulty("row_record")
	}
	switch {
	case e.Kind == "":
		e.Kind = kind
	case kind != "" && e.Kind != kind:
		return faulty("row_kind", string(kind), string(e.Kind))
	}
	f := empty(e.Kind)
	if f == nil {
		return faulty("row_kind_unknown", shown(string(e.Kind)))
	}
	if e.Version > f.Version() {
		return faulty("row_newer")
	}
	var err error
	if r.Fact, err = store.Decode(e.Kind, e.Version, e.Body); err != nil {
		return faulty("row_record")
	}
	zone, err := store.Zone(e.Zone)
	if err != nil {
		return faulty("row_zone", shown(e.Zone))
	}
	r.At, r.Said, r.Zone, r.Stated, r.Timed = e.At.In(zone), e.Said.In(zone), zone.String(), e.Stated, true
	if !s.has("said_by") {
		r.By = e.By
	}
	if r.On = e.On; r.On == 0 {
		r.On = model.DayOf(r.At)
		if d, _, ok := s.day(s.cell(l, dayColumn)); ok {
			r.On = d
		}
	}
	return s.agrees(l, *r, zone)
}

// agrees looks for a cell that says something else than the record does.
func (s *sheet) agrees(l sheetLine, r Row, zone *time.Location) *fault {
	if s.has(dayColumn) {
		if d, _, ok := s.day(s.cell(l, dayColumn)); !ok || d != r.On {
			return faulty("row_differs", dayColumn, shown(s.cell(l, dayColumn)), r.On.String())
		}
	}
	if s.has(momentColumn) {
		if at, ok := s.moment(s.cell(l, momentColumn), zone); !ok || at.Unix() != r.At.Unix() {
			return faulty("row_differs", momentColumn, shown(s.cell(l, momentColumn)), r.At.Format(time.RFC3339))
		}
	}
	b, err := json.Marshal(r.Fact)
	if err != nil {
		return faulty("row_record")
	}
	var body map[string]any
	if err := json.Unmarshal(b, &body); err != nil {
		return faulty("row_record")
	}
	cols := store.Columns(r.Fact)
	for _, c := range cols {
		if s.has(c.Name) && !s.says(s.cell(l, c.Name), part(body, c.Path), c) {
			return faulty("row_differs", c.Name, shown(s.cell(l, c.Name)), shown(written(part(body, c.Path))))
		}
	}
	for _, x := range extras(namesOf(cols)) {
		if !s.has(x.name) {
			continue
		}
		si := written(part(body, cols[x.from].Path))
		if want := x.of(si); want != strings.TrimSpace(s.cell(l, x.name)) {
			v, decimals, ok := s.number(s.cell(l, x.name))
			w, _, wanted := (&sheet{comma: ','}).number(want)
			if !ok || !wanted || !same(v, decimals, w) {
				return faulty("row_differs", x.name, shown(s.cell(l, x.name)), want)
			}
		}
	}
	return nil
}

// moment reads a cell that holds a moment; without an offset it is of the zone.
func (s *sheet) moment(cell string, zone *time.Location) (time.Time, bool) {
	cell = strings.TrimSpace(cell)
	if t, err := time.Parse(time.RFC3339, cell); err == nil {
		return t.In(zone), true
	}
	d, minute, ok := s.day(cell)
	if !ok || minute == nil {
		return time.Time{}, false
	}
	return d.At(*minute, zone), true
}

// rowOfCells makes a record of the cells of a row that has lost its own.
func (in *intake) rowOfCells(s *sheet, l sheetLine, kind model.Kind, r *Row) *fault {
	f := empty(kind)
	if f == nil {
		return faulty("row_record")
	}
	if at := s.cell(l, momentColumn); strings.TrimSpace(at) != "" {
		t, ok := s.moment(at, in.how.Zone)
		if !ok {
			return faulty("row_moment", shown(at))
		}
		r.At, r.Timed, r.On = t, true, model.DayOf(t)
	}
	if on := s.cell(l, dayColumn); strings.TrimSpace(on) != "" {
		d, _, ok := s.day(on)
		if !ok {
			return faulty("row_day", shown(on))
		}
		r.On = d
	}
	switch {
	case r.On == 0:
		return faulty("row_no_day")
	case r.At.IsZero():
		r.At = noonOf(r.On, in.how.Zone)
		if r.At.After(in.how.Now) && r.On == model.DayOf(in.how.Now) { // this morning's list
			r.At = in.how.Now
		}
	}
	body := map[string]any{}
	for _, c := range store.Columns(f) {
		cell := strings.TrimSpace(s.cell(l, c.Name))
		if cell == "" {
			continue
		}
		v, ok := s.value(cell, c)
		if !ok {
			return faulty("row_cell", c.Name, shown(cell))
		}
		if v == false && c.Type.Kind() == reflect.Bool {
			continue // not said
		}
		put(body, c.Path, v)
	}
	b, err := json.Marshal(body)
	if err != nil {
		return faulty("row_record")
	}
	if r.Fact, err = store.Decode(kind, f.Version(), b); err != nil {
		return faulty("row_record")
	}
	return nil
}

func noonOf(d model.Day, zone *time.Location) time.Time { return d.At(12*60, zone) }
