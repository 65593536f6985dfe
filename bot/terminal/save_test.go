package terminal_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// A file is saved where one line says, whole; nothing that is there is written
// over.
func TestFilesAreSaved(t *testing.T) {
	st, id := herd(t)
	c := &clock{at: friday}
	chat := open(t, st, id, c)
	chat.Files = filepath.Join(t.TempDir(), "mine", "files")
	at := func(name string) string { return filepath.Join(chat.Files, name) }
	n := 0
	give := func(text string, files ...bot.File) string {
		t.Helper()
		n++
		require.NoError(t, st.Write(t.Context(), func(tx *store.Tx) error {
			there, err := tx.ChatOf("terminal", "1", false)
			if err != nil {
				return err
			}
			m := bot.Message{Herd: id, Chat: there.ID, ID: strings.Repeat("m", n)}
			return chat.Desk.Queue(tx, m, bot.Outcome{Replies: []bot.Reply{{Text: text, Files: files}}})
		}))
		var out screen
		require.NoError(t, chat.Run(t.Context(), strings.NewReader(""), &out))
		return out.String()
	}
	file := func(name, content string) bot.File {
		return bot.File{Kind: store.Document, Name: name, Bytes: []byte(content)}
	}
	require.Equal(t, "All records.\nFile: "+at("herd.csv")+"\n", give("All records.", file("herd.csv", "a,b\n")))
	require.Equal(t, "Two.\nFile: "+at("herd-2.csv")+"\nFile: "+at("b")+"\n", give("Two.", file("herd.csv", "c,d\n"), file("b", "x")))
	require.Equal(t, "Again.\nFile: "+at("herd-2.csv")+"\n", give("Again.", file("herd.csv", "c,d\n")))
	for name, want := range map[string]string{"herd.csv": "a,b\n", "herd-2.csv": "c,d\n", "b": "x"} {
		got, err := os.ReadFile(at(name))
		require.NoError(t, err)
		require.Equal(t, want, string(got))
	}
	left, err := os.ReadDir(chat.Files)
	require.NoError(t, err)
	require.Len(t, left, 3)

	chat.Files = at("b") // no folder
	out := give("Nowhere.", file("herd.csv", "a"))
	require.Contains(t, out, "Nowhere.\nThe file herd.csv could not be saved: ")
	require.Contains(t, out, "--files")
	require.Empty(t, give(""), "the chat went on")
}
