package store

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"

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
		" FROM record AS v WHERE v.herd = r.herd AND v.seq = (SELECT min(x.seq) FROM record AS x" + // by the index of voids
		" WHERE x.herd = r.herd AND x.voids = r.id))"},
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
	var columns []string
	add := func(column, expression string) {
		columns = append(columns, fmt.Sprintf("  %s AS %q", expression, column))
	}
	for _, c := range shared {
		add(c.name, c.sql)
	}
	for _, c := range Columns(f) {
		add(c.Name, c.sql())
	}
	return fmt.Sprintf("SELECT\n%s\nFROM record AS r WHERE r.kind = '%s'", strings.Join(columns, ",\n"), f.Kind())
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
