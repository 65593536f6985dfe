package picture

import (
	"math"

	"troughbell/bot/wording"
	"troughbell/model"
)

// Heat is the heat of days: those of which a high is known.
type Heat struct {
	Days  []HotDay // in order
	Today model.Day
}

// HotDay is one day.
type HotDay struct {
	On       model.Day
	HighC    float64
	THI      float64
	Class    model.HeatClass
	Forecast bool
}

// Kind is "heat".
func (Heat) Kind() string { return "heat" }

func (h Heat) layout(s *sheet) {
	y := s.head(s.v.Caption("heat", wording.Args{}))
	from, to := float64(h.Today)-6, float64(h.Today)+2
	if n := len(h.Days); n > 0 {
		from, to = min(from, float64(h.Days[0].On)), max(to, float64(h.Days[n-1].On)+1)
	}
	s.high = h.part(s, y, from, to) + edge
}

// heatInks colour the classes; the grounds of a class have the same.
var heatInks = map[model.HeatClass]ink{
	model.HeatNormal: green, model.HeatWatch: sky, model.HeatAlert: yellow,
	model.HeatDanger: orange, model.HeatEmergency: vermilion,
}

// part draws the index day by day over the grounds of the classes, with each
// day's high, and gives where it ends.
func (h Heat) part(s *sheet, y, from, to float64) float64 {
	_, unit := s.v.Scaled(model.Quantity{Unit: model.Celsius})
	_, until := s.text(edge, y+30, labelText+4, text, true, rightOf, s.v.Label("thi", wording.Args{}))
	s.text(until+14, y+30, labelText, faint, false, rightOf, s.v.Label("highs", wording.Args{Names: []string{unit}}))
	low, high := 70.0, model.EmergencyTHI+5
	for _, d := range h.Days {
		low, high = min(low, math.Floor(d.THI/5)*5), max(high, math.Ceil(d.THI)+5)
	}
	f := frame{left: 130, top: y + 52, right: Width - edge, bottom: y + 52 + 300, from: from, to: to, low: low, high: high}
	bounds := []struct {
		class    model.HeatClass
		from, to float64
	}{
		{model.HeatAlert, model.AlertTHI, model.DangerTHI},
		{model.HeatDanger, model.DangerTHI, model.EmergencyTHI},
		{model.HeatEmergency, model.EmergencyTHI, high},
	}
	for _, b := range bounds {
		s.box("class "+string(b.class), heatInks[b.class], 0.22, f.left, f.y(b.to), f.right, f.y(b.from))
		s.text(f.left-12, f.y(b.from)+10, labelText, faint, false, leftOf, wording.Mark(b.from))
	}
	s.text(f.left-12, f.bottom+4, labelText, faint, false, leftOf, wording.Mark(low))
	var ticks []tick
	at := make([]point, len(h.Days))
	for i, d := range h.Days {
		at[i] = f.at(float64(d.On)+0.5, d.THI)
		ticks = append(ticks, tick{float64(d.On) + 0.5, s.v.ShortDay(d.On)})
	}
	s.days(f, ticks)
	for i := 1; i < len(at); i++ {
		if h.Days[i].On == h.Days[i-1].On+1 {
			s.line("index", faint, 3, at[i-1], at[i])
		}
	}
	free := 0.0
	for i, d := range h.Days {
		sh := shapeDot
		if d.Forecast || d.On > h.Today {
			sh = shapeRing
		}
		s.dot(d.On.String()+" "+string(d.Class), sh, text, 10, at[i])
		words, _ := s.v.Scaled(model.Quantity{Value: d.HighC, Unit: model.Celsius})
		said := wording.Mark(math.Round(words))
		w := s.width(said, labelText, true)
		if at[i].x-w/2 < free {
			continue
		}
		s.text(at[i].x, at[i].y-20, labelText, text, true, centred, said)
		free = at[i].x + w/2 + 6
	}
	h.classes(s, f)
	return f.bottom + 44
}

// classes names the grounds where no day's mark lies on the name.
func (h Heat) classes(s *sheet, f frame) {
	top := f.high
	for _, c := range []struct {
		class model.HeatClass
		from  float64
	}{{model.HeatEmergency, model.EmergencyTHI}, {model.HeatDanger, model.DangerTHI}, {model.HeatAlert, model.AlertTHI}} {
		words := s.v.Label("class_"+string(c.class), wording.Args{})
		y := (f.y(c.from)+f.y(min(top, f.high)))/2 + 10
		top = c.from
		if x, ok := h.roomFor(s, f, words, y); ok {
			s.text(x, y, labelText, faint, false, rightOf, words)
		}
	}
}

// roomFor finds where in a row words would cover no mark and no other words.
func (h Heat) roomFor(s *sheet, f frame, words string, y float64) (x float64, ok bool) {
	w := s.width(words, labelText, false)
	free := func(x float64) bool {
		for _, m := range s.marks {
			from, until, top, bottom := s.span(m)
			if m.shape == shapeArea || m.shape == shapeLine || m.shape == shapeDash {
				continue
			}
			if from < x+w+8 && until > x-8 && top < y+4 && bottom > y-labelText {
				return false
			}
		}
		return true
	}
	for x := f.right - w - 10; x > f.left+6; x -= 12 {
		if free(x) {
			return x, true
		}
	}
	return 0, false
}

// span is the box that a mark covers.
func (s *sheet) span(m mark) (left, right, top, bottom float64) {
	if m.shape == shapeText {
		at := m.at[0]
		return at.x, at.x + s.width(m.words, m.size, m.bold), at.y - 0.74*m.size, at.y + 0.22*m.size
	}
	left, right, top, bottom = math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, p := range m.at {
		left, right, top, bottom = min(left, p.x), max(right, p.x), min(top, p.y), max(bottom, p.y)
	}
	switch m.shape {
	case shapeDot, shapeRing, shapeGem, shapeCross:
		return left - m.size, right + m.size, top - m.size, bottom + m.size
	}
	return left, right, top, bottom
}
