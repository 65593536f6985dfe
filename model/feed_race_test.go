package model

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// One herd may be asked by several chats at once.
func TestFeedFiguresAreSafeToAskTogether(t *testing.T) {
	s, at := twentyPigs(t)
	want, err := s.herd().FeedLeft(at)
	require.NoError(t, err)
	h := s.herd()
	var all sync.WaitGroup
	got := make([]FeedLeft, 8)
	errs := make([]error, 8)
	for i := range got {
		all.Go(func() {
			if got[i], errs[i] = h.FeedLeft(at); errs[i] == nil {
				_, errs[i] = h.RefillPlan(at, at.AddDate(0, 0, 7+i))
			}
		})
	}
	all.Wait()
	for i := range got {
		require.NoError(t, errs[i])
		require.Equal(t, want, got[i])
	}
}
