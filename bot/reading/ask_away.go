package reading

import "troughbell/model"

// askAway reads an absence that is only thought of, "what happens if I go away for a
// week", as a question whether feed and water last that long.
func (r *reader) askAway(a *Ask, s span) {
	k := r.find(s, sAway)
	if k < 0 || r.items[k].pig >= 0 || a.Topic != "" && a.Topic != "feed_left" && a.Topic != "water_left" && a.Topic != "today" || !r.supposes(s) {
		return
	}
	gone, ok := r.absenceIn(s)
	if !ok {
		return
	}
	if a.Topic != "water_left" {
		a.Topic = "feed_left"
	}
	if r.toldDay(s) {
		a.On = &gone.To
		return
	}
	a.On = nil
	a.Assume = &model.Assumption{SkipDays: int(gone.To-gone.From) + 1}
}

// supposes says that a question asks what would be, or whether something may be done.
func (r *reader) supposes(s span) bool {
	if r.has(s, sWhatIf) || r.has(s, sIf) || r.quoteHas(s, "if") {
		return true
	}
	switch r.items[s.i].s {
	case "can i", "can we", "could i", "could we", "may i", "may we", "can", "could", "is it ok", "ok to", "is it safe":
		return true
	}
	return false
}

// absenceIn is the absence that a span tells of, recorded nowhere.
func (r *reader) absenceIn(s span) (model.AwayFrom, bool) {
	from := len(r.out)
	r.fillAway(s)
	found, ok := model.AwayFrom{}, false
	for _, e := range r.out[from:] {
		if f, is := e.Act.(Fact); is {
			found, ok = f.Fact.(model.AwayFrom)
		}
	}
	r.out = r.out[:from]
	return found, ok
}
