package picture

import (
	"math"

	"troughbell/bot/wording"
	"troughbell/model"
)

// frame is the part of a sheet in which values stand over days.
type frame struct {
	left, top, right, bottom float64 // pixels
	from, to                 float64 // days, with their parts
	low, high                float64 // values, in the person's units
}

func (f frame) x(day float64) float64 {
	return f.left + (day-f.from)/(f.to-f.from)*(f.right-f.left)
}

func (f frame) y(value float64) float64 {
	return f.bottom - (value-f.low)/(f.high-f.low)*(f.bottom-f.top)
}

// at is the place of a value on a day, kept within the frame.
func (f frame) at(day, value float64) point {
	return point{min(max(f.x(day), f.left), f.right), min(max(f.y(value), f.top), f.bottom)}
}

// steps gives the round step of a scale that has about so many marks between low
// and high.
func steps(low, high float64, marks int) float64 {
	rough := (high - low) / float64(max(marks, 1))
	if !(rough > 0) || math.IsInf(rough, 1) {
		return 1
	}
	ten := math.Pow(10, math.Floor(math.Log10(rough)))
	for _, m := range []float64{1, 2, 2.5, 5, 10} {
		if m*ten >= rough*0.999 {
			return m * ten
		}
	}
	return 10 * ten
}

// rounded widens a range to round marks.
func rounded(low, high float64, marks int) (l, h, step float64) {
	if high <= low {
		high = low + 1
	}
	step = steps(low, high, marks)
	return math.Floor(low/step+1e-9) * step, math.Ceil(high/step-1e-9) * step, step
}

// values draws the lines and the numbers of the scale. The numbers stand left of
// the frame; where they do not, as beside another frame of the same scale, only
// the lines are drawn.
func (s *sheet) values(f frame, step float64, numbers bool) {
	for v := f.low; v <= f.high+step/1000; v += step {
		y := f.y(v)
		s.line("", hair, 2, point{f.left, y}, point{f.right, y})
		if numbers {
			s.text(f.left-12, y+10, labelText, faint, false, leftOf, wording.Mark(v))
		}
	}
}

// tick is a mark of the days.
type tick struct {
	day   float64
	words string
}

// months marks where each month begins.
func (s *sheet) months(f frame) []tick {
	var out []tick
	for d := model.Day(math.Ceil(f.from)); float64(d) <= f.to; d++ {
		if _, _, n := d.Date(); n == 1 {
			out = append(out, tick{float64(d), s.v.Month(d)})
		}
	}
	return out
}

// days draws the marks of the days below the frame; a mark whose words would run
// into those before it has none.
func (s *sheet) days(f frame, ticks []tick) {
	s.line("", faint, 2, point{f.left, f.bottom}, point{f.right, f.bottom})
	free := 0.0
	for _, t := range ticks {
		x := f.x(t.day)
		s.line("", faint, 2, point{x, f.bottom}, point{x, f.bottom + 8})
		w := s.width(t.words, labelText, false)
		from := min(max(x-w/2, edge/2), Width-edge/2-w)
		if from < free {
			continue
		}
		s.text(from, f.bottom+38, labelText, faint, false, rightOf, t.words)
		free = from + w + 18
	}
}

// band draws the span between two courses.
func (s *sheet) band(name string, i ink, tint float64, f frame, days, low, high []float64) {
	if len(days) < 2 {
		return
	}
	at := make([]point, 0, 2*len(days))
	for k, d := range days {
		at = append(at, f.at(d, high[k]))
	}
	for k := len(days) - 1; k >= 0; k-- {
		at = append(at, f.at(days[k], low[k]))
	}
	s.area(name, i, tint, at...)
}

// course gives the points of a line.
func (f frame) course(days, values []float64) []point {
	out := make([]point, len(days))
	for k, d := range days {
		out[k] = f.at(d, values[k])
	}
	return out
}

// now marks the moment at which the picture was made.
func (s *sheet) now(f frame, day float64, words bool) {
	x := f.x(day)
	s.line("now", faint, 3, point{x, f.top}, point{x, f.bottom})
	if words {
		w := s.width(s.v.Label("now", wording.Args{}), labelText, false)
		from := min(max(x-w/2, f.left), f.right-w)
		s.text(from, f.top-10, labelText, faint, false, rightOf, s.v.Label("now", wording.Args{}))
	}
}
