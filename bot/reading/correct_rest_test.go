package reading_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is told behind a sentence that puts an earlier record right is told all the same.
func TestToldBehindACorrection(t *testing.T) {
	for _, c := range []struct{ before, text, want string }{
		{"moss limping", "its plum. mixed a batch too", "sick animals=Plum note=limping replaces=true; mixed batches=1"},
		{"moss limping", "it was plum. fence 5.1. spent 12 twine", "sick animals=Plum note=limping replaces=true; fence kv=5.1; spend amount=12 currency=USD what=twine"},
		{"dot 182", "that was yesterday. fence 5.1", "weigh animals=Dot date=2026-07-17 replaces=true weight_kg=82.55; fence kv=5.1"},
		{"dot 182. all barrels full", "no wait dot was 178", "weigh animals=Dot replaces=true weight_kg=80.74"},
		{"all barrels full", "no wait dot was 178", "weigh animals=Dot weight_kg=80.74"},
		{"dot 182", "no, plum. 178", "weigh animals=Plum replaces=true weight_kg=80.74"},
		{"dot 182", "yesterday. plum 178", "weigh animals=Plum date=2026-07-17 weight_kg=80.74"},
	} {
		k := hollowTalk(t)
		_, err := k.say("2026-07-18T18:30", c.before)
		require.NoError(t, err)
		got, err := k.say("2026-07-18T18:31", c.text)
		require.NoError(t, err)
		require.Equal(t, c.want, brief(got.Entries, "2026-07-18"), c.text)
	}
}
