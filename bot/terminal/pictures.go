package terminal

import (
	"io"
	"os"
	"strings"

	"golang.org/x/term"

	"troughbell/bot"
	"troughbell/bot/picture"
	"troughbell/store"
)

// unknownColumns is taken for the width of a screen that does not tell it.
const unknownColumns = 80

// ScreenOf says what charts out can show: characters beyond ASCII where the
// locale has them, colours on a terminal only, and never where NO_COLOR is set.
func ScreenOf(out io.Writer, env func(string) string) picture.Screen {
	s := picture.Screen{Columns: unknownColumns, Plain: !utf8Locale(env)}
	f, ok := out.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return s
	}
	if w, _, err := term.GetSize(int(f.Fd())); err == nil && w > 0 {
		s.Columns = w
	}
	s.Colour = env("NO_COLOR") == "" && env("TERM") != "dumb"
	return s
}

// utf8Locale reports whether the first of the variables that is set names UTF-8;
// where none is set, as with a service, it counts as so.
func utf8Locale(env func(string) string) bool {
	for _, name := range []string{"LC_ALL", "LC_CTYPE", "LANG"} {
		if v := strings.ToLower(env(name)); v != "" {
			return strings.Contains(v, "utf-8") || strings.Contains(v, "utf8")
		}
	}
	return true
}

// chartsOf draws the pictures of replies for the screen, in the order in which
// their files come out of the outbox.
func (c *Chat) chartsOf(replies []bot.Reply) []string {
	screen := c.Screen
	if c.width > 0 {
		screen.Columns = c.width
	}
	var out []string
	for _, r := range replies {
		for _, p := range r.Pictures {
			out = append(out, p.Chart(screen))
		}
	}
	return out
}

// nextChart is the chart that stands for a picture's file; empty for other files.
func (c *Chat) nextChart(f *store.File) string {
	if f == nil || f.Kind != store.Photo || len(c.charts) == 0 {
		return ""
	}
	chart := c.charts[0]
	c.charts = c.charts[1:]
	return chart
}

// folderFor is where a file is saved; empty: it is not, for its chart is shown.
func (c *Chat) folderFor(f *store.File) string {
	if f.Kind == store.Photo {
		return c.PNG
	}
	return c.Files
}

// Save writes a file into the folder and gives its path. Nothing that is there is
// written over: another file of the name gets a number.
func Save(folder, name string, b []byte) (string, error) { return save(folder, name, b) }
