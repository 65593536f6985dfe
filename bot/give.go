package bot

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"time"
	"unicode"

	"troughbell/bot/answer"
	"troughbell/bot/document"
	"troughbell/bot/reading"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// give notes which documents are wanted, of who may have them: they tell what was
// paid, which helpers do not see.
func (t *talk) give(what, season string) {
	if what == "report" && season == "" && len(t.s.Herd.Alive(model.DayOf(t.now))) == 0 {
		if over, _ := answer.FindSeasons(t.s.Herd, reading.LastSeason, model.DayOf(t.now)); len(over) > 0 {
			season = reading.LastSeason // all there is to report on
		}
	}
	said := []string{t.voice().Do(what)}
	if season != "" {
		over, running := answer.FindSeasons(t.s.Herd, season, model.DayOf(t.now))
		switch {
		case running:
			season = ""
		case len(over) == 0:
			t.lines = append(t.lines, answer.NoSeason(t.s.Herd, t.now))
			return
		default:
			said = nil
			for _, s := range over {
				said = append(said, t.voice().SeasonPage(s))
			}
		}
	}
	if what != "calendar" && t.m.From.Role == store.Helper {
		t.lines = append(t.lines, t.voice().Forbidden("export"))
		return
	}
	if w := (Wanted{what, season}); !slices.Contains(t.out.Give, w) {
		t.out.Give = append(t.out.Give, w)
		t.lines = append(t.lines, said...)
	}
}

// makeDocuments makes the documents wanted of the herd as it is after the
// message, and lets them go along with the answer.
func (d *Desk) makeDocuments(tx *store.Tx, m Message, out *Outcome) error {
	s, err := d.State(tx, m.Herd)
	if err != nil {
		return err
	}
	var wanted []Wanted
	for _, w := range out.Give {
		if w.What == "export" { // all there is
			wanted = append(wanted, Wanted{What: "tables"}, Wanted{What: "report"}, Wanted{What: "calendar"})
		} else {
			wanted = append(wanted, w)
		}
	}
	now := out.At.In(s.Zone)
	r := &out.Replies[len(out.Replies)-1]
	for i, w := range wanted {
		if slices.Contains(wanted[:i], w) {
			continue
		}
		files, err := s.Documents(tx, w, now)
		if err != nil {
			return err
		}
		for _, f := range files {
			if f.given != nil {
				if err := s.keepGiven(tx, *f.given); err != nil {
					return err
				}
			}
			if len(f.Bytes) > store.MaxFile {
				r.Text += "\n" + wording.FileTooLarge(f.Name)
				continue
			}
			r.Files = append(r.Files, f)
		}
	}
	return nil
}

// Wanted is a document that is wanted: "export" is all of today's, "tables",
// "report", "calendar"; of a season that is over where Season names one, as in
// [reading.Ask].
type Wanted struct{ What, Season string }

// Documents makes a document as it is at that moment: one, or where the year named
// has several seasons that are over, a page of each; none where it has none.
func (s *State) Documents(tx *store.Tx, w Wanted, now time.Time) (out []File, err error) {
	if w.Season == "" {
		f, err := s.Document(tx, w.What, now)
		return []File{f}, err
	}
	over, _ := answer.FindSeasons(s.Herd, w.Season, model.DayOf(now))
	for i, season := range over {
		year, _, _ := season.From.Date()
		f := File{Kind: store.Document, Name: fmt.Sprintf("%s %d report.html", fileStem(s.Herd.Name), year)}
		if i > 0 {
			f.Name = fmt.Sprintf("%s %d-%d report.html", fileStem(s.Herd.Name), year, i+1)
		}
		if f.Bytes, err = document.SeasonReport(s.Herd, season, now); err != nil {
			return nil, err
		}
		out = append(out, f)
	}
	return out, nil
}

// Document makes one of the herd's documents as it is at that moment: "tables",
// "report" or "calendar".
func (s *State) Document(tx *store.Tx, what string, now time.Time) (File, error) {
	name := fmt.Sprintf("%s %s", fileStem(s.Herd.Name), model.DayOf(now))
	f := File{Kind: store.Document}
	var err error
	switch what {
	case "tables":
		f.Name = name + ".zip"
		var b bytes.Buffer
		_, err = document.Tables(tx, s.Row.ID, s.Herd.Units != model.Metric, &b)
		f.Bytes = b.Bytes()
	case "report":
		f.Name = name + " report.html"
		f.Bytes, err = document.Report(s.Herd, now)
	case "calendar":
		f.Name = fileStem(s.Herd.Name) + ".ics"
		f.Bytes, f.given, err = s.calendar(tx, now)
	default:
		err = fmt.Errorf("there is no document %q", what)
	}
	return f, err
}

// id names the herd for good, on this server and any other.
func (s *State) id() string {
	began := int64(0)
	if len(s.Journal) > 0 {
		began = s.Journal[0].SaidAt.UnixMilli()
	}
	return fmt.Sprintf("%d-%x", s.Row.ID, began)
}

// longestStem keeps the names of files short enough for any system.
const longestStem = 40

// fileStem is a herd's name as the beginning of a file's name.
func fileStem(name string) string {
	var b strings.Builder
	for _, r := range name {
		switch {
		case b.Len() >= longestStem:
		case unicode.IsLetter(r), unicode.IsDigit(r), b.Len() > 0 && (r == ' ' || r == '-'):
			b.WriteRune(r)
		}
	}
	if stem := strings.TrimRight(b.String(), " -"); stem != "" {
		return stem
	}
	return "herd"
}
