package picture

import (
	"image"
	"image/png"
	"io"
	"math"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

// render writes the sheet as PNG. A point of the canvas is a pixel.
func (s *sheet) render(out io.Writer) error {
	if s.err != nil {
		return s.err
	}
	high := math.Ceil(s.high)
	c := vgimg.NewWith(vgimg.UseWH(Width, vg.Length(high)), vgimg.UseDPI(72), vgimg.UseBackgroundColor(s.pal.colours[paper]))
	up := func(p point) vg.Point { return vg.Point{X: vg.Length(p.x), Y: vg.Length(high - p.y)} }
	for _, m := range s.marks {
		c.SetColor(s.pal.colours[m.ink])
		switch m.shape {
		case shapeLine, shapeDash:
			c.SetLineWidth(vg.Length(m.size))
			c.SetLineDash(nil, 0)
			if m.shape == shapeDash {
				c.SetLineDash([]vg.Length{12, 9}, 0)
			}
			c.Stroke(path(m.at, up))
		case shapeArea:
			c.SetColor(s.pal.tint(m.ink, m.tint))
			p := path(m.at, up)
			p.Close()
			c.Fill(p)
		case shapeDot, shapeRing, shapeGem, shapeCross:
			s.point(c, m, up)
		case shapeText:
			c.FillString(s.fonts.face(m.size, m.bold), up(m.at[0]), m.words)
		}
	}
	enc := png.Encoder{CompressionLevel: png.DefaultCompression}
	return enc.Encode(out, fewColours(c.Image()))
}

func path(at []point, up func(point) vg.Point) vg.Path {
	var p vg.Path
	for i, q := range at {
		if i == 0 {
			p.Move(up(q))
		} else {
			p.Line(up(q))
		}
	}
	return p
}

// point draws a reading, with a rim of paper that parts it from what it lies on.
func (s *sheet) point(c *vgimg.Canvas, m mark, up func(point) vg.Point) {
	at := m.at[0]
	around := func(r float64, corners int) vg.Path {
		ring := make([]point, corners)
		for i := range ring {
			a := 2 * math.Pi * float64(i) / float64(corners)
			ring[i] = point{at.x + r*math.Sin(a), at.y - r*math.Cos(a)}
		}
		p := path(ring, up)
		p.Close()
		return p
	}
	const round = 24
	corners := round
	if m.shape == shapeGem {
		corners = 4
	}
	rim := m.size + 2
	if corners == 4 {
		rim = m.size + 3
	}
	if m.shape == shapeCross {
		c.SetLineDash(nil, 0)
		c.SetLineWidth(4)
		r := m.size * 0.8
		c.Stroke(path([]point{{at.x - r, at.y - r}, {at.x + r, at.y + r}}, up))
		c.Stroke(path([]point{{at.x - r, at.y + r}, {at.x + r, at.y - r}}, up))
		return
	}
	c.SetColor(s.pal.colours[paper])
	c.Fill(around(rim, corners))
	c.SetColor(s.pal.colours[m.ink])
	c.Fill(around(m.size, corners))
	if m.shape == shapeRing {
		c.SetColor(s.pal.colours[paper])
		c.Fill(around(m.size-3.5, corners))
	}
}

// fewColours gives the image with a table of its colours where they are few
// enough for one: a smaller file, sooner written.
func fewColours(img image.Image) image.Image {
	rgba, ok := img.(*image.RGBA)
	if !ok {
		return img
	}
	return tabled(rgba)
}
