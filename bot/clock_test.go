package bot_test

import (
	"context"
	"database/sql"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/model"
	"troughbell/store"
)

// A herd that cannot be looked at takes none down of those that are looked at
// with it: each of them has what it was told and what is queued for it, once.
func TestAFailingHerdTakesNoOtherDown(t *testing.T) {
	ctx := context.Background()
	zone, err := time.LoadLocation("America/Chicago")
	require.NoError(t, err)
	saturday := time.Date(2026, time.June, 13, 7, 0, 0, 0, zone)
	path := filepath.Join(t.TempDir(), "herds.db")
	st, err := store.Open(ctx, path, store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	var herds []int64
	require.NoError(t, st.Write(ctx, func(tx *store.Tx) error {
		for n := range 5 {
			id, err := tx.CreateHerd(fmt.Sprint("herd ", n), zone.String(), saturday)
			if err != nil {
				return err
			}
			herds = append(herds, int64(id))
			chat, err := tx.ChatOf("telegram", fmt.Sprint(n), false)
			if err != nil {
				return err
			}
			chat.Herd = id
			if err := tx.SaveChat(chat); err != nil {
				return err
			}
			if err := keepSeason(tx, id, saturday, zone); err != nil {
				return err
			}
			if err := tx.SetLookAgain(id, saturday); err != nil {
				return err
			}
		}
		return nil
	}))
	bad := herds[2] // its look fails after others in the same go
	db, err := sql.Open("sqlite", path)
	require.NoError(t, err)
	_, err = db.ExecContext(ctx, "UPDATE herd SET zone = 'Nowhere' WHERE id = ?", bad)
	require.NoError(t, err)
	require.NoError(t, db.Close())
	queued := 0
	st.OnQueued(func(w []store.Waiting) { queued += len(w) })
	clock := &bot.Clock{Store: st, Desk: bot.NewDesk()}
	failed := clock.Look(ctx, herds, saturday)
	require.Len(t, failed, 1)
	require.Error(t, failed[bad])
	require.Equal(t, 4, queued)
	told := func(id int64) (n int) {
		require.NoError(t, st.Read(ctx, func(tx *store.Tx) error {
			journal, err := tx.Journal(store.HerdID(id))
			for _, e := range journal {
				if _, ok := e.Fact.(model.Told); ok {
					n++
				}
			}
			return err
		}))
		return n
	}
	for _, id := range herds {
		if id != bad {
			require.Equal(t, 1, told(id), "herd %d", id)
		}
	}
	herds = append(herds, 999) // deleted since it was found to be due: there is nothing to look at
	require.Len(t, clock.Look(ctx, herds, saturday), 1, "the others have their next look ahead")
	require.Equal(t, 4, queued)
}
