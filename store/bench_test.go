package store

import (
	"database/sql"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// BenchmarkText sets what one text costs on the disk beside the barest
// transaction that SQLite can do there with the same settings.
func BenchmarkText(b *testing.B) {
	b.Run("bare", func(b *testing.B) {
		path := filepath.Join(b.TempDir(), "bare.db")
		require.NoError(b, create(path))
		db, err := sql.Open("sqlite", dsn(path, writing))
		require.NoError(b, err)
		defer func() { require.NoError(b, db.Close()) }()
		db.SetMaxOpenConns(1)
		_, err = db.Exec("CREATE TABLE line (id INTEGER PRIMARY KEY, text TEXT) STRICT")
		require.NoError(b, err)
		insert, err := db.Prepare("INSERT INTO line (text) VALUES (?)")
		require.NoError(b, err)
		for b.Loop() {
			tx, err := db.Begin()
			require.NoError(b, err)
			_, err = tx.Stmt(insert).Exec("Dot 38 girth")
			require.NoError(b, err)
			require.NoError(b, tx.Commit())
		}
	})
	for _, how := range []struct {
		name    string
		options Options
	}{{"text", Options{}}, {"text_ephemeral", Options{Ephemeral: true}}} {
		b.Run(how.name, func(b *testing.B) {
			s := openStore(b, filepath.Join(b.TempDir(), "herd.db"), how.options)
			var f farm
			write(b, s, func(tx *Tx) {
				f = newFarm(b, tx)
				// The messages to handle; the id of one is its number.
				for n := range 20000 {
					_, err := tx.Receive(Incoming{Key: fmt.Sprint("update ", n), Chat: "4711", Raw: []byte(`{"text":"Dot 38 girth"}`), At: noon})
					require.NoError(b, err)
				}
			})
			n := 0
			for b.Loop() {
				n++
				e := f.envelope(model.Weigh{Animals: []string{"Dot"}, GirthCm: 96.5})
				err := s.Write(b.Context(), func(tx *Tx) error {
					if err := tx.Append(&e); err != nil {
						return err
					}
					_, err := tx.Queue(&Outgoing{
						Key: fmt.Sprint("reply ", n), Herd: f.herd, Chat: f.chat, Kind: "reply", Text: "Dot: girth 38 in.",
						State: Sent, // so that no queue builds up that nobody sends
					})
					if err != nil {
						return err
					}
					if err := tx.Handled(int64(n%20000) + 1); err != nil {
						return err
					}
					return tx.SetLookAgain(f.herd, noon.Add(time.Hour))
				})
				require.NoError(b, err)
			}
		})
	}
}

// BenchmarkDue is the sweep of every minute over many sleeping herds.
func BenchmarkDue(b *testing.B) {
	for _, c := range []struct {
		name string
		due  int
	}{{"none", 0}, {"one_in_100", 100}} {
		b.Run(c.name, func(b *testing.B) {
			s := newStore(b)
			write(b, s, func(tx *Tx) {
				for n := range 10000 {
					id, err := tx.CreateHerd(fmt.Sprint("herd ", n), "UTC", noon)
					require.NoError(b, err)
					chat, err := tx.ChatOf("telegram", fmt.Sprint(n), false)
					require.NoError(b, err)
					chat.Herd = id
					require.NoError(b, tx.SaveChat(chat))
					at := noon.Add(time.Duration(1+n%1440) * time.Minute)
					if c.due > 0 && n%(10000/c.due) == 0 {
						at = noon
					}
					require.NoError(b, tx.SetLookAgain(id, at))
				}
			})
			for b.Loop() {
				read(b, s, func(tx *Tx) {
					due, err := tx.Due(noon, 0)
					require.NoError(b, err)
					require.Len(b, due, c.due)
				})
			}
		})
	}
}

// BenchmarkJournal reads a season of 500 records.
func BenchmarkJournal(b *testing.B) {
	s := newStore(b)
	var f farm
	write(b, s, func(tx *Tx) {
		f = newFarm(b, tx)
		for _, e := range f.season(500) {
			require.NoError(b, tx.Append(&e))
		}
	})
	for b.Loop() {
		read(b, s, func(tx *Tx) {
			all, err := tx.Journal(f.herd)
			require.NoError(b, err)
			require.Len(b, all, 500)
		})
	}
}

// BenchmarkOpen is the start of a program on a season's file.
func BenchmarkOpen(b *testing.B) {
	path := filepath.Join(b.TempDir(), "herd.db")
	s, err := Open(b.Context(), path, Options{})
	require.NoError(b, err)
	write(b, s, func(tx *Tx) {
		f := newFarm(b, tx)
		for _, e := range f.season(500) {
			require.NoError(b, tx.Append(&e))
		}
	})
	require.NoError(b, s.Close())
	for b.Loop() {
		s, err := Open(b.Context(), path, Options{})
		require.NoError(b, err)
		require.NoError(b, s.Close())
	}
}
