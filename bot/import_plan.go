package bot

import (
	"fmt"
	"sort"
	"strconv"
	"strings"

	"troughbell/bot/document"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// mostPigs is how many pigs a herd may have with those of a file: troughbell is made
// for small herds.
const mostPigs = 1000

// intakePlan is what would become of a file in a herd.
type intakePlan struct {
	new  []store.Envelope // in the order in which they are appended, with their IDs
	says wording.Brought
}

// planImport works out what a file brings to the herd. base is the number of the
// herd's latest record.
func (s *State) planImport(in document.Intake, base int64) (intakePlan, error) {
	p := intakePlan{says: wording.Brought{Unread: in.Unread, Swapped: in.Swapped}}
	h, err := s.lookHere()
	if err != nil {
		return p, err
	}
	rows, bad := s.knownPigs(in.Rows)
	bad = append(append([]document.Bad(nil), in.Bad...), bad...)
	sort.SliceStable(rows, func(i, j int) bool { return refers(rows[i].Fact) < refers(rows[j].Fact) })
	names, to := named{}, map[string]string{} // of the file's records: what they say, and what they are called here
	questions, ended := map[string]bool{}, map[string]bool{}
	for _, r := range rows {
		if f, ok := r.Fact.(model.Settled); ok {
			ended[f.Question] = true
		}
	}
	var fresh []document.Row // what is new to the herd
	for _, r := range rows {
		what, err := identity(r.On, r.Fact, names.of)
		if err == nil {
			err = readable(r.Fact, ended[r.ID])
		}
		if err != nil {
			bad = append(bad, document.Bad{File: r.File, Line: r.Line, Code: "row_record"})
			continue
		}
		if f, ok := r.Fact.(model.Settled); ok && !questions[f.Question] {
			continue // the question it ended did not come along
		}
		if _, ok := r.Fact.(model.Question); ok {
			questions[r.ID] = true
		}
		p.says.Span(r.On)
		if r.ID != "" {
			names[r.ID] = fmt.Sprintf("%s at %d", what, r.At.Unix())
		}
		if k := h.match(what, r); k != nil {
			switch {
			case k.id == "":
				p.says.Twice++
			case k.voided:
				p.says.Voided++
				names[r.ID] = noRecord
			default:
				p.says.Here++
				if r.ID != "" {
					to[r.ID] = k.id
				}
			}
			continue
		}
		h.add(what, r)
		fresh = append(fresh, r)
	}
	inOrder(fresh)
	for i, f := range fresh {
		if f.ID != "" {
			to[f.ID] = store.RecordID(base + int64(i) + 1)
		}
	}
	p.new = make([]store.Envelope, 0, len(fresh))
	for _, f := range fresh {
		e, err := envelope(f, to)
		if err != nil {
			return p, err
		}
		p.new = append(p.new, e)
		p.says.Count(f.Fact.Kind(), spoken(f.Fact.Kind()))
		if set, ok := f.Fact.(model.Setting); ok && set.Key == model.SetHerd {
			p.says.Herd = set.Text
		}
	}
	sort.SliceStable(bad, func(i, j int) bool { return bad[i].File == bad[j].File && bad[i].Line < bad[j].Line })
	for _, b := range bad {
		p.says.Bad = append(p.says.Bad, wording.BadLine{File: b.File, Line: b.Line, Code: b.Code, Names: b.Names})
	}
	return p, nil
}

// inOrder puts records in the order in which they were first kept, where the file
// tells it, else in that of their moments.
func inOrder(fresh []document.Row) {
	number := func(r document.Row) (int64, bool) {
		if !recordID.MatchString(r.ID) {
			return 0, false
		}
		n, err := strconv.ParseInt(r.ID[1:], 10, 64)
		return n, err == nil
	}
	numbered := true
	for _, f := range fresh {
		_, ok := number(f)
		numbered = numbered && ok
	}
	sort.SliceStable(fresh, func(i, j int) bool {
		if numbered {
			a, _ := number(fresh[i])
			b, _ := number(fresh[j])
			return a < b
		}
		return fresh[i].At.Before(fresh[j].At)
	})
}

// envelope is the record as it is appended; to says what the file's records are
// called here.
func envelope(r document.Row, to map[string]string) (store.Envelope, error) {
	fact, err := renamed(r.Fact, func(id string) string {
		if here, ok := to[id]; ok {
			return here
		}
		return noRecord
	})
	if err != nil {
		return store.Envelope{}, err
	}
	return store.Envelope{
		On: r.On, Zone: r.Zone, At: r.At, Stated: r.Stated, SaidAt: r.Said, ByName: r.By, Text: r.Text,
		Judged: store.Imported, Fact: fact,
	}, nil
}

// readable reports why a question could not be put again: who cannot read it would
// be stopped by it at every text. One that was never put, since the answer was told
// before, has nothing to read.
func readable(f model.Fact, ended bool) error {
	q, ok := f.(model.Question)
	if !ok || ended && len(q.Body) == 0 {
		return nil
	}
	_, err := unpackQuestion(model.Dated[model.Question]{F: q})
	return err
}

// knownPigs leaves out the rows of pigs that the herd does not have and the file does
// not bring, and calls those of a list as the herd does.
func (s *State) knownPigs(rows []document.Row) (kept []document.Row, bad []document.Bad) {
	names := map[string]string{model.All: model.All}
	pigs := len(s.Herd.Animals)
	for _, a := range s.Herd.Animals {
		names[strings.ToLower(a.Name)] = a.Name
	}
	for _, r := range rows {
		if a, ok := r.Fact.(model.Arrive); ok {
			pigs += a.Count
			for _, n := range a.Animals {
				if _, there := names[strings.ToLower(n)]; !there {
					names[strings.ToLower(n)] = n
				}
			}
		}
	}
	for _, r := range rows {
		code, about := "", ""
		for _, n := range animalsOf(r.Fact) {
			if _, ok := names[strings.ToLower(n)]; !ok {
				code, about = "row_pig", n
			}
		}
		if _, ok := r.Fact.(model.Arrive); ok && pigs > mostPigs {
			code = "row_pigs"
		}
		if w, ok := r.Fact.(model.Weigh); ok && r.Listed && code == "" {
			w.Animals = []string{names[strings.ToLower(w.Animals[0])]}
			r.Fact = w
			code, about = s.notThen(w.Animals[0], r.On), w.Animals[0]
		}
		if code == "" {
			kept = append(kept, r)
			continue
		}
		bad = append(bad, document.Bad{File: r.File, Line: r.Line, Code: code, Names: []string{about}})
	}
	return kept, bad
}

// notThen says why a pig of the herd cannot have been weighed on a day: it had not
// come, or had gone; empty if it can, or if the file brings it.
func (s *State) notThen(name string, on model.Day) string {
	code := ""
	for _, a := range s.Herd.Animals {
		if name != model.All && a.Name != name {
			continue
		}
		switch {
		case on < a.Group.Arrived:
			code = "row_early"
		case a.Gone != nil && on > a.Gone.On:
			code = "row_gone"
		default:
			return ""
		}
	}
	return code
}

// animalsOf is the pigs that a fact names.
func animalsOf(f model.Fact) []string {
	switch f := f.(type) {
	case model.Alarm:
		return f.Animals
	case model.Booked:
		return f.Animals
	}
	return reading.AnimalsOf(f)
}
