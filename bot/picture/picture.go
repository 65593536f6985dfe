package picture

import (
	"bytes"
	"fmt"

	"troughbell/bot/wording"
)

// Drawing is the figures of one picture.
type Drawing interface {
	// Kind names the picture, in letters that may stand in the name of a file:
	// "growth", "feed", "water", "heat", "calendar" or "cost".
	Kind() string
	// layout puts the marks on a sheet and sets its height.
	layout(*sheet)
	// blocks writes the chart for a terminal.
	blocks(*page)
}

// Style is how a picture is to look.
type Style struct {
	Dark bool // light on dark
}

// Width of every picture in pixels: a phone's.
const Width = 1080

// smallestText is the size of the smallest text in pixels: at the width of a
// phone, which shows the picture at a third, as large as the text around it.
const smallestText = 28

// PNG draws the figures in the person's words and units.
func PNG(d Drawing, v wording.Voice, style Style) ([]byte, error) {
	s := newSheet(v, style)
	d.layout(s)
	var out bytes.Buffer
	if err := s.render(&out); err != nil {
		return nil, fmt.Errorf("draw the picture of %s: %w", d.Kind(), err)
	}
	return out.Bytes(), nil
}

// Marks writes down what PNG would draw: a line for each mark, with its place in
// pixels from the upper left.
func Marks(d Drawing, v wording.Voice, style Style) string {
	s := newSheet(v, style)
	d.layout(s)
	return s.String()
}
