package wording

import (
	"errors"
	"strings"

	"troughbell/model"
)

// Missing asks for exactly what a figure lacks, with an example from the
// person's own herd. topic is the question that lacked it.
func (v Voice) Missing(err error, topic string) string {
	var out *model.OutOfRange
	if errors.As(err, &out) {
		return v.outOfRange(out)
	}
	var m *model.Missing
	if !errors.As(err, &m) {
		return v.say(partMissing, "other", Args{Names: []string{About(topic)}})
	}
	code := m.What
	if _, ok := missingSentences[code]; !ok {
		return v.say(partMissing, "other", Args{Names: []string{About(code)}})
	}
	return v.say(partMissing, code, Args{Names: []string{
		v.ownName(), v.ownFeeder(), v.ownBarrel(), v.ownPen(), Join(v.of(m), "and"), v.of(m)[0],
	}})
}

// of names the things that are lacking something: what the error names, else
// the herd's own feeder or barrel. There is always one.
func (v Voice) of(m *model.Missing) []string {
	if len(m.Names) > 0 {
		return m.Names
	}
	if m.What == "water_level" || m.What == "barrels" {
		return []string{v.ownBarrel()}
	}
	return []string{v.ownFeeder()}
}

func (v Voice) outOfRange(o *model.OutOfRange) string {
	unit := unitOf(o.Quantity)
	q := func(x float64) model.Quantity { return model.Quantity{Value: x, Unit: unit} }
	name := strings.TrimSuffix(strings.TrimSuffix(o.Quantity, "_kg"), "_pct")
	return v.say(partMissing, "out_of_range", Args{
		Names: []string{About(name)}, Q: []model.Quantity{q(o.Value), q(o.Low), q(o.High)},
	})
}

// unitOf is the unit of a quantity by its name, as the model names them.
func unitOf(quantity string) model.Unit {
	switch {
	case quantity == "girth" || quantity == "length" || strings.HasSuffix(quantity, "_cm"):
		return model.Centimetres
	case quantity == "weight" || quantity == "target" || strings.HasSuffix(quantity, "_kg"):
		return model.Kilograms
	case strings.HasSuffix(quantity, "_pct"):
		return model.Percent
	case strings.HasSuffix(quantity, "_c"):
		return model.Celsius
	}
	return model.Count
}
