package replay_test

import (
	"bytes"
	"context"
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/replay"
	"troughbell/store"
)

// update rewrites the golden conversations: go test ./bot/replay -update. Read
// the difference before committing it.
var update = flag.Bool("update", false, "rewrite the golden conversations")

// TestConversations plays each script and compares all that is said, nudges
// included, with what was said when a person last read it and found it good.
func TestConversations(t *testing.T) {
	dir := filepath.Join("..", "..", "testdata", "conversations")
	scripts, err := filepath.Glob(filepath.Join(dir, "*.txt"))
	require.NoError(t, err)
	require.NotEmpty(t, scripts)
	for _, script := range scripts {
		name := strings.TrimSuffix(filepath.Base(script), ".txt")
		t.Run(name, func(t *testing.T) {
			log, err := os.ReadFile(script)
			require.NoError(t, err)
			got := play(t, log, os.DirFS(dir))
			golden := filepath.Join(dir, "golden", name+".golden")
			if *update {
				require.NoError(t, os.MkdirAll(filepath.Dir(golden), 0o755))
				require.NoError(t, os.WriteFile(golden, got, 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			require.Equal(t, string(want), string(got))
		})
	}
}

// play plays a log for a new herd and gives the conversation as a page.
func play(t *testing.T, log []byte, files fs.FS) []byte {
	t.Helper()
	var out bytes.Buffer
	p := player(t, replay.NewPage(&out))
	p.Files = files
	require.NoError(t, p.Play(t.Context(), bytes.NewReader(log)))
	return out.Bytes()
}

// player makes a player for a new herd in a database of its own.
func player(t *testing.T, w replay.Writer) *replay.Player {
	t.Helper()
	ctx := context.Background()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	st, err := store.Open(ctx, filepath.Join(t.TempDir(), "herd.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	var herd store.HerdID
	require.NoError(t, st.Write(ctx, func(tx *store.Tx) error {
		herd, err = tx.CreateHerd("", zone.String(), time.Unix(0, 0))
		return err
	}))
	p, err := replay.New(ctx, st, herd, zone, w)
	require.NoError(t, err)
	return p
}
