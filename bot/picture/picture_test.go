package picture

import (
	"bytes"
	"fmt"
	"image/png"
	"math"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"troughbell/bot/wording"
	"troughbell/model"
)

var today = model.DateDay(2026, time.July, 15)

// voice speaks in US or metric units on the day of the drawings here.
func voice(units string) wording.Voice {
	h := &model.Herd{Units: units, Currency: "USD"}
	return wording.Voice{Herd: h, Now: noon(today)}
}

func noon(d model.Day) time.Time { return d.At(12*60, time.UTC) }

func kg(mid float64) model.Interval {
	return model.Interval{Low: mid * 0.93, Mid: mid, High: mid * 1.07}
}

// pigs makes so many pigs that grow from 20 kg by 0.8 kg a day.
func pigs(n int, name func(int) string, weighed bool) Growth {
	g := Growth{TargetKg: 120, Today: today, From: today - 60, To: today + 60, Booked: []model.Day{today + 60}}
	course := func(more float64) (p PigGrowth) {
		for d := g.From; d <= g.To; d += 10 {
			p.On, p.Kg = append(p.On, d), append(p.Kg, kg(20+more+0.8*float64(d-g.From)))
		}
		p.NowKg = kg(20 + more + 48)
		if weighed {
			p.Seen = []Weighed{{today - 20, 20 + more + 32, model.ByTape}, {today - 3, 20 + more + 45.6, model.ByScale}}
		}
		return p
	}
	for i := range n {
		p := course(float64(i))
		p.Name = name(i)
		g.Pigs = append(g.Pigs, p)
	}
	g.Mean = course(float64(n-1) / 2)
	return g
}

// vessels makes so many feeders or barrels that were filled a week ago.
func vessels(n int, water bool, name func(int) string) Levels {
	l := Levels{Water: water, Now: noon(today), From: noon(today - 14), To: noon(today + 7), Rounds: []model.Day{today - 11, today - 4, today + 3}}
	for i := range n {
		v := Vessel{Poured: []Poured{{noon(today - 4), 60}}, SafeTo: noon(today + 3), Empty: noon(today + 5)}
		v.Name, v.Capacity = name(i), 100
		for d := today - 14; d <= today+7; d++ {
			left := 100 - 9*float64((d-today+25)%11)
			v.At, v.Level = append(v.At, noon(d)), append(v.Level, kg(left))
		}
		l.Vessels = append(l.Vessels, v)
	}
	return l
}

func days(n int) Heat {
	h := Heat{Today: today}
	for i := range n {
		thi := 70 + float64(i%20)
		h.Days = append(h.Days, HotDay{On: today - model.Day(n-1-i), HighC: 24 + float64(i%14), THI: thi, Class: model.HeatNormal})
	}
	return h
}

func season() Calendar {
	c := Calendar{From: today - 95, To: today + 90, Today: today}
	for d := c.From; d <= c.To; d++ {
		if d.Weekday() == time.Saturday && d > today {
			c.Rounds = append(c.Rounds, d)
		}
	}
	for i, k := range eventKinds {
		c.Events = append(c.Events, Event{On: today - 12*model.Day(i), About: k.about}, Event{On: today + 7*model.Day(i), About: k.about, Ahead: true})
	}
	return c
}

func money(parts int) Costs {
	c := Costs{Pigs: 4, PerKgHanging: 3.1, Currency: "USD"}
	for i := range parts {
		p := model.CostPart{What: fmt.Sprint("thing ", i), Spent: float64(900 / (i + 1)), Ahead: float64(i)}
		c.Parts = append(c.Parts, p)
		c.Spent += p.Spent
		c.Forecast += p.Spent + p.Ahead
	}
	return c
}

func plain(i int) string { return fmt.Sprint("Pig ", i+1) }
func long(i int) string {
	return fmt.Sprint("Maximilian-Ferdinand the Younger of Lower Oak Meadow ", i)
}

func odd(i int) string { return []string{"Ж", "猪🐷", "Zoë", "a\nb", "Łukasz", "e\u0301"}[i%6] }

// drawings is every picture of herds as they come: one pig and twenty, without
// names, with names that no part has room for or no font has, without weights,
// with nothing known.
func drawings() map[string]Drawing {
	unnamed := pigs(1, func(int) string { return model.All }, false)
	gone := pigs(3, plain, true)
	gone.Pigs[1].NowKg, gone.Pigs[1].On, gone.Pigs[1].Kg = model.Interval{}, gone.Pigs[1].On[:4], gone.Pigs[1].Kg[:4]
	none := Growth{TargetKg: 120, Today: today, From: today, To: today + 1, Pigs: []PigGrowth{{Name: "Fern"}}}
	free := Costs{Parts: []model.CostPart{{What: "straw"}}, Currency: "USD"}
	return map[string]Drawing{
		"one pig": pigs(1, plain, true), "eight pigs": pigs(8, plain, true), "nine pigs": pigs(9, plain, true), "twenty pigs": pigs(20, plain, true),
		"unnamed": unnamed, "long names": pigs(5, long, true), "twenty long names": pigs(20, long, true), "odd names": pigs(6, odd, true),
		"no weights": pigs(4, plain, false), "one gone": gone, "nothing known": none,
		"one feeder": vessels(1, false, plain), "six feeders": vessels(6, false, long), "barrels": vessels(3, true, odd),
		"empty feeder": Levels{Now: noon(today), From: noon(today - 7), To: noon(today + 7), Vessels: []Vessel{{}}},
		"one hot day":  days(1), "a month of heat": days(30),
		"season": season(), "one day": Calendar{From: today, To: today, Today: today},
		"two costs": money(2), "twelve costs": money(12), "nothing spent": free,
	}
}

// Every picture can be drawn of every herd: all that is drawn lies on the sheet,
// no text runs over its edge or is smaller than a phone can show, and what is
// drawn is figures.
func TestEveryPictureOfOddHerds(t *testing.T) {
	for name, d := range drawings() {
		for _, units := range []string{model.US, model.Metric} {
			for _, dark := range []bool{false, true} {
				s := newSheet(voice(units), Style{Dark: dark})
				require.NoError(t, s.err)
				d.layout(s)
				require.Greater(t, s.high, 100.0, name)
				require.LessOrEqual(t, s.high, 8000.0, "%s: Telegram takes 10,000 in all", name)
				require.NotEmpty(t, s.marks, name)
				for _, m := range s.marks {
					for _, p := range m.at {
						require.False(t, math.IsNaN(p.x) || math.IsNaN(p.y) || math.IsInf(p.x, 0) || math.IsInf(p.y, 0), "%s: %v", name, m)
						require.True(t, p.x >= 0 && p.x <= Width && p.y >= 0 && p.y <= s.high, "%s: %v", name, m)
					}
					if m.shape == shapeText {
						require.GreaterOrEqual(t, m.size, float64(smallestText), name)
						require.LessOrEqual(t, m.at[0].x+s.width(m.words, m.size, m.bold), float64(Width), "%s: %q runs over the edge", name, m.words)
						require.NotContains(t, m.words, "NaN", name)
					}
				}
			}
		}
	}
}

// No text lies upon another.
func TestTextsStandApart(t *testing.T) {
	for name, d := range drawings() {
		s := newSheet(voice(model.US), Style{})
		d.layout(s)
		type box struct {
			x0, y0, x1, y1 float64
			words          string
		}
		var boxes []box
		for _, m := range s.marks {
			if m.shape == shapeText {
				at := m.at[0]
				boxes = append(boxes, box{at.x, at.y - 0.7*m.size, at.x + s.width(m.words, m.size, m.bold), at.y, m.words})
			}
		}
		for i, a := range boxes {
			for _, b := range boxes[:i] {
				over := min(a.x1, b.x1) - max(a.x0, b.x0)
				under := min(a.y1, b.y1) - max(a.y0, b.y0)
				require.False(t, over > 2 && under > 2, "%s: %q and %q", name, a.words, b.words)
			}
		}
	}
}

func TestPNGsAreWhole(t *testing.T) {
	all := drawings()
	for _, name := range []string{"twenty long names", "odd names", "six feeders", "a month of heat", "season", "twelve costs"} {
		b, err := PNG(all[name], voice(model.Metric), Style{})
		require.NoError(t, err, name)
		require.LessOrEqual(t, len(b), 150<<10, name)
		cfg, err := png.DecodeConfig(bytes.NewReader(b))
		require.NoError(t, err, name)
		require.Equal(t, Width, cfg.Width)
	}
}

// What is drawn is the figures: a weighing stands where its day and weight are on
// the scale that the numbers beside it name, a bar is as long as its sum, a level
// lies where it is, a day has its signs.
func TestWhatIsDrawnIsTheFigures(t *testing.T) {
	s := newSheet(voice(model.Metric), Style{})
	g := pigs(1, plain, true)
	g.layout(s)
	y := scaleOf(t, s, 0, 100)
	var seen []mark
	for _, m := range s.marks {
		if strings.HasPrefix(m.name, "Pig 1 by ") {
			seen = append(seen, m)
		}
	}
	require.Len(t, seen, 2)
	require.Equal(t, []shape{shapeGem, shapeDot}, []shape{seen[0].shape, seen[1].shape}, "tape and scale look different")
	for i, w := range g.Pigs[0].Seen {
		require.InDelta(t, y(w.Kg), seen[i].at[0].y, 1.5)
	}
	perDay := (seen[1].at[0].x - seen[0].at[0].x) / 17
	line, _ := named(s, "Pig 1")
	require.InDelta(t, seen[1].at[0].x+3*perDay, line.at[len(line.at)-1].x, perDay, "the line ends today")
	end, _ := named(s, "Pig 1 at the end")
	require.InDelta(t, y(20+0.8*120), end.at[0].y, 1.5)
	require.Contains(t, s.String(), `"116"`, "what it will weigh")

	s = newSheet(voice(model.Metric), Style{})
	l := vessels(1, false, plain)
	l.layout(s)
	y = scaleOf(t, s, 0, 100)
	course, ok := named(s, "Pig 1")
	require.True(t, ok)
	for i, p := range course.at {
		require.InDelta(t, y(l.Vessels[0].Level[i].Mid), p.y, 1.5)
	}
	_, ok = named(s, "Pig 1 empty")
	require.True(t, ok)

	s = newSheet(voice(model.US), Style{})
	c := money(3)
	c.layout(s)
	long := func(name string) float64 {
		m, ok := named(s, name)
		require.True(t, ok, name)
		return m.at[1].x - m.at[0].x
	}
	require.InDelta(t, 900.0/450, long("thing 0 spent")/long("thing 1 spent"), 0.01)
	require.InDelta(t, 300.0/2, long("thing 2 spent")/long("thing 2 ahead"), 0.5)

	s = newSheet(voice(model.US), Style{})
	cal := Calendar{From: today - 7, To: today + 7, Today: today, Events: []Event{
		{On: today - 1, About: "water"},
		{On: today - 1, About: "water"},
		{On: today + 2, About: "worm", Ahead: true},
		{On: today + 3, About: "arrive"},
		{On: today + 3, About: "move"},
		{On: today + 3, About: "refill"},
		{On: today + 3, About: "weigh"},
	}}
	cal.layout(s)
	for name, there := range map[string]bool{
		"water " + (today - 1).String(): true, "worm " + (today + 2).String() + " ahead": true, "worm " + (today + 2).String(): false,
		"arrive " + (today + 3).String(): true, "refill " + (today + 3).String(): false,
	} {
		_, ok := named(s, name)
		require.Equal(t, there, ok, name)
	}
	require.Contains(t, s.String(), `"+2"`, "two have no room")
	require.Contains(t, s.String(), "more that day")
}

// named finds a mark by its name.
func named(s *sheet, name string) (mark, bool) {
	for _, m := range s.marks {
		if m.name == name {
			return m, true
		}
	}
	return mark{}, false
}

// scaleOf gives the height of a value by two of the numbers beside the frame.
func scaleOf(t *testing.T, s *sheet, a, b float64) func(float64) float64 {
	t.Helper()
	at := map[string]float64{}
	for _, m := range s.marks {
		if m.shape == shapeText && m.ink == faint {
			if _, there := at[m.words]; !there {
				at[m.words] = m.at[0].y - 10
			}
		}
	}
	ya, yb := at[wording.Mark(a)], at[wording.Mark(b)]
	require.NotZero(t, ya*yb, "%v", at)
	return func(v float64) float64 { return ya + (v-a)/(b-a)*(yb-ya) }
}

// A character that the font does not have is seen to be missing; what it has is
// drawn, however it was typed.
func TestMissingGlyphs(t *testing.T) {
	f, err := loadFonts()
	require.NoError(t, err)
	for in, want := range map[string]string{
		"Olive": "Olive", "Zoë": "Zoë", "Zoe\u0308": "Zoë", "Łukasz": "Łukasz", "Ждан": "Ждан", "Ωμέγα": "Ωμέγα",
		"猪": "?", "🐷": "?", "🐷\uFE0F": "?", "a\nb": "a b", "a\tb": "a b", "": "",
	} {
		for _, bold := range []bool{false, true} {
			require.Equal(t, want, f.drawable(in, bold), "%q", in)
		}
	}
	s := newSheet(voice(model.US), Style{})
	pigs(6, odd, true).layout(s)
	require.Contains(t, s.String(), `"??"`)
	for _, m := range s.marks {
		require.NotContains(t, m.words, "猪")
	}
}

// A chart of characters keeps to the screen, to ASCII where there is no more and
// to no colour where none is wanted.
func TestChartsOfCharacters(t *testing.T) {
	for name, d := range drawings() {
		for _, columns := range []int{40, 80, 100} {
			for _, units := range []string{model.US, model.Metric} {
				for _, screen := range []Screen{{columns, true, false}, {columns, false, false}} {
					chart := Blocks(d, voice(units), screen)
					require.True(t, strings.HasSuffix(chart, "\n"), name)
					require.NotContains(t, chart, "\x1b", name)
					require.NotContains(t, chart, "NaN", name)
					for _, l := range strings.Split(chart, "\n") {
						require.LessOrEqual(t, utf8.RuneCountInString(l), columns, "%s: %q", name, l)
						require.False(t, screen.Plain && strings.ContainsFunc(l, func(r rune) bool { return r > 126 }), "%s: %q", name, l)
					}
				}
				coloured := Blocks(d, voice(units), Screen{Columns: columns, Colour: true})
				require.Equal(t, Blocks(d, voice(units), Screen{Columns: columns}), uncoloured(coloured), "%s: colours change no words", name)
			}
		}
	}
}

func uncoloured(s string) string {
	for _, code := range []string{ansiFaint, ansiPast, ansiAhead, ansiWarn, ansiGood, "0"} {
		s = strings.ReplaceAll(s, "\x1b["+code+"m", "")
	}
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		lines[i] = strings.TrimRight(l, " ")
	}
	return strings.Join(lines, "\n")
}

// BenchmarkOdd draws the largest pictures. Wanted: under 200 ms, under 150 KB.
func BenchmarkOdd(b *testing.B) {
	all := drawings()
	for _, name := range []string{"twenty pigs", "six feeders", "a month of heat", "season", "twelve costs"} {
		b.Run(strings.ReplaceAll(name, " ", "-"), func(b *testing.B) {
			size := 0
			for b.Loop() {
				out, err := PNG(all[name], voice(model.US), Style{})
				if err != nil {
					b.Fatal(err)
				}
				size = len(out)
			}
			b.ReportMetric(float64(size)/1024, "KB")
		})
	}
}
