package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
	"troughbell/model"
)

// How long pigs went without water is kept where the text says it.
func TestHowLongWithoutWater(t *testing.T) {
	k := newTalk()
	for _, m := range sedge {
		_, err := k.say(m.at, m.text)
		require.NoError(t, err)
	}
	for text, want := range map[string]float64{
		"no water since 6 am": 2, "no water since yesterday": 20, "no water for 30 hours": 30, "they have been without water for 2 days": 48, "no water": 0,
	} {
		k.before, k.pending = nil, nil
		got, err := k.say("2026-07-18T08:00", text)
		require.NoError(t, err)
		a, ok := got.Entries[0].Act.(reading.Fact).Fact.(model.Alarm)
		require.True(t, ok, text)
		require.Equal(t, model.AlarmNoWater, a.What, text)
		if want == 0 {
			require.Nil(t, a.Hours, text)
			continue
		}
		require.InDelta(t, want, *a.Hours, 1e-9, text)
	}
}
