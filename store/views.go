package store

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"time"

	"troughbell/model"
)

// viewNames has the kinds whose view is not called like the kind: a row is a
// thing, so it has a noun.
var viewNames = map[model.Kind]string{
	"weigh": "weighing", "worm": "worming", "treat": "treatment", "arrive": "arrival", "remind": "reminder",
}

// ViewName is the name of the SQL view that shows the records of a kind.
func ViewName(kind model.Kind) string {
	if n, ok := viewNames[kind]; ok {
		return n
	}
	return string(kind)
}

// shared has the columns that every view begins with, each with its SQL. The
// moments are local, with the offset of the day.
var shared = []struct{ name, sql string }{
	{"herd", "r.herd"},
	{"id", "r.id"},
	{"on_day", "r.on_day"},
	{"at", "strftime('%Y-%m-%dT%H:%M:%S', r.at / 1000 + r.at_east, 'unixepoch')" +
		" || printf('%s%02d:%02d', iif(r.at_east < 0, '-', '+'), abs(r.at_east) / 3600, abs(r.at_east) % 3600 / 60)"},
	{"said_by", "r.said_by"},
	{"text", "r.text"},
	{"voided", "(SELECT coalesce(nullif(json_extract(v.body, '$.why'), ''), 'void')" +
		" FROM record AS v WHERE v.herd = r.herd AND v.voids = r.id ORDER BY v.seq LIMIT 1)"},
}

// views gives the SQL of the view of each kind, by its name.
func views() map[string]string {
	out := map[string]string{}
	for _, f := range model.Facts() {
		name := ViewName(f.Kind())
		out[name] = fmt.Sprintf("CREATE VIEW %q AS %s", name, viewSQL(f))
	}
	return out
}

// viewSQL is the query that shows the records of the fact's kind.
func viewSQL(f model.Fact) string {
	name := ViewName(f.Kind())
	taken := map[string]bool{}
	var columns []string
	add := func(column, expression string) {
		if taken[column] {
			column = name + "_" + column
		}
		taken[column] = true
		columns = append(columns, fmt.Sprintf("  %s AS %q", expression, column))
	}
	for _, c := range shared {
		add(c.name, c.sql)
	}
	eachField(reflect.TypeOf(f), "$", add)
	return fmt.Sprintf("SELECT\n%s\nFROM record AS r WHERE r.kind = '%s'", strings.Join(columns, ",\n"), f.Kind())
}

var (
	timeType = reflect.TypeFor[time.Time]()
	rawType  = reflect.TypeFor[json.RawMessage]()
)

// eachField gives the columns of a fact: one for each field of its JSON, those
// of a struct within it as columns of their own.
func eachField(t reflect.Type, path string, add func(column, expression string)) {
	for i := range t.NumField() {
		f := t.Field(i)
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		ft := f.Type
		for ft.Kind() == reflect.Pointer {
			ft = ft.Elem()
		}
		if f.Anonymous && name == "" {
			eachField(ft, path, add)
			continue
		}
		if !f.IsExported() || name == "-" {
			continue
		}
		if name == "" {
			name = f.Name
		}
		at := path + "." + name
		value := fmt.Sprintf("json_extract(r.body, '%s')", at)
		switch {
		case ft.Kind() == reflect.Bool && f.Type.Kind() != reflect.Pointer:
			add(name, "coalesce("+value+", 0)")
		case ft.Kind() == reflect.Slice && ft != rawType:
			add(name, fmt.Sprintf("(SELECT group_concat(value, ', ') FROM json_each(r.body, '%s'))", at))
		case ft.Kind() == reflect.Struct && ft != timeType:
			eachField(ft, at, add)
		default:
			add(name, value)
		}
	}
}

// refreshViews makes the views anew if the facts have changed since they were
// made.
func (tx *Tx) refreshViews() error {
	type view struct{ name, sql string }
	have, err := list(tx, "SELECT name, sql FROM sqlite_schema WHERE type = 'view'", nil, func(row scanner) (v view, err error) {
		err = row.Scan(&v.name, &v.sql)
		return v, err
	})
	if err != nil {
		return fmt.Errorf("views: %w", err)
	}
	want := views()
	for _, v := range have {
		if want[v.name] == v.sql {
			delete(want, v.name)
			continue
		}
		if _, err := tx.c.conn.ExecContext(context.Background(), fmt.Sprintf("DROP VIEW %q", v.name)); err != nil {
			return fmt.Errorf("view %s: %w", v.name, err)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(want)) {
		if _, err := tx.c.conn.ExecContext(context.Background(), want[name]); err != nil {
			return fmt.Errorf("view %s: %w", name, err)
		}
	}
	return nil
}
