package picture

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// blocks gives a line a week, the signs of each day in a column of it: a capital
// letter was done, a small one is to come. The span stands in the words above it.
func (c Calendar) blocks(p *page) {
	dayRoom := min((p.Columns-8)/7, 5)
	first := p.v.WeekStart(c.From)
	head := strings.Repeat(" ", 8)
	for k := range 7 {
		head += p.fit(p.v.Weekday(first+model.Day(k)), dayRoom)
	}
	p.put(p.coloured(ansiFaint, head))
	on, round := c.byDay()
	for week := first; week <= c.To; week += 7 {
		line := p.fit(p.v.ShortDay(week), 8)
		for k := range 7 {
			d := week + model.Day(k)
			signs, code := "", ansiPast
			shown, more := fitting(ordered(on[d]))
			for _, e := range shown {
				letter := p.v.Label("sign_"+e.About, wording.Args{})
				if e.Ahead {
					letter, code = strings.ToLower(letter), ansiAhead
				}
				signs += letter
			}
			if more > 0 {
				signs += moreSign
			}
			switch {
			case signs != "":
			case d == c.Today:
			case round[d] && d > c.Today:
				signs = "o"
			case d >= c.From && d <= c.To:
				signs = "."
			}
			if d == c.Today {
				signs += "<"
			}
			line += p.coloured(code, signs) + strings.Repeat(" ", max(dayRoom-len(signs), 0))
		}
		p.put(line)
	}
	p.legend(c)
}

// legend says what the letters are.
func (p *page) legend(c Calendar) {
	there := map[string]bool{}
	for _, e := range c.Events {
		there[e.About] = true
	}
	line := ""
	for _, k := range eventKinds {
		if !there[k.about] {
			continue
		}
		one := p.v.Label("sign_"+k.about, wording.Args{}) + " " + p.v.Label("event_"+k.about, wording.Args{})
		if line != "" {
			line += ", "
		}
		line += one
	}
	p.words(line)
	note := p.v.Caption("calendar_letters", wording.Args{})
	if c.crowded() {
		note += " " + p.v.Caption("calendar_more", wording.Args{})
	}
	p.words(note)
}
