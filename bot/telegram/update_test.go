package telegram

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

// Whatever a server sends, reading it does not panic, and what is read has a
// key and a name fit to show.
func FuzzReadUpdate(f *testing.F) {
	for _, raw := range []string{
		`{"update_id":1,"message":{"message_id":2,"date":3,"chat":{"id":4,"type":"private"},"from":{"id":4,"first_name":"Ann"},"text":"fed"}}`,
		`{"edited_message":{"message_id":2,"edit_date":9,"chat":{"id":-4,"type":"group"},"text":"@bell fed","reply_to_message":{"message_id":1}}}`,
		`{"callback_query":{"id":"q","data":"b:1:0","message":{"message_id":2,"date":0,"chat":{"id":4}}}}`,
		`{"callback_query":{"id":"q"}}`,
		`{"my_chat_member":{"chat":{"id":4,"type":"private"},"new_chat_member":{"status":"kicked"}}}`,
		`{"message":{"message_id":2,"chat":{"id":-4},"migrate_to_chat_id":-100}}`,
		`{"message":null}`, `[]`, `{"message":{"chat":null,"text":"x"}}`,
	} {
		f.Add([]byte(raw))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		u, ok, err := readUpdate(raw)
		if err != nil || !ok {
			return
		}
		require.NotEmpty(t, u.key)
		require.LessOrEqual(t, utf8.RuneCountInString(u.name), maxName)
		require.NotContains(t, u.name, "\n")
	})
}

func FuzzReadPress(f *testing.F) {
	f.Add("b:12:3")
	f.Add("b::")
	f.Fuzz(func(t *testing.T, data string) {
		row, n, ok := readPress(data)
		if !ok {
			return
		}
		require.GreaterOrEqual(t, n, 0)
		again, m, ok := readPress(pressData(row, n))
		require.True(t, ok)
		require.Equal(t, row, again)
		require.Equal(t, n, m)
		require.LessOrEqual(t, len(pressData(row, n)), 64, "Telegram takes no more")
	})
}

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
