package telegram

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/bot/telegram/botapitest"
	"troughbell/schedule"
	"troughbell/store"
)

// chart is what a picture may hold.
var chart = bytes.Repeat([]byte("\x89PNG\r\n\x00\xff"), 10_000)

// sendFile has a reply with a file go out to Ann, below a text of hers.
func (r *rig) sendFile(name string, f bot.File, buttons ...[]string) {
	r.t.Helper()
	r.write(func(tx *store.Tx) error {
		c, _, err := tx.FindChat(transport, id(ann.ID))
		if err != nil {
			return err
		}
		return r.bot.Desk.Queue(tx, messageIn(c, name), bot.Outcome{Replies: []bot.Reply{{
			Text: "Growth of " + name + ".", Buttons: buttons, Files: []bot.File{f},
		}}})
	})
}

// files lists what came to Ann whose text begins with that of the file.
func (r *rig) files(name string) (out []botapitest.Message) {
	for _, m := range r.api.Messages(ann.ID) {
		if strings.HasPrefix(m.Text, "Growth of "+name+".") {
			out = append(out, m)
		}
	}
	return out
}

// left is how many bytes of files wait in the store.
func (r *rig) left() (n int) {
	r.read(func(tx *store.Tx) (err error) {
		n, err = tx.FilesHeld()
		return err
	})
	return n
}

func photo() bot.File { return bot.File{Kind: store.Photo, Name: "growth.png", Bytes: chart} }

// A file arrives whole whatever fails on its way, and only a lost answer repeats
// it; nothing of it is held afterwards.
func TestFaultsOfSendingFiles(t *testing.T) {
	r := newFarm(t, quick)
	for _, kind := range []string{store.Photo, store.Document} {
		method := map[string]string{store.Photo: "sendPhoto", store.Document: "sendDocument"}[kind]
		for _, tt := range []struct {
			name  string
			fault botapitest.Fault
			times int
		}{
			{"no fault", botapitest.Fault{}, 1},
			{"flood", botapitest.Fault{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1}, 1},
			{"server's fault", botapitest.Fault{Status: 500, Description: "Internal Server Error"}, 1},
			{"gateway's page", botapitest.Fault{Status: 502, Page: "<html>bad gateway</html>"}, 1},
			{"hang-up", botapitest.Fault{HangUp: true}, 1},
			{"lost answer", botapitest.Fault{Lost: true}, 2},
		} {
			name := kind + " " + tt.name
			r.api.Fail(method, tt.fault)
			f := photo()
			f.Kind = kind
			r.sendFile(name, f)
			r.eventually(func() bool { return len(r.files(name)) == tt.times })
			r.settled()
			got := r.files(name)
			require.Len(t, got, tt.times, name)
			for _, m := range got {
				require.Equal(t, &botapitest.File{Kind: kind, Name: "growth.png", Bytes: chart}, m.File, name)
				require.True(t, m.Silent, name)
			}
		}
	}
	require.Zero(t, r.left())
}

// A refused photo comes as a document; of a refused document the words come.
func TestRefusedFile(t *testing.T) {
	r := newFarm(t, quick)
	refusal := botapitest.Fault{Status: 400, Description: "Bad Request: PHOTO_INVALID_DIMENSIONS"}
	r.api.Fail("sendPhoto", refusal)
	r.sendFile("one", photo(), []string{"Done"})
	r.eventually(func() bool { return len(r.files("one")) == 1 })
	require.Equal(t, "document", r.files("one")[0].File.Kind)

	r.api.Fail("sendPhoto", botapitest.Fault{Status: 400, Description: "Bad Request: not enough rights to send photos to the chat"})
	r.api.Fail("sendDocument", botapitest.Fault{Status: 400, Description: "Bad Request: not enough rights to send documents to the chat"})
	r.sendFile("two", photo(), []string{"Done"})
	r.eventually(func() bool { return len(r.files("two")) == 1 })
	r.settled()
	m := r.files("two")[0]
	require.Nil(t, m.File)
	require.Contains(t, m.Text, "growth.png")
	require.Len(t, m.Buttons, 1)
	require.Empty(t, r.dead(ann), "texts still arrive there")
	require.Zero(t, r.left())
}

// Who cannot be reached gets no file, and none is held for them.
func TestFileToWhoBlockedTheBot(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendPhoto", botapitest.Fault{Status: 403, Description: "Forbidden: bot was blocked by the user"})
	r.sendFile("one", photo())
	r.eventually(func() bool { return r.dead(ann) != "" })
	r.settled()
	require.Empty(t, r.files("one"))
	require.Zero(t, r.left())
}

// A file under way when the program ends arrives after the next start.
func TestFileUnderWayAtTheEnd(t *testing.T) {
	r := newFarm(t, quick)
	r.api.Fail("sendPhoto", botapitest.Fault{Delay: botapitest.Hangs})
	r.sendFile("one", photo())
	r.eventually(func() bool { return len(r.api.Calls("sendPhoto")) == 1 })
	began := time.Now()
	r.close()
	require.Less(t, time.Since(began), 2*time.Second)
	r.open()
	r.start(quick)
	r.eventually(func() bool { return len(r.files("one")) == 1 })
	require.Equal(t, chart, r.files("one")[0].File.Bytes)
}

// A button below a file turns into words below it, as below a text.
func TestPressBelowAFile(t *testing.T) {
	r := newFarm(t, quick)
	f := photo()
	r.write(func(tx *store.Tx) error {
		return r.bot.Desk.QueuePushes(tx, 1, []bot.Push{{
			Nudge: schedule.Nudge{Key: "k", Grade: schedule.Danger}, At: r.bot.Now(),
			Text: "Growth of all.", Buttons: [][]string{{"Done"}}, Files: []bot.File{f, {Kind: store.Document, Name: "b.csv", Bytes: []byte("a,b\n"), Caption: "The figures."}},
		}})
	})
	r.eventually(func() bool { return len(r.files("all")) == 1 })
	m := r.files("all")[0]
	require.False(t, m.Silent)
	require.NotEmpty(t, r.api.Press(ann, m.ID, "Done"))
	r.eventually(func() bool { return len(r.message(ann.ID, m.ID).Buttons) == 0 })
	require.Contains(t, r.message(ann.ID, m.ID).Text, "Done")
	require.Equal(t, "The figures.", r.find(ann, "The figures").Text)
}

// Where a text is too long to stand below a file the file comes behind it, and
// the answer to an edit never changes the words below a file.
func TestFileBehindALongText(t *testing.T) {
	r := newFarm(t, quick)
	var c store.Chat
	answer := func(m bot.Message, text string, files ...bot.File) {
		r.write(func(tx *store.Tx) error {
			return r.bot.Desk.Queue(tx, m, bot.Outcome{Replies: []bot.Reply{{Text: text, Buttons: [][]string{{"Done"}}, Files: files}}})
		})
		r.settled()
	}
	r.read(func(tx *store.Tx) (err error) {
		c, _, err = tx.FindChat(transport, id(ann.ID))
		return err
	})
	m := messageIn(c, "77")
	answer(m, strings.Repeat("long ", 250), photo())
	all := r.answersTo(ann.ID, 77)
	require.Len(t, all, 2)
	require.Nil(t, all[0].File)
	require.Len(t, all[0].Buttons, 1)
	require.NotNil(t, all[1].File)
	require.Empty(t, all[1].Text)
	m.Edit, m.Version = true, 5
	answer(m, "Short.")
	all = r.answersTo(ann.ID, 77)
	require.Len(t, all, 2)
	require.Equal(t, "Short.", all[0].Text)
	m.Version = 6
	answer(m, "Another.", photo())
	all = r.answersTo(ann.ID, 77)
	require.Len(t, all, 2, "the text is below the file now and nowhere else")
	require.Equal(t, "Another.", fmt.Sprint(all[1].Text))
	require.NotNil(t, all[1].File)
}
