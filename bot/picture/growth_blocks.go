package picture

import (
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// blocks gives a line a pig: its name, its course in characters from the first
// day to the last, what it weighs now and at the end.
func (g Growth) blocks(p *page) {
	s := &sheet{v: p.v}
	title, note := g.title(s)
	p.words(title + ". " + note)
	name := 0
	pigs := g.Pigs
	if len(pigs) > mostApart {
		pigs = g.oneOfAlike(s).byEnd()
	}
	for _, x := range pigs {
		name = max(name, p.wide(s.pigName(x.Name)))
	}
	name = min(name, 14)
	now := p.v.Label("now", wording.Args{})
	columns := p.Columns - name - 2 - 14
	low, high, _ := g.scale(s, 4)
	span := float64(g.To-g.From) / float64(columns)
	today := int(float64(g.Today-g.From)/span) + 1
	for _, x := range pigs {
		shares := make([]float64, columns)
		for k := range shares {
			on := float64(g.From) + (float64(k)+0.5)*span
			if kg, ok := x.kgOn(on); ok {
				shares[k] = max((s.kg(kg)-low)/(high-low), 0.01)
			}
		}
		weights := ""
		if x.NowKg.Mid > 0 {
			weights = p.v.Quantity(wording.Kg(x.NowKg.Mid), "bare")
		}
		switch n := len(x.Kg); {
		case n > 0 && g.Over:
			weights = p.v.Quantity(wording.Kg(x.Kg[n-1].Mid), "bare")
		case n > 0 && x.On[n-1] > g.Today:
			weights += " > " + p.v.Quantity(wording.Kg(x.Kg[n-1].Mid), "bare")
		}
		p.put(p.fit(s.pigName(x.Name), name) + "  " + p.spark(shares, today) + "  " + weights)
	}
	at := min(max(today-1-len(now), 0), columns-len(now)) // ends below the last past column
	axis := []rune(strings.Repeat(" ", columns))
	if g.Over {
		at = columns // nothing is marked as now
	} else {
		copy(axis[at:], []rune(now))
	}
	from, to := []rune(p.v.ShortDay(g.From)), []rune(p.v.ShortDay(g.To))
	if at > len(from) {
		copy(axis, from)
	}
	if g.Over || at+len(now) < columns-len(to) {
		copy(axis[columns-len(to):], to)
	}
	p.put(strings.Repeat(" ", name+2) + p.coloured(ansiFaint, string(axis)))
}

// kgOn is the weight on a day between those of the course.
func (p PigGrowth) kgOn(day float64) (float64, bool) {
	for i := 1; i < len(p.On); i++ {
		a, b := float64(p.On[i-1]), float64(p.On[i])
		if day >= a && day <= b {
			return p.Kg[i-1].Mid + (p.Kg[i].Mid-p.Kg[i-1].Mid)*(day-a)/(b-a), true
		}
	}
	return 0, false
}

// lastKnown is the latest level of a course at or before a day.
func lastKnown(c model.LevelCourse, day float64) (float64, bool) {
	level, ok := 0.0, false
	for i, t := range c.At {
		if dayOf(t) > day {
			break
		}
		level, ok = c.Level[i].Mid, true
	}
	return level, ok
}
