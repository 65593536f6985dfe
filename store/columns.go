package store

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"time"

	"troughbell/model"
)

// Column is a column of a kind's view that shows a part of the fact.
type Column struct {
	Name string
	// Path is where the part stands in the fact's JSON.
	Path []string
	Type reflect.Type // of the field, a pointer where it may be left out
}

// Columns lists the columns that show the parts of a fact, in their order. One
// whose name the shared columns have is called after its view as well.
func Columns(f model.Fact) []Column {
	taken := map[string]bool{}
	for _, c := range shared {
		taken[c.name] = true
	}
	var out []Column
	eachField(reflect.TypeOf(f), nil, func(c Column) {
		if taken[c.Name] {
			c.Name = ViewName(f.Kind()) + "_" + c.Name
		}
		taken[c.Name] = true
		out = append(out, c)
	})
	return out
}

var (
	timeType = reflect.TypeFor[time.Time]()
	rawType  = reflect.TypeFor[json.RawMessage]()
)

// sql is the expression that shows the column's part of a record.
func (c Column) sql() string {
	at := "$." + strings.Join(c.Path, ".")
	switch {
	case c.Type.Kind() == reflect.Bool:
		return fmt.Sprintf("coalesce(json_extract(r.body, '%s'), 0)", at)
	case c.List():
		return fmt.Sprintf("(SELECT group_concat(value, ', ') FROM json_each(r.body, '%s'))", at)
	}
	return fmt.Sprintf("json_extract(r.body, '%s')", at)
}

// List reports whether the column shows a list, joined by commas.
func (c Column) List() bool {
	t := c.Type
	for t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	return t.Kind() == reflect.Slice && t != rawType
}

// eachField gives the columns of a fact: one for each field of its JSON, those
// of a struct within it as columns of their own.
func eachField(t reflect.Type, path []string, add func(Column)) {
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
		at := append(path[:len(path):len(path)], name)
		if ft.Kind() == reflect.Struct && ft != timeType {
			eachField(ft, at, add)
			continue
		}
		add(Column{Name: name, Path: at, Type: f.Type})
	}
}
