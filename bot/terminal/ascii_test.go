package terminal_test

import (
	"strings"
	"testing"
	"time"
	"unicode"

	"github.com/stretchr/testify/require"

	"troughbell/bot/picture"
)

// On a screen without UTF-8 all is said in ASCII: answers, questions and their
// buttons, nudges, charts and the last word. With it, signs stand as they are.
func TestScreenWithoutUTF8(t *testing.T) {
	texts := setUp + strings.Join([]string{
		"filled feeder 300 lb, full", "water full", "97 today, low 75", "spent €40 on Bäcker Höfli's bread", "what do they weigh?", "graph of growth",
		"calendar", "help", "note: two were at the fence – again", "import nowhere.csv", "wormed all", "how long till butcher?", "why?",
	}, "\n") + "\n"
	for _, plain := range []bool{true, false} {
		st, id := herd(t)
		c := &clock{at: friday}
		chat := open(t, st, id, c)
		chat.Screen = picture.Screen{Columns: 80, Plain: plain}
		var out screen
		require.ErrorContains(t, chat.Run(t.Context(), strings.NewReader(texts), &out), "1 of the texts", "the file that is not there")
		c.set(friday.Add(13 * time.Hour))
		require.NoError(t, chat.Look(t.Context()))
		later := open(t, st, id, c)
		later.Screen = chat.Screen
		require.NoError(t, later.Run(t.Context(), strings.NewReader("delete this herd\nall of it\n"), &out))
		beyond := strings.IndexFunc(out.String(), func(r rune) bool { return r > unicode.MaxASCII })
		if !plain {
			require.GreaterOrEqual(t, beyond, 0)
			continue
		}
		require.Contains(t, out.String(), "(!) ")
		require.Contains(t, out.String(), "97 F")
		require.Contains(t, out.String(), "Backer Hofli's")
		require.Contains(t, out.String(), "\n* ")
		require.Contains(t, out.String(), "( 1 ")
		if beyond >= 0 {
			require.Fail(t, "beyond ASCII", out.String()[beyond:])
		}
	}
}
