package reading

import (
	"troughbell/model"
)

// Plausible bounds of a pig's readings, whatever the herd: a weaner to a heavy
// sow. Common practice, no source.
const (
	lightestKg, heaviestKg = 2.0, 400.0
	leastGirth, mostGirth  = 25.0, 190.0 // centimetres
	leastLong, mostLong    = 25.0, 220.0
)

// weighing makes the entry of one measure, or asks where it is in doubt.
func (r *reader) weighing(s span, m *measure) {
	at := span{s.frame, s.i, s.j}
	on, _, _ := r.when(s, lookBack)
	names := m.pigs.names(r)
	build := func(w model.Weigh) func([]string) Act {
		return func(n []string) Act {
			w.Animals = n
			return Fact{w}
		}
	}
	options := r.options(m)
	if len(options) == 0 {
		r.none(NoneUnknown, s)
		return
	}
	if m.role == roleGain {
		r.gained(at, m)
		return
	}
	if !m.pigs.any || m.pigs.lost {
		w := options[0]
		r.whichPigFor(at, w, on)
		return
	}
	r.remember(m.pigs)
	best, z := r.likeliest(options, m.pigs, on)
	if outOfBounds(options[0]) && len(options) == 1 {
		z = fit{best: 99, second: 99, known: true}
	}
	switch {
	case z.known && z.best > oddsWeird, sidesSwapped(options[best]), len(options) == 1 && r.oneStandsOut(options[best], m.pigs, on):
		r.implausible(at, m, options, names, on)
		return
	case len(options) > 1 && (!z.known || z.second < oddsWeird && z.second-z.best < 1.2):
		if !z.known {
			if w, ok := r.usual(options); ok {
				r.emit(build(w)(names), at)
				return
			}
		}
		if k := r.habitual(options); k >= 0 {
			if z, ok := r.deviation(options[k], m.pigs, on); ok && z < oddsWeird {
				r.emit(build(options[k])(names), at)
				return
			}
		}
		c := Clarify{About: "weigh", Code: "girth_or_weight", Names: names, Want: ""}
		order := []model.Weigh{options[best]}
		for k, o := range options {
			if k != best {
				order = append(order, o)
			}
		}
		for _, o := range order {
			code := "as_weight"
			if o.GirthCm > 0 {
				code = "as_girth"
			}
			c.Choices = append(c.Choices, Choice{Code: code, Q: quantityOf(o), Entries: []Entry{r.draft(build(o)(names), at)}})
		}
		r.clarify(c, at)
		return
	}
	if m.pigs.bent {
		r.nearlyNamed(build(options[best])(names), names, at)
		return
	}
	r.emit(build(options[best])(names), at)
}

// nearlyNamed asks whether a word that is nearly a pig's name means that pig.
func (r *reader) nearlyNamed(act Act, names []string, s span) {
	e := r.draft(act, s)
	r.clarify(Clarify{About: act.Intent(), Code: "near_name", Names: names, Draft: []Entry{e}, Choices: []Choice{{Code: "yes", Entries: []Entry{e}}, {Code: "no"}}}, s)
}

func quantityOf(w model.Weigh) []model.Quantity {
	if w.GirthCm > 0 {
		q := []model.Quantity{{Value: w.GirthCm, Unit: model.Centimetres}}
		if w.LengthCm > 0 {
			q = append(q, model.Quantity{Value: w.LengthCm, Unit: model.Centimetres})
		}
		return q
	}
	return []model.Quantity{{Value: w.WeightKg, Unit: model.Kilograms}}
}

// options are what the measure's numbers can be.
func (r *reader) options(m *measure) []model.Weigh {
	by := model.ByScale
	if m.approx {
		by = model.ByEye
	}
	weight := func() model.Weigh {
		u := m.unit
		if u.dim() != mass {
			u = r.massUnit()
		}
		return model.Weigh{WeightKg: u.si(m.v), By: by}
	}
	tape := func() model.Weigh {
		u := m.unit
		if u.dim() != length {
			u = r.lengthUnit()
		}
		w := model.Weigh{GirthCm: u.si(m.v) * 100}
		if m.role == rolePair {
			w.LengthCm = u.si(m.v2) * 100
		}
		return w
	}
	var all []model.Weigh
	switch m.role {
	case roleWeight:
		all = []model.Weigh{weight()}
	case roleGirth, rolePair:
		all = []model.Weigh{tape()}
	case roleLength:
		return nil
	case roleGain:
		return []model.Weigh{weight()}
	default:
		all = []model.Weigh{weight(), tape()}
	}
	if m.role != roleOpen { // said outright: implausible or not, it is judged later
		return all
	}
	out := all[:0]
	for _, w := range all {
		if w.GirthCm > 0 && (w.GirthCm < leastGirth || w.GirthCm > mostGirth || w.LengthCm > mostLong || w.LengthCm > 0 && w.LengthCm < leastLong) ||
			w.GirthCm == 0 && (w.WeightKg < lightestKg || w.WeightKg > heaviestKg) {
			continue
		}
		out = append(out, w)
	}
	if len(out) == 0 { // out of all bounds: asked about, not passed over
		return all[:1]
	}
	return out
}

// gained reads "up 4 to 162" (the other number is the weight) and "up 4", which
// by itself is no weight.
func (r *reader) gained(s span, m *measure) {
	for k := s.i; k < s.j; k++ {
		it := &r.items[k]
		if k != m.at && (it.kind == itNum && !it.soft || it.qty(mass)) {
			return // the weight itself stands beside it
		}
	}
	sel := m.pigs
	if !sel.any || sel.all || len(sel.pigs) != 1 {
		r.none(NoneUnknown, s)
		return
	}
	c := Clarify{
		About: "weigh", Code: "gain_not_weight", Names: sel.names(r), Want: "weight_kg",
		Draft: []Entry{r.draft(Fact{model.Weigh{Animals: sel.names(r), By: model.ByScale}}, s)},
	}
	r.clarify(c, s)
}

// whichPigFor asks whose reading it is, the likeliest pigs first.
func (r *reader) whichPigFor(s span, w model.Weigh, on model.Day) {
	type guess struct {
		p int16
		z float64
	}
	var order []guess
	for p := range r.alive {
		if r.pigs[p].Name == "" {
			continue
		}
		z, ok := r.deviation(w, selection{pigs: []int16{int16(p)}}, on)
		if !ok {
			z = 99
		}
		g := guess{int16(p), z}
		k := len(order)
		for k > 0 && order[k-1].z > z {
			k--
		}
		order = append(order, guess{})
		copy(order[k+1:], order[k:])
		order[k] = g
	}
	draft := r.draft(Fact{w}, s)
	c := Clarify{About: "weigh", Code: "which_animal", Want: "animals", Q: quantityOf(w), Draft: []Entry{draft}}
	for _, g := range order {
		if len(c.Choices) == 4 {
			break
		}
		e := draft
		v := w
		v.Animals = []string{r.pigs[g.p].Name}
		e.Act = Fact{v}
		c.Choices = append(c.Choices, Choice{Label: r.pigs[g.p].Name, Entries: []Entry{e}})
	}
	r.clarify(c, s)
}

// implausible asks about a reading that the pig can hardly have shown, with the
// likeliest slips as answers: a wrong digit, girth and length swapped, another
// pig. Nothing is recorded.
func (r *reader) implausible(s span, m *measure, options []model.Weigh, names []string, on model.Day) {
	said := options[0]
	c := Clarify{About: "weigh", Code: "implausible_weight", Names: names, Q: quantityOf(said), Want: "weigh"}
	set := func(w model.Weigh) Entry {
		w.Animals = names
		return r.draft(Fact{w}, s)
	}
	c.Draft = []Entry{set(said)}
	type slip struct {
		w    model.Weigh
		z    float64
		code string
	}
	var slips []slip
	try := func(w model.Weigh, code string) {
		z, ok := r.deviation(w, m.pigs, on)
		if code == "swapped" && sidesSwapped(said) {
			z, ok = 0, true // the likeliest slip by far
		}
		if ok && z < 2.5 {
			for _, have := range slips {
				if have.w.WeightKg == w.WeightKg && have.w.GirthCm == w.GirthCm && have.w.LengthCm == w.LengthCm {
					return
				}
			}
			slips = append(slips, slip{w, z, code})
		}
	}
	for _, v := range digitSlips(m.v) {
		other := *m
		other.v = v
		for _, w := range r.options(&other) {
			try(w, "meant")
		}
	}
	if m.role == rolePair {
		other := *m
		other.v, other.v2 = m.v2, m.v
		for _, w := range r.options(&other) {
			try(w, "swapped")
		}
	}
	if said.GirthCm > 0 && said.LengthCm == 0 {
		other := *m
		other.role = roleWeight
		other.unit = 0
		for _, w := range r.options(&other) {
			try(w, "as_weight")
		}
	}
	for a := range slips {
		for b := a; b > 0 && slips[b].z < slips[b-1].z; b-- {
			slips[b], slips[b-1] = slips[b-1], slips[b]
		}
	}
	for _, x := range slips {
		if len(c.Choices) == 2 {
			break
		}
		c.Choices = append(c.Choices, Choice{Code: x.code, Q: quantityOf(x.w), Entries: []Entry{set(x.w)}})
	}
	for p := range r.alive {
		if len(c.Choices) == 3 || len(m.pigs.pigs) != 1 {
			break
		}
		other := selection{pigs: []int16{int16(p)}}
		if int16(p) == m.pigs.pigs[0] || r.pigs[p].Name == "" {
			continue
		}
		if z, ok := r.deviation(said, other, on); ok && z < 1 {
			w := said
			w.Animals = []string{r.pigs[p].Name}
			c.Choices = append(c.Choices, Choice{Label: r.pigs[p].Name, Entries: []Entry{r.draft(Fact{w}, s)}})
		}
	}
	if !outOfBounds(said) {
		c.Choices = append(c.Choices, Choice{Code: "as_said", Q: quantityOf(said), Entries: []Entry{set(said)}})
	}
	r.clarify(c, s)
}
