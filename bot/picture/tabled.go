package picture

import (
	"image"
	"image/color"
	"sort"
)

// tabled gives the image with a table of 256 colours. What is drawn has a
// handful of colours; the others are the soft edges of letters and lines, of
// which the rarest take the nearest that is left: no eye sees it, and the file is
// a third.
func tabled(img *image.RGBA) *image.Paletted {
	count := map[uint32]int{}
	var last uint32
	run := 0
	for i := 0; i < len(img.Pix); i += 4 {
		c := key(img.Pix[i:])
		if run > 0 && c == last {
			run++
			continue
		}
		count[last] += run
		last, run = c, 1
	}
	count[last] += run
	delete(count, 0) // no pixel is of no colour at all

	colours := make([]uint32, 0, len(count))
	for c := range count {
		colours = append(colours, c)
	}
	sort.Slice(colours, func(i, j int) bool {
		a, b := colours[i], colours[j]
		if count[a] != count[b] {
			return count[a] > count[b]
		}
		return a < b
	})
	const room = 256
	kept := colours[:min(room, len(colours))]
	table := make(color.Palette, len(kept))
	at := make(map[uint32]uint8, len(colours))
	for i, c := range kept {
		table[i] = color.RGBA{uint8(c >> 24), uint8(c >> 16), uint8(c >> 8), 255}
		at[c] = uint8(i)
	}
	for _, c := range colours[len(kept):] {
		at[c] = nearest(kept, c)
	}
	out := image.NewPaletted(img.Bounds(), table)
	last, have := 0, uint8(0)
	for i, o := 0, 0; i < len(img.Pix); i, o = i+4, o+1 {
		if c := key(img.Pix[i:]); c != last || o == 0 {
			last, have = c, at[c]
		}
		out.Pix[o] = have
	}
	return out
}

func key(p []uint8) uint32 {
	return uint32(p[0])<<24 | uint32(p[1])<<16 | uint32(p[2])<<8 | uint32(p[3])
}

func nearest(among []uint32, c uint32) uint8 {
	best, least := 0, 1<<30
	for i, k := range among {
		d := apart(k>>24, c>>24) + apart(k>>16, c>>16) + apart(k>>8, c>>8)
		if d < least {
			best, least = i, d
		}
	}
	return uint8(best)
}

func apart(a, b uint32) int {
	d := int(a&255) - int(b&255)
	return d * d
}
