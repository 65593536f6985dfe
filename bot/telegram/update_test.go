package telegram

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

func TestKeys(t *testing.T) {
	key := func(raw string) string {
		u, ok, err := readUpdate([]byte(raw))
		require.NoError(t, err)
		require.True(t, ok)
		return u.key
	}
	const head = `{"message_id":2,"date":3,"chat":{"id":4,"type":"private"},"from":{"id":4}`
	first := key(`{"update_id":1,"message":` + head + `,"text":"a"}}`)
	require.Equal(t, first, key(`{"update_id":9,"message":`+head+`,"text":"a"}}`), "one message, whatever the update's id")
	edit := key(`{"update_id":2,"edited_message":` + head + `,"edit_date":9,"text":"b"}}`)
	require.NotEqual(t, first, edit)
	require.NotEqual(t, edit, key(`{"update_id":3,"edited_message":`+head+`,"edit_date":9,"text":"c"}}`), "twice within a second")
}

func TestMentions(t *testing.T) {
	for _, tt := range []struct {
		text, rest string
		ok         bool
	}{
		{"@bell fed 40", "fed 40", true},
		{"@BELL: fed 40\nfull", "fed 40\nfull", true},
		{"fed 40 @bell", "fed 40", true},
		{"fed 40, @bell, full", "fed 40, full", true},
		{"@bells fed 40", "", false},
		{"me@bell.com", "", false},
		{"Ünï @bell é", "Ünï é", true},
		{"fed 40", "", false},
	} {
		rest, ok := withoutMention(tt.text, "bell")
		require.Equal(t, tt.ok, ok, tt.text)
		require.Equal(t, tt.rest, rest, tt.text)
	}
	_, ok := withoutMention("@ fed", "")
	require.False(t, ok, "no name is known yet")
}

func TestNamesAreCleaned(t *testing.T) {
	require.Equal(t, "Ann", clean(" A\u202en\u0000n\n "))
	require.Equal(t, maxName, utf8.RuneCountInString(clean(strings.Repeat("ß", 100))))
}
