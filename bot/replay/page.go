package replay

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"troughbell/bot"
	"troughbell/bot/picture"
	"troughbell/bot/wording"
	"troughbell/model"
	"troughbell/store"
)

// Page writes what happens as a conversation to read.
type Page struct {
	// Screen is what the charts of pictures are drawn for.
	Screen picture.Screen

	w    *bufio.Writer
	day  model.Day
	last string
}

// NewPage writes to w.
func NewPage(w io.Writer) *Page {
	return &Page{Screen: picture.Screen{Columns: pageColumns}, w: bufio.NewWriter(w)}
}

// pageColumns is the width of a page that nobody told its width.
const pageColumns = 80

// speak writes what one side says: the first line behind the clock and the
// speaker's mark, the others below it.
func (p *Page) speak(h *model.Herd, at time.Time, mark, text string, buttons [][]string, files []bot.File) error {
	if d := model.DayOf(at); d != p.day {
		p.day, p.last = d, ""
		fmt.Fprintf(p.w, "\n%s\n", wording.Voice{Herd: h, Now: at}.LongDay(d))
	}
	clock := at.Format("15:04")
	if clock == p.last {
		clock = "     "
	} else {
		p.last = clock
	}
	if p.Screen.Plain && mark != said {
		text = wording.ASCII(text)
	}
	for i, l := range strings.Split(text, "\n") {
		if i == 0 {
			fmt.Fprintf(p.w, "  %s %s %s\n", clock, mark, l)
			continue
		}
		fmt.Fprintf(p.w, "          %s\n", l)
	}
	for _, f := range files {
		fmt.Fprintf(p.w, "          [%s, %d kB]\n", f.Name, (len(f.Bytes)+999)/1000)
	}
	if labels := Labels(buttons); labels != "" {
		if p.Screen.Plain {
			labels = wording.ASCII(labels)
		}
		fmt.Fprintf(p.w, "          %s\n", labels)
	}
	return nil
}

// Labels writes buttons as they can be typed.
func Labels(buttons [][]string) string {
	var out []string
	n := 0
	for _, row := range buttons {
		for _, l := range row {
			n++
			out = append(out, fmt.Sprintf("%d %s", n, l))
		}
	}
	if len(out) == 0 {
		return ""
	}
	return "( " + strings.Join(out, " | ") + " )"
}

// said marks what a person says, which stands as it was said.
const said = ">"

// Text implements Writer.
func (p *Page) Text(at time.Time, who, text string, h *model.Herd) error {
	if who != "" {
		text = who + ": " + text
	}
	return p.speak(h, at, said, text, nil, nil)
}

// Reply implements Writer.
func (p *Page) Reply(at time.Time, r bot.Reply, h *model.Herd) error {
	text, files := r.Text, r.Files
	for _, x := range r.Pictures {
		screen := p.Screen
		screen.Columns -= indent
		text += "\n" + strings.TrimRight(x.Chart(screen), "\n")
		files = slices.DeleteFunc(slices.Clone(files), func(f bot.File) bool { return f.Kind == store.Photo })
	}
	return p.speak(h, at, " ", text, r.Buttons, files)
}

// indent is how far what is said stands from the left.
const indent = 10

// Nudge implements Writer.
func (p *Page) Nudge(n bot.Push, h *model.Herd) error {
	return p.speak(h, n.At, "*", n.Text, n.Buttons, n.Files)
}

// Failed implements Writer.
func (p *Page) Failed(number int, err error) error {
	_, werr := fmt.Fprintf(p.w, "  line %d: %v\n", number, err)
	return werr
}

// Ready implements Writer.
func (p *Page) Ready(time.Time) error { return p.w.Flush() }
