package picture

import (
	"slices"
	"time"

	"troughbell/bot/wording"
	"troughbell/model"
)

// Levels is what feeders or barrels held, and will hold until they are empty.
type Levels struct {
	Water    bool // barrels of water (litres); else feeders (kilograms)
	Vessels  []Vessel
	Now      time.Time
	From, To time.Time
	Rounds   []model.Day // chore days in the span
	Heat     *Heat       // of the same days, where it is known
}

// Vessel is one feeder or barrel.
type Vessel struct {
	model.LevelCourse
	Poured []Poured
	// SafeTo and Empty are when it runs dry by the cautious edge and likely; zero
	// where that was not computed.
	SafeTo, Empty time.Time
}

// Poured is a fill: an amount, or zero where it was not said.
type Poured struct {
	At     time.Time
	Amount float64
}

// Kind is "feed" or "water".
func (l Levels) Kind() string {
	if l.Water {
		return "water"
	}
	return "feed"
}

func (l Levels) quantity(x float64) model.Quantity {
	if l.Water {
		return wording.L(x)
	}
	return wording.Kg(x)
}

// dayOf counts days with their parts by the wall clock.
func dayOf(t time.Time) float64 {
	return float64(model.DayOf(t)) + (float64(model.MinuteOf(t))+float64(t.Second())/60)/(24*60)
}

func (l Levels) layout(s *sheet) {
	_, unit := s.v.Scaled(l.quantity(1))
	y := s.head(s.v.Caption(""+l.Kind(), wording.Args{Names: []string{unit}}), s.v.Caption("levels_note", wording.Args{}))
	tall := l.tall()
	last := len(l.Vessels) - 1
	for i, x := range l.Vessels {
		y = l.vessel(s, x, y, tall, i == 0, i == last && l.Heat == nil)
	}
	if l.Heat != nil {
		y = l.Heat.part(s, y+8, float64(model.DayOf(l.From)), dayOf(l.To))
	}
	s.high = l.legend(s, y+48) + edge
}

// tall is how tall the part of each vessel is: fewer get more room.
func (l Levels) tall() float64 {
	switch n := len(l.Vessels); {
	case n == 1:
		return 480
	case n == 2:
		return 330
	case n <= 4:
		return 220
	}
	return 170
}

// capacity is the top of the scale, in the person's units.
func (l Levels) capacity(s *sheet, x Vessel) float64 {
	most, _ := s.v.Scaled(l.quantity(x.Capacity))
	for _, level := range x.Level {
		v, _ := s.v.Scaled(l.quantity(level.Mid))
		most = max(most, v)
	}
	return most
}

// vessel draws one feeder or barrel below y and gives where the next begins.
func (l Levels) vessel(s *sheet, x Vessel, y, tall float64, first, last bool) float64 {
	heading := 100.0
	if !l.Water && slices.ContainsFunc(x.Poured, func(p Poured) bool { return p.Amount > 0 && !p.At.Before(l.From) }) {
		heading += 32 // the amounts poured stand there
	}
	s.text(edge, y+30, labelText+4, text, true, rightOf, s.cut(x.Name, labelText+4, true, Width/2))
	s.text(edge, y+68, labelText, faint, false, rightOf, s.cut(l.lasts(s.v.Caption, x), labelText, false, Width-2*edge))
	marks := 4
	if tall < 200 {
		marks = 2
	} else if tall < 300 {
		marks = 3
	}
	low, high, step := rounded(0, l.capacity(s, x), marks)
	f := frame{
		left: 130, top: y + heading, right: Width - edge, bottom: y + heading + tall,
		from: dayOf(l.From), to: dayOf(l.To), low: low, high: high,
	}
	for _, d := range l.Rounds {
		if day := float64(d); day > f.from && day+1 < f.to {
			s.box("round", hair, 0.45, f.x(day), f.top, f.x(day+1), f.bottom)
		}
	}
	s.values(f, step, true)
	ticks := []tick{}
	for _, d := range l.Rounds {
		if noon := float64(d) + 0.5; noon > f.from && noon < f.to {
			ticks = append(ticks, tick{noon, s.v.ShortDay(d)})
		}
	}
	if last {
		s.days(f, ticks)
	} else {
		s.line("", faint, 2, point{f.left, f.bottom}, point{f.right, f.bottom})
	}
	l.saw(s, f, x)
	s.now(f, dayOf(l.Now), false)
	if first { // above what is in it, or below where it is full
		y := f.top + 26
		if level, ok := lastKnown(x.LevelCourse, dayOf(l.Now)); ok {
			if v, _ := s.v.Scaled(l.quantity(level)); v > high/2 {
				y = f.bottom - 12
			}
		}
		s.text(min(f.x(dayOf(l.Now))+8, f.right-60), y, labelText, faint, false, rightOf, s.v.Label("now", wording.Args{}))
	}
	bottom := f.bottom + 22
	if last {
		bottom += 24
	}
	return bottom
}

// lasts says until when a vessel holds.
func (l Levels) lasts(say func(code string, a wording.Args) string, x Vessel) string {
	n := len(x.Level)
	level := 0.0
	for i := range n {
		if !x.At[i].After(l.Now) {
			level = x.Level[i].Mid
		}
	}
	args := wording.Args{Q: []model.Quantity{l.quantity(level)}}
	code := "level"
	switch {
	case x.Empty.IsZero():
	case !x.Empty.After(l.Now):
		code = "level_out"
	case x.SafeTo.Sub(l.Now) < time.Hour:
		code = "level_may"
		args.Moments = []time.Time{x.SafeTo, x.Empty}
	default:
		code = "level_lasts"
		args.Moments = []time.Time{x.SafeTo, x.Empty}
	}
	return say(code, args)
}

// saw draws the course: what is known so far as a line over a filled ground, what
// is to come as dashes in its band.
func (l Levels) saw(s *sheet, f frame, x Vessel) {
	i := s.pal.series[0]
	var was, comes courseOf
	for k, t := range x.At {
		v := x.Level[k]
		d := dayOf(t)
		low, _ := s.v.Scaled(l.quantity(v.Low))
		mid, _ := s.v.Scaled(l.quantity(v.Mid))
		high, _ := s.v.Scaled(l.quantity(v.High))
		if !t.After(l.Now) {
			was.add(d, 0, mid, mid)
		}
		if !t.Before(l.Now) {
			comes.add(d, low, mid, min(high, f.high))
		}
	}
	s.band(x.Name+" held", i, 0.16, f, was.days, was.low, was.mid)
	s.band(x.Name+" likely", i, 0.28, f, comes.days, comes.low, comes.high)
	if len(was.days) > 1 {
		s.line(x.Name, i, 4, f.course(was.days, was.mid)...)
	}
	if len(comes.days) > 1 {
		s.dash(x.Name+" ahead", i, 4, f.course(comes.days, comes.mid)...)
	}
	l.pours(s, f, x)
	if day := dayOf(x.Empty); !x.Empty.IsZero() && day > f.from && day < f.to && x.Empty.After(l.Now) {
		s.dot(x.Name+" empty", shapeCross, vermilion, 12, point{f.x(day), f.bottom})
	}
}

// pours marks the fills, with the amount where there is room for it.
func (l Levels) pours(s *sheet, f frame, x Vessel) {
	free := f.left
	for _, p := range x.Poured {
		d := dayOf(p.At)
		if d < f.from || d > f.to {
			continue
		}
		at := f.x(d)
		s.area(x.Name+" poured", green, 1, point{at - 9, f.top - 12}, point{at + 9, f.top - 12}, point{at, f.top})
		if p.Amount <= 0 || l.Water {
			continue
		}
		words := s.v.Quantity(l.quantity(p.Amount), "feedbare")
		w := s.width(words, labelText, false)
		from := max(at-w/2, f.left)
		if from < free || from+w > f.right {
			continue
		}
		s.text(from, f.top-20, labelText, green, false, rightOf, words)
		free = from + w + 12
	}
}

func (l Levels) legend(s *sheet, y float64) float64 {
	x := edge
	put := func(words string, sign func(x, y float64)) {
		words = s.v.Label(words, wording.Args{})
		w := s.width(words, labelText, false)
		if x+36+w > Width-edge {
			x, y = edge, y+42
		}
		sign(x+10, y-10)
		_, until := s.text(x+32, y, labelText, faint, false, rightOf, words)
		x = until + 36
	}
	poured := "poured"
	if l.Water {
		poured = "filled"
	}
	put(poured, func(x, y float64) {
		s.area("legend poured", green, 1, point{x - 9, y - 6}, point{x + 9, y - 6}, point{x, y + 6})
	})
	put("round", func(x, y float64) { s.box("legend round", hair, 0.7, x-9, y-14, x+9, y+14) })
	put("empty", func(x, y float64) { s.dot("legend empty", shapeCross, vermilion, 10, point{x, y}) })
	put("range", func(x, y float64) { s.box("legend band", s.pal.series[0], 0.28, x-9, y-14, x+9, y+14) })
	return y
}
