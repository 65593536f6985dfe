package replay_test

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/csv"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/document"
	"troughbell/bot/replay"
	"troughbell/model"
	"troughbell/store"
)

// shed is a database with one herd.
type shed struct {
	t     testing.TB
	store *store.Store
	herd  store.HerdID
	zone  *time.Location
	owner store.Member
}

func newShed(t *testing.T) shed {
	t.Helper()
	zone, err := time.LoadLocation("America/New_York")
	require.NoError(t, err)
	s := newShedIn(t, filepath.Join(t.TempDir(), "herd.db"), zone)
	t.Cleanup(func() { require.NoError(t, s.store.Close()) })
	return s
}

func newShedIn(t testing.TB, path string, zone *time.Location) shed {
	t.Helper()
	st, err := store.Open(context.Background(), path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	s := shed{t: t, store: st, zone: zone}
	s.write(func(tx *store.Tx) error {
		if s.herd, err = tx.CreateHerd("", zone.String(), time.Unix(0, 0)); err != nil {
			return err
		}
		id, err := tx.CreatePerson("")
		if err != nil {
			return err
		}
		s.owner = store.Member{Herd: s.herd, Person: id, Role: store.Owner}
		return tx.Join(s.herd, id, store.Owner)
	})
	return s
}

func (s shed) write(f func(*store.Tx) error) {
	s.t.Helper()
	require.NoError(s.t, s.store.Write(context.Background(), f))
}

// deleted says that the log ended the herd.
func (s shed) deleted() bool {
	s.t.Helper()
	err := s.store.Read(context.Background(), func(tx *store.Tx) error {
		_, err := tx.Herd(s.herd)
		return err
	})
	if !errors.Is(err, store.ErrNotFound) {
		require.NoError(s.t, err)
	}
	return err != nil
}

// play plays a log and gives the page and how far time has come.
func (s shed) play(log string) (page string, now time.Time) {
	s.t.Helper()
	var out bytes.Buffer
	p, err := replay.New(context.Background(), s.store, s.herd, s.zone, replay.NewPage(&out))
	require.NoError(s.t, err)
	p.Files = os.DirFS(filepath.Join("..", "..", "testdata", "conversations"))
	require.NoError(s.t, p.Play(context.Background(), strings.NewReader(log)))
	return out.String(), p.Now()
}

func (s shed) export(us bool) []byte {
	s.t.Helper()
	var b bytes.Buffer
	s.write(func(tx *store.Tx) error {
		_, err := document.Tables(tx, s.herd, us, &b)
		return err
	})
	return b.Bytes()
}

func (s shed) importing(name string, b []byte, now time.Time) bot.Importing {
	return bot.Importing{Herd: s.herd, File: bot.Upload{Name: name, Bytes: b}, Now: now, By: s.owner}
}

// preview says what a file would bring.
func (s shed) preview(name string, b []byte, now time.Time) (text string, fresh, left int) {
	s.t.Helper()
	s.write(func(tx *store.Tx) (err error) {
		text, fresh, left, err = bot.NewDesk().Preview(tx, s.importing(name, b, now))
		return err
	})
	return text, fresh, left
}

func (s shed) take(name string, b []byte, now time.Time) string {
	s.t.Helper()
	text := ""
	s.write(func(tx *store.Tx) (err error) {
		text, err = bot.NewDesk().Import(tx, s.importing(name, b, now))
		return err
	})
	return text
}

// requireAllHere says that a file brings the herd nothing, and that nothing of it is
// left out.
func (s shed) requireAllHere(b []byte, now time.Time) {
	s.t.Helper()
	text, fresh, left := s.preview("herd.zip", b, now)
	require.Zero(s.t, fresh, text)
	require.Zero(s.t, left, text)
}

// logs are the season of the demo and all conversations.
func logs(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	paths, err := filepath.Glob(filepath.Join("..", "..", "testdata", "conversations", "*.txt"))
	require.NoError(t, err)
	for _, path := range append(paths, filepath.Join("..", "..", "cmd", "troughbell", "demo", "season.log")) {
		b, err := os.ReadFile(path)
		require.NoError(t, err)
		out[filepath.Base(path)] = string(b)
	}
	require.Greater(t, len(out), 10)
	return out
}

// asking is a log that asks for every figure, now and after a week.
func asking(now time.Time) string {
	var b strings.Builder
	at := now
	for range 2 {
		for _, q := range []string{
			"what's due?", "how much feed is left?", "why?", "how much water is left?", "what do they weigh?", "how long till butcher?",
			"why?", "are they clear?", "what do they cost?", "is it too hot?", "plan", "ration?", "when do they move?", "when to worm?",
			"how much feed until the butcher?", "what will they yield?", "sitter sheet",
		} {
			at = at.Add(time.Minute)
			fmt.Fprintf(&b, "%s | %s\n", at.Format("2006-01-02 15:04"), q)
		}
		at = at.Add(8 * 24 * time.Hour)
		fmt.Fprintf(&b, "%s |\n", at.Format("2006-01-02 15:04"))
	}
	return b.String()
}

// What a herd exported, taken into an empty one, gives the same herd: the same
// records, the same answers and nudges from then on. Taken in once more, or into the
// herd it came from, it changes nothing; and undo leaves nothing of it.
func TestExportComesBack(t *testing.T) {
	t.Parallel()
	for name, log := range logs(t) {
		t.Run(name, func(t *testing.T) {
			from := newShed(t)
			_, now := from.play(log)
			if from.deleted() {
				return // nothing is left to give out
			}
			before := from.export(true)
			from.requireAllHere(before, now)

			to := newShed(t)
			text, fresh, left := to.preview("herd.zip", before, now)
			require.Zero(t, left, text)
			require.NotZero(t, fresh, text)
			require.Equal(t, fmt.Sprintf("Imported %d records from herd.zip. Wrong? Text: undo.", fresh), plural(to.take("herd.zip", before, now)))
			to.requireAllHere(before, now)
			from.requireAllHere(to.export(false), now)

			want, _ := from.play(asking(now))
			got, _ := to.play(asking(now))
			require.Equal(t, want, got)
		})
	}
}

func plural(s string) string { return strings.Replace(s, "1 record from", "1 records from", 1) }

// Undo takes back all that a file brought, and it can be brought again.
func TestUndoOfAnImport(t *testing.T) {
	t.Parallel()
	from := newShed(t)
	_, now := from.play(logs(t)["season.log"])
	b := from.export(true)
	to := newShed(t)
	to.take("herd.zip", b, now)
	at := func(d time.Duration) string { return now.Add(d).Format("2006-01-02 15:04") }
	said, _ := to.play(at(time.Minute) + " | undo\n")
	require.Contains(t, said, "Undone: import of 251 records from herd.zip.")
	to.write(func(tx *store.Tx) error {
		s, err := bot.NewDesk().State(tx, to.herd)
		require.Empty(t, s.Herd.Animals)
		require.Empty(t, s.Herd.Name)
		require.Empty(t, s.Herd.Tolds)
		return err
	})
	_, fresh, _ := to.preview("herd.zip", b, now.Add(2*time.Minute))
	require.Equal(t, 251, fresh)
	to.take("herd.zip", b, now.Add(2*time.Minute))
	to.requireAllHere(b, now.Add(2*time.Minute))

	// An older import is taken back at a word, and what was recorded since stays.
	said, _ = to.play(at(3*time.Hour) + " | fence 6.1\n" + at(3*time.Hour+time.Minute) + " | undo import\n")
	require.Contains(t, said, "Undo this? import of 251 records from herd.zip.")
	said, _ = to.play(at(3*time.Hour+2*time.Minute) + " | undo it\n")
	require.Contains(t, said, "Undone: import of 251 records from herd.zip.")
	to.write(func(tx *store.Tx) error {
		s, err := bot.NewDesk().State(tx, to.herd)
		require.Len(t, s.Herd.Fences, 1)
		require.Empty(t, s.Herd.Animals)
		return err
	})

	// What a person took back stays so.
	_, now = from.play(now.Add(time.Minute).Format("2006-01-02 15:04") + " | undo\n")
	text, fresh, _ := from.preview("herd.zip", b, now)
	require.Zero(t, fresh)
	require.Contains(t, text, "Taken back here before: ")
}

// table gives the rows of a table of an export.
func table(t *testing.T, b []byte, name string) [][]string {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(b), int64(len(b)))
	require.NoError(t, err)
	f, err := z.Open(name)
	require.NoError(t, err)
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	return rows
}

// opened is a table as a spreadsheet may write it: other ends of lines, all in quotes
// or nothing that need not be, another order of columns, some of them left out.
func opened(rows [][]string, comma string, without ...string) []byte {
	var b strings.Builder
	for _, row := range rows {
		var cells []string
		for i := len(row) - 1; i >= 0; i-- {
			if !strings.Contains(strings.Join(without, " ")+" ", rows[0][i]+" ") {
				cells = append(cells, `"`+strings.ReplaceAll(row[i], `"`, `""`)+`"`)
			}
		}
		b.WriteString(strings.Join(cells, comma) + "\r\n")
	}
	return []byte(b.String())
}

// A table that was in a spreadsheet still comes in where what it says is certain: the
// records in it rule, and without them the columns do.
func TestTablesFromASpreadsheet(t *testing.T) {
	t.Parallel()
	from := newShed(t)
	_, now := from.play(logs(t)["season.log"])
	b := from.export(true)
	n := 0
	for _, f := range model.Facts() {
		name := string(f.Kind()) + ".csv"
		if z, err := zip.NewReader(bytes.NewReader(b), int64(len(b))); err == nil {
			if _, err := z.Open(name); err != nil {
				continue
			}
		}
		switch name {
		case "question.csv", "settled.csv": // they mean something only in the whole
			_, fresh, left := from.preview(name, opened(table(t, b, name), ","), now)
			require.Zero(t, fresh)
			require.Equal(t, len(table(t, b, name))-1, left)
			continue
		case "told.csv": // it names questions by what they are called
			continue
		}
		rows := table(t, b, name)
		for _, without := range [][]string{nil, {"id", "said_by", "text"}, {"record"}, {"record", "at", "id", "text"}, {"weight_lb", "feed_lb"}} {
			n++
			text, fresh, left := from.preview(name, opened(rows, []string{",", ";", "\t"}[n%3], without...), now)
			require.Zero(t, left, "%s without %v: %s", name, without, text)
			require.Zero(t, fresh, "%s without %v: %s", name, without, text)
		}
	}
	// Somebody's change of a column is not taken for the record, nor the record for it.
	rows := table(t, b, "weigh.csv")
	for i, col := range rows[0] {
		if col == "girth_cm" {
			rows[3][i] = "12"
		}
	}
	text, fresh, left := from.preview("weigh.csv", opened(rows, ","), now)
	require.Zero(t, fresh)
	require.Equal(t, 1, left)
	require.Contains(t, text, "Line 4: girth_cm was changed to 12; if that is right, empty the cell \"record\" of the line.")
	text, fresh, left = from.preview("weigh.csv", opened(rows, ",", "record", "girth_in"), now)
	require.Zero(t, left, text)
	require.Equal(t, 1, fresh, text)
}
