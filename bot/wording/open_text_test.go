package wording_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"troughbell/bot/reading"
	"troughbell/model"
)

// FuzzNone holds that no text of a person makes the reply long, broken or worse.
func FuzzNone(f *testing.F) {
	for _, s := range []string{"", "fern 12 st", "st", "12st", "NaN st", "1e400 stone", "-3 stone", "{n0} [x", strings.Repeat("stone ", 700)} {
		f.Add(s)
	}
	v := us(&testing.T{})
	f.Fuzz(func(t *testing.T, text string) {
		said := v.None(reading.None{Reason: reading.NoneUnit}, text)
		require.NotContains(t, said, "NaN")
		require.NotContains(t, said, "{")
		require.Less(t, len(said), 200)
		left := v.Left([]string{text, text})
		require.Less(t, utf8.RuneCountInString(left), 160)
		require.NotContains(t, left, "\n")
	})
}

// A person's own words stand in a phrase as they are, whatever marks they hold.
func TestOwnWordsStayAsTheyAre(t *testing.T) {
	v := us(t)
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.StringMatching(`[A-Za-z{}\[\]:|~?0-9 ]{1,40}`).Draw(t, "words")
		require.Equal(t, "note: "+words, v.Echo(entry(model.Note{What: words})))
		said := v.Recorded([]reading.Entry{entry(model.Note{What: words})}, nil)
		require.Contains(t, said, words)
		text, _ := v.Question(reading.Clarify{Code: "near_name", Names: []string{words}})
		require.Contains(t, text, words)
	})
}
