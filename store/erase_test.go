package store

import (
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/model"
)

// household is a herd with a season's talk, all of whose words hold its mark.
type household struct {
	farm
	mark string
}

func (h household) say(what string, n int) string {
	return fmt.Sprintf("%s %s number %d", h.mark, what, n)
}

// settle makes a household of two with the texts, answers, files, codes and
// unhandled messages of a busy season.
func settle(tx *Tx, mark string, records int) (h household, err error) {
	h.mark = mark
	if h.herd, err = tx.CreateHerd(mark+" Acre", "America/Chicago", noon); err != nil {
		return h, err
	}
	var chats [2]Chat
	for i, role := range []Role{Owner, Helper} {
		p, err := tx.CreatePerson(fmt.Sprintf("%s-%s", mark, role))
		if err != nil {
			return h, err
		}
		if err := tx.Join(h.herd, p, role); err != nil {
			return h, err
		}
		if chats[i], err = tx.ChatOf("telegram", fmt.Sprintf("7%s%d", mark, i), false); err != nil {
			return h, err
		}
		chats[i].Herd, chats[i].Person = h.herd, p
		if err := tx.SaveChat(chats[i]); err != nil {
			return h, err
		}
		if err := tx.SetValue(PersonValue("asked", h.herd, p), h.say("question", i)); err != nil {
			return h, err
		}
		if err := tx.KeepUpload(Upload{Herd: h.herd, By: p, Key: h.say("upload", i), Name: h.say("name", i), Bytes: []byte(h.say("bytes", i)), At: noon}); err != nil {
			return h, err
		}
	}
	h.chat, h.person = chats[0].ID, chats[0].Person
	if err := tx.SetValue(HerdValue("calendar", h.herd), h.say("given", 0)); err != nil {
		return h, err
	}
	group, err := tx.ChatOf("telegram", "-7"+mark, true)
	if err != nil {
		return h, err
	}
	group.Herd = h.herd
	if err := tx.SaveChat(group); err != nil {
		return h, err
	}
	if _, err := tx.NewCode(h.herd, Helper, false, noon, time.Hour); err != nil {
		return h, err
	}
	for i := range records {
		if err := h.talk(tx, chats[i%2], i); err != nil {
			return h, err
		}
	}
	return h, nil
}

// talk is one message with its record, its answer and now and then more.
func (h household) talk(tx *Tx, c Chat, i int) error {
	id := fmt.Sprint(i)
	if _, err := tx.Receive(Incoming{Key: fmt.Sprintf("message:%s:%d:%d", c.External, h.herd, i), Chat: c.External, Raw: []byte(h.say("raw", i)), At: noon}); err != nil {
		return err
	}
	in, ok, err := tx.NextIncoming()
	if err != nil || !ok {
		return fmt.Errorf("no message: %w", err)
	}
	if i%7 == 3 {
		err = tx.SetAside(in, h.say("problem", i))
	} else {
		err = tx.Handled(in.ID)
	}
	if err != nil {
		return err
	}
	e := Envelope{
		Herd: h.herd, On: model.DayOf(noon), At: noon.Add(time.Duration(i) * time.Minute), By: c.Person, ByName: h.mark + "-someone",
		Source: Source{c.ID, id}, Text: h.say("text", i), Fact: model.Note{What: h.say("note", i)},
	}
	if i%5 == 4 {
		e.Fact = model.Void{Record: RecordID(int64(i)), Why: "undo"}
	}
	if err := tx.Append(&e); err != nil {
		return err
	}
	o := Outgoing{
		Key: fmt.Sprintf("%s:%d", h.mark, i), Herd: h.herd, Chat: c.ID, Kind: "reply", ReplyTo: id, Text: h.say("answer", i),
		Buttons: [][]string{{h.say("button", i)}},
	}
	if i%6 == 0 {
		o.File = &File{Kind: Document, Name: h.mark + ".txt", Bytes: []byte(strings.Repeat(h.say("file", i), 300))}
	}
	if _, err := tx.Queue(&o); err != nil {
		return err
	}
	if i%3 == 0 {
		o.State, o.Sent = Sent, "9"+id
		return tx.SaveOutgoing(o)
	}
	return nil
}

// found is in which of the database's files a text stands.
func found(t *testing.T, path, text string) (in []string) {
	t.Helper()
	for _, side := range []string{"", "-wal", "-shm"} {
		b, err := os.ReadFile(path + side)
		if !os.IsNotExist(err) {
			require.NoError(t, err)
		}
		if bytes.Contains(b, []byte(text)) {
			in = append(in, filepath.Base(path)+side)
		}
	}
	return in
}

// After a herd is erased no word of it stands anywhere in the files, whatever
// was in their free places before; the other herd has all of its own.
func TestErasedHerdIsInNoFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	var first, second household
	for round := range 8 { // rows of the two lie side by side, and pages split
		write(t, s, func(tx *Tx) {
			var err error
			if round == 0 {
				first, err = settle(tx, "quillwort", 0)
				require.NoError(t, err)
				second, err = settle(tx, "bogbean", 0)
				require.NoError(t, err)
			}
			for i := range 60 {
				for _, h := range []household{first, second} {
					c, err := tx.Chat(h.chat)
					require.NoError(t, err)
					require.NoError(t, h.talk(tx, c, 60*round+i))
				}
			}
		})
	}
	require.NotEmpty(t, found(t, path, "quillwort"))
	write(t, s, func(tx *Tx) { require.NoError(t, tx.EraseHerd(first.herd)) })
	require.Empty(t, found(t, path, "quillwort"))
	require.NotEmpty(t, found(t, path, "bogbean"))
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(second.herd)
		require.NoError(t, err)
		require.Len(t, all, 480)
		due, err := tx.Value(valueScrub)
		require.NoError(t, err)
		require.Empty(t, due)
	})
	write(t, s, func(tx *Tx) { require.NoError(t, tx.EraseHerd(second.herd)) })
	require.Empty(t, found(t, path, "bogbean"))
	require.NoError(t, s.Close())
	require.NoError(t, inspect(t.Context(), path, copying, "PRAGMA integrity_check"))
	require.Empty(t, found(t, path, "bogbean"))
}

// A reader elsewhere that keeps the log from being emptied delays that; it is
// made up for at the next chance, or when the file is opened next.
func TestErasureIsFinishedLater(t *testing.T) {
	for _, how := range []string{"next chance", "next opening"} {
		path := filepath.Join(t.TempDir(), "herd.db")
		s, err := Open(t.Context(), path, Options{})
		require.NoError(t, err)
		c := <-s.writer
		_, err = c.conn.ExecContext(t.Context(), "PRAGMA busy_timeout = 0")
		require.NoError(t, err)
		s.writer <- c
		var h household
		write(t, s, func(tx *Tx) { h, err = settle(tx, "quillwort", 40); require.NoError(t, err) })
		inTheWay, err := OpenReader(t.Context(), path)
		require.NoError(t, err)
		read(t, inTheWay, func(tx *Tx) {
			_, err := tx.Journal(h.herd)
			require.NoError(t, err)
			write(t, s, func(tx *Tx) { require.NoError(t, tx.EraseHerd(h.herd)) })
			require.NotEmpty(t, found(t, path, "quillwort"))
			require.ErrorContains(t, s.Scrub(t.Context()), "in the way")
		})
		require.NoError(t, inTheWay.Close())
		if how == "next chance" {
			require.NoError(t, s.Scrub(t.Context()))
		} else {
			require.NoError(t, s.Close())
			s, err = Open(t.Context(), path, Options{})
			require.NoError(t, err)
		}
		require.Empty(t, found(t, path, "quillwort"), how)
		require.NoError(t, s.Close())
	}
}

// Who is killed amid an erasure has erased the herd wholly or not at all.
func TestKilledAmidErasure(t *testing.T) {
	for _, c := range []struct {
		role  string
		there bool
	}{{"erase, not committed", true}, {"erase", false}} {
		path := filepath.Join(t.TempDir(), "herd.db")
		s, err := Open(t.Context(), path, Options{})
		require.NoError(t, err)
		write(t, s, func(tx *Tx) { _, err = settle(tx, "quillwort", 200); require.NoError(t, err) })
		before := dump(t, s)
		require.NoError(t, s.Close())
		cmd := child(t, c.role, path)
		require.Equal(t, "erased\n", firstLine(t, cmd))
		require.NoError(t, cmd.Process.Kill())
		require.Error(t, cmd.Wait())
		s = openStore(t, path, Options{})
		if c.there {
			require.Equal(t, before, dump(t, s))
			continue
		}
		read(t, s, func(tx *Tx) {
			herds, err := tx.Herds()
			require.NoError(t, err)
			require.Empty(t, herds)
			due, err := tx.Waiting("telegram")
			require.NoError(t, err)
			require.Empty(t, due)
		})
		require.Empty(t, found(t, path, "quillwort"))
	}
}

// dump is every row of every table as text, by table.
func dump(t testing.TB, s *Store) map[string][]string {
	t.Helper()
	out := map[string][]string{}
	require.NoError(t, s.Read(context.Background(), func(tx *Tx) error {
		for _, table := range tables(t, tx) {
			rows, err := tx.c.conn.QueryContext(context.Background(), fmt.Sprintf("SELECT * FROM %q", table))
			require.NoError(t, err)
			cols, err := rows.Columns()
			require.NoError(t, err)
			vals, dest := make([]any, len(cols)), make([]any, len(cols))
			for i := range vals {
				dest[i] = &vals[i]
			}
			out[table] = []string{}
			for rows.Next() {
				require.NoError(t, rows.Scan(dest...))
				var line strings.Builder
				for i, c := range cols {
					fmt.Fprintf(&line, "%s=%v|", c, vals[i])
				}
				out[table] = append(out[table], line.String())
			}
			require.NoError(t, rows.Err())
			require.NoError(t, rows.Close())
		}
		return nil
	}))
	return out
}

func tables(t testing.TB, tx *Tx) []string {
	t.Helper()
	out, err := list(tx, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name", nil,
		func(row scanner) (name string, err error) {
			err = row.Scan(&name)
			return name, err
		})
	require.NoError(t, err)
	return out
}

// Whatever herds, people and chats a server has: of an erased herd no row is
// left that speaks of it, of another herd every row is as it was.
func TestErasedHerdLeavesNoRow(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{Ephemeral: true})
	for n := range 25 {
		r := rand.New(rand.NewPCG(uint64(n), 1))
		var all []household
		require.NoError(t, s.Write(context.Background(), func(tx *Tx) error {
			for i := range 1 + r.IntN(3) {
				h, err := settle(tx, fmt.Sprintf("m%dx%d", n, i), r.IntN(13))
				if err != nil {
					return err
				}
				for _, other := range all { // owners belong to each other's herds
					if r.IntN(2) == 0 {
						if err := tx.Join(h.herd, other.person, Family); err != nil {
							return err
						}
						c, err := tx.Chat(other.chat)
						if err != nil {
							return err
						}
						if r.IntN(2) == 0 {
							c.Herd = h.herd
							if err := tx.SaveChat(c); err != nil {
								return err
							}
						}
						if err := h.talk(tx, c, 1000+10*int(other.herd)); err != nil {
							return err
						}
					}
				}
				if r.IntN(3) == 0 {
					if err := tx.SetOperator(h.person); err != nil {
						return err
					}
				}
				all = append(all, h)
			}
			return nil
		}))
		gone := r.IntN(len(all))
		before := dump(t, s)
		require.NoError(t, s.Write(context.Background(), func(tx *Tx) error { return tx.EraseHerd(all[gone].herd) }))
		after := dump(t, s)
		requireNothingOf(t, after, all[gone])
		for i, h := range all {
			if i != gone {
				require.Equal(t, rowsOf(before, h), rowsOf(after, h))
			}
		}
		require.NoError(t, s.Write(context.Background(), func(tx *Tx) error {
			broken, err := list(tx, "SELECT \"table\" FROM pragma_foreign_key_check", nil, func(row scanner) (name string, err error) {
				err = row.Scan(&name)
				return name, err
			})
			require.NoError(t, err)
			require.Empty(t, broken)
			for i, h := range all { // the next case begins afresh
				if i != gone {
					require.NoError(t, tx.EraseHerd(h.herd))
				}
			}
			fresh, err := tx.CreateHerd("", "UTC", noon)
			require.NoError(t, err)
			require.Greater(t, fresh, all[len(all)-1].herd, "no number comes twice")
			return tx.EraseHerd(fresh)
		}))
		for table, rows := range dump(t, s) {
			switch table {
			case "last_id", "tide", "value": // what the server keeps of itself
			case "person", "chat": // of those who run it
				for _, row := range rows {
					require.NotContains(t, row, "-owner")
				}
			default:
				require.Empty(t, rows, table)
			}
		}
	}
}

func requireNothingOf(t *testing.T, rows map[string][]string, h household) {
	t.Helper()
	for table, lines := range rows {
		for _, l := range lines {
			require.NotContains(t, l, fmt.Sprintf("herd=%d|", h.herd), table)
			switch {
			case table == "chat" || table == "person": // of who has a further herd, or runs the server
			case table == "outgoing" || table == "attachment" || table == "incoming" || table == "record" || table == "upload":
				require.NotContains(t, l, h.mark+" ", table)
			case table == "value":
				require.NotContains(t, l, fmt.Sprintf(":%d:", h.herd), table)
			case table == "herd":
				require.NotContains(t, l, fmt.Sprintf("|id=%d|", h.herd), table)
			}
		}
	}
}

// rowsOf are the rows that are a herd's own.
func rowsOf(rows map[string][]string, h household) map[string][]string {
	out := map[string][]string{}
	for table, lines := range rows {
		for _, l := range lines {
			mine := strings.Contains(l, fmt.Sprintf("herd=%d|", h.herd)) && table != "chat" ||
				table == "herd" && strings.HasPrefix(l, fmt.Sprintf("id=%d|", h.herd)) ||
				table == "attachment" && strings.Contains(l, "name="+h.mark+".txt")
			if !mine {
				continue
			}
			if table == "herd" { // a chat may have come over, in which it can be reached
				l, _, _ = strings.Cut(l, "paused=")
			}
			out[table] = append(out[table], l)
		}
		slices.Sort(out[table])
	}
	return out
}

// Every table that points to a herd, a person, a chat or a message is known to
// the erasure: one that is not would keep a herd from being erased.
func TestErasureKnowsEveryTable(t *testing.T) {
	s := newStore(t)
	read(t, s, func(tx *Tx) {
		var got []string
		for _, table := range tables(t, tx) {
			refs, err := list(tx, "SELECT DISTINCT \"table\" FROM pragma_foreign_key_list(?) ORDER BY 1", []any{table},
				func(row scanner) (to string, err error) {
					err = row.Scan(&to)
					return to, err
				})
			require.NoError(t, err)
			got = append(got, table+": "+strings.Join(refs, " "))
		}
		require.Equal(t, []string{
			"attachment: outgoing", "chat: herd person", "code: herd", "erasure: herd person", "herd: ", "incoming: ", "last_id: ",
			"member: herd person", "outgoing: chat herd", "person: ", "record: chat herd person record", "tide: ", "upload: herd person", "value: ",
		}, got, "have EraseHerd and Forget deal with it, and then name it here")
	})
}

func TestAButtonNeverMeansAnotherMessage(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		h, err := settle(tx, "quillwort", 3)
		require.NoError(t, err)
		last, _, err := tx.OutgoingByKey("quillwort:2")
		require.NoError(t, err)
		require.NoError(t, tx.EraseHerd(h.herd))
		next, err := settle(tx, "bogbean", 1)
		require.NoError(t, err)
		o, _, err := tx.OutgoingByKey("bogbean:0")
		require.NoError(t, err)
		require.Greater(t, o.ID, last.ID)
		require.Greater(t, next.herd, h.herd)
		require.Greater(t, next.person, h.person)
		require.Greater(t, next.chat, h.chat)
	})
}

// The journal is closed again behind an erasure, and open only to the one meant.
func TestJournalIsClosedAfterAnErasure(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		a, err := settle(tx, "quillwort", 6)
		require.NoError(t, err)
		b, err := settle(tx, "bogbean", 6)
		require.NoError(t, err)
		for _, q := range []string{
			"DELETE FROM record WHERE herd = ?", "UPDATE record SET said_by = '' WHERE herd = ?", "UPDATE record SET text = '' WHERE herd = ?",
		} {
			_, err := tx.exec(q, int64(b.herd))
			require.ErrorContains(t, err, "never")
			require.NoError(t, tx.beginErasure(a.herd, 0))
			_, err = tx.exec(q, int64(b.herd))
			require.ErrorContains(t, err, "never")
			require.NoError(t, tx.endErasure(a.herd))
			require.NoError(t, tx.beginErasure(b.herd, b.person))
			if !strings.Contains(q, "said_by") {
				_, err = tx.exec(q, int64(b.herd))
				require.ErrorContains(t, err, "never")
			} else {
				_, err = tx.exec(q+" AND person <> ?", int64(b.herd), int64(b.person))
				require.ErrorContains(t, err, "never", "another person's")
			}
			require.NoError(t, tx.endErasure(b.herd))
		}
	})
}

func TestForgottenPerson(t *testing.T) {
	path := filepath.Join(t.TempDir(), "herd.db")
	s := openStore(t, path, Options{})
	var h, other household
	var helper Chat
	write(t, s, func(tx *Tx) {
		var err error
		h, err = settle(tx, "quillwort", 24)
		require.NoError(t, err)
		other, err = settle(tx, "bogbean", 3)
		require.NoError(t, err)
		helper, _, err = tx.FindChat("telegram", "7quillwort1")
		require.NoError(t, err)
		require.NoError(t, tx.Rename(helper.Person, "Perpetua"))
		e := Envelope{
			Herd: h.herd, On: model.DayOf(noon), At: noon.Add(time.Hour), By: helper.Person, ByName: "Perpetua",
			Source: Source{helper.ID, "99"}, Text: "gave dot a shot", Fact: model.Question{About: "treat", Code: "drug_unclear", Body: []byte(`{}`)},
		}
		require.NoError(t, tx.Append(&e))
		for key, text := range map[string]string{"pressed": "Fill oak.\nDone: Sat 7:00, Perpetua", "other": "Perpetuana is out.", "own": "Fill oak."} {
			o := Outgoing{Key: key, Herd: h.herd, Chat: h.chat, Kind: "nudge", Text: text, State: Sent, Sent: key}
			_, err := tx.Queue(&o)
			require.NoError(t, err)
		}
	})
	before := dump(t, s)
	write(t, s, func(tx *Tx) {
		require.NoError(t, tx.Forget(Forgetting{Herd: h.herd, Person: helper.Person, Heir: h.person}))
	})
	require.Empty(t, found(t, path, "Perpetua is"))
	require.Empty(t, found(t, path, "Sat 7:00, Perpetua"))
	require.Empty(t, found(t, path, "7quillwort1"))
	require.NotEmpty(t, found(t, path, "Perpetuana"))
	after := dump(t, s)
	require.Equal(t, rowsOf(before, other), rowsOf(after, other))
	require.Len(t, after["record"], len(before["record"]))
	read(t, s, func(tx *Tx) {
		all, err := tx.Journal(h.herd)
		require.NoError(t, err)
		require.Len(t, all, 25)
		for i, e := range all[:24] {
			require.Equal(t, h.say("text", i), e.Text, "what was said stays")
			if i%2 == 0 {
				require.Equal(t, Source{h.chat, fmt.Sprint(i)}, e.Source)
				require.Equal(t, h.person, e.By)
				continue
			}
			require.Zero(t, e.By)
			require.Empty(t, e.ByName)
			require.Equal(t, Source{0, fmt.Sprintf("someone-%d", e.Seq)}, e.Source)
		}
		require.Equal(t, h.person, all[24].By, "an open question becomes the owner's")
		_, ok, err := tx.Member(h.herd, helper.Person)
		require.NoError(t, err)
		require.False(t, ok)
		_, ok, err = tx.FindChat("telegram", "7quillwort1")
		require.NoError(t, err)
		require.False(t, ok)
		own, _, err := tx.OutgoingByKey("own")
		require.NoError(t, err)
		require.Equal(t, "Fill oak.", own.Text)
	})
}

// Who belongs to a further herd is taken out of one only, and the chat goes over
// to the other; who runs the server can be taken out of a herd and runs it still.
func TestForgottenInOneHerd(t *testing.T) {
	s := newStore(t)
	write(t, s, func(tx *Tx) {
		h, err := settle(tx, "quillwort", 8)
		require.NoError(t, err)
		other, err := settle(tx, "bogbean", 8)
		require.NoError(t, err)
		helper, _, err := tx.FindChat("telegram", "7quillwort1")
		require.NoError(t, err)
		require.NoError(t, tx.Join(other.herd, helper.Person, Family))
		require.NoError(t, other.talk(tx, helper, 8))
		require.NoError(t, tx.Forget(Forgetting{Herd: h.herd, Person: helper.Person, Named: true}))
		c, err := tx.Chat(helper.ID)
		require.NoError(t, err)
		require.Equal(t, other.herd, c.Herd)
		o, _, err := tx.OutgoingByKey("bogbean:8")
		require.NoError(t, err)
		require.Equal(t, other.say("answer", 8), o.Text)
		all, err := tx.Journal(h.herd)
		require.NoError(t, err)
		require.Equal(t, "quillwort-someone", all[1].ByName, "the herd keeps who did it")
		require.Zero(t, all[1].By)

		require.NoError(t, tx.SetOperator(helper.Person))
		require.NoError(t, tx.Forget(Forgetting{Herd: other.herd, Person: helper.Person}))
		c, err = tx.Chat(helper.ID)
		require.NoError(t, err)
		require.Zero(t, c.Herd)
		has, err := tx.HasOperator()
		require.NoError(t, err)
		require.True(t, has)
	})
}
