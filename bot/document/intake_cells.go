package document

import (
	"encoding/json"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"time"

	"troughbell/model"
	"troughbell/store"
)

// cellSort is what the cells of a column hold.
type cellSort int

const (
	aText cellSort = iota
	aNumber
	aCount
	aFlag
	aDay
	aMoment
	aList
	aPart // JSON
)

var (
	dayType  = reflect.TypeFor[model.Day]()
	timeType = reflect.TypeFor[time.Time]()
	rawType  = reflect.TypeFor[json.RawMessage]()
)

func sortOf(c store.Column) cellSort {
	t := c.Type
	for t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch {
	case t == dayType:
		return aDay
	case t == timeType:
		return aMoment
	case c.List():
		return aList
	case t == rawType:
		return aPart
	}
	switch t.Kind() {
	case reflect.Bool:
		return aFlag
	case reflect.Int, reflect.Int32, reflect.Int64:
		return aCount
	case reflect.Float64:
		return aNumber
	case reflect.Map, reflect.Struct, reflect.Slice:
		return aPart
	}
	return aText
}

// value reads a cell as the JSON of the fact has it.
func (s *sheet) value(cell string, c store.Column) (any, bool) {
	switch sortOf(c) {
	case aNumber, aCount:
		x, _, ok := s.number(cell)
		if sortOf(c) == aCount && x != float64(int64(x)) {
			return nil, false
		}
		return x, ok
	case aFlag:
		return flag(cell)
	case aDay:
		d, _, ok := s.day(cell)
		return d.String(), ok
	case aMoment:
		t, err := time.Parse(time.RFC3339Nano, cell)
		return t, err == nil
	case aList:
		return list(asItWas(cell), c)
	case aPart:
		var v any
		err := json.Unmarshal([]byte(cell), &v)
		return v, err == nil
	}
	return asItWas(cell), true
}

// list reads what the table joined. Only words can be told apart by commas; other
// parts are JSON, and so is the list of them in brackets.
func list(cell string, c store.Column) (any, bool) {
	t := c.Type
	for t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Elem().Kind() != reflect.String {
		var v []any
		err := json.Unmarshal([]byte("["+cell+"]"), &v)
		return v, err == nil
	}
	var out []any
	for _, w := range strings.Split(cell, ",") {
		if w = strings.TrimSpace(w); w == "" {
			return nil, false
		}
		out = append(out, w)
	}
	return out, true
}

func flag(cell string) (v, ok bool) {
	switch strings.ToLower(cell) {
	case "1", "true", "yes", "wahr", "ja":
		return true, true
	case "0", "false", "no", "falsch", "nein":
		return false, true
	}
	return false, false
}

// part is what the JSON of a fact has at a path; nil where it has nothing.
func part(body map[string]any, path []string) any {
	var v any = body
	for _, p := range path {
		m, ok := v.(map[string]any)
		if !ok {
			return nil
		}
		v = m[p]
	}
	return v
}

// put sets what the JSON of a fact has at a path.
func put(body map[string]any, path []string, v any) {
	for _, p := range path[:len(path)-1] {
		next, ok := body[p].(map[string]any)
		if !ok {
			next = map[string]any{}
			body[p] = next
		}
		body = next
	}
	body[path[len(path)-1]] = v
}

// written is a part of a fact as a table shows it.
func written(v any) string {
	switch v := v.(type) {
	case nil:
		return ""
	case string:
		return v
	case bool:
		return strconv.Itoa(map[bool]int{true: 1}[v])
	case float64:
		return plain(v)
	case []any:
		words := make([]string, len(v))
		for i, w := range v {
			words[i] = written(w)
		}
		return strings.Join(words, ", ")
	}
	b, err := json.Marshal(v)
	if err != nil { // it was read from JSON
		return ""
	}
	return string(b)
}

// says reports whether a cell says what the record has in that place.
func (s *sheet) says(cell string, have any, c store.Column) bool {
	trimmed := strings.TrimSpace(cell)
	if trimmed == "" {
		return have == nil || have == "" || have == false || have == 0.0 || isEmptyList(have)
	}
	switch kind := sortOf(c); kind {
	case aNumber, aCount:
		x, decimals, ok := s.number(trimmed)
		v, _ := have.(float64) // nothing is nought
		return ok && same(x, decimals, v)
	case aFlag:
		v, ok := flag(trimmed)
		was, _ := have.(bool) // nothing is false
		return ok && v == was
	case aDay:
		d, _, ok := s.day(trimmed)
		return ok && d.String() == have
	case aList, aPart:
		if oneLine(asItWas(cell)) == oneLine(written(have)) {
			return true
		}
		if kind == aList {
			cell = "[" + cell + "]"
		}
		var v any
		return json.Unmarshal([]byte(cell), &v) == nil && reflect.DeepEqual(v, have)
	}
	return oneLine(asItWas(cell)) == oneLine(written(have))
}

func isEmptyList(v any) bool {
	l, ok := v.([]any)
	return ok && len(l) == 0
}

// oneLine is a text by its words: spreadsheets change the ends of lines, and trim.
func oneLine(s string) string { return strings.Join(slices.Collect(strings.FieldsSeq(s)), " ") }
