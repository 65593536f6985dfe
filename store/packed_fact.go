package store

import (
	"encoding/binary"
	"fmt"
	"math"
	"reflect"
	"time"

	"troughbell/model"
)

// kinds numbers the kinds of fact; a number holds as long as the process.
var kinds, kindTypes = func() (numbers map[model.Kind]uint64, types []reflect.Type) {
	numbers = map[model.Kind]uint64{}
	for i, f := range model.Facts() {
		numbers[f.Kind()] = uint64(i)
		types = append(types, reflect.TypeOf(f))
	}
	return numbers, types
}()

// appendFact writes a fact with its kind.
func appendFact(b []byte, f model.Fact) []byte {
	b = binary.AppendUvarint(b, kinds[f.Kind()])
	return appendValue(b, reflect.ValueOf(f))
}

func (u *unpacking) fact() model.Fact {
	v := reflect.New(kindTypes[u.count()]).Elem()
	u.value(v)
	return v.Interface().(model.Fact)
}

func appendText(b []byte, s string) []byte {
	return append(binary.AppendUvarint(b, uint64(len(s))), s...)
}

var instantType = reflect.TypeFor[time.Time]()

// appendValue writes a value without its type. Of a struct it writes which fields
// are said, and those.
func appendValue(b []byte, v reflect.Value) []byte {
	switch v.Kind() {
	case reflect.String:
		return appendText(b, v.String())
	case reflect.Bool:
		if v.Bool() {
			return append(b, 1)
		}
		return append(b, 0)
	case reflect.Int, reflect.Int32, reflect.Int64:
		return binary.AppendVarint(b, v.Int())
	case reflect.Uint8:
		return append(b, byte(v.Uint()))
	case reflect.Float64:
		return binary.LittleEndian.AppendUint64(b, math.Float64bits(v.Float()))
	case reflect.Pointer: // of a field that is said
		return appendValue(b, v.Elem())
	case reflect.Slice:
		b = binary.AppendUvarint(b, uint64(v.Len()))
		for i := range v.Len() {
			b = appendValue(b, v.Index(i))
		}
		return b
	case reflect.Map:
		b = binary.AppendUvarint(b, uint64(v.Len()))
		for entry := v.MapRange(); entry.Next(); {
			b = appendValue(appendValue(b, entry.Key()), entry.Value())
		}
		return b
	case reflect.Struct:
		if v.Type() == instantType {
			return appendText(b, v.Interface().(time.Time).Format(time.RFC3339Nano))
		}
		said := uint64(0)
		for i := range v.NumField() {
			if !v.Field(i).IsZero() {
				said |= 1 << i
			}
		}
		b = binary.AppendUvarint(b, said)
		for i := range v.NumField() {
			if said&(1<<i) != 0 {
				b = appendValue(b, v.Field(i))
			}
		}
		return b
	}
	panic(fmt.Sprintf("store: no fact holds a %s", v.Type())) // a test packs each kind
}

// unpacking reads what appendValue wrote.
type unpacking struct{ rest string }

func (u *unpacking) take(n int) string {
	s := u.rest[:n]
	u.rest = u.rest[n:]
	return s
}

func (u *unpacking) count() (n uint64) {
	for shift := 0; ; shift += 7 {
		c := u.take(1)[0]
		n |= uint64(c&0x7f) << shift
		if c < 0x80 {
			return n
		}
	}
}

func (u *unpacking) number() int64 {
	n := u.count()
	if n&1 != 0 {
		return ^int64(n >> 1)
	}
	return int64(n >> 1)
}

func (u *unpacking) text() string { return u.take(int(u.count())) }

// value reads a value into v, which is empty.
func (u *unpacking) value(v reflect.Value) {
	switch v.Kind() {
	case reflect.String:
		v.SetString(u.text())
	case reflect.Bool:
		v.SetBool(u.take(1)[0] == 1)
	case reflect.Int, reflect.Int32, reflect.Int64:
		v.SetInt(u.number())
	case reflect.Uint8:
		v.SetUint(uint64(u.take(1)[0]))
	case reflect.Float64:
		v.SetFloat(math.Float64frombits(binary.LittleEndian.Uint64([]byte(u.take(8)))))
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		u.value(v.Elem())
	case reflect.Slice:
		n := int(u.count())
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		for i := range n {
			u.value(v.Index(i))
		}
	case reflect.Map:
		n := int(u.count())
		v.Set(reflect.MakeMapWithSize(v.Type(), n))
		for range n {
			key, value := reflect.New(v.Type().Key()).Elem(), reflect.New(v.Type().Elem()).Elem()
			u.value(key)
			u.value(value)
			v.SetMapIndex(key, value)
		}
	case reflect.Struct:
		if v.Type() == instantType {
			t, err := time.Parse(time.RFC3339Nano, u.text())
			if err != nil { // it was written by Format
				panic(err)
			}
			v.Set(reflect.ValueOf(t))
			return
		}
		said := u.count()
		for i := range v.NumField() {
			if said&(1<<i) != 0 {
				u.value(v.Field(i))
			}
		}
	}
}
