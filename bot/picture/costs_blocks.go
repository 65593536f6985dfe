package picture

import "strings"

// blocks gives a bar a part. What it comes to in all stands in the words above it.
func (c Costs) blocks(p *page) {
	for _, n := range c.notes(p.v)[1:] {
		p.words(n)
	}
	parts, rest := c.bars()
	name, most, money := 0, 0.0, 0
	for i, x := range parts {
		name = max(name, p.wide(c.name(p.v, x, rest > 0 && i == len(parts)-1)))
		most = max(most, x.Spent+x.Ahead)
		money = max(money, p.wide(c.money(p.v, x.Spent+x.Ahead)))
	}
	name = min(name, 18)
	columns := p.Columns - name - money - 3
	for i, x := range parts {
		sum := x.Spent + x.Ahead
		spent := p.bar(x.Spent/most, columns)
		whole := []rune(p.bar(sum/most, columns))
		ahead := ""
		if n := len([]rune(spent)); n < len(whole) && x.Ahead > 0 {
			fill := "░"
			if p.Plain {
				fill = "-"
			}
			ahead = strings.Repeat(fill, len(whole)-n)
		}
		p.put(p.fit(c.name(p.v, x, rest > 0 && i == len(parts)-1), name) + " " +
			p.coloured(ansiPast, spent) + p.coloured(ansiAhead, ahead) + " " + p.say(c.money(p.v, sum)))
	}
}
