package reading_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"troughbell/bot/reading"
)

// FuzzRead: whatever is typed, reading it ends, gives at least one entry inside
// the text, and gives the same again.
func FuzzRead(f *testing.F) {
	k := hollowTalk(f)
	now, err := time.ParseInLocation("2006-01-02T15:04", "2026-07-18T18:30", k.loc)
	require.NoError(f, err)
	for _, s := range []string{
		"dot 38x42, moss 170 n 165", "810 filled north 145", "5.8. 7,5 kg ½ 1/2 bag", "PIGS OUT!!", "wormed all but bram 18d", "no, plum",
		"what if 2 more pigs", "remind me friday 6pm", "two hundred and", "a a a half half", "x×*", "12:61 25:00 2026-13-40", "’s 's -", "é̂ ½½", "no not 38", "mix is",
		"- 450 in, full\n- tanks ok", "butcher sep 1 and", "herd", "gone", "+3 ~5 $ €7 #", "the 31st of feb", "every", "not", "1e309 99999999999999999999",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c := k.context(now)
		got := reading.Read(c, text)
		require.NotEmpty(t, got.Entries)
		for _, e := range got.Entries {
			require.NotNil(t, e.Act)
			require.GreaterOrEqual(t, e.From, 0)
			require.LessOrEqual(t, e.To, len(text))
			require.LessOrEqual(t, e.From, e.To)
			if fact, ok := e.Act.(reading.Fact); ok {
				require.NoError(t, fact.Check(), "%q: %#v", text, fact.Fact)
				require.LessOrEqual(t, e.On, k.today(now), "%q", text)
			}
		}
		for _, l := range got.Left {
			require.Contains(t, text, l)
		}
		require.Equal(t, got, reading.Read(c, text))
	})
}
