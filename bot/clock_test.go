package bot_test

import (
	"context"
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
	st, err := store.Open(ctx, filepath.Join(t.TempDir(), "herds.db"), store.Options{Ephemeral: true})
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, st.Close()) })
	var herds []int64
	require.NoError(t, st.Write(ctx, func(tx *store.Tx) error {
		for n := range 5 {
			if n == 2 { // no such herd: its look fails after others in the same go
				herds = append(herds, 999)
				continue
			}
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
	queued := 0
	st.OnQueued(func(w []store.Waiting) { queued += len(w) })
	clock := &bot.Clock{Store: st, Desk: bot.NewDesk()}
	failed := clock.Look(ctx, herds, saturday)
	require.Len(t, failed, 1)
	require.Error(t, failed[999])
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
		if id != 999 {
			require.Equal(t, 1, told(id), "herd %d", id)
		}
	}
	require.Len(t, clock.Look(ctx, herds, saturday), 1, "the others have their next look ahead")
	require.Equal(t, 4, queued)
}
