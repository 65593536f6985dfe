package replay

import (
	"bytes"
	"encoding/json"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
)

// Files are named with their sizes; what has none has no such key.
func TestFilesAreNamed(t *testing.T) {
	at := time.Date(2026, 5, 16, 8, 0, 0, 0, time.UTC)
	fs := []bot.File{{Kind: "photo", Name: "growth.png", Bytes: make([]byte, 1500)}}
	var out bytes.Buffer
	j := NewJSON(&out)
	require.NoError(t, j.Reply(at, bot.Reply{Text: "Growth.", Files: fs}, &model.Herd{}))
	require.NoError(t, j.Nudge(bot.Push{At: at, Text: "Growth.", Files: fs}, &model.Herd{}))
	require.NoError(t, j.Reply(at, bot.Reply{Text: "None."}, &model.Herd{}))
	require.NoError(t, j.Ready(at))
	want := []any{map[string]any{"name": "growth.png", "kind": "photo", "bytes": 1500.0}}
	lines := bytes.Split(bytes.TrimSpace(out.Bytes()), []byte("\n"))
	require.Len(t, lines, 4)
	for i, files := range []any{want, want, nil, nil} {
		var m map[string]any
		require.NoError(t, json.Unmarshal(lines[i], &m))
		require.Equal(t, files, m["files"])
	}
	var page bytes.Buffer
	p := NewPage(&page)
	require.NoError(t, p.Reply(at, bot.Reply{Text: "Growth.", Files: fs}, &model.Herd{}))
	require.NoError(t, p.Ready(at))
	require.Contains(t, page.String(), "Growth.\n          [growth.png, 2 kB]\n")
}
