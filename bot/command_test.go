package bot

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestCommandParts(t *testing.T) {
	for _, tt := range []struct{ text, word, bot, rest string }{
		{"/start", "start", "", ""},
		{"/Start@Bell_Bot  ABC", "start", "Bell_Bot", "ABC"},
		{"/undo\nplease now", "undo", "", "please now"},
	} {
		word, name, rest, ok := Command(tt.text)
		require.True(t, ok)
		require.Equal(t, []string{tt.word, tt.bot, tt.rest}, []string{word, name, rest}, tt.text)
	}
	for _, text := range []string{"", "/", "/ x", "start", " /start", "/@bell"} {
		_, _, _, ok := Command(text)
		require.False(t, ok, text)
	}
}
