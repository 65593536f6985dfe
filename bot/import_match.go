package bot

import (
	"encoding/json"
	"fmt"
	"math"
	"sort"

	"troughbell/bot/document"
	"troughbell/model"
	"troughbell/store"
)

// withImport is why a record is void that was taken back with all of its file.
const withImport = "import"

// known is a record of the herd, as it is compared with those of a file.
type known struct {
	id     string
	unix   int64
	voided bool // taken back by a person
	used   bool // a row of the file is the same
}

// here finds the records of a herd by what they say.
type here struct {
	of map[string]*same // by day and content
	at map[moment]*same // and by moment
}

// moment is a day and content at a moment.
type moment struct {
	what string
	unix int64
}

// same is the records that say the same. Those that were not taken back come first.
type same struct{ live, voided line }

// line is such records in the order in which they were kept.
type line struct {
	all  []*known
	used int // so many at its beginning are used
}

// next is the first of them that is not used; the first of all where that is no
// matter. nil: there is none.
func (l *line) next(again bool) *known {
	if again && len(l.all) > 0 {
		return l.all[0]
	}
	for l.used < len(l.all) && l.all[l.used].used {
		l.used++
	}
	if l.used == len(l.all) {
		return nil
	}
	return l.all[l.used]
}

func (s *same) add(k *known) {
	if k.voided {
		s.voided.all = append(s.voided.all, k)
		return
	}
	s.live.all = append(s.live.all, k)
}

// keep makes a record known by what it says.
func (h here) keep(what string, k *known) {
	m := moment{what, k.unix}
	if h.of[what] == nil {
		h.of[what] = &same{}
	}
	if h.at[m] == nil {
		h.at[m] = &same{}
	}
	h.of[what].add(k)
	h.at[m].add(k)
}

// identity says what a record says, whatever it is called: its day and its content,
// numbers to a hundredth, since files show some places only.
func identity(on model.Day, f model.Fact, name func(id string) string) (string, error) {
	f, err := renamed(f, name)
	if err != nil {
		return "", err
	}
	b, err := json.Marshal(f)
	if err != nil {
		return "", fmt.Errorf("compare a record: %w", err)
	}
	var parts any
	if err := json.Unmarshal(b, &parts); err != nil {
		return "", fmt.Errorf("compare a record: %w", err)
	}
	if b, err = json.Marshal(hundredths(parts)); err != nil {
		return "", fmt.Errorf("compare a record: %w", err)
	}
	return fmt.Sprintf("%s %s %s", f.Kind(), on, b), nil
}

func hundredths(v any) any {
	switch v := v.(type) {
	case float64:
		return math.Round(v*100) / 100
	case []any:
		for i := range v {
			v[i] = hundredths(v[i])
		}
	case map[string]any:
		for k := range v {
			v[k] = hundredths(v[k])
		}
	}
	return v
}

// named keeps what records are called by what they say, so that two records that name
// the same third one are the same.
type named map[string]string

func (n named) of(id string) string {
	if what, ok := n[id]; ok {
		return what
	}
	return noRecord
}

// lookHere reads the herd's journal for comparison. What was taken back with a file
// counts as never there; what a person took back is there, and stays taken back.
func (s *State) lookHere() (here, error) {
	h := here{of: map[string]*same{}, at: map[moment]*same{}}
	with := map[string]bool{}
	for _, e := range s.Journal {
		if v, ok := e.Fact.(model.Void); ok && v.Why == withImport {
			with[v.Record] = true
		}
	}
	names := named{}
	journal := append([]store.Envelope(nil), s.Journal...)
	sort.SliceStable(journal, func(i, j int) bool { return refers(journal[i].Fact) < refers(journal[j].Fact) })
	for _, e := range journal {
		switch e.Fact.(type) {
		case model.Void, model.Import:
			continue
		}
		if with[e.ID] {
			continue
		}
		what, err := identity(e.On, e.Fact, names.of)
		if err != nil {
			return h, fmt.Errorf("record %s: %w", e.ID, err)
		}
		if !s.voided[e.ID] {
			names[e.ID] = fmt.Sprintf("%s at %d", what, e.At.Unix())
		}
		h.keep(what, &known{id: e.ID, unix: e.At.Unix(), voided: s.voided[e.ID]})
	}
	return h, nil
}

// match finds the record that a row is the same as; nil if there is none. Where the
// row does not know its moment, any of its day will do; of a list of weights also one
// that an earlier line was the same as.
func (h here) match(what string, r document.Row) *known {
	s := h.of[what]
	if r.Timed {
		s = h.at[moment{what, r.At.Unix()}]
	}
	if s == nil {
		return nil
	}
	found := s.live.next(r.Listed)
	if found == nil {
		found = s.voided.next(r.Listed)
	}
	if found != nil {
		found.used = true
	}
	return found
}

// add makes a row that is taken in known, for those behind it.
func (h here) add(what string, r document.Row) {
	if r.Listed {
		h.keep(what, &known{unix: r.At.Unix(), used: true})
	}
}
