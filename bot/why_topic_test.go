package bot_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"troughbell/store"
)

// Why, with a topic of a nudge of several lines, gives the reasons of that line.
func TestWhyOfOneLineOfANudge(t *testing.T) {
	b := openBook(t, store.Options{})
	b.text(t, setUp)
	b.text(t, "filled 100 lb from empty")
	b.text(t, "sheds and oak full")
	b.now = b.now.AddDate(0, 0, 7)
	b.look(t, 7)
	said := func(text string) string { return b.text(t, text).Replies[0].Text }
	require.Contains(t, said("why the water?"), "draw")
	require.NotContains(t, said("why the water?"), " eat ")
	require.Contains(t, said("why the feed?"), " eat ")
	require.NotContains(t, said("why the feed?"), "draw")
}
