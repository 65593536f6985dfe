package telegram

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot"
	"troughbell/store"
)

// An alarm that one person raised and nobody settled is told to the whole
// household, with a sound; who settles it settles it for all.
func TestAlarmReachesTheHousehold(t *testing.T) {
	r := newFarm(t, quick)
	r.invite(ben, "invite my wife")
	r.ask(ann, "4 pigs came today: Olive, Rufus, Nettle and Gus, 90 lb each. one feeder holds 200 lb. "+
		"two water barrels, 55 gal each. target 270 lb, chores saturday 7 am, eastern time")
	r.ask(ben, "PIGS OUT")
	r.settled() // what is passed on at once has come; the nudge is what follows
	before := len(r.api.Messages(ann.ID))

	ctx := context.Background()
	clock := &bot.Clock{Store: r.store, Desk: r.bot.Desk}
	now := r.bot.Now()
	require.NoError(t, clock.Woke(ctx, now, now))
	for end := now.Add(6 * time.Hour); now.Before(end) && len(r.api.Messages(ann.ID)) == before; {
		r.read(func(tx *store.Tx) error {
			row, err := tx.Herd(1)
			if row.LookAgain.After(now) {
				now = row.LookAgain
			}
			return err
		})
		require.Empty(t, clock.Look(ctx, []int64{1}, now))
		r.settled()
	}
	told := r.lastTo(ann.ID, before+1)
	require.False(t, told.Silent)
	require.Contains(t, told.Text, "⚠")
	require.Equal(t, told.Text, r.find(ben, told.Text).Text)
	require.NotEmpty(t, told.Buttons)
	r.api.Press(ann, told.ID, told.Buttons[0].Label)
	atBen := r.find(ben, told.Text)
	r.eventually(func() bool { return r.message(ben.ID, atBen.ID).Edits == 1 })
	require.Empty(t, r.message(ben.ID, atBen.ID).Buttons)
}
