package picture

import (
	"fmt"
	"math"
	"strings"

	"troughbell/bot/wording"
)

// sheet is what a picture is laid out on, in pixels from the upper left.
type sheet struct {
	v     wording.Voice
	style Style
	pal   palette
	fonts *fonts
	err   error // of loading the fonts; render gives it
	high  float64
	marks []mark
}

func newSheet(v wording.Voice, style Style) *sheet {
	f, err := loadFonts()
	return &sheet{v: v, style: style, pal: style.palette(), fonts: f, err: err}
}

// shape is what a mark is.
type shape string

const (
	shapeLine  shape = "line"
	shapeDash  shape = "dash"
	shapeArea  shape = "area"
	shapeDot   shape = "dot"     // filled circle
	shapeRing  shape = "ring"    // open circle
	shapeGem   shape = "diamond" // filled
	shapeCross shape = "cross"
	shapeText  shape = "text"
)

// mark is one thing drawn.
type mark struct {
	shape shape
	name  string // of what it shows, for who reads the marks
	ink   ink
	tint  float64 // share of the ink, of an area
	size  float64 // width of a line, radius of a dot, height of a text
	bold  bool
	words string
	at    []point // of a text the left end of its base line
}

type point struct{ x, y float64 }

// side is where a text stands to its point.
type side int

const (
	rightOf side = iota // begins there
	leftOf              // ends there
	centred
)

func (s *sheet) width(words string, size float64, bold bool) float64 {
	if s.fonts == nil {
		return 0
	}
	return s.fonts.width(words, size, bold)
}

// text puts words with their base line at y, and gives the span they take.
func (s *sheet) text(x, y, size float64, i ink, bold bool, to side, words string) (from, until float64) {
	if s.fonts == nil || words == "" {
		return x, x
	}
	words = s.fonts.drawable(words, bold)
	w := s.width(words, size, bold)
	switch to {
	case leftOf:
		x -= w
	case centred:
		x -= w / 2
	}
	s.marks = append(s.marks, mark{shape: shapeText, ink: i, size: size, bold: bold, words: words, at: []point{{x, y}}})
	return x, x + w
}

// cut shortens words until they fit.
func (s *sheet) cut(words string, size float64, bold bool, room float64) string {
	if s.width(words, size, bold) <= room {
		return words
	}
	runes := []rune(words)
	for n := len(runes) - 1; n > 0; n-- {
		short := strings.TrimRight(string(runes[:n]), " ,.;:") + "…"
		if s.width(short, size, bold) <= room {
			return short
		}
	}
	return "…"
}

// lines breaks words into lines that fit.
func (s *sheet) lines(words string, size float64, bold bool, room float64) []string {
	var out []string
	line := ""
	for _, w := range strings.Fields(words) {
		longer := w
		if line != "" {
			longer = line + " " + w
		}
		if line != "" && s.width(longer, size, bold) > room {
			out, longer = append(out, line), w
		}
		line = s.cut(longer, size, bold, room)
	}
	if line != "" {
		out = append(out, line)
	}
	return out
}

func (s *sheet) line(name string, i ink, width float64, at ...point) {
	s.marks = append(s.marks, mark{shape: shapeLine, name: name, ink: i, size: width, at: at})
}

func (s *sheet) dash(name string, i ink, width float64, at ...point) {
	s.marks = append(s.marks, mark{shape: shapeDash, name: name, ink: i, size: width, at: at})
}

func (s *sheet) area(name string, i ink, tint float64, at ...point) {
	s.marks = append(s.marks, mark{shape: shapeArea, name: name, ink: i, tint: tint, at: at})
}

func (s *sheet) box(name string, i ink, tint, x0, y0, x1, y1 float64) {
	s.area(name, i, tint, point{x0, y0}, point{x1, y0}, point{x1, y1}, point{x0, y1})
}

func (s *sheet) dot(name string, sh shape, i ink, radius float64, at point) {
	s.marks = append(s.marks, mark{shape: sh, name: name, ink: i, size: radius, at: []point{at}})
}

// Sizes of texts.
const (
	titleText = 44.0
	noteText  = 32.0
	labelText = smallestText
)

// edge is the free space around everything.
const edge = 44.0

// head puts the title and the lines below it, and gives where the rest begins.
func (s *sheet) head(title string, notes ...string) (y float64) {
	y = edge
	for _, l := range s.lines(title, titleText, true, Width-2*edge) {
		y += titleText
		s.text(edge, y, titleText, text, true, rightOf, l)
		y += 8
	}
	for _, n := range notes {
		for _, l := range s.lines(n, noteText, false, Width-2*edge) {
			y += noteText + 6
			s.text(edge, y, noteText, faint, false, rightOf, l)
		}
	}
	return y + 26
}

// String writes the marks down.
func (s *sheet) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "sheet %d x %.0f\n", Width, s.high)
	for _, m := range s.marks {
		fmt.Fprintf(&b, "%s %s %.0f", m.shape, inkNames[m.ink], m.size)
		if m.tint != 0 {
			fmt.Fprintf(&b, " %.2f", m.tint)
		}
		if m.name != "" {
			fmt.Fprintf(&b, " %q", m.name)
		}
		if m.words != "" {
			fmt.Fprintf(&b, " %q", m.words)
		}
		for _, p := range m.at {
			fmt.Fprintf(&b, " %.0f,%.0f", math.Round(p.x), math.Round(p.y))
		}
		b.WriteByte('\n')
	}
	return b.String()
}

var inkNames = [inks]string{"paper", "text", "faint", "hair", "sky", "orange", "green", "purple", "blue", "vermilion", "yellow"}
