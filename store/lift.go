package store

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"

	"troughbell/model"
)

// layout is one version of one kind of fact.
type layout struct {
	kind    model.Kind
	version int
}

// lift rewrites the body of a fact from one version of its layout to the next.
// It works on the fields as they were written, since the Go type of the older
// version is gone. Numbers come as float64.
type lift func(fields map[string]any) error

// lifts holds, for each layout that is no longer current, the way to the next.
// Records keep the layout in which they were written; they are lifted each time
// they are read. The views read them as they were written, so a lift that
// renames or rescales a field comes with views that know both.
var lifts = map[layout]lift{}

// versions holds the current version of each kind.
var versions = func() map[model.Kind]int {
	v := map[model.Kind]int{}
	for _, f := range model.Facts() {
		v[f.Kind()] = f.Version()
	}
	return v
}()

// errNewerRecord is in the chain of an error about a record that only a newer
// version can read.
var errNewerRecord = errors.New("it comes from a newer version")

// Decode reads a fact written in any layout up to the current one.
func Decode(kind model.Kind, version int, body []byte) (model.Fact, error) {
	f, err := decode(kind, version, body)
	if err != nil {
		return nil, fmt.Errorf("read a record of kind %q: %w", kind, err)
	}
	return f, nil
}

func decode(kind model.Kind, version int, body []byte) (model.Fact, error) {
	current := versions[kind]
	if current == 0 {
		return nil, fmt.Errorf("kind %q: %w", kind, errNewerRecord)
	}
	if version != current {
		lifted, err := liftBody(lifts, kind, version, current, body)
		if err != nil {
			return nil, err
		}
		body = lifted
	}
	return model.DecodeFact(kind, body)
}

func liftBody(by map[layout]lift, kind model.Kind, from, to int, body []byte) ([]byte, error) {
	if from > to {
		return nil, fmt.Errorf("a %s of version %d, where %d is known: %w", kind, from, to, errNewerRecord)
	}
	fields := map[string]any{}
	if err := json.Unmarshal(body, &fields); err != nil {
		return nil, fmt.Errorf("a %s of version %d: %w", kind, from, err)
	}
	for v := from; v < to; v++ {
		step, ok := by[layout{kind, v}]
		if !ok {
			return nil, fmt.Errorf("a %s of version %d: no way to version %d is known", kind, from, v+1)
		}
		next := maps.Clone(fields)
		if err := step(next); err != nil {
			return nil, fmt.Errorf("a %s of version %d to %d: %w", kind, v, v+1, err)
		}
		fields = next
	}
	return json.Marshal(fields)
}
