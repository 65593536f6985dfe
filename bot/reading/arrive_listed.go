package reading

import "troughbell/model"

// newcomersListed asks whether a list of names with weights, told before there are any
// pigs, is of pigs that came: "Bess 24.5, Nip 23, Tuck 22".
func (r *reader) newcomersListed() (Reading, bool) {
	if n := len(r.items); len(r.c.Herd.Animals) > 0 || n < 4 || n%2 > 0 {
		return Reading{}, false
	}
	a := model.Arrive{}
	var weighed []Entry
	for k := 0; k < len(r.items); k += 2 {
		it, w := &r.items[k], &r.items[k+1]
		unknown := it.kind == itWord && !it.known && it.sense.empty() && it.unit == 0
		if !unknown || w.gap != gapNone || !(w.kind == itNum && !w.soft && !w.ord || w.qty(mass)) {
			return Reading{}, false
		}
		u := r.massUnit()
		if w.qty(mass) {
			u = w.unit
			r.carry[mass] = u
		}
		a.Animals = append(a.Animals, r.nameText(k))
		weighed = append(weighed, Entry{Act: Fact{model.Weigh{Animals: a.Animals[k/2:], WeightKg: u.si(w.v), By: model.ByScale}}, On: r.today, To: len(r.text)})
	}
	a.Count = len(a.Animals)
	es := append([]Entry{{Act: Fact{a}, On: r.today, To: len(r.text)}}, weighed...)
	for _, e := range es {
		if f := e.Act.(Fact); f.Check() != nil {
			return Reading{}, false
		}
	}
	return r.just(doubtful(es)), true
}
