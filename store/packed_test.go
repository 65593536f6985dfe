package store

import (
	"fmt"
	"reflect"
	"runtime"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// What is held in memory is what the file gives, however it came there.
func TestPackedIsTheJournal(t *testing.T) {
	s := newStore(t)
	var f farm
	var appended []Envelope
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		for i, fact := range factsOfEveryKind() {
			e := f.envelope(fact)
			e.At = noon.Add(time.Duration(i) * 1234567 * time.Microsecond)
			e.SaidAt, e.Source.Message, e.Text = e.At, fmt.Sprint(i/3), fmt.Sprint("text ", i/3)
			if i%7 == 2 {
				e.Zone, e.Stated, e.ByName, e.Judged, e.By, e.Source = "Europe/London", true, "", "certain", 0, Source{}
			}
			require.NoError(t, tx.Append(&e))
			appended = append(appended, e)
		}
	})
	read(t, s, func(tx *Tx) {
		want, err := tx.Journal(f.herd)
		require.NoError(t, err)
		require.Equal(t, want, appended, "what was appended is what is read")
		for n := range want {
			p := Pack(f.herd, want[:n])
			p.Add(appended[n:])
			require.Equal(t, want, p.Journal())
			require.Equal(t, want[len(want)-1].Seq, p.Seq())
		}
	})
}

// The weight is what the memory of a journal takes, give or take a quarter.
func TestWeightOfPacked(t *testing.T) {
	s := newStore(t)
	var f farm
	write(t, s, func(tx *Tx) {
		f = newFarm(t, tx)
		for i := range 60 {
			for _, fact := range []model.Fact{
				model.Weigh{Animals: []string{"Dot"}, GirthCm: 70 + float64(i)},
				model.Fence{Kv: 5},
				model.Note{What: fmt.Sprint("gate ", i, " sags")},
				model.Recipe{Ingredients: map[string]float64{"corn": 30, "soybean meal": 10}},
			} {
				e := f.envelope(fact)
				e.Source.Message, e.Text = fmt.Sprint(i), fmt.Sprint("Dot 38 girth, fence 5, gate sags ", i)
				require.NoError(t, tx.Append(&e))
			}
		}
	})
	const herds = 200
	var all [herds]*Packed
	before := heap()
	weight := 0
	read(t, s, func(tx *Tx) {
		for i := range all {
			journal, err := tx.Journal(f.herd)
			require.NoError(t, err)
			all[i] = Pack(f.herd, journal)
			weight += all[i].Weight()
		}
	})
	took := heap() - before
	require.InDelta(t, took, weight, float64(took)/4)
	runtime.KeepAlive(&all)
}

func heap() int {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int(m.HeapAlloc)
}

// Whatever a fact says is held, also what no fact of the tests does.
func TestPackedHoldsEveryField(t *testing.T) {
	for _, f := range model.Facts() {
		v := reflect.New(reflect.TypeOf(f)).Elem()
		sayAll(t, v)
		u := unpacking{rest: string(appendFact(nil, v.Interface().(model.Fact)))}
		require.Equal(t, v.Interface(), u.fact())
		require.Empty(t, u.rest)
	}
}

// sayAll gives each field something that is not its zero.
func sayAll(t *testing.T, v reflect.Value) {
	t.Helper()
	switch v.Kind() {
	case reflect.String:
		v.SetString("word")
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Int, reflect.Int32, reflect.Int64:
		v.SetInt(-300)
	case reflect.Uint8:
		v.SetUint(200)
	case reflect.Float64:
		v.SetFloat(-0.1)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		sayAll(t, v.Elem())
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 3, 3))
		sayAll(t, v.Index(1))
	case reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		key, value := reflect.New(v.Type().Key()).Elem(), reflect.New(v.Type().Elem()).Elem()
		sayAll(t, key)
		sayAll(t, value)
		v.SetMapIndex(key, value)
	case reflect.Struct:
		if v.Type() == instantType {
			v.Set(reflect.ValueOf(noon))
			return
		}
		for i := range v.NumField() {
			sayAll(t, v.Field(i))
		}
	default:
		require.Fail(t, "packing knows no "+v.Type().String())
	}
}
