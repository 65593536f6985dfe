package picture

import (
	"math"

	"troughbell/bot/wording"
	"troughbell/model"
)

// Growth is what each pig weighed, and will weigh until it goes.
type Growth struct {
	Pigs []PigGrowth
	// Mean is of all pigs together; it is drawn where there are too many for a
	// part of the picture each.
	Mean     PigGrowth
	TargetKg float64
	Today    model.Day
	From, To model.Day
	Booked   []model.Day // the days of the butcher
	Over     bool        // of pigs that are gone: nothing in it is to come
}

// PigGrowth is a pig, or pigs without names together.
type PigGrowth struct {
	Name  string // model.All: the pigs that have no names
	On    []model.Day
	Kg    []model.Interval
	Seen  []Weighed
	NowKg model.Interval // zero where it has gone
}

// Weighed is a weighing.
type Weighed struct {
	On model.Day
	Kg float64
	By string // model.ByScale, ByTape or ByEye
}

// Kind is "growth".
func (Growth) Kind() string { return "growth" }

// mostApart is how many pigs have a part of the picture each.
const mostApart = 8

func (g Growth) layout(s *sheet) {
	switch {
	case len(g.Pigs) == 1:
		g.one(s)
	case len(g.Pigs) <= mostApart:
		g.apart(s)
	default:
		g.together(s)
	}
}

// scale gives the person's weights that the picture spans.
func (g Growth) scale(s *sheet, marks int) (low, high, step float64) {
	low, high = math.Inf(1), s.kg(g.TargetKg)
	for _, p := range g.Pigs {
		for _, w := range p.Kg {
			low, high = min(low, s.kg(w.Low)), max(high, s.kg(w.High))
		}
		for _, w := range p.Seen {
			low, high = min(low, s.kg(w.Kg)), max(high, s.kg(w.Kg))
		}
	}
	if math.IsInf(low, 1) {
		low = 0
	}
	if low < high/3 { // from nothing on, where that costs little room
		low = 0
	}
	step = steps(low, high, marks)
	return math.Floor(low/step) * step, high + step/4, step
}

func (s *sheet) kg(kg float64) float64 {
	x, _ := s.v.Scaled(wording.Kg(kg))
	return x
}

func (g Growth) title(s *sheet) (title, note string) {
	_, unit := s.v.Scaled(wording.Kg(1))
	args := wording.Args{Q: []model.Quantity{wording.Kg(g.TargetKg)}, Days: []model.Day{g.To}, Names: []string{unit}}
	code := "growth"
	if len(g.Pigs) == 1 && g.Pigs[0].Name != model.All {
		code, args.Names = "growth_one", append([]string{g.Pigs[0].Name}, unit)
	}
	title, note = s.v.Caption(code, args), "growth_until"
	for i, d := range g.Booked {
		if i == 0 {
			note, args.Names = "growth_booked", nil
		}
		args.Names = append(args.Names, s.v.Day(d))
	}
	if n := len(g.Booked); n > 0 && g.To > g.Booked[n-1] {
		note = "growth_booked_some"
	}
	if g.Over {
		note, args.Names = "growth_over", nil
	}
	return title, s.v.Caption(note, args)
}

// one draws a single pig.
func (g Growth) one(s *sheet) {
	title, note := g.title(s)
	y := s.head(title, note)
	low, high, step := g.scale(s, 7)
	f := frame{left: 130, top: y + 34, right: Width - 120, bottom: y + 34 + 720, from: float64(g.From), to: float64(g.To), low: low, high: high}
	s.values(f, step, true)
	s.days(f, s.months(f))
	g.pig(s, f, g.Pigs[0], s.pal.series[0], 5, func() { g.target(s, f, true) })
	g.now(s, f, true)
	g.end(s, f, g.Pigs[0], s.pal.series[0], true)
	s.high = g.legend(s, f.bottom+104) + edge
}

// apart draws each pig in a part of its own, two a row, on one scale.
func (g Growth) apart(s *sheet) {
	title, note := g.title(s)
	y := s.head(title, note)
	low, high, step := g.scale(s, 4)
	const scaleRoom, gap, tall, name = 92.0, 34.0, 250.0, 46.0
	wide := (Width - edge - scaleRoom - gap - edge/2) / 2
	for i, p := range g.Pigs {
		column, last := float64(i%2), i+2 >= len(g.Pigs)
		left := edge + scaleRoom - 12 + column*(wide+gap)
		f := frame{
			left: left, top: y + name, right: left + wide, bottom: y + name + tall,
			from: float64(g.From), to: float64(g.To), low: low, high: high,
		}
		g.name(s, f, p)
		s.values(f, step, column == 0)
		if last {
			s.days(f, s.months(f))
		}
		g.pig(s, f, p, s.pal.series[0], 4, func() { g.target(s, f, i == 0) })
		g.now(s, f, false)
		if i == 0 && !g.Over {
			s.text(f.x(float64(g.Today))+10, f.bottom-12, labelText, faint, false, rightOf, s.v.Label("now", wording.Args{}))
		}
		g.end(s, f, p, s.pal.series[0], false)
		if column == 1 || i == len(g.Pigs)-1 {
			y = f.bottom + 26
			if last {
				y += 30
			} else if i+3 >= len(g.Pigs) && len(g.Pigs)%2 == 1 { // the days below the lone part's neighbour
				y += 18
			}
		}
	}
	s.high = g.legend(s, y+36) + edge
}

// name stands above a pig's part, with what it weighs.
func (g Growth) name(s *sheet, f frame, p PigGrowth) {
	weight := ""
	if p.NowKg.Mid > 0 {
		weight = s.v.Quantity(wording.Kg(p.NowKg.Mid), "")
	}
	w := s.width(weight, labelText+2, false)
	name := s.cut(s.pigName(p.Name), labelText+2, true, f.right-f.left-w-20)
	_, until := s.text(f.left, f.top-14, labelText+2, text, true, rightOf, name)
	s.text(until+14, f.top-14, labelText+2, faint, false, rightOf, weight)
}

func (s *sheet) pigName(name string) string {
	if name == model.All {
		return s.v.Label("unnamed", wording.Args{})
	}
	return name
}

func (g Growth) target(s *sheet, f frame, words bool) {
	y := f.y(s.kg(g.TargetKg))
	s.dash("target", vermilion, 3, point{f.left, y}, point{f.right, y})
	if words {
		label := s.v.Label("target", wording.Args{Q: []model.Quantity{wording.Kg(g.TargetKg)}})
		x := f.left + 8
		if now := f.x(float64(g.Today)); !g.Over && now < x+s.width(label, labelText, false)+8 { // it would stand across it
			x = now + 10
		}
		s.text(x, y+32, labelText, vermilion, false, rightOf, label)
	}
}

// split parts a course at a day into what was and what is to come; both have
// the day itself.
func (p PigGrowth) split(s *sheet, today model.Day) (was, comes courseOf) {
	for i, on := range p.On {
		d, w := float64(on), p.Kg[i]
		if on <= today {
			was.add(d, s.kg(w.Low), s.kg(w.Mid), s.kg(w.High))
		}
		if on >= today {
			comes.add(d, s.kg(w.Low), s.kg(w.Mid), s.kg(w.High))
		}
	}
	return was, comes
}

// courseOf is a quantity from day to day, in the person's units.
type courseOf struct{ days, low, mid, high []float64 }

func (c *courseOf) add(day, low, mid, high float64) {
	c.days, c.low, c.mid, c.high = append(c.days, day), append(c.low, low), append(c.mid, mid), append(c.high, high)
}

// pig draws a pig's course: the past as a line, what comes as dashes, both with
// the band that holds the weight in 80 of 100 cases, and what was read.
// between draws what lies over the bands and under the line.
func (g Growth) pig(s *sheet, f frame, p PigGrowth, i ink, width float64, between func()) {
	was, comes := p.split(s, g.Today)
	s.band(p.Name+" likely then", i, 0.16, f, was.days, was.low, was.high)
	s.band(p.Name+" likely", i, 0.28, f, comes.days, comes.low, comes.high)
	between()
	if len(was.days) > 1 {
		s.line(p.Name, i, width, f.course(was.days, was.mid)...)
	}
	if len(comes.days) > 1 {
		s.dash(p.Name+" ahead", i, width, f.course(comes.days, comes.mid)...)
	}
	for _, w := range p.Seen {
		s.dot(p.Name+" by "+w.By, readingShapes[w.By], text, 8, f.at(float64(w.On), s.kg(w.Kg)))
	}
}

var readingShapes = map[string]shape{model.ByScale: shapeDot, model.ByTape: shapeGem, model.ByEye: shapeRing}

// now marks today, in what is not all over.
func (g Growth) now(s *sheet, f frame, words bool) {
	if !g.Over {
		s.now(f, float64(g.Today), words)
	}
}

// end says what the pig will weigh on its last day: beside the frame, or within
// it below the line, where the course leaves room.
func (g Growth) end(s *sheet, f frame, p PigGrowth, i ink, beside bool) {
	n := len(p.On)
	if n == 0 || p.On[n-1] <= g.Today && !g.Over {
		return
	}
	at := f.at(float64(p.On[n-1]), s.kg(p.Kg[n-1].Mid))
	s.dot(p.Name+" at the end", shapeDot, i, 9, at)
	words := s.v.Quantity(wording.Kg(p.Kg[n-1].Mid), "bare")
	w := s.width(words, labelText, true)
	if beside && at.x > f.right-w {
		s.text(f.right+16, at.y+10, labelText, text, true, rightOf, words)
		return
	}
	s.text(min(at.x+2, f.right-4)-w, min(at.y+70, f.bottom-8), labelText, text, true, rightOf, words)
}

// legend says what the points and bands are.
func (g Growth) legend(s *sheet, y float64) float64 {
	var kinds []string
	for _, by := range []string{model.ByScale, model.ByTape, model.ByEye} {
		for _, p := range append(append([]PigGrowth(nil), g.Pigs...), g.Mean) {
			if has(p.Seen, by) {
				kinds = append(kinds, by)
				break
			}
		}
	}
	x := edge
	for _, by := range kinds {
		words := s.v.Label("by_"+by, wording.Args{})
		if x+40+s.width(words, labelText, false) > Width-edge {
			x, y = edge, y+42
		}
		s.dot("legend "+by, readingShapes[by], text, 9, point{x + 12, y - 10})
		_, until := s.text(x+34, y, labelText, faint, false, rightOf, words)
		x = until + 40
	}
	words := s.v.Label(g.bandWords(), wording.Args{})
	if x+70+s.width(words, labelText, false) > Width-edge {
		x, y = edge, y+42
	}
	s.box("legend band", s.pal.series[0], 0.28, x, y-24, x+44, y+2)
	s.text(x+56, y, labelText, faint, false, rightOf, words)
	return y
}

func (g Growth) bandWords() string {
	if len(g.Pigs) > mostApart {
		return "band_mean"
	}
	return "band"
}

func has(seen []Weighed, by string) bool {
	for _, w := range seen {
		if w.By == by {
			return true
		}
	}
	return false
}
