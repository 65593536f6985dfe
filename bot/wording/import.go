package wording

import (
	"fmt"
	"slices"
	"strings"

	"troughbell/model"
)

// Brought is what a file would bring to a herd.
type Brought struct {
	Kinds   []KindCount // of the new records that people told, in the order of the kinds
	Own     int         // new records of what the program told and asked
	Here    int         // records that are here already
	Voided  int         // that were taken back here
	Twice   int         // that the file has twice
	From    model.Day   // of the earliest record, 0: none
	To      model.Day
	Bad     []BadLine
	Unread  []string // columns and files that were not looked at
	Swapped bool     // dates are not in the herd's order
	Herd    string   // the name of the herd that they are of; empty: not told
}

// KindCount is how many records of a kind there are.
type KindCount struct {
	Kind model.Kind
	N    int
}

// BadLine is a line, or with Line 0 a file, that cannot be taken in.
type BadLine struct {
	File  string
	Line  int
	Code  string
	Names []string
}

// Span takes the day of a record into the span of the file's.
func (b *Brought) Span(on model.Day) {
	if b.From == 0 || on < b.From {
		b.From = on
	}
	b.To = max(b.To, on)
}

// Count counts a new record.
func (b *Brought) Count(k model.Kind, told bool) {
	if !told {
		b.Own++
		return
	}
	for i := range b.Kinds {
		if b.Kinds[i].Kind == k {
			b.Kinds[i].N++
			return
		}
	}
	b.Kinds = append(b.Kinds, KindCount{k, 1})
}

// New is how many records are new.
func (b Brought) New() int {
	n := b.Own
	for _, k := range b.Kinds {
		n += k.N
	}
	return n
}

// kindPlurals has the nouns of kinds of records, one and many, as they are counted.
var kindPlurals = map[model.Kind][2]string{
	"weigh": {"weighing", "weighings"}, "refill": {"feed fill", "feed fills"}, "feed_level": {"feed level", "feed levels"},
	"stock": {"purchase or count of feed", "purchases or counts of feed"}, "mixed": {"mixing", "mixings"},
	"water": {"water fill or level", "water fills or levels"}, "wallow": {"wallow fill", "wallow fills"},
	"worm": {"worming", "wormings"}, "treat": {"treatment", "treatments"}, "move": {"move", "moves"},
	"sick": {"note on health", "notes on health"}, "alarm": {"alarm", "alarms"}, "fence": {"fence reading", "fence readings"},
	"weather": {"weather report", "weather reports"}, "recipe": {"mix", "mixes"}, "spend": {"payment", "payments"},
	"arrive": {"arrival", "arrivals"}, "gone": {"loss or sale", "losses or sales"}, "booked": {"booking", "bookings"},
	"away": {"absence", "absences"}, "note": {"note", "notes"}, "remind": {"reminder", "reminders"},
	"done": {"task done", "tasks done"}, "snooze": {"task put off", "tasks put off"}, "settings": {"setting", "settings"},
}

func (v Voice) intake(code string, a Args) string { return v.say(partImport, code, a) }

// ImportPreview says what is in a file before it is taken in.
func (v Voice) ImportPreview(file string, b Brought) string {
	all := Args{Names: []string{file}, Days: []model.Day{b.From, b.To}, Q: []model.Quantity{N(b.New() + b.Here + b.Voided + b.Twice)}}
	lines := []string{v.phrase(partImport, "brings", all)} // the file is called as it is
	if b.New() > 0 {
		lines = append(lines, v.intake("new", Args{Names: v.newRecords(b)}))
	}
	for _, part := range []struct {
		code string
		n    int
	}{{"here", b.Here}, {"voided", b.Voided}, {"twice", b.Twice}} {
		if part.n > 0 {
			lines = append(lines, v.intake(part.code, Args{Q: []model.Quantity{N(part.n)}}))
		}
	}
	if b.Herd != "" && v.Herd != nil && len(v.Herd.Animals) > 0 && !strings.EqualFold(b.Herd, v.Herd.Name) {
		lines = append(lines, v.intake("other_herd", Args{Names: []string{b.Herd}}))
	}
	if b.Swapped {
		lines = append(lines, v.intake("swapped", Args{}))
	}
	lines = append(lines, v.badLines(b.Bad)...)
	if len(b.Unread) > 0 {
		lines = append(lines, v.intake("unread", Args{Names: b.Unread}))
	}
	if b.New() == 0 {
		lines = append(lines, v.intake("nothing_new", Args{}))
	}
	return strings.Join(lines, "\n")
}

// newKinds is how many kinds of records are counted by name.
const newKinds = 5

// newRecords counts what is new, kind by kind.
func (v Voice) newRecords(b Brought) []string {
	kinds := slices.Clone(b.Kinds)
	slices.SortStableFunc(kinds, func(a, b KindCount) int { return b.N - a.N })
	var out []string
	others := b.Own
	for i, k := range kinds {
		if i >= newKinds {
			others += k.N
			continue
		}
		nouns, ok := kindPlurals[k.Kind]
		if !ok {
			nouns = [2]string{About(string(k.Kind)), About(string(k.Kind))}
		}
		out = append(out, countNoun(float64(k.N), nouns[0], nouns[1]))
	}
	code := "own"
	if len(kinds) > newKinds {
		code = "others"
	}
	if others > 0 {
		out = append(out, v.phrase(partImport, code, Args{Q: []model.Quantity{N(others)}}))
	}
	return out
}

// How much is quoted of what cannot be taken in.
const (
	badReasons  = 4 // lines of the answer
	badNumbered = 5 // numbers of lines with one reason
)

// badLines says which lines cannot be taken in, those of one reason together.
func (v Voice) badLines(bad []BadLine) []string {
	if len(bad) == 0 {
		return nil
	}
	type group struct {
		file, why string
		lines     []int
	}
	var groups []*group
	by := map[string]*group{}
	several := false
	for _, b := range bad {
		several = several || b.File != bad[0].File
		why := v.phrase(partImport, b.Code, Args{Names: b.Names})
		key := b.File + "\x00" + why
		g, ok := by[key]
		if !ok {
			g = &group{file: b.File, why: why}
			by[key] = g
			groups = append(groups, g)
		}
		g.lines = append(g.lines, b.Line)
	}
	out := []string{v.intake("bad", Args{Q: []model.Quantity{N(len(bad))}})}
	rest := len(bad)
	for _, g := range groups[:min(len(groups), badReasons)] {
		rest -= len(g.lines)
		var numbers []string
		for _, n := range g.lines[:min(len(g.lines), badNumbered)] {
			numbers = append(numbers, fmt.Sprint(n))
		}
		if more := len(g.lines) - len(numbers); more > 0 {
			numbers = append(numbers, fmt.Sprintf("%d more", more))
		}
		file := g.file
		if !several {
			file = ""
		}
		line := v.phrase(partImport, "bad_line", Args{Names: []string{file, Join(numbers, "and"), g.why}})
		if file == "" { // a file is called as it is
			line = capital(line)
		}
		out = append(out, "  "+line)
	}
	if rest > 0 {
		out = append(out, "  "+v.intake("bad_more", Args{Q: []model.Quantity{N(rest)}}))
	}
	return out
}

// Import says a sentence on a file, by its code.
func (v Voice) Import(code string, names ...string) string {
	return v.intake(code, Args{Names: names})
}

// Imported says what was taken in.
func (v Voice) Imported(file string, n int) string {
	if n == 0 {
		return v.Import("done_none", file)
	}
	return v.intake("done", Args{Names: []string{file}, Q: []model.Quantity{N(n)}})
}
