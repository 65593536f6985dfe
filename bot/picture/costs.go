package picture

import (
	"math"

	"troughbell/bot/wording"
	"troughbell/model"
)

// Costs is what the season's money goes into.
type Costs struct {
	Parts []model.CostPart // the largest first
	// Spent is so far, Forecast with what is still to come, Received from sales.
	Spent, Forecast, Received float64
	Pigs                      int     // that the money is for
	PerKgLive, PerKgHanging   float64 // 0: not known
	PerKgPackaged             float64
	UnpricedFeedKg            float64
	Currency                  string
}

// Kind is "cost".
func (Costs) Kind() string { return "cost" }

// mostParts is how many parts have a bar of their own; the smallest share one.
const mostParts = 8

// bars gives the parts that are drawn.
func (c Costs) bars() (parts []model.CostPart, rest int) {
	if len(c.Parts) <= mostParts {
		return c.Parts, 0
	}
	parts = append(parts, c.Parts[:mostParts-1]...)
	others := model.CostPart{}
	for _, p := range c.Parts[mostParts-1:] {
		others.Spent += p.Spent
		others.Ahead += p.Ahead
		rest++
	}
	return append(parts, others), rest
}

func (c Costs) name(v wording.Voice, p model.CostPart, rest bool) string {
	switch {
	case rest:
		return v.Label("cost_others", wording.Args{})
	case p.What == "":
		return v.Label("cost_unnamed", wording.Args{})
	case p.What == model.CostFeed, p.What == model.CostButcher:
		return v.Label("cost_"+p.What, wording.Args{})
	}
	return p.What
}

func (c Costs) money(v wording.Voice, x float64) string {
	return v.Quantity(model.Quantity{Value: x, Unit: model.Money}, "")
}

// notes says what the money comes to.
func (c Costs) notes(v wording.Voice) []string {
	q := func(x float64) model.Quantity { return model.Quantity{Value: x, Unit: model.Money} }
	out := []string{v.Caption("cost_sum", wording.Args{Q: []model.Quantity{q(c.Spent), q(c.Forecast)}})}
	if c.Pigs > 0 {
		args := wording.Args{Q: []model.Quantity{q((c.Forecast - c.Received) / float64(c.Pigs)), q(c.PerKgHanging), q(c.PerKgPackaged)}}
		code := "cost_pig"
		if c.PerKgHanging > 0 {
			code = "cost_each"
		}
		out = append(out, v.Caption(code, args))
	}
	if c.Received > 0 {
		out = append(out, v.Caption("cost_received", wording.Args{Q: []model.Quantity{q(c.Received)}}))
	}
	if c.UnpricedFeedKg > 0.5 {
		out = append(out, v.Say("cost_unpriced", wording.Args{Q: []model.Quantity{q(0), q(0), q(0), q(0), wording.Kg(c.UnpricedFeedKg)}}))
	}
	return out
}

func (c Costs) layout(s *sheet) {
	y := s.head(s.v.Caption("cost", wording.Args{}), c.notes(s.v)...)
	parts, rest := c.bars()
	most := 0.0
	for _, p := range parts {
		most = max(most, p.Spent+p.Ahead)
	}
	total := 0.0
	for _, p := range parts {
		total += p.Spent + p.Ahead
	}
	const row, thick = 104.0, 44.0
	i := s.pal.series[0]
	ahead := false
	for k, p := range parts {
		sum := p.Spent + p.Ahead
		amount := c.money(s.v, sum)
		right := s.v.Label("cost_share", wording.Args{Names: []string{amount}, Q: []model.Quantity{{Value: math.Round(100 * sum / max(total, 1e-9)), Unit: model.Percent}}})
		w := s.width(right, labelText+2, false)
		name := s.cut(c.name(s.v, p, rest > 0 && k == len(parts)-1), labelText+2, true, Width-2*edge-w-30)
		s.text(edge, y+30, labelText+2, text, true, rightOf, name)
		s.text(Width-edge, y+30, labelText+2, faint, false, leftOf, right)
		wide := (Width - 2*edge) / most
		s.box("ground", hair, 0.4, edge, y+42, Width-edge, y+42+thick)
		if p.Spent > 0 {
			s.box(name+" spent", i, 1, edge, y+42, edge+p.Spent*wide, y+42+thick)
		}
		if p.Ahead > 0 {
			ahead = true
			s.box(name+" ahead", i, 0.4, edge+p.Spent*wide, y+42, edge+sum*wide, y+42+thick)
		}
		y += row
	}
	y += 26
	if ahead {
		s.box("legend spent", i, 1, edge, y-14, edge+40, y+14)
		_, until := s.text(edge+54, y+10, labelText, faint, false, rightOf, s.v.Label("cost_spent", wording.Args{}))
		s.box("legend ahead", i, 0.4, until+36, y-14, until+76, y+14)
		s.text(until+90, y+10, labelText, faint, false, rightOf, s.v.Label("cost_ahead", wording.Args{}))
		y += 30
	}
	s.high = y + edge/2
}
