package picture

import (
	"math"
	"strings"

	"troughbell/bot/wording"
	"troughbell/model"
)

// blocks gives two lines a vessel: its name with how long it lasts, and its
// course in characters.
func (l Levels) blocks(p *page) {
	s := &sheet{v: p.v}
	_, unit := p.v.Scaled(l.quantity(1))
	p.words(p.v.Caption(l.Kind(), wording.Args{Names: []string{unit}}))
	columns := p.Columns - 2
	from, to := dayOf(l.From), dayOf(l.To)
	span := (to - from) / float64(columns)
	now := int((dayOf(l.Now) - from) / span)
	for _, x := range l.Vessels {
		p.words(x.Name + ": " + l.lasts(p.v.Label, x))
		shares := make([]float64, columns)
		top, _ := p.v.Scaled(l.quantity(x.Capacity))
		top = max(top, l.capacity(s, x), 1e-9)
		for k := range shares {
			if level, ok := lastKnown(x.LevelCourse, from+(float64(k)+0.5)*span); ok {
				v, _ := p.v.Scaled(l.quantity(level))
				shares[k] = v / top
			}
		}
		p.put("  " + p.spark(shares, now+1))
	}
	axis := []rune(strings.Repeat(" ", columns))
	free := 0
	for _, d := range l.Rounds {
		at := int((float64(d) + 0.5 - from) / span)
		words := []rune(p.v.ShortDay(d))
		if at >= free && at+len(words) <= columns {
			copy(axis[at:], words)
			free = at + len(words) + 1
		}
	}
	p.put("  " + p.coloured(ansiFaint, string(axis)))
	if l.Heat != nil {
		l.Heat.blocks(p)
	}
}

// heatMarks stand for the classes in a chart of characters.
var heatMarks = map[model.HeatClass]string{
	model.HeatNormal: " ", model.HeatWatch: ".", model.HeatAlert: "!", model.HeatDanger: "!!", model.HeatEmergency: "!!!",
}

// blocks gives a line a day: its high, a bar of its index, its class.
func (h Heat) blocks(p *page) {
	_, unit := p.v.Scaled(model.Quantity{Unit: model.Celsius})
	p.words(p.v.Caption("thi", wording.Args{}) + ", " + p.v.Label("highs", wording.Args{Names: []string{unit}}))
	days := h.Days
	if const14 := 14; len(days) > const14 {
		days = days[len(days)-const14:]
	}
	const least, most = 55.0, 95.0
	for _, d := range days {
		high, _ := p.v.Scaled(model.Quantity{Value: d.HighC, Unit: model.Celsius})
		code := ansiGood
		if d.Class == model.HeatDanger || d.Class == model.HeatEmergency {
			code = ansiWarn
		}
		columns := p.Columns - 8 - 5 - 4 - 14
		bar := p.bar((d.THI-least)/(most-least), columns)
		class := ""
		if m := heatMarks[d.Class]; strings.HasPrefix(m, "!") {
			class = p.v.Label("class_"+string(d.Class), wording.Args{})
		}
		p.put(p.fit(p.v.ShortDay(d.On), 7) + " " + p.fit(wording.Mark(math.Round(high)), 4) + p.coloured(code, bar) +
			" " + wording.Mark(math.Round(d.THI)) + " " + class)
	}
}
