package telegram

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/document"
	"troughbell/bot/telegram/botapitest"
	"troughbell/store"
)

// newPen is a farm with two pigs.
func newPen(t *testing.T) *rig {
	t.Helper()
	r := newFarm(t, quick)
	got := r.ask(ann, "2 pigs came today: Olive and Rufus, 45 lb each. One feeder, holds 200 lb. One water barrel, 55 gal."+
		" Target 270 lb, chores Saturday 7 am, time zone New York.")
	require.Empty(t, got.Buttons, "no question of setting up is open: %s", got.Text)
	return r
}

// list is a list of weights of today.
func (r *rig) list(lines ...string) []byte {
	day := r.bot.Now().In(r.bot.Zone).Format("2006-01-02")
	return []byte("date,pig,weight\n" + day + "," + strings.Join(lines, "\n"+day+",") + "\n")
}

// weighed are the pigs weighed by what stands in the first herd's journal.
func (r *rig) weighed() (out []string) {
	r.read(func(tx *store.Tx) error {
		herds, err := tx.Herds()
		if err != nil {
			return err
		}
		return tx.ViewRows("weigh", herds[0].ID, func(cols, vals []string) error {
			out = append(out, vals[slices.Index(cols, "animals")])
			return nil
		})
	})
	return out
}

// preview waits for what is said to a file.
func (r *rig) preview(p botapitest.Person, name string, b []byte, caption string) botapitest.Message {
	r.t.Helper()
	return r.answerTo(p.ID, r.api.SendFile(p, name, b, caption))
}

// press presses a button and gives the answer.
func (r *rig) press(p botapitest.Person, m botapitest.Message, label string) botapitest.Message {
	r.t.Helper()
	n := len(r.api.Messages(m.Chat))
	require.NotEmpty(r.t, r.api.Press(p, m.ID, label), "%+v", r.api.Messages(m.Chat))
	return r.lastTo(m.Chat, n+1)
}

// A file is shown, taken in at a tap, and taken back as a whole; the same file once
// more brings nothing.
func TestImportAtATap(t *testing.T) {
	r := newPen(t)
	file := r.list("olive,46.5", "Rufus,47", "Dott,3")
	shown := r.preview(ann, "weights.csv", file, "")
	require.Equal(t, "weights.csv: 2 records, "+r.bot.Now().In(r.bot.Zone).Format("Mon Jan 2")+
		".\nNew: 2 weighings.\nLeft out: 1 line.\n  Line 4: no pig is called Dott.\nImport 2 records from weights.csv?", shown.Text)
	require.Equal(t, []string{"Import", "Leave it"}, []string{shown.Buttons[0].Label, shown.Buttons[1].Label})
	require.Empty(t, r.weighed())
	require.Equal(t, "Imported 2 records from weights.csv. Wrong? Text: undo.", r.press(ann, shown, "Import").Text)
	require.ElementsMatch(t, []string{"Olive", "Rufus"}, r.weighed())

	again := r.preview(ann, "weights.csv", r.list("olive,46.5", "Rufus,47"), "import")
	require.Contains(t, again.Text, "Here already: 2.\nNothing new to import.")
	require.Empty(t, again.Buttons)

	require.Equal(t, "Undone: import of 2 records from weights.csv.", r.ask(ann, "undo").Text)
	require.Empty(t, r.weighed())
	shown = r.preview(ann, "weights.csv", file, "/import")
	require.Equal(t, "Imported 2 records from weights.csv. Wrong? Text: undo.", r.ask(ann, "import").Text, "the button's word")
	require.Len(t, r.weighed(), 2)
	require.NotEmpty(t, shown.Buttons)
}

// What is declined is gone, and so is what waited for a day; a press of each button
// counts for its own file.
func TestFilesThatAreNotTakenIn(t *testing.T) {
	r := newPen(t)
	first := r.preview(ann, "first.csv", r.list("olive,46"), "")
	second := r.preview(ann, "second.csv", r.list("rufus,47"), "")
	require.Equal(t, "Left. Nothing of that file is kept.", r.press(ann, first, "Leave it").Text)
	require.Empty(t, r.weighed())
	require.Equal(t, "Imported 1 record from second.csv. Wrong? Text: undo.", r.press(ann, second, "Import").Text)
	require.Equal(t, []string{"Rufus"}, r.weighed())

	third := r.preview(ann, "third.csv", r.list("olive,46"), "")
	r.write(func(tx *store.Tx) error { return tx.DropOldUploads(r.bot.Now().Add(store.UploadStands)) })
	require.Equal(t, "That file is no longer here: I keep it for a day. Send it again.", r.press(ann, third, "Import").Text)
	require.Equal(t, []string{"Rufus"}, r.weighed())

	r.preview(ann, "fourth.csv", r.list("olive,46"), "")
	require.Equal(t, "Dropped. Nothing recorded of it.", r.ask(ann, "never mind").Text)
	r.settled()
	r.read(func(tx *store.Tx) error {
		herds, err := tx.Herds()
		require.NoError(t, err)
		rows := 0
		for _, m := range r.api.Messages(ann.ID) {
			c, _, err := tx.FindChat(transport, id(ann.ID))
			require.NoError(t, err)
			_, ok, err := tx.UploadOf(herds[0].ID, fmt.Sprintf("%d:%s", c.ID, m.ReplyTo), r.bot.Now())
			require.NoError(t, err)
			if ok {
				rows++
			}
		}
		require.Zero(t, rows, "no file is kept that is settled")
		return nil
	})
}

// A file arrives whatever fails on its way, once, and of what does not come its
// sender is told. The token is in no log, as every rig checks at its end.
func TestFaultsOfFetching(t *testing.T) {
	r := newPen(t)
	for i, tt := range []struct {
		name   string
		method string
		faults []botapitest.Fault
		lost   bool
	}{
		{"no fault", "getFile", nil, false},
		{"server's fault", "getFile", []botapitest.Fault{{Status: 500, Description: "Internal Server Error"}}, false},
		{"gateway's page", "getFile", []botapitest.Fault{{Status: 502, Page: "<html>bad gateway</html>"}}, false},
		{"flood", "getFile", []botapitest.Fault{{Status: 429, Description: "Too Many Requests: retry after 1", RetryAfter: 1}}, false},
		{"hang-up", "getFile", []botapitest.Fault{{HangUp: true}, {HangUp: true}}, false},
		{"flood of the file", botapitest.Download, []botapitest.Fault{{Status: 429, RetryAfter: 1}}, false},
		{"hang-up of the file", botapitest.Download, []botapitest.Fault{{HangUp: true}}, false},
		{"half of the file", botapitest.Download, []botapitest.Fault{{Lost: true}}, false},
		{"no such file", "getFile", []botapitest.Fault{{Status: 400, Description: "Bad Request: wrong file_id"}}, true},
		{"no such address", botapitest.Download, []botapitest.Fault{{Status: 404}}, true},
		{"down for good", botapitest.Download, slices.Repeat([]botapitest.Fault{{Status: 500}}, fetchTries), true},
	} {
		r.api.Fail(tt.method, tt.faults...)
		m := r.api.SendFile(ann, "weights.csv", r.list(fmt.Sprintf("olive,%d", 46+i)), "")
		got := r.answerTo(ann.ID, m)
		if tt.lost {
			require.Equal(t, "I could not fetch that file from Telegram. Send it again.", got.Text, tt.name)
		} else {
			require.Contains(t, got.Text, "New: 1 weighing.", tt.name)
		}
		r.settled()
		require.Len(t, r.answersTo(ann.ID, m), 1, tt.name)
	}
}

// While a file is on its way others are answered; a kill then loses nothing.
func TestAKillWhileFetching(t *testing.T) {
	r := newPen(t)
	r.invite(ben, "invite")
	r.api.Fail(botapitest.Download, botapitest.Fault{Delay: botapitest.Hangs})
	m := r.api.SendFile(ann, "weights.csv", r.list("olive,46"), "")
	r.eventually(func() bool { return len(r.api.Calls(botapitest.Download)) == 1 })
	require.Contains(t, r.ask(ben, "fence 5.2").Text, "Fence 5.2 kV")
	require.Contains(t, r.ask(ann, "fence 5.3").Text, "Fence 5.3 kV")
	require.Empty(t, r.answersTo(ann.ID, m))
	r.close()
	r.open()
	r.start(quick)
	require.Contains(t, r.answerTo(ann.ID, m).Text, "New: 1 weighing.")
	shown := r.answerTo(ann.ID, m)
	r.settled()
	r.close() // the file that was shown waits through an end, too
	r.open()
	r.start(quick)
	require.Equal(t, "Imported 1 record from weights.csv. Wrong? Text: undo.", r.press(ann, shown, "Import").Text)
}

// What is too large, or from whom it is not taken, is not fetched at all; nobody's
// file lies on the disk of the server.
func TestFilesThatAreNotFetched(t *testing.T) {
	r := newPen(t)
	r.invite(cal, "invite helper")
	large := append(r.list("olive,46"), make([]byte, document.MaxIntake)...)
	const tooLarge = "Nothing imported: that file is too large. 10 MB is the most."
	require.Equal(t, tooLarge, r.preview(ann, "weights.csv", large, "").Text)
	require.Equal(t, "Not taken in: files are for the owner or family.", r.preview(cal, "weights.csv", r.list("olive,46"), "").Text)
	require.Contains(t, r.preview(ann, "pen.pdf", []byte("%PDF"), "").Text, "I can only read text, not files.")
	r.api.SendFile(dee, "weights.csv", r.list("olive,46"), "import")
	r.settled()
	require.Empty(t, r.api.Calls("getFile"))

	// An app that tells another size.
	m := r.api.SendFile(ann, "x.csv", large, "")
	r.answerTo(ann.ID, m)
	lie := r.api.Send(ann.ID, ann, map[string]any{"document": map[string]any{
		"file_id": fmt.Sprintf("file-%d", 6), "file_unique_id": "u", "file_name": "y.csv", "file_size": 10,
	}})
	require.Equal(t, "I could not fetch that file from Telegram. Send it again.", r.answerTo(ann.ID, lie).Text, "there is none of that id")
	lie = r.api.Send(ann.ID, ann, map[string]any{"document": map[string]any{
		"file_id": "file-1", "file_unique_id": "u", "file_name": "y.csv", "file_size": 10,
	}})
	require.Equal(t, tooLarge, r.answerTo(ann.ID, lie).Text)
	r.api.SendFile(ann, "z.csv", append(large, make([]byte, botapitest.MaxDownload)...), "")
	lie = r.api.Send(ann.ID, ann, map[string]any{"document": map[string]any{
		"file_id": "file-6", "file_unique_id": "u", "file_name": "z.csv", "file_size": 10,
	}})
	require.Equal(t, tooLarge, r.answerTo(ann.ID, lie).Text)
	require.Empty(t, r.api.Calls(botapitest.Download))
	left, err := os.ReadDir(filepath.Dir(r.path))
	require.NoError(t, err)
	for _, f := range left {
		require.Contains(t, f.Name(), "herd.db")
	}
}

// In a group only what is said to the bot is taken. Words below a file are read, and
// the file is not, which is said.
func TestFilesWithWords(t *testing.T) {
	r := newPen(t)
	const group = -55
	r.api.SendFileIn(group, ann, "weights.csv", r.list("olive,46"), "")
	shown := r.answerTo(group, r.api.SendFileIn(group, ann, "weights.csv", r.list("olive,46"), "/import@"+botapitest.BotName))
	require.Contains(t, shown.Text, "New: 1 weighing.")
	r.settled()
	require.Len(t, r.api.Messages(group), 1)

	got := r.preview(ann, "weights.csv", r.list("olive,46"), "fence 5.2")
	require.Equal(t, "Fence 5.2 kV.\nI did not look at the file: send it by itself, or with the word import below it.", got.Text)
	require.Equal(t, "Imported 1 record from weights.csv. Wrong? Text: undo.", r.ask(ann, "import").Text, "that of the group")
	require.Contains(t, r.ask(ann, "import").Text, "Send me the file")
}
