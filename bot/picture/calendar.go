package picture

import (
	"troughbell/bot/wording"
	"troughbell/model"
)

// Calendar is the season week by week: what was done, and what comes.
type Calendar struct {
	From, To model.Day
	Today    model.Day
	Rounds   []model.Day // chore days ahead
	Events   []Event     // in the order of their days
}

// Event is one thing on a day. About is one of the kinds of [eventKinds].
type Event struct {
	On    model.Day
	About string
	Ahead bool // it comes, as against was done
}

// Kind is "calendar".
func (Calendar) Kind() string { return "calendar" }

// eventKinds are the kinds of events with their signs, a letter on a ground, in
// the order in which they stand on a day that has no room for all.
var eventKinds = []struct {
	about string
	ink   ink
}{
	{"butcher", vermilion},
	{"target", vermilion},
	{"clear", purple},
	{"worm", purple},
	{"treat", purple},
	{"arrive", green},
	{"gone", vermilion},
	{"move", green},
	{"weigh", blue},
	{"refill", orange},
	{"water", sky},
	{"own", blue},
}

const (
	weekRoom = 60.0
	signSize = 38.0
	weekName = 124.0
)

func (c Calendar) layout(s *sheet) {
	note := s.v.Caption("calendar_note", wording.Args{})
	if c.crowded() {
		note += " " + s.v.Caption("calendar_more", wording.Args{})
	}
	y := s.head(s.v.Caption("calendar", wording.Args{Days: []model.Day{c.From, c.To}}), note)
	first := s.v.WeekStart(c.From)
	wide := (Width - edge/2 - edge - weekName) / 7
	left := edge + weekName
	for k := range 7 {
		s.text(left+(float64(k)+0.5)*wide, y+28, labelText, faint, false, centred, s.v.Weekday(first+model.Day(k)))
	}
	y += 46
	on, round := c.byDay()
	for week := first; week <= c.To; week += 7 {
		if c.Today >= week && c.Today < week+7 {
			s.box("this week", hair, 0.35, edge/2, y, Width-edge/2, y+weekRoom)
		}
		s.line("", hair, 2, point{edge, y}, point{Width - edge/2, y})
		s.text(edge, y+weekRoom/2+10, labelText, faint, false, rightOf, s.v.ShortDay(week))
		for k := range 7 {
			d := week + model.Day(k)
			if d >= c.From && d <= c.To {
				c.day(s, d, on[d], round[d], left+float64(k)*wide, y, wide)
			}
		}
		y += weekRoom
	}
	s.line("", hair, 2, point{edge, y}, point{Width - edge/2, y})
	s.high = c.legend(s, y+56) + edge
}

// day draws the signs of a day, and a rim around today.
func (c Calendar) day(s *sheet, d model.Day, events []Event, round bool, x, y, wide float64) {
	if d == c.Today {
		s.line("today", text, 4, point{x + 4, y + 4}, point{x + wide - 4, y + 4}, point{x + wide - 4, y + weekRoom - 4}, point{x + 4, y + weekRoom - 4}, point{x + 4, y + 2})
	}
	shown := ordered(events)
	if len(shown) == 0 {
		if round && d > c.Today {
			s.dot("round "+d.String(), shapeRing, faint, 9, point{x + wide/2, y + weekRoom/2})
		}
		return
	}
	shown, more := fitting(shown)
	step := signSize + 3
	signs := len(shown)
	if more > 0 {
		signs++
	}
	from := x + wide/2 - step*float64(signs)/2 + 1.5
	for i, e := range shown {
		s.sign(e, from+float64(i)*step, y+(weekRoom-signSize)/2)
	}
	if more > 0 {
		s.text(from+float64(len(shown))*step, y+weekRoom/2+10, labelText, faint, false, rightOf, moreSign+wording.Mark(float64(more)))
	}
}

// mostSigns is how many signs a day has room for; moreSign stands, where there
// are more events, in the place of the last.
const (
	mostSigns = 3
	moreSign  = "+"
)

// fitting gives the events of a day that have a sign of their own, and how many
// more there are.
func fitting(events []Event) (shown []Event, more int) {
	if len(events) <= mostSigns {
		return events, 0
	}
	return events[:mostSigns-1], len(events) - (mostSigns - 1)
}

// crowded reports whether a day has more events than signs.
func (c Calendar) crowded() bool {
	on, _ := c.byDay()
	for _, events := range on {
		if _, more := fitting(ordered(events)); more > 0 {
			return true
		}
	}
	return false
}

// ordered gives a day's events, each kind once, the gravest first.
func ordered(events []Event) []Event {
	var out []Event
	for _, k := range eventKinds {
		for _, e := range events {
			if e.About == k.about {
				out = append(out, e)
				break
			}
		}
	}
	return out
}

// sign draws an event: a letter on its ground where it was done, in a frame where
// it comes.
func (s *sheet) sign(e Event, x, y float64) {
	i := faint
	for _, k := range eventKinds {
		if k.about == e.About {
			i = k.ink
		}
	}
	letter := s.v.Label("sign_"+e.About, wording.Args{})
	name := e.About + " " + e.On.String()
	if e.Ahead {
		s.box(name+" ahead", i, 1, x, y, x+signSize, y+signSize)
		s.box(name+" ahead ground", paper, 1, x+4, y+4, x+signSize-4, y+signSize-4)
		s.text(x+signSize/2, y+signSize-9, labelText, text, true, centred, letter)
		return
	}
	s.box(name, i, 1, x, y, x+signSize, y+signSize)
	s.text(x+signSize/2, y+signSize-9, labelText, s.pal.upon(i), true, centred, letter)
}

// upon is the ink that is read best upon another.
func (p palette) upon(i ink) ink {
	light := func(i ink) float64 {
		c := p.colours[i]
		return 0.299*float64(c.R) + 0.587*float64(c.G) + 0.114*float64(c.B)
	}
	a, b := light(paper)-light(i), light(text)-light(i)
	if a*a > b*b {
		return paper
	}
	return text
}

// legend explains the signs that stand in the picture.
func (c Calendar) legend(s *sheet, y float64) float64 {
	there := map[string]bool{}
	ahead := false
	for _, e := range c.Events {
		there[e.About] = true
		ahead = ahead || e.Ahead
	}
	x := edge
	for _, k := range eventKinds {
		if !there[k.about] {
			continue
		}
		words := s.v.Label("event_"+k.about, wording.Args{})
		w := s.width(words, labelText, false)
		if x+signSize+12+w > Width-edge {
			x, y = edge, y+52
		}
		s.sign(Event{About: k.about}, x, y-signSize+8)
		_, until := s.text(x+signSize+12, y, labelText, faint, false, rightOf, words)
		x = until + 32
	}
	return y
}

// byDay are the events and the chore days by their day.
func (c Calendar) byDay() (on map[model.Day][]Event, round map[model.Day]bool) {
	on, round = map[model.Day][]Event{}, map[model.Day]bool{}
	for _, e := range c.Events {
		on[e.On] = append(on[e.On], e)
	}
	for _, d := range c.Rounds {
		round[d] = true
	}
	return on, round
}
