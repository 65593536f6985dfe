package picture

import "image/color"

// ink is what a mark is drawn in; a palette says which colour that is.
type ink int

const (
	paper ink = iota
	text
	faint // of less weight: axes, notes
	hair  // of least weight: grid lines
	sky
	orange
	green
	purple
	blue
	vermilion
	yellow
	inks
)

// Series are told apart by these, in this order: neighbours differ in lightness
// as well as in hue.
var (
	seriesLight = []ink{blue, vermilion, green, purple, orange, sky}
	seriesDark  = []ink{sky, orange, green, purple, yellow, vermilion}
)

func rgb(hex uint32) color.RGBA {
	return color.RGBA{uint8(hex >> 16), uint8(hex >> 8), uint8(hex), 255}
}

// The palette of Okabe and Ito, "Color Universal Design: how to make figures and
// presentations that are friendly to colorblind people" (2002, revised 2008),
// without its black. People with any of the common kinds of colour vision tell
// these apart. The values were read as the R package colorblindr lists them.
var okabeIto = map[ink]uint32{
	orange: 0xE69F00, sky: 0x56B4E9, green: 0x009E73, yellow: 0xF0E442,
	blue: 0x0072B2, vermilion: 0xD55E00, purple: 0xCC79A7,
}

type palette struct {
	colours [inks]color.RGBA
	series  []ink
}

func (s Style) palette() palette {
	p := palette{series: seriesLight}
	p.colours[paper], p.colours[text], p.colours[faint], p.colours[hair] = rgb(0xFFFFFF), rgb(0x1A1A1A), rgb(0x5A5A5A), rgb(0xDADADA)
	if s.Dark {
		p.series = seriesDark
		p.colours[paper], p.colours[text], p.colours[faint], p.colours[hair] = rgb(0x17191C), rgb(0xF2F2F2), rgb(0xB4B4B4), rgb(0x3A3D42)
	}
	for i, hex := range okabeIto {
		p.colours[i] = rgb(hex)
	}
	return p
}

// tint is an ink's colour with so much of it, 0 to 1, upon the paper.
func (p palette) tint(i ink, share float64) color.RGBA {
	on, under := p.colours[i], p.colours[paper]
	mix := func(a, b uint8) uint8 { return uint8(float64(a)*share + float64(b)*(1-share) + 0.5) }
	return color.RGBA{mix(on.R, under.R), mix(on.G, under.G), mix(on.B, under.B), 255}
}
