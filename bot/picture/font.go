package picture

import (
	"fmt"
	"strings"
	"sync"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/text/unicode/norm"
	"gonum.org/v1/plot/font"
)

// fonts are Liberation Sans (SIL Open Font License 1.1): Latin with all its
// accents, Greek, Cyrillic.
type fonts struct {
	cache  *font.Cache
	parsed [2]*opentype.Font // regular, bold
}

var loadFonts = sync.OnceValues(func() (*fonts, error) {
	f := &fonts{}
	var all font.Collection
	for i, ttf := range [][]byte{liberationsansregular.TTF, liberationsansbold.TTF} {
		face, err := opentype.Parse(ttf)
		if err != nil {
			return nil, fmt.Errorf("read the font: %w", err)
		}
		f.parsed[i] = face
		all = append(all, font.Face{Font: faceOf(i == 1), Face: face})
	}
	f.cache = font.NewCache(all)
	return f, nil
})

func faceOf(bold bool) font.Font {
	f := font.Font{Typeface: "Liberation", Variant: "Sans"}
	if bold {
		f.Weight = xfont.WeightBold
	}
	return f
}

// face is the font at a size in pixels.
func (f *fonts) face(size float64, bold bool) font.Face {
	return f.cache.Lookup(faceOf(bold), font.Length(size))
}

// width of a text in pixels.
func (f *fonts) width(s string, size float64, bold bool) float64 {
	face := f.face(size, bold)
	return float64(face.Width(s))
}

// missing stands for a character that the font does not have.
const missing = '?'

// drawable gives the text in characters that the font has: an accent and its
// letter as one, an unknown character as a question mark.
func (f *fonts) drawable(s string, bold bool) string {
	face := f.parsed[0]
	if bold {
		face = f.parsed[1]
	}
	var buf sfnt.Buffer
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return ' '
		case r == '\uFE0F' || r == '\u200D': // shape the character before, or join it to the next
			return -1
		}
		if i, err := face.GlyphIndex(&buf, r); err != nil || i == 0 {
			return missing
		}
		return r
	}, norm.NFC.String(s))
}
